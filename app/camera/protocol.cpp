#include "app/camera/protocol.h"

#include <QList>
#include <utility>

namespace app::camera {
namespace {

QByteArray oneLine(QString text) {
  text.replace(QLatin1Char('\n'), QLatin1Char(' '));
  text.replace(QLatin1Char('\r'), QLatin1Char(' '));
  return text.toUtf8();
}

// Returns the text after the first `count` words of a line.
QString after(const QByteArray& line, int count) {
  qsizetype at = 0;
  for (int word = 0; word < count; ++word) {
    at = line.indexOf(' ', at);
    if (at < 0) return {};
    ++at;
  }
  return QString::fromUtf8(line.mid(at));
}

std::optional<int> number(const QList<QByteArray>& words, int index, int least, int most) {
  if (index >= words.size()) return std::nullopt;
  bool ok = false;
  const int value = words[index].toInt(&ok);
  return ok && value >= least && value <= most ? std::optional(value) : std::nullopt;
}

constexpr int kMostCameras = 99;

std::optional<Answer> readLine(const QByteArray& line) {
  const QList<QByteArray> words = line.split(' ');
  Answer answer;
  if (line == "none") return answer;
  if (words[0] == "camera") {
    const auto which = number(words, 1, 1, kMostCameras);
    const auto count = number(words, 2, 1, kMostCameras);
    if (!which || !count || *which > *count) return std::nullopt;
    return Answer{Answer::Kind::Camera, *which, *count, after(line, 3), {}};
  }
  if (words[0] == "trouble") return Answer{Answer::Kind::Trouble, 0, 0, after(line, 1), {}};
  if (words[0] == "taken" && words.size() > 1) return Answer{Answer::Kind::Taken, 0, 0, after(line, 1), {}};
  return std::nullopt;
}

}  // namespace

QByteArray line(const Command& command) {
  switch (command.kind) {
    case Command::Kind::More: return "more\n";
    case Command::Kind::Next: return "next\n";
    case Command::Kind::Take: return "take " + oneLine(command.path) + '\n';
  }
  return "\n";
}

std::optional<Command> readCommand(const QByteArray& line) {
  if (line == "more") return Command{Command::Kind::More};
  if (line == "next") return Command{Command::Kind::Next};
  if (line.startsWith("take ") && line.size() > 5) return Command{Command::Kind::Take, after(line, 1)};
  return std::nullopt;
}

QByteArray written(const Answer& answer) {
  switch (answer.kind) {
    case Answer::Kind::None: return "none\n";
    case Answer::Kind::Trouble: return "trouble " + oneLine(answer.text) + '\n';
    case Answer::Kind::Taken: return "taken " + oneLine(answer.text) + '\n';
    case Answer::Kind::Camera:
      return "camera " + QByteArray::number(answer.number) + ' ' + QByteArray::number(answer.count) + ' ' +
             oneLine(answer.text) + '\n';
    case Answer::Kind::Frame: return "frame " + QByteArray::number(answer.bytes.size()) + '\n' + answer.bytes;
  }
  return {};
}

std::vector<Answer> AnswerReader::feed(const QByteArray& bytes) {
  std::vector<Answer> answers;
  if (m_broken) return answers;
  m_left += bytes;
  while (true) {
    const qsizetype before = m_left.size();
    if (auto answer = next()) {
      answers.push_back(*std::move(answer));
    } else if (m_broken || m_left.size() == before) {
      return answers;
    }
  }
}

// Returns nothing where it needs more bytes, or skipped a line: then fewer are left.
std::optional<Answer> AnswerReader::next() {
  if (m_wanted >= 0) {
    if (m_left.size() < m_wanted) return std::nullopt;
    Answer frame{Answer::Kind::Frame, 0, 0, {}, m_left.left(m_wanted)};
    m_left.remove(0, m_wanted);
    m_wanted = -1;
    return frame;
  }
  const qsizetype end = m_left.indexOf('\n');
  if (end < 0 || end > kLongestLine) {
    m_broken = m_left.size() > kLongestLine;
    return std::nullopt;
  }
  const QByteArray line = m_left.left(end);
  m_left.remove(0, end + 1);
  if (!line.startsWith("frame ")) return readLine(line);
  const auto size = number(line.split(' '), 1, 0, kLargestFrame);
  m_broken = !size;
  if (size) m_wanted = *size;
  return std::nullopt;
}

}  // namespace app::camera
