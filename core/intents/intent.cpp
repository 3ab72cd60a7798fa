#include "core/intents/intent.h"

namespace core::intents {

std::string_view name(const Intent& intent) {
  struct Namer {
    std::string_view operator()(const TakeIn&) const { return "takeIn"; }
    std::string_view operator()(const BeginStep&) const { return "beginStep"; }
    std::string_view operator()(const FinishStep&) const { return "finishStep"; }
    std::string_view operator()(const Undo&) const { return "undo"; }
    std::string_view operator()(const LookAt&) const { return "lookAt"; }
    std::string_view operator()(const Hear&) const { return "hear"; }
    std::string_view operator()(const Snooze&) const { return "snooze"; }
    std::string_view operator()(const ReportFault&) const { return "reportFault"; }
    std::string_view operator()(const MendMissed&) const { return "mendMissed"; }
    std::string_view operator()(const EnterAsMade&) const { return "enterAsMade"; }
    std::string_view operator()(const ForgetAsMade&) const { return "forgetAsMade"; }
    std::string_view operator()(const ChooseFollow&) const { return "chooseFollow"; }
    std::string_view operator()(const PutAway&) const { return "putAway"; }
    std::string_view operator()(const BringBack&) const { return "bringBack"; }
  };
  return std::visit(Namer{}, intent);
}

std::string_view name(Verdict verdict) {
  switch (verdict) {
    case Verdict::NotYet: return "notYet";
    case Verdict::Tacky: return "tacky";
    case Verdict::PastIt: return "pastIt";
    case Verdict::Dry: return "dry";
  }
  return "";
}

std::string_view name(AlertClass alert) {
  switch (alert) {
    case AlertClass::Soon: return "soon";
    case AlertClass::Look: return "look";
    case AlertClass::Open: return "open";
    case AlertClass::Over: return "over";
    case AlertClass::Closing: return "closing";
    case AlertClass::Missed: return "missed";
  }
  return "";
}

}  // namespace core::intents
