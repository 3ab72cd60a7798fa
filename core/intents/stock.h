#pragma once
// The intents on the shop's stock: sheets, leaf, size, paste and paint on hand, and batches made or opened on a date.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"

namespace core::intents {

// The direction in which fibres or a pattern run on a sheet.
enum class Runs { Unknown, AlongWidth, AlongHeight };

enum class StockKind { Board, Paper, Leaf, Size, Paste, Paint };
inline constexpr StockKind kStockKinds[] = {StockKind::Board, StockKind::Paper, StockKind::Leaf,
                                            StockKind::Size,  StockKind::Paste, StockKind::Paint};

// Sheets and leaves are counted; liquids and powders are measured by volume or by mass. One is never turned into the
// other: that would need a density nobody has entered.
enum class Measure { Pieces, Microlitres, Micrograms };

// Something on hand, as the maker enters it.
struct StockEntry {
  StockKind kind = StockKind::Board;
  // The name that jobs use: a paper's or board's name, a colour; for size methylCellulose, starch, water or oil.
  std::string name;
  Measure measure = Measure::Pieces;  // for sheets and leaf always pieces
  std::int64_t quantity = 0;
  std::int64_t perBook = 0;  // leaves in a book, 0 where not stated
  // Stated for sheets, and for leaf where known. Nothing else has a size.
  std::optional<units::Length> width, height;
  std::optional<units::Length> thickness;  // of board
  Runs fibres = Runs::Unknown;
  Runs pattern = Runs::Unknown;
  // The price of one sheet, one leaf, one litre or one kilogram.
  std::optional<units::Money> price;
  std::string currency;  // "" where not stated
  std::string note;

  friend bool operator==(const StockEntry&, const StockEntry&) = default;
};

struct EnterStock {
  StockEntry entry;
};

// Replaces the whole entry of an item.
struct CorrectStock {
  std::string item;
  StockEntry entry;
};

// Sets the quantity to what was counted or measured.
struct CountStock {
  std::string item;
  std::int64_t quantity = 0;
};

// Adds a quantity to the stock, or with a minus takes it out, however much is there.
struct MoveStock {
  std::string item;
  std::int64_t change = 0;
};

// The shop no longer stocks it at all.
struct RemoveStock {
  std::string item;
};

enum class BatchKind { Size, Paste, Adhesive, Paint, Other };
inline constexpr BatchKind kBatchKinds[] = {BatchKind::Size, BatchKind::Paste, BatchKind::Adhesive, BatchKind::Paint,
                                            BatchKind::Other};

// A jar or pot: made in the shop, or opened.
struct BatchEntry {
  BatchKind kind = BatchKind::Paste;
  std::string name;          // what is on its label: "starch paste 1 : 7"
  std::string of;            // its contents: type, grade, maker's lot; "" where not stated
  std::string technique;     // the id of the technique it was made by; "" for none
  bool opened = false;       // bought and opened; otherwise made
  std::int64_t madeUtc = 0;  // ms; made or opened
  std::optional<units::Duration> keeps;
  std::string keepsSource;  // who states it; "the maker" where the maker does. Required with `keeps`.
  std::string note;
};

struct EnterBatch {
  BatchEntry entry;
};

struct UseUpBatch {
  std::string batch;
};

// Names the person who works here and whom a client may ask, for the sheets that go with a piece.
struct NameMaker {
  std::string maker;
  std::string contact;  // "" for none
};

std::string_view name(StockKind kind);   // "board"
std::string_view name(Measure measure);  // "pieces"
std::string_view name(BatchKind kind);   // "size"

}  // namespace core::intents
