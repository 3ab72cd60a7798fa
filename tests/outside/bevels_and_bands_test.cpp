// Worked by hand from the definitions of sine, tangent and the square's diagonal; each figure beside its sum.
#include <cmath>

#include "tests/outside/job_with.h"

using tests::figureOf;
using tests::Plain;
using tests::plainJob;

TEST_CASE("a bevel's width from above and on the slope are as the triangle has them") {
  struct Row {
    const char* thickness;
    const char* angle;
    double plan, slope;
  };
  // Half an equilateral triangle at 30 and 60 degrees (sides 1, 2, root 3), half a square at 45 (1, 1, root 2).
  const Row rows[] = {{"1.5 mm", "45", 1.5, 2.121320},     {"2 mm", "45", 2.0, 2.828427},
                      {"1.5 mm", "30", 2.598076, 3.0},     {"2.2 mm", "30", 3.810512, 4.4},
                      {"3 mm", "60", 1.732051, 3.464102},  {"1.4 mm", "90", 0.0, 1.4},
                      {"3/32 in", "45", 2.38125, 3.367596}};
  for (const Row& row : rows) {
    INFO(row.thickness << " at " << row.angle);
    Plain plain;
    plain.thickness = row.thickness;
    plain.angle = row.angle;
    CHECK(figureOf(plainJob(plain), "board.only.bevel.plan") == Approx(row.plan).margin(5e-7));
    CHECK(figureOf(plainJob(plain), "board.only.bevel.slope") == Approx(row.slope).margin(5e-7));
    CHECK(figureOf(plainJob(plain), "board.only.face.width") == Approx(300 + 2 * row.plan).margin(1e-6));
  }
}

TEST_CASE("a band 20 wide round 300 by 260 covers 24 000 square millimetres") {
  // An opening of 280 x 240 with a square edge, the band 10 from it. Two strips of 340 x 20 and two of 260 x 20:
  // 13 600 + 10 400.
  Plain plain;
  plain.width = "286 mm";
  plain.height = "246 mm";
  plain.angle = "90";
  plain.more = R"(, "bands": [{"id": "round", "paper": "marbled", "offset": "10 mm", "width": "20 mm"}])";
  const std::string job = plainJob(plain);
  CHECK(figureOf(job, "band.round.inner.width") == 300);
  CHECK(figureOf(job, "band.round.inner.height") == 260);
  CHECK(figureOf(job, "band.round.area") == 24'000);
  // The mitre of a strip 20 wide is the diagonal of a square of 20.
  CHECK(figureOf(job, "band.round.mitre") == Approx(28.284271).margin(5e-7));
}

TEST_CASE("a mark half an inch out lies 17.960512 along the corner's diagonal") {
  // 12.7 x 1.414213562 = 17.960512. Gap 12.2 and half of 1: the centre is 12.7 from the face edge.
  Plain plain;
  plain.more =
      R"(, "lines": [{"id": "rule", "along": "window", "gap": "12.2 mm", "width": "1 mm", "colour": "black"}])";
  CHECK(figureOf(plainJob(plain), "line.rule.offset") == Approx(12.7));
  CHECK(figureOf(plainJob(plain), "line.rule.cornerMark") == Approx(17.960512).margin(5e-7));
  CHECK(figureOf(plainJob(plain), "line.rule.fromFaceCorner") == Approx(17.960512).margin(5e-7));
}

TEST_CASE("narrow bands keep dry ends of about 20 mm, and every dry end passes the mitre") {
  // Common practice, no source.
  for (int width = 4; width <= 40; ++width) {
    INFO(width);
    Plain plain;
    plain.more = R"(, "bands": [{"id": "round", "paper": "marbled", "offset": "10 mm", "trim": "5 mm", "width": ")" +
                 std::to_string(width) + R"( mm"}])";
    const double dryEnd = figureOf(plainJob(plain), "band.round.dryEnd");
    if (width <= 14) CHECK(dryEnd == 20);
    CHECK(dryEnd > width);
    CHECK(figureOf(plainJob(plain), "band.round.glueFrom") == dryEnd + 5);
  }
}
