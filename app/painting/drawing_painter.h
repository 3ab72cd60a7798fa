#pragma once
// Every drawing of the core on the glass: the piece in its materials, everything else in ink and pencil.
#include <QPainter>
#include <QSizeF>
#include <QTransform>

#include "app/painting/inks.h"
#include "app/painting/painted.h"

namespace app::painting {

// From mm of the piece to pixels of `room`.
QTransform fitted(const Painted& drawing, const QSizeF& room, double hairline);

// Paints the drawing as large as fits `room`, in its middle.
void paintDrawing(QPainter& painter, const Painted& drawing, const QSizeF& room, const Inks& inks);

}  // namespace app::painting
