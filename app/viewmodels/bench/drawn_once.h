#pragma once
// The drawings shown last, stored so that one that has not changed is neither drawn nor painted again.
#include <memory>

#include "core/jobs/job_state.h"
#include "core/sheets/act.h"
#include "core/sheets/piece.h"

namespace app::viewmodels {

class DrawnOnce {
 public:
  using Plan = std::shared_ptr<const core::jobs::JobPlan>;
  using Design = std::shared_ptr<const core::design::Design>;
  using Drawing = std::shared_ptr<const core::sheets::Drawing>;

  Drawing piece(const Design& design, core::sheets::Side side) {
    if (!m_piece || m_design != design || m_side != side) {
      m_design = design;
      m_side = side;
      m_piece = std::make_shared<const core::sheets::Drawing>(core::sheets::drawPiece(*design, side));
    }
    return m_piece;
  }

  // Requires step.act.
  Drawing act(const Plan& plan, const core::workflow::WorkflowStep& step) {
    if (!m_act || m_actPlan != plan || m_step != &step) {
      m_actPlan = plan;
      m_step = &step;
      m_act = std::make_shared<const core::sheets::Drawing>(core::sheets::drawAct(*step.act, step.up));
    }
    return m_act;
  }

 private:
  // Kept alive, so that no other design can get the address of the last one.
  Design m_design;
  Plan m_actPlan;
  core::sheets::Side m_side = core::sheets::Side::Face;
  const core::workflow::WorkflowStep* m_step = nullptr;
  Drawing m_piece;
  Drawing m_act;
};

}  // namespace app::viewmodels
