#pragma once
// The only way between the core's UTF-8 texts and Qt's.
#include <QByteArray>
#include <QString>
#include <QStringList>
#include <string>
#include <string_view>

namespace app::convert {

// Bytes that are no UTF-8 become U+FFFD; a leading byte order mark stays as a character.
QString toQt(std::string_view text);
std::string fromQt(const QString& text);
// Returns the texts one below the other.
QString lines(const QStringList& texts);

// The bytes themselves, neither decoded nor cut at a zero.
QByteArray toBytes(std::string_view text);
std::string fromBytes(const QByteArray& bytes);

}  // namespace app::convert
