#pragma once
// Commands run in this process, on files in a folder that goes away.
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <sstream>
#include <string>

#include "app/commands/commands.h"
#include "core/base/json.h"
#include "core/base/text.h"
#include "tests/support/files.h"
#include "tests/support/worked_example.h"

namespace tests {

struct Ran {
  int exit = -1;
  std::string out;
  std::string err;
};

class Commands {
 public:
  Commands() { REQUIRE(m_folder.isValid()); }

  // Writes a file and gives its path.
  QString file(const QString& name, const std::string& text) const {
    const QString path = m_folder.filePath(name);
    REQUIRE(QDir().mkpath(QFileInfo(path).path()));
    REQUIRE(writeWholeFile(path.toStdString(), text));
    return path;
  }
  QString path(const QString& name) const { return m_folder.filePath(name); }

  // The delivered techniques, copied so that a test may change them.
  QString recipes() const {
    const QString copy = m_folder.filePath(QStringLiteral("recipes"));
    REQUIRE(QDir().mkpath(copy));
    const QDir delivered(QStringLiteral(PROJECT_ROOT "/recipes"));
    const QStringList names = delivered.entryList({QStringLiteral("*.technique.json")}, QDir::Files);
    REQUIRE(names.size() > 10);
    for (const QString& name : names) REQUIRE(QFile::copy(delivered.filePath(name), copy + u'/' + name));
    return copy;
  }

  // With a data folder of its own, so that nothing of this machine's user is read.
  Ran run(QStringList arguments) const {
    REQUIRE(QDir().mkpath(m_folder.filePath(QStringLiteral("data"))));
    arguments << QStringLiteral("--data") << m_folder.filePath(QStringLiteral("data"));
    return runAsIs(arguments);
  }
  Ran runAsIs(const QStringList& arguments) const {
    std::ostringstream out;
    std::ostringstream err;
    Ran ran;
    ran.exit = app::commands::run(arguments, out, err);
    ran.out = out.str();
    ran.err = err.str();
    return ran;
  }
  Ran check(const std::string& text) const {
    return run({QStringLiteral("check"), file(QStringLiteral("a.job.json"), text)});
  }
  // "a.job.json:/pointer: message" lines without the folder.
  std::vector<std::string> problems(const std::string& text) const {
    const Ran ran = check(text);
    std::vector<std::string> lines = core::base::split(ran.out, '\n');
    if (!lines.empty() && lines.back().empty()) lines.pop_back();
    const std::string folder = m_folder.path().toStdString() + '/';
    for (std::string& line : lines) line = core::base::replaceAll(line, folder, "");
    return lines;
  }

 private:
  QTemporaryDir m_folder;
};

inline core::base::Value parsed(const std::string& text) {
  const core::base::ParsedJson json = core::base::parseJson(text);
  REQUIRE(json.readable);
  return json.root;
}

inline bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace tests
