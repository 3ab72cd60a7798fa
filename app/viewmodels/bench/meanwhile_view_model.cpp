#include "app/viewmodels/bench/meanwhile_view_model.h"

#include <algorithm>
#include <tuple>

#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "core/jobs/meanwhile.h"

namespace app::viewmodels {
namespace {

using core::jobs::BenchPlace;

// A job at rest is folded to be asked for its act: no more of them than are worth it, those that are due first.
constexpr std::size_t kMostAtRest = 4;

}  // namespace

MeanwhileViewModel::MeanwhileViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_clock(clock) {}

// The one that waits, then every other at which something runs or can be worked.
std::vector<std::string> MeanwhileViewModel::toConsider(const std::string& waiting) const {
  std::vector<std::string> ids{waiting};
  std::vector<const workbench::JobEntry*> atRest;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (entry.id == waiting || !entry.trouble.id.empty()) continue;
    if (!entry.rests) {
      ids.push_back(entry.id);
    } else if (!entry.archived && entry.place == BenchPlace::Kind::Step) {
      atRest.push_back(&entry);
    }
  }
  std::stable_sort(atRest.begin(), atRest.end(), [](const auto* a, const auto* b) {
    return std::tuple(a->due.empty(), a->due) < std::tuple(b->due.empty(), b->due);
  });
  if (atRest.size() > kMostAtRest) atRest.resize(kMostAtRest);
  std::vector<std::string> rest;
  for (const auto* entry : atRest) rest.push_back(entry->id);
  ids.insert(ids.end(), rest.begin(), rest.end());
  return ids;
}

void MeanwhileViewModel::refresh(const std::string& jobId) {
  const std::string before = std::move(m_job);
  m_job.clear();
  const core::jobs::JobState* state = m_workbench.job(jobId);
  const bool waits =
      state != nullptr && core::jobs::benchPlace(m_workbench.at(jobId)).kind == BenchPlace::Kind::Waiting;
  if (waits) {
    std::vector<std::string> ids;
    std::vector<core::jobs::JobAt> jobs;
    for (const std::string& id : toConsider(jobId)) {
      if (m_workbench.job(id) == nullptr) continue;
      ids.push_back(id);
    }
    // Folding one may move what another refers to: all are folded by now.
    jobs.reserve(ids.size());
    for (const std::string& id : ids) jobs.push_back(m_workbench.at(id));
    if (const auto found = core::jobs::meanwhile(jobs, 0)) {
      m_job = ids[found->job];
      show(jobs[found->job], found->place, found->work);
    }
  }
  if (present() || !before.empty()) emit changed();
}

void MeanwhileViewModel::show(const core::jobs::JobAt& job, const BenchPlace& place, core::units::Duration work) {
  const core::jobs::JobPlan& plan = *job.state().plan;
  m_piece = pieceName(plan.design.job.title);
  m_act = actName(plan.workflow, job.way(), place.steps);
  const std::int64_t now = job.now().utcMilliseconds;
  m_terms = tr("%1, %2: done by %3")
                .arg(words::hands(core::workflow::handsOf(plan.workflow, place.steps)), roughly(work),
                     clockTime(rounded(now + work.inMilliseconds(), now, Expected::Opening), now, m_clock.zone()));
  m_drawing = pieceOf(m_drawn[plan.id], job.state());
}

void MeanwhileViewModel::take() {
  if (!present()) return;
  // What is put on the bench changes what is offered.
  const std::string job = m_job;
  emit goTo(job);
}

}  // namespace app::viewmodels
