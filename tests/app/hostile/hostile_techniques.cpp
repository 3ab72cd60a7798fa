#include <algorithm>

#include "core/craft/reading.h"
#include "tests/app/hostile/hostile_files.h"

namespace hostile {
namespace {

namespace craft = core::craft;

Value span(const char* early, const char* likely, const char* late) {
  return Value::object()
      .set("early", Value::text(early))
      .set("likely", Value::text(likely))
      .set("late", Value::text(late));
}

std::string sentence(Dice& dice) { return dice.chance(20) ? std::string(400, 'x') : "Do it once."; }

template <typename Item>
Value listOf(std::int64_t count, Item item) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) list.append(item(i));
  return list;
}

class TechniqueMaker {
 public:
  TechniqueMaker(Dice& dice, File& file) : m_dice(dice), m_file(file) {}

  Value technique() {
    const bool job = m_dice.chance(30);
    m_each = job ? "" : m_dice.one(std::vector<std::string>{"band", "line", "leaf", "board"});
    m_part = !job && m_dice.chance(40);
    const std::int64_t steps = hostileCount(m_dice, craft::kMostSteps, 5'000);
    m_step = std::min<std::int64_t>(steps, 30);
    // The longer the file, the less may stand in each step.
    m_most = std::max<std::int64_t>(1, 4'000 / steps);
    Value root = Value::object();
    root.set("format", Value::text("mountwright-technique/1"));
    root.set("id", Value::text(m_file.id));
    root.set("title", Value::text(m_dice.chance(10) ? hostileText(m_dice) : "Work it"));
    root.set("rank", Value::integer(m_dice.number(0, 9999)));
    root.set("when", m_each.empty() ? Value::object().set("always", Value::boolean(true))
                                    : Value::object().set("each", Value::text(m_each)));
    if (m_part) {
      root.set("repeat",
               Value::object().set("count", Value::integer(m_dice.number(2, 100))).set("source", Value::text("own")));
    }
    root.set("steps", listOf(steps, [&](std::int64_t i) { return step(i); }));
    return root;
  }

 private:
  std::int64_t count(std::size_t limit) {
    return std::min(m_most, hostileCount(m_dice, static_cast<std::int64_t>(limit), 2'000));
  }

  std::string pronoun() const { return m_each.empty() ? "piece" : "this"; }

  // A fact some earlier step of the file makes, or nobody, or every thing there is.
  Value need(std::int64_t before) {
    if (m_dice.chance(50)) {
      const char* kinds[] = {"strip", "corner", "band", "line", "leaf", "board"};
      return Value::object()
          .set("every", Value::text(kinds[m_dice.number(0, 5)]))
          .set("is", Value::text("fact" + std::to_string(m_dice.number(0, m_step))));
    }
    return Value::text(pronoun() + ".fact" + std::to_string(m_dice.number(0, std::max<std::int64_t>(before - 1, 0))));
  }

  Value step(std::int64_t number) {
    Value step = Value::object();
    step.set("id", Value::text("s" + std::to_string(number)));
    if (m_part && m_dice.chance(70)) step.set("each", Value::text("part"));
    if (m_each == "band" && !m_part) step.set("each", Value::text(m_dice.chance(50) ? "strip" : "corner"));
    step.set("title", Value::text("Do the thing"));
    const auto text = [&](std::int64_t) { return Value::text(sentence(m_dice)); };
    step.set("do", listOf(std::max<std::int64_t>(count(craft::kMostEntries), 1), text));
    step.set("good", Value::text(sentence(m_dice)));
    step.set("tools", listOf(count(craft::kMostEntries), text));
    step.set("hands", Value::text("clean"));
    step.set("work", span("1 min", "2 min", "3 min").set("source", Value::text("own")));
    if (number > 0 && m_dice.chance(70)) {
      step.set("needs", listOf(count(craft::kMostEntries), [&](std::int64_t) { return need(number); }));
    }
    step.set("makes", listOf(count(craft::kMostEntries), [&](std::int64_t i) {
               return Value::text(pronoun() + ".fact" + std::to_string(i == 0 ? number : number * 1000 + i));
             }));
    if (m_dice.chance(50))
      step.set("waits", listOf(count(craft::kMostWaits), [&](std::int64_t i) { return wait(number, i); }));
    if (m_dice.chance(40))
      step.set("faults", listOf(count(craft::kMostEntries), [&](std::int64_t i) { return fault(i); }));
    return step;
  }

  Value wait(std::int64_t step, std::int64_t number) {
    const bool closes = m_dice.chance(60);
    Value wait = Value::object();
    wait.set("id", Value::text("w" + std::to_string(number)));
    wait.set("kind", Value::text(closes ? "tack" : "dry"));
    wait.set("title", Value::text("it dries"));
    wait.set("makes", Value::text(pronoun() + ".dry" + std::to_string(step) + "-" + std::to_string(number)));
    wait.set("opens", span("1 min", "2 min", "3 min"));
    if (closes) {
      wait.set("closes", span("4 min", "5 min", "90 d"));
      wait.set("ifMissed", Value::object()
                               .set("do", Value::text("Do it again."))
                               .set("ends", Value::array().append(Value::text(pronoun() + ".fact0"))));
    }
    wait.set("model", Value::text("none"));
    wait.set("test", Value::text("Touch it."));
    wait.set("source", Value::text("own"));
    return wait;
  }

  Value fault(std::int64_t number) {
    Value ends = listOf(m_dice.number(1, 5),
                        [&](std::int64_t) { return Value::text(m_each.empty() ? "piece.fact0" : "this.*"); });
    return Value::object()
        .set("id", Value::text("f" + std::to_string(number)))
        .set("seen", Value::text("It is seen."))
        .set("do", Value::text("Mend it."))
        .set("ends", std::move(ends));
  }

  Dice& m_dice;
  File& m_file;
  std::string m_each;
  bool m_part = false;
  std::int64_t m_step = 1;
  std::int64_t m_most = 1;
};

}  // namespace

File hostileTechnique(std::uint64_t seed) {
  Dice dice(seed);
  File file;
  file.kind = Kind::Technique;
  file.id = "hostile";
  file.name = "technique";
  file.text = core::base::writeJson(TechniqueMaker(dice, file).technique(), 0);
  file.text.resize(std::min(file.text.size(), core::base::kMaximumJsonBytes));
  return file;
}

}  // namespace hostile
