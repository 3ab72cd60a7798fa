#include "core/craft/together.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/properties.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

constexpr std::size_t kMostTogether = 20;

class TogetherReader {
 public:
  TogetherReader(const Technique& technique, const Scope& scope, Problems& problems)
      : m_technique(technique), m_scope(scope), m_problems(problems) {}

  Together read(const Node& node) {
    Together together;
    together.pointer = node.pointer;
    ObjectReader object(node, m_problems);
    if (!object.valid()) return together;
    const Node stepsNode = object.required("steps");
    together.steps = readStepIds(stepsNode);
    const Node overNode = object.required("over");
    static const std::vector<std::string> kOver = {"each", "owner", "piece", "job"};
    together.over = static_cast<Together::Over>(base::readChoice(overNode, kOver, m_problems).value_or(0));
    together.way = static_cast<Way>(base::readChoice(object.optional("way"), wayWords(), m_problems).value_or(0));
    together.alike = readAlike(object.optional("alike"));
    const Node title = object.optional("title");
    together.title = readPhrase(title, titleScope(together), kTitleWords, m_problems);
    if (!title && together.over != Together::Over::Each) {
      report(m_problems, node, Message("technique.together-without-title"));
    }
    object.finish();
    if (!together.steps.empty()) check(together, stepsNode, overNode);
    return together;
  }

 private:
  static const std::vector<std::string>& wayWords() {
    static const std::vector<std::string> kWords = {"every", "short"};
    return kWords;
  }

  const Step* find(const std::string& id) const {
    const auto found = std::find_if(m_technique.steps.begin(), m_technique.steps.end(),
                                    [&](const Step& step) { return step.id == id; });
    return found == m_technique.steps.end() ? nullptr : &*found;
  }

  // In the order of the file, each once; empty where something is wrong.
  std::vector<std::string> readStepIds(const Node& node) {
    std::vector<std::string> ids;
    bool wrong = false;
    const auto items = base::readItems(node, m_problems, kMostSteps);
    if (!items) return ids;
    if (items->empty()) report(m_problems, node, Message("technique.empty-list"));
    std::ptrdiff_t last = -1;
    for (const Node& item : *items) {
      const auto id = base::readText(item, m_problems);
      const Step* step = id ? find(*id) : nullptr;
      wrong = wrong || step == nullptr;
      if (id && step == nullptr) {
        report(m_problems, item, Message("technique.together-no-such-step").with("step", *id));
      } else if (step != nullptr) {
        const std::ptrdiff_t place = step - m_technique.steps.data();
        if (place <= last) {
          report(m_problems, item, Message("technique.together-not-in-order").with("step", *id));
          wrong = true;
        }
        last = place;
        ids.push_back(*id);
      }
    }
    return wrong ? std::vector<std::string>() : ids;
  }

  std::vector<std::string> readAlike(const Node& node) {
    std::vector<std::string> names;
    const auto items = base::readItems(node, m_problems, kMostEntries);
    if (!items) return names;
    const std::vector<std::string> known =
        m_scope.kind ? propertiesOf(*m_scope.kind, m_scope.outer) : std::vector<std::string>();
    for (const Node& item : *items) {
      const auto name = base::readText(item, m_problems);
      if (!name) continue;
      if (m_scope.kind && std::find(known.begin(), known.end(), *name) == known.end()) {
        report(m_problems, item,
               Message("technique.together-alike").with("name", *name).with("names", base::join(known, ", ")));
      }
      names.push_back(*name);
    }
    return names;
  }

  // Over all of the job or of a piece the title can speak only of what the things have in common.
  Scope titleScope(const Together& together) const {
    Scope scope = m_scope;
    const bool ofMany = together.over == Together::Over::Job || together.over == Together::Over::Piece;
    if (ofMany && together.alike.empty()) scope.kind = ThingKind::Once;
    return scope;
  }

  void check(const Together& together, const Node& stepsNode, const Node& overNode) {
    const Step& first = *find(together.steps.front());
    if (m_scope.kind && together.over != Together::Over::Each && first.each == ThingKind::Once) {
      report(m_problems, overNode, Message("technique.together-of-nothing"));
    }
    for (const std::string& id : together.steps) {
      const Step& step = *find(id);
      if (step.each != first.each) {
        report(m_problems, stepsNode, Message("technique.together-unlike").with("step", id).with("other", first.id));
      }
      std::set<std::string>& taken = together.way == Way::Every ? m_every : m_short;
      if (!taken.insert(id).second) report(m_problems, stepsNode, Message("technique.together-twice").with("step", id));
      checkWaits(together, step, stepsNode);
    }
  }

  bool isListed(const Together& together, const Step& step) const {
    return std::find(together.steps.begin(), together.steps.end(), step.id) != together.steps.end();
  }

  std::string normal(const FactPattern& pattern, const Step& step) const {
    return normalised(pattern, step.each, outerKind(m_technique));
  }

  bool needs(const Step& step, const std::string& fact) const {
    return std::any_of(step.needs.begin(), step.needs.end(), [&](const Need& need) {
      return std::any_of(need.alternatives.begin(), need.alternatives.end(),
                         [&](const FactPattern& pattern) { return normal(pattern, step) == fact; });
    });
  }

  // A wait of a gathered step may not stand before another of them, and no window may run out while its like is worked.
  void checkWaits(const Together& together, const Step& step, const Node& node) {
    for (const Wait& wait : step.waits) {
      const std::string fact = normal(wait.makes, step);
      bool usedInTurn = false;
      for (const Step& other : m_technique.steps) {
        if (&other == &step || !needs(other, fact)) continue;
        if (!isListed(together, other)) {
          if (wait.closes && !usedInTurn && together.over != Together::Over::Each) {
            report(m_problems, node,
                   Message("technique.together-window")
                       .with("step", step.id)
                       .with("wait", wait.title)
                       .with("other", other.id));
          }
        } else if (wait.opens.late > units::Duration()) {
          report(m_problems, node,
                 Message("technique.together-wait")
                     .with("step", step.id)
                     .with("wait", wait.title)
                     .with("other", other.id));
        } else {
          usedInTurn = true;
        }
      }
    }
  }

  const Technique& m_technique;
  const Scope& m_scope;
  Problems& m_problems;
  std::set<std::string> m_every;
  std::set<std::string> m_short;
};

}  // namespace

Stage readStageWord(const Node& node, Problems& problems) {
  static const std::vector<Stage> every = allStages();
  std::vector<std::string> words;
  for (const Stage stage : every) words.emplace_back(name(stage));
  const auto index = base::readChoice(node, words, problems);
  return index ? every[*index] : Stage::None;
}

std::vector<Together> readTogether(const Node& node, const Technique& technique, const Scope& scope,
                                   Problems& problems) {
  std::vector<Together> together;
  const auto items = base::readItems(node, problems, kMostTogether);
  if (!items) return together;
  TogetherReader reader(technique, scope, problems);
  for (const Node& item : *items) together.push_back(reader.read(item));
  return together;
}

}  // namespace core::craft
