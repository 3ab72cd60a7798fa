#pragma once
// The letters of every screen are the program's own choice, from packages of app/packages.txt: what else a machine has
// installed changes neither their form nor the room they take.
#include <QStringList>

namespace app::face {

// Drawn to be read at a glance: figures of one width, an open 6 and 9, Regular and Bold of one width. Debian:
// fonts-b612.
inline constexpr const char* kLetters = "B612";
// The fixed-pitch letters of the same package call themselves so too.
inline constexpr const char* kNamedAlike = "B612 Mono";
// Stands behind it for what it does not hold. Debian: fonts-dejavu-core.
inline constexpr const char* kLettersBehind = "DejaVu Sans";

// Names of artworks alone are written in its italic, as titles are set in print. Debian: fonts-noto-core.
inline constexpr const char* kArtworkLetters = "Noto Serif";

// Makes them the application's font; the screens take it from there. Returns the families that are not installed: where
// kLetters is among them kLettersBehind serves, and where neither is there the machine's default does.
// Requires a QGuiApplication.
QStringList chooseLetters();

}  // namespace app::face
