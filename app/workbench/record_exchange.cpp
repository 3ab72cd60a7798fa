#include "app/workbench/record_exchange.h"

#include <algorithm>
#include <set>

#include "app/convert/content_hash.h"
#include "core/base/text.h"
#include "core/jobs/standing.h"
#include "core/record/counting.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Problem;
using core::base::Result;
using core::base::Severity;
using core::record::Event;
using core::record::RecordFile;
using core::record::StoredText;

// Beyond what any job comes to: each is composed before the job is taken up.
constexpr std::size_t kMostPlans = 30;

bool isSame(const Event& a, const Event& b) { return a.eventId == b.eventId; }

std::string asText(const Event& event) { return core::base::writeJson(core::record::eventJson(event), 0); }

class Import {
 public:
  Import(const RecordFile& record, core::record::EventStore& store, const std::string& deviceId, ReadyToImport& ready)
      : m_record(record), m_store(store), m_deviceId(deviceId), m_ready(ready) {}

  void run() {
    auto there = m_store.load("job/" + m_record.job);
    if (!there) return error("", there.error());
    m_there = std::move(there).value();
    core::record::arrange(m_there);
    checkSameJob();
    takeTexts();
    if (m_failed) return;
    if (m_isThere) m_ready.mended += m_missing;
    const std::set<std::string> sharedSteps = openEveryPlan();
    if (m_failed) return;
    takeEvents(sharedSteps);
    if (!m_failed) m_ready.jobId = m_record.job;
  }

 private:
  void add(std::string pointer, Message message, Severity severity) {
    Problem problem;
    problem.pointer = std::move(pointer);
    problem.message = std::move(message);
    problem.severity = severity;
    m_ready.problems.push_back(std::move(problem));
  }
  void error(std::string pointer, Message message) {
    m_failed = true;
    add(std::move(pointer), std::move(message), Severity::Error);
  }

  void takeTexts() {
    const std::vector<std::string> hashes = hashesOf(m_record.events);
    const std::set<std::string> needed(hashes.begin(), hashes.end());
    for (std::size_t i = 0; i < m_record.texts.size(); ++i) {
      const StoredText& text = m_record.texts[i];
      const std::string place = core::base::pointerTo("/texts", i);
      if (app::convert::contentHash(text.body) != text.hash) {
        error(place, Message("import.wrong-hash").with("name", text.name));
      } else if (!needed.contains(text.hash)) {
        add(place, Message("import.text-unused").with("name", text.name), Severity::Notice);
      } else if (m_bodies.emplace(text.hash, text.body).second) {
        takeText(text);
      }
    }
  }

  void takeText(const StoredText& text) {
    const auto there = storedText(m_store, text.hash, text.name);
    if (there) return;
    const bool damaged = there.error().id == "kept.text-damaged";
    if (!damaged && there.error().id != "kept.text-missing") return error("", there.error());
    m_ready.texts.push_back(text);
    (damaged ? m_ready.mended : m_missing) += 1;
  }

  // Two JobTakenIn events under one id would be two jobs that cannot be distinguished. One that another bench wrote and
  // that does not open began no job, and does not prevent the import.
  void checkSameJob() {
    const std::vector<Event> here = takingsIn(m_record.events);
    if (here.empty()) return error("/events", Message("kept.taking-in-unreadable"));
    m_takingIn = here.front();
    const std::vector<Event> before = takingsIn(m_there);
    if (std::any_of(before.begin(), before.end(), [&](const Event& event) { return isSame(event, m_takingIn); })) {
      m_isThere = true;
      return;
    }
    const bool another = std::any_of(before.begin(), before.end(), [&](const Event& event) {
      return event.deviceId == m_deviceId || PlanReader(m_store).read(m_record.job, *takenInBy(event));
    });
    if (another) error("/job", Message("import.other-job").with("job", m_record.job));
  }

  // Checks that the job opens even if acts are taken back later. Returns the steps it shares with others, by any of its
  // plans.
  std::set<std::string> openEveryPlan() {
    std::vector<Event> events = m_there;
    events.insert(events.end(), m_record.events.begin(), m_record.events.end());
    const auto plans = everPlannedFrom(m_takingIn, events, kMostPlans + 1);
    std::set<std::string> sharedSteps;
    if (!plans) {
      error("/events", Message("kept.taking-in-unreadable"));
    } else if (plans->size() > kMostPlans) {
      error("/events", Message("import.too-many-plans").with("most", static_cast<std::int64_t>(kMostPlans)));
    } else {
      PlanReader reader(m_store);
      for (const core::intents::TakeIn& planned : *plans) {
        const auto plan = reader.read(m_record.job, planned, m_bodies);
        if (!plan) {
          error("", plan.error());
          break;
        }
        sharedSteps.merge(core::jobs::shopSteps(*plan.value()));
      }
    }
    return sharedSteps;
  }

  void takeEvents(const std::set<std::string>& sharedSteps) {
    std::vector<Event> own = m_there;
    std::vector<Event> bench;
    for (const Event& event : m_record.events) {
      (core::base::startsWith(event.stream, "job/") ? own : bench).push_back(event);
    }
    std::set<std::string> ofJob;
    for (const Event& event : core::record::benchEventsOf(bench, own, sharedSteps)) ofJob.insert(event.eventId);
    std::int64_t leftOut = 0;
    for (std::size_t i = 0; i < m_record.events.size(); ++i) {
      const Event& event = m_record.events[i];
      if (core::base::startsWith(event.stream, "bench/") && !ofJob.contains(event.eventId)) {
        ++leftOut;
        continue;
      }
      const auto there = m_store.find(event.eventId);
      if (!there) return error("", there.error());
      if (!there.value()) {
        takeNew(event, core::base::pointerTo("/events", i));
      } else if (asText(*there.value()) != asText(event)) {
        error(core::base::pointerTo("/events", i), Message("import.event-differs").with("event", event.eventId));
      }
    }
    if (leftOut > 0) add("/events", Message("import.shop-left-out").with("count", leftOut), Severity::Notice);
  }

  void takeNew(const Event& event, const std::string& place) {
    if (event.deviceId == m_deviceId) return error(place, Message("import.not-written-here"));
    const auto taken = m_store.written(event.deviceId, event.deviceSequence);
    if (!taken) return error("", taken.error());
    if (!taken.value().empty()) {
      return error(place, Message("import.number-taken").with("number", event.deviceSequence));
    }
    m_ready.events.push_back(event);
  }

  const RecordFile& m_record;
  core::record::EventStore& m_store;
  const std::string& m_deviceId;
  Event m_takingIn;            // the file's
  std::vector<Event> m_there;  // the job's own events in the store, in fold order
  ReadyToImport& m_ready;
  std::map<std::string, std::string> m_bodies;  // by hash
  std::size_t m_missing = 0;                    // of these, what the store has not at all
  bool m_isThere = false;                       // the very job
  bool m_failed = false;
};

}  // namespace

std::vector<std::string> hashesOf(const std::vector<Event>& events) {
  std::vector<std::string> hashes;
  std::set<std::string> seen;
  const auto take = [&](const std::string& hash) {
    if (seen.insert(hash).second) hashes.push_back(hash);
  };
  for (const Event& event : events) {
    const auto takenIn = core::record::as<core::record::JobTakenIn>(event);
    const auto renewed = core::record::as<core::record::TechniquesRenewed>(event);
    if (takenIn) take(takenIn->job);
    const auto techniques = takenIn ? takenIn->techniques : renewed ? renewed->techniques : std::nullopt;
    for (const auto& technique : techniques.value_or(core::record::TechniqueHashes())) take(technique.hash);
  }
  return hashes;
}

std::vector<StoredText> textsOf(core::record::EventStore& store, const std::vector<Event>& events) {
  std::vector<StoredText> texts;
  for (const std::string& hash : hashesOf(events)) {
    const auto text = store.text(hash);
    if (text && text.value()) texts.push_back(*text.value());
  }
  return texts;
}

std::vector<Event> handedOn(std::vector<Event> events, const std::string& jobHash) {
  std::erase_if(events, [&](const Event& event) {
    const auto takenIn = core::record::as<core::record::JobTakenIn>(event);
    return takenIn && takenIn->job != jobHash;
  });
  return events;
}

ReadyToImport readyToImport(const std::string& text, core::record::EventStore& store, const std::string& deviceId) {
  ReadyToImport ready;
  const core::record::ReadRecord read = core::record::readRecord(text);
  ready.problems = read.problems.sorted();
  if (read.record) Import(*read.record, store, deviceId, ready).run();
  if (ready.jobId.empty()) {
    ready.events.clear();
    ready.texts.clear();
  }
  return ready;
}

}  // namespace app::workbench
