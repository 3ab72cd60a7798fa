#pragma once
// How the shop's materials look, on its way to the items that paint them.
#include <QtQml/qqmlregistration.h>
#include <QMetaType>
#include <QObject>
#include <memory>

#include "app/painting/appearance.h"

namespace app::viewmodels {

struct PieceAppearances {
  Q_GADGET
  QML_VALUE_TYPE(pieceAppearances)

 public:
  std::shared_ptr<const painting::Appearances> all;  // null: every material looks as its name says

  friend bool operator==(const PieceAppearances&, const PieceAppearances&) = default;
};

}  // namespace app::viewmodels

Q_DECLARE_METATYPE(app::viewmodels::PieceAppearances)
