#pragma once
// The messages between the program and the process that uses the camera.
//
// To the camera, in lines:  more | take PATH | next
// From the camera:          camera NUMBER COUNT NAME | none | trouble TEXT | taken PATH, in lines, and
//                           frame BYTES, followed by so many bytes of a JPEG picture
//
// A frame is sent for each `more`, never unasked, so that a program that is slow is not buried. `take` writes the frame
// as the camera gives it to a file; `next` turns to the next of several cameras. Line breaks in a name, a text or a
// path become spaces, and so a path with one cannot be written.
#include <QByteArray>
#include <QString>
#include <optional>
#include <vector>

namespace app::camera {

struct Command {
  enum class Kind { More, Take, Next };
  Kind kind = Kind::More;
  QString path = {};  // of Take
  friend bool operator==(const Command&, const Command&) = default;
};

struct Answer {
  enum class Kind { Camera, None, Trouble, Taken, Frame };
  Kind kind = Kind::None;
  int number = 0;         // of Camera, 1 or more
  int count = 0;          // of Camera: how many there are
  QString text = {};      // name, trouble or path
  QByteArray bytes = {};  // of Frame
  friend bool operator==(const Answer&, const Answer&) = default;
};

QByteArray line(const Command& command);
std::optional<Command> readCommand(const QByteArray& line);
// With the bytes of a frame behind its line.
QByteArray written(const Answer& answer);

// Reads the camera's output, in portions of any size. A line that is not understood is skipped; a line or a frame
// beyond the limits ends the reading, and nothing from that process is used from then on.
class AnswerReader {
 public:
  static constexpr int kLongestLine = 4096;
  static constexpr int kLargestFrame = 8 * 1024 * 1024;

  std::vector<Answer> feed(const QByteArray& bytes);
  bool broken() const { return m_broken; }

 private:
  std::optional<Answer> next();

  QByteArray m_left;
  qsizetype m_wanted = -1;  // bytes of a frame under way
  bool m_broken = false;
};

}  // namespace app::camera
