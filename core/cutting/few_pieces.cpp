#include "core/cutting/few_pieces.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "core/base/check.h"
#include "core/cutting/fronts.h"

namespace core::cutting {
namespace {

constexpr int kAlways = 6;
constexpr std::int64_t kMostPairs = 60'000;
constexpr std::int64_t kMostSteps = 40'000'000;
constexpr std::int64_t kStepsOfAPair = 200;  // in joining two fronts, about

std::vector<int> countsOf(const CuttingProblem& problem) {
  std::vector<int> counts;
  for (const PieceKind& kind : problem.pieces) counts.push_back(kind.count());
  return counts;
}

struct Cost {
  std::int64_t worth = 0;
  int sheets = 0;
  friend auto operator<=>(const Cost&, const Cost&) = default;
};

// The sheets are offered one after another. Of each bundle the least cost of cutting just that from those offered so
// far; a kind of which there is enough for every piece is offered once and taken as often as it serves.
class Sharing {
 public:
  Sharing(const CuttingProblem& problem, const Bundles& bundles, const std::map<SheetManner, Fronts>& fronts)
      : m_problem(problem), m_bundles(bundles), m_cost(bundles.size()) {
    m_cost[0] = Cost{};
    for (std::size_t kind = 0; kind < problem.sheets.size(); ++kind) {
      const SheetKind& sheet = problem.sheets[kind];
      const Fronts& ofItsManner = fronts.at(mannerOf(sheet));
      std::vector<char> fit(bundles.size(), 0);
      for (int bundle = 1; bundle < bundles.size(); ++bundle) {
        fit[bundle] = ofItsManner.fit(bundle, sheet.width + sheet.kerf, sheet.height + sheet.kerf);
      }
      const bool isEnough = sheet.quantity >= bundles.pieces(bundles.all());
      for (int i = 0; i < (isEnough ? 1 : sheet.quantity); ++i) offer(static_cast<int>(kind), fit, isEnough);
    }
  }

  // The most pieces at the least cost.
  int best() const {
    int best = 0;
    for (int bundle = 1; bundle < m_bundles.size(); ++bundle) {
      if (!m_cost[bundle]) continue;
      const int more = m_bundles.pieces(bundle) - m_bundles.pieces(best);
      if (more > 0 || (more == 0 && *m_cost[bundle] < *m_cost[best])) best = bundle;
    }
    return best;
  }

  std::int64_t worthOf(int bundle) const { return m_cost[bundle]->worth; }

  // Returns the kind of sheet for each part of a bundle.
  std::vector<std::pair<int, int>> sharesOf(int bundle) const {
    std::vector<std::pair<int, int>> shares;
    for (std::size_t offer = m_offers.size(); offer > 0;) {
      const Offer& last = m_offers[offer - 1];
      const int part = last.taken[bundle];
      if (part != 0) {
        shares.emplace_back(last.kind, part);
        bundle -= part;
      }
      if (part == 0 || !last.isEnough) --offer;
    }
    ENSURE(bundle == 0);
    return shares;
  }

 private:
  struct Offer {
    int kind;
    bool isEnough;
    std::vector<int> taken;  // by bundle: the part that goes on this sheet
  };

  // Of a single sheet the bundles come in falling order, so that what is left after it has been cut without it; of as
  // many as are needed in rising order.
  void offer(int kind, const std::vector<char>& fit, bool isEnough) {
    Offer offer{kind, isEnough, std::vector<int>(m_bundles.size(), 0)};
    const std::int64_t worth = m_problem.sheets[kind].worth;
    bool isUsed = false;
    for (int i = 1; i < m_bundles.size(); ++i) {
      const int bundle = isEnough ? i : m_bundles.size() - i;
      for (const int* part = m_bundles.begin(bundle); part != m_bundles.end(bundle); ++part) {
        if (!fit[*part] || !m_cost[bundle - *part]) continue;
        const Cost before = *m_cost[bundle - *part];
        const Cost cost{before.worth + worth, before.sheets + 1};
        if (m_cost[bundle] && *m_cost[bundle] <= cost) continue;
        m_cost[bundle] = cost;
        offer.taken[bundle] = *part;
        isUsed = true;
      }
    }
    if (isUsed) m_offers.push_back(std::move(offer));
  }

  const CuttingProblem& m_problem;
  const Bundles& m_bundles;
  std::vector<std::optional<Cost>> m_cost;
  std::vector<Offer> m_offers;
};

std::map<SheetManner, Fronts> frontsOf(const CuttingProblem& problem, const Bundles& bundles) {
  std::map<SheetManner, std::vector<std::pair<std::int64_t, std::int64_t>>> rooms;
  std::map<SheetManner, const SheetKind*> like;
  for (const SheetKind& sheet : problem.sheets) {
    rooms[mannerOf(sheet)].emplace_back(sheet.width + sheet.kerf, sheet.height + sheet.kerf);
    like.emplace(mannerOf(sheet), &sheet);
  }
  std::map<SheetManner, Fronts> fronts;
  for (auto& [manner, sizes] : rooms) {
    fronts.emplace(manner, Fronts(problem, bundles, *like.at(manner), std::move(sizes)));
  }
  return fronts;
}

}  // namespace

bool areFew(const CuttingProblem& problem) {
  const int pieces = problem.pieceCount();
  if (pieces <= kAlways) return true;
  const std::int64_t pairs = Bundles::pairsOf(countsOf(problem));
  if (pairs > kMostPairs) return false;
  std::set<SheetManner> manners;
  std::int64_t offers = 0;
  for (const SheetKind& sheet : problem.sheets) {
    manners.insert(mannerOf(sheet));
    offers += sheet.quantity >= pieces ? 1 : sheet.quantity;
  }
  return pairs * (static_cast<std::int64_t>(manners.size()) * kStepsOfAPair + offers) <= kMostSteps;
}

SlicedPlan cutFewPieces(const CuttingProblem& problem) {
  const Bundles bundles(countsOf(problem));
  const auto fronts = frontsOf(problem, bundles);
  const Sharing sharing(problem, bundles, fronts);
  const int best = sharing.best();
  SlicedPlan plan;
  plan.worth = sharing.worthOf(best);
  plan.leftCount = bundles.pieces(bundles.all()) - bundles.pieces(best);
  for (std::size_t kind = 0; kind < problem.pieces.size(); ++kind) {
    plan.left.push_back(bundles.countOf(bundles.all() - best, static_cast<int>(kind)));
  }
  for (const auto& [kind, part] : sharing.sharesOf(best)) {
    const SheetKind& sheet = problem.sheets[kind];
    plan.sheets.push_back(
        {kind, fronts.at(mannerOf(sheet)).layOut(part, sheet.width + sheet.kerf, sheet.height + sheet.kerf)});
  }
  return plan;
}

}  // namespace core::cutting
