#pragma once
#include <string>
#include <vector>

#include "core/record/event.h"
#include "core/record/event_store.h"

namespace app::workbench {

// "mountwright-record/1": texts by hash, then every event, in fold order; two spaces an indent, a final line end.
std::string recordJson(const std::string& jobId, const std::vector<core::record::StoredText>& texts,
                       std::vector<core::record::Event> events);

}  // namespace app::workbench
