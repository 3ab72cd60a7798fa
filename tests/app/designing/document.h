#pragma once
// Documents as they lie on the desk.
#include <string>

#include "app/designing/fields.h"
#include "core/base/json.h"
#include "core/drafts/drafted.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

namespace tests {

// A demo job's.
inline core::base::Value demo(const std::string& name) {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/" + name + ".job.json");
  REQUIRE(text.has_value());
  auto json = core::base::parseJson(*text);
  REQUIRE(json.readable);
  return std::move(json.root);
}

// As a job file.
inline std::string fileOf(const core::base::Value& document) {
  core::drafts::Drafted drafted;
  drafted.document = document;
  return drafted.text();
}

// With that value at that place.
inline core::base::Value put(const core::base::Value& document, const std::string& pointer, core::base::Value value) {
  auto patched = core::base::patched(document, app::designing::putAt(document, pointer, std::move(value)));
  REQUIRE(patched.ok());
  return std::move(patched).value();
}

}  // namespace tests
