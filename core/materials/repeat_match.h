#pragma once
// Bands whose patterned paper has to meet at the mitres: by how much it does not, and the least changes of the job
// that make it meet.
//
// A motif that is mirror-symmetric about its own centre line meets at all four corners where (W - H)/2 of the band's
// outer edge, + p/2 where one pair of strips is centred on a motif and the other on ground, is a whole number of
// repeats p. The mitre runs at 45 degrees, so what meets at its outer end meets all along it. Widths, and offsets and
// borders that change alike on all sides, move W and H alike and cannot close a corner; the ground at the sides
// against the ground at top and bottom can, of this band or of one inside it, and so can the centring. Widths and
// borders only make room for that, or keep the ground outside as it was.
//
// Cost of an option: the sum of its changes of length, each measure counted once (both sides are one measure, top and
// bottom another), in whole nanometres. Options are ranked
//   1. those that neither open another band's corners nor bring a new notice (a band that is then under the frame's
//      lip, say), then those that bring a notice, then those that open corners;
//   2. by cost; 3. by how many measures and centrings change; 4. centring untouched first;
//   5. by their greatest change; 6. in a fixed order: sides, top and bottom, both; this band before the ones inside it.
// Of options that change the same measures only the best is returned. Each has been laid out anew without an error.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/design/job_edit.h"
#include "core/design/layout.h"

namespace core::materials {

using design::JobEdit;
using units::Length;

// A step at a mitre shows from here on, mm. Common practice, no source.
inline constexpr double kMismatchShows = 0.3;
// Grounds at the sides and at top and bottom that differ by more look unequal, mm. Common practice, no source.
inline constexpr double kGroundShows = 0.5;

enum class Measure { Sides, TopBottom, Width, BorderSides, BorderTopBottom };

struct MeasureChange {
  Measure measure = Measure::Sides;
  std::size_t band = 0;  // whose offset or width; unused for borders
  Length by;
};

struct CentringChange {
  std::size_t band = 0;
  bool horizontal = false;  // the strips at top and bottom; otherwise those at the sides
  design::Centring to = design::Centring::Motif;
};

// The visible ground, mm: from the window or the band inside it to the band, and from the band to the edge of the
// mount. The inside ones are never negative.
struct Grounds {
  double insideSides = 0, insideTopBottom = 0;
  double left = 0, right = 0, top = 0, bottom = 0;
};

// The band's figures with an option applied, mm.
struct MatchFigures {
  double mismatch = 0;
  geometry::Box outer;
  double stripHorizontal = 0, stripVertical = 0;  // cut lengths
  double firstMotifHorizontal = 0, firstMotifVertical = 0;
  Grounds grounds;
};

struct OtherBand {
  std::size_t band = 0;
  double before = 0, after = 0;  // corner mismatch, mm
  bool opened = false;           // it met so that nothing showed, and is more open now
};

// An option with its new measures on the steps of a rule: 0.1 mm, or 1/32 in where the job is in inches.
struct OnSteps {
  std::vector<MeasureChange> changes;
  std::vector<JobEdit> edits;
  double mismatch = 0;  // what it leaves, at most kMismatchShows either way
};

// The purpose of an option.
enum class MatchKind {
  Centring,     // no measure changes
  OneGround,    // the sides, or top and bottom
  BothGrounds,  // each half
  Shared,       // two or more grounds, the one as far as there is room, the other the rest
  Room,         // a width or a border makes the room
  GroundKept,   // the borders follow, the ground outside stays as it was
  OthersKept,   // bands that met still do
  AllClose,     // every band's corners meet
};

struct MatchOption {
  MatchKind kind = MatchKind::OneGround;
  base::Message why;                // what speaks for it
  std::vector<base::Message> says;  // one for each change
  std::vector<MeasureChange> changes;
  std::vector<CentringChange> centrings;
  std::vector<JobEdit> edits;
  Length cost;
  MatchFigures figures;
  std::vector<OtherBand> others;  // the other bands whose corners can meet
  bool opensOthers = false;
  bool bringsNotice = false;
  std::vector<base::Message> disturbs;  // what it does besides
  std::optional<OnSteps> onSteps;       // where the exact measures are not on steps and the rest does not show
};

// A directional paper cannot mirror. Its strips run on round the mount in one direction, and only the last corner can
// fail to meet.
struct RunRound {
  // By how much the perimeter is off a whole number of repeats, in (-p/2, p/2], along each line; mm.
  double outer = 0, mean = 0, inner = 0;
  enum class Along { Outer, Mean, Inner } best = Along::Outer;  // the least of them
  double rest = 0;                                              // along the best
  // A change of the offset all round that would close it along the best line, mm. It is not checked by laying the job
  // out.
  double offsetBy = 0;
};

enum class MatchState {
  Plain,        // nothing to match, or no repeat is given
  Directional,  // cannot mirror
  Meets,        // within 1e-6 mm
  Near,         // does not show
  Open,
};

struct RepeatMatch {
  MatchState state = MatchState::Plain;
  double mismatch = 0;  // mirror motifs: mm, in (-p/2, p/2]
  std::optional<RunRound> round;
  std::vector<base::Message> notes;  // where to put a seam; what helps without changing a measure
  std::vector<MatchOption> options;  // best first; none where the corners meet
};

// Returns nothing for a band without a repeat or whose motif is no mirror.
std::optional<double> cornerMismatch(const design::Band& band, const design::BandLayout& placed);

// Returns nothing except for a directional paper with a repeat.
std::optional<RunRound> runRound(const design::Band& band, const design::BandLayout& placed);

// Requires `layout` to be the job's, without errors, and a band of that index. Pure.
RepeatMatch matchOf(const design::Job& job, const design::Layout& layout, std::size_t band);

}  // namespace core::materials
