#include "app/commands/saying.h"

#include <algorithm>

#include "app/words/words.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Problem;

QString oneLine(const QString& text) {
  QString line;
  for (const QChar c : text) {
    const bool breaks = c.unicode() < 0x20 || (c.unicode() >= 0x7f && c.unicode() < 0xa0) || c.unicode() == 0x2028 ||
                        c.unicode() == 0x2029;
    line += breaks ? QStringLiteral("\\u%1").arg(static_cast<int>(c.unicode()), 4, 16, QLatin1Char('0')) : QString(c);
  }
  return line;
}

}  // namespace

void sayLine(std::ostream& stream, const QString& text) { stream << text.toStdString() << '\n'; }

void say(std::ostream& stream, const Message& message, UnitSystem units) {
  sayLine(stream, words::text(message, units));
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

void sayTable(std::ostream& stream, const std::vector<QStringList>& rows, const std::vector<Align>& columns) {
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
  stream << core::base::writeJson(value, 2) << '\n';
}

}  // namespace app::commands
