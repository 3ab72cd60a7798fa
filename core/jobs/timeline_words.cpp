#include "core/jobs/timeline_words.h"

#include <algorithm>

#include "core/jobs/touch_tests.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using intents::AlertClass;
using Kind = TimelineKind;

// No shop reaches this number: a greater one in a record is not valid.
constexpr std::int64_t kMostPieces = 100'000;

// Gives a message the members of an event as arguments of the same names; steps, waits and figures under their titles.
class Arguments {
 public:
  Arguments(Message& message, const JobState& state, const TimelineWords& words)
      : m_message(message), m_state(state), m_words(words) {}

  template <typename Member>
  void operator()(std::string_view name, const Member& member) {
    if constexpr (std::is_same_v<Member, std::string>) add(name, member);
    if constexpr (std::is_same_v<Member, std::optional<std::int64_t>>)
      m_message.arguments.emplace_back(name, member.value_or(0));
  }
  template <typename Member>
  void unlessEmpty(std::string_view name, const Member& member) {
    (*this)(name, member);
  }
  template <typename Member>
  void flat(const Member&) {}

  std::string stepTitle(const std::string& id) const {
    const workflow::WorkflowStep* step = m_state.plan->workflow.find(id);
    return step == nullptr ? id : step->title;
  }
  std::string waitTitle(const std::string& id) const {
    const auto found = m_state.plan->workflow.findWait(id);
    return found.wait == nullptr ? id : found.wait->title;
  }
  std::string figureLabel(const std::string& id) const {
    const design::Figure* figure = m_state.plan->design.figures.find(id);
    return figure == nullptr || !m_words.figure ? id : m_words.figure(*figure);
  }

 private:
  void add(std::string_view name, const std::string& text) {
    std::string shown = text;
    if (name == "step") shown = stepTitle(text);
    if (name == "wait") shown = waitTitle(text);
    if (name == "figure") shown = figureLabel(text);
    m_message.arguments.emplace_back(name, std::move(shown));
  }

  Message& m_message;
  const JobState& m_state;
  const TimelineWords& m_words;
};

class Teller {
 public:
  Teller(const Event& event, const JobState& state, const shop::Shop& shop,
         const std::set<std::string>& intentsThatUndid, const TimelineWords& words)
      : m_event(event), m_state(state), m_shop(shop), m_intentsThatUndid(intentsThatUndid), m_words(words) {}

  template <typename One>
  TimelineSaying operator()(const One& one) const {
    // An event without a message is here only where it was stored in a stream it has no place in.
    if constexpr (One::kTraits.told.empty())
      return (*this)(Unknown());
    else
      return {One::kTraits.kind, told(one, One::kTraits.told)};
  }

  TimelineSaying operator()(const Unknown&) const {
    return {Kind::Unknown, Message("timeline.unknown").with("type", m_event.type)};
  }

  TimelineSaying operator()(const StepDone& done) const {
    if (m_state.repeated.contains(m_event.eventId)) return {Kind::Repeated, told(done, "timeline.done-repeated")};
    return {Kind::Done, told(done, StepDone::kTraits.told)};
  }

  TimelineSaying operator()(const Undone& undone) const {
    const bool again = m_intentsThatUndid.contains(undone.intent);
    return {Kind::TakenBack, again ? Message("timeline.done-again") : Message("timeline.taken-back")};
  }

  // Uses the technique's words for the finding; without the technique, the record's own.
  TimelineSaying operator()(const Looked& looked) const {
    if (looked.sure) return {Kind::Looked, told(looked, "timeline.looked-sure")};
    const auto found = m_state.plan->workflow.findWait(looked.wait);
    const std::string answer =
        found.wait == nullptr ? std::string(name(looked.verdict)) : answerOf(*found.wait, looked.verdict);
    return {Kind::Looked, told(looked, "timeline.looked").with("answer", answer)};
  }

  TimelineSaying operator()(const Heard& heard) const {
    return {Kind::Heard, told(heard, heardAs(heard.alert.value_or(AlertClass::Over)))};
  }

  TimelineSaying operator()(const FaultReported& reported) const {
    if (const auto* step = m_state.plan->workflow.find(reported.step)) {
      for (const workflow::WorkflowFault& fault : step->faults) {
        if (fault.id != reported.fault) continue;
        if (const auto* way = fault.way(reported.way)) {
          return {
              Kind::Fault,
              Message("timeline.fault-way").with("step", step->title).with("fault", fault.seen).with("way", way->key)};
        }
        return {Kind::Fault, Message("timeline.fault").with("step", step->title).with("fault", fault.seen)};
      }
    }
    return {Kind::Fault, told(reported, "timeline.fault")};
  }

  TimelineSaying operator()(const Measured& measured) const {
    const double millimetres = static_cast<double>(measured.nanometres.value_or(0)) / units::kNanometresPerMillimetre;
    return {Kind::Measured, told(measured, "timeline.measured").with("value", base::Millimetres{millimetres})};
  }

  TimelineSaying operator()(const FollowChosen& chosen) const {
    const bool reveal = chosen.keep == design::Follow::Reveal;
    return {Kind::Chosen, told(chosen, reveal ? "timeline.keeps-reveal" : FollowChosen::kTraits.told)};
  }

  TimelineSaying operator()(const SheetCut& cut) const {
    std::int64_t count = 0;
    for (const SheetCut::Pieces& some : cut.pieces) count += std::clamp<std::int64_t>(some.count, 0, kMostPieces);
    if (cut.stock.empty()) return {Kind::Cut, Message("timeline.cut-offcut").with("count", count)};
    const shop::StockItem* item = m_shop.stock.item(cut.stock);
    const std::string& stock = item == nullptr ? cut.stock : item->entry.name;
    return {Kind::Cut, Message("timeline.cut-sheet").with("stock", stock).with("count", count)};
  }

  TimelineSaying operator()(const PhotographKept& kept) const {
    const bool named = !kept.caption.empty();
    return {Kind::Photographed, told(kept, named ? "timeline.photographed-of" : PhotographKept::kTraits.told)};
  }

 private:
  static std::string_view heardAs(AlertClass alert) {
    switch (alert) {
      case AlertClass::Soon: return "timeline.heard-soon";
      case AlertClass::Look: return "timeline.heard-look";
      case AlertClass::Open: return "timeline.heard-open";
      case AlertClass::Closing: return "timeline.heard-closing";
      case AlertClass::Missed: return "timeline.heard-missed";
      case AlertClass::Over: break;
    }
    return Heard::kTraits.told;
  }

  template <typename One>
  Message told(const One& one, std::string_view id) const {
    Message message(id);
    Arguments arguments(message, m_state, m_words);
    One::fields(one, arguments);
    return message;
  }

  const Event& m_event;
  const JobState& m_state;
  const shop::Shop& m_shop;
  const std::set<std::string>& m_intentsThatUndid;
  const TimelineWords& m_words;
};

}  // namespace

TimelineSaying sayingOf(const Event& event, const Happening& happening, const JobState& state, const shop::Shop& shop,
                        const std::set<std::string>& intentsThatUndid, const TimelineWords& words) {
  return std::visit(Teller(event, state, shop, intentsThatUndid, words), happening);
}

}  // namespace core::jobs
