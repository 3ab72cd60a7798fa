#pragma once
// The properties in a picture's header, and the picture at a smaller size.
#include <QImage>
#include <QSize>
#include <QString>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::photographs {

struct Head {
  std::string type;  // "jpeg", "png" or "webp"
  QSize pixels;
};

// It is read from the content alone, without decoding. photograph.not-a-picture, .other-type {type}, .too-many-pixels,
// .cut-short, .damaged; photograph.unreadable {path} where it cannot be opened.
core::base::Result<Head, core::base::Message> headOf(const QString& path);

// photograph.cannot-show {detail}; photograph.too-large-to-show {width} {height} where it needs more memory than one
// picture may, in a format that cannot be decoded smaller.
core::base::Result<QImage, core::base::Message> scaled(const QString& path, QSize atMost);

}  // namespace app::photographs
