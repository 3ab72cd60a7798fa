#include "core/materials/cutting_list.h"

#include <algorithm>
#include <cmath>

#include "core/design/package_parts.h"

namespace core::materials {
namespace {

using design::Grain;
using design::Job;
using design::Layout;

PieceGrain alongLongSide(const CutPiece& piece) {
  return piece.width >= piece.height ? PieceGrain::Width : PieceGrain::Height;
}

PieceGrain wished(std::optional<Grain> grain) {
  if (!grain || *grain == Grain::Any) return PieceGrain::Any;
  return *grain == Grain::Along ? PieceGrain::Width : PieceGrain::Height;
}

// A blank of the mount's outer size.
CutPiece blank(const Layout& layout, std::string id, PieceUse use, Length thickness) {
  CutPiece piece;
  piece.id = std::move(id);
  piece.use = use;
  piece.width = wholeNanometre(layout.outerWidth);
  piece.height = wholeNanometre(layout.outerHeight);
  piece.thickness = thickness;
  piece.grain = use == PieceUse::Glazing ? PieceGrain::Any : alongLongSide(piece);
  piece.figures = {"outer.width", "outer.height"};
  return piece;
}

// Of the innermost board's kind, since it is as thick, and clear of every edge of the sheet.
CutPiece supportPiece(const design::Support& support, const design::Board& innermost) {
  CutPiece piece;
  piece.id = "support";
  piece.use = PieceUse::Support;
  piece.width = support.width;
  piece.height = support.height;
  piece.thickness = support.thickness;
  piece.grain = alongLongSide(piece);
  if (support.thickness == innermost.thickness) piece.material = innermost.material;
  piece.figures = {"package.support.width", "package.support.height"};
  return piece;
}

CutPiece spacerPiece(const design::SpacerStrips& strips, Length thickness, bool horizontal) {
  const std::string side = horizontal ? "horizontal" : "vertical";
  CutPiece piece;
  piece.id = "spacer." + side;
  piece.use = horizontal ? PieceUse::SpacerHorizontal : PieceUse::SpacerVertical;
  piece.count = 2;
  piece.width = wholeNanometre(horizontal ? strips.horizontal : strips.vertical);
  piece.height = strips.width;
  piece.thickness = thickness;
  piece.figures = {"package.spacer." + side, "package.spacer.width"};
  return piece;
}

CutPiece strip(const design::Band& band, const design::BandLayout& placed, bool horizontal) {
  const std::string side = horizontal ? "horizontal" : "vertical";
  CutPiece piece;
  piece.id = "band." + band.id + '.' + side;
  piece.use = horizontal ? PieceUse::StripHorizontal : PieceUse::StripVertical;
  piece.element = band.id;
  piece.count = 2;
  piece.width = wholeNanometre(horizontal ? placed.stripHorizontal : placed.stripVertical);
  piece.height = band.width;
  piece.patterned = band.repeat.has_value();
  piece.allowance = band.repeat.value_or(Length());
  piece.grain = wished(band.grain);
  piece.material = band.paper;
  piece.figures = {"band." + band.id + ".strip." + side, "band." + band.id + ".strip.width"};
  return piece;
}

CutPiece paperOf(const design::Spandrel& spandrel, const design::SpandrelLayout& placed) {
  CutPiece piece;
  piece.id = "spandrel." + spandrel.id;
  piece.use = PieceUse::Spandrel;
  piece.element = spandrel.id;
  piece.width = wholeNanometre(placed.paper.right - placed.paper.left) + 2 * spandrel.trim;
  piece.height = wholeNanometre(placed.paper.bottom - placed.paper.top) + 2 * spandrel.trim;
  piece.grain = wished(spandrel.grain);
  piece.material = spandrel.paper;
  piece.figures = {"spandrel." + spandrel.id + ".width", "spandrel." + spandrel.id + ".height"};
  return piece;
}

}  // namespace

bool isBought(PieceUse use) {
  return use == PieceUse::Glazing || use == PieceUse::SpacerHorizontal || use == PieceUse::SpacerVertical;
}

Length wholeNanometre(double millimetres) {
  constexpr double kHair = 1e-3;  // of a nanometre; sums of doubles below ten metres are truer than that
  return Length::nanometres(
      static_cast<std::int64_t>(std::ceil(millimetres * static_cast<double>(units::kNanometresPerMillimetre) - kHair)));
}

std::vector<CutPiece> stillToCut(std::vector<CutPiece> pieces, const std::map<std::string, int>& cut) {
  for (CutPiece& piece : pieces) {
    if (const auto done = cut.find(piece.id); done != cut.end()) piece.count -= done->second;
  }
  const auto gone =
      std::remove_if(pieces.begin(), pieces.end(), [](const CutPiece& piece) { return piece.count <= 0; });
  pieces.erase(gone, pieces.end());
  return pieces;
}

std::vector<CutPiece> cuttingList(const Job& job, const Layout& layout) {
  std::vector<CutPiece> pieces;
  for (const design::Board& board : job.boards) {
    CutPiece piece = blank(layout, "board." + board.id, PieceUse::Board, board.thickness);
    piece.element = board.id;
    piece.material = board.material;
    pieces.push_back(std::move(piece));
  }
  const design::Package& package = job.package;
  const auto part = [&](const char* id, PieceUse use, Length thickness) {
    if (thickness > Length()) pieces.push_back(blank(layout, id, use, thickness));
  };
  // Nothing is cut that is not delivered.
  if (job.deliver != units::Deliver::Mount) part("back-mount", PieceUse::BackMount, package.backMount);
  if (const auto support = design::supportOf(job)) pieces.push_back(supportPiece(*support, job.boards.back()));
  if (job.deliver == units::Deliver::Framed) {
    part("backing", PieceUse::Backing, package.backing);
    part("glazing", PieceUse::Glazing, package.glazing);
  }
  if (const auto strips = design::spacerOf(job, layout)) {
    pieces.push_back(spacerPiece(*strips, package.spacer, true));
    pieces.push_back(spacerPiece(*strips, package.spacer, false));
  }
  for (const design::Band& band : job.bands) {
    const design::BandLayout* placed = layout.band(band.id);
    if (placed == nullptr) continue;
    pieces.push_back(strip(band, *placed, true));
    pieces.push_back(strip(band, *placed, false));
  }
  for (const design::Spandrel& spandrel : job.spandrels) {
    if (const auto* placed = layout.spandrel(spandrel.id)) pieces.push_back(paperOf(spandrel, *placed));
  }
  for (CutPiece& piece : pieces) piece.count *= job.count;
  return pieces;
}

}  // namespace core::materials
