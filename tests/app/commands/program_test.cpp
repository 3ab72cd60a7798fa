// The program itself, as a script would call it: exit codes, the two streams, and no locale in any byte.
#include <QDir>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>

#include "core/base/json.h"
#include "tests/support/files.h"
#include "tests/support/stocked_example.h"
#include "tests/support/worked_example.h"

namespace {

struct Ran {
  int exit = -1;
  QByteArray out;
  QByteArray err;
};

class Program {
 public:
  Program() { REQUIRE(m_folder.isValid()); }

  QString file(const QString& name, const std::string& text) const {
    const QString path = m_folder.filePath(name);
    REQUIRE(tests::writeWholeFile(path.toStdString(), text));
    return path;
  }

  Ran run(const QStringList& arguments, const QString& locale = QStringLiteral("C")) const {
    return start(QStringLiteral(PROGRAM), arguments, locale);
  }
  // As a line for the shell, which can send output elsewhere or close it.
  Ran shell(const QString& line) const {
    return start(QStringLiteral("/bin/sh"), {QStringLiteral("-c"), QStringLiteral(PROGRAM " ") + line},
                 QStringLiteral("C"));
  }
  QString path(const QString& name) const { return m_folder.filePath(name); }

  // Whether a locale could be made.
  bool makeLocale(const QString& name) const {
    QProcess process;
    process.start(QStringLiteral("localedef"),
                  {QStringLiteral("-i"), name, QStringLiteral("-f"), QStringLiteral("UTF-8"),
                   m_folder.filePath(name + QStringLiteral(".UTF-8"))});
    return process.waitForFinished(60'000) && process.exitCode() == 0;
  }

 private:
  Ran start(const QString& program, const QStringList& arguments, const QString& locale) const {
    QProcess process;
    QProcessEnvironment environment;
    environment.insert(QStringLiteral("PATH"), QStringLiteral("/usr/bin:/bin"));
    environment.insert(QStringLiteral("HOME"), m_folder.path());
    environment.insert(QStringLiteral("LC_ALL"), locale);
    environment.insert(QStringLiteral("LANG"), locale);
    // Locales made here, where the machine has the sources for them.
    environment.insert(QStringLiteral("LOCPATH"), m_folder.path());
    process.setProcessEnvironment(environment);
    process.start(program, arguments);
    REQUIRE(process.waitForFinished(60'000));
    REQUIRE(process.exitStatus() == QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
  }

  QTemporaryDir m_folder;
};

}  // namespace

TEST_CASE("the program needs no display and keeps its results apart from its messages") {
  const Program program;
  const QString job = program.file(QStringLiteral("c.job.json"), tests::workedExample());
  const Ran figures = program.run({QStringLiteral("figures"), job, QStringLiteral("--json")});
  CHECK(figures.exit == 0);
  CHECK(figures.err.isEmpty());
  CHECK(core::base::parseJson(figures.out.toStdString()).readable);
  CHECK(figures.out.endsWith('\n'));
  CHECK(program.run({QStringLiteral("steps"), job, QStringLiteral("--json")}).exit == 0);
  CHECK(program.run({QStringLiteral("rehearse"), job}).exit == 0);
}

TEST_CASE("the program leaves with 0, 1, 2 or 3") {
  const Program program;
  const QString good = program.file(QStringLiteral("good.job.json"), tests::workedExample());
  const QString bad = program.file(QStringLiteral("bad.job.json"), "{}");
  CHECK(program.run({QStringLiteral("check"), good}).exit == 0);
  const Ran problems = program.run({QStringLiteral("check"), bad});
  CHECK(problems.exit == 1);
  CHECK(problems.out.startsWith((bad + QStringLiteral(":: ")).toUtf8()));
  CHECK(program.run({QStringLiteral("chekc"), bad}).exit == 2);
  CHECK(program.run({QStringLiteral("plan"), good}).exit == 2);
  CHECK(program.run({QStringLiteral("check"), QStringLiteral("/no/such/file.json")}).exit == 3);
  CHECK(program.run({QStringLiteral("figures"), QStringLiteral("/")}).exit == 3);
}

TEST_CASE("a full device and a closed output are told, and nothing is written where it does not belong") {
  const Program program;
  const QString job = program.file(QStringLiteral("c.job.json"), tests::workedExample());
  for (const char* command : {"figures", "materials --json", "steps --json", "rehearse", "care", "--help"}) {
    for (const char* away : {">/dev/full", ">&-", ">&- 2>&-", "<&- >&-"}) {
      INFO(command << ' ' << away);
      const QString file = QString::fromLatin1(command).startsWith(u'-') ? QString() : job;
      const Ran ran = program.shell(QStringLiteral("%1 %2 %3").arg(QLatin1String(command), file, QLatin1String(away)));
      CHECK(ran.exit == 3);
      CHECK(ran.out.isEmpty());
      CHECK(ran.err.contains("not all of it could be written") == (QByteArray(away) != ">&- 2>&-"));
    }
  }
  REQUIRE(QDir().mkpath(program.path(QStringLiteral("d"))));
  // With its output closed the program's first file would get the number its sentences go to.
  CHECK(program.shell(QStringLiteral("export 26-041 --data %1 >&- 2>&-").arg(program.path(QStringLiteral("d")))).exit ==
        1);
  const auto lock = tests::readWholeFile(program.path(QStringLiteral("d/record.sqlite.lock")).toStdString());
  REQUIRE(lock.has_value());
  CHECK(lock->find("there is no job") == std::string::npos);
  CHECK(program
            .run({QStringLiteral("export"), QStringLiteral("26-041"), QStringLiteral("--data"),
                  program.path(QStringLiteral("d"))})
            .err == "there is no job in this record yet\n");
}

TEST_CASE("no locale changes a byte") {
  const Program program;
  const QString job = program.file(QStringLiteral("c.job.json"), tests::inchExample());
  const QString stocked = program.file(QStringLiteral("s.job.json"), tests::stockedExample());
  const QString bad =
      program.file(QStringLiteral("b.job.json"), tests::changed(tests::workedExample(), "\"14 mm\"", "\"60.25 mm\""));
  std::vector<QString> locales = {QStringLiteral("POSIX"), QStringLiteral("C.UTF-8"), QStringLiteral("no_SUCH")};
  // A decimal comma; other case rules for i; another calendar and digits.
  for (const char* name : {"de_DE", "tr_TR", "fa_IR"}) {
    if (program.makeLocale(QString::fromLatin1(name)))
      locales.push_back(QString::fromLatin1(name) + QStringLiteral(".UTF-8"));
  }
  for (const QStringList& arguments :
       {QStringList{QStringLiteral("figures"), job, QStringLiteral("--json")},
        QStringList{QStringLiteral("figures"), job}, QStringList{QStringLiteral("steps"), job},
        QStringList{QStringLiteral("rehearse"), job, QStringLiteral("--json")},
        QStringList{QStringLiteral("materials"), stocked, QStringLiteral("--json")},
        QStringList{QStringLiteral("materials"), stocked}, QStringList{QStringLiteral("check"), bad}}) {
    const Ran plain = program.run(arguments);
    CHECK_FALSE(plain.out.isEmpty());
    for (const QString& locale : locales) {
      INFO(arguments.first().toStdString() << " in " << locale.toStdString());
      const Ran other = program.run(arguments, locale);
      CHECK(other.exit == plain.exit);
      CHECK(other.out == plain.out);
    }
  }
}
