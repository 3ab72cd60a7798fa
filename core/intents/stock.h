#pragma once
// What can be asked about what the shop has: sheets, leaf, size, paste and paint on hand, and batches made or opened on
// a date.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"

namespace core::intents {

// Which way fibres or a pattern run on a sheet.
enum class Runs { Unknown, AlongWidth, AlongHeight };

enum class StockKind { Board, Paper, Leaf, Size, Paste, Paint };
inline constexpr StockKind kStockKinds[] = {StockKind::Board, StockKind::Paper, StockKind::Leaf,
                                            StockKind::Size,  StockKind::Paste, StockKind::Paint};

// Sheets and leaves are counted; what is poured or spooned is measured by volume or by mass. One is never turned into
// the other: that would take a density nobody has entered.
enum class Measure { Pieces, Microlitres, Micrograms };

// Something on hand, as the maker enters it.
struct StockEntry {
  StockKind kind = StockKind::Board;
  // What jobs call it: a paper's or board's name, a colour; of size methylCellulose, starch, water or oil.
  std::string name;
  Measure measure = Measure::Pieces;  // of sheets and leaf always pieces
  std::int64_t quantity = 0;
  std::int64_t perBook = 0;  // leaves in a book, 0 where not said
  // Of sheets; of leaf where known. Nothing else has a size.
  std::optional<units::Length> width, height;
  std::optional<units::Length> thickness;  // of board
  Runs fibres = Runs::Unknown;
  Runs pattern = Runs::Unknown;
  // Of one sheet, one leaf, one litre or one kilogram.
  std::optional<units::Money> price;
  std::string currency;  // "" unsaid
  std::string note;

  friend bool operator==(const StockEntry&, const StockEntry&) = default;
};

struct EnterStock {
  StockEntry entry;
};

// Everything said of it is said again.
struct CorrectStock {
  std::string item;
  StockEntry entry;
};

// So much is there now, counted or measured.
struct CountStock {
  std::string item;
  std::int64_t quantity = 0;
};

// So much came in, or with a minus was taken out, however much is there.
struct MoveStock {
  std::string item;
  std::int64_t change = 0;
};

// It is no longer kept at all.
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
  std::string of;            // what it is of: type, grade, maker's lot; "" unsaid
  std::string technique;     // it was made by, by id; "" for none
  bool opened = false;       // a bought one; otherwise made
  std::int64_t madeUtc = 0;  // ms; made or opened
  std::optional<units::Duration> keeps;
  std::string keepsSource;  // who says so; "the maker" where the maker does. Required with `keeps`.
  std::string note;
};

struct EnterBatch {
  BatchEntry entry;
};

struct UseUpBatch {
  std::string batch;
};

// Who works here and whom a client may ask: stands on the sheets that go with a piece.
struct NameMaker {
  std::string maker;
  std::string contact;  // "" for none
};

std::string_view name(StockKind kind);   // "board"
std::string_view name(Measure measure);  // "pieces"
std::string_view name(BatchKind kind);   // "size"

}  // namespace core::intents
