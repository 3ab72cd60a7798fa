#include "core/workflow/schedule.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <unordered_map>

#include "core/workflow/fast_clock.h"

namespace core::workflow {
namespace {

using craft::Way;

// How a plan is chosen: steps are alike in haste where the work and waits that hang on them differ by less than this.
struct Manner {
  double haste = 0;          // minutes
  bool knifeIsClean = true;  // taking up a knife is no change of hands
};

constexpr Manner kManners[] = {{FastClock::kNever, true},
                               {FastClock::kNever, false},
                               {24 * 60, true},
                               {24 * 60, false},
                               {4 * 60, true},
                               {60, true},
                               {1, true}};
// So long, in minutes, hands wait for the others of an act where there is nothing else to do.
constexpr double kSoon = 60;
// With more steps than this only the first manner is tried.
constexpr std::size_t kMostToCompare = 400;

// Which steps a step comes before, one bit each.
class Reach {
 public:
  explicit Reach(const Workflow& workflow) : m_words((workflow.steps.size() + 63) / 64) {
    m_bits.assign(workflow.steps.size() * m_words, 0);
  }
  void add(std::size_t step, std::size_t earlier) {
    for (std::size_t i = 0; i < m_words; ++i) m_bits[step * m_words + i] |= m_bits[earlier * m_words + i];
    m_bits[step * m_words + earlier / 64] |= std::uint64_t{1} << (earlier % 64);
  }
  bool isBefore(std::size_t earlier, std::size_t step) const {
    return ((m_bits[step * m_words + earlier / 64] >> (earlier % 64)) & 1U) != 0;
  }

 private:
  std::size_t m_words;
  std::vector<std::uint64_t> m_bits;
};

// What all manners have in common.
struct Frame {
  const Workflow& workflow;
  const std::vector<DraftStep>& drafts;
  Agenda agenda;
  std::vector<std::size_t> sorted;              // each step after those before it
  std::vector<double> tail;                     // minutes of work and waiting that hang on a step, itself included
  Reach reach;                                  // only where a tool is set
  std::vector<std::size_t> setting;             // the steps that set a tool
  std::vector<std::vector<std::size_t>> users;  // of each step that sets a tool, those that use it
  std::unordered_map<std::string, std::vector<std::size_t>> groups;

  Frame(const Workflow& flow, const std::vector<DraftStep>& steps)
      : workflow(flow), drafts(steps), agenda(flow), tail(flow.steps.size(), 0), reach(flow), users(flow.steps.size()) {
    sort();
    measureTails();
    findSettings();
    for (std::size_t i = 0; i < drafts.size(); ++i) {
      if (const std::string& group = groupOf(i); !group.empty()) groups[group].push_back(i);
    }
  }

  // The short way gathers more, and every act of the other way lies within one of its turns.
  const std::string& groupOf(std::size_t step) const {
    const DraftStep& draft = drafts[step];
    const std::string& brief = draft.group[static_cast<std::size_t>(Way::Short)];
    return brief.empty() ? draft.group[static_cast<std::size_t>(Way::Every)] : brief;
  }

 private:
  void sort() {
    std::vector<std::size_t> waitsFor(workflow.steps.size());
    std::vector<std::vector<std::size_t>> after(workflow.steps.size());
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      waitsFor[i] = workflow.steps[i].before.size();
      for (const std::size_t earlier : workflow.steps[i].before) after[earlier].push_back(i);
      if (waitsFor[i] == 0) sorted.push_back(i);
    }
    for (std::size_t at = 0; at < sorted.size(); ++at) {
      for (const std::size_t later : after[sorted[at]]) {
        if (--waitsFor[later] == 0) sorted.push_back(later);
      }
    }
  }

  void measureTails() {
    for (auto i = sorted.rbegin(); i != sorted.rend(); ++i) {
      const WorkflowStep& step = workflow.steps[*i];
      tail[*i] += step.work.likely.inMinutes();
      for (const std::size_t earlier : step.before) {
        double wait = 0;
        for (const WorkflowWait& one : workflow.steps[earlier].waits) {
          if (std::find(step.needs.begin(), step.needs.end(), one.makes) != step.needs.end()) {
            wait = std::max(wait, one.opens.likely.inMinutes());
          }
        }
        tail[earlier] = std::max(tail[earlier], tail[*i] + wait);
      }
    }
  }

  void findSettings() {
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      if (workflow.steps[i].setup) setting.push_back(i);
    }
    if (setting.empty()) return;
    for (const std::size_t i : sorted) {
      for (const std::size_t earlier : workflow.steps[i].before) reach.add(i, earlier);
    }
    for (const std::size_t one : setting) {
      std::set<std::size_t> using_;
      for (const std::string& fact : workflow.steps[one].makes) {
        for (const std::size_t user : workflow.needing(fact)) {
          if (user != one) using_.insert(user);
        }
      }
      users[one].assign(using_.begin(), using_.end());
    }
  }
};

// One plan: everything worked to the end in one manner.
class Planner : FastClock::Listener {
 public:
  Planner(const Frame& frame, const Manner& manner, std::vector<double> starts)
      : m_frame(frame),
        m_workflow(frame.workflow),
        m_manner(manner),
        m_clock(frame.agenda, std::move(starts), this),
        m_placed(frame.workflow.steps.size(), false) {}

  std::vector<Turn> plan() {
    while (true) {
      if (const auto next = choose()) {
        work(turnFrom(*next));
      } else if (const double at = m_clock.nextMoment(); at < FastClock::kNever) {
        m_clock.passTo(at);
      } else if (const auto any = forced()) {
        work({*any});
      } else {
        break;
      }
    }
    // What waits for a window that was missed has its place in the list all the same.
    for (const std::size_t step : m_frame.sorted) {
      if (!m_placed[step]) m_turns.push_back({{step}, m_clock.now(), m_clock.now(), {}});
    }
    return std::move(m_turns);
  }

  int missed() const { return m_missed; }

 private:
  void misses(double, std::size_t, std::size_t, const WorkflowWait&, std::optional<std::size_t>) override {
    ++m_missed;
  }

  void work(const std::vector<std::size_t>& steps) {
    Turn turn{{}, m_clock.now(), 0, {}};
    for (const std::size_t step : steps) {
      m_clock.work(step);
      // A batch made anew stands in the list where it was made first.
      (m_placed[step] ? m_anew : turn.steps).push_back(step);
      m_placed[step] = true;
    }
    turn.to = m_clock.now();
    m_hands = handsOf(m_workflow, steps);
    m_clock.handsAre(*m_hands);
    m_stage = m_workflow.steps[steps.back()].stage;
    if (turn.steps.empty()) return;
    // What was made anew for it, or stood ready meanwhile.
    turn.anew = std::move(m_anew);
    m_anew.clear();
    m_turns.push_back(std::move(turn));
  }

  // A tool is set otherwise only when all that it was set for is done, and never for a use that another setting of the
  // tool still stands before.
  bool maySet(std::size_t step) const {
    const auto& setup = m_workflow.steps[step].setup;
    if (!setup) return true;
    for (const std::size_t other : m_frame.setting) {
      const auto& otherSetup = m_workflow.steps[other].setup;
      if (other == step || otherSetup->tool != setup->tool || otherSetup->to == setup->to) continue;
      if (m_clock.isStarted(other)) {
        const bool unused = std::any_of(m_frame.users[other].begin(), m_frame.users[other].end(),
                                        [&](std::size_t user) { return !m_clock.isStarted(user); });
        if (unused) return false;
        continue;
      }
      for (const std::size_t user : m_frame.users[step]) {
        if (m_frame.reach.isBefore(other, user)) return false;
      }
    }
    return true;
  }

  // A look at the artwork may end the job: nothing is made ready before the piece itself is begun.
  bool isTooSoon(std::size_t step) const {
    return m_turns.empty() && m_workflow.steps[step].ofShop &&
           std::any_of(m_clock.ready().begin(), m_clock.ready().end(),
                       [&](std::size_t other) { return !m_workflow.steps[other].ofShop && m_clock.canStart(other); });
  }

  bool mayStart(std::size_t step) const {
    return m_clock.canStart(step) && !isTooSoon(step) && maySet(step) && !m_clock.wouldBreak({step});
  }

  int handsClass(craft::Hands hands) const {
    const bool clean = hands == craft::Hands::Blade && m_manner.knifeIsClean;
    return static_cast<int>(clean ? craft::Hands::Clean : hands);
  }

  // Lower is better.
  auto rankOf(std::size_t step) const {
    const WorkflowStep& one = m_workflow.steps[step];
    const bool hasHaste = m_manner.haste < FastClock::kNever;
    const double haste = hasHaste ? -std::floor(m_frame.tail[step] / m_manner.haste) : 0;
    const bool otherHands = m_hands && handsClass(*m_hands) != handsClass(one.hands);
    const bool otherTool = m_hands && *m_hands != one.hands;
    return std::tuple(m_clock.closingOf(step), !goesOn(step), haste, otherHands, otherTool, m_stage != one.stage, step);
  }

  // Returns whether it goes on with what the last turn did to the same thing, by the same technique: what is begun on a
  // thing is brought to where it may be left.
  bool goesOn(std::size_t step) const {
    if (m_turns.empty()) return false;
    const WorkflowStep& one = m_workflow.steps[step];
    return std::any_of(m_turns.back().steps.begin(), m_turns.back().steps.end(), [&](std::size_t before) {
      return m_workflow.steps[before].technique == one.technique &&
             std::find(one.before.begin(), one.before.end(), before) != one.before.end();
    });
  }

  // Returns whether others of its act stand ready but for a wait that runs: what they wait for will be over soon, and
  // before the step's own window closes; then all are worked in one go.
  bool isFollowed(std::size_t step) const {
    const double latest = std::min(m_clock.now() + kSoon, m_clock.closingOf(step));
    const std::string& group = m_frame.groupOf(step);
    if (group.empty()) return false;
    const std::vector<std::size_t>& members = m_frame.groups.at(group);
    return std::any_of(members.begin(), members.end(), [&](std::size_t member) {
      if (!m_clock.ready().contains(member)) return false;
      const double opens = m_clock.opensAt(member);
      return opens > m_clock.now() && opens <= latest;
    });
  }

  std::optional<std::size_t> choose() const {
    std::optional<std::size_t> best;
    for (const std::size_t step : m_clock.ready()) {
      if (!mayStart(step) || isFollowed(step)) continue;
      if (!best || rankOf(step) < rankOf(*best)) best = step;
    }
    return best;
  }

  // Where only the care for windows and set-ups stands in the way, and waiting would change nothing.
  // A window is missed rather than a tool used at another setting.
  std::optional<std::size_t> forced() const {
    std::optional<std::size_t> any;
    for (const std::size_t step : m_clock.ready()) {
      if (!m_clock.canStart(step)) continue;
      if (maySet(step)) return step;
      if (!any) any = step;
    }
    return any;
  }

  // What is left to do of an act's steps for the thing of a step, set-ups apart, which may serve other things as well.
  std::vector<int> leftFor(std::size_t step) const {
    std::vector<int> left;
    for (const std::size_t member : m_frame.groups.at(m_frame.groupOf(step))) {
      const WorkflowStep& one = m_workflow.steps[member];
      if (one.thing != m_workflow.steps[step].thing || m_clock.isStarted(member) || one.setup) continue;
      left.push_back(m_frame.drafts[member].stepOrder);
    }
    return left;
  }

  // The chosen step and those that may be worked together with it now: the whole turn of each thing or none of it, and
  // only of things of which the same is left to do: nothing is finished for one and begun for the next in one act.
  std::vector<std::size_t> turnFrom(std::size_t step) const {
    const std::string& group = m_frame.groupOf(step);
    if (group.empty()) return {step};
    std::vector<std::size_t> turn;
    const std::vector<std::size_t>& members = m_frame.groups.at(group);
    const std::vector<int> wanted = leftFor(step);
    std::size_t at = 0;
    while (at < members.size()) {
      std::size_t end = at;
      std::vector<std::size_t> with = turn;
      std::vector<int> left;
      bool whole = true;
      const std::string& thing = m_workflow.steps[members[at]].thing;
      for (; end < members.size() && m_workflow.steps[members[end]].thing == thing; ++end) {
        const std::size_t member = members[end];
        if (m_clock.isStarted(member)) continue;
        whole = whole && m_clock.canFollow(member, with) && maySet(member);
        with.push_back(member);
        if (!m_workflow.steps[member].setup) left.push_back(m_frame.drafts[member].stepOrder);
      }
      if (whole && left == wanted && with.size() > turn.size() && !m_clock.wouldBreak(with)) turn = std::move(with);
      at = end;
    }
    return std::find(turn.begin(), turn.end(), step) != turn.end() ? turn : std::vector<std::size_t>{step};
  }

  const Frame& m_frame;
  const Workflow& m_workflow;
  const Manner m_manner;
  FastClock m_clock;
  std::optional<craft::Hands> m_hands;
  craft::Stage m_stage = craft::Stage::None;
  std::vector<Turn> m_turns;
  std::vector<bool> m_placed;       // which steps have their turn
  std::vector<std::size_t> m_anew;  // worked again since the last turn
  int m_missed = 0;
};

// A plan and what it is judged by; less is better.
struct Judged {
  std::vector<Turn> turns;
  int missed = 0;
  double end = 0;   // minutes
  int changes = 0;  // of hands and of settings
  std::size_t acts = 0;
};

Judged judged(const Frame& frame, std::vector<Turn> turns, int missed) {
  Judged plan;
  const Acts acts = actsOf(frame.workflow, frame.drafts, turns);
  Settings settings;
  std::optional<craft::Hands> hands;
  for (const Act& act : acts.brief) {
    const craft::Hands now = handsOf(frame.workflow, act.steps);
    if (hands && *hands != now) ++plan.changes;
    hands = now;
    for (const std::size_t step : act.steps) plan.changes += settings.sets(frame.workflow.steps[step]) ? 1 : 0;
  }
  plan.missed = missed;
  plan.end = turns.empty() ? 0 : turns.back().to;
  plan.acts = acts.brief.size();
  plan.turns = std::move(turns);
  return plan;
}

// The best of the plans: none ends sooner by more than a hundredth, and of those none asks for fewer changes.
Judged bestOf(std::vector<Judged> plans) {
  constexpr double kAlike = 1.01;
  const int missed = std::min_element(plans.begin(), plans.end(), [](const Judged& a, const Judged& b) {
                       return a.missed < b.missed;
                     })->missed;
  std::erase_if(plans, [&](const Judged& plan) { return plan.missed > missed; });
  const double soonest =
      std::min_element(plans.begin(), plans.end(), [](const Judged& a, const Judged& b) { return a.end < b.end; })->end;
  std::erase_if(plans, [&](const Judged& plan) { return plan.end > soonest * kAlike; });
  return *std::min_element(plans.begin(), plans.end(), [](const Judged& a, const Judged& b) {
    return std::tie(a.changes, a.acts, a.end) < std::tie(b.changes, b.acts, b.end);
  });
}

}  // namespace

std::vector<Turn> turnsOf(const Workflow& workflow, const std::vector<DraftStep>& drafts) {
  const Frame frame(workflow, drafts);
  std::vector<Judged> plans;
  const auto tryOne = [&](const Manner& manner, const std::vector<double>& plan) {
    Planner planner(frame, manner, plan);
    plans.push_back(judged(frame, planner.plan(), planner.missed()));
    std::vector<double> starts(workflow.steps.size(), 0);
    for (const Turn& turn : plans.back().turns) {
      for (const std::size_t step : turn.steps) starts[step] = turn.from;
    }
    return starts;
  };
  const bool prepares =
      std::any_of(workflow.steps.begin(), workflow.steps.end(), [](const WorkflowStep& step) { return step.ofShop; });
  for (const Manner& manner : kManners) {
    const std::vector<double> starts = tryOne(manner, {});
    // When a preparation is wanted is known once there is a plan.
    if (prepares) tryOne(manner, starts);
    if (workflow.steps.size() > kMostToCompare) break;
  }
  return bestOf(std::move(plans)).turns;
}

}  // namespace core::workflow
