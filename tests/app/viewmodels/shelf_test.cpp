// An empty shelf is only said to be calm where that is known.
#include "app/viewmodels/bench/shelf_model.h"

#include <algorithm>

#include "app/convert/content_hash.h"
#include "app/viewmodels/desk.h"
#include "tests/app/gallery/states.h"
#include "tests/app/workbench/bench.h"

using app::viewmodels::Desk;
using namespace tests;

namespace {

// A store that says the same to everything.
class Refusing : public MemoryEventStore {
 public:
  explicit Refusing(const char* why) : m_why(why) {}
  Result<Position> position(const std::string&) override { return core::base::Message(m_why).with("path", "record"); }

 private:
  const char* m_why;
};

struct Two {
  // Both with waits running; then the first one's kept text is damaged.
  Two() {
    StoredBench bench(store);
    for (const char* name : {"heron", "pilots-chart"}) {
      ids.push_back(bench.takeIn(demoJob(name)));
      for (int act = 0; act < 200 && bench.work.jobs().at(ids.size() - 1).runs.empty(); ++act) {
        bench.goOn(ids.back());
        REQUIRE(bench.work.heartbeat().id.empty());
      }
      REQUIRE_FALSE(bench.work.jobs().at(ids.size() - 1).runs.empty());
    }
  }
  MemoryEventStore store;
  std::vector<std::string> ids;
};

}  // namespace

TEST_CASE("nothing dries where everything is known and nothing runs") {
  MemoryEventStore store;
  StoredBench bench(store);
  bench.takeIn(demoJob());
  Desk desk(bench.work, bench.clock);
  CHECK(desk.shelf().count() == 0);
  CHECK(desk.shelf().unknown().isEmpty());
  CHECK(desk.watch().troubles().isEmpty());
}

TEST_CASE("where the record was not read the shelf says that it does not know, and so does the line of the alerts") {
  const auto [id, word] = GENERATE(table<const char*, const char*>({{"store.damaged", "cannot be read"},
                                                                    {"store.not-a-database", "cannot be read"},
                                                                    {"store.lost-before", "cannot be read"},
                                                                    {"store.in-use", "another program"},
                                                                    {"store.in-use-by", "another program"},
                                                                    {"store.locked", "another program"}}));
  INFO(id);
  Refusing store(id);
  const FakeClock clock;
  app::workbench::Workbench work(store, clock, tradeLibrary().library, "tablet");
  REQUIRE(work.load().id == id);
  Desk desk(work, clock);
  CHECK(desk.shelf().count() == 0);
  CHECK(desk.shelf().unknown().startsWith("What dries is not known"));
  CHECK(desk.shelf().unknown().contains(word));
  CHECK(desk.watch().troubles().contains(desk.shelf().unknown()));
}

TEST_CASE("a record found damaged after it was opened is doubted from then on") {
  MemoryEventStore store;
  StoredBench bench(store);
  Desk desk(bench.work, bench.clock);
  REQUIRE(desk.shelf().unknown().isEmpty());
  desk.setTrouble("damaged");
  CHECK(desk.shelf().unknown().contains("not known"));
  CHECK(desk.watch().troubles().contains(desk.shelf().unknown()));
  CHECK(desk.bench().kind() == app::viewmodels::BenchViewModel::Kind::Trouble);
}

TEST_CASE("of two jobs that dry the damaged one is named, whichever it is, and the other's waits stand there") {
  Two two;
  const bool both = GENERATE(false, true);
  two.store.replaceText(app::convert::contentHash(demoJob("heron")), "{}");
  if (both) two.store.forgetText(app::convert::contentHash(demoJob("pilots-chart")));
  StoredBench bench(two.store);
  Desk desk(bench.work, bench.clock);
  const auto titleOf = [&](const std::string& id) {
    const auto& all = bench.work.jobs();
    return QString::fromStdString(
        std::find_if(all.begin(), all.end(), [&](const auto& entry) { return entry.id == id; })->title);
  };
  const QString heron = titleOf(two.ids[0]);
  REQUIRE_FALSE(heron.isEmpty());
  CHECK((desk.shelf().count() == 0) == both);
  CHECK(desk.shelf().unknown().contains(heron));
  CHECK(desk.shelf().unknown().contains(titleOf(two.ids[1])) == both);
  CHECK(desk.watch().troubles().contains(desk.shelf().unknown()));
}
