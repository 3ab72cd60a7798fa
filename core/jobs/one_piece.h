#pragma once
// The record of one of several identical pieces, as that of a job of this piece alone. What was done once for all of
// them is in the record of each; what was done to another piece is in that piece's record only.
#include <optional>
#include <string>
#include <vector>

#include "core/record/event.h"
#include "core/workflow/workflow.h"

namespace core::jobs {

struct OnePiece {
  int number = 1;                          // from 1
  const workflow::Workflow* of = nullptr;  // the workflow of one piece, which the steps of the result are of
  std::string jobHash, title, reference;   // of the job of this piece alone
};

// Returns the id of this piece's own record: that of a job, an event, an intent or a device. Every id is made the same
// way, so that the same piece handed on again is known again, and beside the whole record it is a record of its own.
std::string idOfPiece(const std::string& id, int number);
// Returns whether an id was made so from `whole`.
bool isPieceOf(const std::string& id, const std::string& whole);

// Returns the id that a step of the job of several pieces has in the job of one; nothing for a step of another piece,
// or for one that the workflow does not have.
std::optional<std::string> stepOfPiece(const std::string& step, const OnePiece& piece);

// Returns the events that concern the piece, under ids of its own. Taking back, changing and removing are kept where
// what they speak of is. Events of types that are not known are left out, since nobody knows which piece they are
// about. Requires fold order and a workflow that outlives the call.
std::vector<record::Event> eventsOfPiece(const std::vector<record::Event>& events, const OnePiece& piece);

}  // namespace core::jobs
