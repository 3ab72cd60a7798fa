#pragma once
// Dimension chains on their way to the drawing they stand beside, one a row.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <vector>

#include "core/sheets/chain.h"

namespace app::viewmodels {

class ChainsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")

 public:
  enum Edge { Top, Right, Bottom, Left };
  Q_ENUM(Edge)
  // `along` and `across`: the stops in mm of the drawing; `shown` and `held`: the measures between them, each with
  // whether it is in hand.
  enum Role { EdgeRole = Qt::UserRole + 1, Along, Across, Shown, Held };

  using QAbstractListModel::QAbstractListModel;

  void show(std::vector<core::sheets::Chain> chains);

  int rowCount(const QModelIndex& parent = {}) const override {
    return parent.isValid() ? 0 : static_cast<int>(m_chains.size());
  }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 private:
  std::vector<core::sheets::Chain> m_chains;
};

}  // namespace app::viewmodels
