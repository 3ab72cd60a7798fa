#pragma once
// What can be asked. Touch keys, pedal and voice all end here; nothing else changes a job.
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace core::intents {

// A job file is taken in: its text and those of the techniques it uses are stored by content hash.
struct TakeIn {
  std::string jobHash;
  std::string title;
  std::string reference;
  struct Technique {
    std::string id;
    std::string hash;
  };
  std::vector<Technique> techniques;
};

struct BeginStep {
  std::string step;
};

struct FinishStep {
  std::string step;
  // Answers to the step's checks, by their place; a step with checks is finished only with all of them.
  std::vector<std::string> checkAnswers;
  // The maker's word that a step found closed was begun while it was open.
  bool begunInTime = false;
};

// Takes back everything one intent did. Taking back an undo is a redo.
struct Undo {
  std::string intentId;
};

enum class Verdict { NotYet, Tacky, PastIt, Dry };

// A touch test.
struct LookAt {
  std::string wait;
  Verdict verdict = Verdict::NotYet;
};

enum class AlertClass { Over, Open, Closing };

// "I have heard it": silences that alert for good; the row stays until the act is done.
struct Hear {
  std::string wait;
  AlertClass alert = AlertClass::Over;
};

struct ReportFault {
  std::string step;
  std::string fault;
};

// Takes up what the technique says to do about a missed window.
struct MendMissed {
  std::string wait;
};

using Intent = std::variant<TakeIn, BeginStep, FinishStep, Undo, LookAt, Hear, ReportFault, MendMissed>;

std::string_view name(const Intent& intent);
std::string_view name(Verdict verdict);
std::string_view name(AlertClass alert);

}  // namespace core::intents
