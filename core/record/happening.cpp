#include "core/record/happening.h"

#include <array>
#include <cstddef>
#include <utility>

#include "core/base/text.h"
#include "core/record/payload.h"

namespace core::record {
namespace {

struct Row {
  std::string_view type;
  const Traits* traits = nullptr;
  Happening (*read)(const base::Value& payload) = nullptr;
};

template <typename One>
Happening readAs(const base::Value& payload) {
  One one;
  PayloadReader reader(payload);
  One::fields(one, reader);
  return one;
}

template <std::size_t... place>
constexpr auto rowsOf(std::index_sequence<place...>) {
  return std::array{Row{std::variant_alternative_t<place, Happening>::kType,
                        &std::variant_alternative_t<place, Happening>::kTraits,
                        &readAs<std::variant_alternative_t<place, Happening>>}...};
}

constexpr auto kRows = rowsOf(std::make_index_sequence<std::variant_size_v<Happening>>());

constexpr bool eachIsToldThatStandsInAJob() {
  for (const Row& row : kRows) {
    if ((row.traits->streams & kOfJob) != 0 && row.traits->told.empty()) return false;
  }
  return true;
}
static_assert(eachIsToldThatStandsInAJob(), "an event of a job needs words for its record");

}  // namespace

bool mayStand(const Traits& traits, std::string_view stream) {
  return ((traits.streams & kOfJob) != 0 && base::startsWith(stream, "job/")) ||
         ((traits.streams & kOfBench) != 0 && base::startsWith(stream, "bench/")) ||
         ((traits.streams & kOfDesign) != 0 && base::startsWith(stream, "design/"));
}

Happening happeningOf(const Event& event) {
  if (event.version != 1 || event.type.empty()) return Unknown();
  for (const Row& row : kRows) {
    if (row.type == event.type) return mayStand(*row.traits, event.stream) ? row.read(event.payload) : Unknown();
  }
  return Unknown();
}

const Traits& traitsOf(const Happening& happening) { return *kRows[happening.index()].traits; }

EventDraft draftOf(const Happening& happening) {
  const unsigned streams = traitsOf(happening).streams;
  using Stream = EventDraft::Stream;
  return draftOf(happening, (streams & kOfJob) != 0     ? Stream::Job
                            : (streams & kOfBench) != 0 ? Stream::Bench
                                                        : Stream::Design);
}

EventDraft draftOf(const Happening& happening, EventDraft::Stream stream) {
  EventDraft draft;
  draft.stream = stream;
  draft.type = kRows[happening.index()].type;
  draft.payload = base::Value::object();
  std::visit(
      [&](const auto& one) {
        PayloadWriter writer(draft.payload);
        one.fields(one, writer);
      },
      happening);
  return draft;
}

}  // namespace core::record
