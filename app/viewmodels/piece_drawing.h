#pragma once
// A drawing on its way to the item that paints it.
#include <QtQml/qqmlregistration.h>
#include <QMetaType>
#include <QObject>

#include "app/painting/painted.h"

namespace app::viewmodels {

struct PieceDrawing : painting::Painted {
  Q_GADGET
  QML_VALUE_TYPE(pieceDrawing)

 public:
  friend bool operator==(const PieceDrawing&, const PieceDrawing&) = default;
};

}  // namespace app::viewmodels

Q_DECLARE_METATYPE(app::viewmodels::PieceDrawing)
