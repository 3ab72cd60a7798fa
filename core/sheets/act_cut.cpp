#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

// Draws the bed under the board, from the near end.
void bed(ActPainter& p, double top, double thickness) {
  p.area(Role::Sheet, {{3, top}, {96, top}, {116, top - 34}, {23, top - 34}});
  p.area(Role::Section, {{3, top}, {96, top}, {96, top + thickness}, {3, top + thickness}});
  p.area(Role::Section, {{96, top}, {116, top - 34}, {116, top + thickness - 34}, {96, top + thickness}});
}

}  // namespace

void cutSquare(ActPainter& p, bool) {
  bed(p, 62, 8);
  Slab board;
  board.right = 90;
  board.top = 50;
  board.thickness = 12;
  paint(p, board);
  const double cut = 58;
  p.hatch(board.patch(cut, 90));
  p.hatch({{cut, 50}, {90, 50}, {90, 62}, {cut, 62}});
  // The rule lies on what is kept, along the cut.
  Slab rule;
  rule.left = 38;
  rule.right = cut;
  rule.top = 50 - 4;
  rule.thickness = 4;
  p.area(Role::Tool, rule.bevelPatch());
  p.area(Role::Tool, rule.patch(rule.left, rule.right));
  p.box(Role::Tool, {38, 46}, {cut, 50});
  p.line(Role::Film, {{cut, 50}, {cut, 63}});
  p.line(Role::Motion, {board.onTop(cut, 0), board.onTop(cut, 1)});
  p.knife({cut, 64}, 90, false);
  p.line(Role::Motion, {{cut - 7, 62}, {cut - 7, 55}, {cut, 55}});
  p.arrow({board.onTop(76, 0.95), board.onTop(76, 0.2)});
  p.place(ActPlace::Work, {84, 28});
  p.place(ActPlace::Piece, {22, 54});
  p.place(ActPlace::Aside, {78, 56});
  p.place(ActPlace::Tool, {30, 38});
}

void cutBevel(ActPainter& p, bool back) {
  bed(p, 60, 8);
  Slab board;
  board.right = 92;
  paint(p, board);
  // The blade goes a third into the slip sheet. Back up it leans over what falls away, face up over what is kept.
  const double lean = back ? -1 : 1;
  const double cut = back ? 62 : 46;
  const Point low{cut + lean * 14, 60};
  p.hatch(board.patch(cut, 92));
  p.hatch({{cut, 46}, {92, 46}, {92, 60}, low});
  p.line(Role::Motion, {board.onTop(cut, 0), board.onTop(cut, 1)});
  p.line(Role::Motion, {{cut, 46}, low});
  p.knife(low + Point{lean * 2.6, 2.6}, back ? 45 : 135, !back);
  p.arrow({board.onTop(cut - 14, 0.95), board.onTop(cut - 14, 0.15)});
  p.place(ActPlace::Under, {16, 64});
  p.place(ActPlace::Tool, back ? Point{101, 43} : Point{30, 36});
  p.place(ActPlace::Way, board.onTop(cut - 22, 0.5));
  p.place(ActPlace::End, board.onTop(cut, 1) + Point{2, -3});
  p.place(ActPlace::Aside, board.onTop(84, 0.4));
}

void cutCurve(ActPainter& p, bool back) {
  const Point centre{60, 42};
  const double radius = 27;
  p.board({10, 4}, {110, 76});
  p.markedCorner(back ? Point{110, 4} : Point{10, 4}, back ? -8 : 8, 8);
  Points arch = arc(centre, radius, 180, 0);
  Points opening = joined(arch, {{87, 70}, {33, 70}});
  p.hatch(opening);
  p.line(Role::Blade, {{33, 42}, {33, 70}, {87, 70}, {87, 42}});
  p.dashes(Role::Guide, {18, 42}, {102, 42});
  p.dashes(Role::Guide, {60, 8}, {60, 76});
  p.line(Role::Guide, arch);
  p.line(Role::Motion, arc(centre, radius, 180, 62));
  const Point tip = arc(centre, radius, 62, 62).front();
  // The arm that holds the radius.
  p.line(Role::Tool, {centre, tip});
  p.disc(Role::Tool, centre, 2.2);
  p.knife(tip, 345, false);
  p.arrow(arc(centre, radius + 6, 150, 92));
  p.place(ActPlace::Work, {42, 10});
  p.place(ActPlace::Tool, {98, 32});
  p.place(ActPlace::Aside, {60, 58});
  p.place(ActPlace::End, {22, 52});
  p.place(ActPlace::Way, {76, 8});
}

void cutStrips(ActPainter& p, bool) {
  p.box(Role::Sheet, {3, 4}, {117, 76});
  // Glass under it.
  p.line(Role::Guide, {{106, 64}, {113, 57}});
  p.line(Role::Guide, {{106, 71}, {113, 64}});
  // Two strips are off, the third lies under the rule.
  for (const double y : {8.0, 20.0}) p.paper({10, y}, {102, y + 9});
  p.strip({10, 34}, {102, 68});
  p.hatch({{10, 46}, {102, 46}, {102, 68}, {10, 68}});
  p.rule({5, 33}, {115, 46});
  p.dashes(Role::Motion, {46, 46}, {102, 46});
  p.line(Role::Motion, {{10, 46}, {44, 46}});
  p.knife({44, 46.5}, 325, false);
  p.arrow({{76, 56}, {98, 56}});
  p.place(ActPlace::Tool, {78, 60});
  p.place(ActPlace::Work, {22, 56});
  p.place(ActPlace::Aside, {110, 19});
}

}  // namespace core::sheets::detail
