#include "app/commands/command_line.h"

#include "tests/app/commands/ran.h"

using tests::Commands;

TEST_CASE("wrong use leaves with 2, says why, and writes nothing that could be taken for a result") {
  const Commands commands;
  const QString job = commands.file(QStringLiteral("c.job.json"), tests::workedExample());
  const std::vector<QStringList> wrong = {
      {QStringLiteral("chekc"), job},
      {QStringLiteral("check")},
      {QStringLiteral("figures")},
      {QStringLiteral("figures"), job, job},
      {QStringLiteral("figures"), job, QStringLiteral("--units"), QStringLiteral("ft")},
      {QStringLiteral("figures"), job, QStringLiteral("--units")},
      {QStringLiteral("steps"), job, QStringLiteral("--units"), QStringLiteral("mm")},
      {QStringLiteral("check"), job, QStringLiteral("--json")},
      {QStringLiteral("steps"), job, QStringLiteral("--fast")},
      {QStringLiteral("rehearse"), job, QStringLiteral("--units"), QStringLiteral("mm")},
      {QStringLiteral("sheet"), job},
      {QStringLiteral("template"), job},
      {QStringLiteral("plan"), job},
  };
  for (QStringList arguments : wrong) {
    // An option without its value must stand last.
    std::ostringstream out;
    std::ostringstream err;
    INFO(arguments.join(u' ').toStdString());
    CHECK(app::commands::run(arguments, out, err) == 2);
    CHECK(out.str().empty());
    CHECK(core::base::split(err.str(), '\n').size() == 2);
  }
}

TEST_CASE("what is to come is refused by name") {
  const Commands commands;
  const auto ran = commands.run({QStringLiteral("sheet"), QStringLiteral("c.job.json")});
  CHECK(ran.err == "not yet: this version has no \"sheet\"\n");
}

TEST_CASE("options may stand anywhere and after two hyphens there are none") {
  using app::commands::parseCommandLine;
  const auto line = parseCommandLine({QStringLiteral("--data"), QStringLiteral("d"), QStringLiteral("check"),
                                      QStringLiteral("a.json"), QStringLiteral("--recipes=r"), QStringLiteral("--"),
                                      QStringLiteral("--odd.json")});
  CHECK(line.wrongUse.id.empty());
  CHECK(line.command == QStringLiteral("check"));
  CHECK(line.data == QStringLiteral("d"));
  CHECK(line.recipes == QStringLiteral("r"));
  CHECK(line.files == QStringList{QStringLiteral("a.json"), QStringLiteral("--odd.json")});
}

TEST_CASE("no command opens the bench, with the jobs to take in") {
  using namespace app::commands;
  CHECK(opensBench(parseCommandLine({})));
  const auto line = parseCommandLine({QStringLiteral("a.job.json"), QStringLiteral("sub/b")});
  CHECK(opensBench(line));
  CHECK(line.files.size() == 2);
  CHECK_FALSE(opensBench(parseCommandLine({QStringLiteral("--help")})));
  CHECK_FALSE(opensBench(parseCommandLine({QStringLiteral("check")})));
}

TEST_CASE("help and version go to the standard output") {
  const Commands commands;
  const auto help = commands.run({QStringLiteral("--help")});
  CHECK(help.exit == 0);
  CHECK(tests::contains(help.out, "mountwright rehearse JOB"));
  const auto version = commands.run({QStringLiteral("check"), QStringLiteral("--version")});
  CHECK(version.exit == 0);
  CHECK(core::base::startsWith(version.out, "mountwright "));
}
