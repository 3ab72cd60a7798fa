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
    std::string_view operator()(const AddNote&) const { return "addNote"; }
    std::string_view operator()(const ChangeNote&) const { return "changeNote"; }
    std::string_view operator()(const RemoveNote&) const { return "removeNote"; }
    std::string_view operator()(const KeepPhotograph&) const { return "keepPhotograph"; }
    std::string_view operator()(const ChangeCaption&) const { return "changeCaption"; }
    std::string_view operator()(const RemovePhotograph&) const { return "removePhotograph"; }
    std::string_view operator()(const LinkBatches&) const { return "linkBatches"; }
    std::string_view operator()(const PutAway&) const { return "putAway"; }
    std::string_view operator()(const BringBack&) const { return "bringBack"; }
    std::string_view operator()(const AcceptPreparation&) const { return "acceptPreparation"; }
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

std::string_view name(StockKind kind) {
  switch (kind) {
    case StockKind::Board: return "board";
    case StockKind::Paper: return "paper";
    case StockKind::Leaf: return "leaf";
    case StockKind::Size: return "size";
    case StockKind::Paste: return "paste";
    case StockKind::Paint: return "paint";
  }
  return "";
}

std::string_view name(Measure measure) {
  switch (measure) {
    case Measure::Pieces: return "pieces";
    case Measure::Microlitres: return "microlitres";
    case Measure::Micrograms: return "micrograms";
  }
  return "";
}

std::string_view name(BatchKind kind) {
  switch (kind) {
    case BatchKind::Size: return "size";
    case BatchKind::Paste: return "paste";
    case BatchKind::Adhesive: return "adhesive";
    case BatchKind::Paint: return "paint";
    case BatchKind::Other: return "other";
  }
  return "";
}

}  // namespace core::intents
