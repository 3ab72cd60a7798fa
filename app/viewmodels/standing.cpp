#include "app/viewmodels/standing.h"

#include <QCoreApplication>

#include "app/convert/text.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::toQt;
using core::record::BenchPlace;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("standing", text); }

}  // namespace

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry) {
  Standing row;
  if (workbench.job(entry.id) == nullptr) {
    row.where = words::text(entry.trouble, core::units::UnitSystem::Millimetres);
    return row;
  }
  const core::record::JobAt job = workbench.at(entry.id);
  const BenchPlace place = core::record::benchPlace(job);
  const auto& steps = job.state().plan->workflow.steps;
  switch (place.kind) {
    case BenchPlace::Kind::Step: row.where = toQt(steps[*place.step].title); break;
    case BenchPlace::Kind::Waiting: row.where = tr("waits"); break;
    case BenchPlace::Kind::Missed: row.where = tr("missed: %1").arg(toQt(steps[*place.step].title)); break;
    case BenchPlace::Kind::Finished: row.where = tr("every step is done"); break;
    case BenchPlace::Kind::Stuck: row.where = tr("nothing can be started"); break;
  }
  row.where = tr("%1 of %2 · %3").arg(place.done).arg(place.all).arg(row.where);
  int running = 0;
  const core::record::RunningWait* next = nullptr;
  core::units::Duration soonest;
  for (const auto& [id, run] : job.state().waits) {
    const auto state = job.waitState(run);
    if (!job.matters(run) || state.phase == core::waits::Phase::Over) continue;
    ++running;
    const auto left = state.opens.likely - state.elapsed.time;
    if (next == nullptr || left < soonest) {
      next = &run;
      soonest = left;
    }
  }
  if (next != nullptr) {
    const auto state = job.waitState(*next);
    row.runs = toQt(next->wait->title) + QStringLiteral(", ") +
               leftText(state.opens.early, state.opens.late, state.elapsed.time);
    if (running > 1) row.runs += tr(", %1 more").arg(running - 1);
  }
  return row;
}

}  // namespace app::viewmodels
