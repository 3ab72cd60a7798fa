#include "app/convert/uuid.h"

#include <QRandomGenerator>
#include <algorithm>

namespace app::convert {
namespace {

constexpr std::int64_t kGreatestTime = (std::int64_t{1} << 48) - 1;

void appendHex(std::string& text, std::uint64_t value, int digits) {
  for (int digit = digits - 1; digit >= 0; --digit) text += "0123456789abcdef"[(value >> (4 * digit)) & 0xF];
}

}  // namespace

std::string uuidVersion7(std::int64_t utcMilliseconds, std::uint64_t randomA, std::uint64_t randomB) {
  const auto time = static_cast<std::uint64_t>(std::clamp<std::int64_t>(utcMilliseconds, 0, kGreatestTime));
  const std::uint64_t variantAndRandom = (std::uint64_t{0b10} << 62) | (randomB & ((std::uint64_t{1} << 62) - 1));
  std::string text;
  text.reserve(36);
  appendHex(text, time >> 16, 8);
  text += '-';
  appendHex(text, time & 0xFFFF, 4);
  text += '-';
  appendHex(text, 0x7000 | (randomA & 0xFFF), 4);
  text += '-';
  appendHex(text, variantAndRandom >> 48, 4);
  text += '-';
  appendHex(text, variantAndRandom & 0xFFFF'FFFF'FFFF, 12);
  return text;
}

std::string newUuid(std::int64_t utcMilliseconds) {
  QRandomGenerator* generator = QRandomGenerator::system();
  return uuidVersion7(utcMilliseconds, generator->generate64(), generator->generate64());
}

}  // namespace app::convert
