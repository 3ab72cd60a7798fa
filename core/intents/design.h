#pragma once
// The intents on a design under way at the desk.
#include <string>
#include <variant>

#include "core/base/json.h"

namespace core::intents {

struct BeginDesign {
  base::Value document;  // the job file it begins as
  std::string from;      // the job or design it is begun from; "" for none
};

// A JSON Patch (RFC 6902) of the document.
struct ChangeDesign {
  base::Value patch;
};

// Takes back the newest change, or does again what was taken back last.
struct UndoChange {};
struct RedoChange {};

struct PutDesignAway {};
struct BringDesignBack {};

// The design went to the bench as that job.
struct TakeDesign {
  std::string job;
};

using DesignIntent =
    std::variant<BeginDesign, ChangeDesign, UndoChange, RedoChange, PutDesignAway, BringDesignBack, TakeDesign>;

}  // namespace core::intents
