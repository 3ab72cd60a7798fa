// Notes, photographs and batches added to a piece's record at the desk.
#include "app/viewmodels/desk/record_view_model.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QTime>

#include "app/photographs/at_hand.h"
#include "tests/app/gallery/states.h"
#include "tests/app/viewmodels/rows.h"
#include "tests/support/catch.h"

using app::viewmodels::RecordViewModel;
using app::viewmodels::RowsModel;

using tests::cell;
using tests::rowOf;

namespace {

void settle(const RecordViewModel& record) {
  QElapsedTimer clock;
  clock.start();
  while (record.busy() && clock.elapsed() < 10'000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  REQUIRE_FALSE(record.busy());
}

struct Recorded {
  Recorded() : photographs(folder.filePath("photographs")) {
    stage.workbench().keepPhotographsIn(photographs);
    int steps = 2;
    REQUIRE(stage.workUntil([&] { return steps-- == 0; }));
    stage.desk().pieces().choose(0);
  }
  RecordViewModel& record() { return stage.desk().record(); }
  const core::jobs::JobState& state() { return *stage.workbench().job(stage.workbench().jobs().front().id); }

  QTemporaryDir folder;
  app::photographs::Photographs photographs;
  tests::Stage stage{{"pilots-chart"}};
};

}  // namespace

TEST_CASE("a note stands in the record and is left out again, and what happened stays") {
  Recorded piece;
  RecordViewModel& record = piece.record();
  CHECK_FALSE(record.addNote("  "));
  REQUIRE(record.addNote("The knife wanders at the lower left."));
  const int row = rowOf(*record.rows(), "wanders");
  REQUIRE(row >= 0);
  record.choose(row);
  REQUIRE(record.chosenRemovable());
  record.remove();
  CHECK(piece.state().beside.notes.empty());
  CHECK(rowOf(*record.rows(), "wanders") >= 0);
  CHECK_FALSE(record.chosenRemovable());
}

TEST_CASE("a step that was begun and done is one line with both times, and undone it is two") {
  tests::Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.canBegin(); }));
  stage.desk().pieces().choose(0);
  RecordViewModel& record = stage.desk().record();
  const int before = record.rows()->count();
  const QString title = QString::fromStdString(bench.steps().front()->title);
  REQUIRE(bench.begin());
  CHECK(record.rows()->count() == before + 1);
  CHECK(cell(*record.rows(), 0, RowsModel::Title).startsWith("Begun: "));
  stage.clock().advance(12 * 60'000);
  stage.desk().refresh();
  REQUIRE(bench.finish());
  const auto isStep = [&](int row) { return cell(*record.rows(), row, RowsModel::Title).contains(title); };
  int lines = 0;
  int step = -1;
  for (int row = 0; row < record.rows()->count(); ++row) {
    if (!isStep(row) || cell(*record.rows(), row, RowsModel::Value).indexOf("to") < 0) continue;
    step = row;
    ++lines;
  }
  REQUIRE(lines == 1);
  const QStringList times = cell(*record.rows(), step, RowsModel::Value).split(" to ");
  REQUIRE(times.size() == 2);
  const auto minutes = [](const QString& time) { return QTime(0, 0).secsTo(QTime::fromString(time, "H:mm")) / 60; };
  CHECK(minutes(times[1]) - minutes(times[0]) == 12);
  CHECK(rowOf(*record.rows(), "Begun: ") == -1);
  // The entry chosen by that line is the step itself.
  record.choose(step);
  CHECK(record.chosenStep());
  REQUIRE(bench.takeBack());
  CHECK(rowOf(*record.rows(), "Begun: ") >= 0);
}

TEST_CASE("a note is put right, and words are written under a photograph") {
  Recorded piece;
  RecordViewModel& record = piece.record();
  REQUIRE(record.addNote("The knife wanders at the lower left."));
  record.choose(rowOf(*record.rows(), "wanders"));
  REQUIRE(record.chosenWritten());
  CHECK(record.chosenText() == "The knife wanders at the lower left.");
  CHECK_FALSE(record.changeText("  "));
  CHECK_FALSE(record.refusal().isEmpty());
  REQUIRE(record.changeText("The knife wandered at the lower right."));
  CHECK(record.refusal().isEmpty());
  REQUIRE(piece.state().beside.notes.size() == 1);
  CHECK(piece.state().beside.notes.front().text == "The knife wandered at the lower right.");
  QTemporaryDir pictures;
  QImage image(64, 48, QImage::Format_RGB32);
  image.fill(Qt::darkGreen);
  REQUIRE(image.save(pictures.filePath("bevel.png")));
  record.keepPhotograph(pictures.filePath("bevel.png"));
  settle(record);
  record.choose(0);
  REQUIRE_FALSE(record.chosenPicture().isEmpty());
  CHECK(record.chosenText().isEmpty());
  REQUIRE(record.changeText("Lower right corner"));
  CHECK(piece.state().beside.photographs.front().caption == "Lower right corner");
  // A step that was done has no words of its own to change.
  for (int row = 0; row < record.rows()->count(); ++row) {
    record.choose(row);
    if (record.chosenStep()) CHECK_FALSE(record.changeText("no"));
  }
}

TEST_CASE("a photograph is copied and shown; what is none is told, and nothing is lost") {
  Recorded piece;
  RecordViewModel& record = piece.record();
  QTemporaryDir pictures;
  QImage image(640, 480, QImage::Format_RGB32);
  image.fill(Qt::darkGreen);
  REQUIRE(image.save(pictures.filePath("bevel.png")));
  QFile none(pictures.filePath("none.jpg"));
  REQUIRE(none.open(QIODevice::WriteOnly));
  none.close();
  QFile letter(pictures.filePath("letter.jpg"));
  REQUIRE(letter.open(QIODevice::WriteOnly));
  letter.write("Dear maker, this is no picture.");
  letter.close();
  record.setPictures([&] { return app::photographs::picturesIn({pictures.path()}, 10); });
  record.findPictures();
  REQUIRE(record.pictures()->count() == 3);
  for (const char* name : {"none.jpg", "letter.jpg"}) {
    INFO(name);
    record.keepPicture(rowOf(*record.pictures(), name));
    settle(record);
    CHECK_FALSE(record.refusal().isEmpty());
    CHECK(piece.state().beside.photographs.empty());
  }
  record.keepPicture(rowOf(*record.pictures(), "bevel.png"));
  settle(record);
  CHECK(record.refusal().isEmpty());
  REQUIRE(piece.state().beside.photographs.size() == 1);
  const std::string hash = piece.state().beside.photographs[0].hash;
  CHECK(piece.photographs.thumbnail(hash, QSize(64, 64)).ok());
  record.choose(0);
  CHECK(record.chosenPicture().toStdString() == hash);
  // The maker's own file is where it was.
  CHECK(QFile::exists(pictures.filePath("bevel.png")));
}

TEST_CASE("a photograph that cannot be shown says why, and only as long as it is looked at") {
  Recorded piece;
  RecordViewModel& record = piece.record();
  QTemporaryDir pictures;
  QImage image(64, 48, QImage::Format_RGB32);
  image.fill(Qt::darkGreen);
  REQUIRE(image.save(pictures.filePath("bevel.png")));
  record.keepPhotograph(pictures.filePath("bevel.png"));
  settle(record);
  record.choose(0);
  REQUIRE_FALSE(record.chosenPicture().isEmpty());
  QFile kept(piece.photographs.file(record.chosenPicture().toStdString()));
  REQUIRE(kept.open(QIODevice::Append));
  kept.write("x");
  kept.close();
  record.explainPicture();
  QElapsedTimer clock;
  clock.start();
  while (record.pictureTrouble().isEmpty() && clock.elapsed() < 10'000) QCoreApplication::processEvents();
  CHECK(record.pictureTrouble().contains("not what was kept any more"));
  record.choose(1);
  CHECK(record.pictureTrouble().isEmpty());
}

TEST_CASE("what the camera takes goes into the record of the piece that is open") {
  Recorded piece;
  QTemporaryDir pictures;
  QImage image(640, 480, QImage::Format_RGB32);
  image.fill(Qt::darkRed);
  REQUIRE(image.save(pictures.filePath("1.jpg")));
  emit piece.stage.desk().camera().taken(pictures.filePath("1.jpg"));
  settle(piece.record());
  CHECK(piece.record().refusal().isEmpty());
  CHECK(piece.state().beside.photographs.size() == 1);
}

TEST_CASE("a finished step is linked with the batch it was worked with, and no longer") {
  Recorded piece;
  core::intents::BatchEntry paste;
  paste.name = "starch paste";
  paste.madeUtc = piece.stage.clock().now().utcMilliseconds - 1000;
  REQUIRE(piece.stage.workbench().submit(core::intents::OfShop{core::intents::EnterBatch{paste}}).id.empty());
  RecordViewModel& record = piece.record();
  record.refresh();
  const int done = rowOf(*record.rows(), "Put the artwork away");
  REQUIRE(done >= 0);
  record.choose(done);
  REQUIRE(record.chosenStep());
  REQUIRE(record.batches()->count() == 1);
  record.turnBatch(0);
  CHECK(piece.state().beside.batches.size() == 1);
  record.turnBatch(0);
  CHECK((piece.state().beside.batches.empty() || piece.state().beside.batches.begin()->second.empty()));
}

TEST_CASE("what another bench has ready is used for a piece by its own key in the record") {
  tests::Stage theirs({"pilots-chart"});
  const auto ready = [](tests::Stage& stage, const std::string& job) {
    const auto& state = *stage.workbench().job(job);
    std::size_t count = 0;
    for (std::size_t i = 0; i < state.steps.size(); ++i) {
      if (state.plan->workflow.steps[i].ofShop && state.steps[i].status == core::jobs::StepStatus::Done) ++count;
    }
    return count;
  };
  const std::string chart = theirs.workbench().jobs().front().id;
  REQUIRE(theirs.workUntil([&] { return ready(theirs, chart) > 0; }));
  tests::Stage mine({"heron"});
  const std::string heron = mine.workbench().jobs().front().id;
  REQUIRE(mine.workbench().importJob(theirs.workbench().exportJob(chart)).jobId == chart);
  mine.desk().refresh();
  for (int i = 0; i < 2 && mine.desk().pieces().chosenId() != QString::fromStdString(heron); ++i)
    mine.desk().pieces().choose(i);
  REQUIRE(mine.desk().pieces().chosenId() == QString::fromStdString(heron));
  CHECK(ready(mine, heron) == 0);
  RecordViewModel& record = mine.desk().record();
  record.refresh();
  for (int i = 0; i < record.rows()->count() && !record.chosenElsewhere(); ++i) record.choose(i);
  REQUIRE(record.chosenElsewhere());
  record.useFromElsewhere();
  CHECK(record.refusal().isEmpty());
  CHECK(ready(mine, heron) > 0);
}

TEST_CASE("both sheets that go with a piece have lines, and each says what it rests on") {
  Recorded piece;
  RecordViewModel& record = piece.record();
  for (const auto page : {RecordViewModel::Page::ForClient, RecordViewModel::Page::ForConservator}) {
    record.look(page);
    CHECK(record.rows()->count() > 10);
    for (int row = 0; row < record.rows()->count(); ++row) {
      CHECK_FALSE(cell(*record.rows(), row, RowsModel::Value).isEmpty());
      CHECK_FALSE(cell(*record.rows(), row, RowsModel::Note).isEmpty());
    }
  }
}
