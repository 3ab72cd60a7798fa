#include "core/sheets/act_families.h"

namespace core::sheets::detail {

void setOut(ActPainter& p, bool) {
  p.box(Role::Sheet, {6, 8}, {114, 72});
  p.disc(Role::Tool, {30, 38}, 15);
  p.disc(Role::Film, {30, 38}, 11);
  p.brush({54, 60}, 78, false);
  p.brush({66, 60}, 78, false);
  p.area(Role::Sheet, turned({{84, 24}, {106, 24}, {106, 54}, {84, 54}}, {95, 39}, 8));
  p.area(Role::Film, turned({{87, 28}, {103, 28}, {103, 50}, {87, 50}}, {95, 39}, 8));
  p.place(ActPlace::Work, {95, 62});
  p.place(ActPlace::Tool, {60, 14});
  p.place(ActPlace::Aside, {30, 60});
}

void clean(ActPainter& p, bool) {
  p.box(Role::Sheet, {6, 6}, {114, 74});
  p.line(Role::Guide, {{92, 66}, {106, 66}});
  p.line(Role::Guide, {{98, 70}, {106, 70}});
  p.arrow(joined(joined(joined(Points{{16, 20}, {90, 20}}, arc({90, 31}, 11, 90, -90)),
                        joined(Points{{90, 42}, {30, 42}}, arc({30, 51.5}, 9.5, 90, 270))),
                 {{30, 61}, {52, 61}}));
  p.area(Role::Film, {{54, 52}, {66, 50}, {82, 53}, {84, 64}, {76, 72}, {60, 71}, {53, 66}});
  p.finger({60, 61}, 8);
  p.finger({64, 54}, 16);
  p.place(ActPlace::Tool, {60, 70});
  p.place(ActPlace::Way, {104, 31});
  p.place(ActPlace::End, {12, 44});
  p.place(ActPlace::Aside, {108, 60});
}

void tryPatch(ActPainter& p, bool) {
  // The piece waits; the offcut of the same board is tried.
  p.ring(Role::Section, {4, 6}, {54, 74}, {18, 24}, {40, 56});
  p.box(Role::Sheet, {64, 20}, {116, 74});
  p.area(Role::Film, {{72, 44}, {100, 42}, {101, 50}, {99, 64}, {73, 65}, {71, 56}});
  p.brush({96, 48}, 112);
  p.arrow({{78, 56}, {96, 56}});
  p.place(ActPlace::Piece, {12, 40});
  p.place(ActPlace::Aside, {108, 66});
  p.place(ActPlace::Work, {84, 66});
  p.place(ActPlace::Tool, {78, 26});
}

void look(ActPainter& p, bool) {
  p.box(Role::Section, {6, 62}, {114, 74});
  // Low light: whatever stands up throws a shadow.
  p.area(Role::Film, {{24, 40}, {114, 61.5}, {28, 61.5}, {22, 48}});
  p.area(Role::Section, joined(curve({64, 62}, {66, 57.6}, {69, 57.6}), curve({69, 57.6}, {72, 57.6}, {74, 62})));
  p.area(Role::Blade, {{74, 60.6}, {92, 61.4}, {92, 62.4}, {73, 62.4}});
  p.area(Role::Tool, {{6, 30}, {20, 36}, {25, 39}, {21, 49}, {15, 47}, {3, 40}});
  // The eye.
  const Points upper = curve({78, 24}, {94, 6}, {110, 24});
  const Points lower = curve({110, 24}, {94, 38}, {78, 24});
  p.area(Role::Tool, joined(upper, lower));
  p.disc(Role::Blade, {92, 23}, 5.2);
  p.arrow({{84, 33}, {74, 50}});
  p.place(ActPlace::Tool, {34, 32});
  p.place(ActPlace::Way, {72, 12});
  p.place(ActPlace::Work, {54, 52});
  p.place(ActPlace::Piece, {20, 68});
}

}  // namespace core::sheets::detail
