// A record in which one job after another has come to harm, each in a way of its own, beside two that are sound and at
// work. What is damaged is told by its name, and nothing else suffers from it.
#include <QTemporaryDir>
#include <algorithm>
#include <limits>

#include "app/convert/content_hash.h"
#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "core/base/text.h"
#include "tests/app/stores/database_support.h"
#include "tests/app/workbench/bench.h"

using app::stores::SqliteEventStore;
using app::workbench::Workbench;
using core::base::replaceAll;
using core::jobs::BenchPlace;
using namespace tests;

namespace {

struct Damage {
  const char* name;
  const char* statement;  // %1 its stream, %2 its job text's hash, %3 its own technique's
  // What opening it says; "" where it opens and can only be read.
  const char* trouble;
};

constexpr Damage kDamages[] = {
    {"text gone", "DELETE FROM texts WHERE hash = '%2'", "kept.text-missing"},
    {"text altered", "UPDATE texts SET body = CAST(body || ' ' AS BLOB) WHERE hash = '%2'", "kept.text-damaged"},
    {"text no JSON", "UPDATE texts SET body = x'7b00ff' WHERE hash = '%2'", "kept.text-damaged"},
    {"text of 4 MB", "UPDATE texts SET body = zeroblob(4194304) WHERE hash = '%2'", "kept.text-damaged"},
    {"technique gone", "DELETE FROM texts WHERE hash = '%3'", "kept.text-missing"},
    {"technique altered",
     "UPDATE texts SET body = CAST(replace(CAST(body AS TEXT), 'a', 'b') AS BLOB) WHERE hash = '%3'",
     "kept.text-damaged"},
    {"payload garbage", "UPDATE events SET payload = '{\"step\": ' WHERE stream = '%1' AND type <> 'JobTakenIn'",
     "store.damaged"},
    {"payload of another kind", "UPDATE events SET payload = '[1, null]' WHERE stream = '%1' AND type <> 'JobTakenIn'",
     ""},
    {"unknown event",
     "UPDATE events SET type = 'GlazedTwice', version = 3 WHERE stream = '%1' AND type <> 'JobTakenIn'", ""},
    {"taking in spoilt", "UPDATE events SET payload = '{\"job\": 5}' WHERE stream = '%1' AND type = 'JobTakenIn'",
     "kept.taking-in-unreadable"},
    {"taking in gone", "DELETE FROM events WHERE stream = '%1' AND type = 'JobTakenIn'", "kept.taking-in-unreadable"},
    {"clock broken", "UPDATE events SET hlc = 'yesterday' WHERE stream = '%1' AND type <> 'JobTakenIn'",
     "store.damaged"},
};

// A job's file under a name of its own.
std::string fileOf(const std::string& name) {
  std::string text = replaceAll(demoJob(), "Pilot's chart of the outer bar", name);
  text = replaceAll(text, "26-041", "R " + name);
  REQUIRE(text.find("R " + name) != std::string::npos);
  return text;
}

// The techniques with one byte more in each, so that a job's texts are shared with no other.
app::workbench::Library libraryOf(std::size_t number) {
  app::workbench::Library library = tradeLibrary().library;
  for (auto& [id, text] : library.texts) text += std::string(number + 1, '\n');
  return library;
}

class Shop {
 public:
  Shop() {
    for (std::size_t i = 0; i < std::size(kDamages); ++i) {
      ids.push_back(takeIn(fileOf(kDamages[i].name), libraryOf(i)));
      // Something done in it, so that it has more than its taking in.
      goOn(ids.back());
    }
    for (const char* name : {"sound one", "sound two"}) {
      sound.push_back(takeIn(fileOf(name), tradeLibrary().library));
      for (int act = 0; act < 200 && line(sound.back()).runs.empty(); ++act) {
        clock.advance(30'000);
        goOn(sound.back());
        REQUIRE(bench->heartbeat().id.empty());
      }
      REQUIRE_FALSE(line(sound.back()).runs.empty());
    }
    alerts = soundAlerts();
    REQUIRE_FALSE(alerts.empty());
  }

  void open() {
    bench.reset();
    record = {};
    auto opened = app::stores::openRecord(folder.path());
    REQUIRE(opened.ok());
    record = std::move(opened).value();
    load(tradeLibrary().library);
  }
  void damage(std::size_t i) {
    const Damage& damage = kDamages[i];
    const std::string technique = libraryOf(i).texts.at("cut-windows");
    OtherConnection other(app::stores::recordFile(folder.path()));
    other.run(QString::fromLatin1(damage.statement)
                  .replace("%1", QString::fromStdString("job/" + ids[i]))
                  .replace("%2", QString::fromStdString(app::convert::contentHash(fileOf(damage.name))))
                  .replace("%3", QString::fromStdString(app::convert::contentHash(technique))));
    REQUIRE(other.ask("SELECT changes() > 0") == "1\n");
  }
  const app::workbench::JobEntry& line(const std::string& id) const {
    const auto& all = bench->jobs();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& entry) { return entry.id == id; });
    REQUIRE(found != all.end());
    return *found;
  }
  bool isSound(const std::string& id) const { return std::find(sound.begin(), sound.end(), id) != sound.end(); }
  // A line each: whose, for what and when.
  std::string soundAlerts() const {
    std::string lines;
    for (const auto& alert : bench->schedule()->alerts) {
      if (!isSound(alert.job)) continue;
      lines += alert.job + ' ' + alert.wait + ' ' + std::to_string(static_cast<int>(alert.alert)) + ' ' +
               std::to_string(alert.dueBoottimeNanoseconds) + ' ' + core::base::dump(alert.say) + '\n';
    }
    return lines;
  }
  std::int64_t firstDue() const {
    std::int64_t due = std::numeric_limits<std::int64_t>::max();
    for (const auto& alert : bench->schedule()->alerts) {
      if (isSound(alert.job)) due = std::min(due, alert.dueBoottimeNanoseconds);
    }
    return due;
  }
  void goOn(const std::string& id) {
    const auto place = core::jobs::benchPlace(bench->at(id));
    core::base::Message refused;
    if (place.kind == BenchPlace::Kind::Step) {
      const auto& step = bench->job(id)->plan->workflow.steps[*place.step];
      core::intents::FinishStep intent;
      intent.step = step.id;
      intent.checked = static_cast<std::int64_t>(step.checks.size());
      refused = bench->submit(core::intents::OfJob{id, intent});
    } else if (place.kind == BenchPlace::Kind::Waiting) {
      const bool window = bench->job(id)->waits.at(place.wait).wait->closes.has_value();
      refused = bench->submit(core::intents::OfJob{
          id, core::intents::LookAt{place.wait, window ? core::intents::Verdict::Tacky : core::intents::Verdict::Dry}});
    } else {
      REQUIRE(place.kind == BenchPlace::Kind::Missed);
      refused = bench->submit(core::intents::OfJob{id, core::intents::MendMissed{place.wait}});
    }
    INFO(core::base::dump(refused));
    REQUIRE(refused.id.empty());
  }

  QTemporaryDir folder;
  FakeClock clock;
  app::stores::OpenRecord record;
  std::unique_ptr<Workbench> bench;
  std::vector<std::string> ids;    // in the order of kDamages
  std::vector<std::string> sound;  // with waits running
  std::string alerts;              // of the sound ones

 private:
  void load(app::workbench::Library library) {
    bench = std::make_unique<Workbench>(*record.store, clock, std::move(library), record.deviceId);
    const auto trouble = bench->load();
    INFO(core::base::dump(trouble));
    REQUIRE(trouble.id.empty());
  }
  std::string takeIn(const std::string& text, app::workbench::Library library) {
    if (!record.store) open();
    load(std::move(library));
    const auto taken = bench->takeIn(text);
    for (const auto& problem : taken.problems) UNSCOPED_INFO(core::base::dump(problem));
    REQUIRE_FALSE(taken.jobId.empty());
    return taken.jobId;
  }
};

}  // namespace

TEST_CASE("one damaged job never takes another with it, nor the alerts") {
  Shop shop;
  const bool summaries = GENERATE(true, false);
  INFO("with summaries: " << summaries);
  shop.bench.reset();
  shop.record = {};
  for (std::size_t i = 0; i < std::size(kDamages); ++i) shop.damage(i);
  if (!summaries) {
    OtherConnection other(app::stores::recordFile(shop.folder.path()));
    other.run("DELETE FROM summaries");
    other.run("DELETE FROM summary_details");
  }
  shop.open();
  CHECK(shop.soundAlerts() == shop.alerts);

  for (std::size_t i = 0; i < std::size(kDamages); ++i) {
    const Damage& damage = kDamages[i];
    INFO(damage.name);
    const auto* state = shop.bench->job(shop.ids[i]);
    const auto& line = shop.line(shop.ids[i]);
    CHECK(line.trouble.id == damage.trouble);
    CHECK((state == nullptr) == !line.trouble.id.empty());
    const bool nameless =
        !summaries && line.trouble.id != "kept.text-missing" && line.trouble.id != "kept.text-damaged";
    if (state == nullptr && !nameless) CHECK(line.title == damage.name);
    if (state == nullptr) {
      CHECK(shop.bench->submit(core::intents::OfJob{shop.ids[i], core::intents::AddNote{"a note", ""}}).id ==
            damage.trouble);
      CHECK_FALSE(shop.bench->handOn(shop.ids[i]).ok());
      CHECK(shop.bench->timeline(shop.ids[i], core::jobs::Order::NewestFirst).empty());
      CHECK(shop.bench->renew(shop.ids[i]).id == damage.trouble);
    } else {
      CHECK(shop.bench->handOn(shop.ids[i]).ok());
    }
    static_cast<void>(shop.bench->exportRecord(shop.ids[i]));
    // What is made once more is made of the text as it was, or not at all.
    const std::string text = shop.bench->jobText(shop.ids[i]);
    CHECK((text.empty() || text == fileOf(damage.name)));
    CHECK((text.empty() ? shop.bench->duplicate(shop.ids[i]).jobId.empty() : true));
  }
  static_cast<void>(shop.bench->photographsNamed());

  // The sound ones act, and call when they are due.
  for (const std::string& id : shop.sound) {
    REQUIRE(shop.bench->job(id) != nullptr);
    CHECK_FALSE(shop.line(id).runs.empty());
    REQUIRE(shop.bench->submit(core::intents::OfJob{id, core::intents::AddNote{"a note", ""}}).id.empty());
  }
  CHECK(shop.soundAlerts() == shop.alerts);
  const std::int64_t due = shop.firstDue();
  shop.clock.advance((due - shop.clock.now().boottimeNanoseconds) / 1'000'000 + 1);
  REQUIRE(shop.bench->heartbeat().id.empty());
  CHECK(shop.firstDue() <= shop.clock.now().boottimeNanoseconds);
  for (const std::string& id : shop.sound) {
    for (int act = 0; act < 5; ++act) shop.goOn(id);
  }

  // And they are handed on, and taken up beside the damaged ones.
  for (const std::string& id : shop.sound) {
    const auto file = shop.bench->handOn(id);
    REQUIRE(file.ok());
    CHECK(shop.bench->importJob(file.value()).jobId == id);
    MemoryEventStore theirs;
    StoredBench other(theirs, "another");
    REQUIRE(other.work.importJob(file.value()).jobId == id);
    CHECK(other.work.exportJob(id) == file.value());
  }
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  const std::string handed = other.takeIn(fileOf("from another bench"));
  CHECK(shop.bench->importJob(other.work.exportJob(handed)).jobId == handed);
  CHECK(shop.bench->job(handed) != nullptr);

  // All of that holds for whoever opens it next.
  shop.open();
  for (const std::string& id : shop.sound) CHECK(shop.bench->job(id) != nullptr);
  CHECK(shop.bench->job(handed) != nullptr);
}

TEST_CASE("a good copy of a job puts right what was damaged of its texts, and it opens again") {
  Shop shop;
  std::map<std::string, std::string> files;
  for (const std::string& id : shop.ids) files[id] = shop.bench->exportJob(id);
  shop.bench.reset();
  shop.record = {};
  constexpr std::size_t kOfTexts = 6;
  for (std::size_t i = 0; i < kOfTexts; ++i) shop.damage(i);
  shop.open();
  for (std::size_t i = 0; i < kOfTexts; ++i) {
    INFO(kDamages[i].name);
    const std::string& id = shop.ids[i];
    REQUIRE(shop.bench->job(id) == nullptr);
    const auto imported = shop.bench->importJob(files.at(id));
    for (const auto& problem : imported.problems) UNSCOPED_INFO(core::base::dump(problem));
    CHECK(imported.jobId == id);
    CHECK(imported.added == 0);
    CHECK(imported.mended == 1);
    CHECK(shop.line(id).trouble.id.empty());
    REQUIRE(shop.bench->job(id) != nullptr);
    CHECK(shop.bench->exportJob(id) == files.at(id));
    shop.goOn(id);
    CHECK(shop.bench->importJob(files.at(id)).mended == 0);
  }
}

TEST_CASE("the job's own file, taken in again, puts its damaged text right too") {
  Shop shop;
  shop.bench.reset();
  shop.record = {};
  for (const std::size_t i : {0U, 1U}) shop.damage(i);
  shop.open();
  for (const std::size_t i : {0U, 1U}) {
    INFO(kDamages[i].name);
    REQUIRE(shop.bench->job(shop.ids[i]) == nullptr);
    const auto taken = shop.bench->takeIn(fileOf(kDamages[i].name));
    CHECK(taken.already);
    CHECK(taken.jobId == shop.ids[i]);
    CHECK(shop.bench->job(shop.ids[i]) != nullptr);
  }
}
