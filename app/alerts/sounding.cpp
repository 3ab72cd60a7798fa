#include "app/alerts/sounding.h"

#include <algorithm>
#include <utility>

namespace app::alerts {
namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr std::int64_t kHighEvery = 5 * kSecond;
constexpr std::int64_t kMediumEvery = 15 * kSecond;
constexpr int kMediumSoon = 3;  // so many times at the short distance
constexpr std::int64_t kMediumLater = 60 * kSecond;
constexpr std::int64_t kLowAgain = 60 * kSecond;
constexpr int kLows = 2;
constexpr double kLowAgainDecibels = -6;
// Between two sounds: as long as between two pulses, so that the ear parts them.
constexpr std::int64_t kBetween = kSecond / 5;
constexpr std::int64_t kFade = kSecond / 40;

// A first burst at full level startles; the third is at its own.
double levelOf(int bursts) { return bursts == 0 ? -12.0 : bursts == 1 ? -6.0 : 0.0; }

std::int64_t distance(bool high, int bursts) {
  if (high) return kHighEvery;
  return bursts < kMediumSoon ? kMediumEvery : kMediumLater;
}

}  // namespace

void Sounding::publish(std::shared_ptr<const core::record::AlertSchedule> schedule) {
  const bool taken = !m_schedule->bladeInHand && schedule->bladeInHand;
  m_schedule = std::move(schedule);
  if (!taken) return;
  for (Entry& entry : m_entries) {
    entry.released = false;
    // It was called in full already: nothing new to tell a hand on the blade.
    if (entry.bursts > 0) entry.lows = kLows;
  }
}

void Sounding::releaseHeld(std::int64_t now) {
  follow(now);
  for (Entry& entry : m_entries) entry.released = true;
}

Sounding::Entry* Sounding::find(const Key& key) {
  const auto at = std::find_if(m_entries.begin(), m_entries.end(), [&](const Entry& e) { return e.key == key; });
  return at == m_entries.end() ? nullptr : &*at;
}

const Sounding::Entry* Sounding::find(const Key& key) const { return const_cast<Sounding*>(this)->find(key); }

void Sounding::follow(std::int64_t now) {
  std::vector<Entry> entries;
  for (const auto& alert : m_schedule->alerts) {
    if (alert.dueBoottimeNanoseconds > now) continue;
    const Key key{alert.job, alert.wait, alert.alert};
    if (const Entry* known = find(key)) {
      entries.push_back(*known);
    } else {
      entries.push_back({key, alert.high(), false, 0, now, 0, now});
    }
  }
  m_entries = std::move(entries);
}

bool Sounding::lostReason() const {
  return std::none_of(m_served.begin(), m_served.end(), [this](const Key& key) {
    const Entry* entry = find(key);
    return entry && (m_tone == Tone::Low || !held(*entry));
  });
}

void Sounding::begin(std::int64_t now, Tone tone, std::vector<Key> served) {
  m_tone = tone;
  m_served = std::move(served);
  m_quietAt = now + lengthNanoseconds(tone) + kBetween;
}

std::optional<Sounding::Call> Sounding::callFull(std::int64_t now, bool high) {
  const auto mine = [&](const Entry& entry) { return entry.high == high && !held(entry); };
  if (std::none_of(m_entries.begin(), m_entries.end(), [&](const Entry& e) { return mine(e) && e.next <= now; })) {
    return std::nullopt;
  }
  // One burst speaks for all of its class; the screen lists them.
  int bursts = 0;
  std::vector<Key> served;
  for (Entry& entry : m_entries) {
    if (!mine(entry)) continue;
    bursts = std::max(bursts, entry.bursts);
    entry.next = now + distance(high, ++entry.bursts);
    served.push_back(entry.key);
  }
  const Tone tone = high ? Tone::High : Tone::Medium;
  begin(now, tone, std::move(served));
  return Call{tone, levelOf(bursts)};
}

std::optional<Sounding::Call> Sounding::callLow(std::int64_t now) {
  for (Entry& entry : m_entries) {
    if (!held(entry) || entry.lows >= kLows || entry.nextLow > now) continue;
    const double decibels = entry.lows == 0 ? 0.0 : kLowAgainDecibels;
    ++entry.lows;
    entry.nextLow = now + kLowAgain;
    begin(now, Tone::Low, {entry.key});
    return Call{Tone::Low, decibels};
  }
  return std::nullopt;
}

void Sounding::takeBack(std::int64_t now) {
  for (const Key& key : std::exchange(m_served, {})) {
    Entry* entry = find(key);
    if (!entry) continue;
    if (m_tone == Tone::Low) {
      --entry->lows;
      entry->nextLow = now;
    } else {
      --entry->bursts;
      entry->next = now;
    }
  }
}

std::int64_t Sounding::nextWake(std::int64_t now, bool audible) const {
  std::int64_t wake = kNever;
  for (const auto& alert : m_schedule->alerts) {
    if (alert.dueBoottimeNanoseconds > now) wake = std::min(wake, alert.dueBoottimeNanoseconds);
  }
  if (!audible) return wake;
  for (const Entry& entry : m_entries) {
    if (!held(entry)) {
      wake = std::min(wake, std::max(entry.next, m_quietAt));
    } else if (entry.lows < kLows) {
      wake = std::min(wake, std::max(entry.nextLow, m_quietAt));
    }
  }
  return wake;
}

Sounding::Turn Sounding::turn(std::int64_t now, bool audible) {
  follow(now);
  m_due.alerts.clear();
  m_due.bladeInHand = m_schedule->bladeInHand;
  for (const auto& alert : m_schedule->alerts) {
    const Entry* entry = find({alert.job, alert.wait, alert.alert});
    if (entry && !held(*entry)) m_due.alerts.push_back(alert);
  }

  Turn turn;
  if (m_audible && !audible && now < m_quietAt) {
    // Nobody heard the end of it, perhaps not the beginning.
    takeBack(now);
    turn.hush = true;
    m_quietAt = now;
  }
  if (!m_audible && audible) {
    for (Entry& entry : m_entries) entry.next = now;
  }
  m_audible = audible;
  if (now < m_quietAt && lostReason()) {
    turn.hush = true;
    m_served.clear();
    m_quietAt = std::min(m_quietAt, now + kFade);
  }
  if (audible) {
    const bool newHigh = std::any_of(m_entries.begin(), m_entries.end(), [this](const Entry& entry) {
      return entry.high && entry.bursts == 0 && !held(entry);
    });
    if (now < m_quietAt && newHigh && m_tone != Tone::High) {
      takeBack(now);
      m_quietAt = now;
    }
    if (now >= m_quietAt) {
      turn.call = callFull(now, true);
      if (!turn.call) turn.call = callFull(now, false);
      if (!turn.call) turn.call = callLow(now);
    }
  }
  turn.wake = nextWake(now, audible);
  return turn;
}

}  // namespace app::alerts
