#pragma once
// What a design or job lacks of what the shop has. Pure: the same design and shop give the same answer.
#include <string>

#include "core/design/design.h"
#include "core/materials/shortage.h"
#include "core/shop/shop.h"

namespace core::supply {

// `job`: its id, so that what is cut already is not asked for again; "" for a design that is on no bench yet.
materials::Shortage shortageOf(const std::string& job, const design::Design& design, const shop::Shop& shop);

}  // namespace core::supply
