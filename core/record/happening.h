#pragma once
// What an event says, as one of the types this program knows. Whoever folds, tells or weighs events visits the variant,
// and the compiler names every place that has no answer for a type that is added.
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

// Of a type or version this program does not know, or in a stream where such an event has no place: kept, not folded.
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

// A member that cannot be read comes out as its struct says: empty, or nothing.
Happening happeningOf(const Event& event);

// Whether events of these traits may stand in that stream.
bool mayStand(const Traits& traits, std::string_view stream);

// Whether the event is one of that type, of its version 1, in a stream where it may stand.
template <typename One>
bool isA(const Event& event) {
  return event.version == 1 && event.type == One::kType && mayStand(One::kTraits, event.stream);
}

// What the event says where it is one of that type.
template <typename One>
std::optional<One> as(const Event& event) {
  if (!isA<One>(event)) return std::nullopt;
  return std::get<One>(happeningOf(event));
}

const Traits& traitsOf(const Happening& happening);

// Draft of an event for the stream that is named, or else for the first its type may stand in: a job's, a bench's, a
// design's.
EventDraft draftOf(const Happening& happening);
EventDraft draftOf(const Happening& happening, EventDraft::Stream stream);

// Types that have no place in streams of that kind, Unknown among them.
template <typename One, unsigned streams>
concept StandsOutside = (One::kTraits.streams & streams) == 0;

// Several functions as one to visit with; without a general one among them every type needs its own.
template <typename... Each>
struct OneOf : Each... {
  using Each::operator()...;
};
template <typename... Each>
OneOf(Each...) -> OneOf<Each...>;

}  // namespace core::record
