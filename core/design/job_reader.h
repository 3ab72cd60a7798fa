#pragma once
// The strict reader of job files ("mountwright-job/1"). Reads the whole format, and some things beside it that a
// cutting list needs, all of them optional:
//   mount.boards[].material   the material of the board, as `paper` is that of a band
//   stock[].material          the `material` or `paper` the sheets are for
//   stock[].pattern           "width" or "height": the side of the sheet its repeat runs along
//   stock[].offcut            true: left from earlier work, paid for and used first
//   prices                    {labour, leaf, size, paste, paint}: labour by the hour ("24 GBP/h"), leaf by the leaf
//                             ("0.45 GBP"), the others by the litre ("38 GBP/l")
// A price is a number, or a text with or without its currency; all of a job are in one currency or in none.
#include "core/base/json.h"
#include "core/base/problem.h"
#include "core/design/job.h"

namespace core::design {

struct ReadJob {
  Job job;
  // True where enough was read for the layout to be worth trying, so that conflicts are reported along with mistakes.
  // Bands, lines and leaf that could not be read are left out of the job then.
  bool canLayOut = false;
};

ReadJob readJob(const base::ParsedJson& json, base::Problems& problems);

}  // namespace core::design
