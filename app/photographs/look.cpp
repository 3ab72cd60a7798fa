#include "app/photographs/look.h"

#include <QFile>
#include <QImageReader>

#include "app/convert/text.h"
#include "app/photographs/whole.h"
#include "core/jobs/beside_work.h"

namespace app::photographs {
namespace {

using core::base::Message;

// Qt's words for what its handlers find.
std::string typeOf(const QByteArray& format) {
  if (format == "jpeg" || format == "jpg") return "jpeg";
  if (format == "png" || format == "webp") return format.toStdString();
  return "";
}

}  // namespace

core::base::Result<Head, Message> headOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return Message("photograph.unreadable").with("path", convert::fromQt(path));
  QImageReader reader(&file);
  reader.setDecideFormatFromContent(true);
  const QByteArray format = reader.format();
  if (format.isEmpty() || !reader.canRead()) return Message("photograph.not-a-picture");
  Head head{typeOf(format), reader.size()};
  if (head.type.empty()) return Message("photograph.other-type").with("type", format.toStdString());
  if (head.pixels.isEmpty()) return Message("photograph.damaged");
  const std::int64_t pixels = std::int64_t{head.pixels.width()} * head.pixels.height();
  if (pixels > core::jobs::kMostPixels) {
    return Message("photograph.too-many-pixels")
        .with("width", std::int64_t{head.pixels.width()})
        .with("height", std::int64_t{head.pixels.height()})
        .with("most", core::jobs::kMostPixels / 1'000'000);
  }
  switch (wholenessOf(file, QByteArray::fromStdString(head.type))) {
    case Wholeness::Whole: break;
    case Wholeness::CutShort: return Message("photograph.cut-short");
    case Wholeness::Damaged: return Message("photograph.damaged");
  }
  return head;
}

core::base::Result<QImage, Message> scaled(const QString& path, QSize atMost) {
  QImageReader reader(path);
  reader.setDecideFormatFromContent(true);
  reader.setAutoTransform(true);
  const QSize stored = reader.size();
  if (stored.isEmpty()) return Message("photograph.cannot-show").with("detail", convert::fromQt(reader.errorString()));
  // The size wanted is that of the picture as it is looked at; decoding is done before it is turned.
  const bool onItsSide = (reader.transformation() & QImageIOHandler::TransformationRotate90) != 0;
  const QSize room = onItsSide ? atMost.transposed() : atMost;
  QSize size = stored;
  if (size.width() > room.width() || size.height() > room.height()) size.scale(room, Qt::KeepAspectRatio);
  reader.setScaledSize(size.expandedTo(QSize(1, 1)));
  QImage image = reader.read();
  const std::int64_t bytes = std::int64_t{stored.width()} * stored.height() * 4;
  if (image.isNull() && bytes > std::int64_t{QImageReader::allocationLimit()} * 1024 * 1024) {
    return Message("photograph.too-large-to-show")
        .with("width", std::int64_t{stored.width()})
        .with("height", std::int64_t{stored.height()});
  }
  if (image.isNull()) return Message("photograph.cannot-show").with("detail", convert::fromQt(reader.errorString()));
  return image;
}

}  // namespace app::photographs
