// What is told of waits, to the minute: by one job of which every time is known.
#include <set>

#include "app/viewmodels/bench/shelf_model.h"
#include "app/viewmodels/desk.h"
#include "app/viewmodels/times.h"
#include "app/viewmodels/told_wait.h"
#include "core/craft/technique_reader.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"
#include "tests/support/tiny_job.h"

using app::viewmodels::clockTime;
using app::viewmodels::Day;
using app::viewmodels::Expected;
using app::viewmodels::rounded;
using app::viewmodels::ShelfModel;
using core::intents::Verdict;

namespace {

constexpr std::int64_t kMinute = 60'000;
constexpr std::int64_t kHour = 60 * kMinute;
// Thursday 27 November 2025, 10:00 in London.
constexpr std::int64_t kThursday = 1'764'237'600'000;
const std::string kLondon = "Europe/London";

std::string at(std::int64_t after, Day day = Day::Short) {
  return clockTime(kThursday + after, kThursday, kLondon, day).toStdString();
}

std::int64_t expected(std::int64_t after, Expected what) {
  return rounded(kThursday + after, kThursday, what) - kThursday;
}

}  // namespace

TEST_CASE("a clock time has no leading nought, and another day carries its name and its hour") {
  CHECK(at(0) == "10:00");
  CHECK(at(-kHour) == "9:00");
  CHECK(at(23 * kHour) == "Fri 9:00");
  CHECK(at(23 * kHour, Day::Long) == "Friday 9:00");
  CHECK(at(14 * kHour) == "Fri 0:00");
  CHECK(at(-24 * kHour) == "Wed 10:00");
  // A week on its name would be today's.
  CHECK(at(6 * 24 * kHour) == "Wed 10:00");
  CHECK(at(7 * 24 * kHour) == "4 Dec 10:00");
  CHECK(at(7 * 24 * kHour, Day::Long) == "4 December 10:00");
}

TEST_CASE("openings are rounded up and closings down: to the minute, over half an hour away to five") {
  CHECK(expected(22 * kMinute + 1, Expected::Opening) == 23 * kMinute);
  CHECK(expected(22 * kMinute, Expected::Opening) == 22 * kMinute);
  CHECK(expected(22 * kMinute + 59'999, Expected::Closing) == 22 * kMinute);
  CHECK(expected(30 * kMinute, Expected::Opening) == 30 * kMinute);
  CHECK(expected(30 * kMinute + 1, Expected::Opening) == 35 * kMinute);
  CHECK(expected(59 * kMinute, Expected::Closing) == 55 * kMinute);
  CHECK(expected(60 * kMinute, Expected::Opening) == 60 * kMinute);
}

namespace {

// A shop's clock at ten sharp, and the tiny job worked to its waits.
class Told {
 public:
  Told() {
    m_clock.jump(kThursday - m_clock.now().utcMilliseconds);
    m_bench = std::make_unique<app::workbench::Workbench>(m_store, m_clock, library(), "tablet");
    REQUIRE(m_bench->load().id.empty());
    m_job = m_bench->takeIn(tests::kTinyJob).jobId;
    REQUIRE_FALSE(m_job.empty());
  }
  void finish(const std::string& step) {
    core::intents::FinishStep intent;
    intent.step = step;
    ask(intent);
  }
  void look(Verdict verdict) { ask(core::intents::LookAt{running().id, verdict}); }
  void advance(double minutes) { m_clock.advance(static_cast<std::int64_t>(minutes * kMinute)); }
  // "test 10:26 | May be ready from ..."
  std::string told() {
    const auto job = m_bench->at(m_job);
    const auto wait = app::viewmodels::toldWait(job, running(), m_clock.zone());
    return wait.brief.toStdString() + " | " + wait.sentence.toStdString();
  }
  app::viewmodels::ToldWait wait() { return app::viewmodels::toldWait(m_bench->at(m_job), running(), m_clock.zone()); }
  tests::FakeClock& clock() { return m_clock; }
  app::workbench::Workbench& bench() { return *m_bench; }

 private:
  static const app::workbench::Library& library() {
    static const app::workbench::Library made = [] {
      app::workbench::Library library;
      for (const char* text : {tests::kTinyPaste, tests::kTinySize}) {
        auto read = core::craft::readTechnique(text);
        REQUIRE(read.technique);
        library.texts[read.technique->id] = text;
        library.catalogue.add(std::move(*read.technique));
      }
      return library;
    }();
    return made;
  }
  void ask(const core::intents::Intent& intent) {
    const auto refused = m_bench->submit(core::intents::OfJob{m_job, intent});
    INFO(core::base::dump(refused));
    REQUIRE(refused.id.empty());
  }
  const core::jobs::RunningWait& running() {
    const auto& waits = m_bench->job(m_job)->waits;
    const auto newest = std::max_element(waits.begin(), waits.end(), [](const auto& a, const auto& b) {
      return a.second.started.utcMilliseconds < b.second.started.utcMilliseconds;
    });
    REQUIRE(newest != waits.end());
    return newest->second;
  }

  tests::FakeClock m_clock;
  tests::MemoryEventStore m_store;
  std::unique_ptr<app::workbench::Workbench> m_bench;
  std::string m_job;
};

}  // namespace

TEST_CASE("what dries is told by the clock, from its first test until it is touched and dry") {
  Told bench;
  bench.finish("paste/soak");
  CHECK(bench.told() == "test 10:30 | May be ready from 10:30; half are by 11:00, four in five by 11:25.");
  CHECK(bench.wait().verb == "test");
  CHECK(bench.wait().time == "10:30");
  CHECK_FALSE(bench.wait().isWindow);
  bench.advance(29.5);
  CHECK(bench.told() == "test 10:30 | May be ready from 10:30; half are by 11:00, four in five by 11:25.");
  bench.advance(1);
  CHECK(bench.told() == "test now | May be ready. Feel it?");
  CHECK(bench.wait().time.isEmpty());
  bench.look(Verdict::NotYet);
  CHECK(bench.told() == "test 10:46 | Not yet at 10:30. Test again 10:46.");
  bench.advance(30);
  CHECK_FALSE(bench.wait().isSolid);
  bench.look(Verdict::Dry);
  CHECK(bench.told() == "ready | Ready at 11:00, by touch.");
  CHECK(bench.wait().isSolid);
}

TEST_CASE("what is first tested on another day says that day and its hour, and no more") {
  Told bench;
  bench.clock().jump(13 * kHour + 45 * kMinute);
  bench.finish("paste/soak");
  CHECK(bench.told() == "test Fri 0:15 | First test Friday 0:15.");
}

TEST_CASE("a tack window is told from its coming until it was left too long") {
  Told bench;
  bench.finish("paste/soak");
  bench.advance(30);
  bench.look(Verdict::Dry);
  bench.finish("paste/cook");
  bench.finish("size/brush");
  CHECK(bench.told() == "tack 10:43 | May be tacky from 10:43; half are by 10:50. May close from 11:10.");
  CHECK(bench.wait().isWindow);
  bench.advance(13);
  CHECK(bench.told() == "test now | Touch it? May close 11:10, likely gone 11:50.");
  CHECK(bench.wait().mayClose == "may close 11:10");
  CHECK(bench.wait().gone == "likely gone 11:50");
  bench.advance(28);
  CHECK(bench.told() == "may close | Touch it? May close any minute, likely gone 11:50.");
  CHECK(bench.wait().mayClose.isEmpty());
  bench.advance(40);
  CHECK(bench.told() == "likely closed | Test once. If \"Tack gone\": Size again.");
  CHECK(bench.wait().gone.isEmpty());
}

TEST_CASE("a tack found open is told until when, and its last minutes counted") {
  Told bench;
  bench.finish("paste/soak");
  bench.advance(30);
  bench.look(Verdict::Dry);
  bench.finish("paste/cook");
  bench.finish("size/brush");
  bench.advance(20);
  bench.look(Verdict::Tacky);
  CHECK(bench.told() == "open to 11:20 | Tacky at 10:50. May close from 11:20, likely gone 11:40.");
  CHECK(bench.wait().isSolid);
  bench.advance(21.5);
  CHECK(bench.told() == "8 min | 8 min, then it may close.");
  bench.advance(8);
  CHECK(bench.told() == "may close | May close any minute, likely gone 11:42.");
}

TEST_CASE("what was found past it is told with the time of the touch and the technique's remedy") {
  Told bench;
  bench.finish("paste/soak");
  bench.advance(30);
  bench.look(Verdict::Dry);
  bench.finish("paste/cook");
  bench.finish("size/brush");
  bench.advance(20);
  bench.look(Verdict::PastIt);
  CHECK(bench.told() == "closed 10:50 | Tack gone at 10:50. Size again.");
  CHECK(bench.wait().isClosed);
  CHECK_FALSE(bench.wait().isSolid);
}

TEST_CASE("where it is not known how long the tablet was off, a time is only about so") {
  Told bench;
  bench.finish("paste/soak");
  REQUIRE(bench.bench().heartbeat().id.empty());
  bench.clock().setSynced(false);
  bench.clock().reboot(5 * kMinute, 2 * kMinute);
  CHECK(bench.told() == "about 10:30 | The tablet was off; nearer than this is not known.");
}

namespace {

QVariant shown(ShelfModel& shelf, int row, ShelfModel::Role role) { return shelf.data(shelf.index(row), role); }

}  // namespace

TEST_CASE(
    "the shelf's rows are a verb with its time, the piece apart from the rest, and an outline in hours from now") {
  Told bench;
  app::viewmodels::Desk desk(bench.bench(), bench.clock());
  bench.finish("paste/soak");
  auto& shelf = desk.shelf();
  REQUIRE(shelf.count() == 1);
  CHECK(shown(shelf, 0, ShelfModel::Brief) == "test 10:30");
  // A jar of the shop's is no piece's.
  CHECK(shown(shelf, 0, ShelfModel::Piece).toString().isEmpty());
  CHECK(shown(shelf, 0, ShelfModel::Rests).toStringList() == QStringList({"starch soaks", "starch", ""}));
  CHECK_FALSE(shown(shelf, 0, ShelfModel::Window).toBool());
  CHECK(shown(shelf, 0, ShelfModel::Lead).toDouble() == Approx(0.5));
  const auto points = shown(shelf, 0, ShelfModel::Points).value<QList<QPointF>>();
  REQUIRE(points.size() == 5);
  CHECK(points[0] == QPointF(0.5, 0));
  CHECK(points[1].y() == Approx(0.2));
  CHECK(points[2].x() == Approx(1));
  CHECK(points[2].y() == Approx(0.5));
  CHECK(points[3].x() == Approx(1.375));
  CHECK(points[3].y() == Approx(0.8));
  CHECK(points[4].x() == Approx(12));
  CHECK(points[4].y() == Approx(0.8));
  CHECK(shelf.hourNames().mid(0, 3) == QStringList({"11:00", "12:00", "13:00"}));
  CHECK(shelf.hourPlaces()[0] == Approx(1));
  CHECK(shelf.beyond().isEmpty());
  CHECK(shelf.nextLine() == "test 10:30 starch soaks");
  // The hours stand on the clock's, whenever it is.
  bench.advance(20);
  desk.refresh();
  CHECK(shelf.hourNames().front() == "11:00");
  CHECK(shelf.hourPlaces()[0] == Approx(40.0 / 60));
}

TEST_CASE("what an alert would say unheard is told under the shelf") {
  Told bench;
  app::viewmodels::Desk desk(bench.bench(), bench.clock());
  CHECK_FALSE(desk.shelf().silent());
  desk.watch().set(app::viewmodels::WatchViewModel::Trouble::Sound, "No sound device.");
  CHECK(desk.shelf().silent());
  desk.watch().set(app::viewmodels::WatchViewModel::Trouble::Sound, "");
  CHECK_FALSE(desk.shelf().silent());
}

TEST_CASE("no state of any wait in a day's work is without words, and nothing is said to be sure") {
  tests::Stage stage({"pilots-chart", "heron", "tide-table"});
  auto& shelf = stage.desk().shelf();
  std::set<QString> verbs;
  static_cast<void>(stage.workUntil([&] {
    for (int row = 0; row < shelf.count(); ++row) {
      const QString said = shown(shelf, row, ShelfModel::Brief).toString() + QLatin1Char(' ') +
                           shown(shelf, row, ShelfModel::Sentence).toString();
      INFO(said.toStdString());
      CHECK_FALSE(said.contains(QLatin1Char('{')));
      CHECK_FALSE(said.contains("sure"));
      CHECK_FALSE(said.contains("0 min,"));
      verbs.insert(shown(shelf, row, ShelfModel::Brief).toString().section(QLatin1Char(' '), 0, 0));
    }
    const auto& alert = stage.desk().alert();
    if (alert.up()) {
      CHECK(alert.times().isEmpty());
      CHECK((alert.barMinutes() > 0) == !alert.gone().isEmpty());
      CHECK(alert.bar().isEmpty() == alert.gone().isEmpty());
    }
    return false;
  }));
  CHECK(verbs.contains("test"));
  CHECK(verbs.size() > 1);
}
