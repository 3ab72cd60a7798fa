// A piece from nothing to its first step, by touch on the real window: the first questions, three boards, an ogee
// window, two bands, laid leaf. Every press is counted.
#include <cmath>
#include <cstdio>

#include "core/design/design.h"
#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

namespace {

class Maker {
 public:
  explicit Maker(DrivenBench& bench) : m_bench(bench) {}

  int acts() const { return m_acts; }

  // A list that does not fit is turned until the key is there.
  void press(const std::string& legend) {
    for (int turns = 0; turns < 4 && !offered(legend) && offered("Down"); ++turns) touch("Down");
    touch(legend);
  }

  // What is keyed on the pad, then Enter.
  void enter(const char* digits) {
    for (const char* digit = digits; *digit != 0; ++digit) touch(std::string(1, *digit));
    touch("Enter");
  }

  void write(const char* text) {
    m_bench.type(text);
    ++m_acts;
    touch("Enter");
  }

  bool offered(const std::string& legend) {
    const Value state = m_bench.state();
    for (const Value& key : state.find("keys")->items()) {
      if (textOf(key, "legend") == legend) return true;
    }
    return false;
  }

 private:
  void touch(const std::string& legend) {
    m_bench.press(legend);
    ++m_acts;
  }

  DrivenBench& m_bench;
  int m_acts = 0;
};

std::string at(DrivenBench& bench, const std::string& pointer) {
  const Value document = bench.design();
  const Value* value = core::base::at(document, pointer);
  return value != nullptr && value->kind() == Value::Kind::Text ? value->asText() : "";
}

}  // namespace

TEST_CASE("a piece is designed from nothing by touch and started", "[touch]") {
  DrivenBench bench(QString{});
  Maker maker(bench);
  REQUIRE(textOf(bench.state(), "screen") == "welcome");
  bench.letGuardPass();
  for (const char* answer : {"Millimetres", "I can read it", "I hear it", "A piece of mine"}) maker.press(answer);
  REQUIRE(textOf(bench.state(), "screen") == "design");
  bench.letGuardPass();
  // From field to field of a section the pad goes on by itself.
  maker.press("width");
  maker.enter("310");
  maker.enter("240");
  CHECK(at(bench, "/artwork/width") == "310 mm");
  CHECK(at(bench, "/artwork/height") == "240 mm");
  // After the size the form asks for the title.
  maker.write("Heron at the weir");
  maker.press("Close");
  CHECK(at(bench, "/title") == "Heron at the weir");
  maker.press("Boards");
  maker.press("One more board beneath");
  maker.press("One more board beneath");
  CHECK(at(bench, "/mount/boards/2/id") == "inmost");
  maker.press("Window");
  maker.press("shape");
  maker.press("ogee");
  CHECK(at(bench, "/mount/window/head") == "ogee");
  maker.press("Bands");
  maker.press("Add a band");
  maker.press("One more band outside");
  CHECK(at(bench, "/bands/1/id") != "");
  maker.press("Leaf");
  maker.press("Add leaf");
  CHECK(at(bench, "/leaf/0/method") == "laid");
  INFO(textOf(bench.state(), "toll"));
  maker.press("To the bench");
  bench.letGuardPass();
  CHECK(textOf(bench.state(), "screen") == "bench");
  CHECK(textOf(bench.state(), "step") != "");
  std::printf("acts from nothing to the first step: %d\n", maker.acts());
  CHECK(maker.acts() <= 40);
}

TEST_CASE("a keyboard's digits are measures, and words stay with the field they were written for", "[touch]") {
  DrivenBench bench(QString{});
  Maker maker(bench);
  bench.letGuardPass();
  for (const char* answer : {"Millimetres", "I can read it", "I hear it", "A piece of mine"}) maker.press(answer);
  bench.letGuardPass();
  maker.press("width");
  bench.type("2405");
  bench.key("BackSpace");
  bench.key("Return");
  bench.type("320.5");
  // A key that is a pedal's as well is deaf for a while after a press.
  bench.letGuardPass();
  bench.key("Return");
  CHECK(at(bench, "/artwork/width") == "240 mm");
  CHECK(at(bench, "/artwork/height") == "320.5 mm");
  maker.write("Ferry at low water");
  maker.write("26-099");
  CHECK(at(bench, "/title") == "Ferry at low water");
  CHECK(at(bench, "/reference") == "26-099");
}

TEST_CASE("a border is drawn by hand, taken back and brought again", "[touch]") {
  DrivenBench bench(QString::fromLatin1(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json"));
  Maker maker(bench);
  bench.letGuardPass();
  maker.press("More");
  bench.letGuardPass();
  maker.press("Jobs");
  bench.letGuardPass();
  maker.press("Desk");
  bench.letGuardPass();
  maker.press("Pilot's chart of the outer bar");
  bench.letGuardPass();
  maker.press("For another picture");
  bench.letGuardPass();
  REQUIRE(textOf(bench.state(), "screen") == "design");
  // The design came along, the work did not.
  CHECK(at(bench, "/mount/borders/sides") == "70 mm");
  CHECK(at(bench, "/artwork/width") == "");
  maker.press("width");
  maker.enter("400");
  maker.enter("300");
  maker.write("The outer bar, again");
  maker.press("Close");
  // The mount's left edge, a way inwards: the sides become narrower by as much as the finger went.
  const Value place = bench.drawing();
  const auto of = [&](const char* key) { return place.find(key)->asNumber(); };
  const auto parsed = core::design::readDesign(core::base::writeJson(bench.design(), 2));
  REQUIRE(parsed.design.has_value());
  const double high = parsed.design->layout.outerHeight;
  const double perMm = of("perMm");
  const double x = of("left");
  const double y = of("top") + high / 2 * perMm;
  INFO(x << ", " << y << ", " << perMm << " px a mm");
  bench.drag(x, y, x + 10 * perMm, y);
  const std::string sides = at(bench, "/mount/borders/sides");
  INFO(sides);
  const auto length = core::units::parseLength(sides);
  REQUIRE(length.ok());
  CHECK(std::abs(length.value().length.inMillimetres() - 60) <= 1.5);
  maker.press("Undo");
  CHECK(at(bench, "/mount/borders/sides") == "70 mm");
  maker.press("Redo");
  CHECK(at(bench, "/mount/borders/sides") == sides);
}
