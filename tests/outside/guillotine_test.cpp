// Source: the test problems gcut1 to gcut8 and their proven best worths, Beasley 1985, J. Oper. Res. Soc. 36:297-306
// (tests/outside/guillotine/README.md): guillotine cuts, no turning, each piece as often as one likes.
#include <sstream>

#include "core/cutting/most_worth.h"
#include "core/cutting/sheet_cutting.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using namespace core::cutting;

namespace {

// The rows of numbers below the heading.
std::vector<std::vector<std::int64_t>> rowsOf(const std::string& name) {
  const auto text = tests::readWholeFile(PROJECT_ROOT "/tests/outside/guillotine/" + name);
  REQUIRE(text);
  std::istringstream lines(*text);
  std::string line;
  std::getline(lines, line);
  std::vector<std::vector<std::int64_t>> rows;
  while (std::getline(lines, line)) {
    if (line.empty()) continue;
    std::istringstream fields(line);
    auto& row = rows.emplace_back();
    for (std::string field; std::getline(fields, field, ',');) row.push_back(std::stoll(field));
  }
  return rows;
}

struct Published {
  std::string name;
  std::int64_t best;
  std::size_t pieces;
};

const std::vector<Published> kPublished{{"gcut1", 56460, 10},  {"gcut2", 60536, 20},  {"gcut3", 61036, 30},
                                        {"gcut4", 61698, 50},  {"gcut5", 246000, 10}, {"gcut6", 238998, 20},
                                        {"gcut7", 242567, 30}, {"gcut8", 246633, 50}};

}  // namespace

TEST_CASE("the most worth of a sheet is what was published for eight known problems") {
  for (const Published& published : kPublished) {
    INFO(published.name);
    const auto items = rowsOf(published.name + "_items.csv");
    const auto sheet = rowsOf(published.name + "_bins.csv").at(0);
    REQUIRE(items.size() == published.pieces);
    std::vector<ValuedPiece> pieces;
    for (const auto& item : items) pieces.push_back({item.at(1), item.at(2), false, item.at(3)});
    CHECK(mostWorth(sheet.at(1), sheet.at(2), 0, pieces) == published.best);
  }
}

TEST_CASE("no cut sheet of the known problems holds more than the published most") {
  for (const Published& published : kPublished) {
    INFO(published.name);
    const auto sheet = rowsOf(published.name + "_bins.csv").at(0);
    StockSheet stock;
    stock.width = Length::wholeMillimetres(sheet.at(1));
    stock.height = Length::wholeMillimetres(sheet.at(2));
    std::vector<WantedPiece> pieces;
    for (const auto& item : rowsOf(published.name + "_items.csv")) {
      pieces.push_back({"item", Length::wholeMillimetres(item.at(1)), Length::wholeMillimetres(item.at(2)), false});
    }
    const CuttingPlan plan = cutSheets(pieces, {stock});
    CHECK(plan.unplaced.empty());
    for (const CutSheet& cut : plan.sheets) {
      double area = 0;
      for (const PlacedPiece& piece : cut.pieces) {
        area += pieces[piece.piece].width.inMillimetres() * pieces[piece.piece].height.inMillimetres();
      }
      CHECK(area <= static_cast<double>(published.best));
    }
  }
}
