#include "app/convert/text.h"

#include <QStringDecoder>

namespace app::convert {

QString toQt(std::string_view text) {
  // QString::fromUtf8 swallows a byte order mark, which would give back another text than was handed in.
  QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::ConvertInitialBom);
  return decoder(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
}

std::string fromQt(const QString& text) { return fromBytes(text.toUtf8()); }

QString lines(const QStringList& texts) { return texts.join(QLatin1Char('\n')); }

QByteArray toBytes(std::string_view text) { return QByteArray(text.data(), static_cast<qsizetype>(text.size())); }

std::string fromBytes(const QByteArray& bytes) {
  return std::string(bytes.constData(), static_cast<std::size_t>(bytes.size()));
}

}  // namespace app::convert
