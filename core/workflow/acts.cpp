#include "core/workflow/acts.h"

#include <algorithm>
#include <cctype>
#include <numeric>
#include <set>
#include <utility>

#include "core/base/text.h"
#include "core/craft/reading.h"
#include "core/workflow/sense.h"

namespace core::workflow {
namespace {

using craft::Hands;
using craft::Way;

// As many kinds of steps as can be held in the head at once.
constexpr std::size_t kMostKinds = 6;

// Clean hands take up a knife or a rule without washing.
int washOf(Hands hands) {
  switch (hands) {
    case Hands::Clean:
    case Hands::Blade: return 0;
    case Hands::Paste: return 1;
    case Hands::Paint: return 2;
    case Hands::Leaf: return 3;
  }
  return 0;
}

// "inner" for "inner.top" and "inner.corner.tl", "field" for "field#2".
std::string ownThing(const std::string& thing) { return thing.substr(0, thing.find_first_of(".#")); }

std::set<std::string> thingsOf(const Workflow& workflow, const std::vector<std::size_t>& steps) {
  std::set<std::string> things;
  for (const std::size_t step : steps) {
    const std::string thing = ownThing(workflow.steps[step].thing);
    if (!thing.empty()) things.insert(thing);
  }
  return things;
}

bool makes(const WorkflowStep& step, const WorkflowStep& needing, bool (*which)(const WorkflowWait&)) {
  return std::any_of(step.waits.begin(), step.waits.end(), [&](const WorkflowWait& wait) {
    return which(wait) && std::find(needing.needs.begin(), needing.needs.end(), wait.makes) != needing.needs.end();
  });
}

double minutesOf(const Workflow& workflow, const std::vector<std::size_t>& steps) {
  double minutes = 0;
  for (const std::size_t step : steps) minutes += workflow.steps[step].work.likely.inMinutes();
  return minutes;
}

// Puts turns together that a hand works without a stop.
class Stretches {
 public:
  Stretches(const Workflow& workflow, const std::vector<DraftStep>& drafts, const Sense& sense)
      : m_workflow(workflow), m_drafts(drafts), m_sense(sense) {}

  struct Stretch {
    Turn turn;
    std::vector<const Turn*> turns;  // that it is made of
  };

  std::vector<Stretch> of(const std::vector<Turn>& turns) {
    std::vector<Stretch> stretches;
    for (std::size_t at = 0; at < turns.size();) {
      Stretch stretch{turns[at], {&turns[at]}};
      ++at;
      while (const std::size_t more = goingOn(stretch.turn, turns, at)) {
        for (const std::size_t end = at + more; at < end; ++at) {
          add(stretch.turn, turns[at]);
          stretch.turns.push_back(&turns[at]);
        }
      }
      stretches.push_back(std::move(stretch));
    }
    return stretches;
  }

 private:
  static void add(Turn& to, const Turn& turn) {
    to.steps.insert(to.steps.end(), turn.steps.begin(), turn.steps.end());
    to.to = turn.to;
    to.anew.insert(to.anew.end(), turn.anew.begin(), turn.anew.end());
  }

  // How many of the turns from `at` on go on with what is before, so that all together reads in one sense: what is
  // begun for one piece may be done for the others in the turns after it.
  std::size_t goingOn(Turn before, const std::vector<Turn>& turns, std::size_t at) const {
    for (std::size_t end = at; end < turns.size() && goesOn(before, turns[end]); ++end) {
      add(before, turns[end]);
      if (m_sense.isOne(before.steps)) return end + 1 - at;
    }
    return 0;
  }

  bool goesOn(const Turn& before, const Turn& turn) const {
    constexpr double kAtOnce = 1e-6;
    const WorkflowStep& last = m_workflow.steps[before.steps.back()];
    const WorkflowStep& first = m_workflow.steps[turn.steps.front()];
    if (last.stage == craft::Stage::None || last.stage != first.stage) return false;
    if (last.ofShop != first.ofShop || (last.ofShop && last.technique != first.technique)) return false;
    if (turn.from - before.to > kAtOnce) return false;
    // An act may begin with clean hands and end with others: within it nothing has to be washed off.
    const int had = washOf(handsOf(m_workflow, before.steps));
    if (had != 0 && had != washOf(handsOf(m_workflow, turn.steps))) return false;
    if (kindsOf(before.steps, turn.steps) > kMostKinds) return false;
    return worksTheSame(before.steps, turn.steps) && !changesPiece(before.steps, turn.steps) &&
           !setsOtherwise(before.steps, turn.steps) && !isParted(before.steps, turn.steps);
  }

  // Of how many kinds the steps are, those for other things not counted again.
  std::size_t kindsOf(const std::vector<std::size_t>& before, const std::vector<std::size_t>& turn) const {
    std::set<std::string> kinds;
    for (const std::vector<std::size_t>* steps : {&before, &turn}) {
      for (const std::size_t step : *steps) {
        kinds.insert(kindOfStep(m_workflow.steps[step].id));
      }
    }
    return kinds.size();
  }

  // What is done for the job as a whole goes with anything; what is done for one thing goes with what is done for it
  // and its like. What is done for more things is an act of its own: its title says all.
  bool worksTheSame(const std::vector<std::size_t>& before, const std::vector<std::size_t>& turn) const {
    const std::set<std::string> had = thingsOf(m_workflow, before);
    const std::set<std::string> has = thingsOf(m_workflow, turn);
    if (had.empty() || has.empty()) return true;
    return std::includes(had.begin(), had.end(), has.begin(), has.end());
  }

  // What is pasted and pressed piece by piece is told done piece by piece, or the first would be waited for from when
  // the last is pressed.
  bool changesPiece(const std::vector<std::size_t>& before, const std::vector<std::size_t>& turn) const {
    const DraftStep& last = m_drafts[before.back()];
    const DraftStep& first = m_drafts[turn.front()];
    const auto byPiece = [](const DraftStep& draft) { return draft.ofOnePiece[0] || draft.ofOnePiece[1]; };
    const bool otherPiece = last.piece != 0 && first.piece != 0 && last.piece != first.piece;
    return otherPiece && (byPiece(last) || byPiece(first));
  }

  // One act has one setting of a tool.
  bool setsOtherwise(const std::vector<std::size_t>& before, const std::vector<std::size_t>& turn) const {
    for (const std::size_t earlier : before) {
      const auto& was = m_workflow.steps[earlier].setup;
      for (const std::size_t later : turn) {
        const auto& is = m_workflow.steps[later].setup;
        if (was && is && was->tool == is->tool && was->to != is->to) return true;
      }
    }
    return false;
  }

  // A wait begun in the one stands before the other, or a window would be open unseen while the other is worked.
  bool isParted(const std::vector<std::size_t>& before, const std::vector<std::size_t>& turn) const {
    for (const std::size_t earlier : before) {
      const WorkflowStep& one = m_workflow.steps[earlier];
      for (const WorkflowWait& wait : one.waits) {
        // A wait counts from the press that ends the act: other work does not stand between.
        const bool otherWork = m_workflow.steps[turn.front()].technique != one.technique;
        if (!wait.closes && otherWork) return true;
        if (!wait.closes) continue;
        const bool used = std::any_of(before.begin(), before.end(), [&](std::size_t other) {
          const auto& needs = m_workflow.steps[other].needs;
          return std::find(needs.begin(), needs.end(), wait.makes) != needs.end();
        });
        if (!used) return true;
      }
      for (const std::size_t later : turn) {
        if (makes(one, m_workflow.steps[later], [](const WorkflowWait&) { return true; })) return true;
      }
    }
    return false;
  }

  const Workflow& m_workflow;
  const std::vector<DraftStep>& m_drafts;
  const Sense& m_sense;
};

const std::string& groupOf(const DraftStep& draft, Way way) { return draft.group[static_cast<std::size_t>(way)]; }

// A turn taken apart into what is gathered in the way of every act.
std::vector<std::vector<std::size_t>> piecesOf(const std::vector<DraftStep>& drafts, const Turn& turn) {
  std::vector<std::vector<std::size_t>> pieces;
  for (const std::size_t step : turn.steps) {
    const std::string& group = groupOf(drafts[step], Way::Every);
    if (!pieces.empty() && !group.empty() && groupOf(drafts[pieces.back().back()], Way::Every) == group) {
      pieces.back().push_back(step);
    } else {
      pieces.push_back({step});
    }
  }
  return pieces;
}

// The title of what is gathered by one entry of "together", or of one step; `amongOthers`: of the one that stands for
// an act with others in it.
std::string gatheredTitle(const std::vector<DraftStep>& drafts, const std::vector<std::size_t>& steps,
                          bool amongOthers = false) {
  const DraftStep& first = drafts[steps.front()];
  for (const Way way : {Way::Short, Way::Every}) {
    const std::string& group = groupOf(first, way);
    const bool all = !group.empty() && std::all_of(steps.begin(), steps.end(), [&](std::size_t step) {
      return groupOf(drafts[step], way) == group;
    });
    const std::string& title = first.togetherTitle[static_cast<std::size_t>(way)];
    const bool several = steps.size() > 1 || (amongOthers && way == Way::Short);
    if (all && several && !title.empty()) return title;
  }
  // The step that is worked longest, the first of those alike.
  std::size_t longest = steps.front();
  for (const std::size_t step : steps) {
    if (drafts[step].step.work.likely > drafts[longest].step.work.likely) longest = step;
  }
  return drafts[longest].step.title;
}

// Says everything that is worked, where that is no longer than a title may be; otherwise what takes longest, and where
// it is not most of the work, that there is more.
std::string stretchTitle(const Workflow& workflow, const std::vector<DraftStep>& drafts,
                         const std::vector<const Turn*>& turns) {
  constexpr double kMost = 0.6;  // of the minutes
  std::vector<std::string> titles;
  std::vector<double> minutes;
  for (const Turn* turn : turns) {
    const std::string title = gatheredTitle(drafts, turn->steps, turns.size() > 1);
    const auto known = std::find(titles.begin(), titles.end(), title);
    if (known == titles.end()) {
      titles.push_back(title);
      minutes.push_back(minutesOf(workflow, turn->steps));
    } else {
      minutes[static_cast<std::size_t>(known - titles.begin())] += minutesOf(workflow, turn->steps);
    }
  }
  std::string all = titles.front();
  for (std::size_t i = 1; i < titles.size(); ++i) {
    std::string next = titles[i];
    next.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(next.front())));
    all += "; " + next;
  }
  if (titles.size() == 1 || base::countWords(all) <= craft::kTitleWords) return all;
  const auto longest = std::max_element(minutes.begin(), minutes.end());
  const double whole = std::accumulate(minutes.begin(), minutes.end(), 0.0);
  const std::string& title = titles[static_cast<std::size_t>(longest - minutes.begin())];
  return *longest < kMost * whole ? title + "; …" : title;
}

}  // namespace

Hands handsOf(const Workflow& workflow, const std::vector<std::size_t>& steps) {
  Hands hardest = Hands::Clean;
  const auto rank = [](Hands hands) { return washOf(hands) * 2 + (hands == Hands::Blade ? 1 : 0); };
  for (const std::size_t step : steps) {
    if (rank(workflow.steps[step].hands) > rank(hardest)) hardest = workflow.steps[step].hands;
  }
  return hardest;
}

std::string titleOf(const Workflow& workflow, const Act& act, const std::vector<std::size_t>& steps) {
  return steps.size() == 1 ? workflow.steps[steps.front()].title : act.title;
}

bool isNeeded(const WorkflowFigure& figure, units::Marking marking) { return !figure.by || *figure.by == marking; }

std::vector<WorkflowFigure> figuresOf(const Workflow& workflow, const std::vector<std::size_t>& steps,
                                      units::Marking marking) {
  std::vector<WorkflowFigure> figures;
  for (const std::size_t step : steps) {
    for (const WorkflowFigure& figure : workflow.steps[step].figures) {
      if (!isNeeded(figure, marking)) continue;
      const auto known =
          std::find_if(figures.begin(), figures.end(), [&](const WorkflowFigure& one) { return one.id == figure.id; });
      if (known == figures.end()) {
        figures.push_back(figure);
      } else {
        known->count = std::max(known->count, figure.count);
      }
    }
  }
  return figures;
}

bool Settings::sets(const WorkflowStep& step) {
  if (!step.setup) return false;
  const auto [found, isNew] = m_to.try_emplace(step.setup->tool, step.setup->to);
  const bool otherwise = isNew || found->second != step.setup->to;
  found->second = step.setup->to;
  return otherwise;
}

Acts actsOf(const Workflow& workflow, const std::vector<DraftStep>& drafts, const std::vector<Turn>& turns) {
  const Sense sense(drafts);
  Acts acts;
  for (const Turn& turn : turns) {
    std::vector<std::size_t> anew = turn.anew;
    for (const std::vector<std::size_t>& steps : piecesOf(drafts, turn)) {
      acts.every.push_back(
          {steps, gatheredTitle(drafts, steps), workflow.steps[steps.front()].stage, std::exchange(anew, {})});
    }
  }
  for (const Stretches::Stretch& stretch : Stretches(workflow, drafts, sense).of(turns)) {
    const std::vector<std::size_t>& steps = stretch.turn.steps;
    acts.brief.push_back(
        {steps, stretchTitle(workflow, drafts, stretch.turns), workflow.steps[steps.front()].stage, stretch.turn.anew});
  }
  return acts;
}

}  // namespace core::workflow
