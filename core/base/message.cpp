#include "core/base/message.h"

#include "core/base/text.h"

namespace core::base {

Message Message::with(std::string_view name, Argument value) && {
  arguments.emplace_back(std::string(name), std::move(value));
  return std::move(*this);
}

const Argument* Message::argument(std::string_view name) const {
  for (const auto& [key, value] : arguments) {
    if (key == name) return &value;
  }
  return nullptr;
}

std::string dump(const Message& message) {
  struct Printer {
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return shortestNumber(number); }
    std::string operator()(Millimetres length) const { return shortestNumber(length.value) + "mm"; }
    std::string operator()(Stretch time) const {
      return std::to_string(time.least) + ".." + std::to_string(time.most) + '(' + std::to_string(time.likely) + ")ms";
    }
  };
  std::string line = message.id;
  for (const auto& [name, value] : message.arguments) {
    line += ' ' + name + '=' + std::visit(Printer{}, value);
  }
  return line;
}

}  // namespace core::base
