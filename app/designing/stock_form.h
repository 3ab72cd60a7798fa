#pragma once
// The questions for an item added to the stock, and for a batch: the same fields as a design's, over a document of
// their own; and the conversion of a filled-in document into the entry.
#include "app/designing/fields.h"
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/stock.h"

namespace app::designing {

// Documents to begin from: a sheet of board; paste made on `today` (year-month-day).
core::base::Value freshStock();
core::base::Value freshBatch(const std::string& today);
core::base::Value documentOf(const core::intents::StockEntry& entry);

Section stockSection(const core::base::Value& document);
Section batchSection(const core::base::Value& document);

// Errors: stock.name-missing, stock.quantity-out-of-range, batch.no-such-day {text}, and those of lengths. The record
// itself reports anything else it refuses.
core::base::Result<core::intents::StockEntry, core::base::Message> stockEntryOf(const core::base::Value& document);
// `zone`: IANA id of where the day is meant. A batch is dated to the noon of its day, or to `nowUtc` (ms) on that day.
core::base::Result<core::intents::BatchEntry, core::base::Message> batchEntryOf(const core::base::Value& document,
                                                                                const std::string& zone,
                                                                                std::int64_t nowUtc);

}  // namespace app::designing
