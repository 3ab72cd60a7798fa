#include "app/face/letters.h"

#include <QFontDatabase>
#include <QGuiApplication>

#include "app/face/named_alike.h"

namespace app::face {

QStringList chooseLetters() {
  const QString letters = QString::fromLatin1(kLetters);
  const QString behind = QString::fromLatin1(kLettersBehind);
  [[maybe_unused]] static const bool apart = (leaveOutFamily(kNamedAlike), true);
  QStringList missing;
  const QString artwork = QString::fromLatin1(kArtworkLetters);
  for (const QString& family : {letters, behind, artwork}) {
    if (!QFontDatabase::hasFamily(family)) missing << family;
  }
  if (QFont::substitutes(letters).isEmpty()) QFont::insertSubstitution(letters, behind);
  if (QFont::substitutes(artwork).isEmpty()) QFont::insertSubstitutions(artwork, {letters, behind});
  if (!missing.contains(letters)) {
    QGuiApplication::setFont(QFont(letters));
  } else if (!missing.contains(behind)) {
    QGuiApplication::setFont(QFont(behind));
  }
  return missing;
}

}  // namespace app::face
