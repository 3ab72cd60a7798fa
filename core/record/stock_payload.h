#pragma once
// Stock and batches as they stand in an event's payload.
#include <optional>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/intents/stock.h"

namespace core::record {

// What an entry may not be, as a refusal; an empty message where it can be kept. See decide_stock.h.
base::Message refusedStock(const intents::StockEntry& entry);
base::Message refusedBatch(const intents::BatchEntry& entry);
bool isQuantity(intents::Measure measure, std::int64_t quantity);

void write(base::Value& payload, const intents::StockEntry& entry);
void write(base::Value& payload, const intents::BatchEntry& entry);
// Nothing where it does not read or would have been refused.
std::optional<intents::StockEntry> readStock(const base::Value& payload);
std::optional<intents::BatchEntry> readBatch(const base::Value& payload);

}  // namespace core::record
