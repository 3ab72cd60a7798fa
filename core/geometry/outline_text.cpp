// The one-line text form of outlines: for logs, goldens and tests.
#include <charconv>
#include <numbers>

#include "core/base/text.h"
#include "core/geometry/outline.h"

namespace core::geometry {
namespace {

using base::Message;
using base::shortestNumber;

constexpr double kFarthest = 100'000;  // mm
constexpr double kGap = 1e-6;          // mm
constexpr std::size_t kLongestText = 1 << 20;

std::string text(Point point) { return shortestNumber(point.x) + ' ' + shortestNumber(point.y); }

struct SegmentText {
  std::string operator()(const Straight& s) const { return "line " + text(s.to); }
  std::string operator()(const Arc& a) const {
    return "arc " + text(a.centre) + ' ' + shortestNumber(a.radius) + ' ' + text(a.to) + ' ' + shortestNumber(a.sweep);
  }
  std::string operator()(const OvalArc& o) const {
    return "oval " + text(o.centre) + ' ' + shortestNumber(o.semiX) + ' ' + shortestNumber(o.semiY) + ' ' +
           shortestNumber(o.out) + ' ' + shortestNumber(o.start) + ' ' + shortestNumber(o.sweep);
  }
};

class Reader {
 public:
  explicit Reader(std::string_view text) : m_words(base::split(text, ' ')) {}

  base::Result<Outline, Message> read() {
    Point from;
    if (!word("from") || !point(from)) return wrong("outline.malformed");
    Point at = from;
    std::vector<Segment> segments;
    while (m_next < m_words.size()) {
      if (word("line")) {
        Straight straight{at, {}};
        if (!point(straight.to)) return wrong("outline.malformed");
        at = straight.to;
        segments.push_back(straight);
      } else if (word("arc")) {
        Arc arc;
        arc.from = at;
        if (!point(arc.centre) || !number(arc.radius) || !point(arc.to) || !number(arc.sweep)) {
          return wrong("outline.malformed");
        }
        if (!isTrue(arc)) return wrong("outline.arc-off-circle");
        at = arc.to;
        segments.push_back(arc);
      } else if (word("oval")) {
        OvalArc oval;
        if (!point(oval.centre) || !number(oval.semiX) || !number(oval.semiY) || !number(oval.out) ||
            !number(oval.start) || !number(oval.sweep)) {
          return wrong("outline.malformed");
        }
        if (!isTrue(oval, at)) return wrong("outline.bad-oval");
        at = endOf(oval);
        segments.push_back(oval);
      } else {
        return wrong("outline.malformed");
      }
    }
    if (segments.empty() || distance(at, from) > kGap) return wrong("outline.open");
    if (!std::holds_alternative<OvalArc>(segments.back())) {
      setEnd(segments.back(), startOf(segments.front()));
    } else {
      setStart(segments.front(), at);
    }
    return Outline(std::move(segments));
  }

 private:
  static void setStart(Segment& segment, Point point) {
    if (auto* straight = std::get_if<Straight>(&segment)) straight->from = point;
    if (auto* arc = std::get_if<Arc>(&segment)) arc->from = point;
  }

  static void setEnd(Segment& segment, Point point) {
    if (auto* straight = std::get_if<Straight>(&segment)) straight->to = point;
    if (auto* arc = std::get_if<Arc>(&segment)) arc->to = point;
  }

  bool word(std::string_view wanted) {
    if (m_next >= m_words.size() || m_words[m_next] != wanted) return false;
    ++m_next;
    return true;
  }

  bool number(double& target) {
    if (m_next >= m_words.size()) return false;
    const std::string& text = m_words[m_next];
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), target);
    if (error != std::errc() || end != text.data() + text.size()) return false;
    if (!(std::fabs(target) <= kFarthest)) return false;
    ++m_next;
    return true;
  }

  bool point(Point& target) { return number(target.x) && number(target.y); }

  static bool isTrue(const Arc& arc) {
    constexpr double kTurn = 2 * std::numbers::pi;
    if (arc.radius <= kGap || arc.sweep == 0 || std::fabs(arc.sweep) > kTurn + 1e-12) return false;
    if (arc.from == arc.to && std::fabs(arc.sweep) < kTurn / 2) return false;
    if (std::fabs(distance(arc.centre, arc.from) - arc.radius) > kGap) return false;
    const double angle = std::atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x) + arc.sweep;
    const Point led{arc.centre.x + arc.radius * std::cos(angle), arc.centre.y + arc.radius * std::sin(angle)};
    return distance(led, arc.to) <= kGap;
  }

  static bool isTrue(const OvalArc& oval, Point at) {
    constexpr double kTurn = 2 * std::numbers::pi;
    if (oval.semiX < kGap || oval.semiY < kGap) return false;
    if (oval.sweep == 0 || std::fabs(oval.sweep) > kTurn + 1e-12 || std::fabs(oval.start) > 2 * kTurn) return false;
    if (oval.out <= -oval::leastCurvatureRadius(oval.semiX, oval.semiY)) return false;
    return distance(oval::pointAt(oval, oval.start), at) <= kGap;
  }

  base::Result<Outline, Message> wrong(std::string_view id) const {
    return Message(id).with("word", static_cast<std::int64_t>(m_next + 1));
  }

  std::vector<std::string> m_words;
  std::size_t m_next = 0;
};

}  // namespace

std::string outlineText(const Outline& outline) {
  if (outline.empty()) return "";
  std::string line = "from " + text(startOf(outline.segments().front()));
  for (const Segment& segment : outline.segments()) line += ' ' + std::visit(SegmentText{}, segment);
  return line;
}

base::Result<Outline, Message> parseOutline(std::string_view text) {
  if (text.empty()) return Outline();
  if (text.size() > kLongestText) return Message("outline.too-long");
  return Reader(text).read();
}

}  // namespace core::geometry
