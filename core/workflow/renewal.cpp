#include "core/workflow/renewal.h"

#include <algorithm>

#include "core/base/text.h"

namespace core::workflow {
namespace {

using base::Message;

base::Stretch stretch(const units::Span& span) {
  return {span.early.inMilliseconds(), span.likely.inMilliseconds(), span.late.inMilliseconds()};
}

bool same(const units::Span& a, const units::Span& b) {
  return a.early == b.early && a.likely == b.likely && a.late == b.late;
}

template <typename Item, typename Key>
bool sameList(const std::vector<Item>& a, const std::vector<Item>& b, Key key) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [&](const Item& one, const Item& other) { return key(one) == key(other); });
}

class Comparison {
 public:
  Comparison(const WorkflowStep& before, const WorkflowStep& after) : m_before(before), m_after(after) {
    m_found.step = after.id;
    m_found.title = after.title;
    words();
    means();
    if (!same(before.work, after.work)) {
      tell(Message("renewal.time").with("before", stretch(before.work)).with("after", stretch(after.work)));
    }
    waits();
    if (before.needs != after.needs || before.makes != after.makes || before.ends != after.ends) {
      tell(Message("renewal.facts"));
      m_found.contradicts = m_found.contradicts || before.makes != after.makes || before.ends != after.ends;
    }
  }

  StepDifference take() { return std::move(m_found); }

 private:
  void tell(Message message) { m_found.what.push_back(std::move(message)); }

  void words() {
    if (m_before.title != m_after.title) tell(Message("renewal.title").with("before", m_before.title));
    const bool how = m_before.sentences != m_after.sentences || m_before.good != m_after.good ||
                     m_before.trap != m_after.trap || m_before.act != m_after.act || m_before.up != m_after.up ||
                     m_before.hands != m_after.hands;
    if (how) tell(Message("renewal.how"));
    if (m_before.cautions != m_after.cautions) tell(Message("renewal.caution"));
    const auto check = [](const WorkflowCheck& one) { return one.ask + '\n' + one.figure + '\n' + one.within; };
    if (!sameList(m_before.checks, m_after.checks, check)) tell(Message("renewal.checks"));
    const auto fault = [](const WorkflowFault& one) {
      return one.id + '\n' + one.seen + '\n' + one.mend + '\n' + base::join(one.ends, " ");
    };
    if (!sameList(m_before.faults, m_after.faults, fault)) tell(Message("renewal.faults"));
  }

  void means() {
    if (m_before.tools != m_after.tools) tell(Message("renewal.tools"));
    const auto material = [](const WorkflowMaterial& one) {
      return one.what + '\n' + (one.amount ? base::shortestNumber(*one.amount) : "") + one.unit;
    };
    if (!sameList(m_before.materials, m_after.materials, material)) tell(Message("renewal.materials"));
    const auto figure = [](const WorkflowFigure& one) { return one.id + '\n' + std::to_string(one.count) + one.from; };
    if (!sameList(m_before.figures, m_after.figures, figure) || m_before.asMade != m_after.asMade)
      tell(Message("renewal.figures"));
  }

  void waits() {
    const auto find = [](const WorkflowStep& step, const std::string& id) {
      const auto found =
          std::find_if(step.waits.begin(), step.waits.end(), [&](const WorkflowWait& wait) { return wait.id == id; });
      return found == step.waits.end() ? nullptr : &*found;
    };
    for (const WorkflowWait& wait : m_after.waits) {
      const WorkflowWait* was = find(m_before, wait.id);
      if (was == nullptr) {
        tell(Message("renewal.wait-comes").with("wait", wait.title));
        m_found.contradicts = true;
        continue;
      }
      if (!same(was->opens, wait.opens)) {
        tell(Message("renewal.wait")
                 .with("wait", wait.title)
                 .with("before", stretch(was->opens))
                 .with("after", stretch(wait.opens)));
      }
      if (was->closes && wait.closes && !same(*was->closes, *wait.closes)) {
        tell(Message("renewal.window")
                 .with("wait", wait.title)
                 .with("before", stretch(*was->closes))
                 .with("after", stretch(*wait.closes)));
      }
      if (was->model != wait.model || was->closes.has_value() != wait.closes.has_value())
        tell(Message("renewal.wait-other").with("wait", wait.title));
      m_found.contradicts = m_found.contradicts || was->makes != wait.makes || was->kind != wait.kind;
    }
    for (const WorkflowWait& wait : m_before.waits) {
      if (find(m_after, wait.id) != nullptr) continue;
      tell(Message("renewal.wait-goes").with("wait", wait.title));
      m_found.contradicts = true;
    }
  }

  const WorkflowStep& m_before;
  const WorkflowStep& m_after;
  StepDifference m_found;
};

}  // namespace

std::vector<StepDifference> renewalOf(const Workflow& before, const Workflow& after) {
  std::vector<StepDifference> differences;
  for (const WorkflowStep& step : after.steps) {
    const WorkflowStep* was = before.find(step.id);
    if (was == nullptr) {
      differences.push_back({StepChange::Comes, step.id, step.title, {}, false});
      continue;
    }
    StepDifference difference = Comparison(*was, step).take();
    if (!difference.what.empty() || difference.contradicts) differences.push_back(std::move(difference));
  }
  for (const WorkflowStep& step : before.steps) {
    if (after.find(step.id) == nullptr) differences.push_back({StepChange::Goes, step.id, step.title, {}, true});
  }
  return differences;
}

}  // namespace core::workflow
