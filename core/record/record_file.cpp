#include "core/record/record_file.h"

#include <algorithm>
#include <limits>

#include "core/base/long_json.h"
#include "core/base/strict_reader.h"
#include "core/base/text.h"
#include "core/record/job_state.h"

namespace core::record {
namespace {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::Value;

constexpr const char* kFormat = "mountwright-record/1";
constexpr std::size_t kLongestId = 100;  // ids here are 36 long; another program's may be others
constexpr std::int64_t kLargest = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t kMostCounts = 999'999;  // what six digits hold

bool isHash(const std::string& text) {
  return text.size() == 64 &&
         std::all_of(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

class Reader {
 public:
  explicit Reader(Problems& problems) : m_problems(problems) {}

  RecordFile read(const Value& root) {
    RecordFile record;
    ObjectReader object({&root, ""}, m_problems);
    if (!object.valid()) return record;
    const Node format = object.required("format");
    // A file of another kind has one thing wrong with it, not one for each of its keys.
    if (format && format.value->kind() == Value::Kind::Text && format.value->asText() != kFormat) {
      base::report(
          m_problems, format,
          Message("import.no-record").with("found", format.value->asText()).with("known", std::string(kFormat)));
      return record;
    }
    if (format) (void)base::readText(format, m_problems);
    record.job = id(object.required("job"));
    if (const Node texts = object.required("texts")) readTexts(texts, record);
    if (const Node events = object.required("events")) readEvents(events, record);
    object.finish();
    return record;
  }

 private:
  // Words of any kind, empty ones too.
  std::string words(const Node& node) {
    if (!node) return {};
    if (node.value->kind() != Value::Kind::Text) {
      (void)base::readText(node, m_problems);
      return {};
    }
    return node.value->asText();
  }

  std::string id(const Node& node) {
    if (!node) return {};
    const auto text = base::readText(node, m_problems);
    if (!text) return {};
    const bool plain = std::all_of(text->begin(), text->end(), [](char c) { return c > ' ' && c < '\x7f'; });
    if (!plain || text->size() > kLongestId) base::report(m_problems, node, Message("import.no-id"));
    return *text;
  }

  std::int64_t integer(const Node& node, std::int64_t least, std::int64_t most) {
    if (!node) return 0;
    return base::readInteger(node, m_problems, least, most).value_or(0);
  }

  void readTexts(const Node& node, RecordFile& record) {
    const auto items = base::readItems(node, m_problems);
    if (!items) return;
    for (const Node& item : *items) {
      ObjectReader object(item, m_problems);
      if (!object.valid()) continue;
      StoredText text;
      const Node hash = object.required("hash");
      text.hash = words(hash);
      if (hash && !isHash(text.hash)) base::report(m_problems, hash, Message("import.no-hash"));
      if (const Node kind = object.required("kind")) {
        const auto which = base::readChoice(kind, {"job", "technique"}, m_problems);
        text.kind = which && *which == 1 ? "technique" : "job";
      }
      text.name = words(object.required("name"));
      text.body = words(object.required("body"));
      object.finish();
      record.texts.push_back(std::move(text));
    }
  }

  void readEvents(const Node& node, RecordFile& record) {
    const auto items = base::readItems(node, m_problems);
    if (!items) return;
    bool takenIn = false;
    for (const Node& item : *items) {
      ObjectReader object(item, m_problems);
      if (!object.valid()) continue;
      record.events.push_back(readEvent(object, record.job));
      object.finish();
      const Event& event = record.events.back();
      const bool own = event.stream == "job/" + record.job;
      if (own && event.type == type::kJobTakenIn) {
        if (takenIn) base::report(m_problems, item, Message("import.taken-in-twice"));
        takenIn = true;
      }
      if (!m_ids.insert(event.eventId).second) base::report(m_problems, item, Message("import.event-twice"));
      if (!m_counts.insert({event.deviceId, event.deviceSequence}).second) {
        base::report(m_problems, item, Message("import.count-twice"));
      }
    }
    if (!takenIn) base::report(m_problems, node, Message("import.not-taken-in"));
  }

  Event readEvent(ObjectReader& object, const std::string& job) {
    Event event;
    event.eventId = id(object.required("event_id"));
    event.deviceId = id(object.required("device_id"));
    event.deviceSequence = integer(object.required("device_seq"), 1, kLargest);
    const Node clock = object.required("hlc");
    const std::string written = words(clock);
    event.hlc = parseHlc(written);
    if (clock && (text(event.hlc) != written || event.hlc.milliseconds > kLatestBelievableUtc ||
                  event.hlc.counter > kMostCounts)) {
      base::report(m_problems, clock, Message("import.no-clock"));
    }
    event.intentId = id(object.required("intent_id"));
    const Node stream = object.required("stream");
    event.stream = id(stream);
    if (stream && event.stream != "job/" + job && !base::startsWith(event.stream, "bench/")) {
      base::report(m_problems, stream, Message("import.other-stream"));
    }
    event.type = id(object.required("type"));
    event.version = static_cast<int>(integer(object.required("version"), 1, 1'000'000));
    event.occurredUtc = integer(object.required("occurred"), -kLatestBelievableUtc, kLatestBelievableUtc);
    event.recordedUtc = integer(object.required("recorded"), -kLatestBelievableUtc, kLatestBelievableUtc);
    event.zone = words(object.required("zone"));
    event.bootId = words(object.required("boot_id"));
    event.boottimeNanoseconds = integer(object.required("boottime_ns"), 0, kLargest);
    if (const Node synced = object.required("synced")) {
      event.synced = base::readBoolean(synced, m_problems).value_or(false);
    }
    if (const Node payload = object.required("payload")) event.payload = *payload.value;
    return event;
  }

  Problems& m_problems;
  std::set<std::string> m_ids;
  std::set<std::pair<std::string, std::int64_t>> m_counts;
};

}  // namespace

std::string writeRecord(const RecordFile& record) {
  std::vector<Event> events = record.events;
  std::sort(events.begin(), events.end(), before);
  Value texts = Value::array();
  for (const StoredText& text : record.texts) {
    Value item = Value::object();
    item.set("hash", Value::text(text.hash));
    item.set("kind", Value::text(text.kind));
    item.set("name", Value::text(text.name));
    item.set("body", Value::text(text.body));
    texts.append(std::move(item));
  }
  Value list = Value::array();
  for (const Event& event : events) list.append(eventJson(event));
  Value root = Value::object();
  root.set("format", Value::text(kFormat));
  root.set("job", Value::text(record.job));
  root.set("texts", std::move(texts));
  root.set("events", std::move(list));
  return base::writeJson(root, 2) + "\n";
}

ReadRecord readRecord(std::string_view text) {
  ReadRecord read;
  base::ParsedJson parsed = base::parseJson(text, kMaximumRecordBytes);
  read.problems = parsed.problems;
  if (!parsed.readable) return read;
  RecordFile record = Reader(read.problems).read(parsed.root);
  if (!read.problems.hasErrors()) read.record = std::move(record);
  return read;
}

std::vector<Event> benchEventsOf(const std::vector<Event>& bench, const std::vector<Event>& own,
                                 const std::set<std::string>& sharedSteps) {
  std::set<std::string> intents;
  for (const Event& event : own) intents.insert(event.intentId);
  std::vector<Event> found;
  for (const Event& event : bench) {
    if (!touchesJobs(event) || event.type == type::kUndone) continue;
    if (!sharedSteps.contains(textOf(event.payload, "step"))) continue;
    intents.insert(event.intentId);
    found.push_back(event);
  }
  // What takes one of them back, and what takes that back again, however far.
  std::set<std::string> kept;
  for (bool more = true; more;) {
    more = false;
    for (const Event& event : bench) {
      if (event.type != type::kUndone || !intents.contains(textOf(event.payload, "intent"))) continue;
      if (!kept.insert(event.eventId).second) continue;
      intents.insert(event.intentId);
      found.push_back(event);
      more = true;
    }
  }
  return found;
}

}  // namespace core::record
