#include "core/cutting/cuts.h"

#include <algorithm>
#include <optional>

#include "core/base/check.h"
#include "core/cutting/fence_order.h"
#include "core/cutting/wide_area.h"

namespace core::cutting {
namespace {

struct Box {
  std::int64_t width = 0, height = 0;
};

// A part in hand, and the cut it comes from.
struct Part {
  std::int64_t x = 0, y = 0, width = 0, height = 0;
  int after = -1;
};

Area areaOf(const Part& part) {
  return {Length::nanometres(part.x), Length::nanometres(part.y), Length::nanometres(part.width),
          Length::nanometres(part.height)};
}

class LayingOut {
 public:
  LayingOut(const CuttingProblem& problem, const SlicedSheet& sliced)
      : m_problem(problem), m_slices(sliced.slices), m_kerf(problem.sheets[sliced.sheet].kerf) {
    for (const Slice& slice : m_slices) m_boxes.push_back(boxOf(slice));
    const SheetKind& sheet = problem.sheets[sliced.sheet];
    lay(static_cast<int>(m_slices.size()) - 1, {0, 0, sheet.width, sheet.height, -1});
  }

  LaidSheet laid() {
    m_laid.cuts = inFenceOrder(m_cuts);
    std::stable_sort(m_laid.rest.begin(), m_laid.rest.end(), [](const Area& a, const Area& b) {
      return WideArea::of(a.width.inNanometres(), a.height.inNanometres()) >
             WideArea::of(b.width.inNanometres(), b.height.inNanometres());
    });
    return std::move(m_laid);
  }

 private:
  Box boxOf(const Slice& slice) const {
    if (slice.kind >= 0) {
      const PieceKind& piece = m_problem.pieces[slice.kind];
      return slice.turned ? Box{piece.height, piece.width} : Box{piece.width, piece.height};
    }
    const Box& a = m_boxes[slice.first];
    const Box& b = m_boxes[slice.second];
    return slice.beside ? Box{a.width + m_kerf + b.width, std::max(a.height, b.height)}
                        : Box{std::max(a.width, b.width), a.height + m_kerf + b.height};
  }

  std::int64_t along(const Box& box, bool beside) const { return beside ? box.width : box.height; }
  std::int64_t along(const Part& part, bool beside) const { return beside ? part.width : part.height; }

  void lay(int node, const Part& part) {
    const Slice& slice = m_slices[node];
    std::vector<int> members;
    if (slice.kind >= 0) {
      members = {node};
    } else {
      collect(node, slice.beside, members);
    }
    // Those that reach farthest across come first, so that what the others leave lies together; equal ones follow one
    // another.
    const bool beside = slice.kind >= 0 || slice.beside;
    std::stable_sort(members.begin(), members.end(), [&](int a, int b) {
      const std::int64_t acrossA = along(m_boxes[a], !beside);
      const std::int64_t acrossB = along(m_boxes[b], !beside);
      return acrossA != acrossB ? acrossA > acrossB : along(m_boxes[a], beside) > along(m_boxes[b], beside);
    });
    row(members, beside, part);
  }

  // The nodes that lie in one row, whatever pairs the tree has them in.
  void collect(int node, bool beside, std::vector<int>& members) const {
    std::vector<int> open{node};
    while (!open.empty()) {
      const int next = open.back();
      open.pop_back();
      const Slice& slice = m_slices[next];
      if (slice.kind >= 0 || slice.beside != beside) {
        members.push_back(next);
      } else {
        open.push_back(slice.second);
        open.push_back(slice.first);
      }
    }
  }

  // Where in a row the rest across it begins that is worth the most: at a member (its and the followers' rest and what
  // lies beyond the last), or beyond the last. Nothing where no rest is left at all.
  std::optional<std::size_t> bestRest(const std::vector<int>& members, bool beside, const Part& part) const {
    std::optional<std::size_t> best;
    WideArea most;
    std::int64_t free = along(part, beside);
    for (std::size_t i = 0; i <= members.size(); ++i) {
      const std::int64_t across =
          along(part, !beside) - (i < members.size() ? along(m_boxes[members[i]], !beside) + m_kerf : 0);
      if (free > 0 && across > 0 && most < WideArea::of(free, across)) {
        most = WideArea::of(free, across);
        best = i;
      }
      if (i < members.size()) free -= along(m_boxes[members[i]], beside) + m_kerf;
    }
    return best;
  }

  // Lays the members, sorted, into the part.
  void row(const std::vector<int>& members, bool beside, Part part) {
    if (members.size() == 1 && m_slices[members.front()].kind < 0) return lay(members.front(), part);
    const std::int64_t farthest = along(m_boxes[members.front()], !beside);
    const auto at = bestRest(members, beside, part);
    if (at == 0 || (!at && along(part, !beside) > farthest)) {
      const auto rest = cut(part, !beside, farthest);
      if (rest) keep(*rest);
      return row(members, beside, part);
    }
    const std::size_t head = at ? *at : members.size();
    // Members that fill the part across are cut off one by one, others together, to be trimmed in one cut.
    if (along(part, !beside) > farthest && head > 1) {
      const std::vector<int> first(members.begin(), members.begin() + static_cast<std::ptrdiff_t>(head));
      std::int64_t length = -m_kerf;
      for (const int member : first) length += along(m_boxes[member], beside) + m_kerf;
      const auto others = cut(part, beside, length);
      row(first, beside, part);
      return follow(members, head, beside, others);
    }
    std::optional<Part> others = part;
    for (std::size_t i = 0; i < head; ++i) {
      ENSURE(others.has_value());
      Part one = *others;
      others = cut(one, beside, along(m_boxes[members[i]], beside));
      layOne(members[i], one);
    }
    follow(members, head, beside, others);
  }

  void follow(const std::vector<int>& members, std::size_t from, bool beside, const std::optional<Part>& others) {
    if (from == members.size()) {
      if (others) keep(*others);
      return;
    }
    ENSURE(others.has_value());
    row({members.begin() + static_cast<std::ptrdiff_t>(from), members.end()}, beside, *others);
  }

  void layOne(int node, const Part& part) {
    const Slice& slice = m_slices[node];
    if (slice.kind < 0 || m_boxes[node].width != part.width || m_boxes[node].height != part.height) {
      return lay(node, part);
    }
    m_laid.pieces.push_back({slice.kind, slice.turned, Length::nanometres(part.x), Length::nanometres(part.y)});
  }

  // Leaves in `part` what lies before the fence. Returns what lies beyond the kerf, if anything.
  std::optional<Part> cut(Part& part, bool upright, std::int64_t fence) {
    const std::int64_t whole = upright ? part.width : part.height;
    ENSURE(fence > 0 && fence <= whole);
    if (fence == whole) return std::nullopt;
    m_cuts.push_back({{areaOf(part), upright, Length::nanometres(fence)}, part.after});
    part.after = static_cast<int>(m_cuts.size()) - 1;
    Part beyond = part;
    (upright ? beyond.x : beyond.y) += fence + m_kerf;
    (upright ? beyond.width : beyond.height) = whole - fence - m_kerf;
    (upright ? part.width : part.height) = fence;
    if (whole - fence <= m_kerf) return std::nullopt;
    return beyond;
  }

  void keep(const Part& part) { m_laid.rest.push_back(areaOf(part)); }

  const CuttingProblem& m_problem;
  const std::vector<Slice>& m_slices;
  std::int64_t m_kerf;
  std::vector<Box> m_boxes;
  std::vector<DependentCut> m_cuts;
  LaidSheet m_laid;
};

}  // namespace

LaidSheet layOut(const CuttingProblem& problem, const SlicedSheet& sliced) { return LayingOut(problem, sliced).laid(); }

}  // namespace core::cutting
