#pragma once
// The port through which the record is stored. One implementation uses SQLite in the app, one memory in tests. Nothing
// above it knows how a record is stored, nor whether others write into it as well: new events are read by a cursor.
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

// A stream and the id of the event of it that was stored last. Every event that is added changes that id, even an event
// of another device that precedes all others in the order of the fold.
struct StreamHead {
  std::string stream;
  std::string arrived;
};

// A result computed from a stream that may be thrown away at any time: never part of the record. `stamp` identifies the
// input; a reader uses the summary only where the stamp is the one it would write itself.
struct Summary {
  std::string stream;
  std::string stamp;
  std::string body;
  std::string detail;  // the longer part, read apart from the rest
};

// The events stored after a cursor, and the cursor to continue from.
struct Feed {
  std::vector<Event> events;
  std::string cursor;
};

class EventStore {
 public:
  virtual ~EventStore() = default;

  // Appends all or none, durably: when this returns without an error the events survive kill -9. Events already there
  // (same event id) are skipped. Equal texts are stored once.
  virtual base::Result<Done, StoreError> append(const std::vector<Event>& events,
                                                const std::vector<StoredText>& texts) = 0;
  // Returns events in the order in which they were stored, no more than `most`; none where no event is new. "" is the
  // beginning; any other cursor is one that this store gave and means nothing to another store.
  virtual base::Result<Feed, StoreError> since(const std::string& cursor, std::size_t most) = 0;
  virtual base::Result<std::optional<StoredText>, StoreError> text(const std::string& hash) = 0;

  // The functions up to `position` have correct defaults for a store that has no index: they read the whole feed, so
  // they are slow, and they store no summaries. This one returns fold order.
  virtual base::Result<std::vector<Event>, StoreError> load(const std::string& stream);
  // Returns the streams in the order of their names.
  virtual base::Result<std::vector<std::string>, StoreError> streams();
  // Returns the head of every stream, in the order of `streams`.
  virtual base::Result<std::vector<StreamHead>, StoreError> heads();
  // Returns the event of that id, whatever its stream; nothing where there is none.
  virtual base::Result<std::optional<Event>, StoreError> find(const std::string& eventId);
  // Returns the id of the event that device wrote under that number, whatever its stream; "" where there is none.
  virtual base::Result<std::string, StoreError> written(const std::string& deviceId, std::int64_t deviceSequence);
  // Returns the intent id of the newest event a device wrote of a job or a bench, "" for none.
  virtual base::Result<std::string, StoreError> newestIntentOf(const std::string& deviceId);
  // Returns all summaries without their details.
  virtual base::Result<std::vector<Summary>, StoreError> summaries();
  // Returns streams and details alone.
  virtual base::Result<std::vector<Summary>, StoreError> summaryDetails();
  // Replaces the summaries of those streams; all or none.
  virtual base::Result<Done, StoreError> keepSummaries(const std::vector<Summary>& summaries);

  // The last sequence this device has written and the greatest clock of any device: new stamps continue from these.
  // Numbers above kLastOwnSequence and clocks that are not believable are left out, so that no event can block later
  // ones.
  struct Position {
    std::int64_t deviceSequence = 0;
    Hlc hlc;
  };
  virtual base::Result<Position, StoreError> position(const std::string& deviceId);

  // Logs heartbeats and clock jumps, which are not events. `kind`: "heartbeat", "jump", "zone", "wake".
  virtual base::Result<Done, StoreError> logClock(const std::string& deviceId, const std::string& kind,
                                                  const waits::ClockReading& reading) = 0;
  virtual base::Result<waits::ClockLog, StoreError> clockLog(const std::string& deviceId) = 0;
};

}  // namespace core::record
