#include <algorithm>

#include "tests/app/hostile/hostile_files.h"

namespace hostile {
namespace {

constexpr std::size_t kBytes = core::base::kMaximumJsonBytes;

// `item`, made of its number, as often as the file holds it.
template <typename Item>
std::string filled(std::string open, Item item, const std::string& close, std::size_t most) {
  for (std::size_t i = 0; i < most; ++i) {
    const std::string next = std::string(i > 0 ? "," : "") + item(i);
    if (open.size() + next.size() + close.size() > kBytes) break;
    open += next;
  }
  return open + close;
}

std::string repeated(const std::string& part, std::size_t times) {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text += part;
  return text;
}

}  // namespace

std::int64_t hostileCount(Dice& dice, std::int64_t limit, std::int64_t most) {
  switch (dice.number(0, 3)) {
    case 0: return limit;
    case 1: return limit + 1;
    case 2: return std::min(most, limit * dice.number(2, 50));
    default: return dice.number(1, limit);
  }
}

std::string hostileText(Dice& dice) {
  static const std::vector<std::string> kParts = {"\x1b[2J\x1b[31m",
                                                  "\xE2\x80\xAE",
                                                  "\xE2\x81\xA6",
                                                  "\xC2\x9B"
                                                  "31m",
                                                  "\xE2\x80\xA8",
                                                  "long ",
                                                  "\x7f",
                                                  "\xF0\x9F\x90\xA6"};
  const std::string& part = dice.one(kParts);
  const std::size_t most = 3'000'000 / part.size();
  const std::size_t sizes[] = {1, 40, 201, 100'000 / part.size(), most};
  return repeated(part, sizes[dice.number(0, 4)]);
}

std::string hostileShape(Dice& dice, std::string& name) {
  const auto number = [](std::size_t i) { return std::to_string(i); };
  switch (dice.number(0, 8)) {
    case 0: name = "deep"; return repeated("[", 2'000'000) + repeated("]", 2'000'000);
    case 1:
      name = "deep with long keys";
      return repeated("{\"" + std::string(60'000, 'k') + "\":", 63) + "1" + repeated("}", 63);
    case 2:
      name = "as many keys as there is room for";
      return filled(
          "{", [&](std::size_t i) { return "\"k" + number(i) + "\":0"; }, "}", kBytes);
    case 3:
      name = "as many values as there is room for";
      return filled(
          "{\"format\":\"mountwright-job/1\",\"bands\":[", [](std::size_t) { return "0"; }, "]}", kBytes);
    case 4:
      name = "one key again and again";
      return filled(
          "{", [](std::size_t) { return "\"a\":[]"; }, "}", kBytes);
    case 5:
      name = "objects of unknown keys";
      return filled(
          "{\"format\":\"mountwright-job/1\",\"lines\":[",
          [](std::size_t) { return R"({"ids":1,"alog":1,"with":1,"colur":1})"; }, "]}", kBytes);
    case 6: name = "one text"; return "{\"title\":\"" + std::string(kBytes - 14, 'x') + "\"}";
    case 7: name = "escapes"; return "{\"title\":\"" + repeated("\\u001b[2J\\u202e", 150'000) + "\"}";
    default:
      name = "keys of nearly the same word";
      return filled(
          "{\"format\":\"mountwright-job/1\",\"package\":{",
          [&](std::size_t i) { return "\"glazin" + number(i) + "\":\"x\""; }, "}}", 900);
  }
}

File hostileFile(std::uint64_t seed, const std::vector<std::string>& techniques) {
  switch (Dice(seed).number(0, 9)) {
    case 0:
    case 1: return hostileTechnique(seed);
    case 2:
    case 3: return hostileRecord(seed, techniques);
    default: return hostileJob(seed);
  }
}

}  // namespace hostile
