#include "app/sound/protocol.h"

#include <QList>
#include <array>
#include <cmath>
#include <utility>

namespace app::sound {
namespace {

constexpr std::array<std::pair<Tone, const char*>, 4> kTones{
    {{Tone::Soft, "soft"}, {Tone::Low, "low"}, {Tone::Medium, "medium"}, {Tone::High, "high"}}};
constexpr std::array<std::pair<State, const char*>, 4> kStates{
    {{State::Ready, "ready"}, {State::NoDevice, "no-device"}, {State::Stalled, "stalled"}, {State::Muted, "muted"}}};
constexpr std::array<std::pair<Command::Kind, const char*>, 5> kPlain{{{Command::Kind::Hush, "hush"},
                                                                       {Command::Kind::Drop, "drop"},
                                                                       {Command::Kind::Prepare, "prepare"},
                                                                       {Command::Kind::Ping, "ping"},
                                                                       {Command::Kind::Quiet, "quiet"}}};

template <typename Table, typename Key>
const char* wordOf(const Table& table, Key key) {
  for (const auto& [value, word] : table) {
    if (value == key) return word;
  }
  return "";
}

template <typename Key, std::size_t count>
std::optional<Key> keyOf(const std::array<std::pair<Key, const char*>, count>& table, const QByteArray& word) {
  for (const auto& [value, name] : table) {
    if (word == name) return value;
  }
  return std::nullopt;
}

std::optional<int> numberOf(const QByteArray& word) {
  bool isNumber = false;
  const int number = word.toInt(&isNumber);
  return isNumber && number > 0 ? std::optional(number) : std::nullopt;
}

QList<QByteArray> wordsOf(QByteArrayView line) { return line.toByteArray().trimmed().split(' '); }

}  // namespace

QByteArray line(const Command& command) {
  if (command.kind == Command::Kind::Say) {
    QByteArray text = command.text;
    text.replace('\n', ' ').replace('\r', ' ');
    return "say " + QByteArray::number(command.number) + ' ' + text + '\n';
  }
  if (command.kind != Command::Kind::Play) return QByteArray(wordOf(kPlain, command.kind)) + '\n';
  return QByteArray("play ") + wordOf(kTones, command.tone) + ' ' + QByteArray::number(command.decibels) + '\n';
}

QByteArray line(const Answer& answer) {
  switch (answer.kind) {
    case Answer::Kind::State: return QByteArray(wordOf(kStates, answer.state)) + '\n';
    case Answer::Kind::Taken: return "taken " + QByteArray::number(qlonglong(answer.frames)) + '\n';
    case Answer::Kind::Spoken: return "spoken " + QByteArray::number(answer.number) + '\n';
    case Answer::Kind::Voice: return "voice\n";
    case Answer::Kind::NoVoice: return "no-voice\n";
    case Answer::Kind::Pong: break;
  }
  return "pong\n";
}

std::optional<Command> readCommand(QByteArrayView line) {
  const auto words = wordsOf(line);
  if (words.size() == 1) {
    const auto kind = keyOf(kPlain, words[0]);
    return kind ? std::optional(Command{*kind}) : std::nullopt;
  }
  if (words.size() > 2 && words[0] == "say") {
    const auto number = numberOf(words[1]);
    if (!number) return std::nullopt;
    return Command{Command::Kind::Say, Tone::Medium, 0, *number, words.mid(2).join(' ')};
  }
  if (words.size() != 3 || words[0] != "play") return std::nullopt;
  const auto tone = keyOf(kTones, words[1]);
  bool isNumber = false;
  const double decibels = words[2].toDouble(&isNumber);
  // Above the tone's own level it would clip.
  if (!tone || !isNumber || !std::isfinite(decibels) || decibels > 0) return std::nullopt;
  return Command{Command::Kind::Play, *tone, decibels, 0, {}};
}

std::optional<Answer> readAnswer(QByteArrayView line) {
  const auto words = wordsOf(line);
  if (words.size() == 2 && words[0] == "taken") {
    bool isNumber = false;
    const qlonglong frames = words[1].toLongLong(&isNumber);
    if (!isNumber || frames < 0) return std::nullopt;
    return Answer{Answer::Kind::Taken, State::NoDevice, frames};
  }
  if (words.size() == 2 && words[0] == "spoken") {
    const auto number = numberOf(words[1]);
    return number ? std::optional(Answer{Answer::Kind::Spoken, State::NoDevice, 0, *number}) : std::nullopt;
  }
  if (words.size() != 1) return std::nullopt;
  if (words[0] == "pong") return Answer{};
  if (words[0] == "voice") return Answer{Answer::Kind::Voice};
  if (words[0] == "no-voice") return Answer{Answer::Kind::NoVoice};
  const auto state = keyOf(kStates, words[0]);
  return state ? std::optional(Answer{Answer::Kind::State, *state, 0}) : std::nullopt;
}

}  // namespace app::sound
