#pragma once
// A job worked in memory: it takes intents, stores events, and the test moves the time.
#include <memory>
#include <string>
#include <vector>

#include "core/alerts/alert_schedule.h"
#include "core/craft/catalogue.h"
#include "core/decisions/decide.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/job_state.h"

namespace tests {

class Bench {
 public:
  Bench(const std::string& jobText, const core::craft::Catalogue& catalogue);

  // Returns the id of the refusal, "" where the events were stored. The clock does not advance meanwhile.
  std::string ask(const core::intents::Intent& intent);
  std::string askShop(const core::intents::ShopIntent& intent);
  // Finishes a step with all its checks answered.
  std::string finish(const std::string& step);
  // Finishes the whole act the bench shows, without letting time go by.
  std::string finishAct();
  // Finishes the step the bench shows; returns its id, "" where none is shown or it was refused.
  std::string finishShown();
  // Works, letting time go by where nothing can start, until `step` is the one shown. Fails the test where that
  // never happens.
  void workUntil(const std::string& step);

  // Leads the other way from now on.
  void lead(core::craft::Way way) { m_way = way; }
  void advance(double minutes);
  void reboot(double minutesOff);
  // Sets whether a time server steers the wall clock.
  void setSynced(bool synced) { m_now.synced = synced; }
  const core::jobs::JobState& state() const { return m_state; }
  core::jobs::JobAt at() const { return {m_state, m_shop, m_now, m_way}; }
  core::jobs::BenchPlace place() const { return core::jobs::benchPlace(at()); }
  std::string shown() const;
  const std::string& lastIntent() const { return m_lastIntent; }
  const std::vector<core::record::Event>& events() const { return m_events; }
  const std::shared_ptr<const core::jobs::JobPlan>& plan() const { return m_plan; }
  const core::waits::ClockReading& now() const { return m_now; }

 private:
  void keep(const std::vector<core::record::EventDraft>& drafts);
  std::shared_ptr<const core::jobs::JobPlan> m_plan;
  std::vector<core::record::Event> m_events;
  core::jobs::JobState m_state;
  core::shop::Shop m_shop;
  core::waits::ClockReading m_now{1'764'000'000'000, "boot-1", 1'000'000'000'000, true};
  core::craft::Way m_way = core::craft::Way::Every;
  std::string m_lastIntent;
  int m_intents = 0;
  int m_boots = 1;
};

}  // namespace tests
