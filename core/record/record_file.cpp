#include "core/record/record_file.h"

#include <algorithm>

#include "core/base/long_json.h"
#include "core/base/stated_format.h"
#include "core/base/strict_reader.h"
#include "core/base/text.h"
#include "core/record/happening.h"
#include "core/record/texts.h"
#include "core/waits/clock.h"

namespace core::record {
namespace {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::Value;

constexpr const char* kFormat = "mountwright-record/1";
constexpr std::size_t kLongestId = 100;  // ids here are 36 long; another program's may be others
constexpr std::size_t kMostTexts = 1000;
constexpr std::size_t kMostEvents = 50'000;
// The longest text of an event: a note is the longest a maker writes.
constexpr std::size_t kLongestWords = kLongestText;

using base::isHash;

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
  std::string words(const Node& node, std::size_t most) {
    if (!node) return {};
    if (node.value->kind() != Value::Kind::Text) {
      (void)base::readText(node, m_problems);
      return {};
    }
    if (node.value->asText().size() > most) tooLong(node, most);
    return node.value->asText();
  }

  void tooLong(const Node& node, std::size_t most) {
    base::report(m_problems, node, Message("import.too-long").with("most", static_cast<std::int64_t>(most)));
  }

  // Everything that is said in what an event carries: no text longer than a maker writes.
  void readPayload(const Node& node) {
    const Value& value = *node.value;
    if (value.kind() == Value::Kind::Text && value.asText().size() > kLongestWords) tooLong(node, kLongestWords);
    if (value.kind() == Value::Kind::Array) {
      for (std::size_t i = 0; i < value.items().size(); ++i) {
        readPayload({&value.items()[i], base::pointerTo(node.pointer, i)});
      }
    }
    if (value.kind() != Value::Kind::Object) return;
    for (const auto& [key, member] : value.members()) {
      const Node below{&member, base::pointerTo(node.pointer, key)};
      if (key.size() > kLongestWords) tooLong(node, kLongestWords);
      readPayload(below);
    }
  }

  // A malformed clock is refused. One that is not believable is accepted with a notice: the event is placed by its
  // device's count, and neither it nor its stated time moves anything else.
  Hlc readClock(const Node& node) {
    const std::string written = words(node, kLongestId);
    const Hlc hlc = parseHlc(written);
    if (!node) return hlc;
    if (text(hlc) != written || hlc.milliseconds > waits::kLatestWritableUtc || hlc.counter > kMostCounts) {
      base::report(m_problems, node, Message("import.no-clock"));
    } else if (!isBelievable(hlc)) {
      base::report(m_problems, node, Message("import.clock-not-believed"), base::Severity::Notice);
    }
    return hlc;
  }

  std::string id(const Node& node) {
    if (!node) return {};
    const auto text = base::readText(node, m_problems);
    if (!text) return {};
    if (!text->empty() && !isPlainId(*text)) base::report(m_problems, node, Message("import.no-id"));
    return *text;
  }

  std::int64_t integer(const Node& node, std::int64_t least, std::int64_t most) {
    if (!node) return 0;
    return base::readInteger(node, m_problems, least, most).value_or(0);
  }

  void readTexts(const Node& node, RecordFile& record) {
    const auto items = base::readItems(node, m_problems, kMostTexts);
    if (!items) return;
    for (const Node& item : *items) {
      ObjectReader object(item, m_problems);
      if (!object.valid()) continue;
      StoredText text;
      const Node hash = object.required("hash");
      text.hash = words(hash, kLongestId);
      if (hash && !isHash(text.hash)) base::report(m_problems, hash, Message("import.no-hash"));
      if (const Node kind = object.required("kind")) {
        const auto which = base::readChoice(kind, {"job", "technique"}, m_problems);
        text.kind = which && *which == 1 ? "technique" : "job";
      }
      text.name = words(object.required("name"), kLongestWords);
      text.body = words(object.required("body"), base::kMaximumJsonBytes);
      object.finish();
      record.texts.push_back(std::move(text));
    }
  }

  void readEvents(const Node& node, RecordFile& record) {
    const auto items = base::readItems(node, m_problems, kMostEvents);
    if (!items) return;
    bool takenIn = false;
    for (const Node& item : *items) {
      ObjectReader object(item, m_problems);
      if (!object.valid()) continue;
      record.events.push_back(readEvent(object, record.job));
      object.finish();
      const Event& event = record.events.back();
      const bool own = event.stream == "job/" + record.job;
      if (own && event.type == JobTakenIn::kType) {
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
    event.deviceSequence = integer(object.required("device_seq"), 1, kMostSequence);
    event.hlc = readClock(object.required("hlc"));
    event.intentId = id(object.required("intent_id"));
    const Node stream = object.required("stream");
    event.stream = id(stream);
    if (stream && event.stream != "job/" + job && !base::startsWith(event.stream, "bench/")) {
      base::report(m_problems, stream, Message("import.other-stream"));
    } else if (stream && base::startsWith(event.stream, "bench/") && event.stream != "bench/" + event.deviceId) {
      base::report(m_problems, stream, Message("import.other-bench"));
    }
    event.type = id(object.required("type"));
    event.version = static_cast<int>(integer(object.required("version"), 1, 1'000'000));
    event.occurredUtc = integer(object.required("occurred"), -waits::kLatestWritableUtc, waits::kLatestWritableUtc);
    event.recordedUtc = integer(object.required("recorded"), -waits::kLatestWritableUtc, waits::kLatestWritableUtc);
    event.zone = words(object.required("zone"), kLongestId);
    event.bootId = words(object.required("boot_id"), kLongestId);
    event.boottimeNanoseconds = integer(object.required("boottime_ns"), 0, waits::kLongestUptime);
    if (const Node synced = object.required("synced")) {
      event.synced = base::readBoolean(synced, m_problems).value_or(false);
    }
    if (const Node payload = object.required("payload")) {
      readPayload(payload);
      event.payload = *payload.value;
    }
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

bool isRecordFile(std::string_view text) {
  return base::startsWith(base::statedFormat(text, kMaximumRecordBytes), "mountwright-record/");
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

}  // namespace core::record
