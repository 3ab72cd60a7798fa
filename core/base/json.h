#pragma once
// JSON (RFC 8259) as data: read strictly, written deterministically. This is the only file of the project
// whose implementation sees the JSON library; nothing of it leaks through this header.
//
// Reading keeps keys in the order of the document and remembers each value's position, so that problems can be reported
// in document order. It notices a key given twice, which the library alone would swallow.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/problem.h"
#include "core/base/result.h"

namespace core::base {

class Value {
 public:
  enum class Kind { Null, Boolean, Number, Text, Array, Object };
  using Member = std::pair<std::string, Value>;

  Value() = default;
  static Value boolean(bool value);
  // Requires a finite number.
  static Value number(double value);
  // Exact for the whole int64 range.
  static Value integer(std::int64_t value);
  static Value text(std::string_view value);
  static Value array();
  static Value object();
  static Value texts(const std::vector<std::string>& values);

  Kind kind() const { return m_kind; }
  bool isNull() const { return m_kind == Kind::Null; }
  // The accessors require the kind they name.
  bool asBoolean() const;
  double asNumber() const;
  // Requires a number given as an integer.
  std::int64_t asInteger() const;
  bool isInteger() const { return m_kind == Kind::Number && m_isInteger; }
  const std::string& asText() const&;
  const std::vector<Value>& items() const&;
  const std::vector<Member>& members() const&;
  // Returns the member of that key, or null; null also where this is no object.
  const Value* find(std::string_view key) const&;
  // Deleted because the parts of a temporary value would be gone when they are read.
  const std::string& asText() const&& = delete;
  const std::vector<Value>& items() const&& = delete;
  const std::vector<Member>& members() const&& = delete;
  const Value* find(std::string_view key) const&& = delete;

  // Building. append and set require an array, an object.
  Value& append(Value item);
  Value& set(std::string_view key, Value member);
  // Does as set for a key that is known not to be there yet, without searching for it.
  Value& setNew(std::string_view key, Value member);

  // Position in the document, counted in values from the root (0). 0 for values built in memory.
  std::size_t order() const { return m_order; }
  void setOrder(std::size_t order) { m_order = order; }

 private:
  Kind m_kind = Kind::Null;
  bool m_boolean = false;
  bool m_isInteger = false;
  double m_number = 0;
  std::int64_t m_integer = 0;
  std::string m_text;
  std::vector<Value> m_items;
  std::vector<Member> m_members;
  std::size_t m_order = 0;
};

// Limits that keep a hostile file from costing memory or stack.
inline constexpr std::size_t kMaximumJsonBytes = 4U * 1024U * 1024U;
inline constexpr std::size_t kMaximumJsonDepth = 64;
inline constexpr std::size_t kMaximumJsonValues = 500'000;
inline constexpr std::size_t kMaximumJsonKeys = 1000;     // of one object, which are searched one after another
inline constexpr std::size_t kMaximumJsonKeyBytes = 200;  // of one key

struct ParsedJson {
  Value root;
  // A syntax error (one, with line and column), a limit passed (one, at its place) or keys given twice. Where
  // `readable` is false the root is null.
  Problems problems;
  bool readable = false;
};

ParsedJson parseJson(std::string_view text);

// Deterministic text: keys in the order they were set, numbers shortest round-trip, "\n" line ends, no
// trailing line end. `indent` 0 gives one line.
std::string writeJson(const Value& value, int indent);

// The value at a JSON pointer (RFC 6901); null where there is none or the pointer is none.
const Value* at(const Value& root, std::string_view pointer);

// Returns a document with a JSON Patch (RFC 6902) applied to it, all of it or nothing. Members keep their order, new
// ones come last. Error: json.patch, where it is no patch, does not apply, or leaves a document beyond the limits
// above.
Result<Value, Message> patched(const Value& document, const Value& patch);

// One step further down a JSON pointer; escapes "~" and "/" as RFC 6901 asks.
std::string pointerTo(std::string_view parent, std::string_view key);
std::string pointerTo(std::string_view parent, std::size_t index);

}  // namespace core::base
