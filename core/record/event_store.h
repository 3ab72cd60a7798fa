#pragma once
// The port through which the record is kept. One implementation on SQLite in the app, one in memory for tests. Nothing
// above it knows how a record lies, nor whether others write into it as well: what came in is asked for by a cursor.
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/record/event.h"

namespace core::record {

struct StoredText {
  std::string hash;  // lower-case hex SHA-256 of the body's bytes
  std::string kind;  // "job" or "technique"
  std::string name;  // title or technique id
  std::string body;
};

using StoreError = base::Message;
struct Done {};

// A stream and the id of the event of it that came in last. Every event that is added makes that another one, also one
// of another device that goes before all others in the order of the fold.
struct StreamHead {
  std::string stream;
  std::string arrived;
};

// What was worked out from a stream and may be thrown away at any time: never part of the record. `stamp` says what it
// was worked out from; whoever reads it believes it only where that is what he would write himself.
struct Summary {
  std::string stream;
  std::string stamp;
  std::string body;
  std::string detail;  // the longer part, read apart from the rest
};

// What came in after a cursor, and where to go on from.
struct Feed {
  std::vector<Event> events;
  std::string cursor;
};

class EventStore {
 public:
  virtual ~EventStore() = default;

  // Appends all or none, durably: when this returns without an error the events survive kill -9. Events already
  // there (same event id) are skipped. Texts are kept once each.
  virtual base::Result<Done, StoreError> append(const std::vector<Event>& events,
                                                const std::vector<StoredText>& texts) = 0;
  // In the order in which they came in, no more than `most`; none where nothing came in since. "" is the beginning; any
  // other cursor is one that this store gave and means nothing to another store.
  virtual base::Result<Feed, StoreError> since(const std::string& cursor, std::size_t most) = 0;
  virtual base::Result<std::optional<StoredText>, StoreError> text(const std::string& hash) = 0;

  // Those up to `position` are right, if slow or forgetful, for a store that knows nothing better: they read the feed.
  // In fold order.
  virtual base::Result<std::vector<Event>, StoreError> load(const std::string& stream);
  // In the order of their names.
  virtual base::Result<std::vector<std::string>, StoreError> streams();
  // Of every stream, in the order of `streams`.
  virtual base::Result<std::vector<StreamHead>, StoreError> heads();
  // The event of that id, whatever its stream; nothing where there is none.
  virtual base::Result<std::optional<Event>, StoreError> find(const std::string& eventId);
  // The id of the event that device wrote under that number, whatever its stream; "" where there is none.
  virtual base::Result<std::string, StoreError> written(const std::string& deviceId, std::int64_t deviceSequence);
  // Intent id of the newest event a device wrote of a job or a bench, "" for none.
  virtual base::Result<std::string, StoreError> newestIntentOf(const std::string& deviceId);
  // Without their details.
  virtual base::Result<std::vector<Summary>, StoreError> summaries();
  // Streams and details alone.
  virtual base::Result<std::vector<Summary>, StoreError> summaryDetails();
  // Replaces what was kept of those streams; all or none.
  virtual base::Result<Done, StoreError> keepSummaries(const std::vector<Summary>& summaries);

  // The last sequence this device has written and the greatest clock anyone has: where stamps go on from. Numbers above
  // kLastOwnSequence and clocks that are not believable are left out, so that no event can block what comes after it.
  struct Position {
    std::int64_t deviceSequence = 0;
    Hlc hlc;
  };
  virtual base::Result<Position, StoreError> position(const std::string& deviceId);

  // Heartbeats and clock jumps; not events. `kind`: "heartbeat", "jump", "zone", "wake".
  virtual base::Result<Done, StoreError> logClock(const std::string& deviceId, const std::string& kind,
                                                  const waits::ClockReading& reading) = 0;
  virtual base::Result<waits::ClockLog, StoreError> clockLog(const std::string& deviceId) = 0;
};

}  // namespace core::record
