#pragma once
// A drawing on its way to the item that paints it.
#include <QtQml/qqmlregistration.h>
#include <QMetaType>
#include <QObject>
#include <QRectF>
#include <memory>
#include <string>
#include <vector>

#include "app/designing/tints.h"
#include "core/sheets/drawing.h"

namespace app::viewmodels {

struct PieceDrawing {
  Q_GADGET
  QML_VALUE_TYPE(pieceDrawing)

 public:
  std::shared_ptr<const core::sheets::Drawing> piece;                     // or act; null: nothing to paint
  std::shared_ptr<const std::vector<core::sheets::Primitive>> dimension;  // laid over it
  std::string worked;              // the thing whose elements are inked; "" for none
  std::vector<std::string> wrong;  // things that stand against the design: inked, their lines broken
  // Colours of what is drawn, for a drawing that is to look like the piece; empty: ink and pencil alone.
  designing::Tints tints;
  QRectF seen;  // what of the piece is brought into view, in mm; null: the whole

  friend bool operator==(const PieceDrawing&, const PieceDrawing&) = default;
};

}  // namespace app::viewmodels

Q_DECLARE_METATYPE(app::viewmodels::PieceDrawing)
