// Events with any payload, type and order, folded over a small job: the fold never falls over, does not depend on
// the order events arrive in, and an unknown event makes the job read-only.
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

#include "core/base/check.h"
#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/decisions/decide.h"
#include "core/decisions/offers.h"
#include "core/jobs/job_state.h"
#include "core/jobs/timeline.h"
#include "core/workflow/compose.h"

namespace {

using namespace core;

constexpr std::string_view kJob = R"({"format": "mountwright-job/1", "artwork": {"width": "310 mm", "height": "240 mm"},
  "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}],
            "borders": {"sides": "70 mm", "weighting": "equal"}}})";

constexpr std::string_view kTechnique = R"({"format": "mountwright-technique/1", "id": "t", "title": "T", "rank": 1,
  "when": {"always": true}, "steps": [
  {"id": "size", "title": "Brush size", "do": ["Brush."], "good": "Thin.", "trap": "Thick.", "tools": [], "hands": "paint",
   "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "makes": ["piece.sized"], "faults": [{"id": "thick", "seen": "Too thick.", "do": "Wipe it off.", "ends": ["piece.sized"]}],
   "waits": [{"id": "tack", "kind": "tack", "title": "size tacks", "makes": "piece.tack", "model": "evaporation",
     "opens": {"early": "1 min", "likely": "2 min", "late": "3 min"}, "closes": {"early": "4 min", "likely": "5 min", "late": "9 min"},
     "test": "Touch it.", "source": "common practice", "ifMissed": {"do": "Size again.", "ends": ["piece.sized"]}}]},
  {"id": "lay", "title": "Lay leaf", "do": ["Lay."], "good": "Whole.", "trap": "Torn.", "tools": [], "hands": "leaf",
   "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "needs": ["piece.tack"], "makes": ["piece.laid"]}]})";

std::shared_ptr<const jobs::JobPlan> plan() {
  static const std::shared_ptr<const jobs::JobPlan> made = [] {
    auto job = std::make_shared<jobs::JobPlan>();
    job->id = "one";
    auto read = design::readDesign(kJob);
    ENSURE(read.design);
    job->design = *std::move(read.design);
    auto technique = craft::readTechnique(kTechnique);
    ENSURE(technique.technique);
    craft::Catalogue catalogue;
    catalogue.add(*technique.technique);
    auto workflow = workflow::compose(job->design, catalogue);
    ENSURE(workflow);
    job->workflow = std::move(workflow).value();
    return job;
  }();
  return made;
}

// One event a line: "<type> <stream letter> <intent letter> <minute> <payload JSON>".
record::Event eventOf(const std::string& line, std::size_t number) {
  record::Event event;
  event.eventId = "event-" + std::to_string(number);
  event.deviceId = "device";
  event.deviceSequence = static_cast<std::int64_t>(number);
  event.bootId = "boot";
  const auto parts = base::split(line, ' ');
  event.type = parts[0];
  event.stream = parts.size() > 1 && parts[1] == "b" ? "bench/device" : "job/one";
  event.intentId = parts.size() > 2 ? parts[2] : "i";
  const auto minute = parts.size() > 3 ? base::parseDecimal(parts[3]) : std::nullopt;
  event.occurredUtc = minute && std::abs(*minute) < 1e6 ? static_cast<std::int64_t>(*minute * 60'000) : 0;
  event.boottimeNanoseconds = event.occurredUtc * 1'000'000;
  event.hlc = {event.occurredUtc, static_cast<std::int64_t>(number)};
  event.payload = base::Value::object();
  const auto brace = line.find('{');
  if (brace != std::string::npos) {
    auto payload = base::parseJson(std::string_view(line).substr(brace));
    if (payload.readable) event.payload = payload.root;
  }
  return event;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), std::min<std::size_t>(size, 20'000));
  std::vector<record::Event> events;
  for (const std::string& line : base::split(text, '\n')) {
    if (!line.empty() && events.size() < 200) events.push_back(eventOf(line, events.size()));
  }
  const auto state = jobs::fold(plan(), events);
  std::reverse(events.begin(), events.end());
  ENSURE(jobs::dump(jobs::fold(plan(), events)) == jobs::dump(state));
  shop::Shop shop;
  shop::foldShop(shop, events);
  const auto entries = jobs::timelineOf(state, shop, events, jobs::Order::OldestFirst);
  ENSURE(entries.size() <= events.size());
  const jobs::JobAt at(state, shop, {3'600'000, "boot", 3'600'000'000'000, true});
  for (const auto& offer : decisions::offers(at)) (void)decisions::decide(at, offer.intent);
  if (state.readOnly()) ENSURE(decisions::offers(at).empty());
  return 0;
}
