#include <algorithm>

#include "core/sheets/act_families.h"

namespace core::sheets::detail {

void refit(ActPainter& p, bool back) {
  p.ring(Role::Sheet, {10, 5}, {110, 75}, {38, 20}, {82, 60});
  p.markedCorner(back ? Point{110, 5} : Point{10, 5}, back ? -8 : 8, 8);
  p.box(Role::Section, {39.6, 21.6}, {80.4, 58.4});
  p.box(Role::Film, {30, 35}, {48, 45});
  p.box(Role::Film, {72, 35}, {90, 45});
  p.finger({60, 48}, 285);
  p.place(ActPlace::Work, {60, 32});
  p.place(ActPlace::Aside, {98, 40});
  p.place(ActPlace::Piece, {22, 66});
}

void registerBlank(ActPainter& p, bool back) {
  const auto at = [back](double x, double y) { return Point{back ? x : kActWidth - x, y}; };
  const double leg = back ? -8 : 8;
  const auto box = [&p](Role role, const Point& a, const Point& b) {
    p.box(role, {std::min(a.x, b.x), a.y}, {std::max(a.x, b.x), b.y});
  };
  box(Role::Section, at(4, 16), at(98, 76));
  p.markedCorner(at(98, 16), leg, 8);
  box(Role::Sheet, at(16, 6), at(110, 66));
  p.markedCorner(at(110, 6), leg, 8);
  // Where the next blank will lie, edge under edge: held at two edges of that corner.
  box(Role::Film, at(76, 2), at(88, 11));
  box(Role::Film, at(105, 34), at(114, 46));
  p.line(Role::Guide, {at(44, 22), at(82, 22), at(82, 52), at(44, 52), at(44, 22)});
  p.arrow({at(5, 76), at(5, 76) + Point{back ? 16.0 : -16.0, -13}});
  p.place(ActPlace::End, at(98, 26));
  p.place(ActPlace::Aside, at(65, 9));
}

void joinBoards(ActPainter& p, bool) {
  p.line(Role::Guide, {{3, 70}, {117, 70}});
  // The inner board flat, its opening in the middle; the outer comes down on it from the marked corner.
  p.area(Role::Sheet, {{42, 60}, {78, 60}, {68, 70}, {52, 70}});
  p.area(Role::Section, {{6, 60}, {42, 60}, {52, 70}, {6, 70}});
  p.area(Role::Section, {{114, 60}, {78, 60}, {68, 70}, {114, 70}});
  p.box(Role::Film, {7, 57.4}, {24, 60});
  p.box(Role::Film, {96, 57.4}, {113, 60});
  const Point hinge{6, 57.4};
  const double lift = 15;
  p.area(Role::Sheet, turned({{27, 47.4}, {93, 47.4}, {83, 57.4}, {37, 57.4}}, hinge, lift));
  p.area(Role::Section, turned({{6, 47.4}, {27, 47.4}, {37, 57.4}, {6, 57.4}}, hinge, lift));
  p.area(Role::Section, turned({{114, 47.4}, {93, 47.4}, {83, 57.4}, {114, 57.4}}, hinge, lift));
  p.arrow(arc(hinge, 98, 13, 4));
  p.area(Role::Mark, {{6, 70}, {6, 62}, {11, 70}});
  p.area(Role::Mark, turned({{6, 57.4}, {6, 49.4}, {11, 57.4}}, hinge, lift));
  p.place(ActPlace::Work, {90, 50});
  p.place(ActPlace::End, {11, 40});
  p.place(ActPlace::Way, {106, 14});
  p.place(ActPlace::Piece, {26, 66});
}

void press(ActPainter& p, bool) {
  p.line(Role::Guide, {{3, 74}, {117, 74}});
  p.area(Role::Sheet, {{44, 64}, {76, 64}, {66, 74}, {54, 74}});
  p.area(Role::Section, {{10, 64}, {44, 64}, {54, 74}, {10, 74}});
  p.area(Role::Section, {{110, 64}, {76, 64}, {66, 74}, {110, 74}});
  // Release paper, wider than the board over it.
  p.box(Role::Film, {5, 61.6}, {115, 64});
  p.box(Role::Section, {10, 53}, {110, 61.6});
  p.weight({36, 53}, 30, 17);
  p.weight({84, 53}, 30, 17);
  for (const double x : {36.0, 84.0}) p.arrow({{x, 8}, {x, 28}});
  p.place(ActPlace::Under, {10, 54});
  p.place(ActPlace::Tool, {60, 42});
  p.place(ActPlace::Piece, {60, 57});
}

}  // namespace core::sheets::detail
