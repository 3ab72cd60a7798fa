#pragma once
// The worked example with stock for its boards and its band, and prices for all but paint and labour.
#include "tests/support/worked_example.h"

namespace tests {

inline std::string stockedExample() {
  return changed(workedExample(), "\"package\":", R"("stock": [
    { "id": "board-15", "kind": "board", "width": "815 mm", "height": "1120 mm", "thickness": "1.5 mm", "grain": "height", "price": "18.50 GBP" },
    { "id": "board-20", "kind": "board", "width": "815 mm", "height": "1120 mm", "thickness": "2 mm", "grain": "height", "price": "21.35 GBP" },
    { "id": "wave-block-print", "kind": "paper", "width": "700 mm", "height": "500 mm", "grain": "width", "pattern": "width", "quantity": 2, "price": "6.20 GBP" }
  ],
  "prices": { "leaf": "0.45 GBP", "size": "38 GBP/l", "paste": "12 GBP/l" },
  "package":)");
}

}  // namespace tests
