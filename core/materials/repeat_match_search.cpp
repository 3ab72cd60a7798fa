// Finds the changes of the grounds that close a band's corners, and those that make room for them.
#include <algorithm>
#include <cmath>
#include <compare>
#include <cstdlib>
#include <map>
#include <tuple>

#include "core/materials/repeat_match_internal.h"

namespace core::materials::detail {
namespace {

std::pair<std::string, std::string> keyOf(const base::Problem& problem) {
  return {problem.pointer, problem.message.id};
}

// A ground that gains for the sides: the sides outwards, or top and bottom inwards.
struct Ground {
  std::size_t band = 0;
  bool sides = false;
  friend auto operator<=>(const Ground&, const Ground&) = default;
};

void widen(Change& change, const Ground& ground, Nm by) {
  BandChange& band = change.bands[ground.band];
  (ground.sides ? band.sides : band.topBottom) += ground.sides ? by : -by;
}

Change moved(Change change, const Ground& ground, Nm by) {
  widen(change, ground, by);
  return change;
}

// For all the bands of a job: about a second. The corners of a piece as makers make them take some hundreds of trials
// of a hundredth of a millisecond to two.
constexpr std::int64_t kEffort = 600'000'000;

std::int64_t share(const design::Job& job) { return kEffort / 2 / static_cast<std::int64_t>(job.bands.size()); }

class Search {
 public:
  Search(const Trial& trial, std::size_t band, bool strict, std::vector<Candidate>& found)
      : m_trial(trial), m_band(band), m_strict(strict), m_found(found) {}

  // Returns whether a closing of these grounds alone fits.
  bool all(const Closing& closing, bool nearest) {
    m_by = closing.by;
    m_start = Change{};
    m_start.bands.resize(m_trial.job().bands.size());
    if (closing.flip) flipCentring(m_trial.job().bands[m_band], m_start.bands[m_band]);
    bool any = false;
    for (std::size_t from = m_band + 1; from-- > 0;) any = ofBand(from, nearest) || any;
    return spread() || any;
  }

 private:
  // Returns how far of `want` a ground may move from there. It is assumed that everything up to the first misfit fits.
  Nm room(const Change& from, const Ground& ground, Nm want) {
    const auto known = m_rooms.find({from, ground, want});
    if (known != m_rooms.end()) return known->second;
    return m_rooms[{from, ground, want}] = searchedRoom(from, ground, want);
  }

  Nm searchedRoom(const Change& from, const Ground& ground, Nm want) const {
    const auto fits = [&](Nm by) { return m_trial.allows(moved(from, ground, want < 0 ? -by : by), m_strict); };
    Nm good = 0, bad = std::abs(want);
    if (fits(bad)) return want;
    while (bad - good > 1) {
      const Nm middle = good + (bad - good) / 2;
      (fits(middle) ? good : bad) = middle;
    }
    // A hair beyond an edge still counts as on it. Makers' measures, hundredths of a millimetre and 64ths of an inch,
    // are multiples of 625 nm.
    constexpr Nm kMakers = 625, kHair = 50;
    if (good % kMakers <= kHair) good -= good % kMakers;
    return want < 0 ? -good : good;
  }

  // Moves one ground after the other as far as each can; returns what is left to gain.
  Nm fill(Change& change, const std::vector<Ground>& grounds) {
    Nm rest = m_by;
    for (const Ground& ground : grounds) {
      if (rest == 0) break;
      const Nm by = room(change, ground, rest);
      widen(change, ground, by);
      rest -= by;
    }
    return rest;
  }

  void add(MatchKind kind, const Change& change) { m_found.push_back({kind, change}); }

  // Where the grounds are short of room: a narrower band, or wider borders.
  void withRoomMade(const std::vector<Ground>& grounds, Nm shortBy) {
    Change narrower = m_start;
    narrower.bands[m_band].width = -std::abs(shortBy);
    if (fill(narrower, grounds) == 0) add(MatchKind::Room, narrower);
    Change wider = m_start;
    (m_by > 0 ? wider.borderSides : wider.borderTopBottom) = std::abs(shortBy);
    if (fill(wider, grounds) == 0) add(MatchKind::Room, wider);
  }

  bool filled(MatchKind kind, const std::vector<Ground>& grounds) {
    Change change = m_start;
    const Nm rest = fill(change, grounds);
    if (rest == 0) {
      add(kind, change);
      return true;
    }
    // Grounds inside this band meet the same edges as its own.
    const bool own = std::all_of(grounds.begin(), grounds.end(), [&](const Ground& g) { return g.band == m_band; });
    if (own || grounds.size() > 2) withRoomMade(grounds, rest);
    return false;
  }

  // The borders follow, so that the ground outside the outermost band stays as it was.
  void groundKept(Change change) {
    for (const BandChange& band : change.bands) {
      change.borderSides += band.sides + band.width;
      change.borderTopBottom += band.topBottom + band.width;
    }
    if (m_trial.allows(change, m_strict)) add(MatchKind::GroundKept, change);
  }

  bool ofBand(std::size_t from, bool nearest) {
    if (m_by == 0) return true;
    const Ground sides{from, true}, topBottom{from, false};
    bool any = filled(MatchKind::OneGround, {sides});
    any = filled(MatchKind::OneGround, {topBottom}) || any;
    const Change halves = moved(moved(m_start, sides, m_by / 2), topBottom, m_by - m_by / 2);
    if (m_trial.allows(halves, m_strict)) add(MatchKind::BothGrounds, halves);
    if (nearest && from == m_band) {
      for (const Ground& ground : {sides, topBottom}) groundKept(moved(m_start, ground, m_by));
    }
    // One ground as far as there is room, another the rest.
    std::vector<Ground> grounds = {{m_band, true}, {m_band, false}};
    if (from != m_band) grounds.insert(grounds.end(), {sides, topBottom});
    for (const Ground& first : grounds) {
      for (const Ground& second : grounds) {
        const bool same = first.band == second.band && first.sides == second.sides;
        if (!same) any = filled(MatchKind::Shared, {first, second}) || any;
      }
    }
    return any;
  }

  bool spread() {
    std::vector<Ground> grounds;
    for (std::size_t from = m_band + 1; from-- > 0;) {
      grounds.push_back({from, true});
      grounds.push_back({from, false});
    }
    return m_by == 0 || filled(MatchKind::Shared, grounds);
  }

  const Trial& m_trial;
  std::size_t m_band;
  bool m_strict;
  std::vector<Candidate>& m_found;
  Nm m_by = 0;
  Change m_start;
  std::map<std::tuple<Change, Ground, Nm>, Nm> m_rooms;
};

}  // namespace

Trial::Trial(const design::Job& job, const design::Layout& layout)
    : m_job(job), m_layout(layout), m_finding(share(job)), m_telling(share(job)) {
  base::Problems problems;
  design::layOut(job, design::AsMade(), m_finding, problems);
  for (const base::Problem& problem : problems.sorted()) m_notices.insert(keyOf(problem));
}

std::optional<LaidOut> Trial::laidOut(const Change& change, design::Effort& effort) const {
  if (effort.spent()) return std::nullopt;
  auto changed = applied(m_job, m_layout, change);
  if (!changed) return std::nullopt;
  base::Problems problems;
  LaidOut made;
  made.layout = design::layOut(*changed, design::AsMade(), effort, problems);
  if (problems.hasErrors()) return std::nullopt;
  made.job = *std::move(changed);
  for (const base::Problem& problem : problems.sorted()) {
    if (!m_notices.contains(keyOf(problem))) made.newNotices.push_back(problem.message);
  }
  return made;
}

bool Trial::allows(const Change& change, bool strict) const {
  const auto made = laidOut(change, m_finding);
  return made && (!strict || made->newNotices.empty());
}

std::optional<double> Trial::mismatch(std::size_t band) const {
  return cornerMismatch(m_job.bands[band], m_layout.bands[band]);
}

std::vector<Closing> closings(double mismatch, Length repeat) {
  const auto toNm = [](double mm) {
    return static_cast<Nm>(std::llround(mm * static_cast<double>(units::kNanometresPerMillimetre)));
  };
  const double p = repeat.inMillimetres();
  const double flipped = reduced(mismatch + p / 2, p);
  std::vector<Closing> all = {{toNm(-mismatch), false},
                              {toNm(-flipped), true},
                              {toNm((mismatch > 0 ? p : -p) - mismatch), false},
                              {toNm((flipped > 0 ? p : -p) - flipped), true}};
  return all;
}

void flipCentring(const design::Band& band, BandChange& change) {
  // The eye enters from the top: a motif belongs in the middle there. Common practice, no source.
  (band.centreHorizontal == design::Centring::Ground ? change.flipHorizontal : change.flipVertical) = true;
}

void collectGrounds(const Trial& trial, std::size_t band, std::vector<Candidate>& found) {
  const auto all = closings(*trial.mismatch(band), *trial.job().bands[band].repeat);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const bool nearest = i < 2;
    if (all[i].by == 0) {  // another centring is enough
      if (!all[i].flip) continue;
      Change change;
      change.bands.resize(trial.job().bands.size());
      Change either = change;
      flipCentring(trial.job().bands[band], change.bands[band]);
      either.bands[band].flipHorizontal = !change.bands[band].flipHorizontal;
      either.bands[band].flipVertical = !change.bands[band].flipVertical;
      found.push_back({MatchKind::Centring, change});
      found.push_back({MatchKind::Centring, either});
      continue;
    }
    if (!Search(trial, band, true, found).all(all[i], nearest)) Search(trial, band, false, found).all(all[i], nearest);
  }
}

}  // namespace core::materials::detail
