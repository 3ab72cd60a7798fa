#include "app/workbench/record_export.h"

#include <algorithm>

#include "core/base/json.h"

namespace app::workbench {

using core::base::Value;

std::string recordJson(const std::string& jobId, const std::vector<core::record::StoredText>& texts,
                       std::vector<core::record::Event> events) {
  std::sort(events.begin(), events.end(), core::record::before);
  Value textList = Value::array();
  for (const core::record::StoredText& text : texts) {
    Value item = Value::object();
    item.set("hash", Value::text(text.hash));
    item.set("kind", Value::text(text.kind));
    item.set("name", Value::text(text.name));
    item.set("body", Value::text(text.body));
    textList.append(std::move(item));
  }
  Value eventList = Value::array();
  for (const core::record::Event& event : events) eventList.append(core::record::eventJson(event));
  Value root = Value::object();
  root.set("format", Value::text("mountwright-record/1"));
  root.set("job", Value::text(jobId));
  root.set("texts", std::move(textList));
  root.set("events", std::move(eventList));
  return core::base::writeJson(root, 2) + "\n";
}

}  // namespace app::workbench
