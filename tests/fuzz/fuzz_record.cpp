// Files of jobs handed on: whatever is read, what is good is written again to the same file and folds to the same
// however often it is taken in; what is not is told.
#include <cstdint>
#include <string>

#include "core/base/check.h"
#include "core/jobs/job_state.h"
#include "core/record/counting.h"
#include "core/record/record_file.h"
#include "core/shop/shop_print.h"

using namespace core;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const record::ReadRecord read = record::readRecord(text);
  ENSURE(read.record.has_value() != read.problems.hasErrors());
  if (!read.record) return 0;
  const std::string written = record::writeRecord(*read.record);
  const record::ReadRecord again = record::readRecord(written);
  // Only a limit of size or depth can keep it out now: it was indented otherwise.
  if (!again.record) return 0;
  ENSURE(record::writeRecord(*again.record) == written);
  const shop::ShopPrint print(read.record->events);
  ENSURE(print.whole() == shop::ShopPrint(again.record->events).whole());
  for (const record::Event& event : read.record->events) (void)print.upTo(event.hlc);
  (void)record::benchEventsOf(read.record->events, read.record->events, {"paste"});
  return 0;
}
