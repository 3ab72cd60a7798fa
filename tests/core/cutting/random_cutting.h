#pragma once
// Cutting tasks drawn at random, the same for the same seed.
#include <random>
#include <string>

#include "core/cutting/sheet_cutting.h"

namespace tests {

struct CuttingTask {
  std::vector<core::cutting::WantedPiece> pieces;
  std::vector<core::cutting::StockSheet> stock;
};

core::units::Length mm(double millimetres);  // to the nearest nanometre

// Sizes in whole millimetres up to `largest`, one to three kinds of stock hardly larger, kerfs of 0 to 2 mm, prices in
// whole money, offcuts and limited quantities now and then: small enough to be counted out.
CuttingTask smallTask(std::mt19937& random, int pieces, int largest);

// As makers have them: boards to cut for mounts, some in inches, some to the nanometre, several alike, grain on half.
CuttingTask anyTask(std::mt19937& random, int pieces);

// Of any task: some pieces that mind the fibres, which run upright on some of the sheets, and pieces of two makings of
// which some sheets serve only one.
void mix(CuttingTask& task, std::mt19937& random);

bool serves(const core::cutting::StockSheet& sheet, const core::cutting::WantedPiece& piece);

std::string describe(const CuttingTask& task);

}  // namespace tests
