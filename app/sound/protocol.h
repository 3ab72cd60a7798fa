#pragma once
// What the program and the process that plays its sounds tell each other: one line each way at a time, a word and,
// after single spaces, its arguments. A line that is not understood is passed over.
//
// To the player:   play TONE DECIBELS | hush | drop | prepare | ping
// From the player: ready | no-device | stalled | muted | taken FRAMES | pong
//
// `prepare` says that a sound will be wanted within seconds. `taken` tells, about four times a second while a tone
// sounds, how many frames the server has taken in all. `pong` comes once the server has answered too, or at once
// while there is none.
#include <QByteArray>
#include <QByteArrayView>
#include <cstdint>
#include <optional>

#include "app/sound/tones.h"

namespace app::sound {

enum class State { Ready, NoDevice, Stalled, Muted };

struct Command {
  enum class Kind { Play, Hush, Drop, Prepare, Ping };
  Kind kind = Kind::Ping;
  Tone tone = Tone::Medium;  // of Play
  double decibels = 0;       // of Play
  friend bool operator==(const Command&, const Command&) = default;
};

struct Answer {
  enum class Kind { State, Taken, Pong };
  Kind kind = Kind::Pong;
  State state = State::NoDevice;  // of State
  std::int64_t frames = 0;        // of Taken
  friend bool operator==(const Answer&, const Answer&) = default;
};

// Ends with a line feed; the readers take a line with or without it.
QByteArray line(const Command& command);
QByteArray line(const Answer& answer);
std::optional<Command> readCommand(QByteArrayView line);
std::optional<Answer> readAnswer(QByteArrayView line);

// How the player ends by itself. Whoever gets one of these starts a fresh one.
inline constexpr int kServerLost = 10;  // the multimedia library would not find it again
inline constexpr int kSinkFailed = 11;  // stopped or stalled

}  // namespace app::sound
