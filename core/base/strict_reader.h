#pragma once
// Strict reading of JSON objects: every key is asked for by name, and what was not asked for is a problem.
// Used by every reader of the project, so that jobs, techniques and settings fail in the same words.
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/json.h"

namespace core::base {

// A value and its place.
struct Node {
  const Value* value = nullptr;
  std::string pointer;

  explicit operator bool() const { return value != nullptr; }
};

// The longest text a maker names something with, in characters.
inline constexpr std::size_t kLongestName = 200;

// Adds an error at a node. Quoted text in the message is shortened, so that no file can blow it up.
void report(Problems& problems, const Node& node, Message message, Severity severity = Severity::Error);

// Each returns the value, or reports the wrong kind at its place and returns nothing. The text must not be empty, hold
// control characters or be longer than `most` characters. In a text that is recorded already, control characters are
// replaced, and one that is too long is shortened.
std::optional<std::string> readText(const Node& node, Problems& problems, std::size_t most = kLongestName);
std::optional<double> readNumber(const Node& node, Problems& problems, double least, double most);
std::optional<std::int64_t> readInteger(const Node& node, Problems& problems, std::int64_t least, std::int64_t most);
std::optional<bool> readBoolean(const Node& node, Problems& problems);
// Reads one of the words and returns its index.
std::optional<std::size_t> readChoice(const Node& node, const std::vector<std::string>& words, Problems& problems);
// Returns the items of an array; nothing where it is no array or holds more than `most`, which is reported with both
// numbers.
std::optional<std::vector<Node>> readItems(const Node& node, Problems& problems, std::size_t most);

class ObjectReader {
 public:
  // Reports at once where the node is no object; valid() then returns false.
  ObjectReader(Node node, Problems& problems);

  bool valid() const { return m_valid; }
  const Node& node() const { return m_node; }
  bool has(std::string_view key) const;
  // Returns the member; a missing one is reported at the parent.
  Node required(std::string_view key);
  // Returns the member or an empty node.
  Node optional(std::string_view key);
  // Reports every key that was not asked for. Call once, after all keys are asked for.
  void finish();

 private:
  Node m_node;
  Problems& m_problems;
  bool m_valid = false;
  std::set<std::string, std::less<>> m_known;
};

}  // namespace core::base
