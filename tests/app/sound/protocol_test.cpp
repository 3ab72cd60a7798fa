#include "app/sound/protocol.h"

#include "tests/support/catch.h"

using namespace app::sound;

TEST_CASE("every command and every answer is read as it was written") {
  for (const Tone tone : {Tone::Soft, Tone::Low, Tone::Medium, Tone::High}) {
    for (const double decibels : {0.0, -6.0, -12.5}) {
      const Command play{Command::Kind::Play, tone, decibels};
      CHECK(readCommand(line(play)) == play);
    }
  }
  for (const auto kind : {Command::Kind::Hush, Command::Kind::Drop, Command::Kind::Prepare, Command::Kind::Ping}) {
    CHECK(readCommand(line(Command{kind})) == Command{kind});
  }
  for (const State state : {State::Ready, State::NoDevice, State::Stalled, State::Muted}) {
    const Answer answer{Answer::Kind::State, state, 0};
    CHECK(readAnswer(line(answer)) == answer);
  }
  const Answer taken{Answer::Kind::Taken, State::NoDevice, 9'007'199'254'740'993};
  CHECK(readAnswer(line(taken)) == taken);
  CHECK(readAnswer(line(Answer{})) == Answer{});
}

TEST_CASE("a line that is not understood is nothing, and a level above the tone's own is not understood") {
  for (const char* text : {"", " ", "play", "play loud 0", "play high", "play high x", "play high nan", "play high 3",
                           "play high 0 0", "ping ping", "hushed", "\xff\xfe"}) {
    INFO(text);
    CHECK_FALSE(readCommand(text).has_value());
  }
  for (const char* text : {"", "taken", "taken x", "taken -1", "ready now", "pong!"}) {
    INFO(text);
    CHECK_FALSE(readAnswer(text).has_value());
  }
}
