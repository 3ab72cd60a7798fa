// What a job has cut, from which sheets and how, what it takes of leaf, size, paste and paint, and what that costs.
// Without stock the cutting list is still written. The exit code is 1 where stock is listed for a piece and does not
// suffice; the output is complete all the same.
//
// As JSON, "mountwright-materials/1"; a LENGTH is {"value" mm, "display"}, an AREA {"x","y","width","height"} of them,
// MONEY {"value" exact decimal as text, "display"}, a NOTE {"id","text"}:
//   pieces[]   id name count, width height as it lies on the mount (of a strip its length and width), allowance (what
//              each strip is cut longer, one repeat), thickness (null of paper), grain "width"|"height"|"any",
//              patterned, material, figures[] its sizes come from, stock[] it may come from,
//              by "nothing"|"material"|"id"|"only-paper"|"thickness"|"no-thickness", notes[]
//   groups[]   pieces that share stock, each cut from the sheets that serve it: stock[] pieces[]
//              unplaced[] {piece count why "too-large"|"too-few"},
//              worthIn "money"|"mm2", worth of its new sheets, bound (none can do with less), gap (share between),
//              exact (proven best), notes[]
//   sheets[]   in the order they are cut: group (from 0), stock, number (of its stock, from 1), offcut width height
//              margin kerf; bound gap exact of its group; pieces[] {piece number at AREA turned},
//              cuts[] {part AREA upright fence}, offcuts[] AREA. Places count from the top left corner of what is left
//              once the margins are off; a cut goes from edge to edge of its part, `fence` from its left (upright) or
//              its top
//   match[]    a band with a repeat: band, state "directional"|"meets"|"near"|"open" (near: it does not show),
//              mismatch LENGTH (null of directional), round (null but of directional) {outer mean inner LENGTH, best
//              "outer"|"mean"|"inner"}, notes[], options[] best first {opensOthers (corners of a band that met),
//              bringsNotice (the job gets one it had not: a lip reached under, say), cost LENGTH (the sum of its
//              changes; ranked by these three in this order), why, says[], disturbs[] NOTE,
//              edits[] {pointer value} of the job file, mismatch it leaves, strips {horizontal vertical} and outer
//              {width height} LENGTH with it taken, onSteps (null where the edits are on a rule's steps) {edits[]
//              mismatch}}, strips[] along the paper {number side "top"|"right"|"bottom"|"left" begin length lost
//              firstMotif LENGTH}
//   amounts[]  id name value unit "count"|"ml" display, area covered (mm2), spread (ml/m2) potLoss, figures[]
//   costs[]    id name quantity unit "sheet"|"leaf"|"l"|"h", price of one MONEY, cost MONEY, share of its sheets the
//              pieces take (null but for sheets), byShare MONEY
//   quote      currency ("" where the job names none) total totalByShare MONEY notPriced[] (ids of pieces and costs)
#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/input.h"
#include "app/commands/materials_parts.h"
#include "app/commands/saying.h"

namespace app::commands {
namespace {

using core::design::Design;
using core::units::Duration;

Duration handsAtWork(const core::workflow::Workflow& workflow) {
  Duration sum;
  for (const auto& step : workflow.steps) sum = sum + step.work.likely;
  return sum;
}

std::vector<BandMatch> matchesOf(const Design& design) {
  std::vector<BandMatch> matches;
  for (std::size_t i = 0; i < design.job.bands.size(); ++i) {
    if (!design.job.bands[i].repeat) continue;
    matches.push_back({i, core::materials::matchOf(design.job, design.layout, i),
                       core::materials::stripOrder(design.job.bands[i], design.layout.bands[i])});
  }
  return matches;
}

}  // namespace

int materials(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const OrExit<Design> job = readJob(line.files.first(), err);
  if (!job.value) return job.exit;
  const Design& design = *job.value;
  int exit = kDone;
  // The work is of no interest here but for its price, so techniques are read for that alone.
  std::optional<Duration> handsOn;
  if (design.job.prices.labour) {
    const auto workflow = composeDesign(line, design, err);
    // Without techniques there are no steps, which is not to say that the work costs nothing.
    if (workflow.value && !workflow.value->steps.empty()) handsOn = handsAtWork(*workflow.value);
    exit = workflow.exit;
  }
  Materials found{design, line.units.value_or(design.job.units), {}, {}, {}, {}, {}};
  found.pieces = core::materials::cuttingList(design.job, design.layout);
  found.plan = core::materials::planSheets(found.pieces, {design.job.stock});
  found.amounts = core::materials::amountsOf(design.job, design.layout);
  found.quote = core::materials::quoteOf(design.job, found.pieces, found.plan, found.amounts, handsOn);
  found.matches = matchesOf(design);
  if (line.json) {
    sayJson(out, materialsJson(found));
  } else {
    sayMaterials(out, found);
  }
  for (const auto& group : found.plan.groups) {
    for (const auto& left : group.unplaced) sayProblem(err, line.files.first(), found.lack(left), found.units);
  }
  return found.plan.isShort() ? std::max<int>(exit, kProblem) : exit;
}

}  // namespace app::commands
