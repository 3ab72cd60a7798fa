#pragma once
// The techniques and demo jobs as they are shipped.
#include <string>
#include <string_view>
#include <vector>

#include "core/craft/catalogue.h"
#include "core/workflow/workflow.h"

namespace tests {

// File names without their folder, in order.
std::vector<std::string> filesEnding(const std::string& folder, const std::string& suffix);
std::string textOf(const std::string& path);
std::string lowered(std::string text);
// Whether `phrase` stands in `text` as whole words, a plural s allowed.
bool speaksOf(const std::string& text, std::string_view phrase);

// Fails the test that asks where one of them does not read.
core::craft::Catalogue shippedCatalogue();
core::workflow::Workflow composedJob(const std::string& file);

}  // namespace tests
