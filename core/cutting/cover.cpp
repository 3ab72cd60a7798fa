#include "core/cutting/cover.h"

#include <algorithm>
#include <cmath>

namespace core::cutting {
namespace {

constexpr int kMostChoices = 20'000;
// More than what a handful of operations in double may be off by, in parts of the whole.
constexpr double kRounding = 1e-12;
// Above what any plan costs; a choice that has spent more is no use, and sums of it stay in range.
constexpr double kDearest = 4.5e18;

class Search {
 public:
  explicit Search(const std::vector<Room>& rooms) : m_rooms(rooms) {}

  // Parts of rooms, the cheapest for their room first: no whole rooms cost less. Rounded down by more than rounding.
  std::int64_t inParts(std::size_t from, std::int64_t need) const {
    double cost = 0;
    for (std::size_t i = from; i < m_rooms.size() && need > 0; ++i) {
      const Room& room = m_rooms[i];
      const std::int64_t used = std::min<std::int64_t>(room.quantity, need / room.room);
      cost += static_cast<double>(used) * static_cast<double>(room.cost);
      need -= used * room.room;
      if (used < room.quantity && need > 0) {
        cost += static_cast<double>(room.cost) * (static_cast<double>(need) / static_cast<double>(room.room));
        need = 0;
      }
    }
    if (need > 0) return kNotEnough;
    return static_cast<std::int64_t>(std::min(std::ceil(cost * (1 - kRounding) - kRounding), kDearest));
  }

  bool run(std::int64_t need) {
    choose(0, need, 0);
    return m_choices <= kMostChoices && m_isFound;
  }

  std::int64_t best() const { return m_best; }

 private:
  void choose(std::size_t at, std::int64_t need, std::int64_t spent) {
    if (need <= 0) {
      if (!m_isFound || spent < m_best) m_best = spent;
      m_isFound = true;
      return;
    }
    if (at == m_rooms.size() || spent > static_cast<std::int64_t>(kDearest) || ++m_choices > kMostChoices) return;
    const std::int64_t rest = inParts(at, need);
    if (rest == kNotEnough || (m_isFound && spent + rest >= m_best)) return;
    const Room& room = m_rooms[at];
    const std::int64_t most = std::min<std::int64_t>(room.quantity, (need + room.room - 1) / room.room);
    for (std::int64_t count = most; count >= 0; --count) {
      choose(at + 1, need - count * room.room, spent + count * room.cost);
      if (m_choices > kMostChoices) return;
    }
  }

  const std::vector<Room>& m_rooms;
  std::int64_t m_best = 0;
  bool m_isFound = false;
  int m_choices = 0;
};

}  // namespace

std::int64_t leastCost(std::vector<Room> rooms, std::int64_t need) {
  if (need <= 0) return 0;
  rooms.erase(std::remove_if(rooms.begin(), rooms.end(), [](const Room& r) { return r.room <= 0 || r.quantity <= 0; }),
              rooms.end());
  std::stable_sort(rooms.begin(), rooms.end(), [](const Room& a, const Room& b) {
    return static_cast<double>(a.cost) / static_cast<double>(a.room) <
           static_cast<double>(b.cost) / static_cast<double>(b.room);
  });
  Search search(rooms);
  const std::int64_t inParts = search.inParts(0, need);
  if (inParts == kNotEnough) return kNotEnough;
  return search.run(need) ? search.best() : inParts;
}

}  // namespace core::cutting
