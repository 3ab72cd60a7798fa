#include "app/painting/piece_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <limits>

#include "app/painting/bevel_painter.h"
#include "app/painting/leaf_painter.h"
#include "app/painting/light.h"
#include "app/painting/lined_painter.h"
#include "app/painting/materials.h"
#include "app/painting/paper_painter.h"
#include "app/painting/paths.h"

namespace app::painting {
namespace {

using core::sheets::Primitive;
using core::sheets::Role;
using core::sheets::Standing;
using core::sheets::Substance;

// Widths in hairlines.
// Round a piece drawn small, under a pixel to the mm, the ink is thinner, so as not to hide what is beside it.
constexpr double kInkOutline = 3.5;
constexpr double kLeastOutline = 2;
constexpr double kDot = 2;
constexpr double kCut = 1.5;
constexpr double kSlope = 5;
constexpr double kSecondLine = 2;
// What one board throws on the next under the top and left edge of its opening: mm, pixels at least, and how dark.
constexpr double kThrown = 1.2;
constexpr double kLeastThrown = 1.5;
constexpr double kThrownShare = 0.22;
// A line is seen however small the piece is drawn.
constexpr double kLeastLine = 1;
// Narrower than this an outline would be all there is to see.
constexpr double kRoomForOutline = 7;

// Lines of no more than a pixel are painted many times as quickly, and of an edge a pixel is enough.
QPen hairline(const Inks& inks) {
  constexpr double kStillAPixel = 1.5;
  const double width = inks.hairline < kStillAPixel ? 1 : inks.hairline;
  return {inks.pencil, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

QPen dotted(const Inks& inks) {
  QPen pen(inks.pencil, kDot * inks.hairline, Qt::CustomDashLine, Qt::FlatCap);
  pen.setDashPattern({1, 3});
  return pen;
}

QColor inkOf(const Primitive& mark, const PieceView& view) {
  return inkOn(mark.matter ? colourOf(*mark.matter, view.own(*mark.matter).colour) : QColor(Qt::white));
}

QPen hidden(const Inks& inks) {
  QPen pen(inks.pencil, inks.hairline, Qt::CustomDashLine, Qt::FlatCap);
  pen.setDashPattern({5, 6});
  return pen;
}

void strokeHair(QPainter& painter, const QPainterPath& path, const PieceView& view) {
  painter.setPen(hairline(view.inks));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
}

// A line on the mount's own edge, and one below and right of it: the thickness of the board.
void paintEdge(QPainter& painter, const QPainterPath& path, const PieceView& view) {
  const double hair = view.inks.hairline;
  strokeHair(painter, path, view);
  const QRectF box = path.boundingRect();
  const double off = kSecondLine * hair;
  const QPointF right(off, 0);
  const QPointF below(0, off);
  QPainterPath second(box.topRight() + right + below);
  second.lineTo(box.bottomRight() + right + below);
  second.lineTo(box.bottomLeft() + right + below);
  strokeHair(painter, second, view);
}

// The edges towards the light, each run of them swept along the way that the light falls.
void paintThrownShade(QPainter& painter, const QPainterPath& opening, const PieceView& view) {
  const double by = std::max(kThrown * view.scale, kLeastThrown * view.inks.hairline);
  QPainterPath shade;
  shade.setFillRule(Qt::WindingFill);
  for (const QPolygonF& outline : opening.toSubpathPolygons()) {
    QPolygonF run;
    const auto sweep = [&] {
      for (qsizetype i = run.size(); i-- > 0;) run << run[i] + QPointF(by, by);
      if (run.size() > 2) shade.addPolygon(run);
      run.clear();
    };
    for (qsizetype i = 1; i < outline.size(); ++i) {
      const QPointF way = outline[i] - outline[i - 1];
      // Outlines run clockwise: the top edge goes right and the left one up.
      if (way.x() - way.y() <= 0) {
        sweep();
        continue;
      }
      if (run.isEmpty()) run << outline[i - 1];
      run << outline[i];
    }
    sweep();
  }
  QColor dark = Qt::black;
  dark.setAlphaF(kThrownShare);
  painter.fillPath(shade, dark);
}

void paintLine(QPainter& painter, const QPainterPath& path, const Primitive& primitive, const PieceView& view,
               const Light& light) {
  const QBrush brush = pigment(primitive.matter->name, path.boundingRect(), light, view.own(*primitive.matter).colour);
  painter.fillPath(path, brush);
  const double missing = kLeastLine * view.inks.hairline - primitive.matter->width * view.scale;
  if (missing > 0) painter.strokePath(path, QPen(brush, missing));
}

// A board cut through: its core, and the slope as a line in its colour.
void paintCut(QPainter& painter, const QPainterPath& path, const Primitive& primitive, const PieceView& view,
              const Light& light) {
  const QColor colour = light.on(colourOf(*primitive.matter, view.own(*primitive.matter).colour));
  const QPen outline(view.inks.ink, kCut * view.inks.hairline, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
  if (primitive.role == Role::Section) {
    painter.fillPath(path, colour);
    painter.strokePath(path, outline);
  } else if (primitive.matter->substance == Substance::Paint) {
    painter.strokePath(path, QPen(colour, kSlope * view.inks.hairline, Qt::SolidLine, Qt::FlatCap));
  }
}

// A slope is seen from above as a ring and from the side as a line.
bool isCutThrough(const Primitive& primitive) {
  return primitive.role == Role::Section || std::holds_alternative<core::sheets::Stroke>(primitive.shape);
}

void paintMatter(QPainter& painter, const QPainterPath& path, const Primitive& primitive, const PieceView& view) {
  const core::sheets::Matter& matter = *primitive.matter;
  const Light light(view.inks, primitive.standing);
  const Appearance& own = view.own(matter);
  switch (matter.substance) {
    case Substance::Board:
    case Substance::Sheet: painter.fillPath(path, light.on(colourOf(matter, own.colour))); break;
    case Substance::Core:
    case Substance::Paint:
      if (isCutThrough(primitive)) {
        paintCut(painter, path, primitive, view, light);
      } else {
        paintBevel(painter, primitive, colourOf(matter, own.colour), view.scale, light);
      }
      break;
    case Substance::Paper: paintPaper(painter, path, matter, own, view.scale, light); break;
    case Substance::Pigment: paintLine(painter, path, primitive, view, light); break;
    case Substance::Wash: painter.fillPath(path, light.on(colourOf(matter, own.colour), Breadth::Fine)); break;
    case Substance::Flake: paintFlakes(painter, *matter.scatter, view.scale, light); break;
    case Substance::LaidLeaf: paintLaidLeaf(painter, path, matter, view.scale, light); break;
  }
}

// Returns the width of what is narrow by nature, in mm; of anything else more than enough.
double widthOf(const core::sheets::Matter& matter) {
  if (matter.run) return matter.run->width;
  return matter.width > 0 ? matter.width : std::numeric_limits<double>::infinity();
}

// Returns whether what is to come has a dotted outline: boards have it by their edges, flakes show where they will lie,
// and of what is fine the outline would be all there is to see.
bool hasOutline(const Primitive& primitive, const PieceView& view) {
  if (widthOf(*primitive.matter) * view.scale < kRoomForOutline * view.inks.hairline) return false;
  switch (primitive.role) {
    case Role::Band:
    case Role::Line:
    case Role::Spandrel:
    case Role::Wash:
    case Role::Artwork: return true;
    case Role::Leaf: return primitive.matter->substance == Substance::LaidLeaf;
    default: return false;
  }
}

}  // namespace

void paintShape(QPainter& painter, const Primitive& primitive, const PieceView& view) {
  const QPainterPath path = pathOf(primitive, view.scale);
  const bool toCome = primitive.standing == Standing::ToCome;
  const double hair = view.inks.hairline;
  if (primitive.role == Role::Mark) {
    if (toCome) {
      painter.strokePath(path, dotted(view.inks));
    } else {
      painter.fillPath(path, inkOf(primitive, view));
    }
    return;
  }
  if (primitive.matter) {
    paintMatter(painter, path, primitive, view);
    if (primitive.role == Role::Sheet) paintActOutline(painter, path, view.inks);
    if (toCome && hasOutline(primitive, view)) painter.strokePath(path, dotted(view.inks));
    if (primitive.role == Role::Artwork && !toCome) strokeHair(painter, path, view);
    return;
  }
  if (toCome) {
    if (primitive.role != Role::Mitre) painter.strokePath(path, dotted(view.inks));
    return;
  }
  if (isOfAct(primitive.role)) {
    paintLined(painter, primitive, Emphasis::None, view.scale, view.inks);
    return;
  }
  switch (primitive.role) {
    case Role::BoardEdge: paintEdge(painter, path, view); break;
    case Role::BoardSight:
      if (view.rear.empty()) paintThrownShade(painter, path, view);
      if (view.rear.empty() || view.rear == primitive.element) {
        strokeHair(painter, path, view);
      } else {
        painter.strokePath(path, hidden(view.inks));
      }
      break;
    case Role::Mitre: {
      QColor seam = Qt::black;
      seam.setAlphaF(0.4F);
      painter.strokePath(path, QPen(seam, hair, Qt::SolidLine, Qt::FlatCap));
      break;
    }
    default: strokeHair(painter, path, view); break;
  }
}

void paintWorked(QPainter& painter, const Primitive& primitive, const PieceView& view) {
  const QPainterPath path = pathOf(primitive, view.scale);
  const double width = std::clamp(kInkOutline * view.scale, kLeastOutline, kInkOutline) * view.inks.hairline;
  const auto pen = [&](double wide) { return QPen(view.inks.ink, wide, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin); };
  switch (primitive.role) {
    case Role::BoardEdge:
    case Role::BoardSight:
    case Role::Artwork: painter.strokePath(path, pen(width)); return;
    case Role::BoardFace:
    case Role::Bevel: return;
    case Role::Mark: painter.fillPath(path, inkOf(primitive, view)); return;
    default: break;
  }
  if (!primitive.matter || primitive.matter->substance == Substance::Flake) {
    painter.strokePath(path, pen(width));
    return;
  }
  // The material lies over the inner half, so that a line a hair wide is still of its own colour.
  painter.strokePath(path, pen(2 * width));
  Primitive made = primitive;
  made.standing = Standing::Made;
  paintMatter(painter, path, made, view);
}

}  // namespace app::painting
