#include "app/workbench/kept_jobs.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/jobs/agenda.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/standing.h"
#include "core/record/counting.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::startsWith;
using core::jobs::JobAt;
using core::jobs::JobState;
using core::record::Event;
using core::record::Summary;
using core::shop::Shop;

constexpr std::string_view kJobPrefix = "job/";
constexpr std::string_view kBenchPrefix = "bench/";

bool ofBench(const Event& event) { return startsWith(event.stream, kBenchPrefix); }

// An event added to a job that was ever renewed may change its plan.
bool isRenewed(const std::vector<Event>& events) {
  return std::any_of(events.begin(), events.end(),
                     [](const Event& event) { return core::record::isA<core::record::TechniquesRenewed>(event); });
}

// The waits a maker looks for in a list: what still matters and is not over, the next to open first.
std::vector<JobEntry::Run> runsOf(const JobAt& job) {
  std::vector<JobEntry::Run> runs;
  for (const auto& [run, state] : core::jobs::runningWaits(job)) {
    if (state.phase == core::waits::Phase::Over) continue;
    runs.push_back({run->id, run->wait->title, state.opens, state.elapsed.time});
  }
  std::stable_sort(runs.begin(), runs.end(), [](const JobEntry::Run& a, const JobEntry::Run& b) {
    return a.opens.likely - a.elapsed < b.opens.likely - b.elapsed;
  });
  return runs;
}

void place(JobEntry& entry, const JobAt& job) {
  const core::jobs::BenchPlace place = core::jobs::benchPlace(job);
  entry.place = place.kind;
  entry.step = place.step ? job.state().plan->workflow.steps[*place.step].title : std::string();
  entry.done = place.stepsDone;
  entry.all = job.state().plan->workflow.steps.size();
  entry.runs = entry.rests ? std::vector<JobEntry::Run>() : runsOf(job);
}

// The newest event on which a job's being done depends: its own, or of the bench.
core::record::Hlc newestOf(const JobState& state, const std::vector<Event>& own, const std::vector<Event>& bench) {
  core::record::Hlc newest;
  for (const Event& event : own) newest = std::max(newest, event.hlc);
  std::set<std::string> intents;
  for (const auto& step : state.steps) intents.insert(step.intentId);
  for (const Event& event : bench) {
    if (event.hlc > newest && intents.contains(event.intentId)) newest = event.hlc;
  }
  return newest;
}

}  // namespace

Message KeptJobs::load(Shop& shop) {
  m_entries.clear();
  m_jobs.clear();
  m_benchEvents.clear();
  m_taught = true;
  m_putOff = true;
  const auto heads = m_store.heads();
  if (!heads) return heads.error();
  // The benches' first, because every job is folded over them.
  for (const auto& head : heads.value()) {
    if (!startsWith(head.stream, kBenchPrefix)) continue;
    const auto events = m_store.load(head.stream);
    if (!events) return events.error();
    m_benchEvents.insert(m_benchEvents.end(), events.value().begin(), events.value().end());
  }
  m_print = core::shop::ShopPrint(m_benchEvents);
  core::shop::foldShop(shop, m_benchEvents);
  std::map<std::string, const Summary*> kept;
  // Summaries that do not read are no trouble: everything is folded then.
  const auto summaries = m_store.summaries();
  if (summaries) {
    for (const Summary& summary : summaries.value()) kept.emplace(summary.stream, &summary);
  }
  for (const auto& head : heads.value()) {
    if (!startsWith(head.stream, kJobPrefix)) continue;
    const std::string jobId = head.stream.substr(kJobPrefix.size());
    Job& job = enter(jobId);
    job.arrived = head.arrived;
    const auto found = kept.find(head.stream);
    if (found != kept.end() && believe(jobId, job, *found->second)) continue;
    openStored(jobId, job, shop);
    if (found != kept.end()) nameFrom(*found->second, m_entries[job.entry]);
    release(job);
  }
  return {};
}

// A job that cannot be opened keeps the name it had when it could.
void KeptJobs::nameFrom(const Summary& kept, JobEntry& entry) {
  if (entry.trouble.id.empty() || !(entry.title + entry.reference).empty()) return;
  const auto summary = readSummary(entry.id, kept.body);
  if (!summary) return;
  entry.title = summary->entry.title;
  entry.reference = summary->entry.reference;
}

KeptJobs::Job& KeptJobs::enter(const std::string& jobId) {
  Job& job = m_jobs[jobId];
  job.entry = m_entries.size();
  m_entries.emplace_back().id = jobId;
  return job;
}

bool KeptJobs::believe(const std::string& jobId, Job& job, const Summary& kept) {
  auto summary = readSummary(jobId, kept.body);
  if (!summary) return false;
  std::swap(job.summary, *summary);
  if (stampOf(job) != kept.stamp) {
    job.summary = JobSummary();
    return false;
  }
  m_entries[job.entry] = std::move(job.summary.entry);
  job.stamp = kept.stamp;
  return true;
}

std::string KeptJobs::stampOf(const Job& job) const {
  return summaryStamp(job.arrived, job.summary.settled ? m_print.upTo(job.summary.newest) : m_print.whole());
}

void KeptJobs::openStored(const std::string& jobId, Job& job, const Shop& shop) {
  auto events = m_store.load(std::string(kJobPrefix) + jobId);
  if (!events) {
    m_entries[job.entry].trouble = events.error();
    return;
  }
  open(jobId, job, std::move(events).value(), shop);
}

void KeptJobs::open(const std::string& jobId, Job& job, std::vector<Event> events, const Shop& shop) {
  const auto plans = plannedFrom(events);
  open(jobId, job, std::move(events), plans, shop);
}

void KeptJobs::open(const std::string& jobId, Job& job, std::vector<Event> events,
                    const std::vector<core::intents::TakeIn>& plans, const Shop& shop) {
  JobEntry& entry = m_entries[job.entry];
  job.events = std::move(events);
  entry.trouble = Message("kept.taking-in-unreadable");
  bool first = true;
  for (const core::intents::TakeIn& takenIn : plans) {
    auto plan = m_plans.read(jobId, takenIn);
    if (first || plan) {
      entry.title = takenIn.title;
      entry.reference = takenIn.reference;
      entry.jobHash = takenIn.jobHash;
      entry.trouble = plan ? Message() : plan.error();
    }
    first = false;
    if (!plan) continue;
    job.plan = plan.value();
    break;
  }
  if (!entry.trouble.id.empty()) return;
  // Who wrote the event may have called it otherwise; the job's file says what it is.
  entry.title = job.plan->design.job.title;
  entry.reference = job.plan->design.job.reference;
  entry.client = job.plan->design.job.client;
  entry.due = job.plan->design.job.due;
  entry.width = job.plan->design.layout.outerWidth;
  entry.height = job.plan->design.layout.outerHeight;
  job.summary.sharedSteps = core::jobs::shopSteps(*job.plan);
  refold(job, shop);
}

void KeptJobs::refold(Job& job, const Shop& shop) {
  std::vector<Event> events = job.events;
  events.insert(events.end(), m_benchEvents.begin(), m_benchEvents.end());
  job.state = core::jobs::fold(job.plan, std::move(events));
  const JobEntry before = m_entries[job.entry];
  JobEntry& entry = m_entries[job.entry];
  entry.archived = job.state->putAway;
  entry.rests = core::jobs::rests(*job.state);
  const auto newest = std::max_element(job.events.begin(), job.events.end(), core::record::before);
  if (newest != job.events.end()) entry.changedUtc = newest->occurredUtc;
  job.summary.settled = core::jobs::settled(*job.state);
  job.summary.newest = newestOf(*job.state, job.events, m_benchEvents);
  // A job that rests has the same place at any instant; the clock is read for the others.
  if (entry.rests) place(entry, JobAt(*job.state, shop, shop.clockLog.opened.value_or(core::waits::ClockReading())));
  auto lessons = core::jobs::observed(*job.state, shop.clockLog, shop.rooms);
  const bool taught = lessons != job.summary.lessons;
  m_taught = m_taught || taught;
  job.summary.lessons = std::move(lessons);
  if (taught || entry != before) job.stamp.clear();
}

bool KeptJobs::settle(const Shop& shop) {
  if (!std::exchange(m_putOff, false)) return false;
  std::map<std::string, std::string> details;
  if (const auto kept = m_store.summaryDetails()) {
    for (const Summary& summary : kept.value()) details.emplace(summary.stream, summary.detail);
  }
  struct Opening {
    const std::string& id;
    Job& job;
    std::vector<Event> events;
    std::vector<core::intents::TakeIn> plans;
  };
  std::vector<Opening> opening;
  std::vector<PlanReader::Wanted> wanted;
  for (auto& [id, job] : m_jobs) {
    if (job.state || !m_entries[job.entry].trouble.id.empty()) continue;
    auto lessons = job.stamp.empty() ? std::optional(job.summary.lessons)
                                     : readLessons(details[std::string(kJobPrefix) + id], job.stamp);
    if (lessons) job.summary.lessons = *std::move(lessons);
    if (lessons && m_entries[job.entry].rests) continue;
    if (!lessons) job.stamp.clear();
    auto events = m_store.load(std::string(kJobPrefix) + id);
    if (events) {
      auto plans = plannedFrom(events.value());
      if (!plans.empty()) wanted.push_back({id, plans.front()});
      opening.push_back({id, job, std::move(events).value(), std::move(plans)});
    } else {
      m_entries[job.entry].trouble = events.error();
    }
  }
  m_plans.readAhead(wanted);
  for (Opening& one : opening) {
    open(one.id, one.job, std::move(one.events), one.plans, shop);
    release(one.job);
  }
  return true;
}

void KeptJobs::release(Job& job) {
  if (!job.state || !m_entries[job.entry].rests) return;
  job.state.reset();
  job.plan.reset();
  job.events = std::vector<Event>();
}

void KeptJobs::look(const std::string& jobId, const Shop& shop, const core::waits::ClockReading& now) {
  const JobState* state = foldedState(jobId);
  if (state == nullptr) return;
  JobEntry& entry = m_entries[m_jobs.at(jobId).entry];
  if (!entry.rests) place(entry, JobAt(*state, shop, now));
}

std::vector<std::string> KeptJobs::add(const std::string& jobId, const std::vector<Event>& events, Shop& shop) {
  bool touched = false;
  bool shops = false;
  std::vector<Event> own;
  for (const Event& event : events) {
    if (!ofBench(event)) {
      own.push_back(event);
      continue;
    }
    m_benchEvents.push_back(event);
    touched = touched || core::record::touchesJobs(event);
    shops = shops || !core::record::touchesJobs(event) || core::record::isA<core::record::Undone>(event);
  }
  if (touched) m_print = core::shop::ShopPrint(m_benchEvents);
  if (shops) core::shop::foldShop(shop, m_benchEvents);

  std::vector<std::string> changed;
  if (!jobId.empty()) {
    const auto found = m_jobs.find(jobId);
    Job& job = found == m_jobs.end() ? enter(jobId) : found->second;
    if (!own.empty()) job.arrived = own.back().eventId;
    if (job.state) {
      job.events.insert(job.events.end(), own.begin(), own.end());
      if (isRenewed(job.events)) {
        open(jobId, job, std::move(job.events), shop);
      } else {
        refold(job, shop);
      }
    } else {
      openStored(jobId, job, shop);
    }
    changed.push_back(jobId);
  }
  if (!touched) return changed;
  for (auto& [id, job] : m_jobs) {
    if (id == jobId || !m_entries[job.entry].trouble.id.empty()) continue;
    if (job.state) {
      refold(job, shop);
    } else if (job.stamp != stampOf(job)) {
      openStored(id, job, shop);
      release(job);
    } else {
      continue;
    }
    changed.push_back(id);
  }
  return changed;
}

std::vector<std::string> KeptJobs::retry(const Shop& shop) {
  std::vector<std::string> opened;
  for (auto& [id, job] : m_jobs) {
    if (m_entries[job.entry].trouble.id.empty()) continue;
    openStored(id, job, shop);
    if (m_entries[job.entry].trouble.id.empty()) opened.push_back(id);
  }
  return opened;
}

const JobEntry* KeptJobs::entry(const std::string& jobId) const {
  const auto found = m_jobs.find(jobId);
  return found == m_jobs.end() ? nullptr : &m_entries[found->second.entry];
}

const JobState* KeptJobs::state(const std::string& jobId, const Shop& shop) {
  const auto found = m_jobs.find(jobId);
  if (found == m_jobs.end() || !m_entries[found->second.entry].trouble.id.empty()) return nullptr;
  if (!found->second.state) openStored(jobId, found->second, shop);
  return found->second.state ? &*found->second.state : nullptr;
}

const JobState* KeptJobs::foldedState(const std::string& jobId) const {
  const auto found = m_jobs.find(jobId);
  if (found == m_jobs.end() || !found->second.state || !m_entries[found->second.entry].trouble.id.empty())
    return nullptr;
  return &*found->second.state;
}

std::vector<const JobState*> KeptJobs::folded() const {
  std::vector<const JobState*> states;
  for (const auto& [id, job] : m_jobs) {
    if (job.state && m_entries[job.entry].trouble.id.empty()) states.push_back(&*job.state);
  }
  return states;
}

void KeptJobs::foldWhatMayRestOn(const std::string& intentId, const JobState& asked, const Shop& shop) {
  std::vector<Event> ordered = m_benchEvents;
  core::record::arrange(ordered);
  std::set<std::string> steps;  // that the act did
  std::optional<core::record::Hlc> at;
  for (const Event& event : ordered) {
    if (event.intentId != intentId) continue;
    steps.insert(core::record::stepOf(event));
    if (!at || event.hlc < *at) at = event.hlc;
  }
  if (!at) return;
  std::set<std::string> later;  // steps of the bench since, which the asking job does not see
  for (const Event& event : ordered) {
    const std::string step = core::record::stepOf(event);
    if (event.hlc > *at && !step.empty() && asked.plan->workflow.find(step) == nullptr) later.insert(step);
  }
  const auto shares = [](const std::set<std::string>& all, const std::set<std::string>& some) {
    return std::any_of(some.begin(), some.end(), [&](const std::string& step) { return all.contains(step); });
  };
  for (auto& [id, job] : m_jobs) {
    if (job.state || !m_entries[job.entry].trouble.id.empty() || !shares(job.summary.sharedSteps, steps)) continue;
    if (job.summary.newest > *at || shares(job.summary.sharedSteps, later)) openStored(id, job, shop);
  }
}

std::vector<const core::jobs::Observed*> KeptJobs::lessons() const {
  std::vector<const core::jobs::Observed*> all;
  for (const auto& [id, job] : m_jobs) all.push_back(&job.summary.lessons);
  return all;
}

Message KeptJobs::keepSummaries() {
  std::vector<Summary> summaries;
  std::vector<Job*> jobs;
  for (auto& [id, job] : m_jobs) {
    const JobEntry& entry = m_entries[job.entry];
    if (!entry.trouble.id.empty()) continue;
    std::string stamp = stampOf(job);
    if (stamp == job.stamp) continue;
    JobSummary summary = job.summary;
    summary.entry = entry;
    std::string lessons = lessonsText(job.summary.lessons, stamp);
    summaries.push_back({std::string(kJobPrefix) + id, std::move(stamp), summaryText(summary), std::move(lessons)});
    jobs.push_back(&job);
  }
  if (summaries.empty()) return {};
  const auto kept = m_store.keepSummaries(summaries);
  if (!kept) return kept.error();
  for (std::size_t i = 0; i < jobs.size(); ++i) jobs[i]->stamp = summaries[i].stamp;
  return {};
}

core::base::Result<std::vector<Event>, Message> KeptJobs::eventsOf(const std::string& jobId, Of of) {
  const auto found = m_jobs.find(jobId);
  std::vector<Event> events;
  if (found != m_jobs.end() && found->second.state) {
    events = found->second.events;
  } else {
    auto stored = m_store.load(std::string(kJobPrefix) + jobId);
    if (!stored) return stored.error();
    events = std::move(stored).value();
  }
  // The steps of a job that does not open are unknown.
  const bool all = of == Of::AllBenches || found == m_jobs.end() || !m_entries[found->second.entry].trouble.id.empty();
  const std::vector<Event> bench =
      all ? m_benchEvents : core::record::benchEventsOf(m_benchEvents, events, found->second.summary.sharedSteps);
  events.insert(events.end(), bench.begin(), bench.end());
  return events;
}

bool KeptJobs::touchedBench(const std::string& intentId) const {
  return std::any_of(m_benchEvents.begin(), m_benchEvents.end(),
                     [&](const Event& event) { return event.intentId == intentId; });
}

}  // namespace app::workbench
