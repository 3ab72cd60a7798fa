#include "core/design/as_made.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::design {
namespace {

using base::Message;
using base::Millimetres;

struct Kind {
  std::string_view family;  // "board", "band"; "" for the piece
  std::string_view name;
  Length within;
  std::string_view source;
};

constexpr Length micrometres(std::int64_t count) { return Length::nanometres(count * 1000); }

// A micrometer tells a twentieth; boards of one make differ by a twentieth of their thickness. A steel rule tells half
// a millimetre. A mitre or a mark off by more than 0.3 mm shows.
constexpr std::string_view kMicrometer = "tolerance.micrometer";
constexpr std::string_view kRule = "tolerance.rule";
constexpr std::string_view kShows = "tolerance.shows";
constexpr std::array<Kind, 18> kKinds = {{
    {"", "outer.width", micrometres(500), kRule},
    {"", "outer.height", micrometres(500), kRule},
    {"board", "thickness", micrometres(50), kMicrometer},
    {"board", "sight.width", micrometres(500), kRule},
    {"board", "sight.height", micrometres(500), kRule},
    {"board", "face.width", micrometres(500), kRule},
    {"board", "face.height", micrometres(500), kRule},
    {"board", "border.left", micrometres(500), kRule},
    {"board", "border.right", micrometres(500), kRule},
    {"board", "border.top", micrometres(500), kRule},
    {"board", "border.bottom", micrometres(500), kRule},
    {"board", "diagonal.marked", micrometres(500), kRule},
    {"board", "diagonal.other", micrometres(500), kRule},
    {"band", "inner.width", micrometres(300), kShows},
    {"band", "inner.height", micrometres(300), kShows},
    {"band", "strip.horizontal", micrometres(500), kRule},
    {"band", "strip.vertical", micrometres(500), kRule},
    {"band", "strip.width", micrometres(300), kShows},
}};

const Kind* kindOf(std::string_view id) {
  const auto found = std::find_if(kKinds.begin(), kKinds.end(), [&](const Kind& kind) {
    if (kind.family.empty()) return id == kind.name;
    const std::size_t rest = kind.family.size() + 1;
    if (id.size() <= rest || id.substr(0, kind.family.size()) != kind.family || id[rest - 1] != '.') return false;
    const std::size_t dot = id.find('.', rest);
    return dot != std::string_view::npos && dot > rest && id.substr(dot + 1) == kind.name;
  });
  return found == kKinds.end() ? nullptr : &*found;
}

// Further off than this a board or a strip is made again, not lived with (common practice, no source).
constexpr double kFarOff = 10;
// A small measure may differ by this share of itself.
constexpr double kPartOff = 0.3;

}  // namespace

std::optional<Length> AsMade::pin(const std::string& figure) const {
  const auto found = pins.find(figure);
  return found == pins.end() ? std::nullopt : std::optional(found->second);
}

Follow AsMade::follow(const std::string& board) const {
  const auto found = follows.find(board);
  return found == follows.end() ? Follow::Cover : found->second;
}

bool isPinnable(std::string_view figureId) { return kindOf(figureId) != nullptr; }

std::string acrossTheBevel(const std::string& figureId) {
  const auto with = [&](std::string_view here, std::string_view there) {
    const auto at = figureId.find(here);
    return at == std::string::npos ? std::string() : std::string(figureId).replace(at, here.size(), there);
  };
  const std::string face = with(".sight.", ".face.");
  return face.empty() ? with(".face.", ".sight.") : face;
}

Tolerance toleranceOf(std::string_view figureId) {
  const Kind* kind = kindOf(figureId);
  if (kind == nullptr) return {micrometres(500), kRule, Gauge::Rule};
  return {kind->within, kind->source, kind->source == kMicrometer ? Gauge::Micrometer : Gauge::Rule};
}

Length readingOf(Gauge gauge, units::UnitSystem units) {
  const bool inches = units == units::UnitSystem::Inches;
  switch (gauge) {
    case Gauge::Rule: return inches ? Length::nanometres(units::kNanometresPerInch / 32) : micrometres(500);
    case Gauge::Micrometer: return inches ? Length::nanometres(units::kNanometresPerInch / 64) : micrometres(50);
  }
  return micrometres(500);
}

double plausibleWithin(double computed) { return std::min(kFarOff, kPartOff * std::fabs(computed)); }

std::optional<Message> implausible(const std::string& figureId, Length measured, double computed) {
  if (measured <= Length() || measured > units::kLongestLength) {
    return Message("made.no-size").with("figure", figureId).with("value", Millimetres{measured.inMillimetres()});
  }
  const double off = std::fabs(measured.inMillimetres() - computed);
  if (off <= plausibleWithin(computed)) return std::nullopt;
  return Message("made.too-far")
      .with("figure", figureId)
      .with("value", Millimetres{measured.inMillimetres()})
      .with("computed", Millimetres{computed})
      .with("by", Millimetres{off});
}

Job asMeasured(const Job& job, const AsMade& made) {
  Job measured = job;
  for (Board& board : measured.boards) {
    if (const auto pin = made.pin("board." + board.id + ".thickness")) board.thickness = *pin;
  }
  for (Band& band : measured.bands) {
    if (const auto pin = made.pin("band." + band.id + ".strip.width")) band.width = *pin;
  }
  return measured;
}

}  // namespace core::design
