// The numbers of an act on the bench: the card's list and its order, rows of sizes, how far the hand is in them.
#include <algorithm>
#include <set>

#include "app/viewmodels/desk.h"
#include "core/sheets/card.h"
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using Kind = app::viewmodels::BenchViewModel::Kind;

TEST_CASE("a window has six numbers to be measured or marked, beside what the cutter is set to, all on one card") {
  for (const bool borders : {false, true}) {
    tests::Stage stage({"pilots-chart"});
    stage.desk().settings().turnWay();
    if (borders) stage.desk().settings().turnMarking();
    auto& bench = stage.desk().bench();
    REQUIRE(stage.workUntil([&] { return bench.stepId() == "cut-windows/mark-window@top"; }));
    const auto* figure = bench.figure();
    INFO((borders ? "borders" : "marks"));
    CHECK(figure->hasCard());
    CHECK(figure->byMarking());
    CHECK(figure->total() == 10);
    // What the cutter is set to is one stop of them all.
    CHECK(figure->stops() == 7);
    const QVariantList settings = figure->settings();
    CHECK(settings.size() == 10);
    QStringList headings;
    for (const QVariant& one : settings) {
      const QVariantMap row = one.toMap();
      CHECK_FALSE(row[QStringLiteral("name")].toString().isEmpty());
      CHECK_FALSE(row[QStringLiteral("value")].toString().isEmpty());
      CHECK(row[QStringLiteral("ofCutter")].toBool() == (row[QStringLiteral("heading")] == "set on the cutter"));
      if (headings.isEmpty() || headings.last() != row[QStringLiteral("heading")].toString())
        headings << row[QStringLiteral("heading")].toString();
    }
    CHECK(headings == (borders
                           ? QStringList{"from the right edge, mm", "from the left edge, mm", "from the top edge, mm",
                                         "from the bottom edge, mm", "set on the cutter", "across the opening, mm"}
                           : QStringList{"from the right edge, mm", "from the top edge, mm", "set on the cutter",
                                         "across the opening, mm"}));
    const auto subject = figure->cardSubject();
    REQUIRE(subject.design);
    core::sheets::CardRoom room{578, 384, 24, 80, [](const std::string& text) { return 20.0 * text.size(); }, 62, 110};
    const auto card = core::sheets::drawCard(*subject.design, subject.figures, room);
    REQUIRE(card.fits);
    CHECK(card.numbers.size() == 6);
    std::set<QString> named;
    do {
      CHECK_FALSE(figure->datum().isEmpty());
      CHECK(named.insert(figure->what() + figure->datum()).second);
    } while (bench.figure()->forward());
    CHECK(named.size() == 10);
  }
}

TEST_CASE("with the back up no number of the bench is told from the face's left or right") {
  tests::Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  int told = 0;
  static_cast<void>(stage.workUntil([&] {
    if (bench.kind() != Kind::Step || !bench.figure()->hasCard()) return false;
    do {
      ++told;
      CHECK_FALSE(bench.figure()->datum().contains(QStringLiteral("seen from the face")));
      CHECK_FALSE(bench.figure()->datum().contains(QStringLiteral("now on your")));
    } while (bench.figure()->forward());
    return false;
  }));
  CHECK(told > 10);
}

TEST_CASE("a card's list says what is done, what is in hand and what is to come, also after a look back") {
  tests::Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId() == "cut-windows/mark-window@top"; }));
  auto* figure = bench.figure();
  const auto standing = [&] {
    QString all;
    for (const QVariant& one : figure->settings()) {
      const QVariantMap row = one.toMap();
      all += row[QStringLiteral("now")].toBool()    ? QLatin1Char('n')
             : row[QStringLiteral("done")].toBool() ? QLatin1Char('d')
                                                    : QLatin1Char('-');
    }
    return all;
  };
  CHECK(standing() == "n---");
  CHECK_FALSE(figure->lastReached());
  CHECK(figure->cardSubject().passed == 0);
  REQUIRE(figure->onward());
  REQUIRE(figure->onward());
  CHECK(standing() == "ddn-");
  CHECK(figure->cardSubject().passed == 2);
  REQUIRE(figure->earlier());
  CHECK(standing() == "dn--");
  REQUIRE(figure->onward());
  REQUIRE(figure->onward());
  CHECK(standing() == "dddn");
  CHECK(figure->lastReached());
  CHECK_FALSE(figure->onward());
  // From the first once more: what was made stays made.
  figure->begin();
  CHECK(standing() == "ndd-");
  CHECK(figure->lastReached());
  CHECK_FALSE(figure->earlier());
}

TEST_CASE("all that a cutter is set to is passed by one press, either way") {
  tests::Stage stage({"pilots-chart"});
  stage.desk().settings().turnWay();
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId() == "cut-windows/mark-window@top"; }));
  auto* figure = bench.figure();
  int presses = 0;
  while (figure->onward()) ++presses;
  CHECK(presses == 6);
  CHECK(figure->label().contains(QStringLiteral("sight height")));
  REQUIRE(figure->earlier());
  REQUIRE(figure->earlier());
  int inHand = 0;
  for (const QVariant& one : figure->settings()) {
    const QVariantMap row = one.toMap();
    if (!row[QStringLiteral("now")].toBool()) continue;
    ++inHand;
    CHECK(row[QStringLiteral("ofCutter")].toBool());
  }
  CHECK(inHand == 4);
  CHECK(figure->datum() == "set on the cutter");
}

TEST_CASE("an arch's list names its jambs, its head and its sill") {
  tests::Stage stage({"tide-table"});
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId() == "set-out-shape/carry-lines@top"; }));
  QStringList names;
  for (const QVariant& one : bench.figure()->settings()) names << one.toMap()[QStringLiteral("name")].toString();
  CHECK(names == QStringList{"centre line", "right jamb", "left jamb", "springing", "head", "sill", "radius of arc 1"});
}

TEST_CASE("what is cut to a width and a height has a row with both, each thing its own") {
  tests::Stage stage({"pilots-chart"});
  stage.desk().settings().turnWay();
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId().startsWith(QStringLiteral("square-boards/cut-blank@")); }));
  auto* figure = bench.figure();
  REQUIRE(figure->hasSizes());
  QStringList names;
  for (const QVariant& one : figure->sizes()) {
    const QVariantMap row = one.toMap();
    names << row[QStringLiteral("name")].toString();
    CHECK(row[QStringLiteral("count")] == "1 off");
    CHECK(row[QStringLiteral("across")].toMap()[QStringLiteral("whole")] == "456.0");
    CHECK(row[QStringLiteral("down")].toMap()[QStringLiteral("whole")] == "409.3");
    CHECK(row[QStringLiteral("now")].toBool() == (names.size() == 1));
  }
  CHECK(names == QStringList{"top board", "under board", "back mount", "backing"});
  CHECK(figure->stops() == 4);
  REQUIRE(figure->onward());
  CHECK(figure->sizes()[1].toMap()[QStringLiteral("now")].toBool());
  CHECK_FALSE(figure->sizes()[0].toMap()[QStringLiteral("now")].toBool());
  while (figure->onward()) continue;
  CHECK(figure->lastReached());
}

TEST_CASE("rows of sizes are of acts that cut to them, of nothing that is measured or set out") {
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    tests::Stage stage({job});
    auto& bench = stage.desk().bench();
    int cut = 0;
    static_cast<void>(stage.workUntil([&] {
      if (bench.kind() != Kind::Step || !bench.figure()->hasSizes()) return false;
      INFO(bench.stepId().toStdString());
      CHECK_FALSE(bench.figure()->hasCard());
      CHECK(std::all_of(bench.steps().begin(), bench.steps().end(), [](const auto* step) {
        return step->figures.empty() || step->act == core::craft::Act::CutSquare;
      }));
      cut += static_cast<int>(bench.figure()->sizes().size());
      return false;
    }));
    CHECK(cut >= 3);
  }
}

TEST_CASE("an arch is read in the order of the hand, without what a line drawn before tells") {
  tests::Stage stage({"tide-table"});
  auto& bench = stage.desk().bench();
  REQUIRE(stage.workUntil([&] { return bench.stepId() == "set-out-shape/carry-lines@top"; }));
  std::vector<std::string> order;
  do {
    order.push_back(bench.figure()->currentId());
  } while (bench.figure()->forward());
  CHECK(order == std::vector<std::string>{"board.top.axis", "board.top.mark.left", "board.top.mark.right",
                                          "board.top.springing", "board.top.mark.top", "board.top.mark.bottom",
                                          "board.top.arc.1.radius"});
}

TEST_CASE("what has no back up, or one number alone, has no card") {
  tests::Stage stage({"pilots-chart"});
  auto& bench = stage.desk().bench();
  int cards = 0;
  static_cast<void>(stage.workUntil([&] {
    if (bench.kind() != Kind::Step) return false;
    const bool back = std::any_of(bench.steps().begin(), bench.steps().end(),
                                  [](const auto* step) { return step->up == core::craft::WayUp::Back; });
    INFO(bench.stepId().toStdString());
    if (!back) CHECK_FALSE(bench.figure()->hasCard());
    if (bench.figure()->hasCard()) {
      ++cards;
      CHECK(bench.figure()->total() >= 2);
    }
    return false;
  }));
  CHECK(cards >= 4);
}
