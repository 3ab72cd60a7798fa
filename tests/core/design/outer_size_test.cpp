// The outer size made whole, or to fit a frame: what becomes of the borders, and that nothing else changes.
#include "core/design/outer_size.h"

#include <cmath>

#include "core/base/text.h"
#include "core/units/length_entry.h"
#include "tests/core/design/figure_of.h"
#include "tests/support/catch.h"
#include "tests/support/random_mounts.h"
#include "tests/support/recipes.h"

using namespace core;
using design::SizeChange;
using units::Length;
using units::UnitSystem;

namespace {

base::Value rootOf(const std::string& text) {
  auto parsed = base::parseJson(text);
  REQUIRE(parsed.readable);
  return std::move(parsed.root);
}

base::Value edited(const base::Value& document, const SizeChange& change) {
  base::Value patch = base::Value::array();
  for (const design::JobEdit& edit : change.edits) {
    base::Value operation = base::Value::object().set("path", base::Value::text(edit.pointer));
    operation.set("op", base::Value::text(edit.value.empty() ? "remove" : "add"));
    if (!edit.value.empty()) operation.set("value", rootOf(edit.value));
    patch.append(std::move(operation));
  }
  auto patched = base::patched(document, patch);
  REQUIRE(patched.ok());
  return std::move(patched).value();
}

// The file without its borders.
std::string rest(const base::Value& document) {
  base::Value mount = base::Value::object();
  for (const auto& [key, value] : document.find("mount")->members()) {
    if (key != "borders") mount.set(key, value);
  }
  base::Value all = document;
  all.set("mount", mount);
  return base::writeJson(all, 0);
}

std::string bordersOf(const design::Design& read, int kind, tests::RandomMounts& maker) {
  const auto outer = [&](double more) {
    return '"' +
           units::entryText(units::onStep(more, UnitSystem::Millimetres, units::Rounding::Nearest),
                            UnitSystem::Millimetres) +
           '"';
  };
  switch (kind) {
    case 0: return R"({"sides": )" + maker.length(90, 120) + R"(, "weighting": "4:3"})";
    case 1: return R"({"sides": )" + maker.length(90, 120) + R"(, "weighting": "+6.35 mm"})";
    case 2:
      return R"({"outer": {"width": )" + outer(read.layout.outerWidth + 0.27) + R"(, "height": )" +
             outer(read.layout.outerHeight - 0.14) + R"(}, "weighting": "10:9"})";
    case 3:
      return R"({"top": )" + maker.length(90, 120) + R"(, "bottom": )" + maker.length(90, 140) + R"(, "sides": )" +
             maker.length(90, 120) + "}";
    default:
      return R"({"top": )" + maker.length(90, 120) + R"(, "bottom": )" + maker.length(90, 140) + R"(, "left": )" +
             maker.length(90, 120) + R"(, "right": )" + maker.length(90, 120) + "}";
  }
}

std::string withBorders(const std::string& text, const std::string& borders) {
  const auto from = text.find("\"borders\": {") + std::string_view("\"borders\": ").size();
  const auto to = text.find('}', from) + 1;
  return text.substr(0, from) + borders + text.substr(to);
}

// The weighting as the borders show it: the bottom less its share of the top.
double offWeighting(const design::Weighting& weighting, const design::BoardLayout& board) {
  const double meant =
      weighting.byAddition ? board.borderTop + weighting.addition.inMillimetres() : board.borderTop * weighting.ratio;
  return board.borderBottom - meant;
}

}  // namespace

TEST_CASE("after each offer the outer size is whole, and nothing else that was entered has changed", "[size]") {
  tests::RandomMounts maker(1600);
  int offered = 0;
  for (int round = 0; round < 400; ++round) {
    const std::string plain = maker.job();
    const auto first = design::readDesign(plain);
    REQUIRE(first.design);
    const std::string text = withBorders(plain, bordersOf(*first.design, round % 5, maker));
    INFO(text);
    auto read = design::readDesign(text);
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
    REQUIRE(read.design);
    design::Job& job = read.design->job;
    job.units = round % 2 == 0 ? UnitSystem::Millimetres : UnitSystem::Inches;
    const design::Layout& was = read.design->layout;
    const auto offers = design::wholeSizes(job, was);
    const bool whole = design::isWhole(was.outerWidth, job.units) && design::isWhole(was.outerHeight, job.units);
    CHECK(offers.empty() == whole);
    Length last;
    for (const SizeChange& offer : offers) {
      const base::Value document = rootOf(text);
      const base::Value after = edited(document, offer);
      CHECK(rest(after) == rest(document));
      const auto mended = design::readDesign(base::writeJson(after, 2));
      for (const auto& problem : mended.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
      REQUIRE(mended.design);
      const design::Layout& now = mended.design->layout;
      CHECK(design::isWhole(now.outerWidth, job.units));
      CHECK(design::isWhole(now.outerHeight, job.units));
      // What is whole already is left alone, and what is not goes to a neighbour.
      const double step = design::wholeStep(job.units).inMillimetres();
      CHECK(std::fabs(now.outerWidth - was.outerWidth) < step);
      CHECK(std::fabs(now.outerHeight - was.outerHeight) < step);
      if (design::isWhole(was.outerWidth, job.units)) CHECK(std::fabs(now.outerWidth - was.outerWidth) < 1e-6);
      CHECK_FALSE(offer.sizes.empty());
      CHECK(offer.cost >= last);
      last = offer.cost;
      const design::BoardLayout& board = now.boards.front();
      if (const auto* outer = std::get_if<design::OuterAndWeighting>(&mended.design->job.borders.entry)) {
        CHECK(std::fabs(offWeighting(outer->weighting, board)) < 1e-6);
        CHECK(core::base::at(after, "/mount/borders/weighting")->asText() ==
              core::base::at(document, "/mount/borders/weighting")->asText());
      } else {
        // What the maker made unlike stays unlike by as much, and the bottom keeps its share.
        const design::BoardLayout& before = was.boards.front();
        CHECK(std::fabs((board.borderLeft - board.borderRight) - (before.borderLeft - before.borderRight)) < 1e-5);
        CHECK(board.borderBottom / board.borderTop == Approx(before.borderBottom / before.borderTop).epsilon(1e-6));
      }
      ++offered;
    }
  }
  CHECK(offered > 800);
}

TEST_CASE("the chart's height comes to a whole millimetre by its borders above and below", "[size]") {
  const auto chart = tests::designOf(tests::demoJobText());
  const auto offers = design::wholeSizes(chart.job, chart.layout);
  REQUIRE(offers.size() == 2);
  const SizeChange& down = offers.front();
  REQUIRE(down.sizes.size() == 1);
  CHECK(base::dump(down.sizes[0]) == "sized.height was=409.3 mm now=409.0 mm");
  std::vector<std::string> borders;
  for (const auto& message : down.borders) borders.push_back(message.id);
  CHECK(borders == std::vector<std::string>{"sized.border-top", "sized.border-bottom"});
  REQUIRE(down.besides.size() == 1);
  CHECK(down.besides[0].id == "sized.by-outer");
  REQUIRE(down.edits.size() == 2);
  CHECK(down.edits[0].pointer == "/mount/borders/sides");
  CHECK(down.edits[0].value.empty());
  CHECK(down.edits[1].value == R"({"width": "456 mm", "height": "409 mm"})");
}

TEST_CASE("a size that would leave no border is told and not offered", "[size]") {
  const auto chart = tests::designOf(tests::demoJobText());
  const SizeChange narrow = design::sizedTo(chart.job, chart.layout, {Length::wholeMillimetres(320), std::nullopt});
  CHECK(narrow.problems.hasErrors());
  const SizeChange same = design::sizedTo(chart.job, chart.layout, {Length::wholeMillimetres(456), std::nullopt});
  CHECK(same.edits.empty());
}

TEST_CASE("a frame at hand sets one side and writes the other to the steps of a rule", "[size]") {
  const auto chart = tests::designOf(tests::demoJobText());
  const SizeChange fits = design::sizedTo(chart.job, chart.layout, {Length::wholeMillimetres(450), std::nullopt});
  REQUIRE_FALSE(fits.problems.hasErrors());
  REQUIRE(fits.edits.size() == 2);
  CHECK(fits.edits[1].value == R"({"width": "450 mm", "height": "409.3 mm"})");
}

TEST_CASE("a shaped window, whose opening is no whole number of anything, has a whole mount all the same", "[size]") {
  for (const char* borders : {R"({"sides": "70 mm", "weighting": "4:3"})",
                              R"({"top": "70 mm", "bottom": "90 mm", "left": "70.05 mm", "right": "71 mm"})"}) {
    const std::string text = R"({"format": "mountwright-job/1", "artwork": {"width": "200 mm", "height": "310.3 mm"},
        "mount": {"window": {"shape": "arch", "head": "pointed", "rise": "171.7 mm", "overlap": "3.1 mm"},
                  "boards": [{"id": "top", "thickness": "1.5 mm"},
                             {"id": "under", "thickness": "1.5 mm", "reveal": "6.1 mm"}],
                  "borders": )" +
                             std::string(borders) + "}}";
    INFO(borders);
    const auto read = design::readDesign(text);
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
    REQUIRE(read.design);
    // The box of a moved apex is no sum of what was entered.
    const double tenths = read.design->layout.outerHeight * 10;
    REQUIRE(std::fabs(tenths - std::round(tenths)) > 1e-3);
    const auto offers = design::wholeSizes(read.design->job, read.design->layout);
    REQUIRE_FALSE(offers.empty());
    for (const SizeChange& offer : offers) {
      const auto mended = design::readDesign(base::writeJson(edited(rootOf(text), offer), 2));
      REQUIRE(mended.design);
      for (const char* id : {"outer.width", "outer.height"}) {
        const auto* figure = mended.design->figures.find(id);
        REQUIRE(figure != nullptr);
        INFO(figure->display);
        CHECK(base::endsWith(figure->display, ".0 mm"));
        CHECK(design::isWhole(figure->value, UnitSystem::Millimetres));
      }
      CHECK(design::wholeSizes(mended.design->job, mended.design->layout).empty());
    }
  }
}
