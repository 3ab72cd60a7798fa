#pragma once
// A workbench over the demo job, a store in memory and a clock that stands still.
#include <memory>
#include <string>

#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/jobs/bench_place.h"
#include "tests/support/catch.h"
#include "tests/support/fake_clock.h"
#include "tests/support/files.h"
#include "tests/support/memory_event_store.h"

namespace tests {

inline std::string demoJob(const std::string& name = "pilots-chart") {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/" + name + ".job.json");
  REQUIRE(text.has_value());
  return *text;
}

inline const app::workbench::LoadedLibrary& tradeLibrary() {
  static const app::workbench::LoadedLibrary loaded =
      app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString());
  return loaded;
}

struct StoredBench {
  explicit StoredBench(core::record::EventStore& eventStore, const std::string& device = "tablet",
                       const app::workbench::Library& library = tradeLibrary().library)
      : work(eventStore, clock, library, device) {
    const auto trouble = work.load();
    INFO(core::base::dump(trouble));
    REQUIRE(trouble.id.empty());
  }

  std::string takeIn(const std::string& text) {
    const auto taken = work.takeIn(text);
    for (const auto& problem : taken.problems) UNSCOPED_INFO(core::base::dump(problem));
    for (const auto& refusal : taken.refusals) UNSCOPED_INFO(core::base::dump(refusal));
    REQUIRE_FALSE(taken.jobId.empty());
    return taken.jobId;
  }

  // The id of a design begun from that document.
  std::string begin(const core::base::Value& document) {
    const std::string id = work.newId();
    REQUIRE(work.submit(core::intents::OfDesign{id, core::intents::BeginDesign{document, ""}}).id.empty());
    return id;
  }

  std::string refusal(const std::string& job, const core::intents::Intent& intent) {
    return core::base::dump(work.submit(core::intents::OfJob{job, intent}));
  }

  core::intents::FinishStep finish(const std::string& job, std::size_t step) const {
    const auto& source = work.job(job)->plan->workflow.steps[step];
    core::intents::FinishStep intent;
    intent.step = source.id;
    intent.checked = static_cast<std::int64_t>(source.checks.size());
    return intent;
  }

  // One act forward from wherever the job is: finishes the step shown, tests the wait by touch, mends what was
  // missed.
  void goOn(const std::string& job) {
    using Kind = core::jobs::BenchPlace::Kind;
    const auto place = core::jobs::benchPlace(work.at(job));
    core::intents::Intent intent;
    if (place.kind == Kind::Step) {
      intent = finish(job, *place.step);
    } else if (place.kind == Kind::Waiting) {
      const bool window = work.job(job)->waits.at(place.wait).wait->closes.has_value();
      intent = core::intents::LookAt{place.wait, window ? core::intents::Verdict::Tacky : core::intents::Verdict::Dry};
    } else {
      REQUIRE(place.kind == Kind::Missed);
      intent = core::intents::MendMissed{place.wait};
    }
    INFO(core::intents::name(intent));
    REQUIRE(refusal(job, intent) == "");
  }

  FakeClock clock;
  app::workbench::Workbench work;
};

inline std::string stateOf(StoredBench& bench, const std::string& job) {
  return core::jobs::dump(*bench.work.job(job));
}

// What an import says, a line each.
inline std::string said(const app::workbench::Workbench::Imported& imported) {
  std::string text;
  for (const auto& problem : imported.problems) text += core::base::dump(problem) + '\n';
  for (const auto& refusal : imported.refusals) text += core::base::dump(refusal) + '\n';
  return text;
}

}  // namespace tests
