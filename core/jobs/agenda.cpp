#include "core/jobs/agenda.h"

#include <algorithm>

#include "core/workflow/batches.h"

namespace core::jobs {
namespace {

using units::Duration;
using units::Span;

Span minus(const Span& span, Duration passed) {
  return {span.early - passed, span.likely - passed, span.late - passed};
}

Span atMost(const Span& span, Duration most) {
  return {std::min(span.early, most), std::min(span.likely, most), std::min(span.late, most)};
}
Span atLeast(const Span& span, Duration least) {
  return {std::max(span.early, least), std::max(span.likely, least), std::max(span.late, least)};
}

std::vector<workflow::AgendaStep> stepsAhead(const JobAt& job) {
  std::vector<workflow::AgendaStep> ahead;
  const auto& steps = job.state().plan->workflow.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (job.isDone(i)) continue;
    const StepState& state = job.state().steps[i];
    Span work = steps[i].work;
    if (state.status == StepStatus::Begun) {
      const waits::Elapsed since = waits::elapsedBetween(state.begunAt, job.now(), job.shop().clockLog);
      work = atLeast(minus(work, since.time), Duration());
    }
    ahead.push_back({i, work});
  }
  return ahead;
}

std::vector<workflow::AgendaBatch> batchesAtHand(const JobAt& job) {
  std::vector<workflow::AgendaBatch> batches;
  for (const workflow::Batch& batch : workflow::batchesOf(job.state().plan->workflow)) {
    const bool made =
        std::all_of(batch.steps.begin(), batch.steps.end(), [&](std::size_t step) { return job.isDone(step); });
    const std::optional<Duration> age = job.ageOfBatch(batch.technique);
    if (made && age && *age <= batch.keeps) batches.push_back({batch.technique, batch.keeps - *age});
  }
  return batches;
}

workflow::AgendaRun runOf(const JobAt& job, const RunningWaitAt& running) {
  const waits::WaitState& state = running.state;
  workflow::AgendaRun found;
  found.step = *job.state().plan->workflow.indexOf(running.run->step->id);
  found.wait = running.run->wait;
  found.from.opens = minus(state.opens, state.elapsed.time);
  if (state.holds()) found.from.opens = atMost(found.from.opens, Duration());
  if (state.closes) found.from.closes = minus(*state.closes, state.elapsed.time);
  found.from.basis = state.basis;
  return found;
}

}  // namespace

workflow::Bench benchFor(const design::Job& job, const shop::Shop& shop) {
  std::optional<units::Room> room = job.room;
  if (!room && !shop.rooms.empty()) room = shop.rooms.back().room;
  return {room, shop.learning};
}

std::vector<RunningWaitAt> runningWaits(const JobAt& job) {
  std::vector<RunningWaitAt> runs;
  for (const auto& [id, run] : job.state().waits) {
    if (job.matters(run)) runs.push_back({&run, job.waitState(run)});
  }
  return runs;
}

workflow::Agenda agendaOf(const JobAt& job) {
  std::vector<RunningWaitAt> runs = runningWaits(job);
  std::stable_sort(runs.begin(), runs.end(), [](const RunningWaitAt& a, const RunningWaitAt& b) {
    return a.run->started.utcMilliseconds < b.run->started.utcMilliseconds;
  });
  std::vector<workflow::AgendaRun> running;
  for (const RunningWaitAt& run : runs) running.push_back(runOf(job, run));
  const JobPlan& plan = *job.state().plan;
  return workflow::Agenda(plan.workflow, benchFor(plan.design.job, job.shop()), stepsAhead(job), std::move(running),
                          batchesAtHand(job));
}

}  // namespace core::jobs
