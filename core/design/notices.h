#pragma once
// What the maker should know before the first cut, though the job holds together. What a technique wants is told by
// workflow::noticesOf.
#include <vector>

#include "core/base/problem.h"
#include "core/design/job.h"

namespace core::design {

base::Problem noticeAt(std::string pointer, base::Message message);

// Returns whether what is painted, ruled or gilded on the mount's face will lie against the glazing: the piece is
// framed, and no spacer thicker than the decoration holds it off. A bevel lies deeper and papers are no paint: neither
// counts. Common practice, no source.
bool faceTouchesGlazing(const Job& job);

// Each at the place of the value that mends it, which the file may leave to its default:
//   design.face-touches-glazing
//   design.spacer-shows {spacer} {lip} {would}, design.spacer-shows-above {spacer} {lip} {top} {would}: its strips are
//     wider than what the lip hides, everywhere or at the top; {would} stays hidden
//   design.spacer-never-hidden {lip} {top} {least}: no strip is narrow enough for this lip
//   design.spacer-within-decoration {spacer} {decoration}: it does not hold the glazing off
//   design.lip-hides-nothing {lip} {play}: the edge of the mount, or what lies behind it, shows at the top
//   design.float-without-air {air} {least}
//   design.leaf-covers-nothing {leaf}; design.colour-under-leaf {board} {leaf}: a bevel is painted and covered with
//   leaf design.spacer-without-glazing, design.spacer-unframed, design.spacer-width-of-none design.support-of-covered,
//   design.support-too-large {sheet} {by}: nothing is raised, or nothing is left of it
std::vector<base::Problem> noticesOf(const Job& job);

}  // namespace core::design
