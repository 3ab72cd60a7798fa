// What the maker should know before the first cut.
#include "core/design/notices.h"

#include "core/design/package_parts.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using core::design::faceTouchesGlazing;
using core::design::Length;

namespace {

Length mm(int count) { return Length::wholeMillimetres(count); }

// A framed float of 200 by 300 mm, raised under a spacer of 5 mm; nothing of it needs a notice.
core::design::Job floating() {
  core::design::Job job = tests::designOf(tests::demoJobText()).job;
  job.window.floats = true;
  job.window.distance = mm(8);
  job.artwork.sheet = {mm(200), mm(300), Length(), Length()};
  job.package.spacer = mm(5);
  return job;
}

std::vector<std::string> toldOf(const core::design::Job& job) {
  std::vector<std::string> lines;
  for (const auto& notice : core::design::noticesOf(job)) lines.push_back(dump(notice));
  return lines;
}

}  // namespace

TEST_CASE("what is ruled, painted or gilded on the face touches the glazing; bevels and papers do not count",
          "[glazing]") {
  const auto chart = tests::designOf(tests::demoJobText());
  CHECK(faceTouchesGlazing(chart.job));
  core::design::Job bare = chart.job;
  bare.lines.clear();
  bare.washes.clear();
  CHECK(faceTouchesGlazing(bare));
  bare.leaf.front().region = core::design::RegionKind::Bevel;
  REQUIRE_FALSE(bare.bands.empty());
  CHECK_FALSE(faceTouchesGlazing(bare));
  core::design::Job washed = bare;
  washed.washes.emplace_back();
  CHECK(faceTouchesGlazing(washed));
}

TEST_CASE("a spacer holds the face off, and a piece without glazing or frame has none to touch", "[glazing]") {
  core::design::Job job = tests::designOf(tests::demoJobText()).job;
  for (const auto deliver : {core::units::Deliver::Mount, core::units::Deliver::Attached}) {
    core::design::Job loose = job;
    loose.deliver = deliver;
    CHECK_FALSE(faceTouchesGlazing(loose));
  }
  core::design::Job open = job;
  open.package.glazing = core::design::Length();
  CHECK_FALSE(faceTouchesGlazing(open));
  // A float needs one for its own sake; the rule is the same.
  job.window.floats = true;
  CHECK(faceTouchesGlazing(job));
  job.package.spacer = core::design::Length::wholeMillimetres(3);
  CHECK_FALSE(faceTouchesGlazing(job));
}

TEST_CASE("a spacer that the lip hides is not told of, stated or left to its usual width", "[notices]") {
  core::design::Job job = floating();
  CHECK(toldOf(job).empty());
  job.package.spacerWidth = mm(3);
  CHECK(toldOf(job).empty());
  job.rebate.cover = mm(12);
  job.package.spacerWidth = mm(9);
  CHECK(toldOf(job).empty());
}

TEST_CASE("a spacer as wide as the lip shows, and is told with both and with what would stay hidden", "[notices]") {
  core::design::Job job = floating();
  for (const int width : {6, 8}) {
    job.package.spacerWidth = mm(width);
    CHECK(toldOf(job) == std::vector<std::string>{"/package/spacerWidth notice design.spacer-shows spacer=" +
                                                  std::to_string(width) + "mm lip=6mm would=3mm"});
  }
  // With little play it is the view from the side that decides.
  job.rebate.allowanceTotal = mm(1);
  CHECK(toldOf(job) ==
        std::vector<std::string>{"/package/spacerWidth notice design.spacer-shows spacer=8mm lip=6mm would=4mm"});
}

TEST_CASE("a spacer that the lip hides below alone is told of the top", "[notices]") {
  core::design::Job job = floating();
  job.package.spacerWidth = mm(4);
  CHECK(toldOf(job) ==
        std::vector<std::string>{
            "/package/spacerWidth notice design.spacer-shows-above spacer=4mm lip=6mm top=3mm would=3mm"});
  job.rebate.allowanceTotal = mm(2);
  CHECK(toldOf(job).empty());
}

TEST_CASE("a lip too narrow for any spacer is told, whatever its width", "[notices]") {
  core::design::Job job = floating();
  job.rebate.cover = mm(4);
  const std::vector<std::string> never = {
      "/package/spacerWidth notice design.spacer-never-hidden lip=4mm top=1mm least=2mm"};
  CHECK(toldOf(job) == never);
  job.package.spacerWidth = mm(2);
  CHECK(toldOf(job) == never);
  job.rebate.cover = mm(2);
  CHECK(toldOf(job) ==
        std::vector<std::string>{"/mount/rebate/allowanceTotal notice design.lip-hides-nothing lip=2mm play=3mm",
                                 "/package/spacerWidth notice design.spacer-never-hidden lip=2mm top=0mm least=2mm"});
}

TEST_CASE("a spacer and a support that play no part are told", "[notices]") {
  core::design::Job job = floating();
  job.package.glazing = Length();
  CHECK(toldOf(job) == std::vector<std::string>{"/package/spacer notice design.spacer-without-glazing"});
  job = floating();
  job.deliver = core::units::Deliver::Attached;
  CHECK(toldOf(job) == std::vector<std::string>{"/package/spacer notice design.spacer-unframed"});
  job = floating();
  job.leaf.clear();
  job.lines.clear();
  job.package.spacer = Length();
  job.package.spacerWidth = mm(3);
  CHECK(toldOf(job) == std::vector<std::string>{"/package/spacerWidth notice design.spacer-width-of-none"});
  job = floating();
  job.window.floats = false;
  CHECK(toldOf(job).empty());
  job.package.support = mm(2);
  CHECK(toldOf(job) == std::vector<std::string>{"/package/support notice design.support-of-covered"});
}

TEST_CASE("a sheet too small for a support is told, and not one that lies flat", "[notices]") {
  core::design::Job job = floating();
  job.artwork.sheet.width = mm(20);
  CHECK(toldOf(job) == std::vector<std::string>{"/package/support notice design.support-too-large sheet=20mm by=20mm"});
  job.package.support = Length();
  CHECK(toldOf(job).empty());
}

TEST_CASE("a spacer goes round the mount, and a support stays 10 mm behind each edge of the sheet", "[notices]") {
  const auto design = tests::designOf(tests::demoJobText());
  core::design::Job job = floating();
  const auto strips = core::design::spacerOf(job, design.layout);
  REQUIRE(strips.has_value());
  CHECK(strips->width == mm(3));
  CHECK(strips->horizontal == design.layout.outerWidth);
  CHECK(strips->vertical == design.layout.outerHeight - 6);
  // Strips that would meet are none.
  job.package.spacerWidth = mm(300);
  CHECK_FALSE(core::design::spacerOf(job, design.layout).has_value());
  CHECK_FALSE(core::design::spacerOf(design.job, design.layout).has_value());

  const auto support = core::design::supportOf(job);
  REQUIRE(support.has_value());
  CHECK(support->width == mm(180));
  CHECK(support->height == mm(280));
  CHECK(support->thickness == job.boards.back().thickness);
  job.package.support = mm(3);
  CHECK(core::design::supportOf(job)->thickness == mm(3));
  job.package.support.reset();
  job.package.spacer = Length();
  CHECK_FALSE(core::design::supportOf(job).has_value());
  job.window.floats = false;
  job.package.support = mm(3);
  CHECK_FALSE(core::design::supportOf(job).has_value());
}

TEST_CASE("a spacer no thicker than the decoration holds nothing off, and is told with both", "[notices]") {
  core::design::Job job = floating();
  REQUIRE(job.package.decoration == Length::nanometres(200'000));
  job.package.spacer = Length::nanometres(200'000);
  CHECK(faceTouchesGlazing(job));
  const auto told = toldOf(job);
  REQUIRE(told.size() == 1);
  CHECK(told[0] == "/package/spacer notice design.spacer-within-decoration spacer=0.2mm decoration=0.2mm");
  job.package.spacer = Length::nanometres(300'000);
  CHECK(toldOf(job).empty());
}

TEST_CASE("more play than the lip hides is told, and not of a piece without a frame", "[notices]") {
  core::design::Job job = floating();
  job.package.spacer = Length();
  job.leaf.clear();
  job.lines.clear();
  job.washes.clear();
  job.rebate.allowanceTotal = mm(5);
  CHECK(toldOf(job).empty());
  job.rebate.allowanceTotal = mm(6);
  CHECK(toldOf(job) ==
        std::vector<std::string>{"/mount/rebate/allowanceTotal notice design.lip-hides-nothing lip=6mm play=6mm"});
  job.deliver = core::units::Deliver::Attached;
  CHECK(toldOf(job).empty());
}

TEST_CASE("a float without air round it is told", "[notices]") {
  core::design::Job job = floating();
  job.window.distance = mm(2);
  CHECK(toldOf(job).empty());
  job.window.distance = mm(1);
  CHECK(toldOf(job) ==
        std::vector<std::string>{"/mount/window/margin notice design.float-without-air air=1mm least=2mm"});
  // What the mount covers is another matter.
  job.window.floats = false;
  CHECK(toldOf(job).empty());
}

TEST_CASE("leaf that covers nothing, or covers a painted bevel, is told", "[notices]") {
  core::design::Job job = floating();
  REQUIRE(job.boards.front().bevelColour.has_value());
  REQUIRE(job.leaf.size() == 1);
  job.leaf.front().coverage = 0;
  CHECK(toldOf(job) == std::vector<std::string>{"/leaf/0/coverage notice design.leaf-covers-nothing leaf=field"});
  job.leaf.front().coverage = 0.2;
  job.leaf.front().region = core::design::RegionKind::Bevel;
  job.leaf.front().regionOf = job.boards.front().id;
  // Flake lets the colour show.
  CHECK(toldOf(job).empty());
  job.leaf.front().method = core::design::LeafMethod::Laid;
  CHECK(toldOf(job) == std::vector<std::string>{"/leaf/0/region notice design.colour-under-leaf board=top leaf=field"});
  job.boards.front().bevelColour.reset();
  CHECK(toldOf(job).empty());
}
