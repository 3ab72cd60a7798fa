#include "core/workflow/pieces.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "core/workflow/fill.h"

namespace core::workflow {
namespace {

// Beyond what any one piece has of things and their parts.
constexpr int kOrderOfPiece = 100'000'000;

bool isOfAll(const DraftStep& draft) { return draft.step.ofShop || draft.step.once; }

class Repeater {
 public:
  Repeater(const std::vector<DraftStep>& drafts, int count, const ThingWords& words) : m_count(count), m_words(words) {
    for (const DraftStep& draft : drafts) {
      if (isOfAll(draft)) continue;
      m_own.insert(draft.step.makes.begin(), draft.step.makes.end());
      for (const WorkflowWait& wait : draft.step.waits) m_own.insert(wait.makes);
    }
    for (const DraftStep& draft : drafts) {
      if (!isOfAll(draft)) continue;
      for (const std::string& fact : draft.step.makes) m_own.erase(fact);
      for (const WorkflowWait& wait : draft.step.waits) m_own.erase(wait.makes);
    }
  }

  DraftStep ofPiece(const DraftStep& one, int piece) const {
    DraftStep draft = one;
    draft.piece = piece;
    draft.nameInPiece = one.step.thingName;
    WorkflowStep& step = draft.step;
    const std::string number = std::to_string(piece);
    if (piece > 1) {
      step.id += '#' + number;
      step.thing += '#' + number;
      draft.thingOrder += piece * kOrderOfPiece;
    }
    step.thingName = step.thingName.empty() ? fill(m_words.piece, {{"number", number}})
                                            : fill(m_words.ofPiece, {{"name", step.thingName}, {"number", number}});
    for (auto* facts : {&step.needs, &step.makes, &step.ends}) rename(*facts, piece);
    for (WorkflowFault& fault : step.faults) {
      rename(fault.ends, piece);
      for (WorkflowFaultWay& way : fault.ways) rename(way.ends, piece);
    }
    for (WorkflowWait& wait : step.waits) {
      const std::string own = wait.id.substr(wait.id.rfind('/'));
      wait.id = step.id + own;
      wait.makes = nameOf(wait.makes, piece);
      wait.follows = nameOf(wait.follows, piece);
      rename(wait.missedEnds, piece);
    }
    // Four strips are laid and pressed wet on one piece before they are on the next; a field in parts is finished,
    // since its mask comes off while it is damp.
    for (std::size_t way = 0; way < std::size(draft.group); ++way) {
      if (draft.ofOnePiece[way] && !draft.group[way].empty()) draft.group[way] += "\n#" + number;
    }
    // Whatever opens a window is worked for one piece at a time, unless its turn uses the window itself.
    const bool opensWindow = std::any_of(step.waits.begin(), step.waits.end(),
                                         [](const WorkflowWait& wait) { return wait.closes.has_value(); });
    if (draft.group[0].empty() && draft.group[1].empty() && !opensWindow) {
      draft.group[0] = "pieces\n" + one.step.id;
      draft.togetherTitle[0] = step.title;
    }
    return draft;
  }

  // Needs and ends what is so of every piece.
  void spread(DraftStep& draft) const {
    for (auto* facts : {&draft.step.needs, &draft.step.ends}) {
      std::vector<std::string> all;
      for (const std::string& fact : *facts) {
        all.push_back(fact);
        for (int piece = 2; m_own.contains(fact) && piece <= m_count; ++piece) all.push_back(nameOf(fact, piece));
      }
      *facts = std::move(all);
    }
  }

 private:
  std::string nameOf(const std::string& fact, int piece) const {
    return piece > 1 && m_own.contains(fact) ? std::to_string(piece) + '/' + fact : fact;
  }
  void rename(std::vector<std::string>& facts, int piece) const {
    for (std::string& fact : facts) fact = nameOf(fact, piece);
  }

  int m_count;
  const ThingWords& m_words;
  std::set<std::string> m_own;  // facts of one piece
};

}  // namespace

std::vector<DraftStep> repeatedForPieces(std::vector<DraftStep> drafts, int count, const ThingWords& words) {
  if (count == 1) return drafts;
  const Repeater repeater(drafts, count, words);
  std::vector<DraftStep> all;
  for (DraftStep& draft : drafts) {
    if (isOfAll(draft)) {
      repeater.spread(draft);
      all.push_back(std::move(draft));
      continue;
    }
    for (int piece = 1; piece <= count; ++piece) all.push_back(repeater.ofPiece(draft, piece));
  }
  return all;
}

}  // namespace core::workflow
