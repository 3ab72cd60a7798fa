#include "core/record/beside_work.h"

#include <algorithm>

#include "core/record/texts.h"

namespace core::record {
namespace {

using base::Message;
using base::Value;

constexpr std::size_t kHashDigits = 64;
constexpr int kLongestSide = 1'000'000;

template <typename Items>
auto withId(Items& items, const std::string& id) -> decltype(&items.front()) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const auto& one) { return one.id == id; });
  return found == items.end() ? nullptr : &*found;
}

bool isHash(const std::string& text) {
  return text.size() == kHashDigits &&
         std::all_of(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

int sideOf(const Value& payload, const char* key) {
  const auto side = integerOf(payload, key);
  return side && *side > 0 && *side <= kLongestSide ? static_cast<int>(*side) : 0;
}

void addNote(BesideWork& beside, const Event& event) {
  const std::string text = shownTextOf(event.payload, "text");
  if (!refusedText(text, true).id.empty()) return;
  beside.notes.push_back({event.eventId, text, textOf(event.payload, "step"), event.occurredUtc, std::nullopt});
}

void addPhotograph(BesideWork& beside, const Event& event) {
  Photograph photograph;
  photograph.id = event.eventId;
  photograph.hash = textOf(event.payload, "hash");
  photograph.bytes = integerOf(event.payload, "bytes").value_or(0);
  photograph.type = textOf(event.payload, "type");
  photograph.width = sideOf(event.payload, "width");
  photograph.height = sideOf(event.payload, "height");
  photograph.caption = shownTextOf(event.payload, "caption");
  photograph.step = textOf(event.payload, "step");
  photograph.keptUtc = event.occurredUtc;
  if (refusedPhotograph(photograph).id.empty()) beside.photographs.push_back(std::move(photograph));
}

void change(BesideWork& beside, const Event& event) {
  const std::string noteId = textOf(event.payload, "note");
  const std::string photographId = textOf(event.payload, "photograph");
  if (event.type == type::kNoteChanged) {
    Note* note = withId(beside.notes, noteId);
    const std::string text = shownTextOf(event.payload, "text");
    if (note == nullptr || !refusedText(text, true).id.empty()) return;
    note->text = text;
    note->changedUtc = event.occurredUtc;
  } else if (event.type == type::kNoteRemoved) {
    std::erase_if(beside.notes, [&](const Note& one) { return one.id == noteId; });
  } else if (event.type == type::kPhotographCaptioned) {
    Photograph* photograph = withId(beside.photographs, photographId);
    const std::string caption = shownTextOf(event.payload, "caption");
    if (photograph != nullptr && refusedText(caption, false).id.empty()) photograph->caption = caption;
  } else if (event.type == type::kPhotographRemoved) {
    std::erase_if(beside.photographs, [&](const Photograph& one) { return one.id == photographId; });
  }
}

}  // namespace

const Note* BesideWork::note(const std::string& id) const { return withId(notes, id); }
const Photograph* BesideWork::photograph(const std::string& id) const { return withId(photographs, id); }

void foldBeside(BesideWork& beside, const std::vector<const Event*>& ofJob, const std::set<std::string>& voided) {
  const auto each = [&](auto apply) {
    for (const Event* event : ofJob) {
      if (event->version == 1 && !voided.contains(event->intentId)) apply(*event);
    }
  };
  each([&](const Event& event) {
    if (event.type == type::kNoteAdded) addNote(beside, event);
    if (event.type == type::kPhotographKept) addPhotograph(beside, event);
  });
  each([&](const Event& event) { change(beside, event); });
}

Message refusedPhotograph(const Photograph& photograph) {
  const bool known = photograph.type == "jpeg" || photograph.type == "png" || photograph.type == "webp";
  if (!known || !isHash(photograph.hash) || photograph.bytes <= 0 || photograph.width <= 0 || photograph.height <= 0)
    return Message("photograph.malformed");
  if (photograph.bytes > kLargestPhotograph) {
    return Message("photograph.too-large").with("most", kLargestPhotograph / 1'000'000);
  }
  if (std::int64_t{photograph.width} * photograph.height > kMostPixels) {
    return Message("photograph.too-many-pixels")
        .with("width", std::int64_t{photograph.width})
        .with("height", std::int64_t{photograph.height})
        .with("most", kMostPixels / 1'000'000);
  }
  return refusedText(photograph.caption, false);
}

std::optional<std::vector<std::string>> linkedBatches(const Event& event) {
  const Value* batches = event.payload.find("batches");
  if (batches == nullptr || batches->kind() != Value::Kind::Array) return std::nullopt;
  std::vector<std::string> linked;
  for (const Value& batch : batches->items()) {
    if (batch.kind() != Value::Kind::Text || linked.size() == kMostBatchesOfAStep) return std::nullopt;
    linked.push_back(batch.asText());
  }
  return linked;
}

}  // namespace core::record
