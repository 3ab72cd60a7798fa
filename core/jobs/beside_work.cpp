#include "core/jobs/beside_work.h"

#include <algorithm>

#include "core/base/find.h"
#include "core/base/text.h"
#include "core/record/texts.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;

constexpr int kLongestSide = 1'000'000;

using base::withId;

// An event that is not told beside the work.
template <typename One>
concept NotBeside = !isOneOf<One, BesideEvents>;

int sideOf(std::int64_t side) { return side > 0 && side <= kLongestSide ? static_cast<int>(side) : 0; }

std::string shownLines(const std::string& text) { return base::shownText(text, base::Lines::Several); }

void add(BesideWork& beside, const Event& event, const NoteAdded& added) {
  const std::string text = shownLines(added.text);
  if (!refusedText(text, true).id.empty()) return;
  beside.notes.push_back({event.eventId, text, added.step, event.occurredUtc, std::nullopt});
}

void add(BesideWork& beside, const Event& event, const PhotographKept& kept) {
  Photograph photograph{event.eventId,
                        kept.hash,
                        kept.bytes,
                        kept.type,
                        sideOf(kept.width),
                        sideOf(kept.height),
                        shownLines(kept.caption),
                        kept.step,
                        event.occurredUtc};
  if (refusedPhotograph(photograph).id.empty()) beside.photographs.push_back(std::move(photograph));
}

void change(BesideWork& beside, const Event& event, const NoteChanged& changed) {
  Note* note = withId(beside.notes, changed.note);
  const std::string text = shownLines(changed.text);
  if (note == nullptr || !refusedText(text, true).id.empty()) return;
  note->text = text;
  note->changedUtc = event.occurredUtc;
}

void change(BesideWork& beside, const Event&, const NoteRemoved& removed) {
  std::erase_if(beside.notes, [&](const Note& one) { return one.id == removed.note; });
}

void change(BesideWork& beside, const Event&, const PhotographCaptioned& captioned) {
  Photograph* photograph = withId(beside.photographs, captioned.photograph);
  const std::string caption = shownLines(captioned.caption);
  if (photograph != nullptr && refusedText(caption, false).id.empty()) photograph->caption = caption;
}

void change(BesideWork& beside, const Event&, const PhotographRemoved& removed) {
  std::erase_if(beside.photographs, [&](const Photograph& one) { return one.id == removed.photograph; });
}

}  // namespace

const Note* BesideWork::note(const std::string& id) const { return withId(notes, id); }
const Photograph* BesideWork::photograph(const std::string& id) const { return withId(photographs, id); }

void foldBeside(BesideWork& beside, const std::vector<ReadEvent>& ofJob, const std::set<std::string>& voided) {
  const auto each = [&](auto apply) {
    for (const ReadEvent& read : ofJob) {
      if (!voided.contains(read.event->intentId)) apply(*read.event, *read.what);
    }
  };
  each([&](const Event& event, const Happening& what) {
    if (const auto* note = std::get_if<NoteAdded>(&what)) add(beside, event, *note);
    if (const auto* photograph = std::get_if<PhotographKept>(&what)) add(beside, event, *photograph);
  });
  each([&](const Event& event, const Happening& what) {
    std::visit(OneOf{[](const NotBeside auto&) {}, [](const NoteAdded&) {}, [](const PhotographKept&) {},
                     // The batches of a step are read where they are asked for.
                     [](const BatchesLinked&) {}, [&](const NoteChanged& one) { change(beside, event, one); },
                     [&](const NoteRemoved& one) { change(beside, event, one); },
                     [&](const PhotographCaptioned& one) { change(beside, event, one); },
                     [&](const PhotographRemoved& one) { change(beside, event, one); }},
               what);
  });
}

Message refusedPhotograph(const Photograph& photograph) {
  if (Message refused =
          refusedFile({photograph.hash, photograph.type, photograph.bytes, photograph.width, photograph.height});
      !refused.id.empty())
    return refused;
  return refusedText(photograph.caption, false);
}

std::optional<std::vector<std::string>> linkedBatches(const BatchesLinked& linked) {
  const bool few = linked.batches && linked.batches->size() <= kMostBatchesOfAStep;
  return few ? linked.batches : std::nullopt;
}

}  // namespace core::jobs
