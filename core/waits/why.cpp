#include "core/waits/why.h"

#include <cmath>

#include "core/base/text.h"

namespace core::waits {
namespace {

using base::Message;

// A change of the times by less than this is not worth a word.
constexpr double kWorthSaying = 0.03;
constexpr double kFelt = 1.5;        // kelvin
constexpr double kFeltDamp = 4;      // per cent of humidity
constexpr double kFeltStrongly = 6;  // kelvin

Message feel(DryingModel model, const units::Room& room, const units::Room& reference) {
  const double warmer = room.temperature.inCelsius() - reference.temperature.inCelsius();
  const double damper = room.humidity.inPercent() - reference.humidity.inPercent();
  const bool dampMatters = model == DryingModel::Evaporation;
  const bool damp = dampMatters && damper >= kFeltDamp;
  const bool dry = dampMatters && damper <= -kFeltDamp;
  if (warmer <= -kFeltStrongly) {
    return Message(damp ? "why.room.cold-damp" : dry ? "why.room.cold-dry" : "why.room.cold");
  }
  if (warmer <= -kFelt) return Message(damp ? "why.room.cool-damp" : dry ? "why.room.cool-dry" : "why.room.cool");
  if (warmer >= kFeltStrongly) {
    return Message(damp ? "why.room.hot-damp" : dry ? "why.room.hot-dry" : "why.room.hot");
  }
  if (warmer >= kFelt) return Message(damp ? "why.room.warm-damp" : dry ? "why.room.warm-dry" : "why.room.warm");
  return Message(damp ? "why.room.damp" : dry ? "why.room.dry" : "why.room.even");
}

std::int64_t percent(double factor) { return std::llround(std::abs(factor - 1) * 100); }

Message ownTimes(double ratio, int count) {
  const bool isTrue = std::abs(std::log(ratio)) <= kWorthSaying;
  if (count == 1) {
    if (isTrue) return Message("why.last.true");
    return Message(ratio > 1 ? "why.last.slow" : "why.last.quick").with("percent", percent(ratio));
  }
  const auto several = static_cast<std::int64_t>(count);
  if (isTrue) return Message("why.learned.true").with("count", several);
  return Message(ratio > 1 ? "why.learned.slow" : "why.learned.quick")
      .with("count", several)
      .with("percent", percent(ratio));
}

constexpr const char* kUnchanged = "1.00";

}  // namespace

void explain(WaitState& state, const WaitTerms& terms, const Learned& learnt, const Course& course,
             const std::optional<units::Room>& room) {
  if (course.byTouch()) {
    state.why.push_back(*course.byTouch());
  } else if (course.now() && room) {
    state.basis = Basis::Model;
    Message felt = feel(terms.model, *room, terms.reference);
    const std::string factor = base::fixedNumber(course.now()->likely, 2);
    // A room that changes nothing is no reason.
    if (factor != kUnchanged) state.why.push_back(std::move(felt).with("factor", factor));
  }
  const Belief& belief = learnt.opening;
  if (terms.opens.likely > units::Duration() && belief.count > 0 && belief.recent) {
    state.basis = Basis::Learned;
    state.why.push_back(ownTimes(*belief.recent, belief.recentCount));
  } else if (terms.opens.likely > units::Duration() && std::abs(belief.mean) > kWorthSaying) {
    state.basis = Basis::Learned;
    state.why.push_back(Message(belief.mean > 0 ? "why.others.slow" : "why.others.quick")
                            .with("percent", percent(std::exp(belief.mean))));
  }
  // A wait that opens at once has learned times only for its closing.
  const Belief& width = learnt.width;
  if (terms.closes && terms.opens.likely == units::Duration() && width.count > 0) {
    state.basis = Basis::Learned;
    if (width.recent) state.why.push_back(ownTimes(*width.recent, width.recentCount));
  }
  if (state.why.empty()) state.why.emplace_back("why.label");
}

}  // namespace core::waits
