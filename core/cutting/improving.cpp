#include "core/cutting/improving.h"

#include <algorithm>

namespace core::cutting {
namespace {

constexpr int kKeys = 6;

double keyOf(const PieceKind& piece, int key) {
  const double width = static_cast<double>(piece.width);
  const double height = static_cast<double>(piece.height);
  switch (key) {
    case 0: return width * height;
    case 1: return std::max(width, height);
    case 2: return std::min(width, height);
    case 3: return width;
    case 4: return height;
    default: return width + height;
  }
}

// Three that cut differently.
std::vector<FillRule> rulesFrom(int index) {
  std::vector<FillRule> rules;
  for (int i = 0; i < 3; ++i) {
    FillRule rule;
    rule.split = static_cast<FillRule::Split>((index + i) % FillRule::kSplits);
    rule.choice = static_cast<FillRule::Choice>(index / FillRule::kSplits % FillRule::kChoices);
    rules.push_back(rule);
  }
  return rules;
}

}  // namespace

// The values a round must not make worse; the last favours full sheets beside empty ones, of which one is soon spared.
struct Improving::Measure {
  int left = 0;
  std::int64_t worth = 0;
  std::size_t sheets = 0;
  double fullness = 0;
  bool isNoWorseThan(const Measure& other) const {
    if (left != other.left) return left < other.left;
    if (worth != other.worth) return worth < other.worth;
    if (sheets != other.sheets) return sheets < other.sheets;
    return fullness >= other.fullness;
  }
};

Improving::Improving(const CuttingProblem& problem, const Bounds& least) : m_problem(problem), m_least(least) {
  for (std::size_t kind = 0; kind < problem.pieces.size(); ++kind) {
    m_allKinds.push_back(static_cast<int>(kind));
    m_plan.left.push_back(problem.pieces[kind].count());
    m_plan.leftCount += problem.pieces[kind].count();
  }
  for (const SheetKind& sheet : problem.sheets) m_onHand.push_back(sheet.quantity);
}

void Improving::anew(const Filler& filler, int ways) {
  for (int i = 0; i < ways && !isLeast(); ++i, ++m_way) {
    Filler::Way way;
    way.order = orderBy(m_way % kKeys, 0, m_allKinds);
    way.rules = rulesFrom(m_way / 2);
    way.waste = 1 + 0.1 * (m_way % 4);
    way.smallOffcutsFirst = m_way % 2 == 1;
    SlicedPlan plan;
    std::vector<int> onHand;
    for (const PieceKind& piece : m_problem.pieces) plan.left.push_back(piece.count());
    for (const SheetKind& sheet : m_problem.sheets) onHand.push_back(sheet.quantity);
    plan.sheets = filler.fill(way, plan.left, onHand);
    for (const int count : plan.left) plan.leftCount += count;
    for (const SlicedSheet& sheet : plan.sheets) plan.worth += filler.worthOf(sheet);
    if (!plan.isBetterThan(m_plan)) continue;
    m_plan = std::move(plan);
    m_onHand = std::move(onHand);
  }
}

void Improving::improve(const Filler& filler, int rounds) {
  m_fullness.clear();
  for (const SlicedSheet& sheet : m_plan.sheets) m_fullness.push_back(filler.fullness(sheet));
  for (int i = 0; i < rounds && !m_plan.sheets.empty() && !isLeast(); ++i) refill(filler, someSheets());
}

bool Improving::isLeast() const {
  return m_plan.leftCount == 0 && m_plan.worth <= m_least.worth &&
         static_cast<int>(m_plan.sheets.size()) <= m_least.sheets;
}

// Multiplicative congruence; the upper bits are used.
std::uint32_t Improving::random(std::uint32_t below) {
  m_seed = m_seed * 6364136223846793005ULL + 1442695040888963407ULL;
  return static_cast<std::uint32_t>((m_seed >> 33) % below);
}

std::vector<int> Improving::orderBy(int key, double noise, std::vector<int> kinds) {
  std::vector<std::pair<double, int>> keys;
  for (const int kind : kinds) {
    const double factor = noise > 0 ? 1 + noise * (random(2001) / 1000.0 - 1) : 1;
    keys.emplace_back(-keyOf(m_problem.pieces[kind], key) * factor, kind);
  }
  std::sort(keys.begin(), keys.end());
  for (std::size_t i = 0; i < keys.size(); ++i) kinds[i] = keys[i].second;
  return kinds;
}

Filler::Way Improving::anyWay(const std::vector<int>& kinds) {
  static constexpr double kNoises[] = {0, 0.1, 0.3, 0.6};
  Filler::Way way;
  way.order = orderBy(static_cast<int>(random(kKeys)), kNoises[random(4)], kinds);
  way.rules = rulesFrom(static_cast<int>(random(FillRule::kSplits * FillRule::kChoices)));
  way.waste = 1 + 0.1 * random(4);
  way.smallOffcutsFirst = random(2) == 1;
  return way;
}

// Two or three, every other time the emptiest among them.
std::vector<std::size_t> Improving::someSheets() {
  const std::uint32_t count = static_cast<std::uint32_t>(m_plan.sheets.size());
  std::vector<std::size_t> chosen;
  if (random(2) == 0) {
    chosen.push_back(
        static_cast<std::size_t>(std::min_element(m_fullness.begin(), m_fullness.end()) - m_fullness.begin()));
  }
  const std::size_t wanted = std::min<std::size_t>(2 + random(3), count);
  while (chosen.size() < wanted) {
    const std::size_t sheet = random(count);
    if (std::find(chosen.begin(), chosen.end(), sheet) == chosen.end()) chosen.push_back(sheet);
  }
  std::sort(chosen.begin(), chosen.end());
  return chosen;
}

void Improving::refill(const Filler& filler, const std::vector<std::size_t>& chosen) {
  std::vector<int> left = m_plan.left;
  std::vector<int> onHand = m_onHand;
  std::vector<int> kinds;
  Measure before{m_plan.leftCount, 0, chosen.size(), 0};
  for (std::size_t kind = 0; before.left > 0 && kind < left.size(); ++kind) {
    if (left[kind] > 0) kinds.push_back(static_cast<int>(kind));
  }
  for (const std::size_t index : chosen) {
    const SlicedSheet& sheet = m_plan.sheets[index];
    ++onHand[sheet.sheet];
    before.worth += filler.worthOf(sheet);
    before.fullness += m_fullness[index] * m_fullness[index];
    for (const Slice& slice : sheet.slices) {
      if (slice.kind >= 0 && left[slice.kind]++ == 0) kinds.push_back(slice.kind);
    }
  }
  std::sort(kinds.begin(), kinds.end());
  std::vector<SlicedSheet> sheets = filler.fill(anyWay(kinds), left, onHand);
  Measure after{0, 0, sheets.size(), 0};
  std::vector<double> full;
  for (const int kind : kinds) after.left += left[kind];
  for (const SlicedSheet& sheet : sheets) {
    full.push_back(filler.fullness(sheet));
    after.worth += filler.worthOf(sheet);
    after.fullness += full.back() * full.back();
  }
  if (!after.isNoWorseThan(before)) return;
  for (std::size_t i = chosen.size(); i > 0; --i) {
    m_plan.sheets.erase(m_plan.sheets.begin() + static_cast<std::ptrdiff_t>(chosen[i - 1]));
    m_fullness.erase(m_fullness.begin() + static_cast<std::ptrdiff_t>(chosen[i - 1]));
  }
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    m_plan.sheets.push_back(std::move(sheets[i]));
    m_fullness.push_back(full[i]);
  }
  m_plan.left = std::move(left);
  m_plan.leftCount = after.left;
  m_plan.worth += after.worth - before.worth;
  m_onHand = std::move(onHand);
}

}  // namespace core::cutting
