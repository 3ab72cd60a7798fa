#pragma once
// The program's icon, drawn in app/face/icon/*.svg. Qt reads such files through a package of its own, which a bench
// does not otherwise need; these hold so little that the program reads them itself.
#include <QIcon>
#include <QImage>
#include <QString>
#include <optional>

namespace app::face {

// The drawing as a picture of so many dots a side; none where the file holds anything but paths of M, L, C and Z in
// absolute numbers with `fill` and `stroke`, or is not to be read.
std::optional<QImage> drawnIcon(const QString& file, int side);

// At every size a desktop asks for, the smaller from the drawing that is simplified for them.
QIcon icon();

}  // namespace app::face
