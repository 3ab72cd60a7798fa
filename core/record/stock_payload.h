#pragma once
// Reads stock, batches and offcuts from an event's payload and checks their limits.
#include <cstdint>
#include <optional>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/intents/intent.h"

namespace core::record {

// The greatest quantity of one thing in stock, in pieces, microlitres or micrograms.
inline constexpr std::int64_t kMostPiecesInStock = 1'000'000;
inline constexpr std::int64_t kMostMeasuredInStock = 1'000'000'000'000;
// The highest mark on a jar or an offcut, more than any shop reaches.
inline constexpr std::int64_t kMostMarks = 1'000'000'000;
// The longest side of an offcut; longer ones are slips.
inline constexpr units::Length kLongestOffcut = units::Length::wholeMillimetres(10'000);

// Returns why an entry is refused; the message is empty where it can be stored. See decide_stock.h.
base::Message refusedStock(const intents::StockEntry& entry);
base::Message refusedBatch(const intents::BatchEntry& entry);
bool isOffcut(const intents::Offcut& piece);
bool isQuantity(intents::Measure measure, std::int64_t quantity);

void write(base::Value& payload, const intents::StockEntry& entry);
void write(base::Value& payload, const intents::BatchEntry& entry);
void write(base::Value& payload, const intents::Offcut& piece);
// Returns nothing where it cannot be read or would have been refused.
std::optional<intents::StockEntry> readStock(const base::Value& payload);
std::optional<intents::BatchEntry> readBatch(const base::Value& payload);
std::optional<intents::Offcut> readOffcut(const base::Value& payload);

}  // namespace core::record
