#include "core/workflow/sense.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace core::workflow {
namespace {

using Kinds = std::set<std::size_t>;

bool isWithin(const Kinds& some, const Kinds& all) {
  return std::includes(all.begin(), all.end(), some.begin(), some.end());
}

// Numbers what is met, in the order in which it is.
class Numbers {
 public:
  std::size_t of(const std::string& text) { return m_numbers.try_emplace(text, m_numbers.size()).first->second; }

 private:
  std::map<std::string, std::size_t> m_numbers;
};

}  // namespace

std::string kindOfStep(const std::string& stepId) { return stepId.substr(0, stepId.find_first_of("@#")); }

Sense::Sense(const std::vector<DraftStep>& drafts) {
  Numbers kinds;
  Numbers things;
  std::map<std::size_t, std::size_t> firstKind;  // of each thing
  for (const DraftStep& draft : drafts) {
    const WorkflowStep& step = draft.step;
    Part part;
    part.kind = kinds.of(kindOfStep(step.id));
    part.thing = things.of(step.thing);
    part.piece = draft.piece;
    part.ofThing = !step.thing.empty();
    m_parts.push_back(part);
  }
  // Kinds that are done for one thing are kinds of like things.
  std::vector<std::size_t> like(m_parts.size());
  std::iota(like.begin(), like.end(), std::size_t{0});
  const auto rootOf = [&](std::size_t kind) {
    while (like[kind] != kind) kind = like[kind] = like[like[kind]];
    return kind;
  };
  for (const Part& part : m_parts) {
    if (!part.ofThing) continue;
    const auto [first, isNew] = firstKind.try_emplace(part.thing, part.kind);
    if (!isNew) like[rootOf(part.kind)] = rootOf(first->second);
  }
  for (Part& part : m_parts) part.like = rootOf(part.kind);
}

bool Sense::isOne(const std::vector<std::size_t>& steps) const {
  std::map<int, Kinds> ofPiece;
  std::map<std::size_t, Kinds> ofThing;
  std::map<std::size_t, std::size_t> likes;  // by thing
  for (const std::size_t step : steps) {
    const Part& part = m_parts[step];
    if (part.piece > 0) ofPiece[part.piece].insert(part.kind);
    if (!part.ofThing) continue;
    ofThing[part.thing].insert(part.kind);
    likes[part.thing] = part.like;
  }
  for (const auto& [piece, kinds] : ofPiece) {
    if (kinds != ofPiece.begin()->second) return false;
  }
  // Most things have the same kinds, so that few are left to be compared.
  std::map<std::size_t, std::set<Kinds>> unlike;
  for (const auto& [thing, kinds] : ofThing) unlike[likes[thing]].insert(kinds);
  return std::all_of(unlike.begin(), unlike.end(), [](const auto& one) {
    const std::set<Kinds>& sets = one.second;
    return std::all_of(sets.begin(), sets.end(), [&](const Kinds& a) {
      return std::all_of(sets.begin(), sets.end(), [&](const Kinds& b) { return isWithin(a, b) || isWithin(b, a); });
    });
  });
}

}  // namespace core::workflow
