#pragma once
// The properties of a job, as the words techniques select by; they are the same in every language.
#include <optional>
#include <string_view>

#include "core/design/job.h"

namespace core::workflow {

// Returns true for any form but four straight sides.
bool isShaped(const design::Job& job);
std::string_view word(design::Head head);
// Returns the form's word; an arch has the word of its head.
std::string_view word(const geometry::ShapeEntry& form);
std::string_view word(design::Motif motif);
std::string_view word(design::Grain grain);
std::string_view word(design::SizeKind size);
std::string_view word(design::RegionKind region);
// "unknown" where the job names none.
std::string_view word(std::optional<design::Metal> metal);

}  // namespace core::workflow
