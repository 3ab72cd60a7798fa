#pragma once
// Finds what the shop lacks for a design or job. Pure: the same design and shop give the same answer.
#include <string>

#include "core/design/design.h"
#include "core/materials/shortage.h"
#include "core/shop/shop.h"

namespace core::supply {

// `job`: its id, so that pieces cut already are not counted again; "" for a design that is on no bench yet.
materials::Shortage shortageOf(const std::string& job, const design::Design& design, const shop::Shop& shop);

}  // namespace core::supply
