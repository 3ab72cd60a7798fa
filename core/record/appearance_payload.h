#pragma once
// Reads the look of a material from an event's payload and checks its limits.
#include <optional>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/intents/appearance.h"

namespace core::record {

// The longest stretch of paper that one picture can show; longer ones are slips.
inline constexpr units::Length kLongestAcross = units::Length::wholeMillimetres(10'000);

// Returns why a look is refused: a refusal of its name (texts.h), appearance.no-colour {colour},
// appearance.across-out-of-range, or one of photograph_payload.h. The message is empty where it can be stored.
base::Message refusedAppearance(const intents::Appearance& appearance);

void write(base::Value& payload, const intents::Appearance& appearance);
// Returns nothing where it cannot be read or would have been refused.
std::optional<intents::Appearance> readAppearance(const base::Value& payload);

}  // namespace core::record
