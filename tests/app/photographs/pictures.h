#pragma once
// Real pictures and things that only look like one.
#include <QBuffer>
#include <QByteArray>
#include <QColor>
#include <QImage>
#include <QtEndian>
#include <array>
#include <cstdint>

namespace tests {

// Noise does not compress, so that a picture can be made as large as is wanted.
inline QImage noise(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  std::uint32_t state = 2463534242U;
  for (int y = 0; y < height; ++y) {
    auto* line = reinterpret_cast<std::uint32_t*>(image.scanLine(y));
    for (int x = 0; x < width; ++x) {
      state ^= state << 13;
      state ^= state >> 17;
      state ^= state << 5;
      line[x] = state | 0xFF000000U;
    }
  }
  return image;
}

inline QByteArray encoded(const QImage& image, const char* format, int quality = -1) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, format, quality);
  return bytes;
}

inline QByteArray jpegBytes(int width = 64, int height = 48) { return encoded(noise(width, height), "jpg", 90); }
inline QByteArray pngBytes(int width = 64, int height = 48) { return encoded(noise(width, height), "png"); }

// Left half red, right half blue, and a camera's word that it was held on its side.
inline QByteArray turnedJpeg() {
  QImage image(80, 40, QImage::Format_RGB32);
  image.fill(Qt::blue);
  for (int y = 0; y < 40; ++y) {
    for (int x = 0; x < 40; ++x) image.setPixelColor(x, y, Qt::red);
  }
  QByteArray bytes = encoded(image, "jpg", 95);
  // EXIF 2.3, orientation 6: to be turned a quarter clockwise.
  const QByteArray tiff = QByteArray::fromHex(
      "4d4d002a0000000800010112000300000001000600000000"
      "0000");
  QByteArray segment = QByteArray("Exif\0\0", 6) + tiff;
  QByteArray length(2, '\0');
  qToBigEndian<quint16>(static_cast<quint16>(segment.size() + 2), length.data());
  return bytes.insert(2, QByteArray("\xFF\xE1", 2) + length + segment);
}

inline std::uint32_t pngSum(const QByteArray& bytes) {
  std::uint32_t sum = 0xFFFFFFFFU;
  for (const char byte : bytes) {
    sum ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) sum = (sum & 1) != 0 ? 0xEDB88320U ^ (sum >> 1) : sum >> 1;
  }
  return sum ^ 0xFFFFFFFFU;
}

// A PNG whose head claims another size; its check sum is right, so only the claim itself gives it away.
inline QByteArray claiming(std::uint32_t width, std::uint32_t height) {
  QByteArray bytes = pngBytes(8, 8);
  qToBigEndian<quint32>(width, bytes.data() + 16);
  qToBigEndian<quint32>(height, bytes.data() + 20);
  qToBigEndian<quint32>(pngSum(bytes.mid(12, 17)), bytes.data() + 29);
  return bytes;
}

}  // namespace tests
