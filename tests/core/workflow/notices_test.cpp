// What the chosen techniques want of a piece and its room.
#include "core/workflow/notices.h"

#include <algorithm>

#include "core/base/text.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

using Lines = std::vector<std::string>;

// Notices of a job, a line each, without their reasons.
Lines noticesOf(const std::string& text, const craft::Catalogue& catalogue, std::optional<units::Room> room = {}) {
  const auto design = designOf(text);
  const auto workflow = composed(design, catalogue);
  Lines lines;
  for (const auto& notice : workflow::noticesOf(design, workflow, catalogue, {}, room ? room : design.job.room)) {
    CHECK(notice.severity == base::Severity::Notice);
    const std::string line = dump(notice);
    const std::size_t why = line.find(" why=");
    CHECK((why != std::string::npos || notice.message.id == "design.choice-idle"));
    const std::size_t techniques = line.find(" techniques=");
    lines.push_back(line.substr(0, why) + (techniques == std::string::npos ? "" : line.substr(techniques)));
  }
  return lines;
}

Lines noticesOf(const std::string& text, std::optional<units::Room> room = {}) {
  return noticesOf(text, shippedTechniques(), room);
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  INFO(from);
  REQUIRE(text.find(from) != std::string::npos);
  return base::replaceAll(std::move(text), from, to);
}

// The chart with its metal named, which says nothing of itself.
std::string chart() {
  return replaced(demoJobText(), R"("method": "scattered",)", R"("method": "scattered", "metal": "gold",)");
}

std::string with(const std::string& members) { return replaced(chart(), R"("package":)", members + R"(, "package":)"); }

constexpr const char* kSheet =
    R"(, "sheet": { "width": "330 mm", "height": "260 mm", "left": "10 mm", "top": "8 mm" })";

units::Room room(double celsius, double percent) {
  return {units::Temperature::celsius(celsius), units::Humidity::percent(percent)};
}

// How many steps a technique has in the workflow.
std::ptrdiff_t stepsOf(const workflow::Workflow& workflow, const std::string& id) {
  return std::count_if(workflow.steps.begin(), workflow.steps.end(),
                       [&](const auto& step) { return base::startsWith(step.id, id); });
}

}  // namespace

TEST_CASE("the demo jobs need no notice of their techniques, but of metal that is left bare and not named",
          "[notices]") {
  const auto demo = [](const std::string& job) {
    return noticesOf(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"));
  };
  CHECK(demo("heron") ==
        Lines{"/leaf/0/metal notice design.wants-named technique=Leave scattered metal bare name=spray "
              "property=metal instead=gold\npalladium\naluminium"});
  CHECK(demo("tide-table").empty());
  CHECK(demo("pilots-chart") ==
        Lines{"/leaf/0/metal notice design.wants-named technique=Leave scattered metal bare name=field "
              "property=metal instead=gold\npalladium\naluminium"});
  CHECK(noticesOf(chart()).empty());
}

TEST_CASE("corners and strips that the mount does not hide are told with what would do", "[notices]") {
  // The chart's sheet reaches 11 mm and more under the mount.
  for (const char* way : {"attach-corners", "attach-strips"}) {
    const std::string job = with(std::string(R"("techniques": {"attachment": ")") + way + "\"}");
    CHECK(noticesOf(job).empty());
    const Lines told = noticesOf(replaced(job, kSheet, ""));
    REQUIRE(told.size() == 1);
    CHECK(told[0] == (std::string(way) == "attach-corners"
                          ? "/mount/window/overlap notice design.wants-least.length measure=design.measure.cornerLap "
                            "is=6mm wanted=15mm techniques=Paper corners without paste"
                          : "/mount/window/overlap notice design.wants-least.length measure=design.measure.lap is=3mm "
                            "wanted=5mm techniques=Edge strips without paste"));
  }
  // What hinges hold is hidden by less.
  const std::string bare = replaced(chart(), kSheet, "");
  CHECK(noticesOf(bare).empty());
  CHECK(noticesOf(replaced(bare, R"("overlap": "3 mm")", R"("overlap": "1 mm")")).size() == 1);
}

TEST_CASE("a damp or a cold room is told where it is known, and each of them once", "[notices]") {
  const Lines damp = noticesOf(chart(), room(19, 61));
  CHECK(damp == Lines{"/room/humidity notice design.wants-most.humidity measure=design.measure.humidity is=61 "
                      "wanted=60 techniques=Glazed with glass"});
  CHECK(noticesOf(chart(), room(19, 60)).empty());
  const Lines cold = noticesOf(chart(), room(9.5, 50));
  REQUIRE(cold.size() == 1);
  CHECK(base::startsWith(cold[0],
                         "/room/temperature notice design.wants-least.temperature "
                         "measure=design.measure.temperature is=9.5 wanted=10 techniques="));
  CHECK(cold[0].find("\", \"") != std::string::npos);
  CHECK(noticesOf(chart(), room(10, 50)).empty());
  CHECK(noticesOf(chart(), room(8, 70)).size() == 2);
}

TEST_CASE("nothing is said of a room that is not known, nor of damp where nothing is closed", "[notices]") {
  const std::string roomless = replaced(chart(), R"(,
  "room": { "temperature": "19 C", "humidity": "58 %" })",
                                        "");
  CHECK(noticesOf(roomless).empty());
  CHECK(noticesOf(roomless, room(8, 70)).size() == 2);
  CHECK(noticesOf(with(R"("deliver": "attached")"), room(19, 70)).empty());
}

TEST_CASE("metal that tarnishes is told where it is left bare, and gold is not", "[notices]") {
  const auto flake = [](const char* metal) {
    return replaced(demoJobText(), R"("method": "scattered",)",
                    std::string(R"("method": "scattered", "metal": ")") + metal + "\",");
  };
  for (const char* metal : {"gold", "palladium", "aluminium"}) CHECK(noticesOf(flake(metal)).empty());
  for (const std::string metal : {"silver", "copper", "brass"}) {
    CHECK(noticesOf(flake(metal.c_str())) ==
          Lines{"/leaf/0/metal notice design.wants-such technique=Leave scattered metal bare name=field "
                "property=metal now=" +
                metal + " instead=gold\npalladium\naluminium"});
    CHECK(noticesOf(replaced(flake(metal.c_str()), R"("package":)",
                             R"("techniques": {"flake-seal": "flake-seal-shellac"}, "package":)"))
              .empty());
  }
  // Laid leaf is sealed unless the maker says otherwise.
  const std::string laid = replaced(fileText(PROJECT_ROOT "/recipes/jobs/tide-table.job.json"), R"("method": "laid",)",
                                    R"("method": "laid", "metal": "aluminium",)");
  CHECK(noticesOf(laid).empty());
  CHECK(noticesOf(replaced(laid, R"("package":)", R"("techniques": {"leaf-seal": "leaf-left-bare"}, "package":)"))
            .size() == 1);
}

TEST_CASE("which metal a field takes is asked only where the job does not say", "[notices]") {
  const auto unknown = composed(designOf(demoJobText()), shippedTechniques());
  CHECK(stepsOf(unknown, "flake-left-bare/decide") == 1);
  CHECK(stepsOf(unknown, "flake-left-bare/cover") == 1);
  const std::string gold =
      replaced(demoJobText(), R"("method": "scattered",)", R"("method": "scattered", "metal": "gold",)");
  const auto known = composed(designOf(gold), shippedTechniques());
  CHECK(stepsOf(known, "flake-left-bare/decide") == 0);
  CHECK(stepsOf(known, "flake-left-bare/cover") == 1);
  CHECK(known.steps.size() + 1 == unknown.steps.size());
}

TEST_CASE("techniques that do not go together are told at the role of the one that minds", "[notices]") {
  const std::string acrylic = with(R"("techniques": {"glazing": "close-acrylic"})");
  CHECK(noticesOf(acrylic) == Lines{"/techniques/flake-seal notice design.wants-without technique=Leave scattered "
                                    "metal bare other=Glazed with acrylic"});
  CHECK(noticesOf(replaced(acrylic, "\"close-acrylic\"", R"("close-acrylic", "flake-seal": "flake-seal-shellac")"))
            .empty());
}

TEST_CASE("boards that are joined before their bevels are coloured are told, and plain ones are not", "[notices]") {
  const std::string job = with(R"("techniques": {"joining": "join-registered"})");
  CHECK(noticesOf(job) == Lines{"/techniques/joining notice design.wants-without technique=" +
                                shippedTechniques().find("join-registered")->title +
                                " other=" + shippedTechniques().find("colour-bevel")->title});
  CHECK(noticesOf(replaced(job, R"(, "colour": "copper" } })", " } }")).empty());
}

TEST_CASE("parts of the package that a technique cannot do without are told", "[notices]") {
  const auto without = [&](const std::string& part) {
    std::string text = chart();
    const std::size_t at = text.find('"' + part + "\": \"", text.find("\"package\""));
    REQUIRE(at != std::string::npos);
    const std::size_t from = at + part.size() + 5;
    return text.replace(from, text.find('"', from) - from, "0 mm");
  };
  for (const std::string part : {"glazing", "backMount", "backing"}) {
    const Lines told = noticesOf(without(part));
    INFO(part);
    REQUIRE(told.size() == 1);
    CHECK(base::startsWith(told[0], "/package/" + part + " notice design.wants-least.length measure=design.measure." +
                                        part + " is=0mm wanted="));
  }
}

TEST_CASE("a float that would reach the glazing, or lies flat beside a support, is told", "[notices]") {
  const auto floating = [](const std::string& package, const std::string& more) {
    std::string text = replaced(chart(), kSheet, "");
    text = replaced(text, R"("overlap": "3 mm")", R"("margin": "8 mm")");
    text = replaced(text, R"("package": {)", more + R"("package": { )" + package + ", ");
    return noticesOf(text);
  };
  // Boards of 1.5 and 2 mm, a support of 2 mm and a sheet of 0.3 mm.
  CHECK(floating(R"("spacer": "3 mm")", "").empty());
  CHECK(floating(R"("spacer": "1 mm")", "") ==
        Lines{"/package/spacer notice design.wants-least.length measure=design.measure.air is=2.2mm wanted=3mm "
              "techniques=Float raised on a hidden support"});
  const std::string flat = R"("techniques": {"float-support": "float-flat"}, )";
  CHECK(floating(R"("spacer": "5 mm")", flat) ==
        Lines{"/package/support notice design.wants-most.length measure=design.measure.support is=2mm wanted=0mm "
              "techniques=Float flat on the back mount"});
  CHECK(floating(R"("spacer": "5 mm", "support": "0 mm")", flat).empty());
}

TEST_CASE("an artwork too thick for what holds it is told", "[notices]") {
  const std::string thick = replaced(chart(), R"("thickness": "0.3 mm")", R"("thickness": "2 mm")");
  CHECK(noticesOf(thick) == Lines{"/artwork/thickness notice design.wants-most.length measure=design.measure.artwork "
                                  "is=2mm wanted=1.5mm techniques=" +
                                  shippedTechniques().find("hinge-work")->title});
}

TEST_CASE("a choice that plays no part is told at its role", "[notices]") {
  CHECK(noticesOf(with(R"("deliver": "mount", "techniques": {"glazing": "close-acrylic"})")) ==
        Lines{"/techniques/glazing notice design.choice-idle technique=Glazed with acrylic"});
}

TEST_CASE("what a maker's own technique wants is told like the trade's", "[notices]") {
  craft::Catalogue catalogue = shippedTechniques();
  addTechnique(catalogue, oneStepTechnique("brush-down", "\"this.dusted\"",
                                           R"("when": {"each": "board"}, "wants": [
      {"where": {"place": ["only", "outermost"]}, "why": "Inner boards are dusted later.", "source": "common practice"},
      {"of": "play", "atMost": "2 mm", "why": "It rattles.", "source": "common practice"}])",
                                           ""));
  // 3 mm on 456 mm are 3.9 mm for each 600 mm.
  const Lines told = noticesOf(chart(), catalogue);
  REQUIRE(told.size() == 2);
  CHECK(told[0] ==
        "/mount/boards/1/place notice design.wants-such technique=Invented name=under property=place "
        "now=innermost instead=only\noutermost");
  CHECK(base::startsWith(told[1],
                         "/mount/rebate/allowanceTotal notice design.wants-most.length "
                         "measure=design.measure.play is=3.947"));
}
