#pragma once
// The piece that a wait runs at, and where on it what is wet lies.
#include <QRectF>

#include "app/painting/paths.h"
#include "app/viewmodels/bench/drawn_once.h"
#include "app/viewmodels/piece_drawing.h"
#include "core/workflow/workflow.h"

namespace app::viewmodels {

struct WetPiece {
  PieceDrawing drawing;  // nothing where the wait is of the shop, as paste in its jar is
  QRectF wet;            // mm of the piece; null where it has no place on it
  friend bool operator==(const WetPiece&, const WetPiece&) = default;
};

// Returns the piece from its face, by which it is known, as far as it has grown.
inline PieceDrawing pieceOf(DrawnOnce& drawn, const core::jobs::JobState& state) {
  PieceDrawing drawing;
  drawing.piece = drawn.piece(state.design, core::sheets::Side::Face, drawn.growth(state));
  return drawing;
}

inline WetPiece wetPiece(DrawnOnce& drawn, const core::jobs::JobState& state, const core::jobs::RunningWait& run) {
  if (run.step->ofShop) return {};
  WetPiece found{pieceOf(drawn, state), {}};
  const auto at = [&](bool byAct) {
    return painting::extentOf(*found.drawing.piece, [&](const core::sheets::Primitive& primitive) {
      return byAct ? core::sheets::isWorkedBy(primitive, *run.step)
                   : primitive.matter && core::sheets::belongsTo(primitive.element, run.step->thing);
    });
  };
  found.wet = at(true);
  if (found.wet.isEmpty()) found.wet = at(false);
  return found;
}

}  // namespace app::viewmodels
