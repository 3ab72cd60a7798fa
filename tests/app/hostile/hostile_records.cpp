#include <algorithm>

#include "app/convert/content_hash.h"
#include "core/record/happening.h"
#include "core/record/record_file.h"
#include "tests/app/hostile/hostile_files.h"

namespace hostile {
namespace {

namespace record = core::record;

constexpr std::int64_t kStart = 1'764'000'000'000;

class RecordMaker {
 public:
  explicit RecordMaker(Dice& dice) : m_dice(dice) {}

  record::Event event(const char* what, Value payload, bool bench = false) {
    ++m_count;
    record::Event event;
    event.eventId = "e" + std::to_string(m_count);
    event.deviceId = "another-bench";
    event.deviceSequence = m_count;
    event.hlc = {kStart + m_count, 0};
    event.intentId = "i" + std::to_string(m_count);
    event.stream = bench ? "bench/another-bench" : "job/the-job";
    event.type = what;
    event.occurredUtc = event.recordedUtc = kStart + m_count;
    event.zone = "UTC";
    event.bootId = "boot";
    event.boottimeNanoseconds = m_count;
    event.payload = std::move(payload);
    return event;
  }

  void add(std::vector<record::Event>& events, std::int64_t most) {
    const std::int64_t kind = m_dice.number(0, 4);
    for (std::int64_t i = 0; i < most; ++i) {
      switch (kind) {
        case 0: events.push_back(undo(true)); break;
        case 1: events.push_back(undo(false)); break;
        case 2:
          events.push_back(event(record::NoteAdded::kType, Value::object().set("text", Value::text(note()))));
          break;
        case 3:
          events.push_back(event(record::StepDone::kType, Value::object().set("step", Value::text(step()))));
          break;
        default: events.push_back(event("AnotherEvent", Value::object())); break;
      }
    }
  }

 private:
  // Each takes back the one that comes after it, so that a walk in the order of the record finds one at a time.
  record::Event undo(bool bench) {
    const std::string next = "i" + std::to_string(m_count + 2);
    return event(record::Undone::kType, Value::object().set("intent", Value::text(next)), bench);
  }
  std::string note() { return m_dice.chance(2) ? std::string(100'000, 'n') : "The size was slow to tack."; }
  std::string step() { return m_dice.chance(50) ? "cut-windows/cut@top" : "close-package/close"; }

  Dice& m_dice;
  std::int64_t m_count = 0;
};

}  // namespace

File hostileRecord(std::uint64_t seed, const std::vector<std::string>& techniques) {
  Dice dice(seed);
  record::RecordFile made;
  made.job = "the-job";
  Value chosen = Value::object();
  const auto take = [&](const char* kind, const std::string& name, const std::string& body) {
    const std::string hash = app::convert::contentHash(body);
    made.texts.push_back({hash, kind, name, body});
    return Value::text(hash);
  };
  Value job = goodJob();
  if (dice.chance(40)) job.set("title", Value::text(hostileText(dice)));
  const std::string jobText = dice.chance(60) ? core::base::writeJson(job, 0) : hostileJob(seed + 1).text;
  const Value jobHash = take("job", "a job", jobText);
  for (const std::string& body : techniques) {
    const auto parsed = core::base::parseJson(body);
    chosen.set(parsed.root.find("id")->asText(), take("technique", "a technique", body));
  }
  if (dice.chance(30)) {
    const File technique = hostileTechnique(seed + 2);
    chosen.set(technique.id, take("technique", technique.id, technique.text));
  }
  RecordMaker maker(dice);
  made.events.push_back(maker.event(record::JobTakenIn::kType, Value::object()
                                                                   .set("job", jobHash)
                                                                   .set("title", Value::text(hostileText(dice)))
                                                                   .set("reference", Value::text("26-041"))
                                                                   .set("techniques", std::move(chosen))));
  maker.add(made.events, dice.number(1, 6'000));
  File file;
  file.kind = Kind::Record;
  file.name = "record";
  file.id = made.job;
  file.text = record::writeRecord(made);
  file.text.resize(std::min(file.text.size(), core::base::kMaximumJsonBytes));
  return file;
}

}  // namespace hostile
