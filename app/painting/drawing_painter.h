#pragma once
// Ink and pencil for every drawing of the core: the only place that decides how a role looks on the glass.
#include <QColor>
#include <QPainter>
#include <QSizeF>
#include <QTransform>

#include "app/painting/painted.h"

namespace app::painting {

struct Inks {
  QColor ink;
  QColor pencil;
  QColor worked;
  QColor ground;
  double hairline = 1;  // width of a pencil line, in pixels; ink is three times that
};

// From mm of the piece to pixels of `room`.
QTransform fitted(const Painted& drawing, const QSizeF& room, double hairline);

// Paints the drawing as large as fits `room`, in its middle.
void paintDrawing(QPainter& painter, const Painted& drawing, const QSizeF& room, const Inks& inks);

}  // namespace app::painting
