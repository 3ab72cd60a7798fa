#include "tests/core/cutting/random_cutting.h"

#include <algorithm>
#include <cmath>
#include <sstream>

using namespace core::cutting;

namespace tests {
namespace {

int upTo(std::mt19937& random, int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); }

// In one of the ways lengths are entered.
Length entered(std::mt19937& random, int least, int most) {
  const int whole = least + upTo(random, most - least);
  switch (random() % 4) {
    case 0: return Length::nanometres(whole * 1'000'000LL + upTo(random, 999'999));
    case 1: return Length::nanometres(whole * 64LL / 25 * 396'875);
    default: return Length::wholeMillimetres(whole);
  }
}

}  // namespace

Length mm(double millimetres) { return Length::nanometres(std::llround(millimetres * 1e6)); }

CuttingTask smallTask(std::mt19937& random, int pieces, int largest) {
  CuttingTask task;
  for (int i = 0; i < pieces; ++i) {
    task.pieces.push_back({"piece", Length::wholeMillimetres(1 + upTo(random, largest - 1)),
                           Length::wholeMillimetres(1 + upTo(random, largest - 1)), random() % 2 == 0});
  }
  const bool areAllPriced = random() % 2 == 0;
  const bool isOneKerf = random() % 2 == 0;
  const int kerf = upTo(random, 2);
  const int kinds = 1 + upTo(random, 2);
  for (int i = 0; i < kinds; ++i) {
    StockSheet sheet;
    sheet.id = "sheet";
    sheet.margin = Length::wholeMillimetres(upTo(random, 1));
    sheet.width = Length::wholeMillimetres(largest / 2 + 2 + upTo(random, largest));
    sheet.height = Length::wholeMillimetres(largest / 2 + 2 + upTo(random, largest));
    sheet.kerf = Length::wholeMillimetres(isOneKerf ? kerf : upTo(random, 2));
    sheet.offcut = random() % 4 == 0;
    if (sheet.offcut || random() % 3 == 0) sheet.quantity = upTo(random, 2);
    if (areAllPriced || random() % 2 == 0) sheet.price = upTo(random, 9);
    task.stock.push_back(sheet);
  }
  return task;
}

CuttingTask anyTask(std::mt19937& random, int pieces) {
  CuttingTask task;
  while (static_cast<int>(task.pieces.size()) < pieces) {
    const WantedPiece piece{"piece", entered(random, 20, 480), entered(random, 20, 480), random() % 2 == 0};
    const int alike = random() % 3 == 0 ? 1 + upTo(random, 4) : 1;
    for (int i = 0; i < alike && static_cast<int>(task.pieces.size()) < pieces; ++i) task.pieces.push_back(piece);
  }
  static constexpr double kKerfs[] = {0, 0, 0.35, 1, 2.2, 3.175, 3.2};
  const bool isOneKerf = random() % 4 != 0;
  const Length kerf = mm(kKerfs[random() % 7]);
  const bool areAllPriced = random() % 2 == 0;
  const int kinds = 1 + upTo(random, 3);
  for (int i = 0; i < kinds; ++i) {
    StockSheet sheet;
    sheet.id = "sheet";
    sheet.offcut = i > 0 && random() % 3 == 0;
    sheet.width = sheet.offcut ? entered(random, 150, 500) : entered(random, 500, 1200);
    sheet.height = sheet.offcut ? entered(random, 150, 500) : entered(random, 500, 1000);
    sheet.margin = random() % 2 == 0 ? mm(5) : mm(0);
    sheet.kerf = isOneKerf ? kerf : mm(kKerfs[random() % 7]);
    if (sheet.offcut || random() % 6 == 0) sheet.quantity = 1 + upTo(random, 2);
    if (areAllPriced) sheet.price = 2 + upTo(random, 2000) / 100.0;
    task.stock.push_back(sheet);
  }
  return task;
}

void mix(CuttingTask& task, std::mt19937& random) {
  for (WantedPiece& piece : task.pieces) {
    if (!piece.mayTurn) piece.withFibres = random() % 2 == 0;
    piece.of = random() % 2 == 0 ? "reed" : "wave";
  }
  for (StockSheet& sheet : task.stock) {
    sheet.fibresUpright = random() % 2 == 0;
    if (random() % 3 == 0) sheet.serves = {random() % 2 == 0 ? "reed" : "wave"};
  }
}

bool serves(const StockSheet& sheet, const WantedPiece& piece) {
  return sheet.serves.empty() || std::count(sheet.serves.begin(), sheet.serves.end(), piece.of) > 0;
}

std::string describe(const CuttingTask& task) {
  std::ostringstream text;
  for (const auto& piece : task.pieces) {
    text << "piece " << piece.width.inMillimetres() << " x " << piece.height.inMillimetres()
         << (piece.mayTurn      ? " may turn"
             : piece.withFibres ? " with the fibres"
                                : "")
         << ' ' << piece.of << '\n';
  }
  for (const auto& sheet : task.stock) {
    text << (sheet.offcut ? "offcut " : "sheet ") << sheet.width.inMillimetres() << " x "
         << sheet.height.inMillimetres() << " margin " << sheet.margin.inMillimetres() << " kerf "
         << sheet.kerf.inMillimetres() << " quantity " << (sheet.quantity ? *sheet.quantity : -1) << " price "
         << (sheet.price ? *sheet.price : -1) << (sheet.fibresUpright ? " upright" : "");
    for (const std::string& of : sheet.serves) text << ' ' << of;
    text << '\n';
  }
  return text.str();
}

}  // namespace tests
