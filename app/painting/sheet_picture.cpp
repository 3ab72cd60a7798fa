#include "app/painting/sheet_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace app::painting {
namespace {

// Fewer pixels than these would be a grey of their own.
constexpr double kLeastSeen = 4;
// What was entered for the width of a picture of one repeat may be that much short of it, as a rule is read.
constexpr double kAsGoodAsWhole = 0.98;
// The most pixels that are kept of what was made, about a screen's and a half.
constexpr qsizetype kMostKept = 3'500'000;

double lengthOf(const QTransform& place) { return std::hypot(place.m11(), place.m12()); }

QImage bounded(const QImage& picture) {
  QImage image = picture;
  if (std::max(image.width(), image.height()) > SheetPicture::kLongestSide)
    image = image.scaled(SheetPicture::kLongestSide, SheetPicture::kLongestSide, Qt::KeepAspectRatio,
                         Qt::SmoothTransformation);
  // What shows through is white, as paper is.
  if (!image.hasAlphaChannel()) return image.convertToFormat(QImage::Format_RGB32);
  QImage opaque(image.size(), QImage::Format_RGB32);
  opaque.fill(Qt::white);
  QPainter painter(&opaque);
  painter.drawImage(0, 0, image);
  return opaque;
}

QColor meanOf(const QImage& picture) {
  double red = 0, green = 0, blue = 0;
  for (int y = 0; y < picture.height(); ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
    for (int x = 0; x < picture.width(); ++x) {
      red += qRed(line[x]);
      green += qGreen(line[x]);
      blue += qBlue(line[x]);
    }
  }
  const double count = static_cast<double>(picture.width()) * picture.height();
  const auto mean = [count](double sum) { return static_cast<int>(std::lround(sum / count)); };
  return QColor(mean(red), mean(green), mean(blue));
}

// The whole numbers k for which a span of that length about k·step reaches into [from, to].
std::pair<double, double> reaching(double from, double to, double step, double length) {
  return {std::ceil((from - length / 2) / step), std::floor((to + length / 2) / step)};
}

}  // namespace

SheetPicture::SheetPicture(const QImage& picture, double acrossInMm)
    : m_picture(bounded(picture)),
      m_across(acrossInMm),
      m_down(acrossInMm * m_picture.height() / std::max(1, m_picture.width())),
      m_mean(meanOf(m_picture)) {}

bool SheetPicture::isTooFine(const PaperPlace& place) const {
  const double along = place.repeat > 0 ? place.repeat : m_across;
  return std::min(along, m_down) * lengthOf(place.toPixels) < kLeastSeen;
}

QImage SheetPicture::sized(double pixelsPerMm) const {
  const int width = std::max(1, static_cast<int>(std::ceil(m_across * pixelsPerMm)));
  if (width >= m_picture.width()) return m_picture;
  if (m_sized.width() != width) {
    const int height = std::max(1, static_cast<int>(std::ceil(m_down * pixelsPerMm)));
    m_sized = m_picture.scaled(width, height, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                  .convertToFormat(QImage::Format_RGB32);
  }
  return m_sized;
}

QImage SheetPicture::laid(const PaperPlace& place, const QRectF& room) const {
  QImage image(room.size().toSize(), QImage::Format_RGB32);
  image.fill(m_mean);
  if (isTooFine(place)) return image;
  const QImage source = sized(lengthOf(place.toPixels));
  const bool repeats = place.repeat > 0;
  // A picture that is a little short of a repeat is one.
  const bool whole = repeats && m_across >= kAsGoodAsWhole * place.repeat;
  const double step = repeats ? place.repeat : m_across;
  const double shown = whole ? place.repeat : m_across;
  const double share = std::min(1.0, shown / m_across);
  const QRectF cut((1 - share) / 2 * source.width(), 0, share * source.width(), source.height());
  const QRectF seen = place.toPixels.inverted().mapRect(room);
  const auto [firstColumn, lastColumn] = reaching(seen.left(), seen.right(), step, shown);
  const auto [firstRow, lastRow] = reaching(seen.top() - place.middle, seen.bottom() - place.middle, m_down, m_down);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const QTransform toImage = place.toPixels * QTransform::fromTranslate(-room.left(), -room.top());
  for (double row = firstRow; row <= lastRow; ++row) {
    for (double column = firstColumn; column <= lastColumn; ++column) {
      // The picture's own way is down, the paper's up.
      QTransform cell = QTransform::fromTranslate(column * step, place.middle + row * m_down) * toImage;
      const bool turnedAlong = !repeats && std::fmod(std::abs(column), 2) == 1;
      const bool turnedUp = !repeats && std::fmod(std::abs(row), 2) == 1;
      painter.setTransform(QTransform::fromScale(turnedAlong ? -1 : 1, turnedUp ? 1 : -1) * cell);
      painter.drawImage(QRectF(-shown / 2, -m_down / 2, shown, m_down), source, cut);
    }
  }
  return image;
}

QImage SheetPicture::stretch(const PaperPlace& place, const QRectF& room, const Light& light) const {
  const std::lock_guard<std::mutex> lock(m_guard);
  const auto kept = std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& one) {
    return one.room == room && one.light == light && one.place == place;
  });
  if (kept != m_kept.end()) {
    m_kept.splice(m_kept.begin(), m_kept, kept);
    return m_kept.front().image;
  }
  QImage image = laid(place, room);
  light.fallOn(image, Breadth::Fine);
  m_kept.push_front({place, room, light, image});
  qsizetype pixels = 0;
  for (auto one = m_kept.begin(); one != m_kept.end(); ++one) {
    pixels += qsizetype{one->image.width()} * one->image.height();
    if (pixels <= kMostKept || one == m_kept.begin()) continue;
    m_kept.erase(one, m_kept.end());
    break;
  }
  return image;
}

}  // namespace app::painting
