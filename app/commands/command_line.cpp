#include "app/commands/command_line.h"

namespace app::commands {
namespace {

using core::base::Message;

const QStringList& commands() {
  static const QStringList kCommands = {
      QStringLiteral("check"),    QStringLiteral("figures"), QStringLiteral("steps"), QStringLiteral("materials"),
      QStringLiteral("rehearse"), QStringLiteral("care"),    QStringLiteral("sheet"), QStringLiteral("template"),
      QStringLiteral("plan"),     QStringLiteral("export"),  QStringLiteral("import")};
  return kCommands;
}

// A word that is no command counts as a job file only where it looks like one, so that a mistyped command is reported
// and does not open a bench.
bool looksLikeFile(const QString& word) { return word.contains(u'/') || word.endsWith(QStringLiteral(".json")); }

class Parser {
 public:
  explicit Parser(const QStringList& arguments) : m_left(arguments) {}

  CommandLine run() {
    bool optionsEnded = false;
    while (!m_left.isEmpty() && m_line.wrongUse.id.empty()) {
      const QString word = m_left.takeFirst();
      if (optionsEnded || !word.startsWith(u'-') || word == QStringLiteral("-")) {
        plain(word);
      } else if (word == QStringLiteral("--")) {
        optionsEnded = true;
      } else {
        option(word);
      }
    }
    if (m_line.wrongUse.id.empty() && !m_line.help && !m_line.version) checkUse();
    return std::move(m_line);
  }

 private:
  void wrong(const char* id, const char* name, const QString& value) {
    m_line.wrongUse = Message(id).with(name, value.toStdString());
  }

  void plain(const QString& word) {
    const bool first = m_line.command.isEmpty() && m_line.files.isEmpty();
    if (first && commands().contains(word)) {
      m_line.command = word;
    } else if (m_line.command.isEmpty() && !looksLikeFile(word)) {
      wrong("command.unknown", "command", word);
    } else {
      m_line.files << word;
    }
  }

  void option(const QString& word) {
    const qsizetype equals = word.indexOf(u'=');
    const QString name = equals < 0 ? word : word.left(equals);
    if (name == QStringLiteral("--data")) return value(name, word, equals, m_line.data);
    if (name == QStringLiteral("--recipes")) return value(name, word, equals, m_line.recipes);
    if (name == QStringLiteral("--units")) return value(name, word, equals, m_units);
    if (name == QStringLiteral("--piece")) return value(name, word, equals, m_piece);
    if (name == QStringLiteral("--way")) return value(name, word, equals, m_way);
    if (name == QStringLiteral("--for")) return value(name, word, equals, m_line.careFor);
    if (word == QStringLiteral("--json")) {
      m_line.json = true;
    } else if (word == QStringLiteral("--help") || word == QStringLiteral("-h")) {
      m_line.help = true;
    } else if (word == QStringLiteral("--version")) {
      m_line.version = true;
    } else {
      wrong("command.unknown-option", "option", word);
    }
  }

  void value(const QString& name, const QString& word, qsizetype equals, QString& target) {
    if (!target.isEmpty()) return wrong("command.option-twice", "option", name);
    if (equals >= 0) {
      target = word.mid(equals + 1);
    } else if (!m_left.isEmpty()) {
      target = m_left.takeFirst();
    }
    if (target.isEmpty()) wrong("command.option-needs-value", "option", name);
  }

  void checkUse() {
    const bool care = m_line.command == QStringLiteral("care");
    const bool measures =
        m_line.command == QStringLiteral("figures") || m_line.command == QStringLiteral("materials") || care;
    const bool work = m_line.command == QStringLiteral("steps") || m_line.command == QStringLiteral("rehearse");
    const bool jsonHere = measures || work;
    if (m_line.json && !jsonHere) return wrong("command.unknown-option", "option", QStringLiteral("--json"));
    if (!m_units.isEmpty() && !measures) return wrong("command.unknown-option", "option", QStringLiteral("--units"));
    if (!m_line.careFor.isEmpty()) {
      if (!care) return wrong("command.unknown-option", "option", QStringLiteral("--for"));
      if (m_line.careFor != QStringLiteral("client") && m_line.careFor != QStringLiteral("conservator"))
        return wrong("command.bad-care", "care", m_line.careFor);
    }
    if (!m_way.isEmpty()) {
      if (!work) return wrong("command.unknown-option", "option", QStringLiteral("--way"));
      const auto way = core::units::way(m_way.toStdString());
      if (!way) return wrong("command.bad-way", "way", m_way);
      m_line.way = *way;
    }
    if (!m_piece.isEmpty()) {
      if (m_line.command != QStringLiteral("export"))
        return wrong("command.unknown-option", "option", QStringLiteral("--piece"));
      bool isNumber = false;
      const int number = m_piece.toInt(&isNumber);
      if (!isNumber || number < 1) return wrong("command.bad-piece", "piece", m_piece);
      m_line.piece = number;
    }
    if (m_units == QStringLiteral("mm")) {
      m_line.units = core::units::UnitSystem::Millimetres;
    } else if (m_units == QStringLiteral("in")) {
      m_line.units = core::units::UnitSystem::Inches;
    } else if (!m_units.isEmpty()) {
      return wrong("command.bad-units", "units", m_units);
    }
    if (m_line.command.isEmpty()) return;
    if (m_line.files.isEmpty() && m_line.command == QStringLiteral("export"))
      return wrong("command.needs-reference", "command", m_line.command);
    if (m_line.files.isEmpty()) return wrong("command.needs-file", "command", m_line.command);
    if (m_line.files.size() > 1 && m_line.command != QStringLiteral("check") &&
        m_line.command != QStringLiteral("import")) {
      wrong("command.one-file", "command", m_line.command);
    }
  }

  QStringList m_left;
  QString m_units;
  QString m_way;
  QString m_piece;
  CommandLine m_line;
};

}  // namespace

CommandLine parseCommandLine(const QStringList& arguments) { return Parser(arguments).run(); }

}  // namespace app::commands
