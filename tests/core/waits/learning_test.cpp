#include "core/waits/learning.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "tests/core/waits/made_of.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using units::Duration;
using waits::Belief;
using waits::Observation;

namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();
constexpr double kNoNumber = std::numeric_limits<double>::quiet_NaN();

using ByKind = std::map<std::string, std::vector<Observation>>;

// Of films alone, by name.
class Beliefs {
 public:
  explicit Beliefs(const ByKind& byName, waits::Scatter scatter = waits::Scatter::Robust)
      : m_beliefs(films(byName), scatter) {}
  Belief of(const std::string& name) const { return m_beliefs.of({name, waits::Cause::Film}); }

 private:
  static std::map<waits::Kind, std::vector<Observation>> films(const ByKind& byName) {
    std::map<waits::Kind, std::vector<Observation>> kinds;
    for (const auto& [name, all] : byName) kinds[{name, waits::Cause::Film}] = all;
    return kinds;
  }

  waits::Beliefs m_beliefs;
};

Observation exactly(double ratio, double age = 0) { return {ratio, ratio, age}; }

Belief alone(std::vector<Observation> observations) { return Beliefs({{"size", std::move(observations)}}).of("size"); }

bool same(const Belief& a, const Belief& b) {
  return a.mean == b.mean && a.variance == b.variance && a.resolved == b.resolved && a.count == b.count &&
         a.recent == b.recent && a.recentCount == b.recentCount;
}

Observation anyObservation(std::mt19937& random) {
  std::uniform_real_distribution<double> ln(-1.8, 1.8);
  const double a = std::exp(ln(random));
  const double b = std::exp(ln(random));
  const double age = 3 * (ln(random) + 1.8);
  switch (random() % 4) {
    case 0: return {a, a, age};
    case 1: return {0, a, age};
    case 2: return {a, kEndless, age};
    default: return {std::min(a, b), std::max(a, b), age};
  }
}

bool ordered(const units::Span& span) {
  return Duration() <= span.early && span.early <= span.likely && span.likely <= span.late;
}

}  // namespace

TEST_CASE("with nothing found the modelled span comes out as it is", "[waits]") {
  const Beliefs none{ByKind{}};
  for (const auto& span : {minutes(25, 40, 70), minutes(0, 15, 40), minutes(0, 0, 0), minutes(30, 30, 30)}) {
    CHECK(waits::learned(span, none.of("size")) == span);
    CHECK(waits::learned(span, Belief{}) == span);
    CHECK(waits::learned(span, Beliefs(ByKind{{"size", {}}}).of("size")) == span);
  }
  CHECK(none.of("size").median() == 1);
}

TEST_CASE("slow times teach slower, quick ones quicker", "[waits]") {
  CHECK(alone({exactly(1.4)}).median() > 1.1);
  CHECK(alone({exactly(0.6)}).median() < 0.9);
  CHECK(alone({{1.5, kEndless, 0}}).median() > 1.1);
  CHECK(alone({{0, 0.6, 0}}).median() < 0.9);
  CHECK(waits::learned(minutes(25, 40, 70), alone({exactly(1.4), exactly(1.3)})).likely > Duration::minutes(46));
}

TEST_CASE("what was found is never less sure than what was not", "[waits]") {
  std::mt19937 random(7);
  for (int round = 0; round < 400; ++round) {
    ByKind found;
    for (int i = 0; i < 6; ++i) {
      found[std::string(1, static_cast<char>('a' + random() % 3))].push_back(anyObservation(random));
      const Beliefs beliefs(found);
      for (const auto* kind : {"a", "b", "c", "never"}) {
        const auto belief = beliefs.of(kind);
        CHECK(belief.variance <= waits::kPriorVariance);
        CHECK(belief.variance > 0);
        CHECK(belief.resolved >= 0);
        CHECK(belief.resolved < 1);
      }
    }
  }
}

TEST_CASE("one more time that agrees makes surer", "[waits]") {
  std::vector<Observation> found;
  double before = waits::kPriorVariance;
  for (int i = 0; i < 12; ++i) {
    found.push_back(exactly(1.2));
    CHECK(alone(found).variance < before);
    before = alone(found).variance;
  }
}

TEST_CASE("the order of the observations changes nothing", "[waits]") {
  std::mt19937 random(11);
  for (int round = 0; round < 50; ++round) {
    ByKind found;
    for (int i = 0; i < 20; ++i) found[i % 3 == 0 ? "size" : "wash"].push_back(anyObservation(random));
    const Beliefs before(found);
    for (auto& [kind, observations] : found) std::shuffle(observations.begin(), observations.end(), random);
    const Beliefs after(found);
    for (const auto* kind : {"size", "wash", "never"}) CHECK(same(before.of(kind), after.of(kind)));
  }
}

TEST_CASE("kinds never found move with the maker's others, but not as far", "[waits]") {
  const std::vector<Observation> slow(8, exactly(1.4));
  const Beliefs one({{"size", slow}});
  CHECK(one.of("never").median() > 1.05);
  CHECK(one.of("never").median() < one.of("size").median());
  CHECK(one.of("never").count == 0);
  CHECK(one.of("never").variance > one.of("size").variance);
  const Beliefs three({{"size", slow}, {"wash", slow}, {"paste", slow}});
  CHECK(three.of("never").median() > one.of("never").median());
  CHECK(three.of("never").variance < one.of("never").variance);
}

TEST_CASE("a kind's own times outweigh those of the others", "[waits]") {
  const Beliefs beliefs(
      {{"size", std::vector<Observation>(6, exactly(0.8))}, {"wash", std::vector<Observation>(30, exactly(1.6))}});
  CHECK(beliefs.of("size").median() < 0.9);
  CHECK(beliefs.of("wash").median() > 1.5);
}

TEST_CASE("one absurd time among six moves the factor by less than a twentieth", "[waits]") {
  const std::vector<Observation> sound = {exactly(1.2), exactly(1.3), exactly(1.15), exactly(1.25), exactly(1.35)};
  for (const double absurd : {4.0, 20.0, 0.2, 1e-6}) {
    auto found = sound;
    found.push_back(exactly(absurd));
    INFO(absurd);
    CHECK(alone(found).median() / alone(sound).median() == Approx(1).margin(0.05));
  }
}

TEST_CASE("an old time says less than a new one", "[waits]") {
  CHECK(alone({exactly(1.4, 24)}).median() < alone({exactly(1.4, 1)}).median());
  CHECK(alone({exactly(1.4, 24)}).variance > alone({exactly(1.4, 1)}).variance);
  CHECK(same(alone({exactly(1.4, -2)}), alone({exactly(1.4, 0)})));
}

TEST_CASE("a wide interval says less than a narrow one, a very narrow one what a measure says", "[waits]") {
  CHECK(alone({{0.9, 1.8, 0}}).variance > alone({{1.2, 1.35, 0}}).variance);
  CHECK(alone({{1.3 - 1e-9, 1.3 + 1e-9, 0}}).mean == Approx(alone({exactly(1.3)}).mean).margin(1e-8));
  CHECK(alone({{1.3 - 1e-3, 1.3 + 1e-3, 0}}).mean == Approx(alone({exactly(1.3)}).mean).margin(1e-5));
}

TEST_CASE("nonsense is passed over and not counted", "[waits]") {
  const std::vector<Observation> nonsense = {{1.5, 1.2, 0},
                                             {kNoNumber, 1, 0},
                                             {1, kNoNumber, 0},
                                             {1, 1, kNoNumber},
                                             {-1, 1, 0},
                                             {-2, -1, 0},
                                             {0, 0, 0},
                                             {kEndless, kEndless},
                                             {0, kEndless, 0},
                                             {1, 1, kEndless},
                                             {-kEndless, kEndless, 0}};
  for (const auto& observation : nonsense) CHECK_FALSE(waits::meaningful(observation));
  CHECK(same(alone(nonsense), Belief{}));
  auto mixed = nonsense;
  mixed.push_back(exactly(1.4));
  CHECK(same(alone(mixed), alone({exactly(1.4)})));
  CHECK(alone(mixed).count == 1);
}

TEST_CASE("what lies beyond the grid stands at its end", "[waits]") {
  CHECK(alone({exactly(100)}).mean == alone({exactly(1e300)}).mean);
  CHECK(alone({exactly(1e-9)}).mean == alone({exactly(std::numeric_limits<double>::denorm_min())}).mean);
  const auto extreme = alone({{1e300, kEndless, 0}, {0, 1e-300, 0}, {1e-300, 1e300, 0}, {50, 60, 0}});
  CHECK(std::isfinite(extreme.mean));
  CHECK(extreme.variance > 0);
  // Hundreds of times at both ends underflow nothing.
  const Beliefs torn(
      {{"slow", std::vector<Observation>(400, exactly(4.4))}, {"quick", std::vector<Observation>(400, exactly(0.23))}});
  CHECK(torn.of("slow").median() == Approx(4.4).epsilon(0.02));
  CHECK(torn.of("quick").median() == Approx(0.23).epsilon(0.02));
}

TEST_CASE("the recent ratio is the median of the newest three that are bounded", "[waits]") {
  CHECK_FALSE(alone({{1.2, kEndless, 0}, {0, 0.8, 1}}).recent.has_value());
  const auto belief = alone({exactly(3, 5), exactly(1.1, 3), {1, 1.44, 2}, {2, kEndless, 0.5}, exactly(1.4, 1)});
  REQUIRE(belief.recent.has_value());
  CHECK(*belief.recent == Approx(1.2));
  CHECK(belief.recentCount == 3);
  CHECK(belief.count == 5);
  CHECK(*alone({exactly(1), exactly(1.44)}).recent == Approx(1.2));
  CHECK(alone({exactly(1), exactly(1.44)}).recentCount == 2);
}

TEST_CASE("a learned span keeps its order, whatever was found and whatever was stated", "[waits]") {
  std::mt19937 random(13);
  for (int round = 0; round < 300; ++round) {
    std::vector<Observation> found;
    for (int i = 0; i <= round % 9; ++i) found.push_back(anyObservation(random));
    const auto belief = alone(found);
    for (const auto& span : {minutes(25, 40, 70), minutes(0, 15, 40), minutes(0, 0, 30), minutes(0, 0, 0),
                             minutes(30, 30, 30), minutes(1, 14'000, 600'000)}) {
      CHECK(ordered(waits::learned(span, belief)));
    }
  }
}

TEST_CASE("an opening of zero stays zero, an early time of zero rises as the belief grows", "[waits]") {
  const auto sure = alone(std::vector<Observation>(10, exactly(1.3)));
  CHECK(waits::learned(minutes(0, 0, 0), sure) == minutes(0, 0, 0));
  CHECK(waits::learned(minutes(0, 0, 30), sure).likely == Duration());
  CHECK(waits::learned(minutes(0, 0, 30), sure).late > Duration::minutes(30));
  CHECK(waits::learned(minutes(0, 15, 40), sure).early > Duration::minutes(10));
  CHECK(waits::learned(minutes(0, 15, 40), alone({exactly(1.3, 60)})).early < Duration::minutes(10));
}

TEST_CASE("a wide span narrows and too narrow a one widens to what single times scatter", "[waits]") {
  const auto sure = alone(std::vector<Observation>(40, exactly(1)));
  const auto wide = waits::learned(minutes(10, 40, 200), sure);
  CHECK(wide.early > Duration::minutes(28));
  CHECK(wide.late < Duration::minutes(56));
  const auto narrow = waits::learned(minutes(39, 40, 41), sure);
  CHECK(narrow.early < Duration::minutes(32));
  CHECK(narrow.late > Duration::minutes(50));
}

TEST_CASE("of sixty kinds with five hundred times each counts its own", "[waits]") {
  std::mt19937 random(17);
  ByKind found;
  for (int i = 0; i < 500; ++i) found["kind " + std::to_string(i % 60)].push_back(anyObservation(random));
  const Beliefs beliefs(found);
  for (const auto& [kind, times] : found) {
    INFO(kind);
    const auto telling = std::count_if(times.begin(), times.end(), [](const Observation& one) {
      return Beliefs(ByKind{{"alone", {one}}}).of("alone").count == 1;
    });
    CHECK(beliefs.of(kind).count == telling);
  }
}

TEST_CASE("kinds that share no cause teach each other nothing", "[waits]") {
  const waits::Kind film{"paint/brush/dry", waits::Cause::Film};
  const waits::Kind other{"glaze/brush/dry", waits::Cause::Film};
  const waits::Kind soak{"paste/soak/soaked", waits::Cause::Own};
  const waits::Kind cool{"paste/cook/cool", waits::Cause::Own};
  const std::vector<Observation> quick(5, exactly(0.4));
  const waits::Beliefs soaked({{soak, quick}});
  CHECK(soaked.of(soak).median() < 0.5);
  for (const waits::Kind& kind : {film, other, cool}) CHECK(same(soaked.of(kind), Belief()));
  const waits::Beliefs painted({{film, quick}});
  CHECK(painted.of(other).median() < 0.9);
  for (const waits::Kind& kind : {soak, cool}) CHECK(same(painted.of(kind), Belief()));
  // Nor does anything found of others move what was found of it.
  const waits::Beliefs both({{film, quick}, {soak, {exactly(1.6)}}, {cool, {exactly(0.3)}}});
  CHECK(same(both.of(soak), waits::Beliefs({{soak, {exactly(1.6)}}}).of(soak)));
  CHECK(same(both.of(film), painted.of(film)));
  CHECK(same(both.of(other), painted.of(other)));
}

TEST_CASE("a film alone and a kind of its own learn the same from the same times", "[waits]") {
  const std::vector<Observation> found = {exactly(0.8), {0.5, 0.7, 1}, {1.1, kEndless, 2}};
  const auto film = waits::Beliefs({{{"a", waits::Cause::Film}, found}}).of({"a", waits::Cause::Film});
  const auto own = waits::Beliefs({{{"a", waits::Cause::Own}, found}}).of({"a", waits::Cause::Own});
  CHECK(film.mean == Approx(own.mean).margin(1e-12));
  CHECK(film.variance == Approx(own.variance).margin(1e-12));
  CHECK(film.count == own.count);
}

TEST_CASE("a time is far outside below a third of the early one and beyond three times the late one", "[waits]") {
  const auto stated = minutes(30, 60, 120);
  CHECK(waits::farOutside(0.01, 0.02, stated));  // dry after a minute
  CHECK(waits::farOutside(0, 0.16, stated));     // 9.6 min at the first look
  CHECK_FALSE(waits::farOutside(0, 0.17, stated));
  CHECK_FALSE(waits::farOutside(0.1, 0.9, stated));
  CHECK_FALSE(waits::farOutside(5.9, kEndless, stated));
  CHECK(waits::farOutside(6.1, kEndless, stated));  // not yet after 366 min
  CHECK_FALSE(waits::farOutside(0, 0.001, minutes(0, 60, 120)));
}
