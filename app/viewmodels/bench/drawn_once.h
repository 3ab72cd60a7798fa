#pragma once
// The drawings shown last, stored so that one that has not changed is neither drawn nor painted again.
#include <memory>
#include <vector>

#include "core/jobs/job_state.h"
#include "core/sheets/act.h"
#include "core/sheets/grown.h"
#include "core/sheets/piece.h"

namespace app::viewmodels {

class DrawnOnce {
 public:
  using Plan = std::shared_ptr<const core::jobs::JobPlan>;
  using Design = std::shared_ptr<const core::design::Design>;
  using Drawing = std::shared_ptr<const core::sheets::Drawing>;
  using Growth = std::shared_ptr<const core::sheets::Grown>;

  // Returns how far the piece has grown; the same object as long as no other step is done.
  Growth growth(const core::jobs::JobState& state) {
    std::vector<bool> done;
    for (const auto& step : state.steps) done.push_back(step.status == core::jobs::StepStatus::Done);
    if (!m_growth || m_grownPlan != state.plan || m_done != done) {
      m_grownPlan = state.plan;
      m_done = std::move(done);
      m_growth = std::make_shared<const core::sheets::Grown>(state);
    }
    return m_growth;
  }

  Drawing piece(const Design& design, core::sheets::Side side, const Growth& growth) {
    const bool same = m_whole && m_design == design && m_side == side;
    if (!same) {
      m_design = design;
      m_side = side;
      m_whole = std::make_shared<const core::sheets::Drawing>(core::sheets::drawPiece(*design, side));
    }
    if (!same || m_stands != growth) {
      m_stands = growth;
      core::sheets::Drawing grown = *m_whole;
      core::sheets::stand(grown, *growth);
      m_piece = std::make_shared<const core::sheets::Drawing>(std::move(grown));
    }
    return m_piece;
  }

  // Requires step.act.
  Drawing act(const Plan& plan, const core::workflow::WorkflowStep& step) {
    if (!m_act || m_actPlan != plan || m_step != &step) {
      m_actPlan = plan;
      m_step = &step;
      m_act = std::make_shared<const core::sheets::Drawing>(
          core::sheets::drawAct(*step.act, step.up, core::sheets::papersOf(plan->design.job, step.thing)));
    }
    return m_act;
  }

 private:
  // Kept alive, so that no other design can get the address of the last one.
  Design m_design;
  Plan m_actPlan;
  Plan m_grownPlan;
  std::vector<bool> m_done;
  Growth m_growth;
  Growth m_stands;  // how the piece drawn last stands
  core::sheets::Side m_side = core::sheets::Side::Face;
  const core::workflow::WorkflowStep* m_step = nullptr;
  Drawing m_whole;
  Drawing m_piece;
  Drawing m_act;
};

}  // namespace app::viewmodels
