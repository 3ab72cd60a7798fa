#include "app/workbench/workbench.h"

#include <QTimer>
#include <algorithm>
#include <cstdlib>
#include <optional>
#include <set>
#include <utility>
#include <variant>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "app/words/words.h"
#include "app/workbench/kept_jobs.h"
#include "app/workbench/record_exchange.h"
#include "app/workbench/stamps.h"
#include "app/workbench/taking_in.h"
#include "core/base/check.h"
#include "core/jobs/renewal.h"
#include "core/jobs/standing.h"

namespace app::workbench {
namespace {

using core::alerts::AlertSchedule;
using core::base::Message;
using core::jobs::JobAt;
using core::jobs::JobState;
using core::record::EventDraft;
using core::waits::ClockReading;

// Between two heartbeats the two clocks drift by far less; time servers slew by at most 0.5 ms a second.
constexpr std::int64_t kJumpMilliseconds = 2000;

bool jumped(const ClockReading& before, const ClockReading& now) {
  if (before.bootId != now.bootId) return false;
  const std::int64_t byWall = now.utcMilliseconds - before.utcMilliseconds;
  const std::int64_t byBoot = (now.boottimeNanoseconds - before.boottimeNanoseconds) / 1'000'000;
  return std::llabs(byWall - byBoot) > kJumpMilliseconds;
}

// The core knows no files: a material may look only like a picture that is kept here.
Message unknownPicture(const core::intents::ShopIntent& intent, const photographs::Photographs* photographs) {
  const auto* given = std::get_if<core::intents::GiveAppearance>(&intent);
  if (given == nullptr || !given->appearance.picture) return {};
  if (photographs == nullptr) return Message("photograph.no-folder");
  const bool there = !photographs->file(given->appearance.picture->hash).isEmpty();
  return there ? Message() : Message("photograph.gone");
}

// An act of the shop is seen by every job, so its taking back has to be seen by every job as well.
void takeBackOnBenchToo(std::vector<EventDraft>& drafts, const KeptJobs& jobs) {
  std::vector<EventDraft> copies;
  for (const EventDraft& draft : drafts) {
    if (draft.type != core::record::Undone::kType || draft.stream == EventDraft::Stream::Bench) continue;
    if (!jobs.touchedBench(core::record::textOf(draft.payload, "intent"))) continue;
    copies.push_back(draft);
    copies.back().stream = EventDraft::Stream::Bench;
  }
  drafts.insert(drafts.end(), copies.begin(), copies.end());
}

}  // namespace

struct Workbench::Private {
  Private(core::record::EventStore& eventStore, const clocks::Clock& machineClock, Library techniques,
          std::string deviceId)
      : store(eventStore),
        clock(machineClock),
        library(std::move(techniques)),
        stamps(std::move(deviceId)),
        jobs(eventStore, &library),
        designs(eventStore, [this](const std::string& id, const std::vector<EventDraft>& drafts) {
          return keepOfDesign(id, drafts);
        }) {}

  core::record::EventStore& store;
  const clocks::Clock& clock;
  Library library;
  Stamps stamps;
  KeptJobs jobs;
  KeptDesigns designs;
  core::shop::Shop shop;
  core::shop::Settings settings;
  std::optional<ClockReading> lastHeartbeat;
  std::string lastZone;
  std::map<std::string, AlertSchedule> alertsOfJob;  // of those that are folded, by id
  std::shared_ptr<const AlertSchedule> schedule = std::make_shared<AlertSchedule>();
  std::string lastIntentId;
  Message unread;
  const photographs::Photographs* photographs = nullptr;

  // Stamps and keeps; counts go on only where that worked.
  core::base::Result<Stamps::Act, Message> keep(const std::string& jobId, const std::vector<EventDraft>& drafts,
                                                const std::vector<core::record::StoredText>& texts,
                                                const ClockReading& now) {
    Stamps::Act act = stamps.stamp(jobId, drafts, now, clock.zone());
    const auto kept = store.append(act.events, texts);
    if (!kept) return kept.error();
    stamps.goOnFrom(act.position);
    lastIntentId = act.intentId;
    return act;
  }

  core::base::Result<std::vector<core::record::Event>, Message> keepOfDesign(const std::string& id,
                                                                             const std::vector<EventDraft>& drafts) {
    auto act = keep(id, drafts, {}, clock.now());
    if (!act) return act.error();
    return std::move(act).value().events;
  }

  Message readClockLog() {
    auto log = store.clockLog(stamps.deviceId());
    if (!log) return log.error();
    shop.clockLog.heartbeats = std::move(log).value().heartbeats;
    return {};
  }

  // The settings go on beside the shop, from the same events.
  void readSettings() { settings = core::shop::foldSettings(jobs.benchEvents(), stamps.benchStream()); }

  // What was learned is a projection over all looks: rebuilt whenever one was added or taken back, and on loading.
  // Returns whether anything was learned.
  bool learnAnew() {
    if (!jobs.taught()) return false;
    shop.learning = core::jobs::learn(jobs.lessons(), shop.clockLog, clock.now());
    return true;
  }

  // An act of the shop cannot be taken back while a later act of any job rests on it.
  Message restingElsewhere(const std::string& jobId, const core::intents::Intent& intent, const ClockReading& now) {
    const auto* undo = std::get_if<core::intents::Undo>(&intent);
    if (undo == nullptr || !jobs.touchedBench(undo->intentId)) return {};
    jobs.foldWhatMayRestOn(undo->intentId, *jobs.state(jobId, shop), shop);
    for (const JobState* state : jobs.folded()) {
      if (state->plan->id == jobId) continue;
      const auto there = core::decisions::decide(JobAt(*state, shop, now), intent);
      if (!there && there.error().id == "record.others-rest-on-it") return there.error();
    }
    return {};
  }

  // A sign of life in the clock log.
  Message beat() {
    const ClockReading now = clock.now();
    const std::string nowZone = clock.zone();
    std::string kind = "heartbeat";
    if (lastHeartbeat && jumped(*lastHeartbeat, now)) {
      kind = "jump";
    } else if (!lastZone.empty() && lastZone != nowZone) {
      kind = "zone";
    }
    const auto kept = store.logClock(stamps.deviceId(), kind, now);
    if (!kept) return kept.error();
    lastHeartbeat = now;
    lastZone = nowZone;
    return readClockLog();
  }

  struct Taken {
    std::vector<std::string> changed;  // the jobs whose state is another now; see KeptJobs::add
    bool learned = false;
  };
  // Events newly kept become state.
  Taken take(const std::string& jobId, const std::vector<core::record::Event>& events) {
    Taken taken;
    taken.changed = jobs.add(jobId, events, shop);
    taken.learned = learnAnew();
    return taken;
  }

  std::string recordOf(const std::string& jobId, KeptJobs::Of of) {
    if (jobs.entry(jobId) == nullptr) return "";
    auto events = jobs.eventsOf(jobId, of);
    if (!events) return "";
    std::vector<core::record::StoredText> texts = textsOf(store, events.value());
    return core::record::writeRecord({jobId, std::move(texts), std::move(events).value()});
  }

  // Does what loading put off, before anything but the lines is returned; the schedule is complete from then on.
  void settle() {
    if (!jobs.settle(shop)) return;
    learnAnew();
    reschedule();
  }

  // Updates lines and alerts to this instant. Returns whether the schedule changed.
  bool reschedule() {
    const ClockReading now = clock.now();
    alertsOfJob.clear();
    for (const JobState* state : jobs.folded()) reckon(state->plan->id, now);
    return publish();
  }

  // Does the same where only these jobs changed: the alerts of the others fall due as scheduled.
  bool reschedule(const Taken& taken) {
    if (taken.learned) return reschedule();
    const ClockReading now = clock.now();
    for (const std::string& id : taken.changed) reckon(id, now);
    return publish();
  }

  void reckon(const std::string& id, const ClockReading& now) {
    alertsOfJob.erase(id);
    const JobState* state = jobs.foldedState(id);
    if (state == nullptr) return;
    jobs.look(id, shop, now);
    alertsOfJob[id] = core::alerts::alertsOf(JobAt(*state, shop, now));
  }

  bool publish() {
    std::vector<AlertSchedule> alerts;
    for (const auto& [id, ofJob] : alertsOfJob) alerts.push_back(ofJob);
    auto next = std::make_shared<AlertSchedule>(core::alerts::merge(alerts));
    if (*schedule == *next) return false;
    schedule = std::move(next);
    return true;
  }
};

Workbench::Workbench(core::record::EventStore& store, const clocks::Clock& clock, Library library, std::string deviceId,
                     QObject* parent)
    : QObject(parent), d(new Private(store, clock, std::move(library), std::move(deviceId))) {}

Workbench::~Workbench() {
  // Summaries of jobs that were never folded are still valid.
  d->jobs.keepSummaries();
}

const Message& Workbench::unread() const { return d->unread; }

Message Workbench::load() {
  d->unread = loadAll();
  return d->unread;
}

Message Workbench::loadAll() {
  const auto position = d->store.position(d->stamps.deviceId());
  if (!position) return position.error();
  d->stamps.goOnFrom(position.value());
  if (Message trouble = d->readClockLog(); !trouble.id.empty()) return trouble;
  d->shop.clockLog.opened = d->clock.now();
  if (Message trouble = d->jobs.load(d->shop); !trouble.id.empty()) return trouble;
  d->readSettings();
  if (Message trouble = d->designs.load(); !trouble.id.empty()) return trouble;
  const auto newest = d->store.newestIntentOf(d->stamps.deviceId());
  if (!newest) return newest.error();
  d->lastIntentId = newest.value();
  if (Message trouble = d->beat(); !trouble.id.empty()) return trouble;
  emit jobsChanged();
  // Where no call needs it earlier, it is done when the event loop is next idle.
  QTimer::singleShot(0, this, [this] {
    const auto before = d->schedule;
    d->settle();
    if (d->schedule != before) emit scheduleChanged();
  });
  return {};
}

Workbench::TakenIn Workbench::takeIn(const std::string& text) {
  d->settle();
  TakenIn result;
  const std::string hash = convert::contentHash(text);
  for (const JobEntry& entry : jobs()) {
    if (entry.jobHash != hash) continue;
    result.jobId = entry.id;
    result.already = true;
    if (job(entry.id) == nullptr) mend(readyToTakeIn(text, hash, d->library).texts);
    return result;
  }
  ReadyToTakeIn ready = readyToTakeIn(text, hash, d->library);
  result.problems = std::move(ready.problems);
  result.refusals = std::move(ready.refusals);
  if (!ready.intent) return result;

  const ClockReading now = d->clock.now();
  const std::string jobId = convert::newUuid(now.utcMilliseconds);
  const auto act = d->keep(jobId, {core::decisions::takeInDraft(*ready.intent)}, ready.texts, now);
  if (!act) {
    result.refusals.push_back(act.error());
    return result;
  }
  const std::string& reference = ready.intent->reference;
  result.sameReference = !reference.empty() && std::any_of(jobs().begin(), jobs().end(), [&](const JobEntry& entry) {
    return entry.reference == reference;
  });
  result.jobId = jobId;
  const bool rescheduled = d->reschedule(d->take(jobId, act.value().events));
  emit jobsChanged();
  if (rescheduled) emit scheduleChanged();
  if (onCommitted) onCommitted(act.value().intentId);
  return result;
}

// Texts that are damaged in the record and whole here are put right. The job they come from may stay as it is: the file
// is the same, and its other problems are reported as before.
void Workbench::mend(std::vector<core::record::StoredText> texts) {
  std::erase_if(texts, [this](const core::record::StoredText& text) {
    const auto there = storedText(d->store, text.hash, text.name);
    // A technique of this name that no job uses does not belong in the record.
    return there.ok() || (there.error().id == "kept.text-missing" && text.kind != "job");
  });
  if (texts.empty() || !d->store.append({}, texts)) return;
  tellChanged(d->jobs.retry(d->shop));
}

void Workbench::tellChanged(const std::vector<std::string>& jobs) {
  const bool rescheduled = d->reschedule();
  emit jobsChanged();
  for (const std::string& id : jobs) emit jobChanged(convert::toQt(id));
  if (rescheduled) emit scheduleChanged();
}

const KeptDesigns& Workbench::designs() const { return d->designs; }

std::string Workbench::jobText(const std::string& jobId) const {
  if (d->jobs.entry(jobId) == nullptr) return "";
  const JobEntry& entry = *d->jobs.entry(jobId);
  auto text = storedText(d->store, entry.jobHash, entry.title);
  return text ? std::move(text).value() : std::string();
}

const core::shop::Settings& Workbench::settings() const { return d->settings; }

const Library& Workbench::library() const { return d->library; }

std::string Workbench::newId() const { return convert::newUuid(d->clock.now().utcMilliseconds); }

Workbench::TakenIn Workbench::takeDesign(const std::string& id) {
  const core::drafts::Drafted* drafted = d->designs.find(id);
  if (drafted == nullptr) {
    TakenIn none;
    none.refusals.emplace_back("design.no-such-design");
    return none;
  }
  TakenIn taken = takeIn(drafted->text());
  if (taken.jobId.empty() || taken.already) return taken;
  if (Message refused = ask({id, core::intents::TakeDesign{taken.jobId}}); !refused.id.empty())
    taken.refusals.push_back(refused);
  return taken;
}

std::optional<Renewal> Workbench::renewalOf(const std::string& jobId) const {
  const JobState* state = job(jobId);
  if (state == nullptr || core::jobs::settled(*state)) return std::nullopt;
  PlanReader plans(d->store, &d->library);
  return app::workbench::renewalOf(*state, jobText(jobId), d->library, plans);
}

Message Workbench::renew(const std::string& jobId) {
  d->settle();
  const JobEntry* entry = d->jobs.entry(jobId);
  if (entry == nullptr) return Message("bench.no-such-job");
  if (job(jobId) == nullptr) return entry->trouble;
  const auto renewal = renewalOf(jobId);
  if (!renewal) return Message("renewal.nothing");
  if (!renewal->refused.id.empty()) return renewal->refused;
  const auto act = d->keep(jobId, {core::jobs::renewalDraft(renewal->techniques)}, renewal->texts, d->clock.now());
  if (!act) return act.error();
  shown(jobId, act.value().events);
  if (onCommitted) onCommitted(act.value().intentId);
  return {};
}

// Newly stored events become state, and the screens are notified.
void Workbench::shown(const std::string& jobId, const std::vector<core::record::Event>& events) {
  const Private::Taken taken = d->take(jobId, events);
  const bool rescheduled = d->reschedule(taken);
  for (const std::string& id : taken.changed) emit jobChanged(convert::toQt(id));
  if (rescheduled) emit scheduleChanged();
}

const std::vector<JobEntry>& Workbench::jobs() const { return d->jobs.entries(); }

const JobState* Workbench::job(const std::string& jobId) const {
  d->settle();
  return d->jobs.state(jobId, d->shop);
}

JobAt Workbench::at(const std::string& jobId) const {
  const JobState* state = job(jobId);
  ENSURE(state != nullptr);
  return JobAt(*state, d->shop, d->clock.now(), d->settings.way);
}

Message Workbench::submit(const core::intents::Request& request) {
  return std::visit([this](const auto& one) { return ask(one); }, request);
}

Message Workbench::ask(const core::intents::OfDesign& request) {
  if (Message refused = d->designs.ask(request.design, request.intent); !refused.id.empty()) return refused;
  emit designsChanged();
  if (onCommitted) onCommitted(d->lastIntentId);
  return {};
}

Message Workbench::ask(const core::intents::OfJob& request) {
  const auto& [jobId, intent] = request;
  d->settle();
  const JobEntry* entry = d->jobs.entry(jobId);
  if (entry == nullptr) return Message("bench.no-such-job");
  if (job(jobId) == nullptr) return entry->trouble;

  const JobAt now = at(jobId);
  auto decided = core::decisions::decide(now, intent);
  if (!decided) return decided.error();
  if (Message resting = d->restingElsewhere(jobId, intent, now.now()); !resting.id.empty()) return resting;
  std::vector<EventDraft> drafts = std::move(decided).value();
  takeBackOnBenchToo(drafts, d->jobs);
  const auto act = d->keep(jobId, drafts, {}, now.now());
  if (!act) return act.error();

  shown(jobId, act.value().events);
  if (onCommitted) onCommitted(act.value().intentId);
  return {};
}

Message Workbench::ask(const core::intents::OfShop& request) {
  d->settle();
  const ClockReading now = d->clock.now();
  auto decided = core::shop::decide(d->shop, now, request.intent);
  if (!decided) return decided.error();
  if (Message unknown = unknownPicture(request.intent, d->photographs); !unknown.id.empty()) return unknown;
  const auto act = d->keep("", decided.value(), {}, now);
  if (!act) return act.error();
  const std::vector<std::string> changed = d->take("", act.value().events).changed;
  d->readSettings();
  const bool rescheduled = d->reschedule();
  emit shopChanged();
  for (const std::string& id : changed) emit jobChanged(convert::toQt(id));
  if (rescheduled) emit scheduleChanged();
  if (onCommitted) onCommitted(act.value().intentId);
  return {};
}

void Workbench::keepPhotographsIn(const photographs::Photographs& photographs) { d->photographs = &photographs; }

const photographs::Photographs* Workbench::photographs() const { return d->photographs; }

Message Workbench::photograph(const std::string& jobId, const QString& path, const std::string& caption,
                              const std::string& step) {
  const JobEntry* entry = d->jobs.entry(jobId);
  if (entry == nullptr) return Message("bench.no-such-job");
  if (job(jobId) == nullptr) return entry->trouble;
  if (d->photographs == nullptr) return Message("photograph.no-folder");
  // The decision does not depend on the picture, so it is asked for before the copy.
  const core::intents::KeepPhotograph any{std::string(64, '0'), 1, "jpeg", 1, 1, caption, step};
  if (const auto decided = core::decisions::decide(at(jobId), any); !decided) return decided.error();
  const auto kept = d->photographs->keep(path);
  return kept ? photograph(jobId, kept.value(), caption, step) : kept.error();
}

Message Workbench::photograph(const std::string& jobId, const photographs::Kept& kept, const std::string& caption,
                              const std::string& step) {
  return submit(core::intents::OfJob{
      jobId, core::intents::KeepPhotograph{kept.hash, kept.bytes, kept.type, kept.width, kept.height, caption, step}});
}

std::set<std::string> Workbench::photographsNamed() const {
  std::set<std::string> named;
  for (const JobEntry& entry : jobs()) {
    const auto events = d->jobs.eventsOf(entry.id, KeptJobs::Of::Job);
    if (!events) continue;
    for (const auto& event : events.value()) {
      if (const auto kept = core::record::as<core::record::PhotographKept>(event)) named.insert(kept->hash);
    }
  }
  for (const auto& event : d->jobs.benchEvents()) {
    const auto given = core::record::as<core::record::AppearanceGiven>(event);
    if (given && given->appearance && given->appearance->picture) named.insert(given->appearance->picture->hash);
  }
  return named;
}

std::vector<core::jobs::TimelineEntry> Workbench::timeline(const std::string& jobId, core::jobs::Order order) const {
  const JobState* state = job(jobId);
  if (state == nullptr) return {};
  core::jobs::TimelineWords words;
  words.figure = [](const core::design::Figure& figure) { return convert::fromQt(words::figureLabel(figure)); };
  auto events = d->jobs.eventsOf(jobId, KeptJobs::Of::AllBenches);
  if (!events) return {};
  return core::jobs::timelineOf(*state, d->shop, std::move(events).value(), order, words);
}

const std::string& Workbench::lastIntentId() const { return d->lastIntentId; }

std::shared_ptr<const AlertSchedule> Workbench::schedule() const {
  d->settle();
  return d->schedule;
}

const core::shop::Shop& Workbench::shop() const {
  d->settle();
  return d->shop;
}

Message Workbench::heartbeat() {
  d->settle();
  const Message trouble = d->beat();
  if (!trouble.id.empty()) return trouble;
  if (d->reschedule()) emit scheduleChanged();
  // A summary that cannot be stored here only costs time at the next start; the heartbeat itself was stored.
  d->jobs.keepSummaries();
  return trouble;
}

std::string Workbench::exportRecord(const std::string& jobId) const {
  return d->recordOf(jobId, KeptJobs::Of::AllBenches);
}

core::base::Result<std::string, Message> Workbench::handOn(const std::string& jobId, std::optional<int> piece) const {
  const JobEntry* entry = d->jobs.entry(jobId);
  if (entry == nullptr) return Message("bench.no-such-job");
  if (job(jobId) == nullptr) return entry->trouble;
  auto events = d->jobs.eventsOf(jobId, KeptJobs::Of::Job);
  if (!events) return events.error();
  std::vector<core::record::Event> own = handedOn(std::move(events).value(), entry->jobHash);
  if (!piece) return app::workbench::handOn(jobId, std::move(own), d->store);
  auto alone = pieceAlone(jobId, *piece, own, d->store);
  if (!alone) return alone.error();
  PieceAlone one = std::move(alone).value();
  return app::workbench::handOn(one.jobId, std::move(one.events), d->store, std::move(one.job));
}

std::string Workbench::exportJob(const std::string& jobId) const {
  auto whole = handOn(jobId);
  return whole ? std::move(whole).value() : std::string();
}

Workbench::Imported Workbench::importJob(const std::string& text) {
  d->settle();
  Imported imported;
  const ReadyToImport ready = readyToImport(text, d->store, d->stamps.deviceId());
  imported.problems = ready.problems;
  if (ready.jobId.empty()) return imported;
  if (ready.events.empty() && ready.texts.empty()) {
    imported.jobId = ready.jobId;
    return imported;
  }
  if (const auto kept = d->store.append(ready.events, ready.texts); !kept) {
    imported.refusals.push_back(kept.error());
    return imported;
  }
  // Our own acts go on behind the greatest clock anyone has.
  if (const auto position = d->store.position(d->stamps.deviceId())) d->stamps.goOnFrom(position.value());
  imported.jobId = ready.jobId;
  imported.added = ready.events.size();
  imported.mended = ready.mended;
  std::vector<std::string> changed = d->take(ready.jobId, ready.events).changed;
  for (const std::string& id : d->jobs.retry(d->shop)) {
    if (std::find(changed.begin(), changed.end(), id) == changed.end()) changed.push_back(id);
  }
  d->learnAnew();
  tellChanged(changed);
  return imported;
}

Workbench::TakenIn Workbench::duplicate(const std::string& jobId) {
  TakenIn none;
  const core::base::ParsedJson parsed = core::base::parseJson(jobText(jobId));
  if (!parsed.readable || parsed.root.kind() != core::base::Value::Kind::Object) {
    const JobEntry* entry = d->jobs.entry(jobId);
    none.refusals.push_back(entry == nullptr || entry->trouble.id.empty() ? Message("bench.no-such-job")
                                                                          : entry->trouble);
    return none;
  }
  std::set<std::string> references;
  for (const JobEntry& entry : jobs()) references.insert(entry.reference);
  const OnceMore again = onceMore(parsed.root, references);
  TakenIn taken = takeIn(again.text);
  taken.notes = again.notes;
  return taken;
}

}  // namespace app::workbench
