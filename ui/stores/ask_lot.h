#pragma once

// What is asked about a lot in the stores, and for a new delivery: one question after the other, in
// place. Each ends in one intent or in nothing.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// What may be done with that lot: count, move, take out, set apart, release, allow, use next.
void askLot(BenchContext& context, const Stock& of);

/// A delivery typed: what, its lot, doses and expiry, where, how many. What `known` has of lot and
/// expiry is not asked.
void askReceipt(BenchContext& context, const StoreReceived& known = {});

/// A place for something of that kind: one that is in use already, or a new one by its parts.
void askStockPlace(BenchContext& context, StockKind kind, const QString& title,
                   std::function<void(const std::string& place, const AnswerTap&)> answered);

}  // namespace bathside::ui
