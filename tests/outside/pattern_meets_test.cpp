// Patterns at mitres. Worked from the formula for strips centred on a motif that mirrors about its own centre line:
// the corners agree where (W - H)/2 of the outer edge is a whole number of repeats, and half a repeat over puts motif
// against ground. Tolerances and seams are common practice, no source.
#include <cmath>

#include "core/materials/repeat_match.h"
#include "tests/outside/job_with.h"

using namespace core;
using tests::Plain;
using tests::plainJob;

namespace {

// One band, 10 from the face of a 1.5 mm board bevelled at 45 degrees and 20 wide: outer edge = work - 6 + 3 + 60.
std::string bandJob(int outerWidth, int outerHeight, const std::string& more = "") {
  Plain plain;
  plain.width = std::to_string(outerWidth - 57) + " mm";
  plain.height = std::to_string(outerHeight - 57) + " mm";
  plain.more = R"(, "bands": [{"id": "round", "paper": "block print", "offset": "10 mm", "width": "20 mm",
    "repeat": "24 mm")" +
               more + "}]";
  return plainJob(plain);
}

materials::RepeatMatch matched(const std::string& text) {
  const auto design = tests::designOf(text);
  return materials::matchOf(design.job, design.layout, 0);
}

}  // namespace

TEST_CASE("400 by 520 with a repeat of 24 puts motif against ground; 496 and 544 high close") {
  // (520 - 400)/2 = 60 = 2.5 repeats; 48 = 2; 72 = 3.
  const auto open = matched(bandJob(400, 520));
  CHECK(std::fabs(open.mismatch) == Approx(12));
  CHECK(open.state == materials::MatchState::Open);
  CHECK(matched(bandJob(400, 496)).state == materials::MatchState::Meets);
  CHECK(matched(bandJob(400, 544)).state == materials::MatchState::Meets);
}

TEST_CASE("where motif meets ground another centring closes, and so do 496 and 544 by half a repeat of ground") {
  const auto open = matched(bandJob(400, 520));
  REQUIRE(open.options.size() > 2);
  CHECK(open.options[0].cost == units::Length());
  CHECK(open.options[0].kind == materials::MatchKind::Centring);
  bool higher = false, wider = false;
  for (const auto& option : open.options) {
    if (option.changes.size() != 1 || !option.centrings.empty()) continue;
    CHECK(option.cost == units::Length::wholeMillimetres(12));
    // Grounds of 10 cannot lose 12, so of the two ways of closing those are told that make a ground wider.
    higher = higher || option.figures.outer == geometry::Box{400, 544};
    wider = wider || option.figures.outer == geometry::Box{424, 520};
  }
  CHECK(higher);
  CHECK(wider);
}

TEST_CASE("by its grounds alone no band needs more than a quarter of a repeat on each side") {
  // Adjusted by up to p/4 on each side: half a repeat, halved between the sides and top and bottom.
  for (int height = 400; height <= 448; ++height) {
    INFO(height);
    const auto match = matched(bandJob(400, height));
    if (match.state == materials::MatchState::Meets) continue;
    bool found = false;
    for (const auto& option : match.options) {
      if (option.kind != materials::MatchKind::BothGrounds || !option.centrings.empty()) continue;
      found = true;
      for (const auto& change : option.changes) CHECK(std::fabs(change.by.inMillimetres()) <= 6);
    }
    if (std::fabs(match.mismatch) < 12) CHECK(found);
  }
}

TEST_CASE("a step at the mitre shows above 0.3 mm") {
  CHECK(materials::kMismatchShows == 0.3);
  Plain plain;
  plain.width = "343.5 mm";  // (400.5 - 400)/2 = 0.25
  plain.height = "343 mm";
  plain.more = R"(, "bands": [{"id": "round", "paper": "block print", "offset": "10 mm", "width": "20 mm",
    "repeat": "24 mm"}])";
  CHECK(matched(plainJob(plain)).state == materials::MatchState::Near);
  plain.width = "343.7 mm";
  CHECK(matched(plainJob(plain)).state == materials::MatchState::Open);
}

TEST_CASE("a directional paper closes where the perimeter along one line is a whole number of repeats") {
  // Outer 2 (400 + 440) = 1680 = 70 x 24.
  const auto match = matched(bandJob(400, 440, R"(, "motif": "directional")"));
  REQUIRE(match.round);
  CHECK(match.round->outer == Approx(0).margin(1e-9));
  CHECK(match.round->best == materials::RunRound::Along::Outer);
  // Inner: 1680 - 8 x 20 = 1520 = 63 x 24 + 8; mean 1600 = 66 x 24 + 16, that is 8 short.
  CHECK(match.round->inner == Approx(8));
  CHECK(match.round->mean == Approx(-8));
}
