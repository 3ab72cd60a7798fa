#include "core/sheets/drawing.h"

#include "core/base/text.h"
#include "core/sheets/names.h"

namespace core::sheets {
namespace {

std::string number(double value) { return base::fixedNumber(value, 3); }
std::string at(const Point& point) { return number(point.x) + ',' + number(point.y); }

struct SegmentText {
  std::string operator()(const geometry::Straight& straight) const { return " line " + at(straight.to); }
  std::string operator()(const geometry::Arc& arc) const {
    return " arc " + at(arc.centre) + " r " + number(arc.radius) + " to " + at(arc.to) + " by " + number(arc.sweep);
  }
  std::string operator()(const geometry::OvalArc& oval) const {
    return " oval " + at(oval.centre) + ' ' + number(oval.semiX) + 'x' + number(oval.semiY) + " out " +
           number(oval.out) + " from " + number(oval.start) + " by " + number(oval.sweep);
  }
};

std::string along(const std::vector<geometry::Segment>& segments) {
  if (segments.empty()) return "";
  std::string text = at(geometry::startOf(segments.front()));
  for (const geometry::Segment& segment : segments) text += std::visit(SegmentText{}, segment);
  return text;
}

struct ShapeText {
  std::string operator()(const Frame& frame) const {
    std::string text = "frame " + at(frame.outerFrom) + ' ' + at(frame.outerTo);
    if (frame.innerFrom != frame.innerTo) text += " less " + at(frame.innerFrom) + ' ' + at(frame.innerTo);
    return text;
  }
  std::string operator()(const Stroke& stroke) const {
    std::string text = stroke.closed ? "ring" : "stroke";
    for (const Point& point : stroke.points) text += ' ' + at(point);
    return text;
  }
  std::string operator()(const geometry::Patch& patch) const {
    std::string text = "patch " + along(patch.outer.segments());
    if (!patch.inner.empty()) text += " less " + along(patch.inner.segments());
    return text;
  }
  std::string operator()(const Path& path) const { return (path.closed ? "loop " : "path ") + along(path.segments); }
  std::string operator()(const Text& text) const {
    return "text " + at(text.at) + ' ' + number(text.height) + " \"" + text.text + '"';
  }
};

// Points of a pattern are no points of the drawing, so they are written otherwise.
std::string patternAt(const Point& point) { return number(point.x) + ' ' + number(point.y); }

std::string dump(const Matter& matter) {
  std::string text = " of " + std::string(name(matter.substance));
  if (!matter.name.empty()) text += " \"" + matter.name + '"';
  if (matter.run) {
    text += " repeat " + number(matter.run->repeat) + " at " + patternAt(matter.run->from) + " along " +
            patternAt(matter.run->along) + (matter.run->mirror ? " mirrored" : "");
  }
  if (matter.leafWidth > 0) text += " leaves " + patternAt({matter.leafWidth, matter.leafHeight});
  if (matter.scatter && !matter.scatter->flakes.empty()) {
    const Flake& first = matter.scatter->flakes.front();
    text += ' ' + std::to_string(matter.scatter->flakes.size()) + " flakes, the first at " +
            patternAt(first.corners[0]) + " tone " + std::to_string(first.tone);
  }
  return text;
}

}  // namespace

std::string_view name(Substance substance) {
  switch (substance) {
    case Substance::Board: return "board";
    case Substance::Core: return "core";
    case Substance::Paint: return "paint";
    case Substance::Paper: return "paper";
    case Substance::Pigment: return "pigment";
    case Substance::Wash: return "wash";
    case Substance::Flake: return "flake";
    case Substance::LaidLeaf: return "laidLeaf";
    case Substance::Sheet: return "sheet";
  }
  return "";
}

std::string_view name(Role role) {
  switch (role) {
    case Role::BoardEdge: return "boardEdge";
    case Role::BoardFace: return "boardFace";
    case Role::BoardSight: return "boardSight";
    case Role::Bevel: return "bevel";
    case Role::Band: return "band";
    case Role::Mitre: return "mitre";
    case Role::Line: return "line";
    case Role::Spandrel: return "spandrel";
    case Role::Wash: return "wash";
    case Role::Leaf: return "leaf";
    case Role::Artwork: return "artwork";
    case Role::Mark: return "mark";
    case Role::Setting: return "setting";
    case Role::Dimension: return "dimension";
    case Role::DimensionText: return "dimensionText";
    case Role::Section: return "section";
    case Role::Sheet: return "sheet";
    case Role::Tool: return "tool";
    case Role::Blade: return "blade";
    case Role::Film: return "film";
    case Role::Waste: return "waste";
    case Role::Motion: return "motion";
    case Role::Guide: return "guide";
  }
  return "";
}

bool isOfAct(Role role) {
  switch (role) {
    case Role::Section:
    case Role::Sheet:
    case Role::Tool:
    case Role::Blade:
    case Role::Film:
    case Role::Waste:
    case Role::Motion:
    case Role::Guide: return true;
    default: return false;
  }
}

std::string dump(const Primitive& primitive) {
  std::string text =
      primitive.element + ' ' + std::string(name(primitive.role)) + ' ' + std::visit(ShapeText{}, primitive.shape);
  if (primitive.matter) text += dump(*primitive.matter);
  if (primitive.standing == Standing::ToCome) text += " to come";
  return text;
}

std::string dump(const Drawing& drawing) {
  std::string text = "drawing " + number(drawing.width) + " x " + number(drawing.height);
  text += drawing.side == Side::Face ? " face\n" : " back\n";
  for (const Primitive& primitive : drawing.primitives) text += dump(primitive) + '\n';
  for (const DrawnPlace& drawn : drawing.places) {
    text += "place " + std::string(name(drawn.place)) + ' ' + number(drawn.at.x) + ' ' + number(drawn.at.y) + '\n';
  }
  return text;
}

}  // namespace core::sheets
