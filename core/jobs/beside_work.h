#pragma once
// What a job's record holds beside the work itself: notes, photographs, and with which batches a step was worked. A
// part of the job's state. Everything here is changed by later events and nothing is overwritten: see timeline.h.
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/record/happening.h"

namespace core::jobs {

struct Note {
  std::string id;  // of the event that added it
  std::string text;
  std::string step;                        // "" for the job as a whole
  std::int64_t addedUtc = 0;               // ms
  std::optional<std::int64_t> changedUtc;  // of the newest change
};

struct Photograph {
  std::string id;    // of the event that kept it
  std::string hash;  // lower-case hex SHA-256: its file's name among the photographs
  std::int64_t bytes = 0;
  std::string type;           // "jpeg", "png" or "webp"
  int width = 0, height = 0;  // pixels, as stored
  std::string caption;        // "" for none
  std::string step;           // "" for the job as a whole
  std::int64_t keptUtc = 0;   // ms
};

struct BesideWork {
  std::vector<Note> notes;              // in the order they were added; removed ones left out
  std::vector<Photograph> photographs;  // the same
  // By step: the ids of batches it was worked with. Only of steps that are done.
  std::map<std::string, std::vector<std::string>> batches;

  const Note* note(const std::string& id) const;
  const Photograph* photograph(const std::string& id) const;
};

inline constexpr std::size_t kMostBatchesOfAStep = 20;
// The largest file of a photograph that is kept: 100 MB. The most pixels one may have: 250 million.
inline constexpr std::int64_t kLargestPhotograph = 100'000'000;
inline constexpr std::int64_t kMostPixels = 250'000'000;

// An event with what it says, which the fold of the work has read already.
struct ReadEvent {
  const record::Event* event = nullptr;
  std::shared_ptr<const record::Happening> what;  // never null
};

// Of the notes and photographs alone; batches are the fold's own affair, since they follow the steps. Requires events
// in fold order. What cannot be read in an event is left out; what was added is found whatever the order in which the
// events about it came.
void foldBeside(BesideWork& beside, const std::vector<ReadEvent>& ofJob, const std::set<std::string>& voided);

// What a photograph may not be: photograph.malformed, photograph.too-large, photograph.too-many-pixels and the
// refusals of a text for its caption. An empty message where it can be kept.
base::Message refusedPhotograph(const Photograph& photograph);

// The batches that are linked; nothing where they cannot be read or are too many.
std::optional<std::vector<std::string>> linkedBatches(const record::BatchesLinked& linked);

}  // namespace core::jobs
