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
  for (const auto kind :
       {Command::Kind::Hush, Command::Kind::Drop, Command::Kind::Prepare, Command::Kind::Ping, Command::Kind::Quiet}) {
    CHECK(readCommand(line(Command{kind})) == Command{kind});
  }
  for (const State state : {State::Ready, State::NoDevice, State::Stalled, State::Muted}) {
    const Answer answer{Answer::Kind::State, state, 0};
    CHECK(readAnswer(line(answer)) == answer);
  }
  const Answer taken{Answer::Kind::Taken, State::NoDevice, 9'007'199'254'740'993};
  CHECK(readAnswer(line(taken)) == taken);
  for (const auto kind : {Answer::Kind::Pong, Answer::Kind::Voice, Answer::Kind::NoVoice}) {
    CHECK(readAnswer(line(Answer{kind})) == Answer{kind});
  }
  const Answer spoken{Answer::Kind::Spoken, State::NoDevice, 0, 7};
  CHECK(readAnswer(line(spoken)) == spoken);
  const Command say{Command::Kind::Say, Tone::Medium, 0, 7, "Frame 4 – size. Lay the leaf, now."};
  CHECK(readCommand(line(say)) == say);
}

TEST_CASE("words of several lines are given out on one") {
  const Command say{Command::Kind::Say, Tone::Medium, 0, 1, "one\ntwo\r\nthree"};
  CHECK(line(say) == "say 1 one two  three\n");
}

TEST_CASE("a line that is not understood is nothing, and a level above the tone's own is not understood") {
  for (const char* text :
       {"", " ", "play", "play loud 0", "play high", "play high x", "play high nan", "play high 3", "play high 0 0",
        "ping ping", "hushed", "say", "say 1", "say x words", "say 0 words", "\xff\xfe"}) {
    INFO(text);
    CHECK_FALSE(readCommand(text).has_value());
  }
  for (const char* text :
       {"", "taken", "taken x", "taken -1", "ready now", "pong!", "spoken", "spoken x", "spoken 0"}) {
    INFO(text);
    CHECK_FALSE(readAnswer(text).has_value());
  }
}
