#pragma once
// Measures of the piece as it was made: pins. A pin fixes one figure at the length the rule shows; the layout uses it
// in place of the computed value and computes everything that depends on it from it. Parts that were cut before stay as
// they are.
//
// Lengths are entered and exact. isPinnable returns which figures may be pinned; the technique of a step states which
// of them the maker may measure.
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/message.h"
#include "core/design/job.h"
#include "core/units/length_display.h"

namespace core::design {

// How an inner window that is not yet cut changes when the opening above it differs from the computed one.
enum class Follow {
  Cover,   // keeps its size, so that the work is covered as planned; the reveal takes the difference
  Reveal,  // keeps its reveal; the cover takes the difference
};

struct AsMade {
  std::map<std::string, Length> pins;     // figure id -> as measured
  std::map<std::string, Follow> follows;  // board id -> the choice; Cover where there is none
  bool empty() const { return pins.empty() && follows.empty(); }
  friend bool operator==(const AsMade&, const AsMade&) = default;

  std::optional<Length> pin(const std::string& figure) const;
  Follow follow(const std::string& board) const;
};

// Returns whether a figure may be pinned: the outer size; a board's thickness, openings at sight and face, borders and
// diagonals; a band's inner edge as marked, its strips' lengths and width.
bool isPinnable(std::string_view figureId);

// The measure of the same opening or edge at the other side of its bevel, which this one may contradict: face of sight
// and sight of face. "" where there is none.
std::string acrossTheBevel(const std::string& figureId);

// What a measure is read from.
enum class Gauge { Rule, Micrometer };

// How far a measure may differ from the computed one before the bench reports it, by kind of figure.
struct Tolerance {
  Length within;
  std::string_view source;  // the source of the tolerance; a message id
  Gauge gauge = Gauge::Rule;
};
Tolerance toleranceOf(std::string_view figureId);

// Returns the least step that a gauge tells apart in a unit: a steel rule half a millimetre or a 32nd, a micrometer a
// twentieth of a millimetre or a 64th.
Length readingOf(Gauge gauge, units::UnitSystem units);

// Returns how far from the computed one a measure may lie at the most (see implausible), in mm.
double plausibleWithin(double computed);

// Sight and face of one opening, with the bevel between them, agree within this (common practice: what shows).
inline constexpr Length kFaceAgrees = Length::nanometres(300'000);
// Two borders and the opening between them make up the outer size within this.
inline constexpr Length kBordersClose = Length::nanometres(500'000);
// The diagonals of an opening: of one that is square they differ by no more (common practice, no source).
inline constexpr Length kSquare = Length::nanometres(500'000);

// Returns why a measure is implausible: it is zero, or so far from the computed one that the rule was misread or the
// piece has to be made again. Returns nothing where it is plausible. `computed` is in mm.
std::optional<base::Message> implausible(const std::string& figureId, Length measured, double computed);

// The job with what was measured in place of what was entered: thicknesses, widths of strips.
Job asMeasured(const Job& job, const AsMade& made);

}  // namespace core::design
