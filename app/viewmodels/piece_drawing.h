#pragma once
// A drawing on its way to the item that paints it.
#include <QtQml/qqmlregistration.h>
#include <QMetaType>
#include <QObject>
#include <QSizeF>

#include "app/painting/painted.h"

namespace app::viewmodels {

struct PieceDrawing : painting::Painted {
  Q_GADGET
  QML_VALUE_TYPE(pieceDrawing)
  Q_PROPERTY(bool drawn READ drawn CONSTANT FINAL)
  Q_PROPERTY(QSizeF extent READ extent CONSTANT FINAL)  // in mm; none while nothing is drawn

 public:
  bool drawn() const { return piece != nullptr; }
  QSizeF extent() const { return piece == nullptr ? QSizeF(0, 0) : QSizeF(piece->width, piece->height); }

  friend bool operator==(const PieceDrawing&, const PieceDrawing&) = default;
};

}  // namespace app::viewmodels

Q_DECLARE_METATYPE(app::viewmodels::PieceDrawing)
