// What tells steps and waits apart on the bench: which piece, which board, whose words.
#include <algorithm>
#include <map>
#include <set>

#include "app/viewmodels/names.h"
#include "core/decisions/offers.h"
#include "core/jobs/touch_tests.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::BenchViewModel;
using app::viewmodels::ShelfModel;
using Kind = BenchViewModel::Kind;

namespace {

QStringList namesOn(ShelfModel& shelf) {
  QStringList names;
  for (int row = 0; row < shelf.count(); ++row) names << shelf.data(shelf.index(row), ShelfModel::Name).toString();
  return names;
}

}  // namespace

TEST_CASE("no two steps of a piece read alike: where titles repeat, the thing stands beside them") {
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    tests::Stage stage({job});
    BenchViewModel& bench = stage.desk().bench();
    std::map<QString, QString> seen;
    std::set<QString> titles;
    int repeated = 0;
    static_cast<void>(stage.workUntil([&] {
      if (bench.kind() != Kind::Step) return false;
      CHECK_FALSE(bench.shortPiece().isEmpty());
      const QString reads = bench.title() + '|' + bench.thing();
      const auto known = seen.emplace(reads, bench.stepId()).first;
      INFO(job << ": " << reads.toStdString());
      CHECK(known->second == bench.stepId());
      repeated += titles.insert(bench.title()).second ? 0 : 1;
      return false;
    }));
    CHECK(repeated > 0);
  }
}

TEST_CASE("every step that is done to one of several things names it, in its title or beside it") {
  tests::Stage stage({"pilots-chart"});
  BenchViewModel& bench = stage.desk().bench();
  int named = 0;
  static_cast<void>(stage.workUntil([&] {
    if (bench.kind() != Kind::Step) return false;
    const auto* state = stage.workbench().job(bench.jobId());
    const auto* step = state->plan->workflow.find(bench.stepId().toStdString());
    if (step->thingName.empty()) return false;
    const QString thing = QString::fromStdString(step->thingName);
    INFO(bench.title().toStdString() << " | " << bench.thing().toStdString());
    // Of several things worked in turn the number is enough where their names would be many.
    const bool several = bench.steps().size() > 1 && bench.steps().back()->thing != bench.steps().front()->thing;
    const bool said = bench.title().contains(thing, Qt::CaseInsensitive) ||
                      bench.thing().contains(thing, Qt::CaseInsensitive) ||
                      (several && bench.thing().contains(QStringLiteral("in turn")));
    CHECK(said);
    // Nothing is said twice: "leaf field field", "line line".
    const QStringList words = thing.split(' ');
    for (int i = 1; i < words.size(); ++i) CHECK(words[i] != words[i - 1]);
    ++named;
    return false;
  }));
  CHECK(named > 30);
}

TEST_CASE("no two waits on the shelf are called the same, and the shop's own stands there once") {
  // Twice the same piece.
  tests::Stage stage({"pilots-chart", "heron", "heron"});
  auto& shelf = stage.desk().shelf();
  int several = 0;
  static_cast<void>(stage.workUntil([&] {
    const QStringList names = namesOn(shelf);
    several += names.size() > 1 ? 1 : 0;
    INFO(names.join(QStringLiteral("; ")).toStdString());
    CHECK(names.size() == static_cast<qsizetype>(std::set<QString>(names.begin(), names.end()).size()));
    return false;
  }));
  CHECK(several > 10);
}

TEST_CASE("two trials begun in one go are one line on the shelf") {
  tests::Stage stage({"pilots-chart"});
  auto& shelf = stage.desk().shelf();
  qsizetype most = 0;
  static_cast<void>(stage.workUntil([&] {
    most = std::max(most, namesOn(shelf).filter(QStringLiteral("trial hardens")).size());
    return false;
  }));
  CHECK(most == 1);
}

TEST_CASE("the headline of a waiting bench, the test it offers and the shelf's first row are one wait") {
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    tests::Stage stage({job});
    BenchViewModel& bench = stage.desk().bench();
    int met = 0;
    static_cast<void>(stage.workUntil([&] {
      if (bench.kind() != Kind::Waiting) return false;
      ++met;
      const auto at = stage.workbench().at(bench.jobId());
      const auto first = core::jobs::touchTests(at).front();
      const QString title = QString::fromStdString(at.state().waits.at(first.wait).wait->title);
      INFO(job << ": " << bench.title().toStdString());
      CHECK(bench.title().endsWith(title));
      CHECK(bench.look()->title().endsWith(title, Qt::CaseInsensitive));
      CHECK(namesOn(stage.desk().shelf()).front().contains(title, Qt::CaseInsensitive));
      return false;
    }));
    CHECK(met > 5);
  }
}

TEST_CASE("a touch test is answered in the words of its technique, on the look page and on the alert") {
  std::map<QString, QString> answers;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    tests::Stage stage({job});
    static_cast<void>(stage.workUntil([&] {
      auto& alert = stage.desk().alert();
      if (alert.up() && alert.canLook()) {
        CHECK_FALSE(alert.foundWord().isEmpty());
        answers[alert.whats().last()] = alert.foundWord();
        alert.hear();
      }
      const auto* look = stage.desk().bench().look();
      if (look->present()) answers[look->title().section(QStringLiteral(": "), -1)] = look->foundWord();
      // Those that are not the most urgent are answered on the shelf.
      const auto at = stage.workbench().at(stage.desk().bench().jobId());
      for (const auto& test : core::jobs::touchTests(at)) {
        const auto& wait = *at.state().waits.at(test.wait).wait;
        answers[QString::fromStdString(wait.title)] = app::viewmodels::answersTo(wait).found;
      }
      return false;
    }));
  }
  std::map<QString, QString> lower;
  for (const auto& [wait, answer] : answers) lower[wait.toLower()] = answer;
  CHECK(lower[QStringLiteral("starch soaks")] == QStringLiteral("Ready"));
  CHECK(lower[QStringLiteral("paste cools")] == QStringLiteral("Cool"));
  CHECK(lower[QStringLiteral("trial hardens")] == QStringLiteral("Hard"));
  CHECK(lower[QStringLiteral("glue open")] == QStringLiteral("Still wet"));
  for (const auto& [wait, answer] : lower) {
    INFO(wait.toStdString() << ": " << answer.toStdString());
    if (wait.contains(QStringLiteral("open"))) CHECK(answer != QStringLiteral("Tacky"));
    if (wait.contains(QStringLiteral("soak")) || wait.contains(QStringLiteral("cool")))
      CHECK(answer != QStringLiteral("Dry"));
  }
}

TEST_CASE("a look far from what was expected is asked about once, confirmed by a key or left open") {
  tests::Stage stage({"pilots-chart"});
  auto* look = stage.desk().bench().look();
  REQUIRE(stage.workUntil([&] { return look->present(); }));
  const QString tested = look->title();
  stage.clock().advance(60'000);
  stage.desk().refresh();
  CHECK_FALSE(look->doubted());
  const QString found = look->foundWord();
  look->ready();
  REQUIRE(look->doubted());
  CHECK(look->title() == tested);
  CHECK(look->test().contains(found));
  const auto open = [&] {
    const auto offers = core::decisions::offers(stage.workbench().at(stage.desk().bench().jobId()));
    return std::any_of(offers.begin(), offers.end(), [](const core::decisions::Offer& offer) {
      const auto* asked = std::get_if<core::intents::LookAt>(&offer.intent);
      return asked != nullptr && asked->sure;
    });
  };
  SECTION("said to be so") {
    look->confirm();
    CHECK_FALSE(open());
  }
  SECTION("left open") {
    look->leave();
    stage.desk().refresh();
    CHECK(open());
  }
  CHECK_FALSE(look->doubted());
}

TEST_CASE("what is open from its start cannot be answered not yet") {
  tests::Stage stage({"pilots-chart"});
  int met = 0;
  static_cast<void>(stage.workUntil([&] {
    const auto* look = stage.desk().bench().look();
    if (look->present() && look->title().endsWith(QStringLiteral("glue open"))) {
      ++met;
      CHECK(look->notYetWord().isEmpty());
      CHECK(look->pastItWord() == QStringLiteral("Too dry"));
    }
    return false;
  }));
  CHECK(met > 0);
}

TEST_CASE("an opening measured with the back up says each border's edge as the hand sees it") {
  tests::Stage stage({"pilots-chart"});
  auto& made = stage.desk().made();
  REQUIRE(stage.workUntil([&] { return stage.desk().bench().stepId() == "cut-windows/measure-window@top"; }));
  CHECK(made.total() == 6);
  QStringList said;
  do {
    said << made.datum();
    CHECK_FALSE(made.datum().contains(QStringLiteral("seen from the face")));
    REQUIRE(made.drawing().piece);
    CHECK(made.drawing().piece->side == core::sheets::Side::Back);
  } while (made.forward());
  CHECK(said.filter(QStringLiteral("on your right")).size() == 1);
  CHECK(said.filter(QStringLiteral("on your left")).size() == 1);
}

TEST_CASE("a measure confirmed on the second board is the first one's, not the plan's") {
  tests::Stage stage({"pilots-chart"});
  auto& made = stage.desk().made();
  auto& bench = stage.desk().bench();
  // One board at a time, though they could be squared in one go.
  const auto onOuter = [&](const char* board) {
    for (int steps = 0; steps < 100; ++steps) {
      if (bench.stepId() == QStringLiteral("square-boards/mark-corner@") + QLatin1String(board)) return true;
      for (const auto& offer : core::decisions::offers(stage.workbench().at(bench.jobId()))) {
        const auto* finish = std::get_if<core::intents::FinishStep>(&offer.intent);
        if (finish == nullptr || !finish->with.empty()) continue;
        REQUIRE(stage.workbench().submit(core::intents::OfJob{bench.jobId(), *finish}).id.empty());
        break;
      }
      stage.desk().refresh();
    }
    return false;
  };
  const auto toWidth = [&] {
    while (!made.label().contains(QStringLiteral("width"))) REQUIRE(made.forward());
  };
  REQUIRE(onOuter("top"));
  toWidth();
  const auto widthNow = [&] {
    return stage.workbench().job(bench.jobId())->design->figures.find("outer.width")->value;
  };
  const double planned = widthNow();
  const double wider = planned + 0.8;
  const auto digits = QString::number(wider, 'f', 1);
  for (const QChar digit : digits) digit == u'.' ? made.part() : made.digit(digit.digitValue());
  REQUIRE(made.keep());
  REQUIRE(widthNow() == Approx(wider).margin(0.05));
  REQUIRE(onOuter("under"));
  toWidth();
  REQUIRE(made.agrees());
  CHECK(widthNow() == Approx(wider).margin(0.05));
}

TEST_CASE("of twelve pieces in one act one is reported done alone, and how many are left is told") {
  tests::Stage stage({"pilots-chart*12"});
  auto& bench = stage.desk().bench();
  stage.desk().settings().turnWay();
  stage.desk().refresh();
  REQUIRE(stage.workUntil(
      [&] { return !bench.steps().empty() && bench.steps().front()->id.find("/join") != std::string::npos; }));
  const auto ofAct = bench.steps().size();
  const QString before = bench.thing();
  const std::string thing = bench.steps().front()->thing;
  CHECK_FALSE(bench.first().isEmpty());
  REQUIRE(bench.finishFirst());
  CHECK(bench.steps().size() < ofAct);
  CHECK(bench.thing() != before);
  CHECK(bench.thing().contains(QStringLiteral("1 of 12 done")));
  for (const auto* step : bench.steps()) CHECK(step->thing != thing);
  // One press takes that one back, and no other.
  REQUIRE(bench.takeBack());
  CHECK(bench.steps().size() == ofAct);
  // The last of them is the act itself.
  while (!bench.first().isEmpty()) REQUIRE(bench.finishFirst());
  CHECK_FALSE(bench.finishFirst());
  REQUIRE(bench.finish());
}
