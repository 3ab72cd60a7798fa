#pragma once
// The steps of matching a repeat: what may be changed, what the change makes of the job, and which changes close.
// Only the files of this name call these. Changes are in nanometres.
#include <compare>
#include <set>
#include <utility>

#include "core/materials/repeat_match.h"

namespace core::materials::detail {

using Nm = std::int64_t;

struct BandChange {
  Nm sides = 0, topBottom = 0, width = 0;
  bool flipHorizontal = false, flipVertical = false;
  friend auto operator<=>(const BandChange&, const BandChange&) = default;
};

struct Change {
  std::vector<BandChange> bands;
  Nm borderSides = 0, borderTopBottom = 0;
  friend auto operator<=>(const Change&, const Change&) = default;
};

Nm cost(const Change& change);

// Returns a changed job, written and laid out. Values stay above or at what the format allows, or there is none.
std::optional<design::Job> applied(const design::Job& job, const design::Layout& layout, const Change& change);
std::vector<MeasureChange> measuresOf(const Change& change);
std::vector<CentringChange> centringsOf(const Change& change, const design::Job& changed);
std::vector<JobEdit> editsOf(const Change& change, const design::Job& job, const design::Job& changed);
// Returns the change with every measure it touches moved to the steps of a rule.
Change onSteps(const Change& change, const design::Job& job);

struct LaidOut {
  design::Job job;
  design::Layout layout;
  std::vector<base::Message> newNotices;
};

// Lays changed jobs out beside the one they come from, as long as its effort lasts. Half of it is for finding changes,
// half for describing them.
class Trial {
 public:
  Trial(const design::Job& job, const design::Layout& layout);
  // Returns nothing where the change is not allowed or does not fit.
  std::optional<LaidOut> layOut(const Change& change) const { return laidOut(change, m_telling); }
  // `strict`: without a notice the job did not have.
  bool allows(const Change& change, bool strict) const;
  const design::Job& job() const { return m_job; }
  const design::Layout& layout() const { return m_layout; }
  // Returns whether something was not tried for want of effort.
  bool spent() const { return m_finding.spent() || m_telling.spent(); }
  // Returns the corner mismatch of a band whose corners can meet.
  std::optional<double> mismatch(std::size_t band) const;

 private:
  std::optional<LaidOut> laidOut(const Change& change, design::Effort& effort) const;

  const design::Job& m_job;
  const design::Layout& m_layout;
  std::set<std::pair<std::string, std::string>> m_notices;  // place and message
  mutable design::Effort m_finding, m_telling;
};

struct Candidate {
  MatchKind kind = MatchKind::OneGround;
  Change change;
};

// By how far the sides must gain on top and bottom: the nearest closings either way, with and without another
// centring.
struct Closing {
  Nm by = 0;
  bool flip = false;
};
std::vector<Closing> closings(double mismatch, Length repeat);
// Chooses the strips to centre otherwise: those that leave a motif, not ground, in the middle of the top strip.
void flipCentring(const design::Band& band, BandChange& change);

// Changes of the grounds of this band and those inside it, with room made by widths and borders where it is short.
void collectGrounds(const Trial& trial, std::size_t band, std::vector<Candidate>& found);
// Changes of several bands that keep, or close, the corners of the others.
void collectTogether(const Trial& trial, std::size_t band, std::vector<Candidate>& found);

// Returns the option with all its members filled in; nothing where its corners do not close.
std::optional<MatchOption> optionOf(const Trial& trial, std::size_t band, const Candidate& candidate);
// Best first, one of each set of measures.
std::vector<MatchOption> ranked(std::vector<MatchOption> options);

// Returns the value modulo the repeat p, in (-p/2, p/2].
double reduced(double value, double repeat);
// A motif's distance from the cut end, from 0 up to the repeat.
double firstMotif(double strip, design::Centring centring, double repeat);

}  // namespace core::materials::detail
