#include "tests/fuzz/record_mutator.h"

#include <algorithm>
#include <random>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/record/happening.h"
#include "tests/support/sha256.h"

namespace tests {
namespace {

using core::base::Value;
using core::record::JobTakenIn;
using core::record::StepDone;

template <std::size_t... place>
std::vector<std::string> typesOf(std::index_sequence<place...>) {
  return {std::variant_alternative_t<place, core::record::Happening>::kType...};
}

// Every type there is, and one there is not.
std::vector<std::string> types() {
  std::vector<std::string> all = typesOf(std::make_index_sequence<std::variant_size_v<core::record::Happening>>());
  all.emplace_back("SungTo");
  return all;
}
const char* const kTexts[] = {"",
                              "paste/soak",
                              "paste/cook",
                              "size/brush",
                              "size/lay",
                              "tacky",
                              "notYet",
                              "pastIt",
                              "dry",
                              "open",
                              "closing",
                              "paste/soak/soaks",
                              "size/brush/tack",
                              "thick",
                              "reveal",
                              "here",
                              "ours",
                              "theirs",
                              "bench/ours",
                              "bench/theirs",
                              "bench/here",
                              "job/j",
                              "job/mine",
                              "design/x",
                              "boot-1",
                              "0000000000000000-000000",
                              "0001764000000500-999999",
                              "0004102444800000-999999",
                              "0004102444800001-000000",
                              "0253402300799999-000000",
                              "9999999999999999-999999",
                              "0000000000000001-1000000",
                              "board.top.sight.width",
                              "act-1",
                              "ours-2",
                              "jpeg",
                              "\xE2\x80\xAE",
                              "a b"};
const char* const kKeys[] = {"step",    "wait",   "verdict",    "alert",  "minutes",     "intent",
                             "intents", "device", "anew",       "fault",  "figure",      "nanometres",
                             "board",   "keep",   "text",       "note",   "hash",        "bytes",
                             "batches", "job",    "techniques", "checks", "begunInTime", "overrules"};
const std::int64_t kNumbers[] = {0,
                                 1,
                                 -1,
                                 2,
                                 60,
                                 61,
                                 300'000'000,
                                 1'000'000,
                                 1'764'000'000'000,
                                 4'102'444'800'000,
                                 4'102'444'800'001,
                                 253'402'300'799'999,
                                 253'402'300'800'000,
                                 999'000'000'000,
                                 1'000'000'000'000,
                                 1'000'000'000'001,
                                 315'576'000'000'000'000,
                                 9'223'372'036'854'775'806,
                                 9'223'372'036'854'775'807,
                                 -9'223'372'036'854'775'807 - 1};
const char* const kFields[] = {"event_id", "device_id", "device_seq",  "hlc",      "intent_id",
                               "stream",   "type",      "version",     "occurred", "recorded",
                               "zone",     "boot_id",   "boottime_ns", "synced",   "payload"};

class Mutator {
 public:
  Mutator(Value root, std::uint32_t seed) : m_root(std::move(root)), m_random(seed) {}

  std::string run() {
    for (std::size_t changes = 1 + below(4); changes > 0; --changes) change();
    return core::base::writeJson(m_root, 0);
  }

 private:
  std::size_t below(std::size_t count) { return m_random() % count; }
  template <typename Item, std::size_t count>
  const Item& one(const Item (&items)[count]) {
    return items[below(count)];
  }

  void change() {
    const Value* events = m_root.find("events");
    const bool some = events != nullptr && events->kind() == Value::Kind::Array && !events->items().empty();
    if (!some || below(12) == 0) return changeTexts();
    switch (below(6)) {
      case 0: return reorder(events->items());
      case 1: return addEvent(events->items());
      default: return changeEvent(events->items());
    }
  }

  void setEvents(const std::vector<Value>& events) {
    Value list = Value::array();
    for (const Value& event : events) list.append(event);
    m_root.set("events", std::move(list));
  }

  void reorder(std::vector<Value> events) {
    switch (below(4)) {
      case 0: std::swap(events[below(events.size())], events[below(events.size())]); break;
      case 1: std::shuffle(events.begin(), events.end(), m_random); break;
      case 2:
        if (events.size() > 1) events.erase(events.begin() + static_cast<std::ptrdiff_t>(below(events.size())));
        break;
      default: std::reverse(events.begin(), events.end());
    }
    setEvents(events);
  }

  // Another event, of an id and a number that nobody has.
  void addEvent(std::vector<Value> events) {
    Value event = events[below(events.size())];
    if (event.kind() != Value::Kind::Object) return;
    const std::string number = std::to_string(1000 + below(100'000));
    event.set("event_id", Value::text("added-" + number));
    event.set("device_seq", Value::integer(static_cast<std::int64_t>(1000 + below(100'000))));
    if (below(2) == 0) event.set("intent_id", Value::text("act-" + number));
    // A second taking in is refused whatever it says.
    const std::string kind = anyType();
    event.set("type", Value::text(kind == JobTakenIn::kType && below(20) > 0 ? StepDone::kType : kind));
    event.set("version", Value::integer(1));
    if (below(3) > 0) {
      const char* device = below(2) == 0 ? "ours" : "theirs";
      event.set("device_id", Value::text(device));
      event.set("stream", Value::text(below(3) == 0 ? std::string("bench/") + device : std::string("job/j")));
    }
    event.set("hlc", Value::text(clock()));
    if (below(3) > 0) event.set("payload", payload(events));
    events.push_back(std::move(event));
    setEvents(events);
  }

  std::string anyType() {
    static const std::vector<std::string> kTypes = types();
    return kTypes[below(kTypes.size())];
  }

  std::string clock() {
    const core::record::Hlc hlc{1'764'000'000'000 + static_cast<std::int64_t>(below(2000)),
                                below(4) == 0 ? core::record::kMostCounts : static_cast<std::int64_t>(below(3))};
    return below(6) == 0 ? one(kTexts) : core::record::text(hlc);
  }

  Value payload(const std::vector<Value>& events) {
    Value made = Value::object();
    for (std::size_t members = 1 + below(3); members > 0; --members) made.set(one(kKeys), leaf(events, 0));
    return made;
  }

  // A value of any kind, often one that stands elsewhere in the file.
  Value leaf(const std::vector<Value>& events, int depth) {
    switch (below(depth > 2 ? 5 : 8)) {
      case 0: return Value::integer(one(kNumbers));
      case 1: return below(2) == 0 ? Value::boolean(below(2) == 0) : Value();
      case 2:
      case 3: return Value::text(one(kTexts));
      case 4: {
        const Value& event = events[below(events.size())];
        const Value* there = event.find(one(kFields));
        return there == nullptr ? Value() : *there;
      }
      case 5: {
        Value list = Value::array();
        for (std::size_t items = below(4); items > 0; --items) list.append(leaf(events, depth + 1));
        return list;
      }
      case 6: {
        Value object = Value::object();
        for (std::size_t members = below(3); members > 0; --members) object.set(one(kKeys), leaf(events, depth + 1));
        return object;
      }
      default: return Value::number(below(2) == 0 ? 0.5 : 1e300);
    }
  }

  // A value of the kind a field has, nearly always: what has another kind is refused at once and shows little.
  Value valueFor(const std::string& field, const std::vector<Value>& events) {
    if (below(25) == 0) return leaf(events, 0);
    if (field == "hlc") return Value::text(clock());
    if (field == "type") return Value::text(anyType());
    if (field == "synced") return Value::boolean(below(2) == 0);
    if (field == "version") return Value::integer(below(8) == 0 ? 2 : 1);
    if (field == "device_seq") return Value::integer(below(2) == 0 ? one(kNumbers) : random(1, 3000));
    if (field == "boottime_ns") return Value::integer(below(2) == 0 ? one(kNumbers) : random(0, 20'000'000'000'000));
    if (field == "occurred" || field == "recorded") {
      return Value::integer(below(2) == 0 ? one(kNumbers) : 1'764'000'000'000 + random(-5'000'000, 9'000'000'000));
    }
    if (field == "payload") return payload(events);
    const Value* there = events[below(events.size())].find(field);
    return there != nullptr && below(4) > 0 ? *there : Value::text(one(kTexts));
  }

  std::int64_t random(std::int64_t least, std::int64_t most) {
    return std::uniform_int_distribution<std::int64_t>(least, most)(m_random);
  }

  void changeEvent(std::vector<Value> events) {
    Value& event = events[below(events.size())];
    if (event.kind() != Value::Kind::Object) return;
    const std::string field = one(kFields);
    const Value* payload = event.find("payload");
    const Value* kind = event.find("type");
    // Without its taking in a file has one thing wrong with it.
    const bool takesIn = kind != nullptr && kind->kind() == Value::Kind::Text && kind->asText() == JobTakenIn::kType;
    if (takesIn && (field == "type" || field == "stream" || field == "payload") && below(12) > 0) return;
    if (field == "payload" && payload != nullptr && payload->kind() == Value::Kind::Object && below(4) > 0) {
      Value changed = *payload;
      const auto& members = changed.members();
      const std::string key = members.empty() || below(3) == 0 ? one(kKeys) : members[below(members.size())].first;
      changed.set(key, leaf(events, 0));
      event.set("payload", std::move(changed));
    } else if (field == "device_id" || field == "stream") {
      // A bench's stream is its own device's.
      const std::string device = below(10) == 0 ? "here" : below(2) == 0 ? "ours" : "theirs";
      event.set("device_id", Value::text(device));
      if (!takesIn) event.set("stream", Value::text(below(2) == 0 ? "bench/" + device : std::string("job/j")));
    } else {
      event.set(field, valueFor(field, events));
    }
    setEvents(events);
  }

  // A body is changed and hashed again, and whatever named the old hash names the new one.
  void changeTexts() {
    const Value* texts = m_root.find("texts");
    if (texts == nullptr || texts->kind() != Value::Kind::Array || texts->items().empty()) return;
    std::vector<Value> list = texts->items();
    Value& text = list[below(list.size())];
    const Value* body = text.find("body");
    const Value* hash = text.find("hash");
    if (body == nullptr || hash == nullptr || body->kind() != Value::Kind::Text || hash->kind() != Value::Kind::Text) {
      return;
    }
    std::string changed = body->asText();
    const char* const from[] = {"mm", "\"1 min\"", "mirror", "40 min", "size", "paste", "\"job\"", ": 2", "soak", "}"};
    const char* const to[] = {"in", "\"0 min\"", "soak", "1 min", "lay", "{", "", "9999999"};
    if (below(8) == 0) {
      changed = changed.substr(0, below(changed.size() + 1));
    } else {
      const std::string what = one(from);
      const std::size_t at = changed.find(what, below(changed.size() + 1));
      if (at != std::string::npos) changed.replace(at, what.size(), one(to));
    }
    const std::string before = hash->asText();
    const std::string after = sha256(changed);
    text.set("body", Value::text(changed));
    if (below(10) == 0) text.set("kind", Value::text("technique"));
    Value all = Value::array();
    for (const Value& one : list) all.append(one);
    m_root.set("texts", std::move(all));
    if (before.empty() || below(10) == 0) return;
    const auto parsed = core::base::parseJson(core::base::replaceAll(core::base::writeJson(m_root, 0), before, after));
    if (parsed.readable) m_root = parsed.root;
  }

  Value m_root;
  std::mt19937 m_random;
};

}  // namespace

std::string mutatedRecord(const std::string& text, std::uint32_t seed) {
  auto parsed = core::base::parseJson(text);
  if (!parsed.readable || parsed.root.kind() != Value::Kind::Object) return "";
  return Mutator(std::move(parsed.root), seed).run();
}

}  // namespace tests
