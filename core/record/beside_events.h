#pragma once
// Events of the parts of a job's record beside the work: notes, photographs, and batches a step was worked with. The
// limits of a text are in texts.h; here texts are stored as they were written.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/record/event_traits.h"

namespace core::record {

// This event's id is the note's id.
struct NoteAdded {
  static constexpr const char* kType = "NoteAdded";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Note,
                                  .kind = TimelineKind::Noted,
                                  .told = "timeline.noted"};
  std::string text;
  std::string step;  // "" for the job as a whole
  static void fields(auto& self, auto& field) {
    field("text", self.text);
    field.unlessEmpty("step", self.step);
  }
};

struct NoteChanged {
  static constexpr const char* kType = "NoteChanged";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Note,
                                  .kind = TimelineKind::Noted,
                                  .told = "timeline.note-changed"};
  std::string note;
  std::string text;
  static void fields(auto& self, auto& field) {
    field("note", self.note);
    field("text", self.text);
  }
};

struct NoteRemoved {
  static constexpr const char* kType = "NoteRemoved";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Note,
                                  .kind = TimelineKind::Noted,
                                  .told = "timeline.note-removed"};
  std::string note;
  static void fields(auto& self, auto& field) { field("note", self.note); }
};

// This event's id is the photograph's id; its file is named by the hash of its bytes.
struct PhotographKept {
  static constexpr const char* kType = "PhotographKept";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Photograph,
                                  .kind = TimelineKind::Photographed,
                                  .told = "timeline.photographed"};
  std::string hash;
  std::int64_t bytes = 0;
  std::string type;
  std::int64_t width = 0, height = 0;  // pixels
  std::string caption;
  std::string step;
  static void fields(auto& self, auto& field) {
    field("hash", self.hash);
    field("bytes", self.bytes);
    field("type", self.type);
    field("width", self.width);
    field("height", self.height);
    field.unlessEmpty("caption", self.caption);
    field.unlessEmpty("step", self.step);
  }
};

struct PhotographCaptioned {
  static constexpr const char* kType = "PhotographCaptioned";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Photograph,
                                  .kind = TimelineKind::Photographed,
                                  .told = "timeline.captioned"};
  std::string photograph;
  std::string caption;
  static void fields(auto& self, auto& field) {
    field("photograph", self.photograph);
    field("caption", self.caption);
  }
};

struct PhotographRemoved {
  static constexpr const char* kType = "PhotographRemoved";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .corrects = Corrects::Photograph,
                                  .kind = TimelineKind::Photographed,
                                  .told = "timeline.photograph-removed"};
  std::string photograph;
  static void fields(auto& self, auto& field) { field("photograph", self.photograph); }
};

struct BatchesLinked {
  static constexpr const char* kType = "BatchesLinked";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .corrects = Corrects::Batches,
                                  .kind = TimelineKind::Batches,
                                  .told = "timeline.batches-linked"};
  std::string step;
  std::optional<std::vector<std::string>> batches;  // ids; nothing where they cannot be read
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field("batches", self.batches);
  }
};

using BesideEvents = EventTypes<NoteAdded, NoteChanged, NoteRemoved, PhotographKept, PhotographCaptioned,
                                PhotographRemoved, BatchesLinked>;

}  // namespace core::record
