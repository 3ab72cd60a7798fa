// What the program and the camera's process tell each other, in any portions, and from a process gone wrong.
#include "app/camera/protocol.h"

#include "tests/support/catch.h"

using app::camera::Answer;
using app::camera::AnswerReader;
using app::camera::Command;

namespace {

std::vector<Answer> everyAnswer() {
  QByteArray jpeg("\xff\xd8 frame 3\nnone\n\n\x00\xff\xd9", 19);
  return {{Answer::Kind::Camera, 2, 3, "Camera, back: 8 MP", {}},
          {Answer::Kind::None, 0, 0, {}, {}},
          {Answer::Kind::Trouble, 0, 0, "Device is busy", {}},
          {Answer::Kind::Trouble, 0, 0, "", {}},
          {Answer::Kind::Frame, 0, 0, {}, jpeg},
          {Answer::Kind::Frame, 0, 0, {}, ""},
          {Answer::Kind::Taken, 0, 0, "/tmp/a folder/1.jpg", {}}};
}

}  // namespace

TEST_CASE("what is told arrives, in whatever portions") {
  QByteArray all;
  for (const Answer& answer : everyAnswer()) all += written(answer);
  for (int portion = 1; portion <= all.size(); ++portion) {
    AnswerReader reader;
    std::vector<Answer> read;
    for (int at = 0; at < all.size(); at += portion) {
      for (Answer& answer : reader.feed(all.mid(at, portion))) read.push_back(std::move(answer));
    }
    INFO(portion);
    REQUIRE(read == everyAnswer());
    REQUIRE_FALSE(reader.broken());
  }
}

TEST_CASE("what is asked arrives") {
  for (const Command& command : {Command{Command::Kind::More}, Command{Command::Kind::Next},
                                 Command{Command::Kind::Take, "/tmp/a folder/größer.jpg"}}) {
    const QByteArray line = app::camera::line(command);
    REQUIRE(line.endsWith('\n'));
    CHECK(app::camera::readCommand(line.chopped(1)) == command);
  }
  for (const char* line : {"", "more ", "take", "take ", "nothing", "More"}) {
    CHECK_FALSE(app::camera::readCommand(line).has_value());
  }
  CHECK(app::camera::line({Command::Kind::Take, "two\nlines"}).count('\n') == 1);
}

TEST_CASE("lines that are not understood are passed over") {
  AnswerReader reader;
  const auto read = reader.feed("hello\n\ncamera\ncamera 0 1 x\ncamera 2 1 x\ncamera 1 x y\ntaken\nnone \nnone\n");
  REQUIRE(read.size() == 1);
  CHECK(read[0].kind == Answer::Kind::None);
  CHECK_FALSE(reader.broken());
}

TEST_CASE("a process that has lost its wits is believed nothing") {
  for (const QByteArray& wrong :
       {QByteArray("frame -1\n"), QByteArray("frame x\n"), QByteArray("frame 99999999999\n"), QByteArray("frame \n"),
        "frame " + QByteArray::number(AnswerReader::kLargestFrame + 1) + '\n',
        QByteArray(AnswerReader::kLongestLine + 1, 'x'), QByteArray(AnswerReader::kLongestLine + 1, 'x') + '\n'}) {
    AnswerReader reader;
    INFO(wrong.left(40).toStdString());
    CHECK(reader.feed(wrong).empty());
    CHECK(reader.broken());
    CHECK(reader.feed("none\n").empty());
  }
}
