#include "app/viewmodels/desk/chains_model.h"

#include <utility>

#include "app/convert/text.h"

namespace app::viewmodels {

using core::sheets::Chain;

void ChainsModel::show(std::vector<Chain> chains) {
  if (chains.size() == m_chains.size()) {
    m_chains = std::move(chains);
    if (!m_chains.empty()) emit dataChanged(index(0), index(rowCount() - 1));
    return;
  }
  beginResetModel();
  m_chains = std::move(chains);
  endResetModel();
}

QVariant ChainsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Chain& chain = m_chains[static_cast<std::size_t>(index.row())];
  QVariantList list;
  switch (role) {
    case EdgeRole:
      switch (chain.edge) {
        case core::sheets::ChainEdge::Top: return Top;
        case core::sheets::ChainEdge::Right: return Right;
        case core::sheets::ChainEdge::Bottom: return Bottom;
        case core::sheets::ChainEdge::Left: return Left;
      }
      return {};
    case Along:
      for (const auto& stop : chain.stops) list << stop.along;
      return list;
    case Across:
      for (const auto& stop : chain.stops) list << stop.across;
      return list;
    case Shown:
      for (const auto& measure : chain.measures) list << convert::toQt(measure.shown);
      return list;
    case Held:
      for (const auto& measure : chain.measures) list << measure.inHand;
      return list;
    default: return {};
  }
}

QHash<int, QByteArray> ChainsModel::roleNames() const {
  return {{EdgeRole, "edge"}, {Along, "along"}, {Across, "across"}, {Shown, "shown"}, {Held, "held"}};
}

}  // namespace app::viewmodels
