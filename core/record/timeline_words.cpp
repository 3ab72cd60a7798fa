#include "core/record/timeline_words.h"

#include <algorithm>

#include "core/record/touch_tests.h"

namespace core::record {
namespace {

using base::Message;
using intents::Verdict;

class Saying {
 public:
  Saying(const Event& event, const JobState& state, const TimelineWords& words)
      : m_event(event), m_state(state), m_words(words) {}

  std::string stepTitle() const {
    const std::string id = textOf(m_event.payload, "step");
    const workflow::WorkflowStep* step = m_state.plan->workflow.find(id);
    return step == nullptr ? id : step->title;
  }

  std::string waitTitle() const {
    const std::string id = textOf(m_event.payload, "wait");
    const auto found = m_state.plan->workflow.findWait(id);
    return found.wait == nullptr ? id : found.wait->title;
  }

  // In the words the technique has for what was found; without the technique in the record's own.
  Message looked() const {
    if (m_event.payload.find("sure") != nullptr) return Message("timeline.looked-sure").with("wait", waitTitle());
    const std::string id = textOf(m_event.payload, "wait");
    const std::string verdict = textOf(m_event.payload, "verdict");
    const auto found = m_state.plan->workflow.findWait(id);
    for (const Verdict one : {Verdict::NotYet, Verdict::Tacky, Verdict::PastIt, Verdict::Dry}) {
      if (intents::name(one) != verdict || found.wait == nullptr) continue;
      return Message("timeline.looked").with("answer", answerOf(*found.wait, one)).with("wait", found.wait->title);
    }
    return Message("timeline.looked").with("answer", verdict).with("wait", waitTitle());
  }

  Message heard() const {
    const std::string alert = textOf(m_event.payload, "alert");
    if (alert == "soon") return Message("timeline.heard-soon").with("wait", waitTitle());
    if (alert == "look") return Message("timeline.heard-look").with("wait", waitTitle());
    if (alert == "open") return Message("timeline.heard-open").with("wait", waitTitle());
    if (alert == "closing") return Message("timeline.heard-closing").with("wait", waitTitle());
    if (alert == "missed") return Message("timeline.heard-missed").with("wait", waitTitle());
    return Message("timeline.heard-over").with("wait", waitTitle());
  }

  Message fault() const {
    const std::string id = textOf(m_event.payload, "fault");
    std::string seen = id;
    if (const auto* step = m_state.plan->workflow.find(textOf(m_event.payload, "step"))) {
      for (const workflow::WorkflowFault& one : step->faults) {
        if (one.id != id) continue;
        seen = one.seen;
        if (const auto* way = one.way(textOf(m_event.payload, "way")))
          return Message("timeline.fault-way").with("step", stepTitle()).with("fault", seen).with("way", way->key);
      }
    }
    return Message("timeline.fault").with("step", stepTitle()).with("fault", seen);
  }

  std::string figure() const {
    const std::string id = textOf(m_event.payload, "figure");
    const design::Figure* figure = m_state.plan->design.figures.find(id);
    return figure == nullptr || !m_words.figure ? id : m_words.figure(*figure);
  }

  Message measured() const {
    const double millimetres =
        static_cast<double>(integerOf(m_event.payload, "nanometres").value_or(0)) / units::kNanometresPerMillimetre;
    return Message("timeline.measured").with("figure", figure()).with("value", base::Millimetres{millimetres});
  }

  Message followed() const {
    const std::string board = textOf(m_event.payload, "board");
    if (textOf(m_event.payload, "keep") == "reveal") return Message("timeline.keeps-reveal").with("board", board);
    return Message("timeline.keeps-cover").with("board", board);
  }

  Message cut(const Shop& shop) const {
    const base::Value* pieces = m_event.payload.find("pieces");
    std::int64_t count = 0;
    if (pieces != nullptr && pieces->kind() == base::Value::Kind::Array) {
      for (const base::Value& piece : pieces->items()) {
        const std::int64_t some = integerOf(piece, "count").value_or(0);
        count += std::clamp<std::int64_t>(some, 0, 100'000);
      }
    }
    const std::string stock = textOf(m_event.payload, "stock");
    if (stock.empty()) return Message("timeline.cut-offcut").with("count", count);
    const StockItem* item = shop.stock.item(stock);
    return Message("timeline.cut-sheet").with("stock", item == nullptr ? stock : item->entry.name).with("count", count);
  }

 private:
  const Event& m_event;
  const JobState& m_state;
  const TimelineWords& m_words;
};

}  // namespace

TimelineSaying sayingOf(const Event& event, const JobState& state, const Shop& shop,
                        const std::set<std::string>& intentsThatUndid, const TimelineWords& words) {
  using Kind = TimelineKind;
  const Saying say(event, state, words);
  const base::Value& payload = event.payload;
  const std::string& is = event.type;
  if (event.version != 1) {
  } else if (is == type::kJobTakenIn) {
    return {Kind::TakenIn, Message("timeline.taken-in").with("title", textOf(payload, "title"))};
  } else if (is == type::kStepBegun) {
    return {Kind::Begun, Message("timeline.begun").with("step", say.stepTitle())};
  } else if (is == type::kStepDone) {
    if (state.repeated.contains(event.eventId)) {
      return {Kind::Repeated, Message("timeline.done-repeated").with("step", say.stepTitle())};
    }
    return {Kind::Done, Message("timeline.done").with("step", say.stepTitle())};
  } else if (is == type::kPreparationAccepted) {
    return {Kind::Accepted, Message("timeline.accepted").with("step", say.stepTitle())};
  } else if (is == type::kLooked) {
    return {Kind::Looked, say.looked()};
  } else if (is == type::kHeard) {
    return {Kind::Heard, say.heard()};
  } else if (is == type::kSnoozed) {
    return {Kind::Heard, Message("timeline.put-off")
                             .with("wait", say.waitTitle())
                             .with("minutes", integerOf(payload, "minutes").value_or(0))};
  } else if (is == type::kFaultReported) {
    return {Kind::Fault, say.fault()};
  } else if (is == type::kMissedMended) {
    return {Kind::Mended, Message("timeline.mended").with("wait", say.waitTitle())};
  } else if (is == type::kMeasured) {
    return {Kind::Measured, say.measured()};
  } else if (is == type::kMeasureForgotten) {
    return {Kind::Measured, Message("timeline.measure-forgotten").with("figure", say.figure())};
  } else if (is == type::kFollowChosen) {
    return {Kind::Chosen, say.followed()};
  } else if (is == type::kSheetCut) {
    return {Kind::Cut, say.cut(shop)};
  } else if (is == type::kNoteAdded) {
    return {Kind::Noted, Message("timeline.noted").with("text", textOf(payload, "text"))};
  } else if (is == type::kNoteChanged) {
    return {Kind::Noted, Message("timeline.note-changed").with("text", textOf(payload, "text"))};
  } else if (is == type::kNoteRemoved) {
    return {Kind::Noted, Message("timeline.note-removed")};
  } else if (is == type::kPhotographKept) {
    const std::string caption = textOf(payload, "caption");
    if (caption.empty()) return {Kind::Photographed, Message("timeline.photographed")};
    return {Kind::Photographed, Message("timeline.photographed-of").with("caption", caption)};
  } else if (is == type::kPhotographCaptioned) {
    return {Kind::Photographed, Message("timeline.captioned").with("caption", textOf(payload, "caption"))};
  } else if (is == type::kPhotographRemoved) {
    return {Kind::Photographed, Message("timeline.photograph-removed")};
  } else if (is == type::kBatchesLinked) {
    return {Kind::Batches, Message("timeline.batches-linked").with("step", say.stepTitle())};
  } else if (is == type::kJobPutAway) {
    return {Kind::Moved, Message("timeline.put-away")};
  } else if (is == type::kJobBroughtBack) {
    return {Kind::Moved, Message("timeline.brought-back")};
  } else if (is == type::kTechniquesRenewed) {
    return {Kind::Renewed, Message("timeline.techniques-renewed")};
  } else if (is == type::kUndone) {
    const bool again = intentsThatUndid.contains(textOf(payload, "intent"));
    return {Kind::TakenBack, again ? Message("timeline.done-again") : Message("timeline.taken-back")};
  }
  return {Kind::Unknown, Message("timeline.unknown").with("type", event.type)};
}

}  // namespace core::record
