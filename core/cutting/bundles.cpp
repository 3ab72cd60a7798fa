#include "core/cutting/bundles.h"

#include <algorithm>

namespace core::cutting {

Bundles::Bundles(const std::vector<int>& counts) : m_counts(counts) {
  for (const int count : counts) {
    m_weights.push_back(m_size);
    m_size *= count + 1;
  }
  m_pieces.resize(m_size, 0);
  for (int bundle = 0; bundle < m_size; ++bundle) {
    m_from.push_back(m_parts.size());
    for (std::size_t kind = 0; kind < counts.size(); ++kind)
      m_pieces[bundle] += countOf(bundle, static_cast<int>(kind));
    addParts(bundle);
  }
  m_from.push_back(m_parts.size());
}

std::int64_t Bundles::pairsOf(const std::vector<int>& counts) {
  std::int64_t pairs = 1;
  for (const std::int64_t count : counts) {
    const std::int64_t more = (count + 1) * (count + 2) / 2;
    if (pairs > (std::int64_t{1} << 62) / more) return std::int64_t{1} << 62;
    pairs *= more;
  }
  return pairs;
}

void Bundles::addParts(int bundle) {
  const std::size_t from = m_parts.size();
  m_parts.push_back(0);
  for (std::size_t kind = 0; kind < m_counts.size(); ++kind) {
    const std::size_t have = m_parts.size();
    const int most = countOf(bundle, static_cast<int>(kind));
    for (int count = 1; count <= most; ++count) {
      for (std::size_t i = from; i < have; ++i) m_parts.push_back(m_parts[i] + count * m_weights[kind]);
    }
  }
  m_parts.erase(m_parts.begin() + static_cast<std::ptrdiff_t>(from));
}

}  // namespace core::cutting
