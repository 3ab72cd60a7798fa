#include "tests/app/commands/ran.h"
#include "tests/app/commands/techniques.h"

using core::base::Value;
using tests::Commands;
using tests::contains;

namespace {

// Size that tacks at once and for three minutes; laying needs it, and something that takes its time meanwhile.
std::string tackTechnique(const std::string& minutesInTheWay) {
  return tests::techniqueText(
      "tack-and-lay", 10, R"({"always": true})",
      {{"size", "1", R"(, "makes": ["piece.sized"], "waits": [{"id": "tack", "kind": "tack", "title": "size tacks",
         "makes": "piece.tacky", "opens": {"early": "0 min", "likely": "0 min", "late": "0 min"},
         "closes": {"early": "3 min", "likely": "3 min", "late": "3 min"}, "model": "none",
         "test": "A knuckle clicks.", "source": "common practice",
         "ifMissed": {"do": "Size again thinly.", "ends": ["piece.sized"]}}])"},
       {"stir", minutesInTheWay, R"(, "uninterruptible": true, "needs": ["piece.sized"], "makes": ["piece.stirred"])"},
       {"lay", "2", R"(, "needs": ["piece.tacky", "piece.stirred"], "makes": ["piece.laid"])"}});
}

tests::Ran rehearsed(const Commands& commands, const std::string& minutesInTheWay) {
  commands.file(QStringLiteral("own/tack-and-lay.technique.json"), tackTechnique(minutesInTheWay));
  return commands.run({QStringLiteral("rehearse"), commands.file(QStringLiteral("c.job.json"), tests::workedExample()),
                       QStringLiteral("--json"), QStringLiteral("--recipes"), commands.path(QStringLiteral("own"))});
}

}  // namespace

TEST_CASE("ten minutes that cannot be left miss a window of three, and both steps are named") {
  const Commands commands;
  const auto ran = rehearsed(commands, "10");
  CHECK(ran.exit == 1);
  const Value root = tests::parsed(ran.out);
  CHECK(root.find("format")->asText() == "mountwright-rehearsal/1");
  // One minute of work and ten: what missed its window is not laid. Nothing asks for other hands.
  CHECK(root.find("hands")->asNumber() == 11);
  CHECK(root.find("changes")->find("hands")->asInteger() == 0);
  int missed = 0;
  for (const Value& event : root.find("events")->items()) {
    if (event.find("kind")->asText() != "missed") continue;
    ++missed;
    // One minute of sizing, then three.
    CHECK(event.find("at")->asNumber() == 4);
    CHECK(event.find("step")->asText() == "tack-and-lay/lay");
    CHECK(contains(event.find("text")->asText(), "tack-and-lay/stir"));
  }
  CHECK(missed == 1);
  CHECK(contains(ran.err, "tack-and-lay/lay"));
  CHECK(contains(ran.err, "tack-and-lay/stir"));
}

TEST_CASE("the same step at three minutes lets the window be caught") {
  const Commands commands;
  for (const char* minutes : {"2", "3"}) {
    INFO(minutes);
    const auto ran = rehearsed(commands, minutes);
    INFO(ran.err << ran.out);
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    CHECK_FALSE(contains(ran.out, "\"missed\""));
  }
}

TEST_CASE("the delivered techniques catch every window of the chart and of the heron") {
  const Commands commands;
  for (const std::string& text : {tests::workedExample(), tests::inchExample()}) {
    const auto ran = commands.run(
        {QStringLiteral("rehearse"), commands.file(QStringLiteral("c.job.json"), text), QStringLiteral("--json")});
    INFO(ran.err);
    CHECK(ran.exit == 0);
    double last = 0;
    const Value root = tests::parsed(ran.out);
    for (const Value& event : root.find("events")->items()) {
      CHECK(event.find("at")->asNumber() >= last);
      last = event.find("at")->asNumber();
      CHECK_FALSE(event.find("text")->asText().empty());
    }
    CHECK(root.find("minutes")->asNumber() > 24 * 60);
  }
}

TEST_CASE("a cold damp room takes longer to rehearse, and the hands are the same") {
  const Commands commands;
  const auto told = [&](const std::string& temperature, const std::string& humidity) {
    const std::string job =
        tests::changed(tests::workedExample(), R"("temperature": "19 C", "humidity": "58 %")",
                       "\"temperature\": \"" + temperature + "\", \"humidity\": \"" + humidity + "\"");
    const auto ran = commands.run(
        {QStringLiteral("rehearse"), commands.file(QStringLiteral("c.job.json"), job), QStringLiteral("--json")});
    INFO(ran.err);
    REQUIRE_FALSE(ran.out.empty());
    return tests::parsed(ran.out);
  };
  const Value warm = told("23 C", "50 %");
  const Value cold = told("10 C", "80 %");
  CHECK(cold.find("minutes")->asNumber() > warm.find("minutes")->asNumber() + 60);
  CHECK(cold.find("hands")->asNumber() == warm.find("hands")->asNumber());
  CHECK(warm.find("changes")->find("hands")->asInteger() > 3);
  CHECK(warm.find("hands")->asNumber() > 60);
}
