#pragma once
// Decisions about stock and batches. Only shop.cpp calls these.
#include <vector>

#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/shop/shop_stock.h"

namespace core::shop {

using StockDecision = base::Result<std::vector<record::EventDraft>, base::Message>;

// Refusals of all: those of texts.h. Of entering and correcting besides: stock.needs-size, stock.no-size-here,
// stock.size-out-of-range, stock.measure, stock.quantity-out-of-range, stock.price-out-of-range, stock.currency,
// stock.size-kind; of all that name one: stock.no-such-item, stock.no-such-batch.
StockDecision decideStock(const ShopStock& stock, const intents::EnterStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::CorrectStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::CountStock& intent);
// stock.not-so-much where more is taken out than is there.
StockDecision decideStock(const ShopStock& stock, const intents::MoveStock& intent);
StockDecision decideStock(const ShopStock& stock, const intents::RemoveStock& intent);
// batch.keeps-out-of-range, batch.source-missing; batch.date-out-of-range, in the future of `nowUtc` too.
StockDecision decideStock(const ShopStock& stock, const intents::EnterBatch& intent, std::int64_t nowUtc);
// batch.used-up-already.
StockDecision decideStock(const ShopStock& stock, const intents::UseUpBatch& intent);
StockDecision decideStock(const ShopStock& stock, const intents::NameMaker& intent);
// Whether one of these acts is meant; stock.changed-since where something was entered that was changed since.
bool isStockAct(const ShopStock& stock, const std::string& intentId);
StockDecision decideUndoStock(const ShopStock& stock, const std::string& intentId);

}  // namespace core::shop
