#pragma once
// Events of the work on a job. Each struct is an event of version 1: its type, its traits, and `fields`, which names
// every member once for reading and for writing (see payload.h). Members added later are optional in old records.
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/design/as_made.h"
#include "core/intents/intent.h"
#include "core/record/event_traits.h"

namespace core::record {

// Ids of techniques with the hash of the text each was read from.
using TechniqueHashes = std::vector<intents::TakeIn::Technique>;

struct JobTakenIn {
  static constexpr const char* kType = "JobTakenIn";
  static constexpr Traits kTraits{.streams = kOfJob, .kind = TimelineKind::TakenIn, .told = "timeline.taken-in"};
  std::string job;  // hash of the job file's text
  std::string title;
  std::string reference;
  std::optional<TechniqueHashes> techniques;  // nothing where it cannot be read
  static void fields(auto& self, auto& field) {
    field("job", self.job);
    field("title", self.title);
    field("reference", self.reference);
    field("techniques", self.techniques);
  }
};

struct StepBegun {
  static constexpr const char* kType = "StepBegun";
  static constexpr Traits kTraits{
      .streams = kOfJob | kOfBench, .work = true, .kind = TimelineKind::Begun, .told = "timeline.begun"};
  std::string step;
  static void fields(auto& self, auto& field) { field("step", self.step); }
};

// The event of a preparation is in the bench's stream, since it serves every job there.
struct StepDone {
  static constexpr const char* kType = "StepDone";
  static constexpr Traits kTraits{.streams = kOfJob | kOfBench,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .kind = TimelineKind::Done,
                                  .told = "timeline.done"};
  std::string step;
  std::vector<std::string> checks;  // of records written by earlier versions: answers in words, by place
  std::int64_t checked = 0;         // how many of its checks were found so
  bool begunInTime = false;         // the maker states that he began while the window was open
  bool anew = false;                // made ready again, because what there was is too old
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field.unlessEmpty("checks", self.checks);
    field.unlessEmpty("checked", self.checked);
    field.unlessEmpty("begunInTime", self.begunInTime);
    field.unlessEmpty("anew", self.anew);
  }
};

// Takes back everything one intent did.
struct Undone {
  static constexpr const char* kType = "Undone";
  static constexpr Traits kTraits{
      .streams = kOfJob | kOfBench | kOfDesign, .kind = TimelineKind::TakenBack, .told = "timeline.taken-back"};
  std::string intent;
  static void fields(auto& self, auto& field) { field("intent", self.intent); }
};

// A touch test. `of`: the act that began the run of the wait; "" in records older than the member, where the present
// run is meant.
struct Looked {
  static constexpr const char* kType = "Looked";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .kind = TimelineKind::Looked,
                                  .told = "timeline.looked"};
  std::string wait;
  std::string of;
  intents::Verdict verdict = intents::Verdict::NotYet;
  std::optional<bool> sure;  // no new finding: confirms the last one, or (false) has it asked about again
  static void fields(auto& self, auto& field) {
    field("wait", self.wait);
    field("of", self.of);
    field("verdict", self.verdict);
    field("sure", self.sure);
  }
};

struct Heard {
  static constexpr const char* kType = "Heard";
  static constexpr Traits kTraits{
      .streams = kOfJob, .work = true, .kind = TimelineKind::Heard, .told = "timeline.heard-over"};
  std::string wait;
  std::string of;
  std::optional<intents::AlertClass> alert;  // nothing where the class is not known
  static void fields(auto& self, auto& field) {
    field("wait", self.wait);
    field("of", self.of);
    field("alert", self.alert);
  }
};

struct Snoozed {
  static constexpr const char* kType = "Snoozed";
  static constexpr Traits kTraits{
      .streams = kOfJob, .work = true, .kind = TimelineKind::Heard, .told = "timeline.put-off"};
  std::string wait;
  std::string of;
  std::optional<intents::AlertClass> alert;
  std::optional<std::int64_t> minutes;
  static void fields(auto& self, auto& field) {
    field("wait", self.wait);
    field("of", self.of);
    field("alert", self.alert);
    field("minutes", self.minutes);
  }
};

struct FaultReported {
  static constexpr const char* kType = "FaultReported";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .kind = TimelineKind::Fault,
                                  .told = "timeline.fault"};
  std::string step;
  std::string fault;
  std::string way;  // "" where the fault leaves no choice
  std::string of;   // the act that did the step, where it was done
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field("fault", self.fault);
    field.unlessEmpty("way", self.way);
    field.unlessEmpty("of", self.of);
  }
};

// The technique's remedy for a missed window was taken up.
struct MissedMended {
  static constexpr const char* kType = "MissedMended";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .kind = TimelineKind::Mended,
                                  .told = "timeline.mended"};
  std::string wait;
  std::string of;
  static void fields(auto& self, auto& field) {
    field("wait", self.wait);
    field("of", self.of);
  }
};

struct Measured {
  static constexpr const char* kType = "Measured";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .corrects = Corrects::Figure,
                                  .kind = TimelineKind::Measured,
                                  .told = "timeline.measured"};
  std::string step;
  std::string figure;
  std::optional<std::int64_t> nanometres;
  std::string overrules;  // an earlier measure the maker holds to be the wrong one; "" for none
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field("figure", self.figure);
    field("nanometres", self.nanometres);
    field.unlessEmpty("overrules", self.overrules);
  }
};

struct MeasureForgotten {
  static constexpr const char* kType = "MeasureForgotten";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .corrects = Corrects::Figure,
                                  .kind = TimelineKind::Measured,
                                  .told = "timeline.measure-forgotten"};
  std::string step;
  std::string figure;
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field("figure", self.figure);
  }
};

struct FollowChosen {
  static constexpr const char* kType = "FollowChosen";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .restedOn = true,
                                  .corrects = Corrects::Board,
                                  .kind = TimelineKind::Chosen,
                                  .told = "timeline.keeps-cover"};
  std::string board;
  std::optional<design::Follow> keep;  // nothing where the text is neither of the two
  static void fields(auto& self, auto& field) {
    field("board", self.board);
    field("keep", self.keep);
  }
};

struct JobPutAway {
  static constexpr const char* kType = "JobPutAway";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .kind = TimelineKind::Moved,
                                  .told = "timeline.put-away"};
  static void fields(auto&, auto&) {}
};

struct JobBroughtBack {
  static constexpr const char* kType = "JobBroughtBack";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .work = true,
                                  .kind = TimelineKind::Moved,
                                  .told = "timeline.brought-back"};
  static void fields(auto&, auto&) {}
};

struct TechniquesRenewed {
  static constexpr const char* kType = "TechniquesRenewed";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .restedOn = true,
                                  .kind = TimelineKind::Renewed,
                                  .told = "timeline.techniques-renewed"};
  std::optional<TechniqueHashes> techniques;
  static void fields(auto& self, auto& field) { field("techniques", self.techniques); }
};

// A preparation of another bench taken into use: the acts by which that bench made it.
struct PreparationAccepted {
  static constexpr const char* kType = "PreparationAccepted";
  static constexpr Traits kTraits{.streams = kOfJob,
                                  .undo = Undo::Possible,
                                  .restedOn = true,
                                  .kind = TimelineKind::Accepted,
                                  .told = "timeline.accepted"};
  std::string step;
  std::string device;
  std::vector<std::string> intents;
  static void fields(auto& self, auto& field) {
    field("step", self.step);
    field("device", self.device);
    field("intents", self.intents);
  }
};

using JobEvents =
    EventTypes<JobTakenIn, StepBegun, StepDone, Undone, Looked, Heard, Snoozed, FaultReported, MissedMended, Measured,
               MeasureForgotten, FollowChosen, JobPutAway, JobBroughtBack, TechniquesRenewed, PreparationAccepted>;

}  // namespace core::record
