// Words for what the core counts on its fingers.
#include <QCoreApplication>

#include "app/words/catalogue.h"
#include "app/words/words.h"

namespace app::words {
QString waitKind(core::craft::WaitKind kind) {
  using core::craft::WaitKind;
  switch (kind) {
    case WaitKind::Dry: return translated(QT_TRANSLATE_NOOP("words", "dries"));
    case WaitKind::Cure: return translated(QT_TRANSLATE_NOOP("words", "hardens"));
    case WaitKind::Press: return translated(QT_TRANSLATE_NOOP("words", "under press"));
    case WaitKind::Tack: return translated(QT_TRANSLATE_NOOP("words", "comes to tack"));
    case WaitKind::Open: return translated(QT_TRANSLATE_NOOP("words", "open time"));
    case WaitKind::Soak: return translated(QT_TRANSLATE_NOOP("words", "soaks"));
    case WaitKind::Rest: return translated(QT_TRANSLATE_NOOP("words", "rests"));
  }
  return {};
}

QString waitTrue(core::craft::WaitKind kind) {
  using core::craft::WaitKind;
  switch (kind) {
    case WaitKind::Dry: return translated(QT_TRANSLATE_NOOP("words", "dry"));
    case WaitKind::Cure: return translated(QT_TRANSLATE_NOOP("words", "hard"));
    case WaitKind::Tack: return translated(QT_TRANSLATE_NOOP("words", "tacky"));
    case WaitKind::Open: return translated(QT_TRANSLATE_NOOP("words", "open"));
    case WaitKind::Press:
    case WaitKind::Soak:
    case WaitKind::Rest: return translated(QT_TRANSLATE_NOOP("words", "ready"));
  }
  return {};
}

QString waitUntil(core::craft::WaitKind kind) {
  using core::craft::WaitKind;
  switch (kind) {
    case WaitKind::Dry:
    case WaitKind::Tack:
    case WaitKind::Open:
    case WaitKind::Soak: return translated(QT_TRANSLATE_NOOP("words", "wet"));
    case WaitKind::Cure: return translated(QT_TRANSLATE_NOOP("words", "soft"));
    case WaitKind::Press: return translated(QT_TRANSLATE_NOOP("words", "pressed"));
    case WaitKind::Rest: return translated(QT_TRANSLATE_NOOP("words", "rests"));
  }
  return {};
}

QString hands(core::craft::Hands hands) {
  using core::craft::Hands;
  switch (hands) {
    case Hands::Clean: return translated(QT_TRANSLATE_NOOP("words", "clean hands"));
    case Hands::Paste: return translated(QT_TRANSLATE_NOOP("words", "paste on the hands"));
    case Hands::Paint: return translated(QT_TRANSLATE_NOOP("words", "paint on the hands"));
    case Hands::Leaf: return translated(QT_TRANSLATE_NOOP("words", "dry hands for leaf"));
    case Hands::Blade: return translated(QT_TRANSLATE_NOOP("words", "blade in the hand"));
  }
  return {};
}

QString stage(core::craft::Stage stage) {
  using core::craft::Stage;
  switch (stage) {
    case Stage::None: break;
    case Stage::Prepare: return translated(QT_TRANSLATE_NOOP("words", "Prepare"));
    case Stage::Cut: return translated(QT_TRANSLATE_NOOP("words", "Cut"));
    case Stage::Colour: return translated(QT_TRANSLATE_NOOP("words", "Bevels"));
    case Stage::Wash: return translated(QT_TRANSLATE_NOOP("words", "Wash"));
    case Stage::Join: return translated(QT_TRANSLATE_NOOP("words", "Join"));
    case Stage::Paper: return translated(QT_TRANSLATE_NOOP("words", "Paper"));
    case Stage::Glue: return translated(QT_TRANSLATE_NOOP("words", "Glue"));
    case Stage::Mitre: return translated(QT_TRANSLATE_NOOP("words", "Mitre"));
    case Stage::Rule: return translated(QT_TRANSLATE_NOOP("words", "Rule"));
    case Stage::Size: return translated(QT_TRANSLATE_NOOP("words", "Size"));
    case Stage::Lay: return translated(QT_TRANSLATE_NOOP("words", "Leaf"));
    case Stage::Burnish: return translated(QT_TRANSLATE_NOOP("words", "Burnish"));
    case Stage::Attach: return translated(QT_TRANSLATE_NOOP("words", "Attach"));
    case Stage::Close: return translated(QT_TRANSLATE_NOOP("words", "Close"));
  }
  return {};
}

QString signalWord(core::craft::SignalWord word) {
  using core::craft::SignalWord;
  switch (word) {
    case SignalWord::Warning: return translated(QT_TRANSLATE_NOOP("words", "WARNING"));
    case SignalWord::Caution: return translated(QT_TRANSLATE_NOOP("words", "CAUTION"));
    case SignalWord::Notice: return translated(QT_TRANSLATE_NOOP("words", "NOTICE"));
  }
  return {};
}

QString wayUp(core::craft::WayUp up) {
  using core::craft::WayUp;
  switch (up) {
    case WayUp::Face: return translated(QT_TRANSLATE_NOOP("words", "face up"));
    case WayUp::Back: return translated(QT_TRANSLATE_NOOP("words", "back up"));
    case WayUp::None: break;
  }
  return {};
}

QString verdict(core::intents::Verdict verdict) {
  using core::intents::Verdict;
  switch (verdict) {
    case Verdict::NotYet: return translated(QT_TRANSLATE_NOOP("words", "not yet"));
    case Verdict::Tacky: return translated(QT_TRANSLATE_NOOP("words", "tacky"));
    case Verdict::PastIt: return translated(QT_TRANSLATE_NOOP("words", "past it"));
    case Verdict::Dry: return translated(QT_TRANSLATE_NOOP("words", "dry"));
  }
  return {};
}

QString alertClass(core::intents::AlertClass alert) {
  using core::intents::AlertClass;
  switch (alert) {
    case AlertClass::Soon: return translated(QT_TRANSLATE_NOOP("words", "in ten minutes: wash, lay out"));
    case AlertClass::Look: return translated(QT_TRANSLATE_NOOP("words", "worth a look"));
    case AlertClass::Open: return translated(QT_TRANSLATE_NOOP("words", "may be open: test by touch"));
    case AlertClass::Over: return translated(QT_TRANSLATE_NOOP("words", "may be over: test by touch"));
    case AlertClass::Closing: return translated(QT_TRANSLATE_NOOP("words", "closing: begin now"));
    case AlertClass::Missed: return translated(QT_TRANSLATE_NOOP("words", "likely closed: missed"));
  }
  return {};
}

QString phase(core::waits::Phase phase) {
  using core::waits::Phase;
  switch (phase) {
    case Phase::Waiting: return translated(QT_TRANSLATE_NOOP("words", "waiting"));
    case Phase::Open: return translated(QT_TRANSLATE_NOOP("words", "may be open"));
    case Phase::Closing: return translated(QT_TRANSLATE_NOOP("words", "closing"));
    case Phase::Closed: return translated(QT_TRANSLATE_NOOP("words", "likely closed"));
    case Phase::Over: return translated(QT_TRANSLATE_NOOP("words", "over"));
  }
  return {};
}

QString basis(core::waits::Basis basis) {
  using core::waits::Basis;
  switch (basis) {
    case Basis::Label: return translated(QT_TRANSLATE_NOOP("words", "as the technique states"));
    case Basis::Model: return translated(QT_TRANSLATE_NOOP("words", "adjusted for this room"));
    case Basis::Learned: return translated(QT_TRANSLATE_NOOP("words", "learned from your own times"));
  }
  return {};
}

QString pieceName(const core::materials::CutPiece& piece) {
  using core::materials::PieceUse;
  const QString of = QString::fromStdString(piece.element);
  switch (piece.use) {
    case PieceUse::Board: return translated(QT_TRANSLATE_NOOP("words", "%1 board")).arg(of);
    case PieceUse::BackMount: return translated(QT_TRANSLATE_NOOP("words", "back mount"));
    case PieceUse::Support: return translated(QT_TRANSLATE_NOOP("words", "support of the float"));
    case PieceUse::Backing: return translated(QT_TRANSLATE_NOOP("words", "backing"));
    case PieceUse::Glazing: return translated(QT_TRANSLATE_NOOP("words", "glazing"));
    case PieceUse::SpacerHorizontal: return translated(QT_TRANSLATE_NOOP("words", "spacer, top and bottom"));
    case PieceUse::SpacerVertical: return translated(QT_TRANSLATE_NOOP("words", "spacer, left and right"));
    case PieceUse::StripHorizontal: return translated(QT_TRANSLATE_NOOP("words", "%1 band, top and bottom")).arg(of);
    case PieceUse::StripVertical: return translated(QT_TRANSLATE_NOOP("words", "%1 band, left and right")).arg(of);
    case PieceUse::Spandrel: return translated(QT_TRANSLATE_NOOP("words", "%1 spandrel")).arg(of);
  }
  return {};
}

}  // namespace app::words
