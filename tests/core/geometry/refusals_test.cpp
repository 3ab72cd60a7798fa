// What does not fit is refused with what would: just within the limit that is told the entry is taken, just beyond it
// it is refused.
#include <map>

#include "tests/core/geometry/forms_here.h"

using namespace core::geometry;
using core::base::Millimetres;
using tests::arched;
using tests::cornered;
using tests::plain;
using tests::trefoil;

namespace {

using Key = core::units::Length ShapeEntry::*;

Key keyOf(const std::string& name) {
  static const std::map<std::string, Key> kKeys = {
      {"corner", &ShapeEntry::corner},       {"rise", &ShapeEntry::rise},
      {"radius", &ShapeEntry::radius},       {"sideRadius", &ShapeEntry::sideRadius},
      {"topRadius", &ShapeEntry::topRadius}, {"topCentre", &ShapeEntry::topCentre}};
  INFO(name);
  REQUIRE(kKeys.contains(name));
  return kKeys.at(name);
}

double told(const ShapeProblem& problem, std::string_view name) {
  const auto* argument = problem.message.argument(name);
  INFO(core::base::dump(problem.message) << " tells no " << name);
  REQUIRE(argument != nullptr);
  return std::get<Millimetres>(*argument).value;
}

ShapeProblem refused(const ShapeEntry& entry, double width, double height) {
  const auto form = construct(entry, width, height);
  REQUIRE_FALSE(form.ok());
  return form.error();
}

// Requires an entry whose refusal is about one of its lengths.
void checkWhatFits(const ShapeEntry& entry, double width, double height, const std::string& key,
                   const std::string& id) {
  INFO(id);
  const ShapeProblem problem = refused(entry, width, height);
  CHECK(problem.key == key);
  REQUIRE(problem.message.id == id);
  const bool most = problem.message.argument("most") != nullptr;
  const double limit = told(problem, most ? "most" : "least");
  const Key member = keyOf(key);
  CHECK(told(problem, "value") == Approx((entry.*member).inMillimetres()));
  CHECK(told(problem, "by") == Approx(std::fabs(told(problem, "value") - limit)).margin(1e-12));
  constexpr double kNudge = 1e-3;
  ShapeEntry within = entry;
  within.*member = tests::entered(most ? limit - kNudge : limit + kNudge);
  const auto taken = construct(within, width, height);
  if (!taken) FAIL("still refused: " << core::base::dump(taken.error().message));
  CHECK(tests::isClosed(taken.value().outline));
  ShapeEntry beyond = entry;
  beyond.*member = tests::entered(most ? limit + kNudge : limit - kNudge);
  CHECK(refused(beyond, width, height).message.id == id);
}

}  // namespace

TEST_CASE("corners take half the shorter side at most", "[geometry]") {
  for (const Shape shape : {Shape::Rounded, Shape::Scalloped, Shape::Chamfered}) {
    checkWhatFits(cornered(shape, 120), 300, 200, "corner", "shape.corner-too-large");
    checkWhatFits(cornered(shape, 120), 180, 200, "corner", "shape.corner-too-large");
    CHECK(construct(cornered(shape, 100), 300, 200).ok());
  }
}

TEST_CASE("a round window must be as wide as high", "[geometry]") {
  const ShapeProblem problem = refused(plain(Shape::Round), 250, 240);
  CHECK(problem.key == "shape");
  CHECK(problem.message.id == "shape.round-not-square");
  CHECK(told(problem, "width") == 250);
  CHECK(told(problem, "height") == 240);
  CHECK(told(problem, "by") == 10);
}

TEST_CASE("a segmental head rises half its span at most, a pointed one more than that", "[geometry]") {
  checkWhatFits(arched(Head::Segmental, 130), 200, 300, "rise", "shape.rise-too-high");
  CHECK(construct(arched(Head::Segmental, 100), 200, 300).ok());
  checkWhatFits(arched(Head::Pointed, 90), 200, 300, "rise", "shape.rise-too-low");
  CHECK(refused(arched(Head::Pointed, 100), 200, 300).message.id == "shape.rise-too-low");
}

TEST_CASE("a four-centred head rises between a smooth crown and straight sides", "[geometry]") {
  checkWhatFits(arched(Head::FourCentred, 200, 50, 55), 300, 400, "rise", "shape.rise-too-high");
  checkWhatFits(arched(Head::FourCentred, 30, 50, 55), 300, 400, "rise", "shape.rise-too-low");
  checkWhatFits(arched(Head::FourCentred, 112, 200, 55), 220.5, 400, "radius", "shape.radius-too-large");
  for (double angle = 1; angle < 89.5; angle += 4) {
    for (double radius = 5; radius < 150; radius += 20) {
      INFO(angle << " degrees, radius " << radius);
      checkWhatFits(arched(Head::FourCentred, 9000, radius, angle), 300, 9999, "rise", "shape.rise-too-high");
      checkWhatFits(arched(Head::FourCentred, 0.001, radius, angle), 300, 9999, "rise", "shape.rise-too-low");
    }
  }
}

TEST_CASE("a basket rises less than half its span, and its small radius is less than its rise", "[geometry]") {
  checkWhatFits(arched(Head::Basket, 100, 40), 200, 260, "rise", "shape.rise-too-high");
  checkWhatFits(arched(Head::Basket, 70, 70), 200, 260, "radius", "shape.radius-too-large");
}

TEST_CASE("an ogee's lower radius leaves room for the upper one, and a low ogee's is not too small", "[geometry]") {
  checkWhatFits(arched(Head::Ogee, 180, 300), 240, 400, "radius", "shape.radius-too-large");
  checkWhatFits(arched(Head::Ogee, 80, 100), 240, 400, "radius", "shape.radius-too-large");
  checkWhatFits(arched(Head::Ogee, 80, 5), 240, 400, "radius", "shape.radius-too-small");
  // Under 0.134 of the span no radius does; just above it hardly any.
  CHECK(refused(arched(Head::Ogee, 20, 300), 240, 400).message.id == "shape.rise-too-low");
  const double lowest = (1 - std::sqrt(0.75)) * 240;
  checkWhatFits(arched(Head::Ogee, lowest - 1, lowest + 0.0005), 240, 400, "rise", "shape.rise-too-low");
}

TEST_CASE("a horseshoe rises between its radius and its width", "[geometry]") {
  checkWhatFits(arched(Head::Horseshoe, 110), 220, 330, "rise", "shape.rise-too-low");
  checkWhatFits(arched(Head::Horseshoe, 220), 220, 330, "rise", "shape.rise-too-high");
}

TEST_CASE("a trefoil's lobes are no wider than half the span", "[geometry]") {
  checkWhatFits(trefoil(130, 70, 80), 240, 330, "sideRadius", "shape.radius-too-large");
  checkWhatFits(trefoil(50, 130, 120), 240, 330, "topRadius", "shape.radius-too-large");
}

TEST_CASE("a trefoil's top lobe stands neither clear of the side lobes nor within them", "[geometry]") {
  checkWhatFits(trefoil(50, 70, 200), 240, 530, "topCentre", "shape.lobes-apart");
  // Side lobes that meet each other on the axis, the top one above, below and within one of them.
  checkWhatFits(trefoil(110, 15, 160), 240, 530, "topCentre", "shape.lobes-apart");
  checkWhatFits(trefoil(110, 15, 40), 240, 530, "topCentre", "shape.lobe-swallowed");
  checkWhatFits(trefoil(110, 60, 5), 240, 530, "topCentre", "shape.lobe-swallowed");
  checkWhatFits(trefoil(118, 60, 50), 240, 530, "topCentre", "shape.lobe-swallowed");
  for (double side = 61; side < 120; side += 7) {
    for (double top = 3; top < side; top += 11) {
      INFO(side << ' ' << top);
      const double meeting = std::sqrt(std::max(0.0, side * side - (120 - side) * (120 - side)));
      if (meeting - top > 0.1) {
        checkWhatFits(trefoil(side, top, (meeting - top) / 2), 240, 530, "topCentre", "shape.lobe-swallowed");
      }
      checkWhatFits(trefoil(side, top, meeting + top + 200), 240, 930, "topCentre", "shape.lobes-apart");
    }
  }
}

TEST_CASE("a head no opening is high enough for tells by how much", "[geometry]") {
  checkWhatFits(arched(Head::Pointed, 400), 200, 300, "rise", "shape.head-too-high");
  checkWhatFits(arched(Head::Ogee, 400, 80), 240, 300, "rise", "shape.head-too-high");
  const ShapeProblem round = refused(arched(Head::Round), 200, 90);
  CHECK(round.key == "head");
  CHECK(told(round, "value") == 100);
  CHECK(told(round, "most") == 90);
  CHECK(told(round, "by") == 10);
  const ShapeProblem lobes = refused(tests::multifoil(5), 200, 20);
  CHECK(lobes.key == "head");
  CHECK(construct(tests::multifoil(5), 200, told(lobes, "value")).ok());
  const ShapeProblem top = refused(trefoil(50, 70, 80), 240, 140);
  CHECK(top.key == "topCentre");
  CHECK(told(top, "by") == 10);
  CHECK(construct(trefoil(50, 70, 80), 240, 150).ok());
}
