#include "core/design/readers.h"

#include <array>

#include "core/base/text.h"

namespace core::design {
namespace {

using base::Message;

constexpr std::array<std::string_view, 10> kReservedIds = {"art",   "boards",   "piece", "package",  "size",
                                                           "paste", "adhesive", "wash",  "spandrel", "leaf"};

bool isIdentifier(std::string_view text) {
  if (text.empty() || text.size() > 32 || text.front() < 'a' || text.front() > 'z') return false;
  for (const char c : text) {
    if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-')) return false;
  }
  return true;
}

// A value that must be a text; what else it is decides the words.
const std::string* textOf(const Node& node, Problems& problems, std::string_view otherwise) {
  if (node.value->kind() == base::Value::Kind::Text) return &node.value->asText();
  base::report(problems, node, Message(otherwise));
  return nullptr;
}

}  // namespace

Place placeOf(const Node& node) { return {node.pointer, node.value != nullptr ? node.value->order() : 0}; }

std::optional<units::ParsedLength> readLengthWithUnit(const Node& node, LengthRange range, Problems& problems) {
  if (!node) return std::nullopt;
  const std::string* text = textOf(node, problems, "length.not-text");
  if (text == nullptr) return std::nullopt;
  const auto parsed = units::parseLength(*text);
  if (!parsed) {
    base::report(problems, node, parsed.error());
    return std::nullopt;
  }
  const Length length = parsed.value().length;
  if (range == LengthRange::Size && length <= Length()) {
    base::report(problems, node, Message("length.not-positive").with("text", *text));
    return std::nullopt;
  }
  if (range == LengthRange::Distance && length < Length()) {
    base::report(problems, node, Message("length.negative").with("text", *text));
    return std::nullopt;
  }
  return parsed.value();
}

std::optional<Length> readLength(const Node& node, LengthRange range, Problems& problems) {
  const auto parsed = readLengthWithUnit(node, range, problems);
  if (!parsed) return std::nullopt;
  return parsed->length;
}

bool readInto(const Node& node, LengthRange range, Length& target, Problems& problems) {
  if (!node) return true;
  const auto length = readLength(node, range, problems);
  if (length) target = *length;
  return length.has_value();
}

std::optional<std::string> readId(const Node& node, std::set<std::string>& taken, Problems& problems) {
  if (!node) return std::nullopt;
  const std::string* text = textOf(node, problems, "read.expected-text");
  if (text == nullptr) return std::nullopt;
  if (!isIdentifier(*text)) {
    base::report(problems, node, Message("job.bad-id").with("id", *text));
    return std::nullopt;
  }
  for (const std::string_view reserved : kReservedIds) {
    if (*text == reserved) {
      base::report(problems, node, Message("job.reserved-id").with("id", *text));
      return std::nullopt;
    }
  }
  if (!taken.insert(*text).second) {
    base::report(problems, node, Message("job.id-twice").with("id", *text));
    return std::nullopt;
  }
  return *text;
}

std::optional<double> readSpread(const Node& node, Problems& problems) {
  if (!node) return std::nullopt;
  const std::string* text = textOf(node, problems, "job.bad-spread");
  if (text == nullptr) return std::nullopt;
  constexpr std::string_view kUnit = " ml/m2";
  std::optional<double> number;
  if (base::endsWith(*text, kUnit)) number = base::parseDecimal(text->substr(0, text->size() - kUnit.size()));
  if (!number || *number <= 0 || *number > 10'000) {
    base::report(problems, node, Message("job.bad-spread"));
    return std::nullopt;
  }
  return number;
}

std::optional<Weighting> readWeighting(const Node& node, Problems& problems) {
  if (!node) return std::nullopt;
  const std::string* text = textOf(node, problems, "job.bad-weighting");
  if (text == nullptr) return std::nullopt;
  Weighting weighting;
  if (*text == "equal") return weighting;
  if (base::startsWith(*text, "+")) {
    const auto addition = units::parseLength(text->substr(1));
    if (addition && addition.value().length >= Length()) {
      weighting.byAddition = true;
      weighting.addition = addition.value().length;
      return weighting;
    }
  } else if (const auto parts = base::split(*text, ':'); parts.size() == 2) {
    const auto bottom = base::parseDecimal(parts[0]);
    const auto top = base::parseDecimal(parts[1]);
    if (bottom && top && *bottom > 0 && *top > 0) {
      weighting.ratio = *bottom / *top;
      return weighting;
    }
  }
  base::report(problems, node, Message("job.bad-weighting").with("text", *text));
  return std::nullopt;
}

}  // namespace core::design
