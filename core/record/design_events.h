#pragma once
// Events of a design that is on no bench yet.
#include <optional>
#include <string>

#include "core/base/json.h"
#include "core/record/event_traits.h"

namespace core::record {

struct DesignBegun {
  static constexpr const char* kType = "DesignBegun";
  static constexpr Traits kTraits{.streams = kOfDesign};
  std::optional<base::Value> document;  // the job file it begins as
  std::string from;                     // the job or design it was begun from; "" for none
  static void fields(auto& self, auto& field) {
    field("document", self.document);
    field.unlessEmpty("from", self.from);
  }
};

struct DesignChanged {
  static constexpr const char* kType = "DesignChanged";
  static constexpr Traits kTraits{.streams = kOfDesign, .undo = Undo::Possible};
  std::optional<base::Value> patch;  // JSON Patch (RFC 6902) of the document
  static void fields(auto& self, auto& field) { field("patch", self.patch); }
};

struct DesignTaken {
  static constexpr const char* kType = "DesignTaken";
  static constexpr Traits kTraits{.streams = kOfDesign};
  std::string job;  // it went to the bench as
  static void fields(auto& self, auto& field) { field("job", self.job); }
};

struct DesignPutAway {
  static constexpr const char* kType = "DesignPutAway";
  static constexpr Traits kTraits{.streams = kOfDesign};
  static void fields(auto&, auto&) {}
};

struct DesignBroughtBack {
  static constexpr const char* kType = "DesignBroughtBack";
  static constexpr Traits kTraits{.streams = kOfDesign};
  static void fields(auto&, auto&) {}
};

using DesignEvents = EventTypes<DesignBegun, DesignChanged, DesignTaken, DesignPutAway, DesignBroughtBack>;

}  // namespace core::record
