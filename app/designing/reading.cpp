#include "app/designing/reading.h"

#include <array>
#include <vector>

#include "app/designing/builder.h"
#include "core/base/text.h"
#include "core/drafts/drafted.h"

namespace app::designing {

using core::base::Problem;
using core::base::Severity;
using core::base::Value;

namespace {

// Places no measure is computed from, a step of any name written "*"; with the value that is used where one has to be
// filled.
struct Aside {
  const char* pointer;
  const char* standIn;  // "" where it may be left out
};
constexpr std::array kAside = {
    Aside{"/title", "-"},
    Aside{"/reference", ""},
    Aside{"/client", ""},
    Aside{"/due", ""},
    Aside{"/room", ""},
    Aside{"/stock", ""},
    Aside{"/techniques", ""},
    Aside{"/deliver", ""},
    Aside{"/mount/boards/*/material", ""},
    Aside{"/mount/boards/*/bevel/colour", ""},
    Aside{"/bands/*/paper", "-"},
    Aside{"/lines/*/colour", "-"},
    Aside{"/washes/*/colour", "-"},
    Aside{"/spandrels/*/paper", "-"},
};

// Returns how much of a place a pattern covers; "" for none of it.
std::string covered(const char* pattern, const std::string& pointer) {
  const auto wanted = core::base::split(pattern, '/');
  const auto steps = core::base::split(pointer, '/');
  if (steps.size() < wanted.size()) return "";
  std::string place;
  for (std::size_t i = 1; i < wanted.size(); ++i) {
    if (wanted[i] != "*" && wanted[i] != steps[i]) return "";
    place += '/' + steps[i];
  }
  return place;
}

std::string textOf(const Value& document) {
  core::drafts::Drafted drafted;
  drafted.document = document;
  return drafted.text();
}

}  // namespace

bool standsAside(const std::string& pointer) {
  for (const Aside& aside : kAside) {
    if (!covered(aside.pointer, pointer).empty()) return true;
  }
  return false;
}

core::design::ReadDesign readForNow(const Value& document) {
  core::design::ReadDesign read = core::design::readDesign(textOf(document));
  if (read.design) return read;
  Value without = document;
  bool moved = false;
  for (const Problem& problem : read.problems.sorted()) {
    if (problem.severity != Severity::Error) continue;
    const std::string place = placeOf(problem);
    for (const Aside& aside : kAside) {
      const std::string at = covered(aside.pointer, place);
      if (at.empty()) continue;
      const bool there = core::base::at(without, at) != nullptr;
      if (!there && *aside.standIn == 0) continue;
      Value patch = *aside.standIn != 0 ? putAt(without, at, Value::text(aside.standIn)) : patchOf({removeFrom(at)});
      if (auto patched = core::base::patched(without, patch)) {
        without = std::move(patched).value();
        moved = true;
      }
    }
  }
  if (moved) read.design = core::design::readDesign(textOf(without)).design;
  return read;
}

}  // namespace app::designing
