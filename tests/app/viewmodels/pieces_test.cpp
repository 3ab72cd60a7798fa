// The board of pieces: found, put away, made once more, handed over as a file and taken in from one.
#include "app/viewmodels/desk/pieces_model.h"

#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTime>
#include <algorithm>

#include "core/base/text.h"
#include "tests/app/gallery/states.h"
#include "tests/app/viewmodels/rows.h"
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

TEST_CASE(
    "a piece on the board says how far it is, what comes next and what it waits for, and is drawn as it has grown") {
  Board board({"pilots-chart"});
  PiecesModel& pieces = board.pieces();
  const auto told = [&](int role) { return pieces.data(pieces.index(0), role); };
  CHECK(told(PiecesModel::Done).toInt() == 0);
  CHECK(told(PiecesModel::Wait).toString().isEmpty());
  const auto made = [&] {
    const auto drawing = told(PiecesModel::Picture).value<app::viewmodels::PieceDrawing>();
    REQUIRE(drawing.piece);
    return std::count_if(drawing.piece->primitives.begin(), drawing.piece->primitives.end(),
                         [](const auto& one) { return one.standing == core::sheets::Standing::Made; });
  };
  const auto before = made();
  REQUIRE(board.stage.workUntil([&] { return board.stage.desk().shelf().count() > 0; }));
  CHECK(told(PiecesModel::Done).toInt() > 5);
  CHECK(told(PiecesModel::All).toInt() > told(PiecesModel::Done).toInt());
  CHECK_FALSE(told(PiecesModel::Act).toString().isEmpty());
  // What it is, then the verb with its time.
  CHECK(told(PiecesModel::Wait).toString().contains(QRegularExpression("^.+: .*[0-9]:[0-9][0-9]")));
  REQUIRE(board.stage.workUntil([&] { return 2 * told(PiecesModel::Done).toInt() > told(PiecesModel::All).toInt(); }));
  CHECK(made() > before);
}

TEST_CASE("all pieces found are drawn to the scale of the largest among them, whether job or design") {
  Board board({"heron", "pilots-chart"});
  PiecesModel& pieces = board.pieces();
  const auto size = [&](int row) {
    return QSizeF(pieces.data(pieces.index(row), PiecesModel::Across).toDouble(),
                  pieces.data(pieces.index(row), PiecesModel::Down).toDouble());
  };
  for (int row = 0; row < 2; ++row) {
    const auto drawing = pieces.data(pieces.index(row), PiecesModel::Picture).value<app::viewmodels::PieceDrawing>();
    REQUIRE(drawing.piece);
    CHECK(size(row) == QSizeF(drawing.piece->width, drawing.piece->height));
  }
  CHECK(pieces.largest() == size(0).expandedTo(size(1)));
  pieces.seek("chart");
  REQUIRE(pieces.count() == 1);
  CHECK(pieces.largest() == size(0));
  CHECK(size(0).width() > 400);
  pieces.seek("");
  REQUIRE(board.stage.beginDesign("tide-table"));
  REQUIRE(pieces.count() == 3);
  CHECK(size(0).width() > 100);
}

TEST_CASE("the piece that lies on the bench stands out, and no other") {
  Board board({"heron", "pilots-chart"});
  PiecesModel& pieces = board.pieces();
  for (const int chosen : {0, 1}) {
    pieces.choose(chosen);
    board.stage.desk().refresh();
    for (const int row : {0, 1})
      CHECK(pieces.data(pieces.index(row), PiecesModel::OnBench).toBool() == (row == chosen));
  }
}

TEST_CASE("of a piece is told when it is ready, what today still holds, what dries and what is to be bought") {
  Board board({"heron"});
  PiecesModel& pieces = board.pieces();
  pieces.choose(0);
  CHECK(pieces.chosenReady().startsWith("Ready about "));
  CHECK(pieces.chosenReady().contains(QRegularExpression(" [0-9]{1,2}:00,")));
  CHECK(pieces.chosenHands().endsWith("by hand"));
  CHECK(pieces.waits()->count() == 0);
  // From now on, one after another, and none of another day.
  REQUIRE(pieces.today()->count() > 3);
  QTime last(0, 0);
  for (int row = 0; row < pieces.today()->count(); ++row) {
    const QTime at = QTime::fromString(tests::cell(*pieces.today(), row, RowsModel::Value), "H:mm");
    REQUIRE(at.isValid());
    CHECK(at >= last);
    last = at;
  }
  // The file lists no stock and the shop has none: all that is needed is told, and nothing said to lack.
  const int needed = pieces.wants()->count();
  REQUIRE(needed > 3);
  CHECK(tests::cell(*pieces.wants(), 0, RowsModel::Of) == "Needed; none is entered in stock");
  CHECK(tests::rowOf(*pieces.wants(), "Reed-green paste paper") >= 0);
  core::intents::StockEntry paper;
  paper.kind = core::intents::StockKind::Paper;
  paper.name = "reed-green paste paper";
  paper.quantity = 3;
  paper.width = core::units::Length::wholeMillimetres(700);
  paper.height = core::units::Length::wholeMillimetres(500);
  REQUIRE(board.stage.workbench().submit(core::intents::OfShop{core::intents::EnterStock{paper}}).id.empty());
  CHECK(tests::rowOf(*pieces.wants(), "Reed-green paste paper") == -1);
  // Of paper there is stock now, so that another paper is known to lack.
  CHECK(tests::cell(*pieces.wants(), 0, RowsModel::Of) == "To buy");
  REQUIRE(board.stage.workUntil([&] { return board.stage.desk().shelf().count() > 0; }));
  REQUIRE(pieces.waits()->count() > 0);
  CHECK(tests::cell(*pieces.waits(), 0, RowsModel::Value) ==
        board.stage.desk().shelf().data(board.stage.desk().shelf().index(0), app::viewmodels::ShelfModel::Brief));
}

TEST_CASE("of a finished piece nothing is ahead, and of a design what is to be bought alone") {
  Board board({"heron"});
  PiecesModel& pieces = board.pieces();
  pieces.choose(0);
  REQUIRE(board.stage.workUntil(
      [&] { return board.stage.desk().bench().kind() == app::viewmodels::BenchViewModel::Kind::Finished; }));
  CHECK(pieces.chosenReady().isEmpty());
  CHECK(pieces.today()->count() == 0);
  CHECK(pieces.chosenDone() == pieces.chosenAll());
  REQUIRE(board.stage.beginDesign("tide-table"));
  pieces.choose(0);
  REQUIRE(pieces.chosenDesign());
  CHECK(pieces.chosenReady().isEmpty());
  CHECK(pieces.today()->count() == 0);
  CHECK(pieces.wants()->count() > 0);
  CHECK(pieces.chosenAll() == 0);
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
  CHECK(pieces.chosenDone() == 0);
  CHECK(pieces.chosenAll() > 50);
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
  CHECK(theirs.pieces().chosenAct() == ours.pieces().chosenAct());
  CHECK(theirs.pieces().chosenDone() == ours.pieces().chosenDone());
  CHECK(theirs.pieces().chosenDone() > 0);
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
