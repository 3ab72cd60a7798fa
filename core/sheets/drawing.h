#pragma once
// Drawings as data: primitives in millimetres of the piece, origin at the top left seen from the side drawn, y
// downwards. Each carries the id of the element it shows and a role; the painter decides ink and pencil.
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/craft/act_place.h"
#include "core/geometry/region.h"
#include "core/sheets/matter.h"

namespace core::sheets {

enum class Role {
  BoardEdge,   // outer edge of the mount
  BoardFace,   // face edge of an opening
  BoardSight,  // sight edge of an opening
  Bevel,       // the sloped face between them
  Band,
  Mitre,
  Line,
  Spandrel,
  Wash,
  Leaf,
  Artwork,    // the sheet, where the work is shown
  Mark,       // marked corner
  Setting,    // centre line, springing line, centres and joints of arcs
  Dimension,  // dimension line with its ends
  DimensionText,
  // These are for the drawings of acts (act.h). Their closed shapes hide what was painted before them.
  Section,  // the cut side of something solid
  Sheet,    // a surface: board, paper, tissue, glass
  Tool,
  Blade,
  Film,    // the thing the act lays, removes or cuts; translucent
  Waste,   // hatching of what falls away
  Motion,  // the movement of the hand, with its arrow's head
  Guide,   // pencil: a mark, a hidden edge
};

// Returns whether a role is used in drawings of acts alone.
bool isOfAct(Role role);

// A closed ring between two rectangles (the inner may be empty), or a plain rectangle.
struct Frame {
  Point outerFrom, outerTo;
  Point innerFrom, innerTo;  // equal points: no hole
};
struct Stroke {
  std::vector<Point> points;
  bool closed = false;
};
// A line along straights and arcs.
struct Path {
  std::vector<geometry::Segment> segments;
  bool closed = false;
};
struct Text {
  Point at;  // centre
  std::string text;
  double height = 0;  // cap height, mm of the piece; 0: as the painter sees fit
};

struct Primitive {
  std::string element;  // "top", "inner", "inner.top", "outside", "field", "piece"
  Role role = Role::BoardEdge;
  // A patch is a frame between curved outlines.
  std::variant<Frame, Stroke, Text, geometry::Patch, Path> shape;
  std::optional<Matter> matter = std::nullopt;  // nothing: a line of the drawing, or a shape in the greys of an act
  Standing standing = Standing::Made;
};

enum class Side { Face, Back };

// A part of the drawing of an act that sentences speak of.
struct DrawnPlace {
  craft::ActPlace place = craft::ActPlace::Tool;
  Point at;
};

struct Drawing {
  double width = 0;
  double height = 0;
  Side side = Side::Face;
  std::vector<Primitive> primitives;  // painted in this order
  std::vector<DrawnPlace> places;     // of an act
};

// Returns one primitive a line, numbers to 0.001 mm, for golden files.
std::string dump(const Drawing& drawing);

}  // namespace core::sheets
