#include "core/base/strict_reader.h"

#include "core/base/near.h"
#include "core/base/text.h"

namespace core::base {

void report(Problems& problems, const Node& node, Message message, Severity severity) {
  constexpr std::size_t kLongestQuote = 500;
  for (auto& [name, argument] : message.arguments) {
    auto* text = std::get_if<std::string>(&argument);
    if (text != nullptr && text->size() > kLongestQuote) *text = shownText(*text, Lines::Several, kLongestQuote);
  }
  Problem problem;
  problem.pointer = node.pointer;
  problem.message = std::move(message);
  problem.severity = severity;
  problem.order = node.value != nullptr ? node.value->order() : 0;
  problems.add(problem);
}

std::optional<std::string> readText(const Node& node, Problems& problems, std::size_t most) {
  if (!node) return std::nullopt;
  if (node.value->kind() != Value::Kind::Text) {
    report(problems, node, Message("read.expected-text"));
    return std::nullopt;
  }
  const std::string& text = node.value->asText();
  if (text.empty()) {
    report(problems, node, Message("read.empty-text"));
    return std::nullopt;
  }
  if (problems.source() == Source::Kept) return shownText(text, Lines::One, most);
  if (const auto point = controlCharacterIn(text)) {
    report(problems, node, Message("read.control-character").with("code", codePointName(*point)));
    return std::nullopt;
  }
  if (const std::size_t count = countCharacters(text); count > most) {
    report(problems, node,
           Message("read.text-too-long")
               .with("count", static_cast<std::int64_t>(count))
               .with("most", static_cast<std::int64_t>(most)));
    return std::nullopt;
  }
  return text;
}

std::optional<double> readNumber(const Node& node, Problems& problems, double least, double most) {
  if (!node) return std::nullopt;
  if (node.value->kind() != Value::Kind::Number) {
    report(problems, node, Message("read.expected-number"));
    return std::nullopt;
  }
  const double number = node.value->asNumber();
  if (number < least || number > most) {
    report(problems, node, Message("read.out-of-range").with("value", number).with("least", least).with("most", most));
    return std::nullopt;
  }
  return number;
}

std::optional<std::int64_t> readInteger(const Node& node, Problems& problems, std::int64_t least, std::int64_t most) {
  if (!node) return std::nullopt;
  if (!node.value->isInteger()) {
    report(problems, node, Message("read.expected-integer"));
    return std::nullopt;
  }
  const std::int64_t number = node.value->asInteger();
  if (number < least || number > most) {
    report(problems, node, Message("read.out-of-range").with("value", number).with("least", least).with("most", most));
    return std::nullopt;
  }
  return number;
}

std::optional<bool> readBoolean(const Node& node, Problems& problems) {
  if (!node) return std::nullopt;
  if (node.value->kind() != Value::Kind::Boolean) {
    report(problems, node, Message("read.expected-boolean"));
    return std::nullopt;
  }
  return node.value->asBoolean();
}

std::optional<std::size_t> readChoice(const Node& node, const std::vector<std::string>& words, Problems& problems) {
  if (!node) return std::nullopt;
  if (node.value->kind() != Value::Kind::Text) {
    report(problems, node, Message("read.expected-text"));
    return std::nullopt;
  }
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == node.value->asText()) return i;
  }
  report(problems, node,
         Message("read.unknown-word").with("word", node.value->asText()).with("words", join(words, ", ")));
  return std::nullopt;
}

std::optional<std::vector<Node>> readItems(const Node& node, Problems& problems, std::size_t most) {
  if (!node) return std::nullopt;
  if (node.value->kind() != Value::Kind::Array) {
    report(problems, node, Message("read.expected-list"));
    return std::nullopt;
  }
  if (const std::size_t count = node.value->items().size(); count > most) {
    report(problems, node,
           Message("read.too-many-items")
               .with("count", static_cast<std::int64_t>(count))
               .with("most", static_cast<std::int64_t>(most)));
    return std::nullopt;
  }
  std::vector<Node> nodes;
  for (std::size_t i = 0; i < node.value->items().size(); ++i) {
    nodes.push_back({&node.value->items()[i], pointerTo(node.pointer, i)});
  }
  return nodes;
}

ObjectReader::ObjectReader(Node node, Problems& problems) : m_node(std::move(node)), m_problems(problems) {
  if (!m_node) return;
  m_valid = m_node.value->kind() == Value::Kind::Object;
  if (!m_valid) report(m_problems, m_node, Message("read.expected-object"));
}

bool ObjectReader::has(std::string_view key) const { return m_valid && m_node.value->find(key) != nullptr; }

Node ObjectReader::required(std::string_view key) {
  Node node = optional(key);
  if (m_valid && !node) report(m_problems, m_node, Message("read.missing-key").with("key", std::string(key)));
  return node;
}

Node ObjectReader::optional(std::string_view key) {
  m_known.emplace(key);
  if (!m_valid) return {};
  const Value* value = m_node.value->find(key);
  if (value == nullptr) return {};
  return {value, pointerTo(m_node.pointer, key)};
}

void ObjectReader::finish() {
  if (!m_valid) return;
  for (const auto& [key, value] : m_node.value->members()) {
    if (m_known.contains(key)) continue;
    // Looking for the key that was meant takes time, which one that is only counted is not worth.
    const std::string meant = m_problems.isFull() ? "" : nearest(key, {m_known.begin(), m_known.end()});
    report(m_problems, {&value, pointerTo(m_node.pointer, key)},
           meant.empty() || has(meant) ? Message("read.unknown-key").with("key", key)
                                       : Message("read.unknown-key-near").with("key", key).with("near", meant));
  }
}

}  // namespace core::base
