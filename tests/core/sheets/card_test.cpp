// The cutter's card: every number in a dimension as long as it says, taken from what it says, and what it makes.
#include "core/sheets/card.h"

#include "core/sheets/names.h"

#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/sheets/card_lines.h"
#include "core/sheets/card_room.h"
#include "tests/support/catch.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;
using core::workflow::WorkflowFigure;

namespace {

constexpr double kCap = 23.6;
constexpr double kWidth = 578;
constexpr double kHeight = 384;

// As on a tablet of 1280 x 800 pixels.
CardRoom room(double width = kWidth, double height = kHeight) {
  CardRoom room;
  room.width = width;
  room.height = height;
  room.capHeight = kCap;
  room.shortest = 3.5 * kCap;
  // A figure of the program's letters is 0.85 of a cap height wide.
  room.widthOf = [](const std::string& text) { return 0.85 * kCap * static_cast<double>(text.size()); };
  room.side = 62;
  room.window = 110;
  return room;
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

TEST_CASE("a measure says what it is taken from and on which half of the window it ends, as the board lies") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const auto of = [&](const std::string& id) {
    const auto measure = cardMeasure(design, "board.top." + id);
    REQUIRE(measure);
    return std::pair(measure->datum, measure->half);
  };
  using D = Datum;
  using H = Half;
  CHECK(of("axis") == std::pair(D::RightEdge, H::Neither));
  CHECK(of("springing") == std::pair(D::TopEdge, H::Neither));
  // Nearest the marked corner, which lies top right.
  CHECK(of("mark.left") == std::pair(D::RightEdge, H::Right));
  CHECK(of("mark.right") == std::pair(D::RightEdge, H::Left));
  CHECK(of("mark.top") == std::pair(D::TopEdge, H::Upper));
  CHECK(of("mark.bottom") == std::pair(D::TopEdge, H::Lower));
  CHECK(of("back.left") == std::pair(D::LeftEdge, H::Left));
  CHECK(of("border.bottom") == std::pair(D::BottomEdge, H::Lower));
  CHECK(of("arc.1.radius") == std::pair(D::Centre, H::Neither));
  CHECK(of("sight.width") == std::pair(D::Opening, H::Neither));
  // Left and right of the face are the other way round.
  CHECK(of("border.left") == std::pair(D::RightEdge, H::Right));
}

TEST_CASE("every card has room on a tablet: no number on a word, none outside, each dimension as long as it is") {
  std::size_t numbers = 0;
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    REQUIRE(card.fits);
    CHECK(card.edges.left > 0);
    CHECK(card.edges.top > 0);
    CHECK(card.edges.right < kWidth);
    // It goes on out of the room below its lowest line, and nowhere else.
    for (const CardNumber& one : card.numbers) {
      for (const Stroke& chords : detail::chordsOf(one.made)) {
        const bool upright = chords.points.front().x == chords.points.back().x;
        for (const Point& point : chords.points) CHECK((upright || point.y < kHeight));
      }
      for (const Stroke& dimension : strokesOf(one.ink, Role::Dimension)) {
        for (const Point& point : dimension.points) CHECK(point.y < kHeight);
      }
    }
    for (const CardNumber& one : card.numbers) {
      INFO(one.figure << ' ' << one.text);
      ++numbers;
      CHECK(one.box.left >= -0.5);
      CHECK(one.box.top >= -0.5);
      CHECK(one.box.right <= kWidth + 0.5);
      CHECK(one.box.bottom <= kHeight + 0.5);
      CHECK_FALSE(one.box.empty());
      for (const auto& word : {card.top, card.left, card.right}) CHECK_FALSE(meet(one.box, word));
      if (one.inside) {
        CHECK_FALSE(meet(one.box, card.window));
      } else {
        CHECK_FALSE(meet(one.box, card.edges));
      }
      const double value = std::fabs(design.figures.find(one.figure)->value);
      CHECK(reachOf(dimensionOf(one.ink)) == Approx(value * card.scale).margin(1e-6));
    }
  });
  CHECK(numbers > 200);
}

TEST_CASE("a board that is measured from its bottom edge is shown whole") {
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    const bool fromBottom = std::any_of(card.numbers.begin(), card.numbers.end(), [&](const CardNumber& one) {
      return cardMeasure(design, one.figure)->datum == Datum::BottomEdge;
    });
    if (fromBottom) CHECK(card.edges.bottom < kHeight);
  });
}

TEST_CASE("the board takes most of the height where nothing else needs it") {
  const auto design = tests::designOf(tests::workedExample());
  const Card card = drawCard(design, idsOf(inOrderOfTheHand(design, listed(design, "top", false))), room());
  CHECK(std::max((card.edges.bottom - card.edges.top) / kHeight, (card.edges.right - card.edges.left) / kWidth) > 0.5);
}

TEST_CASE("a card's board is its surface in its material, what falls out, its edge, its opening and its mark") {
  forEveryWindow([&](const auto& design, const auto& board, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    std::vector<Role> roles;
    for (const Primitive& primitive : card.board) {
      INFO(dump(primitive));
      roles.push_back(primitive.role);
      const bool ground = primitive.role == Role::BoardFace || primitive.role == Role::Waste;
      REQUIRE(primitive.matter.has_value() == ground);
      if (ground) {
        for (const auto& entered : design.job.boards) {
          if (entered.id == board) CHECK(primitive.matter->name == entered.material);
        }
      }
      const auto* stroke = std::get_if<Stroke>(&primitive.shape);
      for (const Point& point : stroke == nullptr ? std::vector<Point>() : stroke->points) {
        CHECK(point.x >= card.edges.left - 1e-6);
        CHECK(point.y >= card.edges.top - 1e-6);
        CHECK(point.x <= card.edges.right + 1e-6);
        CHECK(point.y <= card.edges.bottom + 1e-6);
      }
    }
    CHECK(roles == std::vector<Role>{Role::BoardFace, Role::Waste, Role::BoardEdge, Role::BoardSight, Role::Mark});
  });
}

TEST_CASE("what the hand makes is where the measure ends: axes right across, sides past the corners, checks nothing") {
  std::size_t lines = 0;
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    for (const CardNumber& one : card.numbers) {
      INFO(one.figure);
      const auto measure = *cardMeasure(design, one.figure);
      CHECK(one.made.empty() == (measure.gives == Gives::Distance));
      if (measure.gives != Gives::Line) continue;
      ++lines;
      REQUIRE(one.made.size() == 1);
      const Stroke& line = std::get<Stroke>(one.made.front().shape);
      const bool upright = std::fabs(measure.from.y - measure.to.y) < 1e-6;
      const double at =
          upright ? card.edges.left + card.scale * measure.to.x : card.edges.top + card.scale * measure.to.y;
      for (const Point& point : line.points) CHECK((upright ? point.x : point.y) == Approx(at));
      const double whole = upright ? card.edges.bottom - card.edges.top : card.edges.right - card.edges.left;
      CHECK((one.made.front().role == Role::Guide) == !measure.ofWindow);
      CHECK((reachOf(line) == Approx(whole)) != measure.ofWindow);
      if (!one.tick) continue;
      CHECK(std::fabs((upright ? one.tick->x : one.tick->y) - at) > 0.5 * kCap);
      CHECK(one.tick->x > card.edges.left);
      CHECK(one.tick->y > card.edges.top);
    }
  });
  CHECK(lines > 100);
}

TEST_CASE("what is taken off the centre line is made on both sides of it") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "pointed", "rise": "190 mm")"));
  const Card card = drawCard(design, idsOf(inOrderOfTheHand(design, listed(design, "top", false))), room());
  const double axis = card.edges.right - card.scale * design.layout.boards.front().axis;
  std::size_t mirrored = 0;
  for (const CardNumber& one : card.numbers) {
    const auto measure = *cardMeasure(design, one.figure);
    if (measure.gives != Gives::Curve && measure.datum != Datum::CentreLine) continue;
    INFO(one.figure);
    ++mirrored;
    double middle = 0;
    std::size_t points = 0;
    for (const Stroke& chords : detail::chordsOf(one.made)) {
      for (const Point& point : chords.points) {
        middle += point.x;
        ++points;
      }
    }
    REQUIRE(points > 0);
    CHECK(middle / static_cast<double>(points) == Approx(axis));
  }
  CHECK(mirrored > 0);
}

TEST_CASE("ticks of one card stand apart") {
  forEveryWindow([&](const auto& design, const auto&, const auto& figures) {
    const Card card = drawCard(design, idsOf(figures), room());
    for (const CardNumber& one : card.numbers) {
      for (const CardNumber& other : card.numbers) {
        if (&one == &other || !one.tick || !other.tick) continue;
        INFO(one.figure << " and " << other.figure);
        CHECK(core::geometry::distance(*one.tick, *other.tick) > 0.8 * kCap);
      }
    }
  });
}

TEST_CASE("a dimension with no room for its arrow has it point from outside") {
  const auto design = tests::designOf(tests::workedExample());
  const auto headsOf = [&](double width) {
    const Card card = drawCard(design, {"board.top.mark.left", "board.top.mark.top"}, room(width, width));
    REQUIRE(card.fits);
    const CardNumber& one = card.numbers.front();
    std::vector<Stroke> heads;
    for (const Stroke& stroke : strokesOf(one.ink, Role::Dimension)) {
      if (stroke.closed) heads.push_back(stroke);
    }
    REQUIRE(heads.size() == 1);
    // Its tip first; where its neck lies, from the tip on towards the datum.
    const double datum = dimensionOf(one.ink).points.front().x;
    return (heads[0].points[1].x - heads[0].points[0].x) * (datum - heads[0].points[0].x) > 0;
  };
  CHECK(headsOf(900));
  CHECK_FALSE(headsOf(420));
}

TEST_CASE("a round arch is seven settings, in the order of the hand") {
  const auto design = tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "round")"));
  const auto all = listed(design, "top", false);
  CHECK(all.size() > 26);
  std::vector<std::string> setOut;
  for (const std::string& id : idsOf(inOrderOfTheHand(design, all))) {
    if (cardMeasure(design, id)) setOut.push_back(id);
  }
  CHECK(setOut == std::vector<std::string>{"board.top.axis", "board.top.mark.left", "board.top.mark.right",
                                           "board.top.springing", "board.top.mark.top", "board.top.mark.bottom",
                                           "board.top.arc.1.radius", "board.top.sight.width",
                                           "board.top.sight.height"});
}

TEST_CASE("what is taken from the side edge comes first, then what is from the top, centres, radii, points, checks") {
  const std::vector<std::string> order = {"axis",        "mark.left", "mark.right", "springing", "mark.top",
                                          "mark.bottom", "centre.",   "radius",     ".point.",   "sight."};
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
  const double right = card.edges.right;
  const auto marks = strokesOf(card.board, Role::Mark);
  REQUIRE(marks.size() == 1);
  for (const Point& point : marks[0].points) {
    CHECK(point.x > right - 40);
    CHECK(point.y < card.edges.top + 40);
  }
  for (const CardNumber& one : card.numbers) {
    INFO(one.figure);
    const auto datum = strokesOf(one.ink, Role::BoardEdge);
    REQUIRE(datum.size() == 1);
    const bool down = one.figure == "board.top.mark.top";
    CHECK(dimensionOf(one.ink).points.front().x == Approx(down ? dimensionOf(one.ink).points.back().x : right));
    CHECK((down ? datum[0].points[0].y == Approx(card.edges.top) : datum[0].points[0].x == Approx(right)));
    // It is hatched outside the board, and the line to be made runs right across it.
    for (const Stroke& hatch : strokesOf(one.ink, Role::Waste)) {
      CHECK((down ? hatch.points[1].y < card.edges.top : hatch.points[1].x > right));
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

TEST_CASE("a number on the board keeps off what is taken, and off lines where that is not far") {
  const Stroke line{{{100, 100}, {100, 200}}, false};
  const core::geometry::Rectangle whole{0, 0, 300, 300};
  const auto free = nearestRoom(line, 60, 30, whole, {}, {});
  CHECK(core::geometry::distance({(free.left + free.right) / 2, (free.top + free.bottom) / 2}, {100, 150}) < 8);
  const auto beside = nearestRoom(line, 60, 30, whole, {}, {line});
  CHECK((beside.left >= 100 || beside.right <= 100));
  const core::geometry::Rectangle taken{80, 80, 300, 300};
  CHECK_FALSE(meet(nearestRoom(line, 60, 30, whole, {taken}, {line}), taken));
  CHECK(nearestRoom(line, 60, 30, {0, 0, 50, 300}, {}, {}).empty());
}
