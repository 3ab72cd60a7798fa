// A design at the desk: what its form offers, what a day is taken for, and what stays where a value does not read.
#include "app/viewmodels/desk/design_view_model.h"

#include <QEventLoop>
#include <QTimer>

#include "tests/app/viewmodels/rows.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/catch.h"

using app::viewmodels::DesignViewModel;
using app::viewmodels::FormViewModel;
using app::viewmodels::RowsModel;
using core::base::Value;

using tests::cell;
using tests::rowOf;

namespace {

struct DesignDesk {
  tests::MemoryEventStore store;
  tests::StoredBench bench{store};
  DesignViewModel design{bench.work, bench.clock};

  DesignDesk() {
    REQUIRE(design.beginFresh());
    enter("The artwork", "width", {3, 1, 0});
    enter("The artwork", "height", {2, 4, 0});
    write("The artwork", "title", "Tide gate at dusk");
    REQUIRE(design.complete());
  }

  void open(const char* section, const char* label) {
    const int at = rowOf(*design.sections(), QString::fromUtf8(section));
    REQUIRE(at >= 0);
    design.chooseSection(at);
    const int field = rowOf(*design.fields(), QString::fromUtf8(label));
    INFO(section << " / " << label);
    REQUIRE(field >= 0);
    design.chooseField(field);
  }
  void enter(const char* section, const char* label, std::initializer_list<int> digits) {
    open(section, label);
    for (const int digit : digits) design.digit(digit);
    REQUIRE(design.keep());
  }
  bool write(const char* section, const char* label, const char* text) {
    open(section, label);
    return design.keepText(QString::fromUtf8(text));
  }
  // The option's row; its reason is `problem` where it cannot be taken.
  int option(const char* label) {
    const int row = rowOf(*design.options(), QString::fromUtf8(label));
    INFO(label);
    REQUIRE(row >= 0);
    return row;
  }
  std::string at(const char* pointer) {
    const Value* value = core::base::at(bench.work.designs().find(design.id())->document, pointer);
    return value == nullptr || value->kind() != Value::Kind::Text ? "" : value->asText();
  }
};

}  // namespace

namespace {

Value documentOf(const DesignDesk& desk) { return desk.bench.work.designs().find(desk.design.id())->document; }

}  // namespace

TEST_CASE("scattered leaf comes with a size it is scattered on, and goes to the bench") {
  DesignDesk desk;
  desk.open("Leaf", "Add leaf");
  desk.open("Leaf", "laid or scattered");
  const int scattered = desk.option("scattered");
  CHECK(cell(*desk.design.options(), scattered, RowsModel::Note) == QLatin1String("with methyl cellulose"));
  desk.design.chooseOption(scattered);
  CHECK(desk.at("/leaf/0/size") == "methylCellulose");
  CHECK(desk.design.complete());
  desk.open("Leaf", "size");
  const int water = desk.option("water size");
  CHECK(cell(*desk.design.options(), water, RowsModel::Problem) ==
        QLatin1String("No technique scatters leaf on water size; choose methyl cellulose or starch."));
  desk.design.chooseOption(water);
  CHECK(desk.at("/leaf/0/size") == "methylCellulose");
  CHECK(desk.design.refusal().contains(QLatin1String("No technique scatters leaf on water size")));
  desk.design.chooseOption(desk.option("starch"));
  CHECK(desk.at("/leaf/0/size") == "starch");
  CHECK(desk.design.toBench());
}

TEST_CASE("how much scattered leaf covers is said and keyed in in per cent, and kept as the share it is") {
  DesignDesk desk;
  desk.open("Leaf", "Add leaf");
  desk.open("Leaf", "laid or scattered");
  desk.design.chooseOption(desk.option("scattered"));
  const auto shown = [&] {
    return cell(*desk.design.fields(), rowOf(*desk.design.fields(), QStringLiteral("coverage")), RowsModel::Value);
  };
  CHECK(shown() == QLatin1String("20 %"));
  desk.open("Leaf", "coverage");
  CHECK(desk.design.unit() == QLatin1String("%"));
  for (const auto& [keyed, share] : {std::pair{7, 0.07}, std::pair{35, 0.35}}) {
    desk.open("Leaf", "coverage");
    for (const QChar digit : QString::number(keyed)) desk.design.digit(digit.digitValue());
    REQUIRE(desk.design.keep());
    const Value document = documentOf(desk);
    CHECK(core::base::at(document, "/leaf/0/coverage")->asNumber() == share);
    CHECK(shown() == QStringLiteral("%1 %").arg(keyed));
  }
  // More than all of it cannot be covered; it is told at its field.
  desk.open("Leaf", "coverage");
  for (const int digit : {1, 2, 0}) desk.design.digit(digit);
  desk.design.keep();
  CHECK_FALSE(desk.design.complete());
}

TEST_CASE("a design no technique works is not offered to the bench as finished, and says what to settle") {
  DesignDesk desk;
  Value document = documentOf(desk);
  Value leaf = Value::object();
  leaf.set("id", Value::text("one")).set("region", Value::text("face")).set("method", Value::text("scattered"));
  leaf.set("coverage", Value::number(0.2)).set("size", Value::text("oil"));
  document.set("leaf", Value::array().append(leaf));
  const std::string begun = desk.bench.begin(document);
  REQUIRE(desk.design.open(begun));
  CHECK_FALSE(desk.design.complete());
  CHECK(desk.design.holds());
  CHECK(desk.design.drawn());
  CHECK(desk.design.state() == QLatin1String("one thing to settle"));
  CHECK(desk.design.comesTo() ==
        QLatin1String("No technique scatters leaf on oil size; choose methyl cellulose or starch."));
  CHECK_FALSE(desk.design.toBench());
  CHECK_FALSE(desk.design.refusal().contains(QLatin1String("finished")));
}

TEST_CASE("a day is taken as it is written, said back, and never greys the drawing") {
  DesignDesk desk;
  const QString before = desk.design.comesTo();
  REQUIRE(desk.write("The artwork", "due", "12 December 2026"));
  CHECK(desk.at("/due") == "2026-12-12");
  desk.open("The artwork", "due");
  CHECK(desk.design.fieldNote() == QLatin1String("Saturday 12 December 2026"));
  // What does not read is refused at once and changes nothing.
  CHECK_FALSE(desk.write("The artwork", "due", "when the tide turns"));
  CHECK(desk.design.refusal().contains(QLatin1String("does not read as a day")));
  CHECK(desk.at("/due") == "2026-12-12");
  CHECK(desk.design.complete());
  // Nor does one that is in the document already take drawing and figures away.
  Value document = documentOf(desk);
  document.set("due", Value::text("12 December"));
  const std::string begun = desk.bench.begin(document);
  REQUIRE(desk.design.open(begun));
  CHECK_FALSE(desk.design.complete());
  CHECK(desk.design.holds());
  CHECK(desk.design.drawn());
  CHECK(desk.design.comesTo() == before);
  CHECK(desk.design.state() == QLatin1String("one thing to settle"));
}

TEST_CASE("what a piece comes to is reckoned for its own room, and says where nothing can be") {
  DesignDesk desk;
  const QString plain = desk.design.comesTo();
  desk.open("Leaf", "Add leaf");
  const auto in = [&](const char* temperature, const char* humidity) {
    Value document = documentOf(desk);
    Value room = Value::object();
    room.set("temperature", Value::text(temperature)).set("humidity", Value::text(humidity));
    document.set("room", room);
    const std::string begun = desk.bench.begin(document);
    REQUIRE(desk.design.open(begun));
    return desk.design.comesTo();
  };
  const QString warm = in("23 C", "50 %");
  const QString cold = in("10 C", "80 %");
  const QString hot = in("40 C", "50 %");
  CHECK(warm.contains(QString::fromUtf8("at 23 °C, 50 %")));
  CHECK(cold.contains(QString::fromUtf8("at 10 °C, 80 %")));
  CHECK(warm.section(QString::fromUtf8(" · at"), 0, 0) != cold.section(QString::fromUtf8(" · at"), 0, 0));
  CHECK(hot.contains(QString::fromUtf8("40 °C is too warm to predict")));
  CHECK_FALSE(plain.contains(QString::fromUtf8("°C")));
}

TEST_CASE("an outer size off the whole is offered whole, says what changes, and is taken back as one change") {
  DesignDesk desk;
  desk.open("Borders", "size comes to");
  CHECK(desk.design.fieldValue() == QString::fromUtf8("444.0 × 397.3 mm"));
  REQUIRE(desk.design.options()->rowCount() == 2);
  const QString name = cell(*desk.design.options(), 0, RowsModel::Title);
  CHECK(name == QLatin1String("Height 397.0 mm instead of 397.3 mm"));
  CHECK(cell(*desk.design.options(), 0, RowsModel::Note).startsWith(QLatin1String("Top 69.9 mm instead of 70.0 mm, ")));
  CHECK(desk.at("/mount/borders/sides") == "70 mm");
  desk.design.chooseOption(0);
  CHECK(desk.at("/mount/borders/outer/height") == "397 mm");
  CHECK(desk.at("/mount/borders/outer/width") == "444 mm");
  CHECK(desk.at("/mount/borders/weighting") == "4:3");
  CHECK(desk.at("/mount/borders/sides").empty());
  CHECK(desk.design.complete());
  // A whole size asks nothing more.
  CHECK(rowOf(*desk.design.fields(), QStringLiteral("size comes to")) < 0);
  desk.design.undo();
  CHECK(desk.at("/mount/borders/sides") == "70 mm");
  CHECK(desk.at("/mount/borders/outer/height").empty());
}

TEST_CASE("from the frame at hand the mount follows its opening, and is shown before it is entered") {
  DesignDesk desk;
  desk.open("Frame", "rebate width");
  for (const int digit : {4, 5, 0}) desk.design.digit(digit);
  const QString said = desk.design.fieldNote();
  INFO(said.toStdString());
  CHECK(said == QLatin1String("Mount: width 447.0 mm instead of 444.0 mm; borders: sides 71.5 mm instead of 70.0 mm"));
  CHECK(desk.at("/mount/borders/sides") == "70 mm");
  REQUIRE(desk.design.keep());
  CHECK(desk.at("/mount/borders/outer/width") == "447 mm");
  desk.enter("Frame", "rebate height", {4, 0, 3});
  CHECK(desk.at("/mount/borders/outer/height") == "400 mm");
  CHECK(desk.at("/mount/borders/weighting") == "4:3");
  CHECK(desk.design.complete());
  CHECK(cell(*desk.design.fields(), 0, RowsModel::Value) == QLatin1String("450.0 mm"));
  // An opening that leaves nothing is refused, one that leaves too little is told and can be put right there.
  desk.open("Frame", "rebate width");
  desk.design.digit(3);
  CHECK_FALSE(desk.design.keep());
  CHECK(desk.design.refusal().contains(QLatin1String("nothing is left for the mount")));
  desk.enter("Frame", "rebate width", {2, 0, 0});
  CHECK_FALSE(desk.design.complete());
  desk.enter("Frame", "rebate width", {4, 5, 3});
  CHECK(desk.at("/mount/borders/outer/width") == "450 mm");
  CHECK(desk.design.complete());
}

TEST_CASE("a decorated face on the glazing is told at the spacer, until that is decided") {
  DesignDesk desk;
  const auto look = [&] {
    return cell(*desk.design.sections(), rowOf(*desk.design.sections(), QStringLiteral("Frame")), RowsModel::Problem);
  };
  CHECK(look().isEmpty());
  desk.open("Lines", "Add a line");
  CHECK_FALSE(look().isEmpty());
  desk.open("Frame", "spacer");
  CHECK(desk.design.fieldNote() == QLatin1String("The decorated face touches the glazing; a spacer holds it off"));
  CHECK(desk.design.complete());
  desk.enter("Frame", "spacer", {0});
  CHECK(look().isEmpty());
  desk.enter("Frame", "spacer", {3});
  desk.open("Frame", "spacer");
  CHECK(desk.design.fieldNote().isEmpty());
}

TEST_CASE("what a spacer and a float come with is asked, and told where it would show") {
  DesignDesk desk;
  desk.enter("Frame", "spacer", {5});
  desk.enter("Frame", "width of the spacer", {8});
  desk.open("Frame", "width of the spacer");
  CHECK(desk.design.fieldNote().startsWith(QLatin1String("The spacer is 8.0 mm wide and the lip hides 6.0 mm")));
  CHECK(desk.design.complete());
  CHECK_FALSE(cell(*desk.design.sections(), rowOf(*desk.design.sections(), QStringLiteral("Frame")), RowsModel::Problem)
                  .isEmpty());
  CHECK(rowOf(*desk.design.fields(), QStringLiteral("support")) < 0);
  desk.open("Window", "edge of the artwork");
  desk.design.chooseOption(desk.option("shows, with air round it"));
  desk.open("Frame", "support under the float");
  CHECK(desk.design.fieldNote().isEmpty());
  desk.enter("Frame", "spacer", {1});
  desk.open("Frame", "spacer");
  CHECK(desk.design.fieldNote().contains(QLatin1String("the glazing is")));
  CHECK(desk.design.fieldNote().contains(QLatin1String("3.0 mm or more is wanted for")));
}

TEST_CASE("metal that is left bare is told at its field, and one that is not known is none") {
  DesignDesk desk;
  desk.open("Leaf", "Add leaf");
  desk.open("Leaf", "metal");
  CHECK(desk.design.fieldValue() == QLatin1String("not known yet"));
  CHECK(desk.design.fieldNote().isEmpty());
  desk.design.chooseOption(desk.option("copper"));
  CHECK(desk.at("/leaf/0/metal") == "copper");
  desk.open("Techniques", "leaf seal");
  desk.design.chooseOption(desk.option("Leave gold leaf bare"));
  desk.open("Leaf", "metal");
  CHECK(desk.design.fieldNote().contains(QLatin1String("is copper. Any other metal tarnishes: choose a seal.")));
  desk.design.chooseOption(desk.option("not known yet"));
  CHECK(desk.at("/leaf/0/metal").empty());
  CHECK(desk.design.fieldNote().isEmpty());
}

TEST_CASE("a room that is damp or cold is told with what the piece comes to, and none where none is known") {
  DesignDesk desk;
  CHECK_FALSE(desk.design.comesTo().contains(QLatin1String("humidity")));
  const auto enter = [&](double celsius, double percent) {
    core::intents::EnterRoom room;
    room.room = {core::units::Temperature::celsius(celsius), core::units::Humidity::percent(percent)};
    REQUIRE(desk.bench.work.submit(core::intents::OfShop{room}).id.empty());
  };
  enter(8, 72);
  desk.enter("The artwork", "width", {3, 2, 0});
  INFO(desk.design.comesTo().toStdString());
  CHECK(desk.design.comesTo().contains(QLatin1String("\nThe room's humidity is 72 %, and at most 60 % is wanted")));
  enter(19, 50);
  desk.enter("The artwork", "width", {3, 3, 0});
  CHECK_FALSE(desk.design.comesTo().contains(QLatin1String("humidity")));
}

TEST_CASE("corners that miss are marked at their section and told with their repeat") {
  DesignDesk desk;
  desk.open("Bands", "Add a band");
  const auto look = [&] {
    return cell(*desk.design.sections(), rowOf(*desk.design.sections(), QStringLiteral("Bands")), RowsModel::Problem);
  };
  CHECK(look().isEmpty());
  desk.enter("Bands", "repeat of the pattern", {2, 4});
  CHECK_FALSE(look().isEmpty());
  desk.open("Bands", "corners");
  CHECK(desk.design.fieldValue() == QLatin1String("miss by 11.0 mm of 24.0 mm"));
  CHECK(desk.design.complete());
  desk.design.chooseOption(0);
  CHECK(look().isEmpty());
}

TEST_CASE("a fresh design whose work is measured in inches has the round measures of inches, until one is changed") {
  DesignDesk desk;
  const auto enterInches = [&] {
    desk.open("The artwork", "width");
    desk.design.turnUnits();
    for (const int digit : {1, 2}) desk.design.digit(digit);
    REQUIRE(desk.design.keep());
    desk.design.turnUnits();
  };
  REQUIRE(desk.design.beginFresh());
  CHECK(desk.at("/mount/borders/sides") == "70 mm");
  enterInches();
  CHECK(desk.at("/artwork/width") == "12 in");
  CHECK(desk.at("/mount/borders/sides") == "2 3/4 in");
  CHECK(desk.at("/mount/window/overlap") == "1/8 in");
  CHECK(desk.at("/mount/rebate/allowanceTotal") == "1/8 in");
  CHECK(desk.at("/package/glazing") == "3/32 in");
  // It is one change.
  desk.design.undo();
  CHECK(desk.at("/artwork/width").empty());
  CHECK(desk.at("/mount/borders/sides") == "70 mm");
  CHECK(desk.at("/package/glazing").empty());
  // What the maker entered is the maker's.
  REQUIRE(desk.design.beginFresh());
  desk.enter("Borders", "sides", {6, 5});
  enterInches();
  CHECK(desk.at("/mount/borders/sides") == "65 mm");
  CHECK(desk.at("/mount/window/overlap") == "3 mm");
}

TEST_CASE("in an inch job the whole sizes are eighths, each with its borders") {
  DesignDesk desk;
  REQUIRE(desk.design.beginFresh());
  desk.design.turnUnits();
  desk.enter("The artwork", "width", {1, 2});
  desk.enter("The artwork", "height", {9});
  desk.open("Borders", "size comes to");
  REQUIRE(desk.design.options()->rowCount() == 2);
  CHECK(cell(*desk.design.options(), 0, RowsModel::Title) ==
        QString::fromUtf8("Height 15 1/8 in instead of \u2248 15 5/32 in"));
  CHECK(cell(*desk.design.options(), 1, RowsModel::Title) ==
        QString::fromUtf8("Height 15 1/4 in instead of \u2248 15 5/32 in"));
  desk.design.chooseOption(0);
  CHECK(desk.at("/mount/borders/outer/width") == "17 1/4 in");
  CHECK(desk.at("/mount/borders/outer/height") == "15 1/8 in");
}

TEST_CASE("the schedule stands in the order a maker decides, each row with its figures or what it lacks") {
  DesignDesk desk;
  QStringList names;
  for (int row = 0; row < desk.design.sections()->count(); ++row) {
    names << cell(*desk.design.sections(), row, RowsModel::Title);
  }
  CHECK(names.join(QLatin1Char(' ')) ==
        QLatin1String("The artwork Boards Window Borders Bevels Bands Lines Wash Leaf Frame Spandrel Techniques"));
  const auto value = [&](const char* section) {
    return cell(*desk.design.sections(), rowOf(*desk.design.sections(), QString::fromUtf8(section)), RowsModel::Value);
  };
  CHECK(value("The artwork") == QString::fromUtf8("310 × 240"));
  CHECK(value("Boards") == QString::fromUtf8("1 × 1.5"));
  CHECK(value("Borders") == QLatin1String("70.0 +23.3"));
  CHECK(value("Bevels") == QLatin1String("core"));
  CHECK(value("Bands") == QLatin1String("none"));
  desk.open("Bands", "Add a band");
  desk.open("Bands", "One more band outside");
  CHECK(value("Bands") == QLatin1String("12 + 12"));
  desk.open("Lines", "Add a line");
  CHECK(value("Lines") == QLatin1String("1 copper"));
  REQUIRE(desk.design.beginFresh());
  CHECK(value("The artwork") == QLatin1String("3 to enter"));
  CHECK(desk.design.benchReason() == QLatin1String("Still to enter: width, height, title."));
}

TEST_CASE("what is wrong is told with its place, and one press mends it") {
  DesignDesk desk;
  CHECK(desk.design.conflictPlace().isEmpty());
  CHECK(desk.design.benchReason().isEmpty());
  desk.open("Bands", "Add a band");
  desk.enter("Bands", "ground up to it", {9, 0});
  desk.design.leaveField();
  CHECK_FALSE(desk.design.complete());
  CHECK(desk.design.conflictPlace() == QLatin1String("Bands"));
  CHECK_FALSE(desk.design.conflict().isEmpty());
  CHECK_FALSE(desk.design.conflictIsNotice());
  CHECK(desk.design.conflictIsHere());
  const QString wrong = desk.design.conflict();
  CHECK(desk.design.benchReason() == QLatin1String("One thing to settle: Bands"));
  // It is sought a moment after the change.
  CHECK(desk.design.mendLabel().isEmpty());
  QEventLoop loop;
  QTimer::singleShot(600, &loop, &QEventLoop::quit);
  loop.exec();
  INFO(desk.design.mendLabel().toStdString());
  CHECK(desk.design.mendLabel().startsWith(QLatin1String("Make the ground up to it ")));
  // From another section it is told as well, and can be gone to.
  desk.design.chooseSection(0);
  CHECK(desk.design.conflictPlace() == QLatin1String("Bands"));
  CHECK_FALSE(desk.design.conflictIsHere());
  desk.design.goToConflict();
  CHECK(desk.design.sectionName() == QLatin1String("Bands"));
  desk.design.mend();
  CHECK(desk.design.complete());
  CHECK(desk.design.conflict() != wrong);
  // It is one change.
  desk.design.undo();
  CHECK(desk.at("/bands/0/offset") == "90 mm");
}

TEST_CASE("all measures of the piece are one list, each with its unit, from where, and whether it was entered") {
  DesignDesk desk;
  auto& measures = *desk.design.measures();
  REQUIRE(measures.count() > 20);
  bool entered = false;
  bool computed = false;
  for (int row = 0; row < measures.count(); ++row) {
    const QString note = cell(measures, row, RowsModel::Note);
    INFO(cell(measures, row, RowsModel::Title).toStdString() << ": " << note.toStdString());
    const QString value = cell(measures, row, RowsModel::Value);
    CHECK((value.contains(QLatin1Char(' ')) || value.endsWith(QString::fromUtf8("°"))));
    CHECK(note.contains(QString::fromUtf8(" · ")));
    entered = entered || note.endsWith(QLatin1String("entered"));
    computed = computed || note.endsWith(QLatin1String("computed"));
  }
  CHECK(entered);
  CHECK(computed);
  CHECK(cell(measures, 0, RowsModel::Of) == QLatin1String("The whole piece"));
  CHECK(rowOf(measures, QStringLiteral("sight width")) > 0);
}

TEST_CASE("beside the drawing stand its dimensions, with the field in hand among them") {
  DesignDesk desk;
  using app::viewmodels::ChainsModel;
  auto& chains = *desk.design.chains();
  REQUIRE(chains.rowCount() == 4);
  const auto held = [&] {
    QStringList all;
    for (int row = 0; row < chains.rowCount(); ++row) {
      const QVariantList shown = chains.data(chains.index(row), ChainsModel::Shown).toList();
      const QVariantList inHand = chains.data(chains.index(row), ChainsModel::Held).toList();
      for (int i = 0; i < shown.size(); ++i) {
        if (inHand[i].toBool()) all << shown[i].toString();
      }
    }
    return all.join(QLatin1Char(' '));
  };
  CHECK(held().isEmpty());
  desk.open("Borders", "sides");
  CHECK(held() == QLatin1String("70.0 70.0"));
  desk.open("The artwork", "height");
  CHECK(held() == QLatin1String("240.0"));
  desk.design.look(DesignViewModel::View::Section);
  desk.open("Boards", "thickness");
  CHECK(held() == QLatin1String("1.5"));
}
