#include <cmath>
#include <map>

#include "tests/app/commands/ran.h"

using tests::Commands;

namespace {

struct Expected {
  const char* id;
  double value;
  const char* unit;
};

// Worked by hand from the file: every figure in the order of the table of figures.
const std::vector<Expected>& expectedFigures() {
  const double r2 = std::sqrt(2.0);
  static const std::vector<Expected> kExpected = {
      {"visible.width", 310 - 2 * 3, "mm"},
      {"visible.height", 240 - 2 * 3, "mm"},
      {"outer.width", 316 + 2 * 70, "mm"},
      {"outer.height", 246 + 70 + 280 / 3.0, "mm"},
      {"board.top.thickness", 1.5, "mm"},
      {"board.top.sight.width", 304 + 2 * 6, "mm"},
      {"board.top.sight.height", 234 + 2 * 6, "mm"},
      {"board.top.face.width", 319, "mm"},
      {"board.top.face.height", 249, "mm"},
      {"board.top.sight.perimeter", 2 * (316 + 246), "mm"},
      {"board.top.sight.area", 316 * 246, "mm2"},
      {"board.top.face.perimeter", 2 * (319 + 249), "mm"},
      {"board.top.bevel.plan", 1.5, "mm"},
      {"board.top.bevel.slope", 1.5 * r2, "mm"},
      {"board.top.bevel.area", 1130 * 1.5 * r2, "mm2"},
      {"board.top.border.top", 70, "mm"},
      {"board.top.border.bottom", 280 / 3.0, "mm"},
      {"board.top.border.left", 70, "mm"},
      {"board.top.border.right", 70, "mm"},
      {"board.top.back.left", 70, "mm"},
      {"board.top.back.right", 70, "mm"},
      {"board.top.mark.left", 70, "mm"},
      {"board.top.mark.right", 70 + 316, "mm"},
      {"board.top.mark.top", 70, "mm"},
      {"board.top.mark.bottom", 70 + 246, "mm"},
      {"board.under.thickness", 2, "mm"},
      {"board.under.sight.width", 304, "mm"},
      {"board.under.sight.height", 234, "mm"},
      {"board.under.face.width", 308, "mm"},
      {"board.under.face.height", 238, "mm"},
      {"board.under.sight.perimeter", 1076, "mm"},
      {"board.under.sight.area", 304 * 234, "mm2"},
      {"board.under.face.perimeter", 1092, "mm"},
      {"board.under.bevel.plan", 2, "mm"},
      {"board.under.bevel.slope", 2 * r2, "mm"},
      {"board.under.bevel.area", 1084 * 2 * r2, "mm2"},
      {"board.under.reveal", 6, "mm"},
      {"board.under.reveal.flat", 6 - 2, "mm"},
      {"board.under.border.top", 76, "mm"},
      {"board.under.border.bottom", 280 / 3.0 + 6, "mm"},
      {"board.under.border.left", 76, "mm"},
      {"board.under.border.right", 76, "mm"},
      {"board.under.back.left", 76, "mm"},
      {"board.under.back.right", 76, "mm"},
      {"board.under.mark.left", 76, "mm"},
      {"board.under.mark.right", 76 + 304, "mm"},
      {"board.under.mark.top", 76, "mm"},
      {"board.under.mark.bottom", 76 + 234, "mm"},
      {"border.seen.top", 68.5, "mm"},
      {"border.seen.bottom", 280 / 3.0 - 1.5, "mm"},
      {"border.seen.left", 68.5, "mm"},
      {"border.seen.right", 68.5, "mm"},
      {"border.framed.top", 68.5 - 6 + 3, "mm"},
      {"border.framed.bottom", 280 / 3.0 - 1.5 - 6, "mm"},
      {"border.framed.left", 68.5 - 6 + 1.5, "mm"},
      {"border.framed.right", 68.5 - 6 + 1.5, "mm"},
      {"art.left", 76 - 3 - 10, "mm"},
      {"art.top", 76 - 3 - 8, "mm"},
      {"band.inner.inner.width", 319 + 20, "mm"},
      {"band.inner.inner.height", 249 + 20, "mm"},
      {"band.inner.outer.width", 339 + 28, "mm"},
      {"band.inner.outer.height", 269 + 28, "mm"},
      {"band.inner.strip.horizontal", 367 + 12, "mm"},
      {"band.inner.strip.vertical", 297 + 12, "mm"},
      {"band.inner.strip.width", 14, "mm"},
      {"band.inner.mitre", 14 * r2, "mm"},
      {"band.inner.dryEnd", 20, "mm"},
      {"band.inner.glueFrom", 6 + 20, "mm"},
      {"band.inner.area", 2 * 14 * (339 + 269 + 28), "mm2"},
      {"band.inner.repeats.horizontal", 379 / 24.0, "count"},
      {"band.inner.repeats.vertical", 309 / 24.0, "count"},
      {"band.inner.firstMotif.horizontal", 189.5 - 7 * 24, "mm"},
      {"band.inner.firstMotif.vertical", 154.5 - 6 * 24, "mm"},
      {"band.inner.corner.phase", 35 - 24, "mm"},
      {"line.outside.horizontal", 368, "mm"},
      {"line.outside.vertical", 298, "mm"},
      {"line.outside.total", 1332, "mm"},
      {"line.outside.offset", 0.5, "mm"},
      {"line.outside.cornerMark", 0.5 * r2, "mm"},
      {"line.outside.fromFace.sides", 10 + 14 + 0.5, "mm"},
      {"line.outside.fromFace.topBottom", 24.5, "mm"},
      {"line.outside.fromFaceCorner", 24.5 * r2, "mm"},
      {"line.inside.horizontal", 338, "mm"},
      {"line.inside.vertical", 268, "mm"},
      {"line.inside.total", 1212, "mm"},
      {"line.inside.offset", 0.5, "mm"},
      {"line.inside.cornerMark", 0.5 * r2, "mm"},
      {"line.inside.fromFace.sides", 10 - 0.5, "mm"},
      {"line.inside.fromFace.topBottom", 9.5, "mm"},
      {"line.inside.fromFaceCorner", 9.5 * r2, "mm"},
      // The mount less 6 mm all round, less everything within the outer line's outer edge.
      {"leaf.field.area", (456 - 12) * (409 + 1 / 3.0 - 12) - 369 * 299, "mm2"},
      {"leaf.field.sheets", 4, "count"},  // 66 085 x 0.15 / (0.4 x 80 x 80) = 3.87, up
      {"leaf.field.size", 66'085 * 1e-6 * 100 * 1.5, "ml"},
      {"rebate.width", 459, "mm"},
      {"rebate.height", 409 + 1 / 3.0 + 3, "mm"},
      {"rebate.depth", 14.2, "mm"},
      {"package.depth", 2 + 1.5 + 2 + 0.2 + 0.3 + 0.2 + 1.5 + 3 + 0.5, "mm"},
  };
  return kExpected;
}

std::map<std::string, std::string> displays(const Commands& commands, const QString& job, const QStringList& more) {
  const auto ran = commands.run(QStringList{QStringLiteral("figures"), job, QStringLiteral("--json")} + more);
  REQUIRE(ran.exit == 0);
  std::map<std::string, std::string> shown;
  const auto root = tests::parsed(ran.out);
  for (const auto& figure : root.find("figures")->items()) {
    shown[figure.find("id")->asText()] = figure.find("display")->asText();
  }
  return shown;
}

}  // namespace

TEST_CASE("every figure of the chart has the value worked by hand, in the order of the table") {
  const Commands commands;
  const auto ran =
      commands.run({QStringLiteral("figures"), commands.file(QStringLiteral("chart.job.json"), tests::workedExample()),
                    QStringLiteral("--json")});
  REQUIRE(ran.exit == 0);
  CHECK(ran.err.empty());
  CHECK(ran.out.back() == '\n');
  const auto root = tests::parsed(ran.out);
  CHECK(root.find("format")->asText() == "mountwright-figures/1");
  const auto& figures = root.find("figures")->items();
  REQUIRE(figures.size() == expectedFigures().size());
  for (std::size_t i = 0; i < figures.size(); ++i) {
    const Expected& expected = expectedFigures()[i];
    INFO(expected.id);
    CHECK(figures[i].find("id")->asText() == expected.id);
    CHECK(figures[i].find("value")->asNumber() == Approx(expected.value).epsilon(1e-12));
    CHECK(figures[i].find("unit")->asText() == expected.unit);
    for (const char* key : {"label", "display", "datum"}) CHECK_FALSE(figures[i].find(key)->asText().empty());
    CHECK(figures[i].members().size() == 6);
  }
}

TEST_CASE("without the keep-off the leaf reaches the mount's edge") {
  const auto design = tests::designOf(tests::changed(tests::workedExample(), R"(, "keepOff": { "edge": "6 mm" })", ""));
  CHECK(design.figures.find("leaf.field.area")->value == Approx(456 * (409 + 1 / 3.0) - 369 * 299));
}

TEST_CASE("an inch job is shown in fractions, and in the units asked for") {
  const Commands commands;
  const QString heron = commands.file(QStringLiteral("heron.job.json"), tests::inchExample());
  const auto inches = displays(commands, heron, {});
  CHECK(inches.at("visible.width") == "10 1/8 in");
  CHECK(inches.at("board.face.mark.right") == "12 3/8 in");
  CHECK(inches.at("outer.width") == "15 1/8 in");
  CHECK(inches.at("board.face.bevel.plan") == "\u2248 1/32 in");
  const auto millimetres = displays(commands, heron, {QStringLiteral("--units"), QStringLiteral("mm")});
  CHECK(millimetres.at("visible.width") == "257.1 mm");
  CHECK(displays(commands, heron, {QStringLiteral("--units=in")}) == inches);
}

TEST_CASE("figures for people stand in columns and name their datum") {
  const Commands commands;
  const auto ran =
      commands.run({QStringLiteral("figures"), commands.file(QStringLiteral("c.job.json"), tests::workedExample())});
  CHECK(ran.exit == 0);
  CHECK(tests::contains(ran.out, "top board, first side line"));
  const auto lines = core::base::split(ran.out, '\n');
  CHECK(lines.size() == expectedFigures().size() + 1);
  const std::size_t column = lines[0].find("edge to edge");
  CHECK(lines[2].find("edge to edge") == column);
}

TEST_CASE("a job with problems gives no figures and says the problems on the other stream") {
  const Commands commands;
  const auto ran = commands.run(
      {QStringLiteral("figures"),
       commands.file(QStringLiteral("c.job.json"),
                     tests::changed(tests::workedExample(), "\"reveal\": \"6 mm\"", "\"reveal\": \"2 mm\"")),
       QStringLiteral("--json")});
  CHECK(ran.exit == 1);
  CHECK(ran.out.empty());
  CHECK(tests::contains(ran.err, ":/mount/boards/1/reveal: "));
}
