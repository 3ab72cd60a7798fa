// Designs at the desk, on the real store and through a restart.
#include <QTemporaryDir>

#include "app/stores/sqlite_event_store.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

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

std::string textAt(const Bench& bench, const std::string& id, const std::string& pointer) {
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
    Bench bench(*store, store->deviceId());
    const auto begun = bench.work.beginDesign(parsed(demoJob()), "");
    REQUIRE(begun.ok());
    id = begun.value();
    for (const char* width : {"311 mm", "312 mm"}) {
      REQUIRE(bench.work.changeDesign(id, replaced("/artwork/width", width)).id.empty());
    }
  }
  {
    const auto store = openIn(folder);
    Bench bench(*store, store->deviceId());
    CHECK(textAt(bench, id, "/artwork/width") == "312 mm");
    REQUIRE(bench.work.undoDesign(id).id.empty());
  }
  {
    const auto store = openIn(folder);
    Bench bench(*store, store->deviceId());
    CHECK(textAt(bench, id, "/artwork/width") == "311 mm");
    REQUIRE(bench.work.redoDesign(id).id.empty());
    CHECK(textAt(bench, id, "/artwork/width") == "312 mm");
    CHECK(core::base::dump(bench.work.redoDesign(id)).find("design.nothing-to-redo") != std::string::npos);
    REQUIRE(bench.work.undoDesign(id).id.empty());
    REQUIRE(bench.work.undoDesign(id).id.empty());
    CHECK(textAt(bench, id, "/artwork/width") == "310 mm");
    CHECK(core::base::dump(bench.work.undoDesign(id)).find("design.nothing-to-undo") != std::string::npos);
  }
}

TEST_CASE("a design goes to the bench as the job it has become, and is remembered as its origin") {
  MemoryEventStore store;
  Bench bench(store);
  const auto begun = bench.work.beginDesign(parsed(demoJob()), "");
  REQUIRE(begun.ok());
  REQUIRE(bench.work.changeDesign(begun.value(), replaced("/artwork/width", "320 mm")).id.empty());
  const auto taken = bench.work.takeDesign(begun.value());
  CHECK(taken.refusals.empty());
  REQUIRE(bench.work.job(taken.jobId) != nullptr);
  CHECK(bench.work.jobText(taken.jobId) == bench.work.designs().find(begun.value())->text());
  CHECK(bench.work.designs().find(begun.value())->jobs == std::vector<std::string>{taken.jobId});
  // Asked again it is the same job.
  CHECK(bench.work.takeDesign(begun.value()).jobId == taken.jobId);
  CHECK(bench.work.designs().find(begun.value())->jobs.size() == 1);
}

TEST_CASE("what does not hold together stays at the desk, and what is not there is refused") {
  MemoryEventStore store;
  Bench bench(store);
  const auto begun = bench.work.beginDesign(parsed(demoJob()), "");
  REQUIRE(begun.ok());
  REQUIRE(bench.work.changeDesign(begun.value(), replaced("/artwork/width", "a hand")).id.empty());
  const auto taken = bench.work.takeDesign(begun.value());
  CHECK(taken.jobId.empty());
  CHECK_FALSE(taken.problems.empty());
  CHECK(bench.work.jobs().empty());
  CHECK(core::base::dump(bench.work.changeDesign(begun.value(), replaced("/no/where", "1 mm"))).find("json.patch") !=
        std::string::npos);
  CHECK(textAt(bench, begun.value(), "/artwork/width") == "a hand");
  CHECK(core::base::dump(bench.work.undoDesign("elsewhere")).find("design.no-such-design") != std::string::npos);
  REQUIRE(bench.work.takeDesign("elsewhere").refusals.size() == 1);
}

TEST_CASE("a design put away stays so through a restart, and comes back by itself where it is changed") {
  QTemporaryDir folder;
  std::string id;
  {
    const auto store = openIn(folder);
    Bench bench(*store, store->deviceId());
    id = bench.work.beginDesign(parsed(demoJob()), "").value();
    REQUIRE(bench.work.putDesignAway(id).id.empty());
    CHECK(bench.work.designs().find(id)->putAway);
    const std::string act = bench.work.lastIntentId();
    REQUIRE(bench.work.putDesignAway(id).id.empty());
    CHECK(bench.work.lastIntentId() == act);
    CHECK(bench.work.putDesignAway("nowhere").id == "design.no-such-design");
  }
  const auto store = openIn(folder);
  Bench bench(*store, store->deviceId());
  CHECK(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.bringDesignBack(id).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.putDesignAway(id).id.empty());
  REQUIRE(bench.work.changeDesign(id, replaced("/artwork/width", "311 mm")).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  REQUIRE(bench.work.putDesignAway(id).id.empty());
  REQUIRE(bench.work.undoDesign(id).id.empty());
  CHECK_FALSE(bench.work.designs().find(id)->putAway);
  CHECK(core::base::dump(bench.work.undoDesign(id)) == "design.nothing-to-undo");
}
