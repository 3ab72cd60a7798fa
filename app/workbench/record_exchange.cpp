#include "app/workbench/record_exchange.h"

#include <algorithm>
#include <set>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/record/standing.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Problem;
using core::base::Result;
using core::base::Severity;
using core::record::Event;
using core::record::RecordFile;
using core::record::StoredText;

const Event* takingIn(const std::vector<Event>& events) {
  const auto found = std::find_if(events.begin(), events.end(), [](const Event& event) {
    return event.type == core::record::type::kJobTakenIn && core::base::startsWith(event.stream, "job/");
  });
  return found == events.end() ? nullptr : &*found;
}

// Of every text the job was ever planned from, each once: a renewal may be taken back.
std::vector<std::string> hashesOf(const std::vector<Event>& events) {
  std::vector<std::string> hashes;
  const auto take = [&](const std::string& hash) {
    if (std::find(hashes.begin(), hashes.end(), hash) == hashes.end()) hashes.push_back(hash);
  };
  for (const Event& event : events) {
    const bool takenIn = event.type == core::record::type::kJobTakenIn;
    if (event.version != 1 || !(takenIn || event.type == core::record::type::kTechniquesRenewed)) continue;
    if (takenIn) take(core::record::textOf(event.payload, "job"));
    for (const auto& technique : readTechniques(event.payload).value_or(Techniques())) take(technique.hash);
  }
  return hashes;
}

std::string asText(const Event& event) { return core::base::writeJson(core::record::eventJson(event), 0); }

class Import {
 public:
  Import(const RecordFile& record, core::record::EventStore& store, ReadyToImport& ready)
      : m_record(record), m_store(store), m_ready(ready) {}

  void run() {
    const auto planned = plannedFrom(m_record.events);
    if (!planned) return error("/events", Message("kept.taking-in-unreadable"));
    takeTexts();
    if (m_failed) return;
    const auto plan = PlanReader(m_store).read(m_record.job, *planned, m_bodies);
    if (!plan) return error("", plan.error());
    checkSameJob();
    takeEvents(core::record::shopSteps(*plan.value()));
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
    const std::vector<std::string> needed = hashesOf(m_record.events);
    for (std::size_t i = 0; i < m_record.texts.size(); ++i) {
      const StoredText& text = m_record.texts[i];
      const std::string place = core::base::pointerTo("/texts", i);
      if (app::convert::contentHash(text.body) != text.hash) {
        error(place, Message("import.wrong-hash").with("name", text.name));
      } else if (std::find(needed.begin(), needed.end(), text.hash) == needed.end()) {
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

  // Two takings in under one id would be two jobs that nobody could tell apart.
  void checkSameJob() {
    const auto there = m_store.load("job/" + m_record.job);
    if (!there) return error("", there.error());
    const Event* before = takingIn(there.value());
    if (before != nullptr && before->eventId != takingIn(m_record.events)->eventId) {
      error("/job", Message("import.other-job").with("job", m_record.job));
    }
    if (before != nullptr) m_ready.mended += m_missing;
  }

  void takeEvents(const std::set<std::string>& sharedSteps) {
    std::vector<Event> own;
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
        m_ready.events.push_back(event);
      } else if (asText(*there.value()) != asText(event)) {
        error(core::base::pointerTo("/events", i), Message("import.event-differs").with("event", event.eventId));
      }
    }
    if (leftOut > 0) add("/events", Message("import.shop-left-out").with("count", leftOut), Severity::Notice);
  }

  const RecordFile& m_record;
  core::record::EventStore& m_store;
  ReadyToImport& m_ready;
  std::map<std::string, std::string> m_bodies;  // by hash
  std::size_t m_missing = 0;                    // of these, what the store has not at all
  bool m_failed = false;
};

}  // namespace

std::vector<StoredText> textsOf(core::record::EventStore& store, const std::vector<Event>& events) {
  std::vector<StoredText> texts;
  for (const std::string& hash : hashesOf(events)) {
    const auto text = store.text(hash);
    if (text && text.value()) texts.push_back(*text.value());
  }
  return texts;
}

Result<std::string, Message> handOn(const std::string& jobId, Result<std::vector<Event>, Message> events,
                                    core::record::EventStore& store) {
  if (!events) return events.error();
  std::vector<StoredText> texts = textsOf(store, events.value());
  for (const std::string& hash : hashesOf(events.value())) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [&](const StoredText& text) { return text.hash == hash; });
    const auto whole = storedText(store, hash, found == texts.end() ? hash : found->name);
    if (!whole) return whole.error();
  }
  std::string text = core::record::writeRecord({jobId, std::move(texts), std::move(events).value()});
  if (text.size() > core::record::kMaximumRecordBytes) {
    return Message("export.too-large")
        .with("most", static_cast<std::int64_t>(core::record::kMaximumRecordBytes / (1024U * 1024U)));
  }
  // Read as whoever takes it up will read it.
  for (const Problem& problem : core::record::readRecord(text).problems.sorted()) {
    if (problem.severity != Severity::Error) continue;
    const QString detail = words::text(problem.message, core::units::UnitSystem::Millimetres);
    return Message("export.not-taken-up").with("detail", convert::fromQt(detail));
  }
  return text;
}

ReadyToImport readyToImport(const std::string& text, core::record::EventStore& store) {
  ReadyToImport ready;
  const core::record::ReadRecord read = core::record::readRecord(text);
  ready.problems = read.problems.sorted();
  if (read.record) Import(*read.record, store, ready).run();
  return ready;
}

}  // namespace app::workbench
