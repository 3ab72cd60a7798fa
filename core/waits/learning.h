#pragma once
// Learns k from a maker's own found times: the factor by which a kind's times are longer here than modelled. These are
// pure functions; the caller collects the found times from the record.
//
// Kinds teach each other only where one cause changes them all: water leaving a film that this maker lays. Soaking,
// cooling, pressing, taking up oxygen and coming to tack are learned from their own looks alone.
//
// The model of such films: the maker's overall m ~ N(0, 0.35^2 - 0.25^2), ln k of each kind ~ N(m, 0.25^2), so that a
// kind alone has the prior N(0, 0.35^2) and kinds teach each other about the maker; any other kind has that prior and
// nobody to teach it. A single time scatters round k as likelihood.h says. Solved on a grid of 200 points of ln k from
// -1.5 to 1.5 (a factor of 0.22 to 4.5). The standard deviations are our judgement, tried on simulated makers.
#include <compare>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/units/span.h"
#include "core/waits/likelihood.h"

namespace core::waits {

inline constexpr double kPriorVariance = 0.35 * 0.35;
inline constexpr double kWithinMakerVariance = 0.25 * 0.25;  // of kinds round the maker's overall m

// The cause that changes a kind's times besides the room.
enum class Cause {
  Own,   // a cause that no other kind has
  Film,  // how this maker's films lie and dry
};

struct Kind {
  std::string name;
  Cause cause = Cause::Own;

  friend auto operator<=>(const Kind&, const Kind&) = default;
};

// Returns whether a found time is so far outside the stated span that the maker has to confirm it: sooner than a third
// of its early time, or not yet after three times its late one. The bounds are in stated time over the span's likely
// time, as an Observation has them.
inline constexpr double kBelievable = 3;
bool farOutside(double lower, double upper, const units::Span& stated);

struct Belief {
  double mean = 0;                   // of ln k
  double variance = kPriorVariance;  // of ln k; never more than before anything was found
  double resolved = 0;               // 0 to 1: the share of that first variance which is gone
  int count = 0;                     // meaningful observations of this kind
  std::optional<double> recent;      // median ratio of the newest bounded ones, each by its middle in ln
  int recentCount = 0;               // how many those are, at most three

  // The factor to expect: exp(mean). The density's own median predicts no better.
  double median() const;
};

class Beliefs {
 public:
  // Observations that are not meaningful are ignored. Neither the order of observations nor of kinds matters.
  explicit Beliefs(const std::map<Kind, std::vector<Observation>>& byKind, Scatter scatter = Scatter::Robust);

  // For a film never found, returns the belief from the maker's other films; for another kind never found, the prior.
  Belief of(const Kind& kind) const;

 private:
  std::map<Kind, Belief> m_byKind;
  Belief m_unseenFilm;
};

// The modelled span after what was learned. The likely time is multiplied by the belief's median. Each half-width h,
// in ln (of late to likely, of likely to early), becomes
//   u 1.2816 sqrt(belief.variance + kScatter^2) + (1 - u) h,  u = 1 - (1 - belief.resolved)^2.
// The stated width is left behind sooner than the variance goes, because stated widths are often far too narrow or too
// wide: with this, some four in five simulated times fall within after five waits of a kind, whatever was stated
// between 0.2 and 0.9.
//
// Where nothing was learned it is the modelled span itself. `modelled` must satisfy 0 <= early <= likely <= late, and
// so does the result. A likely time of zero has no width in ln: early stays, late alone is multiplied. An early time of
// zero has none below: it becomes the share u of the time that the belief's own width gives.
units::Span learned(const units::Span& modelled, const Belief& belief);

}  // namespace core::waits
