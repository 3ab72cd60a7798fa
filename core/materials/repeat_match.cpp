#include "core/materials/repeat_match.h"

#include <algorithm>
#include <cmath>

#include "core/base/check.h"
#include "core/materials/repeat_match_internal.h"

namespace core::materials {
namespace {

using base::Message;
using base::Millimetres;
using design::Centring;
using design::Motif;

constexpr double kMeets = 1e-6;

std::vector<Message> seamNotes(const RunRound& round) {
  const Millimetres rest{std::fabs(round.rest)};
  std::vector<Message> notes;
  if (std::fabs(round.rest) <= kMismatchShows) {
    switch (round.best) {
      case RunRound::Along::Outer: notes.push_back(Message("match.round-closes-outer").with("rest", rest)); break;
      case RunRound::Along::Mean: notes.push_back(Message("match.round-closes-mean").with("rest", rest)); break;
      case RunRound::Along::Inner: notes.push_back(Message("match.round-closes-inner").with("rest", rest)); break;
    }
  } else {
    switch (round.best) {
      case RunRound::Along::Outer: notes.push_back(Message("match.round-open-outer").with("rest", rest)); break;
      case RunRound::Along::Mean: notes.push_back(Message("match.round-open-mean").with("rest", rest)); break;
      case RunRound::Along::Inner: notes.push_back(Message("match.round-open-inner").with("rest", rest)); break;
    }
  }
  return notes;
}

// Returns the remedies for open corners that change no measure.
std::vector<Message> withoutMeasures(const design::Band& band, const design::BandLayout& placed) {
  const double p = band.repeat->inMillimetres();
  std::vector<Message> notes;
  notes.push_back(Message("match.cover-corners").with("side", Millimetres{placed.width}));
  // Both halves of a strip read from their corner inwards; in its middle the pattern is short or long by this.
  notes.push_back(Message("match.start-at-corners")
                      .with("level", Millimetres{std::fabs(detail::reduced(placed.outer.width, p))})
                      .with("upright", Millimetres{std::fabs(detail::reduced(placed.outer.height, p))}));
  return notes;
}

}  // namespace

namespace detail {

double reduced(double value, double repeat) {
  double rest = std::fmod(value, repeat);
  if (rest < 0) rest += repeat;
  // A sum's last bits must not make a whole repeat of nothing, nor turn half a repeat about.
  constexpr double kRounding = 1e-9;
  return rest > repeat / 2 + kRounding ? rest - repeat : rest;
}

double firstMotif(double strip, Centring centring, double repeat) {
  const double at = std::fmod(strip / 2 + (centring == Centring::Ground ? repeat / 2 : 0), repeat);
  return at > repeat - 1e-9 ? 0 : at;
}

}  // namespace detail

std::optional<double> cornerMismatch(const design::Band& band, const design::BandLayout& placed) {
  if (!band.repeat || band.motif != Motif::Mirror) return std::nullopt;
  const double p = band.repeat->inMillimetres();
  const double shift = band.centreHorizontal == band.centreVertical ? 0 : p / 2;
  return detail::reduced((placed.outer.width - placed.outer.height) / 2 + shift, p);
}

std::optional<RunRound> runRound(const design::Band& band, const design::BandLayout& placed) {
  if (!band.repeat || band.motif != Motif::Directional) return std::nullopt;
  const double p = band.repeat->inMillimetres();
  RunRound round;
  round.outer = detail::reduced(placed.outer.perimeter(), p);
  round.inner = detail::reduced(placed.inner.perimeter(), p);
  round.mean = detail::reduced((placed.outer.perimeter() + placed.inner.perimeter()) / 2, p);
  round.rest = round.outer;
  const auto take = [&](double rest, RunRound::Along along) {
    if (std::fabs(rest) >= std::fabs(round.rest) - kMeets) return;
    round.rest = rest;
    round.best = along;
  };
  take(round.mean, RunRound::Along::Mean);
  take(round.inner, RunRound::Along::Inner);
  // An offset that grows by d all round lengthens each of the four sides by 2d.
  round.offsetBy = round.rest == 0 ? 0 : -round.rest / 8;
  return round;
}

RepeatMatch matchOf(const design::Job& job, const design::Layout& layout, std::size_t index) {
  ENSURE(index < job.bands.size() && layout.bands.size() == job.bands.size());
  const design::Band& band = job.bands[index];
  const design::BandLayout& placed = layout.bands[index];
  RepeatMatch match;
  if (band.motif == Motif::Directional) {
    match.state = MatchState::Directional;
    match.notes.push_back(Message("match.cannot-mirror"));
    match.round = runRound(band, placed);
    if (match.round) {
      for (Message& note : seamNotes(*match.round)) match.notes.push_back(std::move(note));
    }
    match.notes.push_back(Message("match.seam-at-bottom"));
    return match;
  }
  const auto mismatch = cornerMismatch(band, placed);
  if (!mismatch) return match;
  match.mismatch = *mismatch;
  const double off = std::fabs(*mismatch);
  match.state = off <= kMeets ? MatchState::Meets : off <= kMismatchShows ? MatchState::Near : MatchState::Open;
  if (match.state == MatchState::Meets) return match;
  const detail::Trial trial(job, layout);
  std::vector<detail::Candidate> candidates;
  detail::collectGrounds(trial, index, candidates);
  if (job.bands.size() > 1) detail::collectTogether(trial, index, candidates);
  std::vector<detail::Change> seen;
  std::vector<MatchOption> options;
  for (const detail::Candidate& candidate : candidates) {
    if (std::find(seen.begin(), seen.end(), candidate.change) != seen.end()) continue;
    seen.push_back(candidate.change);
    if (auto option = detail::optionOf(trial, index, candidate)) options.push_back(*std::move(option));
  }
  match.options = detail::ranked(std::move(options));
  if (match.state == MatchState::Open) match.notes = withoutMeasures(band, placed);
  if (trial.spent()) match.notes.push_back(Message("match.not-all-tried"));
  return match;
}

}  // namespace core::materials
