#include "app/viewmodels/standing.h"

#include <QCoreApplication>

#include "app/convert/text.h"
#include "app/viewmodels/told_wait.h"
#include "app/words/words.h"
#include "core/jobs/touch_tests.h"

namespace app::viewmodels {

using convert::toQt;
using core::jobs::BenchPlace;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("standing", text); }

}  // namespace

QString nameOf(const workbench::JobEntry& entry) {
  const std::string& name = entry.title.empty() ? entry.reference : entry.title;
  if (!name.empty()) return toQt(name);
  return entry.trouble.id.empty() ? QString() : tr("A piece whose name cannot be read");
}

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry, const std::string& zone) {
  Standing standing;
  if (!entry.trouble.id.empty()) {
    standing.where = words::text(entry.trouble, core::units::UnitSystem::Millimetres);
    return standing;
  }
  QString where;
  switch (entry.place) {
    case BenchPlace::Kind::Step: where = toQt(entry.step); break;
    case BenchPlace::Kind::Waiting: where = tr("waits"); break;
    case BenchPlace::Kind::Missed: where = tr("missed: %1").arg(toQt(entry.step)); break;
    case BenchPlace::Kind::Finished: where = tr("every step is done"); break;
    case BenchPlace::Kind::Stuck: where = tr("nothing can be started"); break;
  }
  standing.where = tr("%1 of %2 done · %3").arg(entry.done).arg(entry.all).arg(where);
  // At a job that rests nothing runs; it is not folded to say so.
  if (entry.rests || workbench.job(entry.id) == nullptr) return standing;
  const core::jobs::JobAt job = workbench.at(entry.id);
  const auto tests = core::jobs::touchTests(job);
  if (tests.empty()) return standing;
  const core::jobs::RunningWait& next = job.state().waits.at(tests.front().wait);
  standing.runs = toldWait(job, next, zone).brief + QStringLiteral(", ") + toQt(next.wait->title);
  if (tests.size() > 1) standing.runs += tr(", %1 more").arg(tests.size() - 1);
  return standing;
}

}  // namespace app::viewmodels
