#pragma once
// The drawings shown last, so that what has not changed is neither drawn nor painted again.
#include <memory>

#include "core/record/job_state.h"
#include "core/sheets/act.h"
#include "core/sheets/piece.h"

namespace app::viewmodels {

class DrawnOnce {
 public:
  using Plan = std::shared_ptr<const core::record::JobPlan>;
  using Drawing = std::shared_ptr<const core::sheets::Drawing>;

  Drawing piece(const Plan& plan, core::sheets::Side side) {
    if (!m_piece || m_piecePlan != plan || m_side != side) {
      m_piecePlan = plan;
      m_side = side;
      m_piece = std::make_shared<const core::sheets::Drawing>(core::sheets::drawPiece(plan->design, side));
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
  // Held, so that another plan never comes to lie where the last one was.
  Plan m_piecePlan;
  Plan m_actPlan;
  core::sheets::Side m_side = core::sheets::Side::Face;
  const core::workflow::WorkflowStep* m_step = nullptr;
  Drawing m_piece;
  Drawing m_act;
};

}  // namespace app::viewmodels
