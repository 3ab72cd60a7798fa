#pragma once
// The content of an event, as one of the types this program knows. Code that folds, shows or judges events visits the
// variant, so the compiler names every place that does not handle a type that is added.
#include <optional>
#include <string_view>
#include <utility>
#include <variant>

#include "core/record/beside_events.h"
#include "core/record/design_events.h"
#include "core/record/event.h"
#include "core/record/job_events.h"
#include "core/record/shop_events.h"

namespace core::record {

// Has a type or version this program does not know, or is in a stream where such an event has no place: stored, not
// folded.
struct Unknown {
  static constexpr const char* kType = "";
  static constexpr Traits kTraits{.kind = TimelineKind::Unknown, .told = "timeline.unknown"};
  static void fields(auto&, auto&) {}
};

template <typename... Lists>
struct VariantOf;
template <typename... Types>
struct VariantOf<EventTypes<Types...>> {
  using type = std::variant<Unknown, Types...>;
};
template <typename... First, typename... Second, typename... Rest>
struct VariantOf<EventTypes<First...>, EventTypes<Second...>, Rest...>
    : VariantOf<EventTypes<First..., Second...>, Rest...> {};

using Happening = VariantOf<JobEvents, BesideEvents, DesignEvents, ShopEvents>::type;

// A member that cannot be read is empty or null, as its struct states.
Happening happeningOf(const Event& event);

// Returns whether events of these traits may be in that stream.
bool mayStand(const Traits& traits, std::string_view stream);

// Returns whether the event is one of that type, of its version 1, in a stream where it may be.
template <typename One>
bool isA(const Event& event) {
  return event.version == 1 && event.type == One::kType && mayStand(One::kTraits, event.stream);
}

// Returns the event's content where it is one of that type.
template <typename One>
std::optional<One> as(const Event& event) {
  if (!isA<One>(event)) return std::nullopt;
  return std::get<One>(happeningOf(event));
}

const Traits& traitsOf(const Happening& happening);

// Drafts an event for the named stream, or else for the first kind of stream its type may be in: a job's, a bench's, a
// design's.
EventDraft draftOf(const Happening& happening);
EventDraft draftOf(const Happening& happening, EventDraft::Stream stream);

// True for types that have no place in streams of that kind, Unknown among them.
template <typename One, unsigned streams>
concept StandsOutside = (One::kTraits.streams & streams) == 0;

// Combines several functions into one visitor; without a general one among them every type needs its own.
template <typename... Each>
struct OneOf : Each... {
  using Each::operator()...;
};
template <typename... Each>
OneOf(Each...) -> OneOf<Each...>;

}  // namespace core::record
