#include "core/sheets/svg.h"

#include "core/base/text.h"
#include "core/sheets/names.h"

namespace core::sheets {
namespace {

// Cap height of text whose height the drawing leaves open, in mm.
constexpr double kTextHeight = 5;
constexpr double kCapShare = 0.7;

std::string millimetres(double value) { return base::fixedNumber(value, 3); }

std::string escaped(std::string text) {
  text = base::replaceAll(std::move(text), "&", "&amp;");
  text = base::replaceAll(std::move(text), "<", "&lt;");
  text = base::replaceAll(std::move(text), ">", "&gt;");
  return base::replaceAll(std::move(text), "\"", "&quot;");
}

std::string moveTo(const Point& point) { return "M" + millimetres(point.x) + ' ' + millimetres(point.y); }
std::string lineTo(const Point& point) { return "L" + millimetres(point.x) + ' ' + millimetres(point.y); }

std::string box(const Point& from, const Point& to) {
  return moveTo(from) + lineTo({to.x, from.y}) + lineTo(to) + lineTo({from.x, to.y}) + 'Z';
}

// A parallel curve of an ellipse has no element of its own: points a degree apart stand for it.
constexpr int kOvalPoints = 360;

struct SegmentData {
  std::string operator()(const geometry::Straight& straight) const { return lineTo(straight.to); }
  std::string operator()(const geometry::Arc& arc) const {
    // Two halves: ends that fall together would draw nothing.
    const geometry::Segment whole = arc;
    return half(arc, geometry::pointAt(whole, 0.5)) + half(arc, arc.to);
  }
  std::string operator()(const geometry::OvalArc& oval) const {
    std::string data;
    const geometry::Segment whole = oval;
    for (int i = 1; i <= kOvalPoints; ++i) data += lineTo(geometry::pointAt(whole, double(i) / kOvalPoints));
    return data;
  }

 private:
  static std::string half(const geometry::Arc& arc, const Point& to) {
    const std::string radius = millimetres(arc.radius);
    // Half of what is at most a whole turn is never the larger arc.
    return "A" + radius + ' ' + radius + " 0 0 " + (arc.sweep > 0 ? "1 " : "0 ") + millimetres(to.x) + ' ' +
           millimetres(to.y);
  }
};

std::string along(const std::vector<geometry::Segment>& segments, bool closed) {
  if (segments.empty()) return "";
  std::string data = moveTo(geometry::startOf(segments.front()));
  for (const geometry::Segment& segment : segments) data += std::visit(SegmentData{}, segment);
  return closed ? data + 'Z' : data;
}

// Presentation attributes rather than a style sheet: every reader of SVG 1.1 follows those.
std::string_view ink(Role role) {
  switch (role) {
    case Role::Bevel:
    case Role::Band:
    case Role::Spandrel:
    case Role::Wash:
    case Role::Leaf:
      return "fill=\"#1B1F23\" fill-opacity=\"0.12\" fill-rule=\"evenodd\" stroke=\"#1B1F23\" stroke-width=\"0.25\"";
    case Role::Line:
    case Role::Mark: return "fill=\"#1B1F23\" fill-rule=\"evenodd\"";
    case Role::Artwork: return "fill=\"#1B1F23\" fill-opacity=\"0.05\"";
    case Role::Dimension: return "fill=\"none\" stroke=\"#7A3410\" stroke-width=\"0.5\"";
    case Role::DimensionText: return "fill=\"#7A3410\" font-family=\"sans-serif\"";
    case Role::Setting: return "fill=\"none\" stroke=\"#505458\" stroke-width=\"0.2\" stroke-dasharray=\"4 1.5 1 1.5\"";
    case Role::BoardEdge:
    case Role::BoardFace:
    case Role::BoardSight:
    case Role::Mitre: break;
    default: break;  // of an act: actInk
  }
  return "fill=\"none\" stroke=\"#1B1F23\" stroke-width=\"0.25\"";
}

// Drawings of acts: grey is the piece, outlined a tool, coloured what the hand lays and the way it goes.
std::string actInk(Role role, bool closed) {
  std::string_view fill = "none";
  std::string_view stroke = "#1B1F23";
  std::string_view width = "0.45";
  switch (role) {
    case Role::Section: fill = "#DDDBD5"; break;
    case Role::Sheet: fill = "#FFFFFF"; break;
    case Role::Tool:
      fill = "#FFFFFF";
      width = "0.6";
      break;
    case Role::Blade: fill = "#1B1F23"; break;
    case Role::Film:
    case Role::Motion:
      fill = stroke = "#7A3410";
      if (role == Role::Motion) width = "1.2";
      break;
    default:
      stroke = "#8A8D90";
      width = "0.3";
      break;
  }
  std::string text = "fill=\"" + std::string(closed ? fill : "none") + "\" fill-rule=\"evenodd\"";
  if (role == Role::Film) text += " fill-opacity=\"0.38\"";
  return text + " stroke=\"" + std::string(stroke) + "\" stroke-width=\"" + std::string(width) +
         "\" stroke-linejoin=\"round\" stroke-linecap=\"round\"";
}

std::string path(Role role, bool closed, const std::string& data, const std::string& element) {
  const std::string style = isOfAct(role) ? actInk(role, closed) : std::string(ink(role));
  return "<path class=\"" + std::string(name(role)) + "\" " + style + " d=\"" + data + "\"><title>" + escaped(element) +
         "</title></path>\n";
}

struct ShapeSvg {
  const Primitive& primitive;

  std::string operator()(const Frame& frame) const {
    std::string data = box(frame.outerFrom, frame.outerTo);
    if (frame.innerFrom != frame.innerTo) data += box(frame.innerFrom, frame.innerTo);
    return path(primitive.role, true, data, primitive.element);
  }
  std::string operator()(const Stroke& stroke) const {
    if (stroke.points.empty()) return "";
    std::string data = moveTo(stroke.points.front());
    for (std::size_t i = 1; i < stroke.points.size(); ++i) data += lineTo(stroke.points[i]);
    if (stroke.closed) data += 'Z';
    return path(primitive.role, stroke.closed, data, primitive.element);
  }
  std::string operator()(const geometry::Patch& patch) const {
    const std::string data = along(patch.outer.segments(), true) + along(patch.inner.segments(), true);
    return data.empty() ? "" : path(primitive.role, true, data, primitive.element);
  }
  std::string operator()(const Path& line) const {
    const std::string data = along(line.segments, line.closed);
    return data.empty() ? "" : path(primitive.role, line.closed, data, primitive.element);
  }
  std::string operator()(const Text& text) const {
    const double height = text.height > 0 ? text.height : kTextHeight;
    return "<text class=\"" + std::string(name(primitive.role)) + "\" x=\"" + millimetres(text.at.x) + "\" y=\"" +
           millimetres(text.at.y + height / 2) + "\" font-size=\"" + millimetres(height / kCapShare) +
           "\" text-anchor=\"middle\" " + std::string(ink(primitive.role)) + ">" + escaped(text.text) + "</text>\n";
  }
};

}  // namespace

std::string svg(const Drawing& drawing) {
  const std::string width = millimetres(drawing.width);
  const std::string height = millimetres(drawing.height);
  std::string text =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
      "version=\"1.1\" width=\"" +
      width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' ' + height + "\">\n";
  for (const Primitive& primitive : drawing.primitives) text += std::visit(ShapeSvg{primitive}, primitive.shape);
  return text + "</svg>\n";
}

}  // namespace core::sheets
