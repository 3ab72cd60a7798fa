#pragma once
// Bundles: how many pieces of each kind, numbered in a mixed base, so that a bundle without a part of it is the
// difference of their numbers. Equal pieces count once: two hundred alike make two hundred and one bundles.
#include <cstdint>
#include <vector>

namespace core::cutting {

class Bundles {
 public:
  explicit Bundles(const std::vector<int>& counts);

  // Returns for these counts how many pairs of a bundle and a part of it there are, no more than 2^62.
  static std::int64_t pairsOf(const std::vector<int>& counts);

  int size() const { return m_size; }
  int all() const { return m_size - 1; }
  int pieces(int bundle) const { return m_pieces[bundle]; }
  int one(int kind) const { return m_weights[kind]; }
  int countOf(int bundle, int kind) const { return bundle / m_weights[kind] % (m_counts[kind] + 1); }

  // The parts of a bundle, itself included and nothing left out, ascending.
  const int* begin(int bundle) const { return m_parts.data() + m_from[bundle]; }
  const int* end(int bundle) const { return m_parts.data() + m_from[bundle + 1]; }

 private:
  void addParts(int bundle);

  std::vector<int> m_counts, m_weights, m_pieces, m_parts;
  std::vector<std::size_t> m_from;
  int m_size = 1;
};

}  // namespace core::cutting
