#include "core/base/long_json.h"

#include <charconv>
#include <cmath>
#include <optional>
#include <set>

#include <nlohmann/json.hpp>

#include "core/base/check.h"
#include "core/base/text.h"

namespace core::base {

Value Value::boolean(bool value) {
  Value result;
  result.m_kind = Kind::Boolean;
  result.m_boolean = value;
  return result;
}

Value Value::number(double value) {
  ENSURE(std::isfinite(value));
  Value result;
  result.m_kind = Kind::Number;
  result.m_number = value == 0 ? 0.0 : value;
  return result;
}

Value Value::integer(std::int64_t value) {
  Value result;
  result.m_kind = Kind::Number;
  result.m_isInteger = true;
  result.m_integer = value;
  result.m_number = static_cast<double>(value);
  return result;
}

Value Value::text(std::string_view value) {
  Value result;
  result.m_kind = Kind::Text;
  result.m_text = std::string(value);
  return result;
}

Value Value::array() {
  Value result;
  result.m_kind = Kind::Array;
  return result;
}

Value Value::object() {
  Value result;
  result.m_kind = Kind::Object;
  return result;
}

Value Value::texts(const std::vector<std::string>& values) {
  Value result = array();
  for (const std::string& value : values) result.append(text(value));
  return result;
}

bool Value::asBoolean() const {
  ENSURE(m_kind == Kind::Boolean);
  return m_boolean;
}

double Value::asNumber() const {
  ENSURE(m_kind == Kind::Number);
  return m_number;
}

std::int64_t Value::asInteger() const {
  ENSURE(isInteger());
  return m_integer;
}

const std::string& Value::asText() const& {
  ENSURE(m_kind == Kind::Text);
  return m_text;
}

const std::vector<Value>& Value::items() const& {
  ENSURE(m_kind == Kind::Array);
  return m_items;
}

const std::vector<Value::Member>& Value::members() const& {
  ENSURE(m_kind == Kind::Object);
  return m_members;
}

const Value* Value::find(std::string_view key) const& {
  for (const auto& [name, member] : m_members) {
    if (name == key) return &member;
  }
  return nullptr;
}

Value& Value::append(Value item) {
  ENSURE(m_kind == Kind::Array);
  m_items.push_back(std::move(item));
  return *this;
}

Value& Value::set(std::string_view key, Value member) {
  ENSURE(m_kind == Kind::Object);
  for (auto& [name, present] : m_members) {
    if (name == key) {
      present = std::move(member);
      return *this;
    }
  }
  m_members.emplace_back(std::string(key), std::move(member));
  return *this;
}

Value& Value::setNew(std::string_view key, Value member) {
  ENSURE(m_kind == Kind::Object);
  m_members.emplace_back(std::string(key), std::move(member));
  return *this;
}

namespace {

// Builds values from the library's events. The library's own tree would drop a repeated key and forget
// positions; its event interface shows both.
class Builder {
 public:
  explicit Builder(std::string_view text) : m_text(text) {}

  bool null() { return put(Value()); }
  bool boolean(bool value) { return put(Value::boolean(value)); }
  bool number_integer(std::int64_t value) { return put(Value::integer(value)); }
  bool number_unsigned(std::uint64_t value) {
    if (value > static_cast<std::uint64_t>(INT64_MAX)) return put(Value::number(static_cast<double>(value)));
    return put(Value::integer(static_cast<std::int64_t>(value)));
  }
  bool number_float(double value, const std::string&) { return put(Value::number(value)); }
  bool string(std::string& value) { return put(Value::text(value)); }
  bool binary(nlohmann::json::binary_t&) { return false; }
  bool start_object(std::size_t) { return open(Value::object()); }
  bool start_array(std::size_t) { return open(Value::array()); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }

  bool key(std::string& name) {
    Open& open = m_open.back();
    if (name.size() > kMaximumJsonKeyBytes) return refuse("json.key-too-long", kMaximumJsonKeyBytes);
    open.key = name;
    open.isRepeat = !open.seen.insert(name).second;
    return open.seen.size() <= kMaximumJsonKeys || refuse("json.too-many-keys", kMaximumJsonKeys);
  }

  bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& error) {
    // The library counts the byte it stumbled over as read, so the place is one before.
    const bool tooLarge = error.id == 406;
    fail(Message(tooLarge ? "json.number-too-large" : "json.syntax"), position > 0 ? position - 1 : 0);
    return false;
  }

  ParsedJson brokenOffAt(std::size_t position) {
    fail(Message("json.syntax"), position);
    return finish(false);
  }

  ParsedJson ofNothing() {
    fail(Message("json.empty"), 0);
    return finish(false);
  }

  ParsedJson inEncoding(const char* encoding) {
    fail(Message("json.encoding").with("encoding", std::string(encoding)), 0);
    return finish(false);
  }

  ParsedJson finish(bool complete) {
    ParsedJson parsed;
    parsed.readable = complete && !m_failed;
    if (parsed.readable) {
      parsed.root = std::move(m_root);
      parsed.problems = std::move(m_problems);
    } else {
      parsed.problems.add(m_failure);
    }
    return parsed;
  }

 private:
  struct Open {
    Value value;
    std::string pointer;
    std::string key;
    bool isRepeat = false;
    std::set<std::string> seen;
  };

  std::string place() const {
    if (m_open.empty()) return "";
    const Open& open = m_open.back();
    return open.value.kind() == Value::Kind::Object ? pointerTo(open.pointer, open.key)
                                                    : pointerTo(open.pointer, open.value.items().size());
  }

  bool put(Value value) {
    if (!count(value)) return false;
    return attach(std::move(value));
  }

  bool attach(Value value) {
    if (m_open.empty()) {
      m_root = std::move(value);
      return true;
    }
    Open& open = m_open.back();
    if (open.value.kind() == Value::Kind::Array) {
      open.value.append(std::move(value));
    } else if (open.isRepeat) {
      Problem problem;
      problem.pointer = pointerTo(open.pointer, open.key);
      problem.message = Message("json.key-twice").with("key", open.key);
      problem.order = value.order();
      m_problems.add(problem);
    } else {
      open.value.setNew(open.key, std::move(value));
    }
    return true;
  }

  bool open(Value value) {
    if (m_open.size() >= kMaximumJsonDepth) {
      fail(Message("json.too-deep").with("limit", static_cast<std::int64_t>(kMaximumJsonDepth)), depthOffset());
      return false;
    }
    if (!count(value)) return false;
    Open next;
    next.pointer = place();
    next.value = std::move(value);
    m_open.push_back(std::move(next));
    return true;
  }

  bool count(Value& value) {
    value.setOrder(m_next++);
    if (m_next <= kMaximumJsonValues) return true;
    if (!m_failed) m_failure.message = Message("json.too-many-values").with("limit", limitOf(kMaximumJsonValues));
    m_failed = true;
    return false;
  }

  // A limit passed within the object that is open.
  bool refuse(const char* id, std::size_t limit) {
    m_failed = true;
    m_failure.message = Message(id).with("limit", limitOf(limit));
    m_failure.pointer = m_open.back().pointer;
    m_failure.order = m_open.back().value.order();
    return false;
  }

  static std::int64_t limitOf(std::size_t limit) { return static_cast<std::int64_t>(limit); }

  bool close() {
    Value value = std::move(m_open.back().value);
    m_open.pop_back();
    return attach(std::move(value));
  }

  // The byte at which nesting first passes the limit: brackets outside strings are counted again, since the
  // event interface does not tell where it stands.
  std::size_t depthOffset() const {
    std::size_t depth = 0;
    bool quoted = false;
    for (std::size_t i = 0; i < m_text.size(); ++i) {
      const char c = m_text[i];
      if (quoted) {
        if (c == '\\') ++i;
        if (c == '"') quoted = false;
      } else if (c == '"') {
        quoted = true;
      } else if (c == '{' || c == '[') {
        if (++depth > kMaximumJsonDepth) return i;
      } else if (c == '}' || c == ']') {
        --depth;
      }
    }
    return 0;
  }

  void fail(Message message, std::size_t offset) {
    if (m_failed) return;
    m_failed = true;
    const LineColumn at = lineColumnAt(m_text, offset);
    m_failure.message = std::move(message);
    m_failure.line = at.line;
    m_failure.column = at.column;
  }

  std::string_view m_text;
  Value m_root;
  std::vector<Open> m_open;
  Problems m_problems;
  Problem m_failure;
  bool m_failed = false;
  std::size_t m_next = 0;
};

void write(const Value& value, int indent, int depth, std::string& out) {
  const auto newLine = [&](int level) {
    if (indent == 0) return;
    out += '\n';
    out.append(static_cast<std::size_t>(indent * level), ' ');
  };
  switch (value.kind()) {
    case Value::Kind::Null: out += "null"; return;
    case Value::Kind::Boolean: out += value.asBoolean() ? "true" : "false"; return;
    case Value::Kind::Number:
      out += value.isInteger() ? std::to_string(value.asInteger()) : shortestNumber(value.asNumber());
      return;
    case Value::Kind::Text:
      out += nlohmann::json(value.asText()).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
      return;
    case Value::Kind::Array:
      out += '[';
      for (std::size_t i = 0; i < value.items().size(); ++i) {
        if (i > 0) out += indent == 0 ? ", " : ",";
        newLine(depth + 1);
        write(value.items()[i], indent, depth + 1, out);
      }
      if (!value.items().empty()) newLine(depth);
      out += ']';
      return;
    case Value::Kind::Object:
      out += '{';
      for (std::size_t i = 0; i < value.members().size(); ++i) {
        if (i > 0) out += indent == 0 ? ", " : ",";
        newLine(depth + 1);
        out += nlohmann::json(value.members()[i].first).dump() + ": ";
        write(value.members()[i].second, indent, depth + 1, out);
      }
      if (!value.members().empty()) newLine(depth);
      out += '}';
      return;
  }
}

// A step of a pointer, in its escaped form.
std::string unescaped(std::string_view step) {
  std::string key;
  for (std::size_t i = 0; i < step.size(); ++i) {
    const bool escape = step[i] == '~' && i + 1 < step.size();
    key += !escape ? step[i] : step[i + 1] == '1' ? '/' : '~';
    if (escape) ++i;
  }
  return key;
}

const Value* stepInto(const Value& value, std::string_view step) {
  if (value.kind() == Value::Kind::Object) return value.find(unescaped(step));
  if (value.kind() != Value::Kind::Array) return nullptr;
  std::size_t index = 0;
  const auto [end, error] = std::from_chars(step.data(), step.data() + step.size(), index);
  const bool whole = error == std::errc() && end == step.data() + step.size();
  return whole && index < value.items().size() ? &value.items()[index] : nullptr;
}

// The encoding a text is in, where it is another than UTF-8: by its byte order mark, or without one by the zeros beside
// its first two letters, which are of ASCII in every object and list (RFC 4627, section 3).
const char* otherEncoding(std::string_view text) {
  using namespace std::string_view_literals;
  const auto begins = [&](std::string_view mark) { return startsWith(text, mark); };
  // The mark of UTF-16 is the beginning of that of UTF-32.
  if (begins("\xFF\xFE\0\0"sv) || begins("\0\0\xFE\xFF"sv)) return "UTF-32";
  if (begins("\xFF\xFE"sv) || begins("\xFE\xFF"sv)) return "UTF-16";
  if (text.size() < 4) return nullptr;
  const bool zero[] = {text[0] == 0, text[1] == 0, text[2] == 0, text[3] == 0};
  if (zero[0] != zero[1] && zero[2] == zero[0] && zero[3] == zero[1]) return "UTF-16";
  if (zero[2] && ((zero[0] && zero[1]) || (zero[1] && zero[3])) && !(zero[0] && zero[3])) return "UTF-32";
  return nullptr;
}

}  // namespace

ParsedJson parseJson(std::string_view text) { return parseJson(text, kMaximumJsonBytes); }

ParsedJson parseJson(std::string_view text, std::size_t most) {
  ParsedJson parsed;
  if (text.size() > most) {
    Problem problem;
    problem.message = Message("json.too-large").with("limit", static_cast<std::int64_t>(most / 1024));
    parsed.problems.add(problem);
    return parsed;
  }
  if (const char* encoding = otherEncoding(text)) return Builder(text).inEncoding(encoding);
  Builder builder(text);
  // White space as JSON has it.
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return builder.ofNothing();
  const bool complete = nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
  // The library takes a zero byte for the end of the text, and what stands behind it for nothing.
  const std::size_t zero = text.find('\0');
  if (complete && zero != std::string_view::npos) return builder.brokenOffAt(zero);
  return builder.finish(complete);
}

std::string writeJson(const Value& value, int indent) {
  std::string out;
  write(value, indent, 0, out);
  return out;
}

const Value* at(const Value& root, std::string_view pointer) {
  const Value* found = &root;
  while (found != nullptr && !pointer.empty()) {
    if (pointer.front() != '/') return nullptr;
    pointer.remove_prefix(1);
    const std::string_view step = pointer.substr(0, pointer.find('/'));
    pointer.remove_prefix(step.size());
    found = stepInto(*found, step);
  }
  return found;
}

namespace {

using Library = nlohmann::ordered_json;

Library toLibrary(const Value& value) {
  switch (value.kind()) {
    case Value::Kind::Null: return nullptr;
    case Value::Kind::Boolean: return value.asBoolean();
    case Value::Kind::Number: return value.isInteger() ? Library(value.asInteger()) : Library(value.asNumber());
    case Value::Kind::Text: return value.asText();
    case Value::Kind::Array: {
      Library array = Library::array();
      for (const Value& item : value.items()) array.push_back(toLibrary(item));
      return array;
    }
    case Value::Kind::Object: {
      Library object = Library::object();
      for (const auto& [key, member] : value.members()) object[key] = toLibrary(member);
      return object;
    }
  }
  return nullptr;
}

// Back from the library, within the limits of a document.
class FromLibrary {
 public:
  std::optional<Value> run(const Library& json) {
    Value value = convert(json, 0);
    return m_bytes <= kMaximumJsonBytes && !m_tooDeep ? std::optional(std::move(value)) : std::nullopt;
  }

 private:
  Value convert(const Library& json, std::size_t depth) {
    // What a value and its mark of separation take at the least.
    m_bytes += 2;
    m_tooDeep = m_tooDeep || depth > kMaximumJsonDepth;
    if (m_tooDeep) return {};
    switch (json.type()) {
      case Library::value_t::boolean: return Value::boolean(json.get<bool>());
      case Library::value_t::number_integer:
      case Library::value_t::number_unsigned: return Value::integer(json.get<std::int64_t>());
      case Library::value_t::number_float: return Value::number(json.get<double>());
      case Library::value_t::string: m_bytes += json.get_ref<const std::string&>().size(); return textOf(json);
      case Library::value_t::array: {
        Value array = Value::array();
        for (const Library& item : json) array.append(convert(item, depth + 1));
        return array;
      }
      case Library::value_t::object: {
        Value object = Value::object();
        for (const auto& [key, member] : json.items()) {
          m_bytes += key.size();
          object.setNew(key, convert(member, depth + 1));
        }
        return object;
      }
      default: return {};
    }
  }

  static Value textOf(const Library& json) { return Value::text(json.get_ref<const std::string&>()); }

  std::size_t m_bytes = 0;
  bool m_tooDeep = false;
};

}  // namespace

Result<Value, Message> patched(const Value& document, const Value& patch) {
  try {
    auto changed = FromLibrary().run(toLibrary(document).patch(toLibrary(patch)));
    if (!changed) return Message("json.patch");
    return *std::move(changed);
  } catch (const Library::exception&) {
    // The library's words name its own ways of failing, which help nobody: a patch is the program's own or it is
    // spoilt.
    return Message("json.patch");
  }
}

std::string pointerTo(std::string_view parent, std::string_view key) {
  std::string escaped = replaceAll(std::string(key), "~", "~0");
  return std::string(parent) + '/' + replaceAll(std::move(escaped), "/", "~1");
}

std::string pointerTo(std::string_view parent, std::size_t index) {
  return std::string(parent) + '/' + std::to_string(index);
}

}  // namespace core::base
