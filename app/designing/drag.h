#pragma once
// Dragging of borders and bands in the drawing of the face: the edge, the measure of the design it moves, and the
// measure it is moved to.
#include <QPointF>
#include <QString>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/design/design.h"

namespace app::designing {

struct DragHandle {
  std::string pointer;  // of the measure in the document
  QString label;
  std::string element;   // of the drawing
  bool upright = false;  // an edge that runs up and down and moves across; otherwise the other way about
  double at = 0;         // position of the edge, in mm of the drawing
  double from = 0, to = 0;
  double perMm = 0;  // mm the measure changes for each mm the edge moves right or down
  double value = 0;  // the measure now, mm
};

// Returns the handles of the face as core::sheets draws it. Edges of the mount move its borders, edges of a band its
// place and width.
std::vector<DragHandle> dragHandles(const core::base::Value& document, const core::design::Design& design);

// The handle nearest to a point of the drawing, not farther than `reach` mm; null for none.
const DragHandle* handleAt(const std::vector<DragHandle>& handles, const QPointF& point, double reach);

// The measure after the edge moved from `from` to `to`, as a job file writes it: whole half millimetres, or 32nds of an
// inch in a design of inches; never below nothing.
std::string draggedMeasure(const DragHandle& handle, const QPointF& from, const QPointF& to,
                           core::units::UnitSystem units);

}  // namespace app::designing
