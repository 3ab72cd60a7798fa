// What touches the glazing.
#include "core/design/glazing.h"

#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using core::design::faceTouchesGlazing;

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
