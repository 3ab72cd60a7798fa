// Describes the options and ranks them.
#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/base/text.h"
#include "core/materials/repeat_match_internal.h"

namespace core::materials::detail {
namespace {

using base::Message;
using base::Millimetres;
using design::Centring;

// Where the corners close to this they meet: a measure is a whole number of nanometres, half a repeat need not be.
constexpr double kCloses = 1e-6;

Grounds groundsOf(const design::Band& band, const design::BandLayout& placed, const design::Layout& layout) {
  const double sides = placed.ring.to.sides.inMillimetres();
  const double topBottom = placed.ring.to.topBottom.inMillimetres();
  return {band.offsetSides.inMillimetres(), band.offsetTopBottom.inMillimetres(), layout.seenLeft - sides,
          layout.seenRight - sides,         layout.seenTop - topBottom,           layout.seenBottom - topBottom};
}

MatchFigures figuresOf(const LaidOut& laidOut, std::size_t index) {
  const design::Band& band = laidOut.job.bands[index];
  const design::BandLayout& placed = laidOut.layout.bands[index];
  const double repeat = band.repeat->inMillimetres();
  return {cornerMismatch(band, placed).value_or(0),
          placed.outer,
          placed.stripHorizontal,
          placed.stripVertical,
          firstMotif(placed.stripHorizontal, band.centreHorizontal, repeat),
          firstMotif(placed.stripVertical, band.centreVertical, repeat),
          groundsOf(band, placed, laidOut.layout)};
}

std::vector<OtherBand> othersOf(const Trial& trial, const LaidOut& laidOut, std::size_t band) {
  std::vector<OtherBand> others;
  for (std::size_t i = 0; i < laidOut.job.bands.size(); ++i) {
    const auto before = trial.mismatch(i);
    if (i == band || !before) continue;
    const double after = *cornerMismatch(laidOut.job.bands[i], laidOut.layout.bands[i]);
    const bool opened = std::fabs(*before) <= kMismatchShows && std::fabs(after) > std::fabs(*before) + kCloses;
    others.push_back({i, *before, after, opened});
  }
  return others;
}

Message saying(const MeasureChange& change, const Trial& trial, const LaidOut& laidOut) {
  const bool wider = change.by > Length();
  const Length by = wider ? change.by : -change.by;
  const Millimetres amount{by.inMillimetres()};
  if (change.measure == Measure::BorderSides) {
    return Message(wider ? "match.border-sides-wider" : "match.border-sides-narrower").with("by", amount);
  }
  if (change.measure == Measure::BorderTopBottom) {
    return Message(wider ? "match.border-top-bottom-wider" : "match.border-top-bottom-narrower").with("by", amount);
  }
  const design::Band& was = trial.job().bands[change.band];
  const design::Band& now = laidOut.job.bands[change.band];
  const auto of = [&](const design::Band& band) {
    const Length value = change.measure == Measure::Sides       ? band.offsetSides
                         : change.measure == Measure::TopBottom ? band.offsetTopBottom
                                                                : band.width;
    return Millimetres{value.inMillimetres()};
  };
  return Message(change.measure == Measure::Sides       ? "match.sides"
                 : change.measure == Measure::TopBottom ? "match.top-bottom"
                                                        : "match.width")
      .with("band", was.id)
      .with("was", of(was))
      .with("now", of(now));
}

Message saying(const CentringChange& change, const design::Job& job) {
  const std::string& band = job.bands[change.band].id;
  if (change.horizontal) {
    return Message(change.to == Centring::Motif ? "match.level-on-motif" : "match.level-on-ground").with("band", band);
  }
  return Message(change.to == Centring::Motif ? "match.upright-on-motif" : "match.upright-on-ground")
      .with("band", band);
}

Message whyOf(MatchKind kind) {
  switch (kind) {
    case MatchKind::Centring: return Message("match.why-centring");
    case MatchKind::OneGround: return Message("match.why-one-ground");
    case MatchKind::BothGrounds: return Message("match.why-both-grounds");
    case MatchKind::Shared: return Message("match.why-shared");
    case MatchKind::Room: return Message("match.why-room");
    case MatchKind::GroundKept: return Message("match.why-ground-kept");
    case MatchKind::OthersKept: return Message("match.why-others-kept");
    case MatchKind::AllClose: return Message("match.why-all-close");
  }
  return Message("match.why-one-ground");
}

// Ids of what lies elsewhere than before, the bands' own offsets left aside.
template <typename Item>
void addMoved(const std::vector<Item>& before, const std::vector<Item>& after, std::vector<std::string>& ids) {
  for (std::size_t i = 0; i < before.size(); ++i) {
    const geometry::Ring& was = before[i].ring;
    const geometry::Ring& now = after[i].ring;
    if (was.from != now.from || was.to != now.to) ids.push_back(before[i].id);
  }
}

std::vector<Message> disturbsOf(const Trial& trial, const LaidOut& laidOut, std::size_t index,
                                const MatchOption& option) {
  std::vector<Message> disturbs;
  for (const OtherBand& other : option.others) {
    const bool isWorse = std::fabs(other.after) > std::fabs(other.before) + kCloses;
    if (!isWorse) continue;
    const std::string& band = laidOut.job.bands[other.band].id;
    const Millimetres by{std::fabs(other.after)};
    disturbs.push_back(other.opened ? Message("match.opens-band").with("band", band).with("by", by)
                                    : Message("match.opens-further")
                                          .with("band", band)
                                          .with("by", by)
                                          .with("was", Millimetres{std::fabs(other.before)}));
  }
  for (const Message& notice : laidOut.newNotices) disturbs.push_back(notice);
  const Grounds was = groundsOf(trial.job().bands[index], trial.layout().bands[index], trial.layout());
  const Grounds& now = option.figures.grounds;
  const auto tellUneven = [&](double before, double after, Message message) {
    if (std::fabs(after) <= kGroundShows || std::fabs(after) <= std::fabs(before) + kCloses) return;
    disturbs.push_back(std::move(message).with("by", Millimetres{std::fabs(after)}));
  };
  tellUneven(was.insideSides - was.insideTopBottom, now.insideSides - now.insideTopBottom,
             Message("match.uneven-inside"));
  tellUneven(was.left - was.top, now.left - now.top, Message("match.uneven-outside"));
  std::vector<std::string> moved;
  const design::Layout &before = trial.layout(), &after = laidOut.layout;
  std::vector<std::string> bands;
  addMoved(before.bands, after.bands, bands);
  std::erase(bands, trial.job().bands[index].id);
  moved = bands;
  addMoved(before.lines, after.lines, moved);
  addMoved(before.spandrels, after.spandrels, moved);
  addMoved(before.washes, after.washes, moved);
  addMoved(before.leaf, after.leaf, moved);
  if (!moved.empty()) disturbs.push_back(Message("match.moves-too").with("ids", base::join(moved, ", ")));
  return disturbs;
}

std::optional<OnSteps> settled(const Trial& trial, std::size_t index, const Change& change) {
  const Change steps = onSteps(change, trial.job());
  if (steps == change) return std::nullopt;
  const auto laidOut = trial.layOut(steps);
  if (!laidOut) return std::nullopt;
  OnSteps result{measuresOf(steps), editsOf(steps, trial.job(), laidOut->job),
                 *cornerMismatch(laidOut->job.bands[index], laidOut->layout.bands[index])};
  if (result.edits.empty() || std::fabs(result.mismatch) > kMismatchShows + kCloses) return std::nullopt;
  return result;
}

Length greatest(const MatchOption& option) {
  Length most;
  for (const MeasureChange& change : option.changes) most = std::max({most, change.by, -change.by});
  return most;
}

int standing(const MatchOption& option) { return option.opensOthers ? 2 : option.bringsNotice ? 1 : 0; }

// Options that change the same and stand alike are ways of one kind; of two centrings without a measure both are kept.
auto signature(const MatchOption& option) {
  std::vector<std::pair<int, std::size_t>> changed;
  for (const MeasureChange& change : option.changes)
    changed.emplace_back(static_cast<int>(change.measure), change.band);
  for (const CentringChange& change : option.centrings) {
    changed.emplace_back(option.changes.empty() && change.horizontal ? -1 : -2, change.band);
  }
  return std::make_pair(standing(option), changed);
}

}  // namespace

std::optional<MatchOption> optionOf(const Trial& trial, std::size_t band, const Candidate& candidate) {
  const auto laidOut = trial.layOut(candidate.change);
  if (!laidOut) return std::nullopt;
  MatchOption option;
  option.figures = figuresOf(*laidOut, band);
  if (std::fabs(option.figures.mismatch) > kCloses) return std::nullopt;
  option.kind = candidate.kind;
  option.why = whyOf(candidate.kind);
  option.changes = measuresOf(candidate.change);
  option.centrings = centringsOf(candidate.change, laidOut->job);
  for (const CentringChange& change : option.centrings) option.says.push_back(saying(change, trial.job()));
  for (const MeasureChange& change : option.changes) option.says.push_back(saying(change, trial, *laidOut));
  option.edits = editsOf(candidate.change, trial.job(), laidOut->job);
  option.cost = Length::nanometres(cost(candidate.change));
  option.others = othersOf(trial, *laidOut, band);
  option.opensOthers = std::any_of(option.others.begin(), option.others.end(), [](const auto& o) { return o.opened; });
  option.bringsNotice = !laidOut->newNotices.empty();
  option.disturbs = disturbsOf(trial, *laidOut, band, option);
  option.onSteps = settled(trial, band, candidate.change);
  return option;
}

std::vector<MatchOption> ranked(std::vector<MatchOption> options) {
  const auto key = [](const MatchOption& option) {
    return std::make_tuple(standing(option), option.cost, option.changes.size() + option.centrings.size(),
                           option.centrings.size(), greatest(option));
  };
  std::stable_sort(options.begin(), options.end(),
                   [&](const MatchOption& a, const MatchOption& b) { return key(a) < key(b); });
  std::set<decltype(signature(options.front()))> seen;
  std::erase_if(options, [&](const MatchOption& option) { return !seen.insert(signature(option)).second; });
  return options;
}

}  // namespace core::materials::detail
