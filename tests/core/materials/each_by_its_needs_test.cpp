// One paper for bands of unlike needs: each strip is cut from any sheet that serves it, the way it has to lie there,
// whatever the others need and in whatever order the stock is listed.
#include <algorithm>
#include <map>
#include <numeric>
#include <random>
#include <sstream>

#include "core/materials/sheet_plan.h"
#include "tests/core/cutting/brute_force.h"
#include "tests/support/catch.h"

using namespace core::cutting;
using namespace core::materials;
using core::design::SheetSide;
using core::design::Stock;
using core::design::StockKind;

namespace {

Length whole(int millimetres) { return Length::wholeMillimetres(millimetres); }

CutPiece strip(const std::string& id, int width, int height, bool patterned, PieceGrain grain, int count) {
  CutPiece piece;
  piece.id = id;
  piece.use = PieceUse::StripHorizontal;
  piece.count = count;
  piece.width = whole(width);
  piece.height = whole(height);
  piece.patterned = patterned;
  piece.grain = grain;
  piece.material = "wave";
  return piece;
}

Stock paper(const std::string& id, int width, int height, std::optional<SheetSide> pattern,
            std::optional<SheetSide> grain, std::optional<int> quantity = std::nullopt) {
  Stock stock;
  stock.id = id;
  stock.kind = StockKind::Paper;
  stock.width = whole(width);
  stock.height = whole(height);
  stock.usableMargin = {};
  stock.material = "wave";
  stock.pattern = pattern;
  stock.grain = grain;
  stock.quantity = quantity;
  return stock;
}

struct Job {
  std::vector<CutPiece> pieces;
  std::vector<Stock> stock;
};

class Chance {
 public:
  explicit Chance(unsigned seed) : m_random(seed) {}
  int between(int least, int most) { return least + static_cast<int>(m_random() % unsigned(most - least + 1)); }
  bool oneIn(int count) { return between(1, count) == 1; }
  std::optional<SheetSide> side() {
    const int which = between(0, 4);
    if (which == 0) return std::nullopt;
    return which < 3 ? SheetSide::Width : SheetSide::Height;
  }
  PieceGrain grain() {
    static constexpr PieceGrain kGrains[] = {PieceGrain::Width, PieceGrain::Height, PieceGrain::Any};
    return kGrains[between(0, 2)];
  }
  template <typename Item>
  void shuffle(std::vector<Item>& items) {
    std::shuffle(items.begin(), items.end(), m_random);
  }

 private:
  std::mt19937 m_random;
};

// Two to four bands of one paper, patterned and plain, of unlike grain, on few sheets that are hardly enough.
Job aimed(Chance& chance, int largest, int bands, int kinds) {
  Job job;
  for (int i = 0; i < bands; ++i) {
    const std::string id = "band." + std::to_string(i);
    const bool patterned = i == 0 || chance.oneIn(3);
    const PieceGrain grain = chance.grain();
    const int wide = chance.between(1, std::max(1, largest / 6));
    job.pieces.push_back(strip(id + ".horizontal", chance.between(largest / 2, largest), wide, patterned, grain, 2));
    job.pieces.push_back(strip(id + ".vertical", chance.between(largest / 3, largest), wide, patterned, grain, 2));
  }
  const bool areAllPriced = chance.oneIn(2);
  for (int i = 0; i < kinds; ++i) {
    job.stock.push_back(paper("s" + std::to_string(i), chance.between(largest / 2, largest * 3 / 2),
                              chance.between(largest / 4, largest), chance.side(), chance.side(),
                              chance.between(1, 3)));
    Stock& stock = job.stock.back();
    stock.offcut = chance.oneIn(4);
    if (chance.oneIn(6)) stock.quantity.reset();
    if (areAllPriced || chance.oneIn(2)) stock.price = core::units::Money::parts(10'000 * chance.between(1, 9));
  }
  return job;
}

std::string describe(const Job& job) {
  std::ostringstream text;
  for (const CutPiece& piece : job.pieces) {
    text << piece.id << ' ' << piece.count << " of " << piece.width.inMillimetres() << " x "
         << piece.height.inMillimetres() << (piece.patterned ? " patterned" : "") << " grain "
         << static_cast<int>(piece.grain) << '\n';
  }
  const auto side = [](const std::optional<SheetSide>& one) {
    return !one ? "unsaid" : *one == SheetSide::Width ? "width" : "height";
  };
  for (const Stock& stock : job.stock) {
    text << stock.id << (stock.offcut ? " offcut " : " ") << stock.width.inMillimetres() << " x "
         << stock.height.inMillimetres() << " pattern " << side(stock.pattern) << " grain " << side(stock.grain)
         << " quantity " << stock.quantity.value_or(-1) << " price "
         << (stock.price ? stock.price->approximately() : -1) << '\n';
  }
  return text.str();
}

SheetSide orLong(const Stock& stock, std::optional<SheetSide> first, std::optional<SheetSide> second) {
  if (first) return *first;
  if (second) return *second;
  return stock.width >= stock.height ? SheetSide::Width : SheetSide::Height;
}

// In which ways a piece may lie on a sheet as it is listed: from the words of the header alone.
std::vector<std::pair<int, int>> waysOn(const CutPiece& piece, const Stock& stock) {
  const int width = static_cast<int>(piece.neededWidth().inMillimetres());
  const int height = static_cast<int>(piece.height.inMillimetres());
  const std::pair<int, int> level{width, height};
  const std::pair<int, int> upright{height, width};
  if (piece.patterned) {
    return {orLong(stock, stock.pattern, stock.grain) == SheetSide::Width ? level : upright};
  }
  if (piece.grain == PieceGrain::Any) return {level, upright};
  const bool isAlongWidth = orLong(stock, stock.grain, stock.pattern) == SheetSide::Width;
  return {isAlongWidth == (piece.grain == PieceGrain::Width) ? level : upright};
}

bool isLargeEnough(const CutPiece& piece, const Stock& stock) {
  const auto ways = waysOn(piece, stock);
  return std::any_of(ways.begin(), ways.end(), [&](const auto& way) {
    return way.first <= stock.width.inMillimetres() && way.second <= stock.height.inMillimetres();
  });
}

void checkSound(const Job& job, const SheetPlan& plan) {
  std::vector<int> placed(job.pieces.size(), 0);
  for (const StockGroup& group : plan.groups) {
    for (const PlanSheet& sheet : group.sheets) {
      const Stock& stock = job.stock[sheet.stock];
      for (const PieceOnSheet& one : sheet.pieces) {
        ++placed[one.piece];
        const auto ways = waysOn(job.pieces[one.piece], stock);
        const std::pair<int, int> lies{static_cast<int>(one.at.width.inMillimetres()),
                                       static_cast<int>(one.at.height.inMillimetres())};
        CHECK(std::find(ways.begin(), ways.end(), lies) != ways.end());
        const std::pair<int, int> level{static_cast<int>(job.pieces[one.piece].neededWidth().inMillimetres()),
                                        static_cast<int>(job.pieces[one.piece].height.inMillimetres())};
        if (lies.first != lies.second) CHECK(one.turned == (lies != level));
      }
    }
    for (const LeftOver& left : group.unplaced) {
      placed[left.piece] += left.count;
      const bool canBe = std::any_of(job.stock.begin(), job.stock.end(),
                                     [&](const Stock& stock) { return isLargeEnough(job.pieces[left.piece], stock); });
      CHECK(left.tooLarge == !canBe);
    }
  }
  for (std::size_t i = 0; i < placed.size(); ++i) CHECK(placed[i] == job.pieces[i].count);
}

// What a plan comes to, whatever the order: what lacks, and what each group is worth.
std::string outcome(const Job& job, const SheetPlan& plan) {
  std::ostringstream text;
  for (const StockGroup& group : plan.groups) {
    for (const LeftOver& left : group.unplaced) {
      text << job.pieces[left.piece].id << " lacks " << left.count << (left.tooLarge ? " too large\n" : " too few\n");
    }
    text << group.sheets.size() << " sheets worth " << group.worth << (group.byPrice ? " money" : " mm2") << " bound "
         << group.bound << '\n';
  }
  return text.str();
}

int lacking(const SheetPlan& plan) {
  int count = 0;
  for (const StockGroup& group : plan.groups) {
    for (const LeftOver& left : group.unplaced) count += left.count;
  }
  return count;
}

tests::CuttingTask taskOf(const Job& job, std::vector<std::size_t>& origin) {
  tests::CuttingTask task;
  for (std::size_t i = 0; i < job.pieces.size(); ++i) {
    for (int n = 0; n < job.pieces[i].count; ++n) {
      task.pieces.push_back({job.pieces[i].id, job.pieces[i].neededWidth(), job.pieces[i].height});
      origin.push_back(i);
    }
  }
  for (const Stock& stock : job.stock) {
    StockSheet sheet;
    sheet.width = stock.width;
    sheet.height = stock.height;
    sheet.quantity = stock.quantity;
    if (stock.price) sheet.price = stock.price->approximately();
    sheet.offcut = stock.offcut;
    task.stock.push_back(sheet);
  }
  return task;
}

}  // namespace

TEST_CASE("a plain band is cut from sheets of one paper whose fibres cross the pattern otherwise") {
  Job job;
  job.pieces = {strip("printed", 400, 30, true, PieceGrain::Width, 4),
                strip("plain", 400, 30, false, PieceGrain::Width, 4)};
  job.stock = {paper("p", 400, 120, SheetSide::Width, SheetSide::Width, 1),
               paper("q", 120, 400, SheetSide::Width, SheetSide::Height, 1)};
  for (int turn = 0; turn < 2; ++turn) {
    const SheetPlan plan = planSheets(job.pieces, {job.stock});
    checkSound(job, plan);
    CHECK_FALSE(plan.isShort());
    std::reverse(job.stock.begin(), job.stock.end());
  }
}

TEST_CASE("whatever order the stock is listed in, as much lacks and the sheets are worth the same") {
  Chance chance(20'260'801);
  int withLacks = 0;
  for (int round = 0; round < 300; ++round) {
    Job job = aimed(chance, 400, chance.between(2, 4), chance.between(2, 5));
    INFO(describe(job));
    const SheetPlan plan = planSheets(job.pieces, {job.stock});
    checkSound(job, plan);
    withLacks += plan.isShort();
    const std::string expected = outcome(job, plan);
    for (int i = 0; i < 3; ++i) {
      if (i == 0) {
        std::reverse(job.stock.begin(), job.stock.end());
      } else {
        chance.shuffle(job.stock);
      }
      const SheetPlan other = planSheets(job.pieces, {job.stock});
      checkSound(job, other);
      CHECK(outcome(job, other) == expected);
    }
  }
  CHECK(withLacks > 30);
  CHECK(withLacks < 270);
}

TEST_CASE("as many strips of unlike needs find room as counting everything out finds room for") {
  Chance chance(20'260'802);
  int withLacks = 0;
  for (int round = 0; round < 150; ++round) {
    Job job = aimed(chance, 14, 2, chance.between(1, 3));
    for (CutPiece& piece : job.pieces) piece.count = chance.between(1, 2);
    while (std::accumulate(job.pieces.begin(), job.pieces.end(), 0,
                           [](int sum, const CutPiece& piece) { return sum + piece.count; }) > 6) {
      job.pieces[static_cast<std::size_t>(chance.between(0, 3))].count = 1;
    }
    INFO(describe(job));
    const SheetPlan plan = planSheets(job.pieces, {job.stock});
    checkSound(job, plan);
    std::vector<std::size_t> origin;
    const tests::CuttingTask task = taskOf(job, origin);
    const auto best = tests::countedOut(task, [&](std::size_t piece, std::size_t stock) {
      return waysOn(job.pieces[origin[piece]], job.stock[stock]);
    });
    CHECK(lacking(plan) == best.unplaced);
    REQUIRE(plan.groups.size() == 1);
    CHECK(plan.groups[0].worth == best.worth);
    CHECK(static_cast<int>(plan.groups[0].sheets.size()) == best.sheets);
    withLacks += best.unplaced > 0;
  }
  CHECK(withLacks > 10);
}

TEST_CASE("boards that name their material and boards that take any share the sheets that serve both") {
  const auto board = [](const std::string& id, const std::string& material) {
    CutPiece piece = strip(id, 400, 300, false, PieceGrain::Any, 1);
    piece.use = PieceUse::Board;
    piece.thickness = whole(2);
    piece.material = material;
    return piece;
  };
  const auto sheet = [](const std::string& id, const std::string& material, int width) {
    Stock stock = paper(id, width, 300, std::nullopt, std::nullopt, 1);
    stock.kind = StockKind::Board;
    stock.thickness = whole(2);
    stock.material = material;
    return stock;
  };
  const std::vector<CutPiece> pieces = {board("any", ""), board("white", "white")};
  // Both come from the one white sheet, and the grey one, which would do for the first alone, stays whole.
  const SheetPlan plan = planSheets(pieces, {{sheet("grey", "grey", 400), sheet("white", "white", 800)}});
  CHECK_FALSE(plan.isShort());
  REQUIRE(plan.groups.size() == 1);
  REQUIRE(plan.groups[0].sheets.size() == 1);
  CHECK(plan.groups[0].sheets[0].stock == 1);
}

TEST_CASE("worth is money where every new sheet has a price, whatever offcuts lie beside them") {
  Job job;
  job.pieces = {strip("plain", 400, 30, false, PieceGrain::Any, 4)};
  job.stock = {paper("p", 400, 60, {}, {}, 4), paper("left", 400, 30, {}, {}, 1)};
  job.stock[0].price = core::units::Money::parts(25'000);
  job.stock[1].offcut = true;
  const SheetPlan plan = planSheets(job.pieces, {job.stock});
  REQUIRE(plan.groups.size() == 1);
  CHECK(plan.groups[0].byPrice);
  CHECK(plan.groups[0].worth == 5);
  CHECK(plan.groups[0].bound == 5);
  job.stock[0].price.reset();
  CHECK_FALSE(planSheets(job.pieces, {job.stock}).groups[0].byPrice);
}
