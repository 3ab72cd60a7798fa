#pragma once
// The messages between the program and the process that plays its sounds: one line each way at a time, a word and,
// after single spaces, its arguments. A line that is not understood is passed over.
//
// To the player:   play TONE DECIBELS | hush | drop | prepare | ping | say NUMBER TEXT | quiet
// From the player: ready | no-device | stalled | muted | taken FRAMES | pong | voice | no-voice | spoken NUMBER
//
// `prepare` announces that a sound will be wanted within seconds. `taken` reports, about four times a second while a
// tone sounds, how many frames the server has accepted in all. `pong` is sent once the server has answered too, or at
// once while there is none. `spoken` reports that the words of this number are over, spoken or cut short (`quiet`);
// `no-voice` means that no words are spoken until there is a `voice` again.
#include <QByteArray>
#include <QByteArrayView>
#include <cstdint>
#include <optional>

#include "app/sound/tones.h"

namespace app::sound {

enum class State { Ready, NoDevice, Stalled, Muted };

struct Command {
  enum class Kind { Play, Hush, Drop, Prepare, Ping, Say, Quiet };
  Kind kind = Kind::Ping;
  Tone tone = Tone::Medium;  // of Play
  double decibels = 0;       // of Play
  int number = 0;            // of Say, 1 or more
  QByteArray text = {};      // of Say, in UTF-8; line breaks become spaces
  friend bool operator==(const Command&, const Command&) = default;
};

struct Answer {
  enum class Kind { State, Taken, Pong, Voice, NoVoice, Spoken };
  Kind kind = Kind::Pong;
  State state = State::NoDevice;  // of State
  std::int64_t frames = 0;        // of Taken
  int number = 0;                 // of Spoken
  friend bool operator==(const Answer&, const Answer&) = default;
};

// The line ends with a line feed; the readers accept a line with or without it.
QByteArray line(const Command& command);
QByteArray line(const Answer& answer);
std::optional<Command> readCommand(QByteArrayView line);
std::optional<Answer> readAnswer(QByteArrayView line);

// An argument of the player: it looks for no voice.
inline constexpr char kWithoutVoice[] = "--without-voice";

// Exit codes with which the player ends by itself. The program then starts a fresh one.
inline constexpr int kServerLost = 10;  // the multimedia library would not find it again
inline constexpr int kSinkFailed = 11;  // stopped or stalled

}  // namespace app::sound
