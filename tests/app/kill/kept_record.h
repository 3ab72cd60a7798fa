#pragma once
// What lies in the record's file, read with plain SQL: nothing of the program under test is used to judge it.
#include <QString>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace kill_loop {

struct KeptAct {
  std::string intentId;
  std::vector<std::string> types;  // of its events, in the order of the device's count
};

struct KeptRecord {
  std::string integrity;                       // "ok"
  std::vector<KeptAct> acts;                   // in the order in which they were kept
  bool countHasNoGap = true;                   // the device's count runs 1, 2, 3, ...
  std::map<std::string, std::int64_t> doneAt;  // step -> boot-time nanoseconds of its newest StepDone
};

// A file without tables, or none, is an empty record. `error` is set where the file cannot be read.
KeptRecord readRecord(const QString& path, std::string& error);

}  // namespace kill_loop
