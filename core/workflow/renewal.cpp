#include "core/workflow/renewal.h"

#include <algorithm>
#include <array>
#include <cstddef>

#include "core/base/find.h"
#include "core/craft/fields.h"

namespace core::workflow {
namespace {

using base::Message;

base::Stretch stretch(const units::Span& span) {
  return {span.early.inMilliseconds(), span.likely.inMilliseconds(), span.late.inMilliseconds()};
}

// The message reported where a member filled in from patterns differs; other members are reported by their technique's
// field.
template <typename Whole>
struct Told {
  bool (*same)(const Whole&, const Whole&);
  const char* told;          // kAside: nothing
  bool contradicts = false;  // where the step is done, something else was done
};

template <auto Member>
constexpr Told<StepOfJob> step(const char* told, bool contradicts = false) {
  return {&craft::sameMember<Member, StepOfJob>, told, contradicts};
}
template <auto Member>
constexpr Told<WaitOfJob> wait(const char* told, bool contradicts = false) {
  return {&craft::sameMember<Member, WaitOfJob>, told, contradicts};
}

constexpr bool kContradicts = true;
// Marks members that identify the step or wait, or are compared separately.
constexpr const char* kAside = "";

constexpr Told<StepOfJob> kWaits = {nullptr, kAside};

using S = StepOfJob;
constexpr std::array kStep = {
    step<&S::id>(kAside),
    step<&S::technique>(kAside),
    step<&S::thing>(kAside),
    step<&S::thingName>(kAside),  // the program's own word
    step<&S::ownerName>(kAside),
    step<&S::before>(kAside),  // what the facts come to
    step<&S::techniqueTitle>("renewal.called"),
    step<&S::checks>("renewal.checks"),
    step<&S::faults>("renewal.faults"),
    step<&S::setup>("renewal.figures"),
    step<&S::materials>("renewal.materials"),
    step<&S::figures>("renewal.figures"),
    step<&S::asMade>("renewal.figures"),
    kWaits,
    step<&S::needs>("renewal.facts"),
    step<&S::makes>("renewal.facts", kContradicts),
    step<&S::ends>("renewal.facts", kContradicts),
};

using W = WaitOfJob;
constexpr std::array kWait = {
    wait<&W::id>(kAside),
    wait<&W::makes>("renewal.wait-means", kContradicts),
    wait<&W::follows>("renewal.wait-means", kContradicts),
    wait<&W::missedSay>("renewal.wait-missed"),
    wait<&W::missedEnds>("renewal.wait-missed", kContradicts),
};

// These two do not compile where a member is added or removed; the tables above then need the same change.
[[maybe_unused]] constexpr std::size_t membersOf(const StepOfJob& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17] = whole;
  return 17;
}
[[maybe_unused]] constexpr std::size_t membersOf(const WaitOfJob& whole) {
  [[maybe_unused]] const auto& [a1, a2, a3, a4, a5] = whole;
  return 5;
}
static_assert(kStep.size() == 17 && kWait.size() == 5, "every member is compared or set aside here");

class Comparison {
 public:
  Comparison(const WorkflowStep& before, const WorkflowStep& after) : m_before(before), m_after(after) {
    m_found.step = after.id;
    m_found.title = after.title;
    compareStep(craft::stepFields());
    compareStep(kStep);
    compareStep(craft::techniqueFields());
    waits();
  }

  StepDifference take() { return std::move(m_found); }

 private:
  template <typename Fields>
  void compareStep(const Fields& fields) {
    for (const auto& field : fields) {
      if (*field.told == 0 || field.same(m_before, m_after)) continue;
      Message message(field.told);
      if (message.id == "renewal.title") message = Message(field.told).with("before", m_before.title);
      if (message.id == "renewal.time") {
        message = Message(field.told).with("before", stretch(m_before.work)).with("after", stretch(m_after.work));
      }
      tell(std::move(message), field.contradicts);
    }
  }

  // Reports a message once, however many members give it.
  void tell(Message message, bool contradicts) {
    m_found.contradicts = m_found.contradicts || contradicts;
    if (std::find(m_found.what.begin(), m_found.what.end(), message) == m_found.what.end()) {
      m_found.what.push_back(std::move(message));
    }
  }

  void waits() {
    for (const WorkflowWait& one : m_after.waits) {
      if (const WorkflowWait* was = base::withId(m_before.waits, one.id)) {
        compareWait(craft::waitFields(), *was, one);
        compareWait(kWait, *was, one);
      } else {
        tell(Message("renewal.wait-comes").with("wait", one.title), kContradicts);
      }
    }
    for (const WorkflowWait& one : m_before.waits) {
      if (base::withId(m_after.waits, one.id) == nullptr)
        tell(Message("renewal.wait-goes").with("wait", one.title), kContradicts);
    }
  }

  template <typename Fields>
  void compareWait(const Fields& fields, const WorkflowWait& was, const WorkflowWait& is) {
    for (const auto& field : fields) {
      if (*field.told == 0 || field.same(was, is)) continue;
      const std::string id = field.told;
      if (id == "renewal.wait") {
        tell(spans(id, is.title, was.opens, is.opens), field.contradicts);
      } else if (id == "renewal.window" && was.closes && is.closes) {
        tell(spans(id, is.title, *was.closes, *is.closes), field.contradicts);
      } else {
        // A window that is added or removed makes another wait, not other times.
        const std::string said = id == "renewal.window" ? "renewal.wait-other" : id;
        tell(Message(said).with("wait", is.title), field.contradicts);
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
