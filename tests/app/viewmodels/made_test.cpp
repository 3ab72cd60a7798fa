// A measure as made, set on its scale, and the room keyed in.
#include "tests/app/gallery/states.h"
#include "tests/support/catch.h"

using app::viewmodels::MadeViewModel;

namespace {

// At the first step that measures such a figure.
bool atMeasure(tests::Stage& stage, const QString& step) {
  return stage.workUntil([&] {
    const auto& steps = stage.desk().bench().steps();
    return std::any_of(steps.begin(), steps.end(), [&](const auto* one) {
      return QString::fromStdString(one->id).contains(step) && !one->asMade.empty();
    });
  });
}

QString outcomeAt(MadeViewModel& made, double value) {
  while (made.value() < value - 1e-6) made.more();
  while (made.value() > value + 1e-6) made.less();
  return made.outcome();
}

}  // namespace

TEST_CASE("untouched a measure is as drawn; minus and plus go by what the rule tells") {
  tests::Stage stage({"pilots-chart"});
  REQUIRE(atMeasure(stage, QStringLiteral("/measure-window@top")));
  auto& made = stage.desk().made();
  made.open();
  CHECK_FALSE(made.touched());
  CHECK(made.value() == 316);
  CHECK(made.drawnText() == QStringLiteral("316.0 ±0.5"));
  CHECK(made.outcome() == QObject::tr("drawn"));
  made.more();
  CHECK(made.touched());
  CHECK(made.value() == 316.5);
  CHECK(made.valueWhole() == QStringLiteral("316.5"));
  made.less();
  made.less();
  CHECK(made.value() == 315.5);
  CHECK(made.back());
  CHECK_FALSE(made.touched());
  CHECK(made.value() == 316);
}

TEST_CASE("what would follow stands there before anything is recorded, and recording it does the same") {
  tests::Stage stage({"pilots-chart"});
  REQUIRE(atMeasure(stage, QStringLiteral("/measure-window@top")));
  auto& made = stage.desk().made();
  made.open();
  CHECK(outcomeAt(made, 317.5) == QObject::tr("strips follow"));
  CHECK(made.followBefore() == QStringLiteral("379.0"));
  CHECK(made.followAfter() == QStringLiteral("380.5 mm"));
  CHECK(made.followCount() == QObject::tr("%1 off").arg(2));
  CHECK(stage.workbench().job(stage.desk().bench().jobId())->measures.count("board.top.sight.width") == 0);
  CHECK(outcomeAt(made, 327) == QObject::tr("cut anew"));
  CHECK_FALSE(made.wouldRefuse().isEmpty());
  CHECK_FALSE(made.next());
  CHECK(outcomeAt(made, 317.5) == QObject::tr("strips follow"));
  REQUIRE(made.next());
  const auto* state = stage.workbench().job(stage.desk().bench().jobId());
  REQUIRE(state->measures.count("board.top.sight.width") == 1);
  CHECK(state->design->figures.find("band.inner.strip.horizontal")->display == "380.5 mm");
}

TEST_CASE("only what this way of marking asks for is waited for; the borders may be told all the same") {
  tests::Stage stage({"pilots-chart"});
  REQUIRE(atMeasure(stage, QStringLiteral("/measure-window@top")));
  auto& made = stage.desk().made();
  made.open();
  REQUIRE(made.total() == 6);
  CHECK(made.left() == 1);
  REQUIRE(made.next());
  CHECK(made.left() == 0);
  // Marked by the borders all six are asked for.
  stage.desk().settings().turnMarking();
  stage.desk().refresh();
  made.open();
  CHECK(made.left() == 5);
}

TEST_CASE("a thickness is told by a micrometer, and inches in their fractions") {
  tests::Stage stage({"pilots-chart"});
  REQUIRE(atMeasure(stage, QStringLiteral("square-boards/")));
  auto& made = stage.desk().made();
  made.open();
  while (!made.label().contains(QObject::tr("thickness"))) REQUIRE(made.forward());
  CHECK(made.readingText() == QStringLiteral("0.05"));
  made.more();
  CHECK(made.valueWhole() == QStringLiteral("1.55"));

  tests::Stage inches({"heron"});
  REQUIRE(atMeasure(inches, QStringLiteral("/measure-window@")));
  auto& there = inches.desk().made();
  there.open();
  CHECK(there.readingText() == QStringLiteral("1/32"));
  const double before = there.value();
  there.more();
  CHECK(there.value() > before);
  CHECK(there.value() - before <= 25.4 / 32 + 1e-6);
  CHECK_FALSE(there.valueDenominator().isEmpty());
}

TEST_CASE("a figure keyed in is the value on the scale as well, and stepping lets go of it") {
  tests::Stage stage({"pilots-chart"});
  REQUIRE(atMeasure(stage, QStringLiteral("/measure-window@top")));
  auto& made = stage.desk().made();
  made.open();
  for (const int digit : {3, 1, 7}) made.digit(digit);
  CHECK(made.value() == 317);
  CHECK(made.outcome() == QObject::tr("strips follow"));
  made.more();
  CHECK_FALSE(made.keyed());
  CHECK(made.value() == 317.5);
}

TEST_CASE("the room's two values are keyed in one after the other, and what cannot be is refused") {
  tests::Stage stage({"pilots-chart"});
  auto& room = stage.desk().room();
  room.open();
  for (const int digit : {1, 9}) room.digit(digit);
  room.part();
  room.digit(5);
  room.digit(7);
  CHECK(room.temperature().startsWith(QStringLiteral("19.5 ")));
  room.choose(true);
  CHECK(room.onHumidity());
  room.digit(6);
  room.part();
  room.digit(8);
  CHECK(room.humidity().startsWith(QStringLiteral("68 ")));
  REQUIRE(room.keep());
  const auto& rooms = stage.workbench().shop().rooms;
  REQUIRE(rooms.size() == 1);
  CHECK(rooms.back().room.temperature.inCelsius() == 19.5);
  CHECK(rooms.back().room.humidity.inPercent() == 68);
  // Nothing a workshop can be: it stays on the screen with its reason, and the other value is not gone to.
  room.open();
  for (const int digit : {7, 5}) room.digit(digit);
  room.choose(true);
  CHECK_FALSE(room.onHumidity());
  CHECK_FALSE(room.refusal().isEmpty());
  CHECK_FALSE(room.keep());
  CHECK(stage.workbench().shop().rooms.size() == 1);
}
