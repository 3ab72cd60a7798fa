#pragma once
// Events of the shop: the room, this bench's settings, sheets cut up, stock and batches. All are in a bench's stream.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/intents/intent.h"
#include "core/record/event_traits.h"

namespace core::record {

// Values are written as a person would ("21 C", "55 %") and read by the same strict reader as a job's.
struct RoomEntered {
  static constexpr const char* kType = "RoomEntered";
  static constexpr Traits kTraits{.streams = kOfBench};
  std::string temperature;
  std::string humidity;
  std::string by;  // "sensor" or "maker"
  static void fields(auto& self, auto& field) {
    field("temperature", self.temperature);
    field("humidity", self.humidity);
    field("by", self.by);
  }
};

struct SensorChosen {
  static constexpr const char* kType = "SensorChosen";
  static constexpr Traits kTraits{.streams = kOfBench};
  std::string folder;  // "" for none
  static void fields(auto& self, auto& field) { field("folder", self.folder); }
};

struct SettingChosen {
  static constexpr const char* kType = "SettingChosen";
  static constexpr Traits kTraits{.streams = kOfBench};
  std::string what;
  std::string value;
  static void fields(auto& self, auto& field) {
    field("what", self.what);
    field("value", self.value);
  }
};

struct OffTimeTold {
  static constexpr const char* kType = "OffTimeTold";
  static constexpr Traits kTraits{.streams = kOfBench};
  std::string boot;
  std::optional<std::int64_t> milliseconds;
  static void fields(auto& self, auto& field) {
    field("boot", self.boot);
    field("milliseconds", self.milliseconds);
  }
};

// One sheet or offcut was cut up. The record of the job it was cut for shows it.
struct SheetCut {
  static constexpr const char* kType = "SheetCut";
  static constexpr Traits kTraits{
      .streams = kOfBench, .undo = Undo::Possible, .kind = TimelineKind::Cut, .told = "timeline.cut-sheet"};
  struct Pieces {
    std::string id;  // of the cutting list
    std::int64_t count = 0;
    static void fields(auto& self, auto& field) {
      field("id", self.id);
      field("count", self.count);
    }
  };
  // An offcut's id is this event's id with its index here.
  struct Kept {
    std::int64_t mark = 0;
    std::optional<intents::Offcut> piece;  // nothing where it cannot be read or cannot be
    static void fields(auto& self, auto& field) {
      field("mark", self.mark);
      field.flat(self.piece);
    }
  };
  std::string job;
  std::string stock;   // of the job, by id; "" where an offcut was cut
  std::string offcut;  // or the offcut, by id
  std::vector<Pieces> pieces;
  std::vector<Kept> kept;
  static void fields(auto& self, auto& field) {
    field("job", self.job);
    field.unlessEmpty("stock", self.stock);
    field.unlessEmpty("offcut", self.offcut);
    field("pieces", self.pieces);
    field("kept", self.kept);
  }
};

struct OffcutDropped {
  static constexpr const char* kType = "OffcutDropped";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string offcut;
  static void fields(auto& self, auto& field) { field("offcut", self.offcut); }
};

// This event's id is the item's id. An entry that cannot be read, or that would have been refused, is null.
struct StockEntered {
  static constexpr const char* kType = "StockEntered";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::optional<intents::StockEntry> entry;
  static void fields(auto& self, auto& field) { field.flat(self.entry); }
};

struct StockCorrected {
  static constexpr const char* kType = "StockCorrected";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string item;
  std::optional<intents::StockEntry> entry;
  static void fields(auto& self, auto& field) {
    field("item", self.item);
    field.flat(self.entry);
  }
};

struct StockCounted {
  static constexpr const char* kType = "StockCounted";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string item;
  std::optional<std::int64_t> quantity;
  static void fields(auto& self, auto& field) {
    field("item", self.item);
    field("quantity", self.quantity);
  }
};

struct StockMoved {
  static constexpr const char* kType = "StockMoved";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string item;
  std::optional<std::int64_t> change;
  static void fields(auto& self, auto& field) {
    field("item", self.item);
    field("change", self.change);
  }
};

struct StockRemoved {
  static constexpr const char* kType = "StockRemoved";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string item;
  static void fields(auto& self, auto& field) { field("item", self.item); }
};

// This event's id is the batch's id; `mark` is what the maker writes on the jar.
struct BatchEntered {
  static constexpr const char* kType = "BatchEntered";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::int64_t mark = 0;
  std::optional<intents::BatchEntry> entry;
  static void fields(auto& self, auto& field) {
    field("mark", self.mark);
    field.flat(self.entry);
  }
};

struct BatchCorrected {
  static constexpr const char* kType = "BatchCorrected";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string batch;
  std::optional<intents::BatchEntry> entry;
  static void fields(auto& self, auto& field) {
    field("batch", self.batch);
    field.flat(self.entry);
  }
};

struct BatchUsedUp {
  static constexpr const char* kType = "BatchUsedUp";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string batch;
  static void fields(auto& self, auto& field) { field("batch", self.batch); }
};

struct MakerNamed {
  static constexpr const char* kType = "MakerNamed";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::string maker;
  std::string contact;  // "" for none
  static void fields(auto& self, auto& field) {
    field("maker", self.maker);
    field.unlessEmpty("contact", self.contact);
  }
};

// A material looks so from here on. A look that cannot be read, or that would have been refused, is null.
struct AppearanceGiven {
  static constexpr const char* kType = "AppearanceGiven";
  static constexpr Traits kTraits{.streams = kOfBench, .undo = Undo::Possible};
  std::optional<intents::Appearance> appearance;
  static void fields(auto& self, auto& field) { field.flat(self.appearance); }
};

using ShopEvents = EventTypes<RoomEntered, SensorChosen, SettingChosen, OffTimeTold, SheetCut, OffcutDropped,
                              StockEntered, StockCorrected, StockCounted, StockMoved, StockRemoved, BatchEntered,
                              BatchCorrected, BatchUsedUp, MakerNamed, AppearanceGiven>;

}  // namespace core::record
