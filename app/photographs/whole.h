#pragma once
// Whether the file of a picture is there to its end, from its own marks and without decoding it: a file cut short while
// it came over a cable or off a card would else be shown half grey.
#include <QIODevice>

namespace app::photographs {

enum class Wholeness { Whole, CutShort, Damaged };

// Of a file whose type its content has shown: "jpeg", "png" or "webp". Reads from the beginning, in small pieces.
//   JPEG  every segment, and every scan up to its end mark.
//   PNG   every chunk with its check sum, up to the last.
//   WebP  the length in its head.
Wholeness wholenessOf(QIODevice& file, const QByteArray& type);

}  // namespace app::photographs
