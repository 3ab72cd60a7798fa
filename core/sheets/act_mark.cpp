#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

constexpr double kLeg = 8;

void markBoard(ActPainter& p, const Point& from, const Point& to, bool back) {
  if (back) {
    p.markedCorner({to.x, from.y}, -kLeg, kLeg);
  } else {
    p.markedCorner(from, kLeg, kLeg);
  }
}

}  // namespace

void measure(ActPainter& p, bool back) {
  const Point from{12, 6};
  const Point to{92, 74};
  p.ring(Role::Sheet, from, to, {34, 24}, {70, 56});
  markBoard(p, from, to, back);
  p.dashes(Role::Guide, {34, 24}, {70, 56});
  p.dashes(Role::Guide, {34, 56}, {70, 24});
  p.rule({27, 35}, {116, 45});
  for (const double x : {34.0, 70.0}) p.area(Role::Film, {{x, 34}, {x - 2.6, 28}, {x + 2.6, 28}});
  for (const double x : {34.0, 70.0}) p.line(Role::Motion, {{x, 35}, {x, 45}});
  p.place(ActPlace::Tool, {104, 40});
  p.place(ActPlace::Work, {52, 28});
  p.place(ActPlace::End, {52, 65});
}

void square(ActPainter& p, bool) {
  const Point from{14, 8};
  const Point to{106, 72};
  p.board(from, to);
  p.dashes(Role::Guide, {14, 72}, {106, 8});
  p.line(Role::Motion, {from, to});
  for (const Point& end : {from, to}) p.disc(Role::Motion, end, 1.6);
  p.area(Role::Film, {from, {26, 8}, {14, 20}});
  p.pencil({15.5, 19.5}, 305);
  p.place(ActPlace::Work, {66, 46});
  p.place(ActPlace::End, {34, 16});
  p.place(ActPlace::Tool, {34, 58});
}

void markOut(ActPainter& p, bool back) {
  // Drawn back up, the marked corner at the right; turned over for the face.
  const auto at = [back](double x, double y) { return Point{back ? x : kActWidth - x, y}; };
  p.board({12, 4}, {108, 76});
  p.markedCorner(at(108, 4), back ? -kLeg : kLeg, kLeg);
  for (const double x : {40.0, 82.0}) p.line(Role::Film, {at(x, 16), at(x, 68)});
  for (const double y : {26.0, 58.0}) p.line(Role::Film, {at(30, y), at(92, y)});
  p.arrow({at(108, 42), at(83.5, 42)});
  p.arrow({at(61, 4), at(61, 24.5)});
  p.pencil(at(30, 58), back ? 145 : 35);
  p.place(ActPlace::End, at(99, 13));
  p.place(ActPlace::Work, at(61, 58));
  p.place(ActPlace::Way, at(98, 52));
  p.place(ActPlace::Tool, at(20, 66));
}

void markCorners(ActPainter& p, bool) {
  p.board({{4, 4}, {116, 4}, {116, 50}, {78, 50}, {78, 76}, {4, 76}});
  p.area(Role::Section, {{116, 50}, {78, 50}, {78, 76}, {84, 76}, {84, 56}, {116, 56}});
  p.dashes(Role::Guide, {78, 50}, {32, 4});
  p.line(Role::Motion, {{58, 44}, {58, 30}, {72, 30}});
  p.line(Role::Motion, {{42, 28}, {42, 14}, {56, 14}});
  p.line(Role::Guide, {{74, 30}, {108, 30}});
  p.arrow({{98, 49}, {98, 31.5}});
  p.pencil({42, 28}, 205);
  p.place(ActPlace::Way, {108, 41});
  p.place(ActPlace::Work, {66, 22});
  p.place(ActPlace::Tool, {18, 48});
}

void note(ActPainter& p, bool) {
  p.box(Role::Sheet, {10, 12}, {74, 68});
  for (const double y : {24.0, 34.0, 44.0, 54.0}) p.line(Role::Guide, {{18, y}, {66, y}});
  p.line(Role::Motion, {{18, 24}, {60, 24}});
  p.line(Role::Motion, {{18, 34}, {44, 34}});
  p.pencil({44, 34}, 38);
  p.area(Role::Section, {{84, 36}, {112, 36}, {112, 68}, {84, 68}});
  p.box(Role::Tool, {86, 28}, {110, 36});
  p.box(Role::Sheet, {84, 44}, {112, 58});
  p.line(Role::Motion, {{89, 51}, {104, 51}});
  p.place(ActPlace::Work, {30, 44});
  p.place(ActPlace::Aside, {98, 19});
}

}  // namespace core::sheets::detail
