#pragma once
// Checks that the file of a picture is complete, by its own marks and without decoding it: a file cut short while it
// was copied over a cable or off a card would else be shown half grey.
#include <QIODevice>

namespace app::photographs {

enum class Wholeness { Whole, CutShort, Damaged };

// Checks a file whose type was recognised by its content: "jpeg", "png" or "webp". Reads from the beginning, in small
// pieces.
//   JPEG  every segment, and every scan up to its end mark.
//   PNG   every chunk with its check sum, up to the last.
//   WebP  the length in its head.
Wholeness wholenessOf(QIODevice& file, const QByteArray& type);

}  // namespace app::photographs
