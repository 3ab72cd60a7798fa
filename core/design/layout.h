#pragma once
// The layout: the places of every board edge, band, line and leaf region, computed from what was entered, each from its
// datum. Millimetres in double; entered lengths are exact, derived ones carry rounding of the last bit only. Left and
// right are as seen from the face.
#include <map>
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/design/as_made.h"
#include "core/design/effort.h"
#include "core/design/job.h"
#include "core/geometry/outline.h"
#include "core/geometry/rectangle.h"
#include "core/geometry/region.h"

namespace core::design {

using geometry::Box;
using geometry::Outline;
using geometry::Rectangle;

// Outlines and rectangles are in mm from the mount's top left corner as seen from the face, y downwards.
struct BoardLayout {
  std::string id;
  double thickness = 0;
  Box sight;                          // box of the opening at the back, where the cut is marked
  Box face;                           // box of the opening at the face
  Rectangle sightAt, faceAt;          // the places of those boxes
  Outline sightOutline, faceOutline;  // the openings themselves
  double sightPerimeter = 0, sightArea = 0, facePerimeter = 0;
  double bevelPlan = 0;
  double bevelSlope = 0;
  double bevelAngle = 45;  // degrees
  double bevelArea = 0;
  // Set for inner boards. Where the openings were measured it may differ from side to side; then this is the least.
  double reveal = 0;
  double flatReveal = 0;
  bool evenReveal = true;
  double revealTop = 0, revealBottom = 0, revealLeft = 0, revealRight = 0;  // unless even
  double borderTop = 0, borderBottom = 0, borderLeft = 0, borderRight = 0;
  // The diagonals of a plain rectangle's opening at sight: the one from the marked corner, and the other.
  double diagonalMarked = 0, diagonalOther = 0;
  double axis = 0, springing = 0;  // of its window, from the left and top edge of the mount
};

struct BandLayout {
  std::string id;
  Box inner, outer;
  double width = 0;
  double stripHorizontal = 0, stripVertical = 0;  // cut lengths
  double trim = 0;                                // beyond the outer corners; the longer where strips were measured
  double mitre = 0;
  double dryEnd = 0;
  double glueFrom = 0;  // from the cut end
  double area = 0;
  geometry::Ring ring;  // from the top board's face edge outwards; where it was marked elsewhere, to the nanometre
  bool markedAcross = false, markedDown = false;  // it, or a band inside it, is placed where it was marked
};

struct LineLayout {
  std::string id;
  Box path;  // box of the centre's path
  Outline inner, centre, outer;
  double total = 0;  // length of the centre's path
  double width = 0;
  double offset = 0;  // centre from the edge it follows
  // Its place about the top board's face box, or about the face outline itself where it follows a shaped window.
  geometry::Ring ring;
  bool curved = false;                              // follows a shaped window
  bool corners = false;                             // its path has square corners
  double fromFaceSides = 0, fromFaceTopBottom = 0;  // centre from the face edge, outwards
};

struct SpandrelLayout {
  std::string id;
  Rectangle frame;  // the rectangle it fills, without what is tucked under
  Rectangle paper;  // the box of the cut piece
  Outline cut;      // the piece as cut
  Outline seen;     // what shows inside the frame
  double area = 0;  // of the piece
  geometry::Ring ring;
};

struct WashLayout {
  std::string id;
  double width = 0;  // the narrowest, where it is not the same all round
  double area = 0;
  Outline inner, outer;
  geometry::Ring ring;
};

struct LeafLayout {
  std::string id;
  double area = 0;  // mm2
  double sheets = 0;
  double size = 0;       // ml
  geometry::Ring ring;   // the bounds of its region; unused for a bevel
  Outline outer, inner;  // of its region, which stays off the outer edge; areas left out inside it do not show here
  bool onBevel = false;
  // The field itself: in all of the first and in none of the second.
  std::vector<geometry::Patch> within, without;
};

struct Layout {
  Box visible;
  bool shaped = false;   // the window is no plain rectangle
  double axis = 0;       // the top window's centre line, from the left edge of the mount
  double springing = 0;  // where its curves begin above the jambs, from the top edge
  Box widerBy;           // by how much the visible opening came out larger than planned
  double outerWidth = 0, outerHeight = 0;
  std::vector<BoardLayout> boards;
  std::vector<BandLayout> bands;
  std::vector<LineLayout> lines;
  std::vector<SpandrelLayout> spandrels;
  std::vector<WashLayout> washes;
  std::vector<LeafLayout> leaf;
  double artLeft = 0, artTop = 0;
  double sheetWidth = 0, sheetHeight = 0;
  double rebateWidth = 0, rebateHeight = 0, rebateDepth = 0;
  double packageDepth = 0;
  double seenTop = 0, seenBottom = 0, seenLeft = 0, seenRight = 0;
  double framedTop = 0, framedBottom = 0, framedLeft = 0, framedRight = 0;

  const BoardLayout* board(const std::string& id) const;
  const BandLayout* band(const std::string& id) const;
  const LineLayout* line(const std::string& id) const;
  const SpandrelLayout* spandrel(const std::string& id) const;
  const WashLayout* wash(const std::string& id) const;
  // Returns the ids of bands, lines, spandrels, washes and leaf fields that touch an element or lie inside its area,
  // without the element itself.
  std::vector<std::string> inReachOf(const std::string& id) const;
  // Returns the ids of lines by distance from the window, innermost first.
  std::vector<std::string> linesFromWindow() const;
};

// Computes the layout and adds every conflict: what overlaps, hangs over an edge, or does not fit, each at its place
// with the sizes and by how much. The layout is usable only where no error was added. A pinned figure is as measured,
// whatever was computed, and everything that depends on it is computed from the measure. A board's openings follow pins
// of the boards above it and never of those below; the outer size follows none but its own. A window keeps its mark
// nearest the datum edge, and the far border shrinks by what an opening came out wider; inner windows are centred in
// the opening above. Measures that contradict each other are errors.
Layout layOut(const Job& job, const AsMade& made, base::Problems& problems);
Layout layOut(const Job& job, base::Problems& problems);
// Does the same within an effort that several layouts share. Where it is spent, job.too-much-to-place is among the
// errors.
Layout layOut(const Job& job, const AsMade& made, Effort& effort, base::Problems& problems);

}  // namespace core::design
