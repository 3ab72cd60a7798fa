#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

// A mount cut through its window, its bevels facing up.
void mountSection(ActPainter& p, double left, double right, double top, double thickness) {
  const double third = (right - left) * 0.3;
  // The far side of the window, seen through the cut.
  p.area(Role::Sheet, {{left + third, top},
                       {right - third, top},
                       {right - third - thickness, top + thickness},
                       {left + third + thickness, top + thickness}});
  p.area(Role::Section,
         {{left, top}, {left + third, top}, {left + third + thickness, top + thickness}, {left, top + thickness}});
  p.area(Role::Section,
         {{right, top}, {right - third, top}, {right - third - thickness, top + thickness}, {right, top + thickness}});
}

}  // namespace

void stack(ActPainter& p, bool) {
  // Glazing, mount, work, backing, from the face down.
  p.box(Role::Tool, {10, 8}, {94, 12});
  mountSection(p, 10, 94, 25, 8);
  p.box(Role::Film, {26, 45}, {78, 48});
  p.box(Role::Section, {10, 52}, {94, 58});
  p.box(Role::Section, {10, 67}, {94, 76});
  p.arrow({{106, 10}, {106, 72}});
  p.place(ActPlace::Tool, {42, 10});
  p.place(ActPlace::Work, {52, 36});
  p.place(ActPlace::Piece, {22, 55});
}

void sealEdge(ActPainter& p, bool) {
  p.box(Role::Tool, {24, 16}, {112, 22});
  p.area(Role::Section, {{24, 22}, {84, 22}, {96, 34}, {24, 34}});
  p.box(Role::Section, {24, 34}, {112, 44});
  p.box(Role::Section, {24, 44}, {112, 60});
  // From the glazing round to the backing, no further in than the frame's lip will cover.
  p.area(Role::Film, {{42, 12.6}, {20, 12.6}, {20, 63.4}, {58, 63.4}, {58, 60}, {24, 60}, {24, 16}, {42, 16}});
  p.dashes(Role::Guide, {46, 3}, {46, 14});
  p.dashes(Role::Guide, {8, 3}, {46, 3});
  p.arrow(joined(joined(Points{{40, 8}, {20, 8}}, arc({20, 13}, 5, 90, 180)),
                 joined(joined(Points{{15, 13}, {15, 63}}, arc({20, 63}, 5, 180, 270)), {{52, 68}})));
  p.place(ActPlace::Work, {7, 42});
  p.place(ActPlace::End, {58, 8});
}

void fitFrame(ActPainter& p, bool) {
  // Face down; the lower edge is in, the upper follows.
  p.area(Role::Section, {{4, 36}, {14, 36}, {14, 62}, {24, 62}, {24, 76}, {4, 76}});
  p.area(Role::Section, {{116, 36}, {106, 36}, {106, 62}, {96, 62}, {96, 76}, {116, 76}});
  const Point low{20.5, 61};
  p.area(Role::Tool, turned({{20.5, 57}, {104, 57}, {104, 61}, {20.5, 61}}, low, 18));
  p.area(Role::Film, turned({{20.5, 49}, {104, 49}, {104, 57}, {20.5, 57}}, low, 18));
  p.area(Role::Section, turned({{20.5, 42}, {104, 42}, {104, 49}, {20.5, 49}}, low, 18));
  p.arrow({{20.5, 8}, {20.5, 34}});
  p.arrow(curve({99, 2}, {112, 12}, {111, 32}));
  p.place(ActPlace::Way, {32, 20});
  p.place(ActPlace::End, {12, 28});
}

}  // namespace core::sheets::detail
