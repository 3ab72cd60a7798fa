#include "core/workflow/shared_settings.h"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <map>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "core/workflow/edges.h"

namespace core::workflow {
namespace {

using Bits = std::vector<std::uint64_t>;

// Settings compared with each other; far more than any job has. Beyond, each is made whenever it is wanted.
constexpr std::size_t kMostCompared = 1'000'000;

bool meet(const Bits& a, const Bits& b) {
  for (std::size_t i = 0; i < a.size(); ++i) {
    if ((a[i] & b[i]) != 0) return true;
  }
  return false;
}

void add(Bits& to, const Bits& more) {
  for (std::size_t i = 0; i < to.size(); ++i) to[i] |= more[i];
}

bool opensWindow(const WorkflowStep& step) {
  return std::any_of(step.waits.begin(), step.waits.end(),
                     [](const WorkflowWait& wait) { return wait.closes.has_value(); });
}

template <typename Visit>
void forEachMade(const WorkflowStep& step, Visit visit) {
  for (const std::string& fact : step.makes) visit(fact);
  for (const WorkflowWait& wait : step.waits) visit(wait.makes);
}

// One setting of a tool, the steps that make it and those that use it.
struct Setting {
  std::size_t setter = 0;  // the step that stays
  Bits members;            // among the steps that set or use any tool
  Bits later;              // of these, what comes after some member
};

class Sharing {
 public:
  explicit Sharing(const std::vector<DraftStep>& drafts) : m_drafts(drafts) {}

  // Returns, for each step left out, the one whose setting it shares; by index.
  std::map<std::size_t, std::size_t> find() {
    std::map<std::size_t, std::size_t> shared;
    const auto edges = edgesOf(m_drafts);
    if (!edges) return shared;
    const std::vector<std::size_t> sorted = sortedBy(*edges);
    if (sorted.size() < m_drafts.size()) return shared;
    findFacts();
    if (!hasAlike()) return shared;
    findMembers(*edges, sorted);
    for (const std::size_t step : sorted) {
      if (!isShareable(step)) continue;
      std::vector<std::size_t>& alike = m_candidates[kindOf(step)];
      const auto with = std::find_if(alike.begin(), alike.end(), [&](std::size_t other) {
        return canStand(m_settings.at(other), m_settings.at(step));
      });
      if (with == alike.end()) {
        alike.push_back(step);
        continue;
      }
      Setting& whole = m_settings.at(*with);
      add(whole.members, m_settings.at(step).members);
      add(whole.later, m_settings.at(step).later);
      m_settings.erase(step);
      m_byTool[this->step(step).setup->tool].erase(step);
      shared[step] = *with;
    }
    return shared;
  }

  std::optional<SettingsClash> clash() {
    const auto edges = edgesOf(m_drafts);
    if (!edges) return std::nullopt;
    const std::vector<std::size_t> sorted = sortedBy(*edges);
    if (sorted.size() < m_drafts.size()) return std::nullopt;
    findFacts();
    findMembers(*edges, sorted);
    for (const auto& [tool, setters] : m_byTool) {
      for (auto one = setters.begin(); one != setters.end(); ++one) {
        for (auto other = std::next(one); other != setters.end(); ++other) {
          if (step(*one).setup->to == step(*other).setup->to) continue;
          if (++m_compared > kMostCompared) return std::nullopt;
          if (const auto between = betweenOf(m_settings.at(*one), m_settings.at(*other))) {
            return SettingsClash{*one, *other, *between};
          }
        }
      }
    }
    return std::nullopt;
  }

 private:
  const WorkflowStep& step(std::size_t index) const { return m_drafts[index].step; }

  void findFacts() {
    for (std::size_t i = 0; i < m_drafts.size(); ++i) {
      forEachMade(step(i), [&](const std::string& fact) { ++m_makers[fact]; });
      for (const WorkflowWait& wait : step(i).waits) {
        if (wait.closes) m_windows.insert(wait.makes);
      }
      for (const std::string& fact : step(i).ends) m_ended.insert(fact);
      for (const std::string& fact : step(i).needs) m_users[fact].push_back(i);
    }
  }

  std::vector<std::size_t> membersOf(std::size_t setter) const {
    std::vector<std::size_t> members = {setter};
    forEachMade(step(setter), [&](const std::string& fact) {
      const auto users = m_users.find(fact);
      if (users != m_users.end()) members.insert(members.end(), users->second.begin(), users->second.end());
    });
    return members;
  }

  void findMembers(const Edges& edges, const std::vector<std::size_t>& sorted) {
    for (std::size_t i = 0; i < m_drafts.size(); ++i) {
      if (!step(i).setup) continue;
      for (const std::size_t member : membersOf(i)) m_bitOf.try_emplace(member, m_bitOf.size());
    }
    const std::size_t words = (m_bitOf.size() + 63) / 64;
    // What comes after each step, found from behind.
    std::vector<Bits> later(m_drafts.size(), Bits(words, 0));
    const auto mark = [&](Bits& bits, std::size_t member) {
      const std::size_t bit = m_bitOf.at(member);
      bits[bit / 64] |= std::uint64_t{1} << (bit % 64);
    };
    for (auto i = sorted.rbegin(); i != sorted.rend(); ++i) {
      for (const std::size_t earlier : edges[*i]) {
        add(later[earlier], later[*i]);
        if (m_bitOf.contains(*i)) mark(later[earlier], *i);
      }
    }
    for (std::size_t i = 0; i < m_drafts.size(); ++i) {
      if (!step(i).setup) continue;
      Setting setting{i, Bits(words, 0), Bits(words, 0)};
      for (const std::size_t member : membersOf(i)) {
        mark(setting.members, member);
        add(setting.later, later[member]);
      }
      m_settings.emplace(i, std::move(setting));
      m_byTool[step(i).setup->tool].insert(i);
    }
  }

  // The step that uses one setting and comes after something of the other, of which something comes after the first;
  // nothing where one of them can be used up before the other is made.
  std::optional<std::size_t> betweenOf(const Setting& one, const Setting& other) const {
    if (!meet(one.later, other.members)) return std::nullopt;
    for (const std::size_t member : membersOf(one.setter)) {
      const std::size_t bit = m_bitOf.at(member);
      const std::uint64_t mask = std::uint64_t{1} << (bit % 64);
      if ((other.later[bit / 64] & mask) != 0 && member != one.setter) return member;
    }
    // Only the setting itself comes after the other's steps: then it is the other that is used too late.
    if (!meet(other.later, one.members)) return std::nullopt;
    for (const std::size_t member : membersOf(other.setter)) {
      const std::size_t bit = m_bitOf.at(member);
      if ((one.later[bit / 64] & (std::uint64_t{1} << (bit % 64))) != 0) return member;
    }
    return std::nullopt;
  }

  bool isShareable(std::size_t index) const {
    const WorkflowStep& one = step(index);
    if (!one.setup || one.setup->afresh || one.ofShop || !one.ends.empty() || !one.asMade.empty()) return false;
    if (one.makes.empty() || opensWindow(one)) return false;
    bool isOwn = true;
    forEachMade(one,
                [&](const std::string& fact) { isOwn = isOwn && m_makers.at(fact) == 1 && !m_ended.contains(fact); });
    return isOwn && std::none_of(one.needs.begin(), one.needs.end(),
                                 [&](const std::string& fact) { return m_windows.contains(fact); });
  }

  // Equal for steps whose settings are equal: of one technique, and with waits of one of its steps.
  std::string kindOf(std::size_t index) const {
    const WorkflowStep& one = step(index);
    std::string kind = one.technique + '\n' + one.setup->tool + '\n' + one.setup->to + '\n';
    kind += std::to_string(one.makes.size());
    if (!one.waits.empty()) kind += '\n' + std::to_string(m_drafts[index].stepOrder);
    return kind;
  }

  bool hasAlike() const {
    std::unordered_set<std::string> met;
    for (std::size_t i = 0; i < m_drafts.size(); ++i) {
      if (isShareable(i) && !met.insert(kindOf(i)).second) return true;
    }
    return false;
  }

  // Returns whether the tool may stand for both, no other setting of it being wanted between.
  bool canStand(const Setting& one, const Setting& other) {
    Setting both = one;
    add(both.members, other.members);
    add(both.later, other.later);
    const WorkflowSetup& to = *step(one.setter).setup;
    for (const std::size_t index : m_byTool.at(to.tool)) {
      if (step(index).setup->to == to.to) continue;
      if (++m_compared > kMostCompared) return false;
      const Setting& otherwise = m_settings.at(index);
      if (meet(both.later, otherwise.members) && meet(otherwise.later, both.members)) return false;
    }
    return true;
  }

  const std::vector<DraftStep>& m_drafts;
  std::unordered_map<std::string, std::size_t> m_makers;  // how many steps make a fact
  std::unordered_map<std::string, std::vector<std::size_t>> m_users;
  std::unordered_set<std::string> m_windows;  // facts that hold for a while
  std::unordered_set<std::string> m_ended;
  std::map<std::size_t, std::size_t> m_bitOf;  // of the steps that set or use any tool
  std::map<std::size_t, Setting> m_settings;   // by setter
  std::map<std::string, std::set<std::size_t>> m_byTool;
  std::unordered_map<std::string, std::vector<std::size_t>> m_candidates;  // steps whose setting others may share
  std::size_t m_compared = 0;
};

// The facts of the steps left out, by what stands for each.
using Renamed = std::unordered_map<std::string, std::string>;

void rename(std::string& fact, const Renamed& renamed) {
  if (const auto found = renamed.find(fact); found != renamed.end()) fact = found->second;
}

void rename(std::vector<std::string>& facts, const Renamed& renamed) {
  std::vector<std::string> once;
  for (std::string& fact : facts) {
    rename(fact, renamed);
    if (std::find(once.begin(), once.end(), fact) == once.end()) once.push_back(std::move(fact));
  }
  facts = std::move(once);
}

void rename(WorkflowStep& step, const Renamed& renamed) {
  for (auto* facts : {&step.needs, &step.ends}) rename(*facts, renamed);
  for (WorkflowFault& fault : step.faults) {
    rename(fault.ends, renamed);
    for (WorkflowFaultWay& way : fault.ways) rename(way.ends, renamed);
  }
  for (WorkflowWait& wait : step.waits) {
    rename(wait.follows, renamed);
    rename(wait.missedEnds, renamed);
  }
}

// The step that stays serves the other one as well.
void serve(DraftStep& stays, const DraftStep& other) {
  for (const WorkflowMaterial& material : other.step.materials) {
    auto& materials = stays.step.materials;
    const auto known = std::find_if(materials.begin(), materials.end(), [&](const WorkflowMaterial& one) {
      return one.what == material.what && one.unit == material.unit;
    });
    if (known == materials.end()) {
      materials.push_back(material);
    } else if (material.amount) {
      known->amount = std::max(known->amount.value_or(0), *material.amount);
    }
  }
  if (stays.piece == other.piece) return;
  // Like whatever is done once for all pieces.
  stays.piece = 0;
  stays.step.once = true;
  stays.step.thingName = stays.nameInPiece;
}

}  // namespace

std::vector<DraftStep> withSharedSettings(std::vector<DraftStep> drafts) {
  const std::map<std::size_t, std::size_t> shared = Sharing(drafts).find();
  if (shared.empty()) return drafts;
  Renamed renamed;
  std::unordered_map<std::string, const WorkflowStep*> leftOut;  // by the facts they made
  for (const auto& [index, with] : shared) {
    const WorkflowStep& one = drafts[index].step;
    const WorkflowStep& stays = drafts[with].step;
    for (std::size_t i = 0; i < one.makes.size(); ++i) renamed[one.makes[i]] = stays.makes[i];
    for (std::size_t i = 0; i < one.waits.size(); ++i) renamed[one.waits[i].makes] = stays.waits[i].makes;
    forEachMade(one, [&](const std::string& fact) { leftOut[fact] = &one; });
    serve(drafts[with], drafts[index]);
  }
  std::unordered_map<std::string, int> pieces;  // of which the facts of one piece are
  for (const DraftStep& draft : drafts) {
    if (draft.piece > 0) forEachMade(draft.step, [&](const std::string& fact) { pieces[fact] = draft.piece; });
  }
  std::vector<DraftStep> result;
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    if (shared.contains(i)) continue;
    DraftStep draft = drafts[i];
    // What a step left out needed may be of another one.
    std::vector<std::string>& needs = draft.step.needs;
    std::unordered_set<const WorkflowStep*> met;
    for (std::size_t need = 0; need < needs.size(); ++need) {
      const auto found = leftOut.find(needs[need]);
      if (found == leftOut.end() || !met.insert(found->second).second) continue;
      // What is done once for all pieces waits for all of them; its users wait for their own.
      std::copy_if(found->second->needs.begin(), found->second->needs.end(), std::back_inserter(needs),
                   [&](const std::string& fact) {
                     const auto of = pieces.find(fact);
                     return of == pieces.end() || draft.piece == 0 || of->second == draft.piece;
                   });
    }
    rename(draft.step, renamed);
    result.push_back(std::move(draft));
  }
  return result;
}

std::optional<SettingsClash> settingsClash(const std::vector<DraftStep>& drafts) { return Sharing(drafts).clash(); }

bool areSettingsHeld(const Workflow& workflow) {
  std::map<std::string, std::string> standing;  // tool -> what it is set to
  for (const WorkflowStep& step : workflow.steps) {
    for (const std::string& fact : step.needs) {
      for (const std::size_t maker : workflow.making(fact)) {
        const auto& setup = workflow.steps[maker].setup;
        if (setup && standing[setup->tool] != setup->to) return false;
      }
    }
    if (step.setup) standing[step.setup->tool] = step.setup->to;
  }
  return true;
}

}  // namespace core::workflow
