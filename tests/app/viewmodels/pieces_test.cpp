// The board of pieces: found, put away, made once more, handed over as a file and taken in from one.
#include "app/viewmodels/desk/pieces_model.h"

#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "core/base/text.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using app::viewmodels::PiecesModel;
using app::viewmodels::RowsModel;

namespace {

QStringList filesIn(const QString& folder) {
  QStringList paths;
  for (const QFileInfo& file : QDir(folder).entryInfoList(QDir::Files, QDir::Name)) paths << file.absoluteFilePath();
  return paths;
}

QStringList titles(const PiecesModel& pieces) {
  QStringList all;
  for (int row = 0; row < pieces.count(); ++row) {
    all << pieces.data(pieces.index(row), PiecesModel::Title).toString();
  }
  all.sort();
  return all;
}

struct Board {
  explicit Board(const std::vector<std::string>& jobs) : stage(jobs) {
    pieces().setHandOver(folder.path(), [this] { return filesIn(folder.path()); });
  }
  PiecesModel& pieces() { return stage.desk().pieces(); }
  void put(const char* name, const std::string& text) {
    REQUIRE(tests::writeWholeFile(folder.filePath(QString::fromLatin1(name)).toStdString(), text));
  }
  // The files that could be taken in, and what is said of the one asked for.
  QString takeIn(const char* name) {
    pieces().findFiles();
    for (int row = 0; row < pieces().files()->count(); ++row) {
      if (pieces().files()->data(pieces().files()->index(row), RowsModel::Title).toString() != QLatin1String(name))
        continue;
      pieces().takeIn(row);
      return pieces().said();
    }
    FAIL("no such file is offered");
    return {};
  }

  QTemporaryDir folder;
  tests::Stage stage;
};

std::string jobFile(const char* name) {
  return tests::readWholeFile(std::string(PROJECT_ROOT "/recipes/jobs/") + name + ".job.json").value();
}

}  // namespace

TEST_CASE("pieces are found by any words of theirs, in any order") {
  Board board({"heron", "pilots-chart", "tide-table"});
  PiecesModel& pieces = board.pieces();
  const QStringList all = titles(pieces);
  REQUIRE(all.size() == 3);
  pieces.seek("bar chart");
  CHECK(titles(pieces) == QStringList{"Pilot's chart of the outer bar"});
  pieces.seek("CHART  26-041");
  CHECK(titles(pieces).size() == 1);
  pieces.seek("nothing of the kind");
  CHECK(pieces.count() == 0);
  CHECK(pieces.all() == 3);
  pieces.seek("");
  CHECK(titles(pieces) == all);
}

TEST_CASE("a piece put away leaves the board and the bench, and comes back") {
  Board board({"heron", "pilots-chart"});
  PiecesModel& pieces = board.pieces();
  pieces.seek("chart");
  pieces.choose(0);
  pieces.putAway();
  CHECK_FALSE(pieces.refused());
  CHECK(pieces.chosenAway());
  pieces.seek("");
  CHECK(titles(pieces).size() == 1);
  CHECK(pieces.away() == 1);
  CHECK(board.stage.desk().jobs().rowCount() == 1);
  pieces.showAway(true);
  CHECK(titles(pieces) == QStringList{"Pilot's chart of the outer bar"});
  pieces.choose(0);
  pieces.bringBack();
  CHECK_FALSE(pieces.refused());
  pieces.showAway(false);
  CHECK(titles(pieces).size() == 2);
  CHECK(board.stage.desk().jobs().rowCount() == 2);
}

TEST_CASE("a design nobody goes on with is put away and found again") {
  Board board({});
  PiecesModel& pieces = board.pieces();
  REQUIRE(board.stage.desk().design().beginFresh());
  REQUIRE(pieces.count() == 1);
  pieces.choose(0);
  REQUIRE(pieces.chosenDesign());
  pieces.putAway();
  CHECK_FALSE(pieces.refused());
  CHECK(pieces.chosenAway());
  CHECK(pieces.count() == 0);
  CHECK(pieces.away() == 1);
  pieces.showAway(true);
  REQUIRE(pieces.count() == 1);
  pieces.bringBack();
  CHECK(pieces.away() == 0);
  pieces.showAway(false);
  CHECK(pieces.count() == 1);
}

TEST_CASE("a piece is drawn and reckoned before it has a title, and goes to no bench without one") {
  tests::Stage stage({});
  auto& design = stage.desk().design();
  REQUIRE(design.beginFresh());
  CHECK_FALSE(design.holds());
  const auto put = [&](const char* pointer, const char* value) {
    core::base::Value patch = core::base::Value::array();
    patch.append(core::base::Value::object()
                     .set("op", core::base::Value::text("add"))
                     .set("path", core::base::Value::text(pointer))
                     .set("value", core::base::Value::text(value)));
    REQUIRE(stage.workbench()
                .submit(core::intents::OfDesign{stage.workbench().designs().all().front()->id,
                                                core::intents::ChangeDesign{patch}})
                .id.empty());
  };
  put("/artwork/width", "240 mm");
  put("/artwork/height", "320 mm");
  CHECK(design.holds());
  CHECK_FALSE(design.complete());
  CHECK_FALSE(design.toBench());
  CHECK(stage.workbench().jobs().empty());
  put("/title", "Ferry at low water");
  CHECK(design.complete());
  CHECK(design.toBench());
}

TEST_CASE("a piece with something running is not put away, and why is said") {
  Board board({"heron"});
  REQUIRE(board.stage.workUntil([&] { return board.stage.workbench().schedule()->alerts.size() > 0; }));
  PiecesModel& pieces = board.pieces();
  pieces.choose(0);
  pieces.putAway();
  CHECK(pieces.refused());
  CHECK_FALSE(pieces.said().isEmpty());
  CHECK(pieces.away() == 0);
}

TEST_CASE("the same once more is another job, numbered and begun from nothing") {
  Board board({"pilots-chart"});
  PiecesModel& pieces = board.pieces();
  int steps = 2;
  REQUIRE(board.stage.workUntil([&] { return steps-- == 0; }));
  pieces.choose(0);
  const QString first = pieces.chosenId();
  REQUIRE(pieces.onceMore());
  CHECK(pieces.chosenId() != first);
  CHECK(pieces.chosenOf().startsWith("26-041 / 2"));
  CHECK(pieces.chosenDue().isEmpty());
  CHECK(pieces.chosenWhere().startsWith("0 of "));
  CHECK(pieces.said().contains("26-041 / 2"));
  CHECK(titles(pieces).size() == 2);
}

TEST_CASE("a piece handed over as a file goes on at another bench where it was left") {
  Board ours({"pilots-chart"});
  int steps = 6;
  REQUIRE(ours.stage.workUntil([&] { return steps-- == 0; }));
  ours.pieces().choose(0);
  ours.pieces().handOver();
  INFO(ours.pieces().said().toStdString());
  REQUIRE_FALSE(ours.pieces().refused());
  const QStringList files = filesIn(ours.folder.path());
  REQUIRE(files.size() == 1);
  CHECK(ours.pieces().said().contains(files[0]));

  Board theirs({});
  REQUIRE(QFile::copy(files[0], theirs.folder.filePath("handed.record.json")));
  const QString said = theirs.takeIn("handed.record.json");
  INFO(said.toStdString());
  REQUIRE_FALSE(theirs.pieces().refused());
  CHECK(theirs.pieces().chosenWhere() == ours.pieces().chosenWhere());
  CHECK(theirs.stage.desk().bench().title() == ours.stage.desk().bench().title());
  theirs.takeIn("handed.record.json");
  CHECK_FALSE(theirs.pieces().refused());
  CHECK(titles(theirs.pieces()).size() == 1);
}

TEST_CASE("of several identical pieces each alone is handed over beside the whole") {
  Board ours({});
  std::string three = jobFile("pilots-chart");
  three.insert(three.find('{') + 1, R"("deliver": "mount", "count": 3, )");
  ours.put("three.job.json", three);
  ours.takeIn("three.job.json");
  QFile::remove(ours.folder.filePath("three.job.json"));
  ours.pieces().handOver();
  INFO(ours.pieces().said().toStdString());
  REQUIRE_FALSE(ours.pieces().refused());
  const QStringList files = filesIn(ours.folder.path());
  REQUIRE(files.size() == 4);
  ours.pieces().handOver();
  CHECK(filesIn(ours.folder.path()) == files);
  Board theirs({});
  const auto ofSecond = std::find_if(files.begin(), files.end(),
                                     [](const QString& file) { return file.contains(QStringLiteral("-2-of-3")); });
  REQUIRE(ofSecond != files.end());
  REQUIRE(QFile::copy(*ofSecond, theirs.folder.filePath("second.record.json")));
  theirs.takeIn("second.record.json");
  CHECK_FALSE(theirs.pieces().refused());
  REQUIRE(titles(theirs.pieces()).size() == 1);
}

TEST_CASE("two pieces of one reference do not write over each other's files") {
  Board board({"pilots-chart", "heron"});
  PiecesModel& pieces = board.pieces();
  board.put("twin.job.json", jobFile("pilots-chart") + "\n");
  board.takeIn("twin.job.json");
  REQUIRE_FALSE(pieces.refused());
  QFile::remove(board.folder.filePath("twin.job.json"));
  pieces.handOver();
  pieces.seek("26-041");
  REQUIRE(pieces.count() == 2);
  for (int row = 0; row < 2; ++row) {
    pieces.choose(row);
    for (int again = 0; again < 2; ++again) {
      pieces.handOver();
      REQUIRE_FALSE(pieces.refused());
    }
  }
  CHECK(filesIn(board.folder.path()).size() == 2);
}

TEST_CASE("what is no job is told with its file and place, and nothing is taken in") {
  Board board({});
  const std::string chart = jobFile("pilots-chart");
  board.put("a-empty.job.json", "");
  board.put("b-cut.job.json", chart.substr(0, chart.size() / 2));
  board.put("c-wrong.job.json", core::base::replaceAll(chart, "\"Pilot's chart of the outer bar\"", "5"));
  board.put("d-other.record.json",
            "{\"format\": \"mountwright-record/1\", \"job\": \"x\", \"texts\": [], \"events\": []}");
  board.put("e-letters.job.json", std::string("\xff\xfe\x00\x00", 4));
  board.put("f-deep.job.json", std::string(100'000, '['));
  for (const char* name : {"a-empty.job.json", "b-cut.job.json", "c-wrong.job.json", "d-other.record.json",
                           "e-letters.job.json", "f-deep.job.json"}) {
    const QString said = board.takeIn(name);
    INFO(name << ": " << said.toStdString());
    CHECK(board.pieces().refused());
    CHECK(said.startsWith(QLatin1String(name)));
    if (name[0] == 'b' || name[0] == 'f') CHECK(said.section(':', 1, 2).contains(':'));
    if (name[0] == 'c') CHECK(said.contains(":/title: "));
    CHECK(board.pieces().all() == 0);
  }
  // Gone between being offered and being asked for.
  board.put("g-gone.job.json", chart);
  board.pieces().findFiles();
  REQUIRE(QFile::remove(board.folder.filePath("g-gone.job.json")));
  board.pieces().takeIn(6);
  CHECK(board.pieces().refused());
  CHECK(board.pieces().said().contains("g-gone.job.json"));
}

TEST_CASE("a folder that cannot be written is told") {
  Board board({"heron"});
  board.put("in-the-way", "");
  board.pieces().setHandOver(board.folder.filePath("in-the-way"), [] { return QStringList(); });
  board.pieces().choose(0);
  board.pieces().handOver();
  CHECK(board.pieces().refused());
  CHECK(board.pieces().said().contains("in-the-way"));
}

TEST_CASE("handing over follows no link out of the folder and waits for nobody") {
  Board board({"pilots-chart"});
  QTemporaryDir elsewhere;
  board.pieces().choose(0);
  board.pieces().handOver();
  REQUIRE_FALSE(board.pieces().refused());
  const QStringList made = filesIn(board.folder.path());
  REQUIRE(made.size() == 1);
  const QString path = made.front();
  const QByteArray handed = [&] {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }();
  REQUIRE(QFile::remove(path));
  const int kind = GENERATE(0, 1, 2, 3);
  INFO(kind);
  QFile own(elsewhere.filePath("own.record.json"));
  REQUIRE(own.open(QIODevice::WriteOnly));
  REQUIRE(own.write(handed) == handed.size());
  own.close();
  if (kind == 0) REQUIRE(QFile::link(elsewhere.filePath("new"), path));
  // Even where what it leads to is this very piece's.
  if (kind == 1) REQUIRE(QFile::link(own.fileName(), path));
  if (kind == 2) REQUIRE(mkfifo(QFile::encodeName(path).constData(), 0600) == 0);
  if (kind == 3) REQUIRE(QFile::link("/dev/zero", path));
  board.pieces().handOver();
  CHECK_FALSE(board.pieces().refused());
  CHECK_FALSE(QFile::exists(elsewhere.filePath("new")));
  CHECK(QFileInfo(own.fileName()).size() == handed.size());
  CHECK(QFileInfo(path).isSymLink() == (kind != 2));
  QString second = path;
  second.replace(".record.json", "-2.record.json");
  REQUIRE(QFileInfo(second).isFile());
  CHECK(QFileInfo(second).size() == handed.size());
  CHECK(board.pieces().said().contains(second));
}

TEST_CASE("a pipe or a device among the files to take in is told and waits for nobody") {
  Board board({});
  REQUIRE(mkfifo(QFile::encodeName(board.folder.filePath("pipe")).constData(), 0600) == 0);
  for (const QString& target : {board.folder.filePath("pipe"), QStringLiteral("/dev/zero")}) {
    const QString link = board.folder.filePath("a.job.json");
    QFile::remove(link);
    REQUIRE(QFile::link(target, link));
    board.pieces().setHandOver(board.folder.path(), [&] { return QStringList{link}; });
    board.pieces().findFiles();
    board.pieces().takeIn(0);
    CHECK(board.pieces().refused());
    CHECK(board.pieces().said().startsWith("a.job.json: "));
  }
}

TEST_CASE("a piece whose kept text is damaged is not handed over by half") {
  Board board({"pilots-chart"});
  board.pieces().choose(0);
  REQUIRE(board.stage.damage("pilots-chart"));
  board.pieces().handOver();
  CHECK(board.pieces().refused());
  CHECK(board.pieces().said().contains("no longer what was kept"));
  CHECK(filesIn(board.folder.path()).isEmpty());
}
