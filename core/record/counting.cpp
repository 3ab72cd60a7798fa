#include "core/record/counting.h"

#include <algorithm>
#include <map>

#include "core/record/happening.h"

namespace core::record {
namespace {

bool isStep(const Event& event) { return isA<StepBegun>(event) || isA<StepDone>(event); }

bool isTakingBack(const Event& event) { return isA<Undone>(event); }

}  // namespace

bool touchesJobs(const Event& event) { return isStep(event) || isTakingBack(event); }

std::string stepOf(const Event& event) {
  if (const auto begun = as<StepBegun>(event)) return begun->step;
  if (const auto done = as<StepDone>(event)) return done->step;
  return "";
}

Counting::Counting(std::vector<Event> own) {
  arrange(own);
  const std::set<std::string> voided = voidedIntents(own);
  for (const Event& event : own) {
    m_devices.insert(event.deviceId);
    m_intents.insert(event.intentId);
    const auto accepted = voided.contains(event.intentId) ? std::nullopt : as<PreparationAccepted>(event);
    if (accepted) m_accepted.insert(accepted->intents.begin(), accepted->intents.end());
  }
}

bool Counting::counts(const Event& event) const {
  return isStep(event) && (m_devices.contains(event.deviceId) || m_accepted.contains(event.intentId));
}

std::vector<Event> Counting::of(const std::vector<Event>& bench) const {
  std::map<std::string, std::set<std::string>> writers;  // of the benches' events of an intent
  for (const Event& event : bench) writers[event.intentId].insert(event.deviceId);
  // Where two devices have written under one intent, each can take back only its own events.
  const auto isItsOwn = [&](const Event& event) {
    const auto found = writers.find(as<Undone>(event)->intent);
    return found != writers.end() && !m_intents.contains(found->first) && found->second.size() == 1 &&
           found->second.contains(event.deviceId);
  };
  std::vector<Event> found;
  for (const Event& event : bench) {
    if (counts(event) || (isTakingBack(event) && (m_devices.contains(event.deviceId) || isItsOwn(event)))) {
      found.push_back(event);
    }
  }
  return found;
}

std::vector<Event> benchEventsOf(const std::vector<Event>& bench, const std::vector<Event>& own,
                                 const std::set<std::string>& sharedSteps) {
  const std::vector<Event> counting = Counting(own).of(bench);
  std::vector<std::string> intents;
  for (const Event& event : own) intents.push_back(event.intentId);
  std::vector<Event> found;
  std::multimap<std::string, const Event*> takenBackBy;  // by the intent that is taken back
  for (const Event& event : counting) {
    if (const auto undone = as<Undone>(event)) {
      takenBackBy.emplace(undone->intent, &event);
    } else if (sharedSteps.contains(stepOf(event))) {
      intents.push_back(event.intentId);
      found.push_back(event);
    }
  }
  // Adds the undos of these, and the undos of those undos, to any depth and in any order.
  std::set<std::string> seen;
  while (!intents.empty()) {
    const std::string intent = std::move(intents.back());
    intents.pop_back();
    if (!seen.insert(intent).second) continue;
    const auto [first, last] = takenBackBy.equal_range(intent);
    for (auto taking = first; taking != last; ++taking) {
      intents.push_back(taking->second->intentId);
      found.push_back(*taking->second);
    }
  }
  return found;
}

}  // namespace core::record
