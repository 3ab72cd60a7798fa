// Every window's outline, and the outline moved as a reveal and a line move it, as they were when they were looked at:
// what changes here changes between machines, compilers or versions, and none of these may.
#include "core/base/text.h"
#include "core/geometry/move.h"
#include "tests/core/geometry/forms_here.h"
#include "tests/support/golden.h"

using namespace core::geometry;

namespace {

std::string dumped(const Outline& outline) {
  std::string text = outlineText(outline);
  for (const char* kind : {" line", " arc", " oval"})
    text = core::base::replaceAll(text, kind, std::string("\n ") + kind);
  return text + '\n';
}

std::string kept(const tests::NamedForm& form) {
  const WindowForm made = tests::made(form);
  std::string text = "springing " + core::base::shortestNumber(made.springing) + "\nas it is\n" + dumped(made.outline);
  for (const double d : {6.0, -2.0}) {
    const auto other = moved(made.outline, d);
    text += "moved by " + core::base::shortestNumber(d) + '\n';
    text += other ? dumped(other.value()) : std::string(name(other.error().kind)) + '\n';
  }
  return text;
}

}  // namespace

TEST_CASE("the outlines of windows are what they were when they were looked at", "[geometry]") {
  for (const auto& form : tests::everyForm()) {
    INFO(form.name);
    tests::checkGolden(PROJECT_ROOT, "geometry/" + form.name + ".txt", kept(form), 1e-9);
  }
}
