#include "core/sheets/act_families.h"

namespace core::sheets::detail {

void putAway(ActPainter& p, bool) {
  p.line(Role::Guide, {{3, 72}, {117, 72}});
  p.box(Role::Section, {12, 64}, {112, 71});
  p.box(Role::Film, {24, 61}, {104, 64});
  // The cover comes down on it.
  p.area(Role::Section, turned({{12, 57}, {112, 57}, {112, 63}, {12, 63}}, {12, 63}, 24));
  p.line(Role::Tool, joined(Points{{12, 71}}, curve({12, 71}, {7, 66}, {10.6, 60})));
  p.arrow(arc({12, 63}, 93, 20, 5));
  p.place(ActPlace::Work, {80, 56});
}

void gumCloth(ActPainter& p, bool back) {
  // The mount below, its top edge at the joint; the back mount above.
  p.ring(Role::Sheet, {8, 42}, {112, 78}, {34, 57}, {86, 71});
  p.markedCorner(back ? Point{112, 42} : Point{8, 42}, back ? -8 : 8, 8);
  p.box(Role::Sheet, {8, 2}, {112, 39});
  p.box(Role::Film, {12, 31}, {108, 50});
  p.line(Role::Guide, {{12, 39}, {108, 39}});
  p.line(Role::Guide, {{12, 42}, {108, 42}});
  p.finger({56, 37}, 60);
  p.arrow({{44, 36}, {18, 36}});
  p.arrow({{76, 36}, {102, 36}});
  p.place(ActPlace::Piece, {96, 14});
  p.place(ActPlace::Work, {20, 45});
}

void placeWork(ActPainter& p, bool) {
  p.ring(Role::Sheet, {8, 3}, {112, 77}, {36, 22}, {84, 58});
  p.markedCorner({8, 3}, 8, 8);
  p.box(Role::Film, {36, 22}, {84, 58});
  p.line(Role::Guide, {{42, 50}, {52, 38}, {58, 45}, {68, 32}, {78, 50}});
  // Its sheet reaches on under the mount.
  p.dashes(Role::Guide, {26, 14}, {94, 14});
  p.dashes(Role::Guide, {26, 66}, {94, 66});
  p.dashes(Role::Guide, {26, 14}, {26, 66});
  p.dashes(Role::Guide, {94, 14}, {94, 66});
  p.finger({72, 46}, 300);
  p.arrow({{62, 40}, {43, 40}});
  p.arrow({{66, 44}, {66, 27}});
  p.place(ActPlace::Work, {58, 50});
  p.place(ActPlace::Way, {55, 28});
  p.place(ActPlace::End, {26, 12});
  p.place(ActPlace::Piece, {98, 66});
}

void tearHinge(ActPainter& p, bool) {
  Points left;
  Points right;
  for (int i = 0; i <= 16; ++i) {
    const double y = 10 + 60.0 * i / 16;
    const double fray = i % 2 == 0 ? 2.6 : -1.4 + (i % 3);
    left.push_back({54 + fray, y});
    right.push_back({66 - fray, y});
  }
  p.area(Role::Sheet, joined({{8, 70}, {8, 10}}, left));
  p.area(Role::Sheet, joined({{112, 70}, {112, 10}}, right));
  // The damp it gave way along.
  p.area(Role::Film, joined(left, {{49, 70}, {49, 10}}));
  p.area(Role::Film, joined(right, {{71, 70}, {71, 10}}));
  p.arrow({{44, 40}, {18, 40}});
  p.arrow({{76, 40}, {102, 40}});
  p.place(ActPlace::Work, {46, 62});
  p.place(ActPlace::End, {76, 18});
}

void hinge(ActPainter& p, bool) {
  p.box(Role::Sheet, {4, 3}, {116, 77});
  for (const double x : {30.0, 78.0}) p.box(Role::Sheet, {x, 12}, {x + 12, 44});
  // The work lies over the pasted foot of each hinge.
  p.area(Role::Section, {{18, 36}, {102, 36}, {102, 77}, {18, 77}});
  for (const double x : {30.0, 78.0}) {
    p.box(Role::Film, {x, 36}, {x + 12, 44});
    p.box(Role::Film, {x - 8, 21}, {x + 20, 33});
  }
  p.finger({88, 28}, 345);
  p.place(ActPlace::Work, {54, 42});
  p.place(ActPlace::Piece, {60, 62});
  p.place(ActPlace::End, {52, 18});
  p.place(ActPlace::Aside, {60, 27});
}

void rest(ActPainter& p, bool) {
  p.line(Role::Guide, {{3, 75}, {117, 75}});
  p.box(Role::Section, {38, 67}, {116, 74});
  p.box(Role::Film, {50, 64.6}, {108, 67});
  // Open, so that the air gets at it.
  const Point joint{38, 67};
  const double open = 116;
  p.area(Role::Sheet, turned({{59, 60}, {84, 60}, {77, 67}, {66, 67}}, joint, open));
  p.area(Role::Section, turned({{38, 60}, {59, 60}, {66, 67}, {38, 67}}, joint, open));
  p.area(Role::Section, turned({{104, 60}, {84, 60}, {77, 67}, {104, 67}}, joint, open));
  for (const double x : {62.0, 79.0, 96.0}) {
    const Points wave = joined(curve({x, 58}, {x + 6, 51}, {x, 44}), curve({x, 44}, {x - 6, 37}, {x, 30}));
    p.arrow(joined(wave, {{x + 1.5, 21}}));
  }
  p.place(ActPlace::Piece, {94, 58});
}

}  // namespace core::sheets::detail
