#include "core/jobs/timeline.h"

#include <algorithm>
#include <map>
#include <type_traits>

#include "core/base/text.h"
#include "core/jobs/timeline_words.h"
#include "core/record/counting.h"
#include "core/record/happening.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

// The ids an event names, each under the name its member has in every type.
struct Named {
  std::string step, wait, figure, board, note, photograph, hash;
};

Named named(const Event& event, const Happening& happening) {
  Named ids;
  std::visit(
      [&]<typename One>(const One& one) {
        if constexpr (requires { one.step; }) ids.step = one.step;
        if constexpr (requires { one.wait; }) ids.wait = one.wait;
        if constexpr (requires { one.figure; }) ids.figure = one.figure;
        if constexpr (requires { one.board; }) ids.board = one.board;
        // Only an event that corrects a note or a photograph names one by its id: in another event `note` may be a
        // text.
        if constexpr (One::kTraits.corrects == Corrects::Note && requires { one.note; }) ids.note = one.note;
        if constexpr (One::kTraits.corrects == Corrects::Photograph && requires { one.photograph; })
          ids.photograph = one.photograph;
        if constexpr (std::is_same_v<One, PhotographKept>) ids.hash = one.hash;
        if constexpr (std::is_same_v<One, PhotographKept>) ids.photograph = event.eventId;
        if constexpr (std::is_same_v<One, NoteAdded>) ids.note = event.eventId;
      },
      happening);
  return ids;
}

// Returns the subject under which a later event corrects this one; "" where none can.
std::string subjectOf(const Happening& happening, const Named& ids) {
  switch (traitsOf(happening).corrects) {
    case Corrects::Nothing: return "";
    case Corrects::Note: return "note " + ids.note;
    case Corrects::Photograph: return "photograph " + ids.photograph;
    case Corrects::Figure: return "figure " + ids.figure;
    case Corrects::Board: return "board " + ids.board;
    case Corrects::Batches: return "batches " + ids.step;
  }
  return "";
}

class Timeline {
 public:
  Timeline(const JobState& state, const shop::Shop& shop, const std::vector<Event>& events, const TimelineWords& words)
      : m_state(state), m_shop(shop), m_events(events), m_words(words) {
    std::vector<Event> own;
    std::vector<Event> bench;
    for (const Event& event : events) (isOwn(event) ? own : bench).push_back(event);
    std::vector<Event> counting = Counting(own).of(bench);
    for (const Event& event : counting) m_counting.insert(event.eventId);
    counting.insert(counting.end(), own.begin(), own.end());
    arrange(counting);
    m_voided = voidedIntents(counting);
    for (const Event& event : counting) {
      const auto undone = as<Undone>(event);
      if (!undone) continue;
      m_undoing.insert(event.intentId);
      if (!m_voided.contains(event.intentId)) m_takenBackBy[undone->intent] = event.eventId;
    }
  }

  std::vector<TimelineEntry> run() {
    for (const Event& event : m_events) {
      if (concernsJob(event)) enter(event);
    }
    return std::move(m_entries);
  }

 private:
  bool isOwn(const Event& event) const { return event.stream == "job/" + m_state.plan->id; }

  bool concernsJob(const Event& event) const {
    if (isOwn(event)) return true;
    if (const auto cut = as<SheetCut>(event)) return cut->job == m_state.plan->id;
    if (!touchesJobs(event) || isA<Undone>(event)) return false;
    const workflow::WorkflowStep* step = m_state.plan->workflow.find(stepOf(event));
    if (step == nullptr || !step->ofShop) return false;
    return m_counting.contains(event.eventId) || isElsewhere(event);
  }

  bool isElsewhere(const Event& event) const {
    const auto& there = m_state.elsewhere;
    return isA<StepDone>(event) && std::any_of(there.begin(), there.end(), [&](const PreparedElsewhere& one) {
             return one.intentId == event.intentId && one.deviceId == event.deviceId;
           });
  }

  void enter(const Event& event) {
    TimelineEntry entry;
    const Happening happening = happeningOf(event);
    const Named ids = named(event, happening);
    const TimelineSaying saying = sayingOf(event, happening, m_state, m_shop, m_undoing, m_words);
    entry.kind = saying.kind;
    entry.what = saying.what;
    entry.eventId = event.eventId;
    entry.intentId = event.intentId;
    entry.deviceId = event.deviceId;
    entry.occurredUtc = event.occurredUtc;
    entry.recordedUtc = event.recordedUtc;
    entry.zone = event.zone;
    entry.timeKnown = waits::isBelievable(event.occurredUtc);
    entry.step = ids.step;
    entry.wait = ids.wait;
    entry.figure = ids.figure;
    entry.note = ids.note;
    entry.photograph = ids.photograph;
    entry.hash = ids.hash;
    entry.room = roomAt(m_shop.rooms, m_state.plan->design.job.room, event.occurredUtc);
    if (const auto by = m_takenBackBy.find(event.intentId); by != m_takenBackBy.end()) entry.takenBackBy = by->second;
    if (const auto* linked = std::get_if<BatchesLinked>(&happening)) entry.batches = batchesOf(event, *linked);
    const bool elsewhere = !isOwn(event) && isElsewhere(event) && !m_counting.contains(event.eventId);
    if (elsewhere) {
      entry.kind = TimelineKind::Elsewhere;
      entry.what = base::Message("timeline.elsewhere").with("step", m_state.plan->workflow.find(entry.step)->title);
    }
    const bool live = !elsewhere && !m_voided.contains(event.intentId) && !m_state.repeated.contains(event.eventId);
    m_entries.push_back(std::move(entry));
    if (live) relate(event, happening, subjectOf(happening, ids));
  }

  // An entry corrects the earlier one of the same subject; batches belong to the last time the step was done.
  void relate(const Event& event, const Happening& happening, const std::string& subject) {
    const std::size_t index = m_entries.size() - 1;
    const std::string& step = m_entries[index].step;
    if (std::holds_alternative<StepDone>(happening)) {
      m_lastDone[step] = index;
      m_lastOf.erase("batches " + step);
    }
    if (std::holds_alternative<BatchesLinked>(happening)) {
      const auto done = m_lastDone.find(step);
      if (done != m_lastDone.end()) m_entries[done->second].batches = m_entries[index].batches;
    }
    if (subject.empty()) return;
    if (const auto last = m_lastOf.find(subject); last != m_lastOf.end())
      m_entries[last->second].correctedBy = event.eventId;
    m_lastOf[subject] = index;
  }

  std::vector<BatchThen> batchesOf(const Event& event, const BatchesLinked& linked) const {
    std::vector<BatchThen> batches;
    for (const std::string& id : linkedBatches(linked).value_or(std::vector<std::string>())) {
      BatchThen then;
      then.id = id;
      if (const shop::Batch* batch = m_shop.stock.batch(id)) {
        then.known = true;
        then.mark = batch->mark;
        then.name = batch->entry.name;
        then.madeUtc = batch->entry.madeUtc;
        const auto done = m_lastDone.find(linked.step);
        then.shelf =
            shop::shelfAt(*batch, done == m_lastDone.end() ? event.occurredUtc : m_entries[done->second].occurredUtc);
      }
      batches.push_back(std::move(then));
    }
    return batches;
  }

  const JobState& m_state;
  const shop::Shop& m_shop;
  const std::vector<Event>& m_events;
  const TimelineWords& m_words;
  std::set<std::string> m_counting;  // events of benches that count in this job, by id
  std::set<std::string> m_voided;
  std::set<std::string> m_undoing;                   // intents that took something back
  std::map<std::string, std::string> m_takenBackBy;  // intent -> event
  std::map<std::string, std::size_t> m_lastOf;       // subject -> entry
  std::map<std::string, std::size_t> m_lastDone;     // step -> entry
  std::vector<TimelineEntry> m_entries;
};

}  // namespace

std::optional<RoomThen> roomAt(const waits::RoomTrack& rooms, const std::optional<units::Room>& planned,
                               std::int64_t utc) {
  const waits::RoomReading* newest = nullptr;
  for (const waits::RoomReading& reading : rooms) {
    if (reading.at.utcMilliseconds > utc) continue;
    if (newest == nullptr || newest->at.utcMilliseconds <= reading.at.utcMilliseconds) newest = &reading;
  }
  if (newest != nullptr) {
    const auto from = newest->bySensor ? RoomThen::From::Sensor : RoomThen::From::Entered;
    return RoomThen{newest->room, from, newest->at.utcMilliseconds};
  }
  if (planned) return RoomThen{*planned, RoomThen::From::Planned, 0};
  return std::nullopt;
}

std::vector<TimelineEntry> timelineOf(const JobState& state, const shop::Shop& shop, std::vector<Event> events,
                                      Order order, const TimelineWords& words) {
  arrange(events);
  std::vector<TimelineEntry> entries = Timeline(state, shop, events, words).run();
  if (order == Order::NewestFirst) std::reverse(entries.begin(), entries.end());
  return entries;
}

}  // namespace core::jobs
