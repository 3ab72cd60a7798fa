// Notes, photographs and batches of a job, and the record as people read it.
#include "core/jobs/beside_work.h"

#include <algorithm>
#include <random>

#include "core/jobs/timeline.h"
#include "tests/core/shop/tiny_shop.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core::jobs;
using namespace core::shop;
using namespace core::record;
using namespace tests;
namespace intents = core::intents;

namespace {

const std::string kHash(64, 'a');

intents::KeepPhotograph photographOf(const std::string& step = "") {
  return {kHash, 4'000'000, "jpeg", 4000, 3000, "The left corner", step};
}

Bench demoBench() { return Bench(demoJobText(), shippedTechniques()); }

std::vector<TimelineEntry> timeline(const Bench& bench) {
  const JobAt at = bench.at();
  return timelineOf(bench.state(), at.shop(), bench.events(), Order::OldestFirst);
}

const TimelineEntry* entryOf(const std::vector<TimelineEntry>& entries, const std::string& message) {
  for (const TimelineEntry& entry : entries) {
    if (entry.what.id == message) return &entry;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("a note is changed by a later act, and what it said before stays in the record") {
  Bench bench = demoBench();
  REQUIRE(bench.ask(intents::AddNote{"Paper cockled\r\nnear the top", ""}) == "");
  const std::string note = bench.state().beside.notes.at(0).id;
  CHECK(bench.state().beside.notes[0].text == "Paper cockled\nnear the top");
  CHECK(bench.ask(intents::ChangeNote{note, "Paper cockled\nnear the top"}) == "note.as-it-was");
  REQUIRE(bench.ask(intents::ChangeNote{note, "Lay flat after a night"}) == "");
  CHECK(bench.state().beside.notes[0].text == "Lay flat after a night");
  const auto changed = timeline(bench);
  const TimelineEntry* first = entryOf(changed, "timeline.noted");
  const TimelineEntry* second = entryOf(changed, "timeline.note-changed");
  REQUIRE(first != nullptr);
  REQUIRE(second != nullptr);
  CHECK(*first->what.argument("text") == core::base::Argument(std::string("Paper cockled\nnear the top")));
  CHECK(first->correctedBy == second->eventId);
  CHECK(second->correctedBy.empty());

  REQUIRE(bench.ask(intents::RemoveNote{note}) == "");
  CHECK(bench.state().beside.notes.empty());
  CHECK(bench.ask(intents::ChangeNote{note, "again"}) == "note.no-such-note");
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}) == "");
  CHECK(bench.state().beside.notes.at(0).text == "Lay flat after a night");
  CHECK_FALSE(entryOf(timeline(bench), "timeline.note-removed")->takenBackBy.empty());
  CHECK(timeline(bench).back().what.id == "timeline.taken-back");
}

TEST_CASE("a text that cannot be kept as it was written is refused") {
  Bench bench = demoBench();
  CHECK(bench.ask(intents::AddNote{"", ""}) == "text.empty");
  CHECK(bench.ask(intents::AddNote{" \n\t ", ""}) == "text.empty");
  CHECK(bench.ask(intents::AddNote{"bell \a", ""}) == "text.control-character");
  CHECK(bench.ask(intents::AddNote{std::string("a\0b", 3), ""}) == "text.control-character");
  CHECK(bench.ask(intents::AddNote{"\xE2\x80\xA8 line separator", ""}) == "text.control-character");
  CHECK(bench.ask(intents::AddNote{"\xFF\xFE", ""}) == "text.not-letters");
  CHECK(bench.ask(intents::AddNote{std::string(8001, 'a'), ""}) == "text.too-long");
  CHECK(bench.ask(intents::AddNote{std::string(8000, 'a'), "no/such"}) == "record.no-such-step");
  CHECK(bench.ask(intents::AddNote{std::string(8000, 'a'), ""}) == "");
}

TEST_CASE("a photograph is recorded, captioned and taken out by events, and its file stays named") {
  Bench bench = demoBench();
  REQUIRE(bench.ask(photographOf()) == "");
  CHECK(bench.ask(photographOf()) == "photograph.there-already");
  const std::string id = bench.state().beside.photographs.at(0).id;
  CHECK(bench.state().beside.photographs[0].width == 4000);
  REQUIRE(bench.ask(intents::ChangeCaption{id, "The right corner"}) == "");
  CHECK(bench.state().beside.photographs[0].caption == "The right corner");
  REQUIRE(bench.ask(intents::RemovePhotograph{id}) == "");
  CHECK(bench.state().beside.photographs.empty());
  CHECK(entryOf(timeline(bench), "timeline.photographed-of")->hash == kHash);

  auto bad = photographOf();
  bad.bytes = kLargestPhotograph + 1;
  CHECK(bench.ask(bad) == "photograph.too-large");
  bad = photographOf();
  bad.width = bad.height = 50'000;
  CHECK(bench.ask(bad) == "photograph.too-many-pixels");
  bad = photographOf();
  bad.hash = "../../etc";
  CHECK(bench.ask(bad) == "photograph.malformed");
  bad = photographOf();
  bad.type = "svg";
  CHECK(bench.ask(bad) == "photograph.malformed");
}

TEST_CASE("a finished step is linked to its batches, is corrected, and forgets them when it is done again") {
  Bench bench = demoBench();
  REQUIRE(bench.askShop(intents::EnterBatch{pasteBatch(bench.now().utcMilliseconds - 10LL * 24 * 3'600'000)}) == "");
  REQUIRE(bench.askShop(intents::EnterBatch{pasteBatch(bench.now().utcMilliseconds)}) == "");
  const auto& batches = bench.at().shop().stock.batches;
  const std::string old = batches[0].id, fresh = batches[1].id;
  const std::string step = bench.shown();
  REQUIRE_FALSE(step.empty());
  CHECK(bench.ask(intents::LinkBatches{step, {old}}) == "record.step-not-done");
  REQUIRE(bench.finish(step) == "");
  const std::string doing = bench.lastIntent();
  CHECK(bench.ask(intents::LinkBatches{step, {"nothing"}}) == "stock.no-such-batch");
  REQUIRE(bench.ask(intents::LinkBatches{step, {old}}) == "");
  CHECK(entryOf(timeline(bench), "timeline.done")->batches.at(0).shelf == Shelf::LookBeforeUse);
  REQUIRE(bench.ask(intents::LinkBatches{step, {fresh}}) == "");
  const auto corrected = timeline(bench);
  const TimelineEntry* done = entryOf(corrected, "timeline.done");
  REQUIRE(done->batches.size() == 1);
  CHECK(done->batches[0].id == fresh);
  CHECK(done->batches[0].name == "starch paste");
  CHECK(done->batches[0].mark == 2);
  CHECK(done->batches[0].shelf == Shelf::Within);
  // The first word on it is still seen.
  const TimelineEntry* first = entryOf(corrected, "timeline.batches-linked");
  CHECK(first->batches.at(0).id == old);
  CHECK_FALSE(first->correctedBy.empty());

  REQUIRE(bench.ask(intents::Undo{doing}) == "");
  CHECK(bench.state().beside.batches.empty());
  REQUIRE(bench.finish(step) == "");
  CHECK(bench.state().beside.batches.empty());
}

TEST_CASE("a batch asks for a look when it is older than it keeps") {
  Bench bench = demoBench();
  const std::int64_t made = bench.now().utcMilliseconds;
  const intents::BatchEntry entry = pasteBatch(made);
  REQUIRE(entry.keeps == core::units::Duration::minutes(7 * 24 * 60));
  REQUIRE(bench.askShop(intents::EnterBatch{entry}) == "");
  const Batch& batch = bench.at().shop().stock.batches.at(0);
  CHECK(beforeUse(batch, made + 7LL * 24 * 3'600'000).id.empty());
  CHECK(core::base::dump(beforeUse(batch, made + 8LL * 24 * 3'600'000)) ==
        "batch.look-before-use name=starch paste days=7 source=" + entry.keepsSource);
}

TEST_CASE("the record says in what room a thing was done, and who knows it") {
  Bench bench = demoBench();
  const std::string first = bench.finishShown();
  bench.advance(1);
  REQUIRE(bench.askShop(intents::EnterRoom{
              {core::units::Temperature::celsius(21.5), core::units::Humidity::percent(47)}, true}) == "");
  bench.advance(5);
  const std::string second = bench.finishShown();
  REQUIRE_FALSE(second.empty());
  std::vector<TimelineEntry> done;
  for (const TimelineEntry& entry : timeline(bench)) {
    if (entry.kind == TimelineKind::Done) done.push_back(entry);
  }
  REQUIRE(done.size() == 2);
  CHECK(done[0].step == first);
  CHECK(done[0].room->from == RoomThen::From::Planned);
  CHECK(done[0].room->room.temperature.inCelsius() == 19);
  CHECK(done[1].room->from == RoomThen::From::Sensor);
  CHECK(done[1].room->room.humidity.inPercent() == 47);
  CHECK(done[1].room->readUtc < done[1].occurredUtc);
  CHECK(done[1].deviceId == "device");
}

TEST_CASE("the record holds every event of the job once, in order, in either direction") {
  Bench bench = demoBench();
  for (int i = 0; i < 6; ++i) bench.finishShown();
  REQUIRE(bench.ask(intents::AddNote{"half way", bench.shown()}) == "");
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}) == "");
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}) == "");
  auto entries = timeline(bench);
  CHECK(entries.back().what.id == "timeline.done-again");
  CHECK(entryOf(entries, "timeline.noted")->takenBackBy.empty());
  CHECK(entries.size() == bench.events().size());
  std::vector<Event> doubled = bench.events();
  doubled.insert(doubled.end(), bench.events().begin(), bench.events().end());
  std::mt19937 random(3);
  std::shuffle(doubled.begin(), doubled.end(), random);
  const JobAt at = bench.at();
  const auto backwards = timelineOf(bench.state(), at.shop(), doubled, Order::NewestFirst);
  REQUIRE(backwards.size() == entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    CHECK(backwards[entries.size() - 1 - i].eventId == entries[i].eventId);
  }
}

TEST_CASE("notes and photographs are the same whatever the order their events come in, and once or twice") {
  Bench bench = demoBench();
  REQUIRE(bench.ask(intents::AddNote{"one", ""}) == "");
  REQUIRE(bench.ask(intents::AddNote{"two", ""}) == "");
  REQUIRE(bench.ask(intents::ChangeNote{bench.state().beside.notes[0].id, "one, better"}) == "");
  REQUIRE(bench.ask(photographOf()) == "");
  REQUIRE(bench.ask(intents::ChangeCaption{bench.state().beside.photographs[0].id, ""}) == "");
  REQUIRE(bench.ask(intents::RemoveNote{bench.state().beside.notes[1].id}) == "");
  const std::string expected = dump(bench.state());
  CHECK(expected.find("one, better") != std::string::npos);
  std::mt19937 random(11);
  for (int round = 0; round < 10; ++round) {
    std::vector<Event> events = bench.events();
    events.insert(events.end(), bench.events().begin(), bench.events().end());
    std::shuffle(events.begin(), events.end(), random);
    CHECK(dump(fold(bench.plan(), events)) == expected);
  }
}
