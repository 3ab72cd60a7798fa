#include "tests/support/bench.h"

#include "core/base/text.h"
#include "core/jobs/looks.h"
#include "core/workflow/compose.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

namespace tests {

using namespace core;

Bench::Bench(const std::string& jobText, const craft::Catalogue& catalogue) {
  auto plan = std::make_shared<jobs::JobPlan>();
  plan->id = "one";
  plan->design = designOf(jobText);
  plan->workflow = composed(plan->design, catalogue);
  m_plan = plan;
  intents::TakeIn takeIn;
  takeIn.jobHash = "hash";
  keep({decisions::takeInDraft(takeIn)});
}

void Bench::keep(const std::vector<record::EventDraft>& drafts) {
  ++m_intents;
  m_lastIntent = "intent-" + std::to_string(m_intents);
  for (const auto& draft : drafts) {
    record::Event event;
    event.deviceSequence = static_cast<std::int64_t>(m_events.size()) + 1;
    event.eventId = "event-" + std::to_string(event.deviceSequence);
    event.deviceId = "device";
    event.hlc = record::tick(m_events.empty() ? record::Hlc{} : m_events.back().hlc, m_now.utcMilliseconds);
    event.intentId = m_lastIntent;
    event.stream = draft.stream == record::EventDraft::Stream::Job ? "job/one" : "bench/device";
    event.type = draft.type;
    event.version = draft.version;
    event.occurredUtc = event.recordedUtc = m_now.utcMilliseconds;
    event.bootId = m_now.bootId;
    event.boottimeNanoseconds = m_now.boottimeNanoseconds;
    event.synced = m_now.synced;
    event.payload = draft.payload;
    m_events.push_back(std::move(event));
  }
  m_state = jobs::fold(m_plan, m_events);
  std::vector<record::Event> ofShop;
  for (const auto& event : m_events) {
    if (base::startsWith(event.stream, "bench/")) ofShop.push_back(event);
  }
  shop::foldShop(m_shop, std::move(ofShop));
  const auto observed = jobs::observed(m_state, m_shop.clockLog, m_shop.rooms);
  m_shop.learning = jobs::learn({&observed}, m_shop.clockLog, m_now);
}

std::string Bench::ask(const intents::Intent& intent) {
  const auto decision = decisions::decide(at(), intent);
  if (!decision) return decision.error().id;
  keep(decision.value());
  return "";
}

std::string Bench::askShop(const intents::ShopIntent& intent) {
  const auto decision = shop::decide(m_shop, m_now, intent);
  if (!decision) return decision.error().id;
  keep(decision.value());
  return "";
}

std::string Bench::finish(const std::string& step) {
  intents::FinishStep intent;
  intent.step = step;
  const auto* source = m_plan->workflow.find(step);
  if (source != nullptr) intent.checked = static_cast<std::int64_t>(source->checks.size());
  return ask(intent);
}

std::string Bench::shown() const {
  const auto where = place();
  if (where.kind != jobs::BenchPlace::Kind::Step) return "";
  return m_plan->workflow.steps[*where.step].id;
}

std::string Bench::finishAct() {
  intents::FinishStep intent;
  for (const std::size_t index : place().steps) {
    const auto& step = m_plan->workflow.steps[index];
    intent.checked += static_cast<std::int64_t>(step.checks.size());
    intent.step.empty() ? void(intent.step = step.id) : intent.with.push_back(step.id);
  }
  return ask(intent);
}

std::string Bench::finishShown() {
  const std::string step = shown();
  if (step.empty()) return "";
  advance(m_plan->workflow.find(step)->work.likely.inMinutes());
  const std::string refusal = finish(step);
  INFO(step << ' ' << refusal);
  CHECK(refusal.empty());
  return step;
}

void Bench::workUntil(const std::string& step) {
  for (int round = 0; round < 20'000; ++round) {
    if (shown() == step) return;
    const auto kind = place().kind;
    if (kind == jobs::BenchPlace::Kind::Step) {
      if (finishShown().empty()) break;
    } else if (kind == jobs::BenchPlace::Kind::Waiting) {
      advance(1);
    } else {
      break;
    }
  }
  INFO("never came to " << step << ", stands at " << shown());
  REQUIRE(shown() == step);
}

void Bench::advance(double minutes) {
  const auto milliseconds = static_cast<std::int64_t>(minutes * 60'000);
  m_now.utcMilliseconds += milliseconds;
  m_now.boottimeNanoseconds += milliseconds * 1'000'000;
}

void Bench::reboot(double minutesOff) {
  advance(minutesOff);
  m_now.bootId = "boot-" + std::to_string(++m_boots);
  m_now.boottimeNanoseconds = 20'000'000'000;
}

}  // namespace tests
