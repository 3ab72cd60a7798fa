#pragma once
// Stock, batches and offcuts as they stand in an event's payload, and what they may not be.
#include <cstdint>
#include <optional>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/intents/intent.h"

namespace core::record {

// The most of one thing in stock: pieces; microlitres or micrograms.
inline constexpr std::int64_t kMostPiecesInStock = 1'000'000;
inline constexpr std::int64_t kMostMeasuredInStock = 1'000'000'000'000;
// The highest mark on a jar or an offcut: beyond what any shop comes to.
inline constexpr std::int64_t kMostMarks = 1'000'000'000;
// The longest side of an offcut; longer ones are slips.
inline constexpr units::Length kLongestOffcut = units::Length::wholeMillimetres(10'000);

// What an entry may not be, as a refusal; an empty message where it can be kept. See decide_stock.h.
base::Message refusedStock(const intents::StockEntry& entry);
base::Message refusedBatch(const intents::BatchEntry& entry);
bool isOffcut(const intents::Offcut& piece);
bool isQuantity(intents::Measure measure, std::int64_t quantity);

void write(base::Value& payload, const intents::StockEntry& entry);
void write(base::Value& payload, const intents::BatchEntry& entry);
void write(base::Value& payload, const intents::Offcut& piece);
// Nothing where it does not read or would have been refused.
std::optional<intents::StockEntry> readStock(const base::Value& payload);
std::optional<intents::BatchEntry> readBatch(const base::Value& payload);
std::optional<intents::Offcut> readOffcut(const base::Value& payload);

}  // namespace core::record
