#include "core/sheets/act_families.h"

namespace core::sheets::detail {

void brushStrip(ActPainter& p, bool) {
  // Waste paper under the strip; the strip's back up, both ends left dry.
  p.area(Role::Sheet, {{14, 10}, {108, 6}, {112, 66}, {10, 68}});
  p.box(Role::Section, {4, 28}, {116, 52});
  p.box(Role::Film, {26, 28}, {94, 52});
  p.brush({60, 42}, 66);
  p.arrow({{50, 40}, {29, 40}});
  p.arrow({{70, 40}, {91, 40}});
  for (const double from : {4.0, 94.0}) {
    p.line(Role::Motion, {{from, 74}, {from + 22, 74}});
    for (const double x : {from, from + 22}) {
      p.line(Role::Motion, {{x, 71}, {x, 77}});
      p.line(Role::Guide, {{x, 54}, {x, 71}});
    }
  }
  p.place(ActPlace::Tool, {82, 14});
  p.place(ActPlace::End, {15, 40});
  p.place(ActPlace::Under, {104, 60});
}

void fitStrips(ActPainter& p, bool) {
  p.ring(Role::Sheet, {8, 4}, {112, 76}, {44, 31}, {76, 49});
  p.paper({20, 18}, {100, 29});
  p.paper({20, 51}, {100, 62});
  p.paper({31, 8}, {42, 72});
  p.paper({78, 8}, {89, 72});
  for (const double x : {31.0, 78.0}) {
    for (const double y : {18.0, 51.0}) p.box(Role::Film, {x, y}, {x + 11, y + 11});
  }
  p.place(ActPlace::Work, {60, 57});
  p.place(ActPlace::End, {98, 12});
}

void layStrip(ActPainter& p, bool) {
  p.box(Role::Section, {6, 60}, {114, 74});
  // Pasted side down, middle first; the ends are dry and still up.
  Points under = joined(curve({14, 36}, {32, 60}, {60, 60}), curve({60, 60}, {88, 60}, {106, 36}));
  const Points over = moved(under, {0, -3});
  p.area(Role::Sheet, joined(under, Points(over.rbegin(), over.rend())));
  const Points film(under.begin() + 4, under.end() - 4);
  const Points filmOver = moved(film, {0, -1.6});
  p.area(Role::Film, joined(moved(film, {0, 0.4}), Points(filmOver.rbegin(), filmOver.rend())));
  p.area(Role::Mark, {{60, 60.5}, {57, 67}, {63, 67}});
  p.finger({60, 57}, 90);
  p.arrow({{16, 41}, {16, 57}});
  p.arrow({{104, 41}, {104, 57}});
  p.place(ActPlace::Work, {48, 67});
  p.place(ActPlace::Tool, {72, 42});
  p.place(ActPlace::Way, {26, 58});
}

void mitre(ActPainter& p, bool) {
  const Point inner{62, 52};
  const Point outer{34, 24};
  // Hard strip under the crossing, past both ends of the cut.
  p.area(Role::Tool, {{20, 1.5}, {11.5, 10}, {76, 74.5}, {84.5, 66}});
  p.strip({4, 24}, {117, 52});
  p.strip({34, 4}, {62, 77});
  p.dashes(Role::Guide, {34, 24}, {62, 24});
  p.dashes(Role::Guide, {34, 52}, {62, 52});
  p.hatch({{34, 4}, {62, 4}, inner, outer});
  p.hatch({{4, 24}, outer, inner, {4, 52}});
  const Point tip{46, 36};
  p.dashes(Role::Motion, tip, outer);
  p.line(Role::Motion, {inner, tip});
  p.knife(tip, 192, true);
  p.arrow({{66, 46}, {46, 26}});
  p.place(ActPlace::Under, {78, 70});
  p.place(ActPlace::Work, {75, 39});
  p.place(ActPlace::Aside, {22, 33});
}

void closeCorner(ActPainter& p, bool) {
  const Point inner{64, 54};
  const Point outer{32, 22};
  p.strip({outer, {117, 22}, {117, 54}, inner}, {92, 54}, {1, 0}, 32);
  p.strip({outer, inner, {64, 77}, {32, 77}}, {64, 70}, {0, -1}, 32);
  // The two ends that were left dry.
  p.area(Role::Film, {outer, {92, 22}, {92, 54}, inner});
  p.area(Role::Film, {outer, inner, {64, 70}, {32, 70}});
  p.line(Role::Blade, {inner, outer});
  p.finger(inner + Point{-4, -5}, 318);
  p.arrow({{53, 43}, {26, 16}});
  p.place(ActPlace::Work, {84, 38});
  p.place(ActPlace::Tool, {82, 66});
  p.place(ActPlace::Way, {24, 38});
}

void laySpandrel(ActPainter& p, bool) {
  const Point centre{60, 60};
  const double radius = 26;
  const Points arch = arc(centre, radius, 0, 180);
  p.board(joined(joined({{8, 78}, {8, 3}, {112, 3}, {112, 78}, {86, 78}}, arch), {{34, 78}}));
  // Shy of the face edge by a hair, and no further.
  const Points shy = arc(centre, radius + 1.5, 0, 180);
  p.area(Role::Film, joined({{20, 60}, {20, 10}, {100, 10}, {100, 60}}, shy));
  p.finger({60, 33}, 82);
  p.arrow(arc({60, 60}, 38, 76, 40));
  p.arrow(arc({60, 60}, 38, 104, 140));
  p.place(ActPlace::Work, {26, 18});
  p.place(ActPlace::Way, {98, 30});
  p.place(ActPlace::End, {32, 44});
}

}  // namespace core::sheets::detail
