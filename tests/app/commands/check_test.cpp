#include <algorithm>

#include "tests/app/commands/ran.h"

using tests::changed;
using tests::Commands;
using tests::contains;
using tests::workedExample;

namespace {

std::string technique(const QString& folder, const char* name) {
  const auto text =
      tests::readWholeFile((folder + u'/' + QLatin1String(name) + QStringLiteral(".technique.json")).toStdString());
  REQUIRE(text.has_value());
  return *text;
}

}  // namespace

TEST_CASE("a job without problems gives nothing on the standard output and leaves with 0") {
  const Commands commands;
  const auto ran = commands.check(workedExample());
  CHECK(ran.exit == 0);
  CHECK(ran.out.empty());
}

TEST_CASE("the delivered jobs and techniques have no problems") {
  const Commands commands;
  QStringList arguments = {QStringLiteral("check")};
  for (const char* folder : {PROJECT_ROOT "/recipes", PROJECT_ROOT "/recipes/jobs"}) {
    const QDir directory(QString::fromUtf8(folder));
    for (const QString& name : directory.entryList({QStringLiteral("*.json")}, QDir::Files)) {
      arguments << directory.filePath(name);
    }
  }
  REQUIRE(arguments.size() > 15);
  const auto ran = commands.run(arguments);
  INFO(ran.out);
  CHECK(ran.exit == 0);
  CHECK(ran.out.empty());
}

TEST_CASE("every problem is told at once, each at its place, in the order of the document") {
  const Commands commands;
  std::string text = changed(workedExample(), "\"thickness\": \"0.3 mm\"", "\"thickness\": 0.3");
  text = changed(text, "\"reveal\": \"6 mm\"", "\"reveal\": \"2 mm\"");
  text = changed(text, "\"motif\": \"mirror\"", "\"motif\": \"odd\"");
  text = changed(text, "\"room\"", "\"rooms\"");
  const auto lines = commands.problems(text);
  REQUIRE(lines.size() >= 3);
  const auto place = [](const std::string& line) { return line.substr(0, line.find(": ")); };
  std::vector<std::string> places;
  for (const auto& line : lines) places.push_back(place(line));
  const std::vector<std::string> wanted = {"a.job.json:/artwork/thickness", "a.job.json:/bands/0/motif",
                                           "a.job.json:/rooms"};
  for (const auto& want : wanted) {
    INFO(want);
    CHECK(std::count(places.begin(), places.end(), want) == 1);
  }
  const auto at = [&](const std::string& want) { return std::find(places.begin(), places.end(), want); };
  CHECK(at(wanted[0]) < at(wanted[1]));
  CHECK(at(wanted[1]) < at(wanted[2]));
}

TEST_CASE("a missing key points at its parent, and the root has an empty pointer") {
  const Commands commands;
  const auto lines = commands.problems(changed(workedExample(), "\"width\": \"14 mm\", ", ""));
  REQUIRE(!lines.empty());
  CHECK(lines[0] == "a.job.json:/bands/0: the key \"width\" is missing");
  const auto root = commands.problems("{\"format\": \"mountwright-job/1\"}");
  REQUIRE(root.size() == 2);
  CHECK(root[0] == "a.job.json:: the key \"artwork\" is missing");
  CHECK(root[1] == "a.job.json:: the key \"mount\" is missing");
}

TEST_CASE("a syntax error is one line with line and column and ends the reading") {
  const Commands commands;
  const auto lines = commands.problems("{\n  \"format\": \"mountwright-job/1\",\n  oops\n}");
  REQUIRE(lines.size() == 1);
  CHECK(core::base::startsWith(lines[0], "a.job.json:3:3: "));
}

TEST_CASE("a notice goes to the other stream, says so, and does not fail") {
  const Commands commands;
  const auto ran = commands.check(changed(workedExample(), "\"motif\": \"mirror\"", "\"motif\": \"directional\""));
  CHECK(ran.exit == 0);
  CHECK(ran.out.empty());
  CHECK(contains(ran.err, ":/bands/0/motif: notice: "));
}

TEST_CASE("a choice that plays no part in the piece is told as a notice at its role") {
  const Commands commands;
  const auto with = [&](const std::string& members) {
    std::string text = workedExample();
    text.insert(text.find('{') + 1, members + ", ");
    return commands.check(text);
  };
  const auto idle = with(R"("deliver": "mount", "techniques": {"glazing": "close-acrylic", "joining": "join-wet"})");
  INFO(idle.err);
  CHECK(idle.exit == 0);
  CHECK(contains(idle.err, ":/techniques/glazing: notice: \"Glazed with acrylic\" is chosen, and plays no part"));
  CHECK_FALSE(contains(idle.err, ":/techniques/joining"));
  CHECK_FALSE(contains(with(R"("techniques": {"glazing": "close-acrylic"})").err, "plays no part"));
}

TEST_CASE("corners that miss are told with what closes them, as a notice at the repeat") {
  const Commands commands;
  const auto ran = commands.check(workedExample());
  CHECK(ran.exit == 0);
  CHECK(ran.out.empty());
  INFO(ran.err);
  CHECK(
      contains(ran.err,
               ":/bands/0/repeat: notice: the corners of the inner band miss by 11.0 mm of 24.0 mm; what closes them: "
               "band inner: centre the strips at the sides on ground and "));
  CHECK(contains(ran.err, "1 read, no problems"));
  // As it proposes, they meet, and nothing is told.
  const auto closed = commands.check(changed(workedExample(), "\"offset\": \"10 mm\"",
                                             "\"offset\": {\"sides\": \"11 mm\", \"topBottom\": \"10 mm\"}, "
                                             "\"centre\": {\"vertical\": \"ground\"}"));
  CHECK(closed.exit == 0);
  CHECK_FALSE(contains(closed.err, "corners"));
  // An error keeps its place on the standard output; what rests on whole figures is not told beside it.
  const auto wrong = commands.check(changed(workedExample(), "\"reveal\": \"6 mm\"", "\"reveal\": \"1 mm\""));
  CHECK(wrong.exit == 1);
  CHECK_FALSE(contains(wrong.err, "corners"));
}

TEST_CASE(
    "a decorated face that touches the glazing is told, and not with a spacer, without glazing or without a frame") {
  const Commands commands;
  const std::string said = "notice: the decorated face touches the glazing; a spacer holds it off";
  CHECK(contains(commands.check(workedExample()).err, "a.job.json:/package: " + said));
  const std::string glazing = "\"glazing\": \"2 mm\"";
  for (const char* package : {"\"glazing\": \"2 mm\", \"spacer\": \"3 mm\"", "\"glazing\": \"0 mm\""}) {
    INFO(package);
    CHECK_FALSE(contains(commands.check(changed(workedExample(), glazing, package)).err, said));
  }
  const std::string attached = changed(workedExample(), "\"package\"", "\"deliver\": \"attached\", \"package\"");
  CHECK_FALSE(contains(commands.check(attached).err, said));
}

TEST_CASE("a spacer that the lip does not hide is told with both, at the value that is there") {
  const Commands commands;
  const auto with = [&](const char* package, const char* cover = "6 mm") {
    std::string text = changed(workedExample(), "\"glazing\": \"2 mm\"", package);
    text = changed(text, "\"cover\": \"6 mm\"", std::string("\"cover\": \"") + cover + '"');
    const auto ran = commands.check(text);
    CHECK(ran.exit == 0);
    return ran.err;
  };
  CHECK(contains(with(R"("spacer": "3 mm", "spacerWidth": "8 mm")"),
                 "a.job.json:/package/spacerWidth: notice: the spacer is 8.0 mm wide and the lip hides 6.0 mm: it "
                 "shows in the sight; no wider than 3.0 mm, it stays hidden"));
  CHECK(contains(with(R"("spacer": "3 mm", "spacerWidth": "5 mm")"),
                 "a.job.json:/package/spacerWidth: notice: the spacer is 5.0 mm wide, and at the top the lip hides "
                 "only 3.0 mm of its 6.0 mm, since the package settles below"));
  CHECK(contains(with(R"("spacer": "3 mm")", "4 mm"),
                 "a.job.json:/package: notice: the lip hides 4.0 mm, and 1.0 mm at the top: no spacer stays hidden"));
  CHECK_FALSE(contains(with(R"("spacer": "3 mm", "spacerWidth": "3 mm")"), "spacer"));
}

TEST_CASE("what the chosen techniques want is told with the figures, and in the job's units") {
  const Commands commands;
  const std::string bare = changed(
      workedExample(), R"(, "sheet": { "width": "330 mm", "height": "260 mm", "left": "10 mm", "top": "8 mm" })", "");
  const auto strips =
      commands.check(changed(bare, "\"package\"", R"("techniques": {"attachment": "attach-strips"}, "package")"));
  INFO(strips.err);
  CHECK(strips.exit == 0);
  CHECK(contains(
      strips.err,
      "a.job.json:/mount/window/overlap: notice: the least that the mount covers of the sheet's edges is "
      "3.0 mm, and 5.0 mm or more is wanted for \"Edge strips without paste\". The leaf that laps the sheet is"));
  const auto corners =
      commands.check(changed(bare, "\"package\"", R"("techniques": {"attachment": "attach-corners"}, "package")"));
  CHECK(contains(corners.err,
                 "added up, is 6.0 mm, and 15.0 mm or more is wanted for \"Paper corners without paste\". "));
  CHECK_FALSE(contains(commands.check(bare).err, "wanted for"));
}

TEST_CASE("a damp or cold room is told where the job names one") {
  const Commands commands;
  const char* kRoom = R"("temperature": "19 C", "humidity": "58 %")";
  const auto damp = commands.check(changed(workedExample(), kRoom, R"("temperature": "19 C", "humidity": "72 %")"));
  CHECK(damp.exit == 0);
  CHECK(contains(damp.err,
                 "a.job.json:/room/humidity: notice: the room's humidity is 72 %, and at most 60 % is "
                 "wanted for \"Glazed with glass\". Closed in damp air it grows mould"));
  const auto cold = commands.check(changed(workedExample(), kRoom, R"("temperature": "8 C", "humidity": "50 %")"));
  CHECK(
      contains(cold.err, "a.job.json:/room/temperature: notice: the room is 8 °C, and 10 °C or more is wanted for \""));
  CHECK(contains(cold.err, "\". Below that its film may never form"));
  CHECK_FALSE(contains(commands.check(workedExample()).err, "/room"));
}

TEST_CASE("metal that is left bare and not named is told at its leaf, and named it is not") {
  const Commands commands;
  const auto ran = commands.check(workedExample());
  CHECK(ran.exit == 0);
  CHECK(contains(ran.err,
                 "a.job.json:/leaf/0: notice: \"Leave scattered metal bare\" is for gold of 22 carats or more, "
                 "palladium or aluminium, and the job names none for leaf field. Any other metal tarnishes"));
  CHECK_FALSE(contains(commands
                           .check(changed(workedExample(), "\"method\": \"scattered\",",
                                          "\"method\": \"scattered\", \"metal\": \"gold\","))
                           .err,
                       "/leaf/0"));
}

TEST_CASE("a room no wait can be reckoned in is told once, at the room, and one that it can is not") {
  const Commands commands;
  const auto hot = commands.check(changed(workedExample(), R"("temperature": "19 C", "humidity": "58 %")",
                                          R"("temperature": "40 C", "humidity": "50 %")"));
  CHECK(hot.exit == 0);
  const std::string said = "a.job.json:/room: notice: 40 °C is too warm to predict: by touch";
  CHECK(contains(hot.err, said));
  CHECK(hot.err.find(said) == hot.err.rfind(said));
  CHECK_FALSE(contains(commands.check(workedExample()).err, "to predict"));
}

TEST_CASE("metal that tarnishes and is left bare is told with what would do") {
  const Commands commands;
  const auto ran = commands.check(
      changed(workedExample(), "\"method\": \"scattered\",", "\"method\": \"scattered\", \"metal\": \"brass\","));
  CHECK(ran.exit == 0);
  CHECK(contains(ran.err,
                 "a.job.json:/leaf/0/metal: notice: \"Leave scattered metal bare\" is for gold of 22 carats or more, "
                 "palladium or aluminium, and leaf field is brass, imitation gold. Any other metal tarnishes: choose a "
                 "seal."));
  const auto odd = commands.check(
      changed(workedExample(), "\"method\": \"scattered\",", "\"method\": \"scattered\", \"metal\": \"tin\","));
  CHECK(odd.exit == 1);
  CHECK(contains(odd.out, "a.job.json:/leaf/0/metal: "));
}

TEST_CASE("several files are told one after the other and the worst decides the exit") {
  const Commands commands;
  const QString good = commands.file(QStringLiteral("good.job.json"), workedExample());
  const QString bad = commands.file(QStringLiteral("bad.job.json"), "{}");
  const auto both = commands.run({QStringLiteral("check"), bad, good});
  CHECK(both.exit == 1);
  const auto missing = commands.run({QStringLiteral("check"), commands.path(QStringLiteral("none.json")), bad});
  CHECK(missing.exit == 3);
  CHECK(contains(missing.out, "bad.job.json:: "));
  CHECK(contains(missing.err, "none.json:: there is no such file"));
}

TEST_CASE("a folder, a missing file and one that may not be read leave with 3 and are told apart") {
  const Commands commands;
  const auto folder = commands.run({QStringLiteral("check"), commands.path(QStringLiteral("."))});
  CHECK(folder.exit == 3);
  CHECK(contains(folder.err, "this is a folder"));
  const auto missing = commands.run({QStringLiteral("figures"), commands.path(QStringLiteral("none.job.json"))});
  CHECK(missing.exit == 3);
  const QString locked = commands.file(QStringLiteral("locked.job.json"), workedExample());
  REQUIRE(QFile::setPermissions(locked, QFileDevice::Permissions()));
  // Root may read everything; for anybody else it is a file that may not be read.
  if (!QFileInfo(locked).isReadable()) {
    const auto ran = commands.run({QStringLiteral("figures"), locked});
    CHECK(ran.exit == 3);
    CHECK(contains(ran.err, "may not be read"));
  }
}

TEST_CASE("a name or key with a line break stays on one line") {
  const Commands commands;
  const auto lines = commands.problems("{\"format\": \"mountwright-job/1\", \"a\\nb\": 1}");
  REQUIRE(lines.size() == 3);
  CHECK(contains(core::base::join(lines, "|"), "a.job.json:/a\\u000ab: "));
}

TEST_CASE("a technique that needs a fact nobody makes is told at the need") {
  const Commands commands;
  const QString recipes = commands.recipes();
  const std::string text =
      changed(technique(recipes, "final-look"), "\"needs\": [", "\"needs\": [\"piece.varnished\", ");
  const QString file = commands.file(QStringLiteral("own.technique.json"), text);
  const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), recipes});
  CHECK(ran.exit == 1);
  CHECK(contains(ran.out, "own.technique.json:/steps/0/needs/0: "));
  CHECK(contains(ran.out, "\"piece.varnished\", which no technique makes"));
}

TEST_CASE("a technique checked stands in for the one of its id, and what it no longer makes is told") {
  const Commands commands;
  const QString recipes = commands.recipes();
  const std::string text = changed(technique(recipes, "look-edge-over"), "this.window.clean", "this.window.tidy");
  const QString file = commands.file(QStringLiteral("own.technique.json"), text);
  const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), recipes});
  INFO(ran.out << ran.err);
  CHECK(ran.exit == 1);
  CHECK(contains(ran.out, "own.technique.json:: with this file, "));
}

TEST_CASE("a technique with a cycle is told as the path that closes it") {
  const Commands commands;
  const QString recipes = commands.recipes();
  const QString file = commands.file(QStringLiteral("ring.technique.json"), R"({
    "format": "mountwright-technique/1", "id": "ring", "title": "A ring", "rank": 5, "when": {"always": true},
    "steps": [
      {"id": "first", "title": "Do the first", "do": ["Do it."], "good": "Good.", "trap": "Trap.", "tools": [],
       "hands": "clean", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
       "needs": ["piece.two"], "makes": ["piece.one"]},
      {"id": "second", "title": "Do the second", "do": ["Do it."], "good": "Good.", "trap": "Trap.", "tools": [],
       "hands": "clean", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
       "needs": ["piece.one"], "makes": ["piece.two"]}
    ]})");
  const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), recipes});
  INFO(ran.out);
  CHECK(ran.exit == 1);
  CHECK(contains(ran.out, "first"));
  CHECK(contains(ran.out, "these steps wait for each other: "));
}

TEST_CASE("a folder of techniques that is not there leaves with 3") {
  const Commands commands;
  const QString job = commands.file(QStringLiteral("c.job.json"), workedExample());
  const auto ran =
      commands.run({QStringLiteral("steps"), job, QStringLiteral("--recipes"), commands.path(QStringLiteral("no"))});
  CHECK(ran.exit == 3);
  CHECK(contains(ran.err, "no"));
}

TEST_CASE("a length badly written, and a file in another encoding, are told as what they are") {
  const Commands commands;
  const auto told = [&](const std::string& trim) {
    const auto lines = commands.problems(changed(workedExample(), "\"trim\": \"6 mm\"", "\"trim\": \"" + trim + '"'));
    REQUIRE(lines.size() == 1);
    return lines.front();
  };
  const std::string place = "a.job.json:/bands/0/trim: ";
  CHECK(told("6mm") == place + "\"6mm\": one space belongs before the unit, as in \"6 mm\"");
  CHECK(told("10.1 m") == place + "\"10.1 m\" is in \"m\"; a length is written in mm, cm or in");
  std::string wide = "\xFF\xFE";
  for (const char c : workedExample()) {
    wide += c;
    wide += '\0';
  }
  CHECK(commands.problems(wide) ==
        std::vector<std::string>{
            "a.job.json:1:1: the file is written in UTF-16 and has to be in UTF-8; save it as UTF-8"});
}

TEST_CASE("what a step done once cannot have is told in words for it") {
  const Commands commands;
  const QString recipes = commands.recipes();
  const auto told = [&](const std::string& need, const std::string& more) {
    const QString file = commands.file(QStringLiteral("own.technique.json"), R"({
    "format": "mountwright-technique/1", "id": "own", "title": "Own", "rank": 5, "when": {"always": true}, "steps": [
      {"id": "do", "title": "Do it", "do": ["Do it."], "good": "Good.", "trap": "Trap.", "tools": [], "hands": "clean",
       "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
       "needs": [)" + need + "]" + more + R"(, "makes": ["piece.done"]}]})");
    const auto ran = commands.run({QStringLiteral("check"), file, QStringLiteral("--recipes"), recipes});
    INFO(ran.out);
    CHECK(ran.exit == 1);
    return ran.out.substr(ran.out.find(":/") + 1);
  };
  CHECK(told(R"("owner.fitted")", "") == "/steps/0/needs/0: \"owner.fitted\": a step done once has no \"owner\"\n");
  CHECK(told(R"({"every": "strip", "of": "owner", "is": "set"})", "") ==
        "/steps/0/needs/0/of: no strip is in the relation \"owner\" to a step done once\n");
  CHECK(told("", R"(, "figures": ["board.this.reveal"])") ==
        "/steps/0/figures/0: \"board.this.reveal\" is of one thing, and a step done once is for none\n");
  CHECK(told("", R"(, "each": "once")") == "/steps/0/each: a technique done once has no \"once\" to do a step for\n");
}

TEST_CASE("a data folder that is not there, or is a file, is told, and nothing is done without it") {
  const Commands commands;
  const QString job = commands.file("c.job.json", workedExample());
  const QString none = commands.path("nowhere/at all");
  for (const char* command : {"check", "figures", "steps", "materials", "rehearse", "care", "export"}) {
    INFO(command);
    const auto missing = commands.runAsIs({command, job, "--data", none});
    CHECK(missing.exit == 2);
    CHECK(missing.out.empty());
    CHECK(missing.err == "There is no folder " + none.toStdString() + " for the data.\n");
  }
  for (const char* command : {"check", "steps", "import"}) {
    INFO(command);
    const auto file = commands.runAsIs({command, job, "--data", job});
    CHECK(file.exit == 2);
    CHECK(file.out.empty());
    CHECK(file.err == job.toStdString() + " is a file; a folder is needed for the data.\n");
  }
  CHECK_FALSE(QFileInfo::exists(none));
}

TEST_CASE("an empty file is called empty, with nothing in it or nothing but white space") {
  const Commands commands;
  for (const char* text : {"", " \n\t\r\n"}) {
    CHECK(commands.problems(text) == std::vector<std::string>{"a.job.json:1:1: the file is empty"});
  }
}
