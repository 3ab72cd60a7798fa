#include "app/photographs/whole.h"

#include <QtEndian>
#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <vector>

namespace app::photographs {
namespace {

// Reads on through a file with a buffer of its own.
class Reader {
 public:
  explicit Reader(QIODevice& file) : m_file(file), m_buffer(kBuffer) { m_file.seek(0); }

  // Less than 0 at the end.
  int byte() {
    if (m_at == m_held && !more()) return -1;
    return static_cast<unsigned char>(m_buffer[m_at++]);
  }
  bool bytes(char* to, std::size_t count) {
    while (count > 0) {
      if (m_at == m_held && !more()) return false;
      const std::size_t some = std::min(count, m_held - m_at);
      std::memcpy(to, m_buffer.data() + m_at, some);
      m_at += some;
      to += some;
      count -= some;
    }
    return true;
  }
  bool skip(std::int64_t count) {
    while (count > 0) {
      if (m_at == m_held && !more()) return false;
      const auto some = std::min<std::int64_t>(count, static_cast<std::int64_t>(m_held - m_at));
      m_at += static_cast<std::size_t>(some);
      count -= some;
    }
    return true;
  }

 private:
  static constexpr std::size_t kBuffer = 64 * 1024;
  bool more() {
    const qint64 got = m_file.read(m_buffer.data(), kBuffer);
    m_at = 0;
    m_held = got > 0 ? static_cast<std::size_t>(got) : 0;
    return got > 0;
  }

  QIODevice& m_file;
  std::vector<char> m_buffer;
  std::size_t m_at = 0, m_held = 0;
};

// Marks of JPEG (ITU-T T.81, table B.1).
constexpr int kMark = 0xFF, kStart = 0xD8, kEnd = 0xD9, kScan = 0xDA, kRestart0 = 0xD0, kRestart7 = 0xD7,
              kTemporary = 0x01;

bool standsAlone(int mark) { return (mark >= kRestart0 && mark <= kRestart7) || mark == kTemporary || mark == kStart; }

// The next mark that is not part of the data of a scan; less than 0 at the end of the file.
int afterScan(Reader& reader) {
  for (int byte = reader.byte(); byte >= 0; byte = reader.byte()) {
    if (byte != kMark) continue;
    int mark = reader.byte();
    while (mark == kMark) mark = reader.byte();
    if (mark == 0 || (mark >= kRestart0 && mark <= kRestart7)) continue;
    return mark;
  }
  return -1;
}

Wholeness jpeg(Reader& reader) {
  if (reader.byte() != kMark || reader.byte() != kStart) return Wholeness::Damaged;
  bool scanned = false;
  int mark = -1;
  for (;;) {
    if (mark < 0) {
      // Between two segments a camera may leave bytes that mean nothing; whoever shows the picture skips them too.
      mark = afterScan(reader);
      if (mark < 0) return Wholeness::CutShort;
    }
    if (mark == kEnd) return scanned ? Wholeness::Whole : Wholeness::Damaged;
    if (standsAlone(mark)) {
      mark = -1;
      continue;
    }
    const int high = reader.byte(), low = reader.byte();
    if (low < 0) return Wholeness::CutShort;
    const int length = high * 256 + low;
    if (length < 2) return Wholeness::Damaged;
    if (!reader.skip(length - 2)) return Wholeness::CutShort;
    if (mark != kScan) {
      mark = -1;
      continue;
    }
    scanned = true;
    mark = afterScan(reader);
    if (mark < 0) return Wholeness::CutShort;
  }
}

// The check sum of PNG (ISO/IEC 15948, annex D).
std::uint32_t sumOf(std::uint32_t sum, const char* bytes, std::size_t count) {
  static const std::array<std::uint32_t, 256> kTable = [] {
    std::array<std::uint32_t, 256> table{};
    for (std::uint32_t i = 0; i < 256; ++i) {
      std::uint32_t value = i;
      for (int bit = 0; bit < 8; ++bit) value = (value & 1) != 0 ? 0xEDB88320U ^ (value >> 1) : value >> 1;
      table[i] = value;
    }
    return table;
  }();
  for (std::size_t i = 0; i < count; ++i) {
    sum = kTable[(sum ^ static_cast<unsigned char>(bytes[i])) & 0xFF] ^ (sum >> 8);
  }
  return sum;
}

Wholeness png(Reader& reader) {
  constexpr std::uint32_t kLongestChunk = 0x7FFFFFFF;
  if (!reader.skip(8)) return Wholeness::CutShort;
  std::vector<char> some(64 * 1024);
  for (;;) {
    char head[8];
    if (!reader.bytes(head, sizeof head)) return Wholeness::CutShort;
    std::uint32_t left = qFromBigEndian<quint32>(head);
    if (left > kLongestChunk) return Wholeness::Damaged;
    std::uint32_t sum = sumOf(0xFFFFFFFFU, head + 4, 4);
    while (left > 0) {
      const std::size_t part = std::min<std::size_t>(left, some.size());
      if (!reader.bytes(some.data(), part)) return Wholeness::CutShort;
      sum = sumOf(sum, some.data(), part);
      left -= static_cast<std::uint32_t>(part);
    }
    char stated[4];
    if (!reader.bytes(stated, sizeof stated)) return Wholeness::CutShort;
    if (qFromBigEndian<quint32>(stated) != (sum ^ 0xFFFFFFFFU)) return Wholeness::Damaged;
    if (std::memcmp(head + 4, "IEND", 4) == 0) return Wholeness::Whole;
  }
}

Wholeness webp(Reader& reader, qint64 size) {
  char head[12];
  if (!reader.bytes(head, sizeof head)) return Wholeness::CutShort;
  return size >= qint64{qFromLittleEndian<quint32>(head + 4)} + 8 ? Wholeness::Whole : Wholeness::CutShort;
}

}  // namespace

Wholeness wholenessOf(QIODevice& file, const QByteArray& type) {
  Reader reader(file);
  if (type == "jpeg") return jpeg(reader);
  if (type == "png") return png(reader);
  return webp(reader, file.size());
}

}  // namespace app::photographs
