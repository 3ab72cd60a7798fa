#pragma once
// The steps of the layout, split by what they place. Only layout.cpp calls these.
#include <optional>
#include <string>

#include "core/design/effort.h"
#include "core/design/layout.h"
#include "core/geometry/region.h"

namespace core::design::detail {

// Adds an error at a place in the file. A pointer to a key the file leaves to its default is led back to the
// nearest value that is there when the problems are put in order.
void conflict(base::Problems& problems, std::string pointer, base::Message message,
              base::Severity severity = base::Severity::Error);

// Returns whether a part of that length can be cut, which is so up to 10 m. Otherwise adds the message with {length}
// and {most}.
bool checkCuttable(double length, std::string pointer, base::Message message, base::Problems& problems);

inline base::Millimetres mm(Length length) { return {length.inMillimetres()}; }

// Returns whether there is effort left to lay a job out at all. Where there is none, adds job.too-much-to-place, as the
// first place that spends the rest does.
bool mayBegin(const Job& job, Effort& effort, base::Problems& problems);
// Returns mm2, as geometry::area does. Where the effort is spent it returns 0 and adds the same error.
double areaOf(const std::vector<geometry::Patch>& inside, const std::vector<geometry::Patch>& without,
              const std::string& pointer, Effort& effort, base::Problems& problems);
// Returns whether there is effort left to move an outline.
bool mayMove(const Outline& outline, const std::string& pointer, Effort& effort, base::Problems& problems);

// The rectangle of the whole mount and the box of the top board's face opening, in mm from the mount's top left.
Rectangle mountRectangle(const Layout& layout);
Rectangle faceRectangle(const Layout& layout);

// Returns the region within a ring about the face box.
geometry::Patch patchOf(const Layout& layout, const geometry::Ring& ring);
// An area under a thousandth of a square millimetre is rounding, not a field or an overlap.
inline constexpr double kNothing = 1e-3;

// The box of the opening of the innermost board, exact.
struct ExactBox {
  Length width, height;
  Box box() const { return {width.inMillimetres(), height.inMillimetres()}; }
};
ExactBox visibleOpening(const Job& job, base::Problems& problems);
// The openings of all boards, innermost first, about the window's own centre line; placed on the mount once the
// borders are known. Returns false where an outline could not be made: nothing else has a meaning then.
bool makeOpenings(const Job& job, ExactBox opening, Layout& layout, Effort& effort, base::Problems& problems);
void settleOpenings(Layout& layout);
// Moves the openings to where they were measured, and what follows them. Requires settled openings and the outer size.
// Returns false where an outline could not be made.
bool openAsMade(const Job& job, const AsMade& made, Layout& layout, Effort& effort, base::Problems& problems);
// Checks that the work is still covered by an opening that came out larger.
void checkCover(const Job& job, const Layout& layout, base::Problems& problems);

// Returns the outline that bounds a line, a wash or a leaf field that follows the window: the top board's face outline
// moved outwards. Adds an error at `pointer` and returns nothing where it cannot be moved so far.
std::optional<Outline> roundWindow(const Layout& layout, double by, const std::string& pointer, const std::string& id,
                                   Effort& effort, base::Problems& problems);
// The place of a line or a band: its ring about the face box, or about the face outline where it is curved, and the box
// of its outer edge.
struct Lie {
  geometry::Ring ring;
  bool curved = false;
  Rectangle reach;
};
// Returns by how much two overlap: the least distance one would have to move for them to part; zero or less where they
// do not. Exact for two of a kind; of a curved and a rectangular one, how far the curved one's box reaches over the
// inner edge of the other.
double overlapOf(const Layout& layout, const Lie& a, const Lie& b);
// An element that follows an edge at a gap, as a line or a wash does.
struct Followed {
  Edge along = Edge::Window;
  std::string band;
  Length gap, width;
};
geometry::Ring ringOf(const Followed& followed, const Layout& layout);
// Adds the error of hanging over the edge, or the notice of reaching under the frame's lip.
void checkReach(const Job& job, const Layout& layout, const Rectangle& reach, const std::string& id,
                const std::string& pointer, base::Problems& problems);

void placeBands(const Job& job, const AsMade& made, Layout& layout, base::Problems& problems);
void placeLines(const Job& job, Layout& layout, Effort& effort, base::Problems& problems);
void placeSpandrels(const Job& job, Layout& layout, Effort& effort, base::Problems& problems);
void placeWashes(const Job& job, Layout& layout, Effort& effort, base::Problems& problems);
void placeLeaf(const Job& job, Layout& layout, Effort& effort, base::Problems& problems);

}  // namespace core::design::detail
