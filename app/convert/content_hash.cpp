#include "app/convert/content_hash.h"

#include <QCryptographicHash>

#include "app/convert/text.h"

namespace app::convert {

std::string contentHash(std::string_view bytes) {
  return fromBytes(QCryptographicHash::hash(toBytes(bytes), QCryptographicHash::Sha256).toHex());
}

}  // namespace app::convert
