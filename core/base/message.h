#pragma once
// A message of the core to a person: the id of a message and its arguments, never prose. The words are in the app's
// catalogue, where a translator reaches them, and are filled in by name ("{by}").
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace core::base {

// A length on its way into a sentence, in millimetres. Shown to 0.1 mm or the nearest 1/32 in.
struct Millimetres {
  double value = 0;
  friend bool operator==(const Millimetres&, const Millimetres&) = default;
};

// A stretch of time of which the least, the likely and the most are known, in ms.
struct Stretch {
  std::int64_t least = 0, likely = 0, most = 0;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

using Argument = std::variant<std::string, std::int64_t, double, Millimetres, Stretch>;

struct Message {
  std::string id;
  std::vector<std::pair<std::string, Argument>> arguments;

  Message() = default;
  explicit Message(std::string_view messageId) : id(messageId) {}

  // By value: a reference to the message itself, moved into the same message, would empty it.
  [[nodiscard]] Message with(std::string_view name, Argument value) &&;
  // Returns the argument of that name, or null.
  const Argument* argument(std::string_view name) const;

  friend bool operator==(const Message&, const Message&) = default;
};

// Returns one line for logs and tests: "id name=value name=value". It is not shown to people.
std::string dump(const Message& message);

}  // namespace core::base
