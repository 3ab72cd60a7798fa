#pragma once
// Notes, photographs and the batches that steps were worked with: the part of a job's state that is not the work
// itself. Later events change everything here, and no event is overwritten: see timeline.h.
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/record/happening.h"
#include "core/record/photograph_payload.h"

namespace core::jobs {

struct Note {
  std::string id;  // of the event that added it
  std::string text;
  std::string step;                        // "" for the job as a whole
  std::int64_t addedUtc = 0;               // ms
  std::optional<std::int64_t> changedUtc;  // of the newest change
};

struct Photograph {
  std::string id;    // of the event that added it
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
  std::vector<Photograph> photographs;  // in the order they were added; removed ones left out
  // The ids of the batches each step was worked with, by step. Only steps that are done are listed.
  std::map<std::string, std::vector<std::string>> batches;

  const Note* note(const std::string& id) const;
  const Photograph* photograph(const std::string& id) const;
};

inline constexpr std::size_t kMostBatchesOfAStep = 20;
using record::kLargestPhotograph;
using record::kMostPixels;

// An event with its payload, which the fold of the work has read already.
struct ReadEvent {
  const record::Event* event = nullptr;
  std::shared_ptr<const record::Happening> what;  // never null
};

// Folds notes and photographs alone; the fold of the work handles batches, since they follow the steps. Requires events
// in fold order. A member that cannot be read is left out. A note or photograph is found whatever the order of the
// events about it.
void foldBeside(BesideWork& beside, const std::vector<ReadEvent>& ofJob, const std::set<std::string>& voided);

// Returns why a photograph cannot be stored: photograph.malformed, photograph.too-large, photograph.too-many-pixels or
// a refusal of its caption's text. The message is empty where it can be stored.
base::Message refusedPhotograph(const Photograph& photograph);

// Returns the batches that are linked, or nothing where they cannot be read or are too many.
std::optional<std::vector<std::string>> linkedBatches(const record::BatchesLinked& linked);

}  // namespace core::jobs
