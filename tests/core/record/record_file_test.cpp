#include "core/record/record_file.h"

#include "core/record/counting.h"
#include "core/record/happening.h"

#include "core/base/text.h"
#include "tests/support/catch.h"
#include "tests/support/events.h"

using namespace core;
using base::replaceAll;

namespace {

record::RecordFile sample() {
  record::RecordFile file;
  file.job = "one";
  file.texts = {{std::string(64, 'a'), "job", "title", "{\n}"}, {std::string(64, 'b'), "technique", "", ""}};
  record::Event taken = tests::event("tablet", 1, 1000);
  taken.type = record::JobTakenIn::kType;
  record::Event strange = tests::event("phone", 1, 1500);
  strange.type = "SungTo";
  strange.version = 7;
  file.events = {taken, strange, tests::event("tablet", 2, 2000, "bench/tablet")};
  return file;
}

std::string placesOf(const record::ReadRecord& read) {
  std::string places;
  for (const auto& problem : read.problems.sorted()) places += problem.pointer + ' ' + problem.message.id + '\n';
  return places;
}

}  // namespace

TEST_CASE("a record file is read as it was written, and written again it is the same bytes") {
  const std::string text = record::writeRecord(sample());
  const auto read = record::readRecord(text);
  INFO(placesOf(read));
  REQUIRE(read.record.has_value());
  CHECK(record::writeRecord(*read.record) == text);
  CHECK(read.record->events[1].type == "SungTo");
  CHECK(read.record->events[1].version == 7);
}

TEST_CASE("what is wrong with a record file is told at its place, and nothing of it is given") {
  const std::string text = record::writeRecord(sample());
  const auto refused = [&](const std::string& from, const std::string& to) {
    const std::string wrong = replaceAll(text, from, to);
    REQUIRE(wrong != text);
    const auto read = record::readRecord(wrong);
    CHECK_FALSE(read.record.has_value());
    return placesOf(read);
  };
  CHECK(refused("record/1", "record/2") == "/format import.no-record\n");
  CHECK(refused("\"job\": \"one\"", "\"job\": \"o e\"").find("/job import.no-id\n") == 0);
  CHECK(refused(std::string(64, 'a'), std::string(64, 'A')) == "/texts/0/hash import.no-hash\n");
  CHECK(refused("\"kind\": \"technique\"", "\"kind\": \"song\"") == "/texts/1/kind read.unknown-word\n");
  CHECK(refused("0000000000001500-000000", "1500-0") == "/events/1/hlc import.no-clock\n");
  CHECK(refused("0000000000001500-000000", "9999999999999999-000000") == "/events/1/hlc import.no-clock\n");
  CHECK(refused("bench/tablet", "design/x") == "/events/2/stream import.other-stream\n");
  CHECK(refused("bench/tablet", "bench/phone") == "/events/2/stream import.other-bench\n");
  CHECK(refused("\"device_seq\": 2", "\"device_seq\": 1000000000001") == "/events/2/device_seq read.out-of-range\n");
  CHECK(refused("\"device_seq\": 2", "\"device_seq\": 9223372036854775806") ==
        "/events/2/device_seq read.out-of-range\n");
  CHECK(refused("9007199254740993", "9223372036854775807").find("/events/0/boottime_ns read.out-of-range\n") == 0);
  CHECK(refused("\"occurred\": 1500", "\"occurred\": 9223372036854775807") == "/events/1/occurred read.out-of-range\n");
  CHECK(refused("0000000000001500-000000", "0000000000001500-1000000") == "/events/1/hlc import.no-clock\n");
  CHECK(refused("Europe/London", std::string(101, 'z')).find("/events/0/zone import.too-long\n") == 0);
  CHECK(refused("cut-windows/cut", std::string(9000, 'z')).find("/events/0/payload/step import.too-long\n") == 0);
  CHECK(refused("bench/tablet", "job/two") == "/events/2/stream import.other-stream\n");
  CHECK(refused("JobTakenIn", "JobTakenAway") == "/events import.not-taken-in\n");
  CHECK(refused("SungTo", "JobTakenIn") == "/events/1 import.taken-in-twice\n");
  CHECK(refused("phone-event-1", "tablet-event-1") == "/events/1 import.event-twice\n");
  CHECK(refused("\"phone\"", "\"tablet\"") == "/events/1 import.count-twice\n");
  CHECK(refused("\"version\": 7", "\"version\": 0") == "/events/1/version read.out-of-range\n");
  CHECK(refused("\"version\": 7", "\"version\": 7.5") == "/events/1/version read.expected-integer\n");
  CHECK(refused("\"version\": 7,", "").find("/events/1 read.missing-key\n") == 0);
  CHECK(refused("\"version\": 7,", "\"version\": 7, \"more\": 1,") == "/events/1/more read.unknown-key\n");
  CHECK(refused("\"synced\": false", "\"synced\": 0").find("read.expected-boolean") != std::string::npos);
  CHECK_FALSE(record::readRecord("").record.has_value());
  CHECK_FALSE(record::readRecord("[]").record.has_value());
  CHECK_FALSE(record::readRecord(text + "x").record.has_value());
  for (std::size_t length = 0; length + 2 < text.size(); length += 61) {
    CHECK_FALSE(record::readRecord(text.substr(0, length)).record.has_value());
  }
  std::string deep = text;
  deep.insert(deep.find("\"payload\": ") + 11, std::string(100'000, '['));
  CHECK(placesOf(record::readRecord(deep)).find("json.too-deep") != std::string::npos);
}

TEST_CASE("a clock nobody can believe is told at its place, and the event is taken with its device's count",
          "[record]") {
  const std::string text = record::writeRecord(sample());
  for (const char* wrong : {"0004102444800001-000000", "0000000000000000-000000"}) {
    const auto read = record::readRecord(replaceAll(text, "0000000000001500-000000", wrong));
    REQUIRE(read.record.has_value());
    const std::string places = placesOf(read);
    CHECK(places.find("/events/") == 0);
    CHECK(places.find("/hlc import.clock-not-believed\n") != std::string::npos);
  }
}

TEST_CASE("of a bench's events a job takes what its steps share and what takes that back") {
  std::vector<record::Event> bench;
  for (int i = 1; i <= 6; ++i) bench.push_back(tests::event("t", i, i, "bench/t"));
  const auto step = [&](std::size_t i, const char* id) {
    bench[i].payload = base::Value::object().set("step", base::Value::text(id));
  };
  const auto undoes = [&](std::size_t i, std::size_t which) {
    bench[i].type = record::Undone::kType;
    bench[i].payload = base::Value::object().set("intent", base::Value::text(bench[which].intentId));
  };
  step(0, "paste");
  step(1, "size");
  bench[2].type = record::RoomEntered::kType;
  undoes(3, 0);
  undoes(4, 1);
  undoes(5, 3);
  std::string ids;
  auto found = record::benchEventsOf(bench, {tests::event("t", 9, 9)}, {"paste"});
  record::arrange(found);
  for (const auto& event : found) ids += std::to_string(event.deviceSequence);
  CHECK(ids == "146");
}
