#include "core/craft/where_reader.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/properties.h"
#include "core/craft/reading.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

void checkValue(const std::string& property, const std::string& value, const Node& node, Problems& problems) {
  const auto values = valuesOf(property);
  if (values.empty() || std::find(values.begin(), values.end(), value) != values.end()) return;
  report(problems, node,
         Message("technique.unknown-value")
             .with("property", property)
             .with("value", value)
             .with("values", base::join(values, ", ")));
}

std::vector<std::string> readValues(const std::string& property, const Node& node, Problems& problems) {
  std::vector<std::string> values;
  if (node.value->kind() != base::Value::Kind::Array) {
    if (auto value = base::readText(node, problems)) {
      checkValue(property, *value, node, problems);
      values.push_back(*std::move(value));
    }
    return values;
  }
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return values;
  if (items->empty()) report(problems, node, Message("technique.empty-list"));
  for (const Node& item : *items) {
    if (auto value = base::readText(item, problems)) {
      checkValue(property, *value, item, problems);
      values.push_back(*std::move(value));
    }
  }
  return values;
}

}  // namespace

Where readWhere(const Node& node, std::optional<ThingKind> kind, Problems& problems) {
  return readWhere(node, kind, kind.value_or(ThingKind::Once), problems);
}

Where readWhere(const Node& node, std::optional<ThingKind> kind, ThingKind outer, Problems& problems) {
  Where where;
  if (!node) return where;
  ObjectReader object(node, problems);
  if (!object.valid() || !kind) return where;
  const auto known = propertiesOf(*kind, outer);
  for (const auto& [key, value] : node.value->members()) {
    const Node member{&value, base::pointerTo(node.pointer, key)};
    if (std::find(known.begin(), known.end(), key) == known.end()) {
      report(problems, member,
             Message("technique.unknown-property")
                 .with("property", key)
                 .with("kind", std::string(name(*kind)))
                 .with("words", base::join(known, ", ")));
      continue;
    }
    where[key] = readValues(key, member, problems);
  }
  return where;
}

}  // namespace core::craft
