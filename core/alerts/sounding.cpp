#include "core/alerts/sounding.h"

#include <algorithm>
#include <utility>

namespace core::alerts {

// This file uses the types of the record throughout.
using namespace record;
namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr std::int64_t kHighEvery = 5 * kSecond;
constexpr std::int64_t kMediumEvery = 15 * kSecond;
constexpr int kMediumSoon = 3;  // so many times at the short distance
constexpr std::int64_t kMediumLater = 60 * kSecond;
constexpr std::int64_t kSoftAgain = 60 * kSecond;
constexpr int kSofts = 2;
constexpr double kSoftAgainDecibels = -6;
// Unheard for so long: words; and a window that shrinks is called as one that closes.
constexpr std::int64_t kSpeakAfter = 20 * kSecond;
constexpr std::int64_t kSpeakAgain = 60 * kSecond;
constexpr std::int64_t kRaiseAfter = 60 * kSecond;
// An alert that is due this shortly after a call is merged with it.
constexpr std::int64_t kMergeWithin = 15 * kSecond;
constexpr std::int64_t kHour = 3600 * kSecond;
// A cue says how much is left: later than this it would say something false.
constexpr std::int64_t kCueStale = 5 * kSecond;
// Between two sounds: as long as between two pulses, so that the ear parts them.
constexpr std::int64_t kBetween = kSecond / 5;
// Between a tone and the words that follow it.
constexpr std::int64_t kBeforeWords = kSecond * 3 / 5;
constexpr std::int64_t kFade = kSecond / 40;

// A first burst at full level startles; the third is at its own.
double levelOf(int bursts) { return bursts == 0 ? -12.0 : bursts == 1 ? -6.0 : 0.0; }

std::int64_t distance(Level level, int bursts) {
  if (level == Level::High) return kHighEvery;
  return bursts < kMediumSoon ? kMediumEvery : kMediumLater;
}

Tone toneOf(Level level) { return level == Level::High ? Tone::High : Tone::Medium; }

}  // namespace

Sounding::Sounding(const std::array<std::int64_t, kTones>& lengths) : m_lengths(lengths) {}

void Sounding::publish(std::shared_ptr<const AlertSchedule> schedule) {
  const bool taken = !m_schedule->bladeInHand && schedule->bladeInHand;
  m_schedule = std::move(schedule);
  if (!taken) return;
  for (Entry& entry : m_entries) {
    entry.released = false;
    // It was called in full already: nothing new to tell a hand on the blade.
    if (entry.bursts > 0) entry.softs = kSofts;
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
      continue;
    }
    Entry entry;
    entry.key = key;
    entry.level = alert.level;
    entry.shrinking = alert.shrinking;
    entry.say = alert.say;
    entry.next = entry.nextSoft = now;
    join(entry, now);
    entries.push_back(std::move(entry));
  }
  m_entries = std::move(entries);
}

// An alert that is due shortly after an unheard call of its kind is shown on the same screen and waits for the next
// burst with it.
void Sounding::join(Entry& entry, std::int64_t now) const {
  if (entry.level != Level::Medium || m_schedule->bladeInHand) return;
  for (const Entry& other : m_entries) {
    if (other.level != Level::Medium || other.bursts == 0 || now - other.first > kMergeWithin) continue;
    entry.bursts = other.bursts;
    entry.first = now;
    entry.next = other.next;
    entry.speak = now + kSpeakAfter;
    return;
  }
}

void Sounding::raise(std::int64_t now) {
  for (Entry& entry : m_entries) {
    if (entry.level != Level::Medium || !entry.shrinking || entry.bursts == 0) continue;
    if (now - entry.first < kRaiseAfter) continue;
    entry.level = Level::High;
    entry.next = std::min(entry.next, now);
  }
}

bool Sounding::lostReason() const {
  return std::none_of(m_served.begin(), m_served.end(), [this](const Key& key) {
    const Entry* entry = find(key);
    return entry && (m_tone == Tone::Soft || !held(*entry));
  });
}

bool Sounding::spokenLostReason() const {
  if (!m_spokenOf) return m_schedule->bladeInHand;
  const Entry* entry = find(*m_spokenOf);
  return !entry || (held(*entry) && entry->softs == 0);
}

void Sounding::begin(std::int64_t now, Tone tone, std::vector<Key> served) {
  m_tone = tone;
  m_served = std::move(served);
  m_quietAt = now + m_lengths[static_cast<std::size_t>(tone)] + kBetween;
}

bool Sounding::withinBudget(std::int64_t now) {
  while (!m_firstCalls.empty() && m_firstCalls.front() + kHour <= now) m_firstCalls.pop_front();
  return m_firstCalls.size() < kMostAnHour;
}

std::optional<Sounding::Call> Sounding::callAgain(std::int64_t now, Level level) {
  const auto mine = [&](const Entry& entry) { return entry.level == level && !held(entry); };
  if (std::none_of(m_entries.begin(), m_entries.end(), [&](const Entry& e) { return mine(e) && e.next <= now; })) {
    return std::nullopt;
  }
  // One burst speaks for all of its class; the screen lists them.
  int bursts = 0;
  bool isFirst = false;
  std::vector<Key> served;
  for (Entry& entry : m_entries) {
    if (!mine(entry)) continue;
    bursts = std::max(bursts, entry.bursts);
    if (entry.bursts == 0) {
      isFirst = true;
      entry.first = now;
      entry.speak = now + kSpeakAfter;
    }
    entry.next = now + distance(level, ++entry.bursts);
    served.push_back(entry.key);
  }
  if (isFirst) m_firstCalls.push_back(now);
  begin(now, toneOf(level), std::move(served));
  return Call{toneOf(level), levelOf(bursts)};
}

std::optional<Sounding::Call> Sounding::callOnce(std::int64_t now) {
  for (Entry& entry : m_entries) {
    if (entry.level != Level::Low || held(entry) || entry.bursts > 0) continue;
    entry.bursts = 1;
    entry.first = now;
    const bool missed = std::get<intents::AlertClass>(entry.key) == intents::AlertClass::Missed;
    // After a recent call, or enough calls, only the line on the bench is shown.
    const bool justCalled = !m_firstCalls.empty() && now - m_firstCalls.back() < kMergeWithin;
    if (!missed && (justCalled || !withinBudget(now))) continue;
    m_firstCalls.push_back(now);
    const Tone tone = missed ? Tone::Soft : Tone::Low;
    begin(now, tone, {entry.key});
    return Call{tone, 0.0};
  }
  return std::nullopt;
}

std::optional<Sounding::Call> Sounding::callSoft(std::int64_t now, Voice voice) {
  for (Entry& entry : m_entries) {
    if (!held(entry) || entry.softs >= kSofts || entry.nextSoft > now) continue;
    // The second time a word says it better: see speak.
    if (entry.softs > 0 && voice != Voice::Absent) continue;
    const double decibels = entry.softs == 0 ? 0.0 : kSoftAgainDecibels;
    ++entry.softs;
    entry.nextSoft = now + kSoftAgain;
    begin(now, Tone::Soft, {entry.key});
    return Call{Tone::Soft, decibels};
  }
  return std::nullopt;
}

std::optional<base::Message> Sounding::speak(std::int64_t now) {
  Entry* chosen = nullptr;
  for (Entry& entry : m_entries) {
    if (held(entry)) {
      if (entry.softs == 0 || entry.softs >= kSofts || entry.nextSoft > now) continue;
      ++entry.softs;
      m_spokenOf = entry.key;
      return base::Message("say.waiting");
    }
    if (entry.speak <= now && (chosen == nullptr || chosen->level < entry.level)) chosen = &entry;
  }
  if (chosen == nullptr) return std::nullopt;
  chosen->speak = now + kSpeakAgain;
  m_spokenOf = chosen->key;
  return chosen->say;
}

std::optional<base::Message> Sounding::speakCue(std::int64_t now) {
  if (m_schedule->bladeInHand) return std::nullopt;
  for (const SpokenCue& cue : m_schedule->cues) {
    if (cue.dueBoottimeNanoseconds > now || cue.dueBoottimeNanoseconds + kCueStale < now) continue;
    if (!m_cuesGiven.insert({cue.job, cue.wait, cue.dueBoottimeNanoseconds}).second) continue;
    m_spokenOf.reset();
    return cue.say;
  }
  return std::nullopt;
}

void Sounding::takeBack(std::int64_t now) {
  for (const Key& key : std::exchange(m_served, {})) {
    Entry* entry = find(key);
    if (!entry) continue;
    if (m_tone == Tone::Soft && entry->level != Level::Low) {
      --entry->softs;
      entry->nextSoft = now;
    } else {
      --entry->bursts;
      entry->next = now;
    }
  }
}

std::int64_t Sounding::nextWake(std::int64_t now, Means means) const {
  std::int64_t wake = kNever;
  const auto at = [&](std::int64_t instant) { wake = std::min(wake, std::max(instant, now + 1)); };
  for (const auto& alert : m_schedule->alerts) {
    if (alert.dueBoottimeNanoseconds > now) at(alert.dueBoottimeNanoseconds);
  }
  if (!means.sound) return wake;
  const bool voice = means.voice != Voice::Absent;
  if (voice && !m_schedule->bladeInHand) {
    for (const SpokenCue& cue : m_schedule->cues) {
      if (cue.dueBoottimeNanoseconds > now) at(cue.dueBoottimeNanoseconds);
    }
  }
  // While something is spoken, its end brings the next turn.
  if (means.voice == Voice::Speaking) return wake;
  for (const Entry& entry : m_entries) {
    if (held(entry)) {
      if (entry.softs < kSofts) at(std::max(entry.nextSoft, m_quietAt));
      continue;
    }
    if (entry.level != Level::Low || entry.bursts == 0) at(std::max(entry.next, m_quietAt));
    if (voice && entry.speak != kNever) at(std::max(entry.speak, m_quietAt + kBeforeWords));
    if (entry.level == Level::Medium && entry.shrinking && entry.bursts > 0) at(entry.first + kRaiseAfter);
  }
  return wake;
}

void Sounding::sound(Turn& turn, std::int64_t now) {
  const auto fresh = [this](Level level) {
    return std::any_of(m_entries.begin(), m_entries.end(),
                       [&](const Entry& entry) { return entry.level == level && entry.bursts == 0 && !held(entry); });
  };
  if (now < m_quietAt && fresh(Level::High) && m_tone != Tone::High) {
    takeBack(now);
    m_quietAt = now;
  }
  if (now < m_quietAt) return;
  turn.call = callAgain(now, Level::High);
  if (!turn.call) turn.call = callAgain(now, Level::Medium);
  if (!turn.call) turn.call = callOnce(now);
}

Sounding::Turn Sounding::turn(std::int64_t now, Means means) {
  follow(now);
  raise(now);
  m_due = {};
  m_due.bladeInHand = m_schedule->bladeInHand;
  for (const auto& alert : m_schedule->alerts) {
    const Entry* entry = find({alert.job, alert.wait, alert.alert});
    if (entry && !held(*entry)) m_due.alerts.push_back(alert);
  }

  Turn turn;
  if (m_sound && !means.sound && now < m_quietAt) {
    // Nobody heard the end of it, perhaps not the beginning.
    takeBack(now);
    turn.hush = true;
    m_quietAt = now;
  }
  if (!m_sound && means.sound) {
    for (Entry& entry : m_entries) entry.next = now;
  }
  m_sound = means.sound;
  if (now < m_quietAt && lostReason()) {
    turn.hush = true;
    m_served.clear();
    m_quietAt = std::min(m_quietAt, now + kFade);
  }
  bool speaking = means.voice == Voice::Speaking;
  if (speaking) {
    const bool giveWay = std::any_of(m_entries.begin(), m_entries.end(), [this](const Entry& entry) {
      return entry.level == Level::High && entry.bursts == 0 && !held(entry);
    });
    turn.stopSpeaking = giveWay || spokenLostReason();
    speaking = !turn.stopSpeaking;
  }
  if (means.sound && !speaking) {
    sound(turn, now);
    if (!turn.call && now >= m_quietAt) turn.call = callSoft(now, means.voice);
    const bool mayTalk = means.voice == Voice::Idle && !turn.call;
    if (mayTalk && now >= m_quietAt) turn.say = speakCue(now);
    if (mayTalk && !turn.say && now >= m_quietAt + kBeforeWords) turn.say = speak(now);
  }
  // Words given out now are being spoken at the next turn.
  Means after = means;
  if (turn.say) after.voice = Voice::Speaking;
  turn.wake = nextWake(now, after);
  return turn;
}

}  // namespace core::alerts
