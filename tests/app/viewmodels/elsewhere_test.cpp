// From the bench to another piece and back, what is said on the way, and what was just done.
#include <QRegularExpression>
#include <algorithm>
#include <set>

#include "app/viewmodels/names.h"
#include "core/jobs/meanwhile.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::BenchViewModel;
using app::viewmodels::PlacesModel;
using app::viewmodels::ShelfModel;
using Kind = BenchViewModel::Kind;
using tests::Stage;

namespace {

bool matches(const QString& text, const char* pattern) {
  return QRegularExpression(QRegularExpression::anchoredPattern(QString::fromLatin1(pattern))).match(text).hasMatch();
}

bool toMeanwhile(Stage& stage) {
  return stage.workUntil([&] { return stage.desk().meanwhile().present(); });
}

QVariant cell(const PlacesModel& places, int row, int role) { return places.data(places.index(row), role); }

// The row of a wait of that job on the present page; -1 where there is none.
int waitRow(PlacesModel& places, const ShelfModel& shelf, const std::string& job) {
  for (int page = 0; page < places.pages(); ++page) {
    for (int row = 0; row < places.count(); ++row) {
      const QString title = cell(places, row, ShelfModel::Title).toString();
      if (!cell(places, row, PlacesModel::IsWait).toBool() || title.isEmpty()) continue;
      const bool found = std::any_of(shelf.rows().begin(), shelf.rows().end(), [&](const ShelfModel::Row& one) {
        return one.job == job && one.title == title && one.canTest;
      });
      if (found) return row;
    }
    places.turnPage();
  }
  return -1;
}

}  // namespace

TEST_CASE("while a piece waits the hands are offered an act that ends before the next test, and are taken there") {
  Stage stage({"heron", "pilots-chart"});
  REQUIRE(toMeanwhile(stage));
  auto& desk = stage.desk();
  const std::string waits = desk.bench().jobId();
  CHECK(desk.bench().kind() == Kind::Waiting);
  const auto& meanwhile = desk.meanwhile();
  CHECK_FALSE(meanwhile.piece().isEmpty());
  CHECK(meanwhile.piece() != app::viewmodels::pieceName(stage.workbench().job(waits)->plan->design.job.title));
  INFO(meanwhile.terms().toStdString());
  CHECK(matches(meanwhile.terms(), "[a-z ]+, (\\d+ h )?\\d+ min: done by \\d{1,2}:\\d\\d"));
  CHECK(meanwhile.drawing().piece != nullptr);
  const QString act = meanwhile.act();
  desk.meanwhile().take();
  CHECK(desk.bench().jobId() != waits);
  REQUIRE(desk.bench().kind() == Kind::Step);
  CHECK(act.startsWith(desk.bench().title()));
  // What does not wait has no need of it.
  CHECK_FALSE(desk.meanwhile().present());
  // As late as the test is due it is offered no more.
  desk.bench().selectJob(waits);
  REQUIRE(desk.meanwhile().present());
  const auto free = core::jobs::freeUntilTest({stage.workbench().at(waits)});
  REQUIRE(free);
  stage.clock().advance(free->inMilliseconds());
  desk.refresh();
  CHECK_FALSE(desk.meanwhile().present());
}

TEST_CASE("the piece left last is the first place to go to, and leads back to itself") {
  Stage stage({"heron", "pilots-chart", "tide-table"});
  REQUIRE(toMeanwhile(stage));
  auto& places = stage.desk().places();
  const std::string from = stage.desk().bench().jobId();
  // Nothing was left yet: only waits, and the pieces at which nothing dries.
  for (int row = 0; row < places.count(); ++row) CHECK_FALSE(cell(places, row, PlacesModel::IsReturn).toBool());
  stage.desk().meanwhile().take();
  const std::string to = stage.desk().bench().jobId();
  REQUIRE(to != from);
  for (int there = 0; there < 3; ++there) {
    places.enter();
    REQUIRE(cell(places, 0, PlacesModel::IsReturn).toBool());
    CHECK_FALSE(places.choose(0));
    CHECK(stage.desk().bench().jobId() == (there % 2 == 0 ? from : to));
  }
}

TEST_CASE("every wait and every other piece is a place to go to, each once") {
  Stage stage({"heron", "pilots-chart", "tide-table"});
  REQUIRE(toMeanwhile(stage));
  auto& places = stage.desk().places();
  const auto& shelf = stage.desk().shelf();
  int waits = 0;
  std::set<QString> pieces;
  places.enter();
  for (int page = 0; page < places.pages(); ++page) {
    CHECK(places.count() <= PlacesModel::kPageSize);
    for (int row = 0; row < places.count(); ++row) {
      if (cell(places, row, PlacesModel::IsWait).toBool()) {
        ++waits;
        CHECK_FALSE(cell(places, row, ShelfModel::Brief).toString().isEmpty());
      } else {
        CHECK(pieces.insert(cell(places, row, ShelfModel::Title).toString()).second);
        CHECK_FALSE(cell(places, row, ShelfModel::Brief).toString().isEmpty());
      }
    }
    places.turnPage();
  }
  CHECK(waits == shelf.count());
  CHECK(pieces.size() == 2);
}

TEST_CASE("a wait is tested from where the maker is: not yet leaves him there, found takes him to the piece") {
  Stage stage({"heron", "pilots-chart"});
  REQUIRE(toMeanwhile(stage));
  auto& desk = stage.desk();
  const std::string waits = desk.bench().jobId();
  desk.meanwhile().take();
  const std::string here = desk.bench().jobId();
  auto& places = desk.places();
  places.enter();
  const int row = waitRow(places, desk.shelf(), waits);
  REQUIRE(row >= 0);
  const QString title = cell(places, row, ShelfModel::Title).toString();
  REQUIRE(places.choose(row));
  auto* look = places.look();
  REQUIRE(look->present());
  CHECK(look->piece() == title);
  CHECK(look->drawing().piece != nullptr);
  CHECK(desk.bench().jobId() == here);
  if (!look->notYetWord().isEmpty()) {
    look->notYet();
    CHECK(desk.bench().jobId() == here);
    REQUIRE(look->present());
    CHECK(look->piece() == title);
  }
  const auto looks = [&] {
    std::size_t all = 0;
    for (const auto& [id, run] : stage.workbench().job(waits)->waits) all += run.looks.size();
    return all;
  };
  const std::size_t before = looks();
  look->ready();
  CHECK(looks() > before);
  CHECK(desk.bench().jobId() == waits);
}

TEST_CASE("what a piece still takes is said by the clock") {
  Stage stage({"heron"});
  auto& places = stage.desk().places();
  places.enter();
  INFO(places.ahead().toStdString() << "; " << places.today().toStdString());
  CHECK(matches(places.ahead(), "by hand .+, ready about (\\S+ )*\\d{1,2}:\\d\\d"));
  CHECK(matches(places.today(), "today (one act|\\d+ acts), .+ by hand, without a break"));
  REQUIRE(stage.workUntil([&] { return stage.desk().bench().kind() == Kind::Finished; }));
  CHECK(places.today().isEmpty());
  CHECK_FALSE(places.ahead().contains("ready about"));
}

TEST_CASE("rows of the shelf that stay are never made anew") {
  Stage stage({"heron", "pilots-chart"});
  auto& shelf = stage.desk().shelf();
  int resets = 0;
  int moved = 0;
  std::vector<std::pair<std::string, std::string>> followed;
  QObject::connect(&shelf, &ShelfModel::modelReset, &shelf, [&] { ++resets; });
  const auto follow = [&](int from, int to, bool in) {
    ++moved;
    for (int row = from; row <= to; ++row) {
      if (in) {
        const auto& one = shelf.rows()[static_cast<std::size_t>(row)];
        followed.insert(followed.begin() + row, {one.job, one.id});
      } else {
        followed.erase(followed.begin() + from);
      }
    }
  };
  QObject::connect(&shelf, &ShelfModel::rowsInserted, &shelf,
                   [&](const QModelIndex&, int from, int to) { follow(from, to, true); });
  QObject::connect(&shelf, &ShelfModel::rowsRemoved, &shelf,
                   [&](const QModelIndex&, int from, int to) { follow(from, to, false); });
  QObject::connect(&shelf, &ShelfModel::rowsMoved, &shelf,
                   [&](const QModelIndex&, int from, int, const QModelIndex&, int to) {
                     ++moved;
                     const auto one = followed[static_cast<std::size_t>(from)];
                     followed.erase(followed.begin() + from);
                     followed.insert(followed.begin() + to, one);
                   });
  int acts = 0;
  static_cast<void>(stage.workUntil([&] {
    if (stage.desk().meanwhile().present()) stage.desk().meanwhile().take();
    std::vector<std::pair<std::string, std::string>> shown;
    for (const auto& row : shelf.rows()) shown.emplace_back(row.job, row.id);
    CHECK(shown == followed);
    return ++acts > 160;
  }));
  CHECK(resets == 0);
  CHECK(moved > 10);
}

TEST_CASE("for ten seconds what was done can be undone from its line, but not with a blade in the hand") {
  Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  CHECK_FALSE(bench.justDone());
  int offered = 0;
  int withheld = 0;
  for (int act = 0; act < 40; ++act) {
    if (bench.kind() != Kind::Step) {
      REQUIRE(stage.workUntil([&] { return bench.kind() == Kind::Step; }));
    }
    const QString step = bench.stepId();
    REQUIRE(bench.finish());
    INFO(step.toStdString());
    const bool blade = bench.kind() == Kind::Step && bench.hands() == app::words::hands(core::craft::Hands::Blade);
    CHECK(bench.justDone() == !blade);
    ++(blade ? withheld : offered);
    if (bench.justDone() && act % 7 == 0) {
      REQUIRE(bench.takeBack());
      CHECK(bench.stepId() == step);
      CHECK_FALSE(bench.justDone());
      REQUIRE(bench.putBack());
    }
    stage.clock().advance(BenchViewModel::kJustDone.inMilliseconds() - 1);
    stage.desk().refresh();
    if (act % 7 != 0) CHECK(bench.justDone() == !blade);
    stage.clock().advance(1);
    stage.desk().refresh();
    CHECK_FALSE(bench.justDone());
  }
  CHECK(offered > 10);
  CHECK(withheld > 0);
}

TEST_CASE("an alert says the act or that it is to be tested, and shows where on the piece") {
  std::set<QString> words;
  int pictured = 0;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    Stage stage({job});
    static_cast<void>(stage.workUntil([&] {
      auto& alert = stage.desk().alert();
      if (!alert.up()) return false;
      words.insert(alert.act());
      CHECK_FALSE(alert.act().isEmpty());
      CHECK_FALSE(alert.whats().isEmpty());
      CHECK_FALSE(alert.state().isEmpty());
      CHECK(alert.piece().startsWith(alert.shortPiece().left(3), Qt::CaseInsensitive));
      if (alert.pictured()) {
        ++pictured;
        const auto& piece = *alert.drawing().piece;
        INFO(alert.whats().first().toStdString());
        CHECK_FALSE(alert.wet().isEmpty());
        CHECK(QRectF(-1, -1, piece.width + 2, piece.height + 2).contains(alert.wet()));
      }
      alert.hear();
      return false;
    }));
  }
  CHECK(words.count(QStringLiteral("Test now")) == 1);
  CHECK(words.size() > 3);
  CHECK(pictured > 10);
}
