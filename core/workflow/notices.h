#pragma once
// What the maker should know of the chosen techniques before the first cut, though the job can be worked by them.
#include <optional>
#include <vector>

#include "core/base/problem.h"
#include "core/craft/catalogue.h"
#include "core/design/design.h"
#include "core/units/climate.h"
#include "core/workflow/things.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// `workflow` is composed of the design and the catalogue. Without a room nothing is said of one. Each stands at the
// place of the value that mends it, which the file may leave to its default:
//   design.choice-idle {technique}: a technique the job names plays no part in it;
//   design.wants-least.QUANTITY, design.wants-most.QUANTITY {measure} {is} {wanted} {techniques} {why}: a measure,
//   whose
//     name is the message {measure}, is not what these techniques want;
//   design.wants-such {technique} {name} {property} {now} {instead} {why}: a thing is not as the technique wants it;
//   design.wants-named {technique} {name} {property} {instead} {why}: the job leaves open what the technique must know;
//   design.wants-without {technique} {other} {why}: two techniques do not go together.
std::vector<base::Problem> noticesOf(const design::Design& design, const Workflow& workflow,
                                     const craft::Catalogue& catalogue, const ThingWords& words,
                                     const std::optional<units::Room>& room);

}  // namespace core::workflow
