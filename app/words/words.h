#pragma once
// The words. The core returns ids with arguments; here they become sentences in the language of the program, whose
// source is British English. Every text passes through the translation context "words".
//
// Nothing here fails: an id without words is shown as the core dumps it, an argument that is not given leaves
// its {name} standing.
#include <QString>
#include <string>
#include <string_view>

#include "app/words/thing_words.h"
#include "core/base/message.h"
#include "core/craft/technique.h"
#include "core/design/figures.h"
#include "core/intents/intent.h"
#include "core/materials/cutting_list.h"
#include "core/units/duration.h"
#include "core/units/length_display.h"
#include "core/waits/wait_state.h"

namespace app::words {

// Lengths among the arguments are shown in `units`, to the nearest 0.1 mm or 1/32 in.
QString text(const core::base::Message& message, core::units::UnitSystem units);

// Returns what a figure is ("top board, sight width") and where it is measured from or between ("from the marked
// corner, on the back"). An unknown kind gives the figure's id and nothing.
QString figureLabel(const core::design::Figure& figure);
QString figureDatum(const core::design::Figure& figure);

QString waitKind(core::craft::WaitKind kind);  // "dries", "comes to tack", "open time"
// What it may be once it is over, in "May be dry from 10:22".
QString waitTrue(core::craft::WaitKind kind);
// What something is until then: "wet", "soft".
QString waitUntil(core::craft::WaitKind kind);
QString hands(core::craft::Hands hands);  // "clean hands", "paste on the hands"
// The name of a stage on the strip; "" for none.
QString stage(core::craft::Stage stage);
QString signalWord(core::craft::SignalWord word);     // "WARNING"
QString wayUp(core::craft::WayUp up);                 // "face up"; "" for none
QString verdict(core::intents::Verdict verdict);      // "not yet", "tacky"
QString alertClass(core::intents::AlertClass alert);  // "ready", "open", "closing"
QString phase(core::waits::Phase phase);
QString basis(core::waits::Basis basis);  // the source of a time

// Returns it to the minute, or to the second under a minute: "30 s", "25 min", "1 h 30 min", "2 d". Requires zero or
// more.
QString duration(core::units::Duration duration);
// Returns it no finer than anybody can foretell it: to 5 min from 10 min, to half an hour from 3 h, to the hour from a
// day; under 10 min as `duration` says it. Requires zero or more.
QString about(core::units::Duration duration);
// "10 min to 60 min, likely 25 min": as it is stated.
QString span(const core::units::Span& span);
// The same, each as `about` says it: of what is reckoned for a job.
QString aboutSpan(const core::units::Span& span);

// With a capital first: what begins a sentence or a row.
QString capitalised(QString text);

// Returns a maker's word for a value in a job file: "size", "water" is "water size". An unknown value is returned as in
// the file.
QString property(const QString& name, const QString& value);

// "inner band, left and right": a piece of the cutting list.
QString pieceName(const core::materials::CutPiece& piece);

}  // namespace app::words
