#include "core/shop/shop_print.h"

#include <algorithm>
#include <set>

#include "core/record/counting.h"
#include "core/record/happening.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

constexpr std::uint64_t kFirst = 14695981039346656037U;

// FNV-1a, 64 bits: against chance, not against malice.
std::uint64_t added(std::uint64_t sum, std::string_view text) {
  for (const char c : text) sum = (sum ^ static_cast<unsigned char>(c)) * 1099511628211U;
  return (sum ^ '\n') * 1099511628211U;
}

}  // namespace

ShopPrint::ShopPrint(std::vector<Event> events) : m_odd(kFirst) {
  arrange(events);
  const std::set<std::string> voided = voidedIntents(events);
  std::set<std::string> ofBench;  // intents with events here
  for (const Event& event : events) ofBench.insert(event.intentId);
  std::uint64_t sum = kFirst;
  for (const Event& event : events) {
    if (!touchesJobs(event)) continue;
    if (const auto undone = as<Undone>(event)) {
      // An undone act of the bench is left out of the sum; any other undone act may be of a job.
      if (!ofBench.contains(undone->intent)) m_odd = added(m_odd, event.eventId);
      continue;
    }
    if (voided.contains(event.intentId)) continue;
    sum = added(sum, event.eventId);
    m_marks.push_back({event.hlc, sum});
  }
  m_whole = std::to_string(m_odd) + '/' + std::to_string(sum);
}

std::string ShopPrint::upTo(const Hlc& newest) const {
  const auto after = std::upper_bound(m_marks.begin(), m_marks.end(), newest,
                                      [](const Hlc& hlc, const Mark& mark) { return hlc < mark.hlc; });
  return std::to_string(m_odd) + '/' + std::to_string(after == m_marks.begin() ? kFirst : std::prev(after)->sum);
}

}  // namespace core::shop
