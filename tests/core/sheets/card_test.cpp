// The cutter's card: every number where its figure lies, as long as it says, and none on another.
#include "core/sheets/card.h"

#include "core/sheets/names.h"

#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/sheets/card_spread.h"
#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;
using core::workflow::WorkflowFigure;

namespace {

// As on a tablet of 1280 x 800 pixels.
CardRoom room(double width = 590, double height = 480) {
  constexpr double kCap = 23.6;
  // A figure of the program's letters is 0.85 of a cap height wide.
  return {width, height, kCap, 3.5 * kCap,
          [](const std::string& text) { return 0.85 * kCap * static_cast<double>(text.size()); }};
}

std::vector<std::string> jobs() {
  std::vector<std::string> all = {tests::workedExample(), tests::inchExample()};
  for (const std::string& form : tests::shapedForms()) all.push_back(tests::shapedExample(form));
  return all;
}

// What a technique lists for setting out and measuring a window.
std::vector<WorkflowFigure> listed(const core::design::Design& design, const std::string& board, bool borders) {
  const std::string own = "board." + board + '.';
  std::vector<WorkflowFigure> figures;
  const auto add = [&](const std::string& name) {
    for (const auto& figure : design.figures.all()) {
      const bool family = name.back() == '.' && core::base::startsWith(figure.id, own + name);
      if (family || figure.id == own + name) figures.push_back({figure.id, 1, "", std::nullopt});
    }
  };
  const std::vector<std::string> marks = {"mark.left", "mark.right", "mark.top", "mark.bottom"};
  const std::vector<std::string> widths = {"back.right", "back.left", "border.top", "border.bottom"};
  for (const std::string& name : borders ? widths : marks) add(name);
  for (const char* name : {"point.", "arc.", "oval.", "axis", "springing", "thickness", "bevel.angle", "bevel.slope",
                           "bevel.overrun", "sight.width", "sight.height"}) {
    add(name);
  }
  return figures;
}

std::vector<std::string> idsOf(const std::vector<WorkflowFigure>& figures) {
  std::vector<std::string> ids;
  for (const WorkflowFigure& figure : figures) ids.push_back(figure.id);
  return ids;
}

template <typename Work>
void forEveryWindow(const Work& work) {
  for (const std::string& job : jobs()) {
    const auto design = tests::designOf(job);
    for (const auto& board : design.layout.boards) {
      for (const bool borders : {false, true}) {
        INFO(design.job.title << ' ' << (design.layout.shaped ? board.sightOutline.segments().size() : 0) << ' '
                              << board.id << (borders ? " borders" : " marks"));
        work(design, board.id, inOrderOfTheHand(design, listed(design, board.id, borders)));
      }
    }
  }
}

bool meet(const core::geometry::Rectangle& a, const core::geometry::Rectangle& b) {
  constexpr double kTouch = 1e-6;
  return a.left < b.right - kTouch && b.left < a.right - kTouch && a.top < b.bottom - kTouch &&
         b.top < a.bottom - kTouch;
}

// The dimension line among a number's lines: the first of that role.
const Stroke& dimensionOf(const std::vector<Primitive>& lines) {
  for (const Primitive& primitive : lines) {
    if (primitive.role == Role::Dimension) return std::get<Stroke>(primitive.shape);
  }
  throw std::logic_error("no dimension line");
}

double reachOf(const Stroke& stroke) { return core::geometry::distance(stroke.points.front(), stroke.points.back()); }

std::vector<Stroke> strokesOf(const std::vector<Primitive>& lines, Role role) {
  std::vector<Stroke> strokes;
  for (const Primitive& primitive : lines) {
    const auto* stroke = std::get_if<Stroke>(&primitive.shape);
    if (primitive.role == role && stroke != nullptr) strokes.push_back(*stroke);
  }
  return strokes;
}

}  // namespace

TEST_CASE("a measure of the card is as far from its datum as its figure says, and a border begins at its edge") {
  std::size_t measures = 0;
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    for (const WorkflowFigure& figure : figures) {
      const auto measure = cardMeasure(design, figure.id);
      if (!measure) continue;
      INFO(figure.id);
      ++measures;
      const auto& value = *design.figures.find(figure.id);
      CHECK(core::geometry::distance(measure->from, measure->to) == Approx(std::fabs(value.value)).margin(1e-6));
      const bool fromEdge = core::base::startsWith(value.kind, "board.mark.") ||
                            core::base::startsWith(value.kind, "board.back.") ||
                            core::base::startsWith(value.kind, "board.border.");
      if (fromEdge) CHECK(measure->fromEdge);
    }
  });
  CHECK(measures > 200);
}

TEST_CASE("every card has room on a tablet: no number on another, none outside, each drawn as long as it is") {
  std::size_t most = 0;
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    REQUIRE(card.fits);
    most = std::max(most, card.numbers.size());
    for (std::size_t i = 0; i < card.numbers.size(); ++i) {
      const CardNumber& one = card.numbers[i];
      INFO(one.figure << ' ' << one.text);
      CHECK(one.box.left >= -0.5);
      CHECK(one.box.top >= -0.5);
      CHECK(one.box.right <= 590.5);
      CHECK(one.box.bottom <= 480.5);
      CHECK_FALSE(one.box.empty());
      for (std::size_t k = i + 1; k < card.numbers.size(); ++k) {
        INFO(" and " << card.numbers[k].figure);
        CHECK_FALSE(meet(one.box, card.numbers[k].box));
      }
      const double value = std::fabs(design.figures.find(one.figure)->value);
      CHECK(reachOf(dimensionOf(one.pencil)) == Approx(value * card.scale).margin(1e-6));
      CHECK(reachOf(dimensionOf(one.ink)) == Approx(value * card.scale).margin(1e-6));
    }
  });
  CHECK(most >= 20);
}

TEST_CASE("a card's board is its edge, its opening, its mark and its centre lines, all of them on the board") {
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    const double right = card.origin.x + card.scale * design.layout.outerWidth;
    const double bottom = card.origin.y + card.scale * design.layout.outerHeight;
    for (const Primitive& primitive : card.board) {
      INFO(dump(primitive));
      CHECK_FALSE(primitive.matter.has_value());
      const bool drawn =
          std::holds_alternative<Stroke>(primitive.shape) || std::holds_alternative<Path>(primitive.shape);
      REQUIRE(drawn);
      const auto* stroke = std::get_if<Stroke>(&primitive.shape);
      for (const Point& point : stroke == nullptr ? std::vector<Point>() : stroke->points) {
        CHECK(point.x >= card.origin.x - 1e-6);
        CHECK(point.y >= card.origin.y - 1e-6);
        CHECK(point.x <= right + 1e-6);
        CHECK(point.y <= bottom + 1e-6);
      }
    }
  });
}

TEST_CASE("a number stands by its own line: its leader ends at its text") {
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    for (const CardNumber& one : card.numbers) {
      const auto measure = cardMeasure(design, one.figure);
      if (measure->gives == Gives::Curve) continue;
      INFO(one.figure);
      const auto leaders = strokesOf(one.pencil, Role::Setting);
      REQUIRE_FALSE(leaders.empty());
      const Point end = leaders.back().points.back();
      CHECK(core::geometry::distance(end, nearestOn(one.box, end)) < 12);
    }
  });
}

TEST_CASE("a round arch is seven settings, in the order of the hand") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const auto all = listed(design, "top", false);
  CHECK(all.size() > 26);
  std::vector<std::string> setOut;
  for (const std::string& id : idsOf(inOrderOfTheHand(design, all))) {
    if (cardMeasure(design, id)) setOut.push_back(id);
  }
  CHECK(setOut == std::vector<std::string>{"board.top.axis", "board.top.springing", "board.top.mark.left",
                                           "board.top.mark.right", "board.top.mark.top", "board.top.mark.bottom",
                                           "board.top.arc.1.radius", "board.top.sight.width",
                                           "board.top.sight.height"});
}

TEST_CASE("centre lines come before the sides, sides before centres, centres before radii, radii before points") {
  const std::vector<std::string> order = {"axis", "springing", "mark.", "centre.", "radius", ".point.", "sight."};
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    INFO(form);
    std::size_t reached = 0;
    for (const std::string& id : idsOf(inOrderOfTheHand(design, listed(design, "under", false)))) {
      if (!cardMeasure(design, id)) continue;
      INFO(id);
      for (std::size_t i = 0; i < order.size(); ++i) {
        if (id.find(order[i]) == std::string::npos) continue;
        CHECK(i >= reached);
        reached = i;
        break;
      }
    }
    CHECK(reached == order.size() - 1);
  }
}

TEST_CASE("settings of the tool stay on the list, and what is listed twice is there once") {
  const auto design = tests::designOf(tests::workedExample());
  auto figures = listed(design, "top", true);
  for (const char* border : {"border.left", "border.right", "border.top"}) {
    figures.push_back({std::string("board.top.") + border, 1, "", std::nullopt});
  }
  const auto ids = idsOf(inOrderOfTheHand(design, figures));
  CHECK(ids == std::vector<std::string>{"board.top.back.right", "board.top.back.left", "board.top.border.top",
                                        "board.top.border.bottom", "board.top.thickness", "board.top.bevel.angle",
                                        "board.top.bevel.slope", "board.top.bevel.overrun", "board.top.sight.width",
                                        "board.top.sight.height"});
}

TEST_CASE("with the back up the marked corner is top right, and its edge is the datum of every mark across") {
  const auto design = tests::designOf(tests::workedExample());
  const Card card = drawCard(design, {"board.top.mark.left", "board.top.mark.right", "board.top.mark.top"}, room());
  const double right = card.origin.x + card.scale * design.layout.outerWidth;
  const auto marks = strokesOf(card.board, Role::Mark);
  REQUIRE(marks.size() == 1);
  for (const Point& point : marks[0].points) {
    CHECK(point.x > right - 40);
    CHECK(point.y < card.origin.y + 40);
  }
  for (const CardNumber& one : card.numbers) {
    INFO(one.figure);
    const auto datum = strokesOf(one.ink, Role::BoardEdge);
    REQUIRE(datum.size() == 1);
    const bool down = one.figure == "board.top.mark.top";
    CHECK(dimensionOf(one.ink).points.front().x == Approx(down ? dimensionOf(one.ink).points.back().x : right));
    CHECK((down ? datum[0].points[0].y == Approx(card.origin.y) : datum[0].points[0].x == Approx(right)));
    // It is hatched outside the board, and the line to be made runs right across it.
    for (const Stroke& hatch : strokesOf(one.ink, Role::Waste)) {
      CHECK((down ? hatch.points[1].y < card.origin.y : hatch.points[1].x > right));
    }
    REQUIRE(strokesOf(one.ink, Role::Line).size() == 1);
    CHECK(reachOf(strokesOf(one.ink, Role::Line)[0]) ==
          Approx(card.scale * (down ? design.layout.outerWidth : design.layout.outerHeight)));
  }
}

TEST_CASE("border widths begin at the edge the hand sees them from: left and right as on the back") {
  const auto design = tests::designOf(tests::inchExample());
  const std::string board = design.layout.boards.front().id;
  const auto right = cardMeasure(design, "board." + board + ".back.right");
  const auto left = cardMeasure(design, "board." + board + ".back.left");
  REQUIRE((right && left));
  CHECK(right->from.x == Approx(design.layout.outerWidth));
  CHECK(left->from.x == Approx(0).margin(1e-9));
  const auto bottom = cardMeasure(design, "board." + board + ".border.bottom");
  REQUIRE(bottom);
  CHECK(bottom->from.y == Approx(design.layout.outerHeight));
  CHECK(bottom->to.y < bottom->from.y);
}

TEST_CASE("a card is of one board's back and of at least two numbers") {
  const auto design = tests::designOf(tests::workedExample());
  const auto of = [&](const std::vector<std::string>& ids) {
    std::vector<WorkflowFigure> figures;
    for (const std::string& id : ids) figures.push_back({id, 1, "", std::nullopt});
    return boardOfCard(design, figures);
  };
  CHECK(of({"board.top.mark.left", "board.top.mark.top"}) == "top");
  CHECK(of({"board.top.mark.left", "board.top.thickness", "band.inner.area"}) == "");
  CHECK(of({"board.top.mark.left", "board.under.mark.left"}) == "");
  CHECK(of({"board.top.face.width", "board.top.face.height", "outer.width"}) == "");
  CHECK(of({}) == "");
}

TEST_CASE("a room too small for the numbers has no card, and says so") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "multifoil", "lobes": 5)"));
  const auto ids = idsOf(inOrderOfTheHand(design, listed(design, "top", false)));
  CHECK_FALSE(drawCard(design, ids, room(200, 150)).fits);
  CHECK(drawCard(design, ids, room(200, 150)).numbers.empty());
  CHECK_FALSE(drawCard(design, {}, room()).fits);
  CardRoom larger = room();
  larger.shortest = 400;
  CHECK_FALSE(drawCard(design, ids, larger).fits);
}

TEST_CASE("numbers along an edge keep their order, apart, and as near to their places as there is room") {
  for (const std::size_t rows : {std::size_t{1}, std::size_t{2}}) {
    std::vector<Label> labels;
    for (const double wanted : {5.0, 60.0, 62.0, 64.0, 205.0, 299.0}) labels.push_back({wanted, 40, 0, 0, 0});
    REQUIRE(spread(labels, 0, 300, rows));
    for (std::size_t i = 0; i < labels.size(); ++i) {
      CHECK(labels[i].at >= 20 - 1e-9);
      CHECK(labels[i].at <= 280 + 1e-9);
      for (std::size_t k = i + 1; k < labels.size(); ++k) {
        if (labels[k].row == labels[i].row) CHECK(labels[k].at - labels[i].at >= 40 - 1e-9);
      }
      // The line to the outer row passes between two of the inner one.
      for (const Label& inner : labels) {
        if (labels[i].row == 1 && inner.row == 0) CHECK(std::fabs(labels[i].through - inner.at) >= 20 - 1e-9);
      }
    }
    CHECK(labels[4].at == Approx(205));
  }
  std::vector<Label> many(9, Label{10, 40, 0, 0, 0});
  CHECK_FALSE(spread(many, 0, 300, 1));
  CHECK(spread(many, 0, 300, 2));
}
