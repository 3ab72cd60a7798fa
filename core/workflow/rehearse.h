#pragma once
// Works the rest of a job on a fast clock: one pair of hands, typical times. Hands start at 0 and are never idle while
// a step may start; a step gated by an open tack window is first (the one that closes soonest), then what is left of
// the act in hand, otherwise list order decides. Two steps are not started though they could be: one during which a
// window would close, and a preparation that can still be left (preparations.h). A started step is not interrupted, an
// attended wait occupies the hands until it opens, nights are not simulated. A window is missed when its step has not
// started by its typical closing.
#include <string>
#include <string_view>
#include <vector>

#include "core/workflow/agenda.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

enum class RehearsalKind { Step, Wait, Opens, Closes, Alert, Missed };

struct RehearsalEvent {
  double at = 0;  // minutes from now
  RehearsalKind kind = RehearsalKind::Step;
  std::string step;   // the step it concerns
  std::string other;  // Missed: the step the hands were on, or the one that opened the window where they were free
  std::string wait;   // wait id, where one is concerned
};

// Steps of one act worked one after another.
struct ActWorked {
  double at = 0;
  std::size_t act = 0;  // in the workflow's acts of that way
  std::vector<std::size_t> steps;
};

struct Rehearsal {
  double minutes = 0;                  // until the hands have nothing left to do
  double hands = 0;                    // minutes of work
  int handsChanges = 0;                // acts worked with other hands than the one before
  int setups = 0;                      // how often a tool was set to something else
  std::vector<ActWorked> acts;         // in order of time
  std::vector<RehearsalEvent> events;  // in order of time
  bool missed = false;
};

Rehearsal rehearse(const Agenda& agenda, craft::Way way = craft::Way::Every);
// Rehearses a piece not begun, with the waits as they are stated.
Rehearsal rehearse(const Workflow& workflow, craft::Way way = craft::Way::Every);

std::string_view name(RehearsalKind kind);

}  // namespace core::workflow
