#pragma once
// Decisions about stock and batches. Only shop.cpp calls these.
#include <vector>

#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/shop/shop_stock.h"

namespace core::shop {

// The most materials that have a picture of their own: each is held in memory while pieces are drawn.
inline constexpr int kMostPictured = 64;

using StockDecision = base::Result<std::vector<record::EventDraft>, base::Message>;

// All refuse by the rules of texts.h. Entering and correcting refuse besides: stock.needs-size, stock.no-size-here,
// stock.size-out-of-range, stock.measure, stock.quantity-out-of-range, stock.price-out-of-range, stock.currency,
// stock.size-kind. An act that names an item or a batch refuses: stock.no-such-item, stock.no-such-batch.
StockDecision decideStock(const ShopStock& stock, const intents::EnterStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::CorrectStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::CountStock& intent);
// Refuses stock.not-so-much where more is taken out than is there.
StockDecision decideStock(const ShopStock& stock, const intents::MoveStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::RemoveStock& intent);
// Refuses batch.keeps-out-of-range, batch.source-missing and batch.date-out-of-range, also for a date after `nowUtc`.
StockDecision decideStock(const ShopStock& stock, const intents::EnterBatch& intent, std::int64_t nowUtc);
// Refuses batch.used-up-already.
StockDecision decideStock(const ShopStock& stock, const intents::UseUpBatch& intent);
StockDecision decideStock(const ShopStock& stock, const intents::NameMaker& intent);
// Refuses besides: those of appearance_payload.h, and appearance.too-many-pictures {most}.
StockDecision decideStock(const ShopStock& stock, const intents::GiveAppearance& intent);
// Returns whether the intent is one of these acts. Undoing refuses stock.changed-since where something it entered was
// changed since.
bool isStockAct(const ShopStock& stock, const std::string& intentId);
StockDecision decideUndoStock(const ShopStock& stock, const std::string& intentId);

}  // namespace core::shop
