#pragma once
// The intents that add to a job's record beside the work itself. Nothing is overwritten: a change is an act of its own,
// and the earlier text stays in the record.
#include <cstdint>
#include <string>
#include <vector>

namespace core::intents {

struct AddNote {
  std::string text;
  std::string step;  // "" for the job as a whole
};

struct ChangeNote {
  std::string note;
  std::string text;
};

struct RemoveNote {
  std::string note;
};

// A photograph whose file is already stored safely, with the properties read from the file.
struct KeepPhotograph {
  std::string hash;           // lower-case hex SHA-256 of its bytes
  std::int64_t bytes = 0;     // more than 0
  std::string type;           // "jpeg", "png" or "webp"
  int width = 0, height = 0;  // pixels, as stored
  std::string caption;        // "" for none
  std::string step;           // "" for the job as a whole
};

struct ChangeCaption {
  std::string photograph;
  std::string caption;
};

// The file stays: another job or an earlier state may show it.
struct RemovePhotograph {
  std::string photograph;
};

// Links the batches a finished step was worked with. A new list replaces the old one; an empty one takes it back.
struct LinkBatches {
  std::string step;
  std::vector<std::string> batches;
};

}  // namespace core::intents
