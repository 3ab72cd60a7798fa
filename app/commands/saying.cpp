#include "app/commands/saying.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/words/words.h"
#include "core/base/text.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Problem;

// Text for one line must stay in it and must not command a terminal.
QString oneLine(const QString& text) {
  return convert::toQt(core::base::shownText(convert::fromQt(text), core::base::Lines::One));
}

// The words of a message may have several lines; what is put into them has one.
Message inOneLine(Message message) {
  for (auto& [name, argument] : message.arguments) {
    if (auto* text = std::get_if<std::string>(&argument)) *text = core::base::shownText(*text, core::base::Lines::One);
  }
  return message;
}

}  // namespace

void sayLine(std::ostream& stream, const QString& text) {
  stream << core::base::shownText(convert::fromQt(text), core::base::Lines::Several) << '\n';
}

void say(std::ostream& stream, const Message& message, UnitSystem units) {
  sayLine(stream, words::text(inOneLine(message), units));
}

void sayProblem(std::ostream& stream, const QString& file, const Problem& problem, UnitSystem units) {
  QString text = words::text(problem.message, units);
  if (problem.severity == core::base::Severity::Notice) {
    text = words::text(Message("command.notice").with("text", text.toStdString()), units);
  }
  const QString place = problem.line != 0 ? QString::number(problem.line) + u':' + QString::number(problem.column)
                                          : QString::fromStdString(problem.pointer);
  sayLine(stream, oneLine(file + u':' + place + QStringLiteral(": ") + text));
}

void sayProblem(std::ostream& stream, const QString& file, const Message& message, UnitSystem units) {
  Problem problem;
  problem.message = message;
  sayProblem(stream, file, problem, units);
}

void sayTable(std::ostream& stream, const std::vector<QStringList>& given, const std::vector<Align>& columns) {
  std::vector<QStringList> rows = given;
  for (QStringList& row : rows) {
    for (QString& cell : row) cell = oneLine(cell);
  }
  std::vector<qsizetype> widths(columns.size(), 0);
  for (const QStringList& row : rows) {
    if (row.size() < static_cast<qsizetype>(columns.size())) continue;
    for (qsizetype i = 0; i < row.size(); ++i) {
      auto& width = widths[static_cast<std::size_t>(i)];
      width = std::max(width, row[i].size());
    }
  }
  for (const QStringList& row : rows) {
    QString text;
    for (qsizetype i = 0; i < row.size(); ++i) {
      const auto column = static_cast<std::size_t>(i);
      if (i > 0) text += QStringLiteral("  ");
      text += columns[column] == Align::Right ? row[i].rightJustified(widths[column])
                                              : row[i].leftJustified(widths[column]);
    }
    while (text.endsWith(u' ')) text.chop(1);
    sayLine(stream, text);
  }
}

void sayJson(std::ostream& stream, const core::base::Value& value) {
  // Outside its texts JSON has no such characters, and within them it reads the escape as the character.
  stream << core::base::shownText(core::base::writeJson(value, 2), core::base::Lines::Several) << '\n';
}

}  // namespace app::commands
