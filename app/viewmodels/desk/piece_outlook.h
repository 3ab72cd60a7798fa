#pragma once
// What lies ahead of one piece, for the desk: when it is ready and how long the hands work on it, what today still
// holds, what runs, and what is to be bought for it. Pure: the same state and shop give the same answer.
#include <QString>
#include <string>
#include <vector>

#include "app/viewmodels/rows_model.h"
#include "core/design/design.h"
#include "core/jobs/job_state.h"
#include "core/shop/shop.h"

namespace app::viewmodels {

struct PieceOutlook {
  QString ready;  // "Ready about Thursday 14:00, nights worked through."; "" where every step is done
  QString hands;  // "9 h 20 min by hand"; "" as above
  // The acts that can still be begun today if the hands go on from now, in the order they are worked: each its name,
  // and when it begins.
  std::vector<RowsModel::Row> today;
};

PieceOutlook outlookOf(const core::jobs::JobAt& job, const std::string& zone);

// The running waits, the one tested first first: which, the verb and time it is told by ("test 11:40"), the
// sentence, and `act` where it closes again, so that the hand has to catch it.
std::vector<RowsModel::Row> waitsOf(const core::jobs::JobAt& job, const std::string& zone);

// What the piece still needs and the shop lacks, with how much; then what it needs of which nobody has entered any
// stock, so that a lack cannot be known, and what is bought cut to its size. `job`: its id.
std::vector<RowsModel::Row> wantsOf(const std::string& job, const core::design::Design& design,
                                    const core::shop::Shop& shop);

}  // namespace app::viewmodels
