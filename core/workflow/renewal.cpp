#include "core/workflow/renewal.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace core::workflow {
namespace {

using base::Message;

base::Stretch stretch(const units::Span& span) {
  return {span.early.inMilliseconds(), span.likely.inMilliseconds(), span.late.inMilliseconds()};
}

// What is told where one member of a step or a wait is another.
template <typename Whole>
struct Told {
  bool (*same)(const Whole&, const Whole&);
  const char* message;       // kAside: nothing
  bool contradicts = false;  // whoever did the step did something else
};

template <typename Whole, auto Member>
bool sameMember(const Whole& before, const Whole& after) {
  return before.*Member == after.*Member;
}

template <auto Member>
constexpr Told<WorkflowStep> step(const char* message, bool contradicts = false) {
  return {&sameMember<WorkflowStep, Member>, message, contradicts};
}

template <auto Member>
constexpr Told<WorkflowWait> wait(const char* message, bool contradicts = false) {
  return {&sameMember<WorkflowWait, Member>, message, contradicts};
}

constexpr bool kContradicts = true;
// What makes it the same step or wait, or is told by a walk of its own.
constexpr const char* kAside = "";

constexpr Told<WorkflowStep> kWaits = {nullptr, kAside};

using S = WorkflowStep;
constexpr std::array kStep = {
    step<&S::id>(kAside),
    step<&S::technique>(kAside),
    step<&S::thing>(kAside),
    step<&S::thingName>(kAside),  // the program's own word
    step<&S::before>(kAside),     // what the facts come to
    step<&S::title>("renewal.title"),
    step<&S::techniqueTitle>("renewal.called"),
    step<&S::sentences>("renewal.how"),
    step<&S::good>("renewal.how"),
    step<&S::trap>("renewal.how"),
    step<&S::act>("renewal.how"),
    step<&S::up>("renewal.how"),
    step<&S::hands>("renewal.how"),
    step<&S::cautions>("renewal.caution"),
    step<&S::checks>("renewal.checks"),
    step<&S::faults>("renewal.faults"),
    step<&S::tools>("renewal.tools"),
    step<&S::materials>("renewal.materials"),
    step<&S::figures>("renewal.figures"),
    step<&S::asMade>("renewal.figures"),
    step<&S::work>("renewal.time"),
    step<&S::workSource>("renewal.source"),
    step<&S::uninterruptible>("renewal.left"),
    step<&S::resource>("renewal.resource"),
    step<&S::ofShop>("renewal.of-shop", kContradicts),
    step<&S::keeps>("renewal.keeps"),
    step<&S::keepsSource>("renewal.source"),
    step<&S::reversal>("renewal.reversal"),
    kWaits,
    step<&S::needs>("renewal.facts"),
    step<&S::makes>("renewal.facts", kContradicts),
    step<&S::ends>("renewal.facts", kContradicts),
};

using W = WorkflowWait;
constexpr std::array kWait = {
    wait<&W::id>(kAside),
    wait<&W::title>("renewal.wait-called"),
    wait<&W::kind>("renewal.wait-means", kContradicts),
    wait<&W::makes>("renewal.wait-means", kContradicts),
    wait<&W::follows>("renewal.wait-means", kContradicts),
    wait<&W::opens>("renewal.wait"),
    wait<&W::closes>("renewal.window"),
    wait<&W::model>("renewal.wait-other"),
    wait<&W::reference>("renewal.wait-room"),
    wait<&W::attended>("renewal.wait-attended"),
    wait<&W::test>("renewal.wait-test"),
    wait<&W::answers>("renewal.wait-test"),
    wait<&W::source>("renewal.wait-source"),
    wait<&W::missedSay>("renewal.wait-missed"),
    wait<&W::missedEnds>("renewal.wait-missed", kContradicts),
};

// These two will not compile where a member comes or goes; the tables above then want the same.
[[maybe_unused]] constexpr std::size_t membersOf(const WorkflowStep& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18, a19,
                                a20, a21, a22, a23, a24, a25, a26, a27, a28, a29, a30, a31, a32] = whole;
  return 32;
}
[[maybe_unused]] constexpr std::size_t membersOf(const WorkflowWait& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15] = whole;
  return 15;
}
static_assert(kStep.size() == 32 && kWait.size() == 15, "every member is compared or set aside here");

const WorkflowWait* find(const WorkflowStep& whole, const std::string& id) {
  const auto found =
      std::find_if(whole.waits.begin(), whole.waits.end(), [&](const WorkflowWait& one) { return one.id == id; });
  return found == whole.waits.end() ? nullptr : &*found;
}

class Comparison {
 public:
  Comparison(const WorkflowStep& before, const WorkflowStep& after) : m_before(before), m_after(after) {
    m_found.step = after.id;
    m_found.title = after.title;
    for (const auto& member : kStep) {
      if (*member.message == 0 || member.same(before, after)) continue;
      Message message(member.message);
      if (message.id == "renewal.title") message = Message(member.message).with("before", before.title);
      if (message.id == "renewal.time") {
        message = Message(member.message).with("before", stretch(before.work)).with("after", stretch(after.work));
      }
      tell(std::move(message), member.contradicts);
    }
    waits();
  }

  StepDifference take() { return std::move(m_found); }

 private:
  // Once, whatever number of members says it.
  void tell(Message message, bool contradicts) {
    m_found.contradicts = m_found.contradicts || contradicts;
    if (std::find(m_found.what.begin(), m_found.what.end(), message) == m_found.what.end()) {
      m_found.what.push_back(std::move(message));
    }
  }

  void waits() {
    for (const WorkflowWait& one : m_after.waits) {
      if (const WorkflowWait* was = find(m_before, one.id)) {
        compare(*was, one);
      } else {
        tell(Message("renewal.wait-comes").with("wait", one.title), kContradicts);
      }
    }
    for (const WorkflowWait& one : m_before.waits) {
      if (find(m_after, one.id) == nullptr) tell(Message("renewal.wait-goes").with("wait", one.title), kContradicts);
    }
  }

  void compare(const WorkflowWait& was, const WorkflowWait& is) {
    for (const auto& member : kWait) {
      if (*member.message == 0 || member.same(was, is)) continue;
      const std::string id = member.message;
      if (id == "renewal.wait") {
        tell(spans(id, is.title, was.opens, is.opens), member.contradicts);
      } else if (id == "renewal.window" && was.closes && is.closes) {
        tell(spans(id, is.title, *was.closes, *is.closes), member.contradicts);
      } else {
        // A window that comes or goes is another wait, not other times.
        const std::string said = id == "renewal.window" ? "renewal.wait-other" : id;
        tell(Message(said).with("wait", is.title), member.contradicts);
      }
    }
  }

  static Message spans(const std::string& id, const std::string& title, const units::Span& was, const units::Span& is) {
    return Message(id).with("wait", title).with("before", stretch(was)).with("after", stretch(is));
  }

  const WorkflowStep& m_before;
  const WorkflowStep& m_after;
  StepDifference m_found;
};

}  // namespace

std::vector<StepDifference> renewalOf(const Workflow& before, const Workflow& after) {
  std::vector<StepDifference> differences;
  for (const WorkflowStep& one : after.steps) {
    const WorkflowStep* was = before.find(one.id);
    if (was == nullptr) {
      differences.push_back({StepChange::Comes, one.id, one.title, {}, false});
      continue;
    }
    StepDifference difference = Comparison(*was, one).take();
    if (!difference.what.empty() || difference.contradicts) differences.push_back(std::move(difference));
  }
  for (const WorkflowStep& one : before.steps) {
    if (after.find(one.id) == nullptr) differences.push_back({StepChange::Goes, one.id, one.title, {}, true});
  }
  return differences;
}

}  // namespace core::workflow
