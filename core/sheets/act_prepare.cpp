#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

constexpr double kBench = 75;

void bench(ActPainter& p) { p.line(Role::Guide, {{6, kBench}, {114, kBench}}); }

// An open vessel cut through, with what is in it.
void vessel(ActPainter& p, double left, double right, double top, double level) {
  p.area(Role::Film, {{left, level}, {right, level}, {right, kBench - 1}, {left, kBench - 1}});
  p.line(Role::Tool,
         {{left - 2, top}, {left, top}, {left, kBench - 1}, {right, kBench - 1}, {right, top}, {right + 2, top}});
}

void stirrer(ActPainter& p, const Point& low, double angle, double length) {
  p.area(Role::Tool,
         turned({low + Point{-1.6, 0}, low + Point{1.6, 0}, low + Point{1.6, -length}, low + Point{-1.6, -length}}, low,
                angle));
}

void grains(ActPainter& p, std::initializer_list<Point> at) {
  for (const Point& one : at) p.disc(Role::Film, one, 0.9);
}

}  // namespace

void weigh(ActPainter& p, bool) {
  bench(p);
  p.area(Role::Tool, {{30, kBench}, {36, 60}, {84, 60}, {90, kBench}});
  p.box(Role::Section, {50, 64.5}, {70, 70.5});
  p.area(Role::Tool, {{58, 60}, {58, 55}, {62, 55}, {62, 60}});
  p.area(Role::Sheet, {{32, 50}, {88, 50}, {84, 55}, {36, 55}});
  p.area(Role::Film, joined(curve({42, 50}, {52, 40}, {60, 36}), curve({60, 36}, {68, 40}, {78, 50})));
  p.area(Role::Tool, turned({{64, 16}, {74, 15}, {110, 15}, {110, 18}, {74, 19}, {70, 21}, {66, 20}}, {66, 18}, 14));
  grains(p, {{64, 22}, {62, 27}, {65, 30}, {60, 33}});
  p.place(ActPlace::Work, {88, 42});
}

void stir(ActPainter& p, bool) {
  bench(p);
  vessel(p, 34, 86, 30, 42);
  stirrer(p, {56, 70}, -16, 62);
  p.arrow(arc({60, 57}, 19, 6.5, 200, 520));
  p.place(ActPlace::Tool, {86, 16});
  p.place(ActPlace::Work, {76, 68});
}

void cook(ActPainter& p, bool) {
  p.area(Role::Section, {{24, 70}, {96, 70}, {96, 77}, {24, 77}});
  for (const double x : {38.0, 60.0, 82.0}) {
    p.line(Role::Motion,
           joined(curve({x, 68.5}, {x + 3, 66.5}, {x, 64.5}), curve({x, 64.5}, {x - 3, 62.5}, {x, 60.5})));
  }
  p.area(Role::Film, {{34, 38}, {86, 38}, {86, 58}, {34, 58}});
  p.line(Role::Tool, {{34, 28}, {34, 58}, {86, 58}, {86, 28}});
  p.area(Role::Tool, {{86, 30}, {114, 26}, {114, 30}, {86, 34}});
  stirrer(p, {54, 55}, -14, 50);
  p.arrow(arc({60, 47}, 18, 5, 200, 520));
  p.place(ActPlace::Tool, {82, 12});
  p.place(ActPlace::Work, {26, 48});
  p.place(ActPlace::Under, {106, 72});
}

void strain(ActPainter& p, bool) {
  bench(p);
  p.area(Role::Film, arc({60, 58}, 28.4, 16.4, -14, -166));
  p.line(Role::Tool, joined(joined(Points{{30, 54}}, arc({60, 58}, 29, 17, 180, 360)), {{90, 54}}));
  // The strainer: a mesh, what is rubbed through it, drops below.
  p.area(Role::Film, joined(Points{{36, 26}, {84, 26}}, arc({60, 26}, 24, 15, 0, -180)));
  for (double angle = 195; angle < 350; angle += 15) {
    const Point at = arc({60, 22}, 28, 21, angle, angle).front();
    p.disc(Role::Guide, at, 0.7);
  }
  p.line(Role::Tool, joined(joined(Points{{30, 22}}, arc({60, 22}, 28, 21, 180, 360)), {{114, 22}}));
  for (const double x : {48.0, 60.0, 72.0}) p.area(Role::Film, {{x, 46}, {x + 1.6, 50}, {x, 52}, {x - 1.6, 50}});
  p.area(Role::Tool, turned({{58, 38}, {50, 26}, {57, 26}, {57, 0}, {59, 0}, {59, 26}, {66, 26}}, {58, 38}, -22));
  p.arrow({{40, 6}, {40, 22}});
  p.place(ActPlace::Tool, {88, 12});
  p.place(ActPlace::Work, {60, 68});
}

}  // namespace core::sheets::detail
