#include "core/jobs/one_piece.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <variant>

#include "core/base/text.h"
#include "core/record/happening.h"

namespace core::jobs {
namespace {

using namespace record;

// Steps of other pieces, and this piece's own step that one press reported done with it.
using WorkedTogether = std::map<std::string, std::string>;

// Renames what one event names; each function returns whether the event concerns the piece.
class Renaming {
 public:
  Renaming(const OnePiece& piece, const std::set<std::string>& kept, const WorkedTogether& together)
      : m_piece(piece), m_kept(kept), m_together(together) {}

  bool operator()(Unknown&) const { return false; }
  bool operator()(JobTakenIn& event) const {
    event.job = m_piece.jobHash;
    event.title = m_piece.title;
    event.reference = m_piece.reference;
    return true;
  }
  bool operator()(StepBegun& event) const { return step(event.step); }
  bool operator()(StepDone& event) const { return step(event.step); }
  bool operator()(Undone& event) const { return known(event.intent); }
  bool operator()(Looked& event) const { return wait(event.wait, event.of); }
  bool operator()(Heard& event) const { return wait(event.wait, event.of); }
  bool operator()(Snoozed& event) const { return wait(event.wait, event.of); }
  bool operator()(FaultReported& event) const { return step(event.step) && id(event.of); }
  bool operator()(MissedMended& event) const { return wait(event.wait, event.of); }
  bool operator()(Measured& event) const { return step(event.step); }
  bool operator()(MeasureForgotten& event) const { return step(event.step); }
  bool operator()(FollowChosen&) const { return true; }
  bool operator()(JobPutAway&) const { return true; }
  bool operator()(JobBroughtBack&) const { return true; }
  bool operator()(TechniquesRenewed&) const { return true; }
  bool operator()(PreparationAccepted& event) const {
    for (std::string& intent : event.intents) id(intent);
    return id(event.device) && step(event.step);
  }
  bool operator()(NoteAdded& event) const { return stepOrJob(event.step); }
  bool operator()(NoteChanged& event) const { return known(event.note); }
  bool operator()(NoteRemoved& event) const { return known(event.note); }
  bool operator()(PhotographKept& event) const { return stepOrJob(event.step); }
  bool operator()(PhotographCaptioned& event) const { return known(event.photograph); }
  bool operator()(PhotographRemoved& event) const { return known(event.photograph); }
  bool operator()(BatchesLinked& event) const {
    const auto with = m_together.find(event.step);
    if (with == m_together.end()) return step(event.step);
    event.step = with->second;
    return true;
  }
  // The shop's stock and settings and the desk's designs are no part of a job's record.
  template <typename One>
  requires(!isOneOf<One, JobEvents> && !isOneOf<One, BesideEvents> && !std::is_same_v<One, Unknown>) bool operator()(
      One&) const {
    return false;
  }

 private:
  bool step(std::string& name) const {
    const auto own = stepOfPiece(name, m_piece);
    if (own) name = *own;
    return own.has_value();
  }
  bool stepOrJob(std::string& name) const { return name.empty() || step(name); }
  bool wait(std::string& name, std::string& of) const {
    const std::size_t end = name.rfind('/');
    if (end == std::string::npos) return false;
    std::string own = name.substr(0, end);
    if (!step(own)) return false;
    name = own + name.substr(end);
    return id(of);
  }
  bool id(std::string& name) const {
    if (!name.empty()) name = idOfPiece(name, m_piece.number);
    return true;
  }
  bool known(std::string& name) const { return m_kept.contains(name) && id(name); }

  const OnePiece& m_piece;
  const std::set<std::string>& m_kept;  // events and intents that concern the piece, under their former ids
  const WorkedTogether& m_together;
};

// Returns the id a step has in the job of one piece, whichever piece it is of; nothing where it is none.
std::optional<std::string> stepOfAnyPiece(const std::string& step, const OnePiece& piece) {
  if (piece.of->find(step) != nullptr) return step;
  std::string own = step.substr(0, step.rfind('#'));
  return piece.of->find(own) != nullptr ? std::optional(std::move(own)) : std::nullopt;
}

// One jar serves all that is worked in one go, but its batch is told of the step that was shown. So it counts for this
// piece's step as well, where nothing was told of that itself.
WorkedTogether workedTogether(const std::vector<Event>& events, const OnePiece& piece) {
  std::map<std::string, std::set<std::string>> doneBy;  // of each intent, the steps
  std::set<std::string> told;                           // this piece's own steps with batches
  for (const Event& event : events) {
    const Happening happening = happeningOf(event);
    if (const auto* done = std::get_if<StepDone>(&happening)) doneBy[event.intentId].insert(done->step);
    const auto* linked = std::get_if<BatchesLinked>(&happening);
    if (linked == nullptr) continue;
    if (const auto own = stepOfPiece(linked->step, piece)) told.insert(*own);
  }
  WorkedTogether together;
  for (const auto& [intent, steps] : doneBy) {
    std::set<std::string> own;
    for (const std::string& step : steps) {
      if (const auto mine = stepOfPiece(step, piece)) own.insert(*mine);
    }
    for (const std::string& step : steps) {
      const auto like = stepOfAnyPiece(step, piece);
      if (!stepOfPiece(step, piece) && like && own.contains(*like) && !told.contains(*like)) together[step] = *like;
    }
  }
  return together;
}

// The event under the piece's ids, where it concerns the piece.
std::optional<Event> ofPiece(const Event& event, const OnePiece& piece, const std::set<std::string>& kept,
                             const WorkedTogether& together) {
  Happening happening = happeningOf(event);
  if (!std::visit(Renaming(piece, kept, together), happening)) return std::nullopt;
  Event own = event;
  own.eventId = idOfPiece(event.eventId, piece.number);
  own.deviceId = idOfPiece(event.deviceId, piece.number);
  own.intentId = idOfPiece(event.intentId, piece.number);
  own.stream = idOfPiece(event.stream, piece.number);
  own.payload = draftOf(happening).payload;
  return own;
}

}  // namespace

std::string idOfPiece(const std::string& id, int number) { return id + '.' + std::to_string(number); }

bool isPieceOf(const std::string& id, const std::string& whole) {
  return base::startsWith(id, whole + '.') && base::isDigits(std::string_view(id).substr(whole.size() + 1));
}

std::optional<std::string> stepOfPiece(const std::string& step, const OnePiece& piece) {
  if (const workflow::WorkflowStep* found = piece.of->find(step)) {
    // Equal settings are made once for all pieces.
    const bool ofAll = found->ofShop || found->once || (found->setup && !found->setup->afresh);
    return ofAll || piece.number == 1 ? std::optional(step) : std::nullopt;
  }
  const std::string end = '#' + std::to_string(piece.number);
  if (piece.number == 1 || !base::endsWith(step, end)) return std::nullopt;
  std::string own = step.substr(0, step.size() - end.size());
  return piece.of->find(own) != nullptr ? std::optional(std::move(own)) : std::nullopt;
}

std::vector<Event> eventsOfPiece(const std::vector<Event>& events, const OnePiece& piece) {
  const WorkedTogether together = workedTogether(events, piece);
  std::set<std::string> kept;
  std::vector<std::optional<Event>> own(events.size());
  // What takes back or changes something may stand before it, where clocks disagree.
  for (bool more = true; more;) {
    more = false;
    for (std::size_t i = 0; i < events.size(); ++i) {
      if (own[i]) continue;
      own[i] = ofPiece(events[i], piece, kept, together);
      if (!own[i]) continue;
      kept.insert(events[i].eventId);
      kept.insert(events[i].intentId);
      more = true;
    }
  }
  std::vector<Event> result;
  for (std::optional<Event>& event : own) {
    if (event) result.push_back(std::move(*event));
  }
  return result;
}

}  // namespace core::jobs
