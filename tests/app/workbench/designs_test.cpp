// Designs at the desk, on the real store and through a restart.
#include <QTemporaryDir>

#include "app/stores/sqlite_event_store.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

using namespace core::intents;
using namespace tests;
using core::base::Value;

namespace {

Value replaced(const std::string& pointer, const std::string& text) {
  Value patch = Value::array();
  patch.append(Value::object()
                   .set("op", Value::text("replace"))
                   .set("path", Value::text(pointer))
                   .set("value", Value::text(text)));
  return patch;
}

Value parsed(const std::string& text) {
  auto json = core::base::parseJson(text);
  REQUIRE(json.readable);
  return std::move(json.root);
}

std::string textAt(const StoredBench& bench, const std::string& id, const std::string& pointer) {
  const auto* drafted = bench.work.designs().find(id);
  REQUIRE(drafted != nullptr);
  const Value* value = core::base::at(drafted->document, pointer);
  REQUIRE(value != nullptr);
  return value->asText();
}

}  // namespace

TEST_CASE("a design is there after a restart with every change, and each can still be taken back") {
  QTemporaryDir folder;
  std::string id;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    const std::string begun = bench.begin(parsed(demoJob()));
    id = begun;
    for (const char* width : {"311 mm", "312 mm"}) {
      REQUIRE(bench.work.submit(OfDesign{id, ChangeDesign{replaced("/artwork/width", width)}}).id.empty());
    }
  }
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    CHECK(textAt(bench, id, "/artwork/width") == "312 mm");
    REQUIRE(bench.work.submit(OfDesign{id, UndoChange{}}).id.empty());
  }
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    CHECK(textAt(bench, id, "/artwork/width") == "311 mm");
    REQUIRE(bench.work.submit(OfDesign{id, RedoChange{}}).id.empty());
    CHECK(textAt(bench, id, "/artwork/width") == "312 mm");
    CHECK(core::base::dump(bench.work.submit(OfDesign{id, RedoChange{}})).find("design.nothing-to-redo") !=
          std::string::npos);
    REQUIRE(bench.work.submit(OfDesign{id, UndoChange{}}).id.empty());
    REQUIRE(bench.work.submit(OfDesign{id, UndoChange{}}).id.empty());
    CHECK(textAt(bench, id, "/artwork/width") == "310 mm");
    CHECK(core::base::dump(bench.work.submit(OfDesign{id, UndoChange{}})).find("design.nothing-to-undo") !=
          std::string::npos);
  }
}

TEST_CASE("a design goes to the bench as the job it has become, and is remembered as its origin") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string begun = bench.begin(parsed(demoJob()));
  REQUIRE(bench.work.submit(OfDesign{begun, ChangeDesign{replaced("/artwork/width", "320 mm")}}).id.empty());
  const auto taken = bench.work.takeDesign(begun);
  CHECK(taken.refusals.empty());
  REQUIRE(bench.work.job(taken.jobId) != nullptr);
  CHECK(bench.work.jobText(taken.jobId) == bench.work.designs().find(begun)->text());
  CHECK(bench.work.designs().find(begun)->jobs == std::vector<std::string>{taken.jobId});
  // Asked again it is the same job.
  CHECK(bench.work.takeDesign(begun).jobId == taken.jobId);
  CHECK(bench.work.designs().find(begun)->jobs.size() == 1);
}

TEST_CASE("what does not hold together stays at the desk, and what is not there is refused") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string begun = bench.begin(parsed(demoJob()));
  REQUIRE(bench.work.submit(OfDesign{begun, ChangeDesign{replaced("/artwork/width", "a hand")}}).id.empty());
  const auto taken = bench.work.takeDesign(begun);
  CHECK(taken.jobId.empty());
  CHECK_FALSE(taken.problems.empty());
  CHECK(bench.work.jobs().empty());
  CHECK(core::base::dump(bench.work.submit(OfDesign{begun, ChangeDesign{replaced("/no/where", "1 mm")}}))
            .find("json.patch") != std::string::npos);
  CHECK(textAt(bench, begun, "/artwork/width") == "a hand");
  CHECK(core::base::dump(bench.work.submit(OfDesign{"elsewhere", UndoChange{}})).find("design.no-such-design") !=
        std::string::npos);
  REQUIRE(bench.work.takeDesign("elsewhere").refusals.size() == 1);
}

TEST_CASE("a design put away stays so through a restart, and comes back by itself where it is changed") {
  QTemporaryDir folder;
  std::string id;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    id = bench.begin(parsed(demoJob()));
    REQUIRE(bench.work.submit(OfDesign{id, PutDesignAway{}}).id.empty());
    CHECK(bench.work.designs().find(id)->putAway);
    const std::string act = bench.work.lastIntentId();
    REQUIRE(bench.work.submit(OfDesign{id, PutDesignAway{}}).id.empty());
    CHECK(bench.work.lastIntentId() == act);
    CHECK(bench.work.submit(OfDesign{"nowhere", PutDesignAway{}}).id == "design.no-such-design");
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  CHECK(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.submit(OfDesign{id, BringDesignBack{}}).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.submit(OfDesign{id, PutDesignAway{}}).id.empty());
  REQUIRE(bench.work.submit(OfDesign{id, ChangeDesign{replaced("/artwork/width", "311 mm")}}).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.submit(OfDesign{id, PutDesignAway{}}).id.empty());
  REQUIRE(bench.work.submit(OfDesign{id, UndoChange{}}).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  CHECK(core::base::dump(bench.work.submit(OfDesign{id, UndoChange{}})) == "design.nothing-to-undo");
}
