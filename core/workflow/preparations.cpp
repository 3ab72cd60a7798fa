#include "core/workflow/preparations.h"

#include <algorithm>
#include <limits>
#include <string_view>
#include <unordered_map>

namespace core::workflow {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
// A preparation may be begun so much of its keeping time earlier than it has to be: what keeps four weeks when the
// hands are at it, paste that keeps three days the day before.
constexpr double kAhead = 0.25;
// So much of its keeping time may be over when it is used last.
constexpr double kTrusted = 0.9;
// What takes long may take longer: so much of the time from its beginning to its use is added.
constexpr double kMargin = 0.1;

class Reckoning {
 public:
  Reckoning(double now, const Agenda& agenda, std::vector<double> work)
      : m_now(now), m_workflow(agenda.workflow()), m_agenda(agenda), m_work(std::move(work)) {
    for (const AgendaRun& run : agenda.running()) {
      double& opens = m_running[run.wait->makes];
      opens = std::max(opens, run.from.opens.likely.inMinutes());
    }
  }

  std::vector<Lead> leads(const std::vector<double>& starts) {
    std::vector<Lead> leads(m_work.size());
    if (!hasPreparations()) return leads;
    reckonEarliest();
    for (std::size_t i = 0; i < starts.size(); ++i) m_earliest[i] = std::max(m_earliest[i], starts[i]);
    // By the end of the order, whoever uses a preparation is reckoned before it.
    for (auto i = m_order.rbegin(); i != m_order.rend(); ++i) {
      const WorkflowStep& step = m_workflow.steps[*i];
      if (!step.ofShop) continue;
      reckonLatest(*i);
      if (!step.keeps || m_latest[*i] == kNever || !isFirst(step)) continue;
      leads[*i].due = std::max(m_now, m_latest[*i] - kMargin * (m_use[*i] - m_latest[*i]));
      const double keeps = step.keeps->inMinutes();
      const double fresh = std::max(leads[*i].due - kAhead * keeps, m_lastUse[*i] - kTrusted * keeps);
      leads[*i].notBefore = std::clamp(fresh, m_now, leads[*i].due);
    }
    return leads;
  }

 private:
  bool isLeft(std::size_t i) const { return m_work[i] >= 0; }

  // Whether nothing of the preparation has been done.
  bool isFirst(const WorkflowStep& step) const {
    return std::none_of(step.before.begin(), step.before.end(),
                        [&](std::size_t earlier) { return m_workflow.steps[earlier].technique == step.technique; });
  }

  bool hasPreparations() const {
    for (std::size_t i = 0; i < m_work.size(); ++i) {
      if (isLeft(i) && m_workflow.steps[i].ofShop) return true;
    }
    return false;
  }

  // The steps that are left, each after those it waits for.
  void sortByNeed() {
    std::vector<std::size_t> waitsFor(m_work.size(), 0);
    std::vector<std::vector<std::size_t>> after(m_work.size());
    for (std::size_t i = 0; i < m_work.size(); ++i) {
      if (!isLeft(i)) continue;
      for (const std::size_t earlier : m_workflow.steps[i].before) {
        if (!isLeft(earlier)) continue;
        ++waitsFor[i];
        after[earlier].push_back(i);
      }
      if (waitsFor[i] == 0) m_order.push_back(i);
    }
    for (std::size_t at = 0; at < m_order.size(); ++at) {
      for (const std::size_t later : after[m_order[at]]) {
        if (--waitsFor[later] == 0) m_order.push_back(later);
      }
    }
    m_after = std::move(after);
  }

  // When each step could be started with hands enough, were every preparation at hand.
  void reckonEarliest() {
    sortByNeed();
    m_earliest.assign(m_work.size(), m_now);
    m_latest.assign(m_work.size(), kNever);
    m_use.assign(m_work.size(), kNever);
    m_lastUse.assign(m_work.size(), 0);
    std::unordered_map<std::string_view, double> made(m_running.begin(), m_running.end());
    for (const std::size_t i : m_order) {
      const WorkflowStep& step = m_workflow.steps[i];
      if (step.ofShop) continue;
      double& from = m_earliest[i];
      for (const std::size_t earlier : step.before) {
        if (isLeft(earlier) && !m_workflow.steps[earlier].ofShop) {
          from = std::max(from, m_earliest[earlier] + m_work[earlier]);
        }
      }
      for (const std::string& fact : step.needs) {
        if (const auto found = made.find(fact); found != made.end()) from = std::max(from, found->second);
      }
      for (const WorkflowWait& wait : step.waits) {
        double& opens = made[wait.makes];
        opens = std::max(opens, from + m_work[i] + m_agenda.of(wait).opens.likely.inMinutes());
      }
    }
  }

  // The latest start of a preparation's step, so that whoever waits for it does not wait longer, and when that is.
  void reckonLatest(std::size_t i) {
    const WorkflowStep& step = m_workflow.steps[i];
    for (const std::size_t later : m_after[i]) {
      const WorkflowStep& user = m_workflow.steps[later];
      double wait = 0;
      for (const WorkflowWait& one : step.waits) {
        if (std::find(user.needs.begin(), user.needs.end(), one.makes) != user.needs.end()) {
          wait = std::max(wait, m_agenda.of(one).opens.likely.inMinutes());
        }
      }
      const double start = user.ofShop ? m_latest[later] : m_earliest[later];
      m_latest[i] = std::min(m_latest[i], start - wait - m_work[i]);
      m_use[i] = std::min(m_use[i], user.ofShop ? m_use[later] : m_earliest[later]);
      m_lastUse[i] = std::max(m_lastUse[i], user.ofShop ? m_lastUse[later] : m_earliest[later]);
    }
  }

  const double m_now;
  const Workflow& m_workflow;
  const Agenda& m_agenda;
  std::vector<double> m_work;  // minutes; below zero: not left
  std::unordered_map<std::string_view, double> m_running;
  std::vector<std::size_t> m_order;
  std::vector<std::vector<std::size_t>> m_after;
  std::vector<double> m_earliest;
  std::vector<double> m_latest;
  std::vector<double> m_use;  // the first use
  std::vector<double> m_lastUse;
};

}  // namespace

std::vector<Lead> leadsOf(const Agenda& agenda, const std::vector<double>& starts) {
  std::vector<double> work(agenda.workflow().steps.size(), -1);
  for (const AgendaStep& ahead : agenda.steps()) work[ahead.step] = ahead.work.likely.inMinutes();
  return leadsAt(0, agenda, starts, std::move(work));
}

std::vector<Lead> leadsAt(double now, const Agenda& agenda, const std::vector<double>& starts,
                          std::vector<double> work) {
  return Reckoning(now, agenda, std::move(work)).leads(starts);
}

}  // namespace core::workflow
