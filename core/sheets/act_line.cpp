#include "core/sheets/act_families.h"

namespace core::sheets::detail {

void ruleLine(ActPainter& p, bool) {
  Slab board;
  board.left = 4;
  board.right = 92;
  board.top = 60;
  board.thickness = 12;
  board.away = {20, -38};
  paint(p, board);
  // The rule stands on two pads, bevel down: its edge is clear of the board, so nothing can creep under it.
  Slab rule = board;
  rule.left = 16;
  rule.right = 56;
  rule.top = 49;
  rule.thickness = 5.5;
  rule.slope = -5.5;
  p.box(Role::Section, {20, 54.5}, {28, 60});
  p.box(Role::Section, {38, 54.5}, {46, 60});
  p.area(Role::Tool, rule.patch(rule.left, rule.right));
  p.area(Role::Tool, {{16, 49}, {56, 49}, {50.5, 54.5}, {16, 54.5}});
  const double at = 61;
  const double reached = 0.4;
  p.area(Role::Motion, board.patch(at - 0.5, at + 0.5, reached, 0.98));
  p.dashes(Role::Guide, board.onTop(at, 0), board.onTop(at, reached));
  p.pen(board.onTop(at, reached), 78);
  p.arrow({board.onTop(at + 16, 0.9), board.onTop(at + 16, 0.2)});
  p.place(ActPlace::Tool, {88, 18});
  p.place(ActPlace::Under, {36, 40});
  p.place(ActPlace::End, {100, 56});
}

void floodWash(ActPainter& p, bool) {
  p.board({4, 3}, {116, 77});
  p.ring(Role::Sheet, {16, 11}, {104, 69}, {36, 29}, {84, 51});
  // Both wet ends are carried on; they meet at the side across from the start.
  p.area(Role::Film, {{16, 50},
                      {16, 11},
                      {104, 11},
                      {104, 69},
                      {70, 69},
                      {68, 60},
                      {71, 51},
                      {84, 51},
                      {84, 29},
                      {36, 29},
                      {36, 48},
                      {26, 51}});
  p.brush({70, 60}, 48);
  p.arrow({{58, 60}, {42, 60}});
  p.arrow({{26, 40}, {26, 60}});
  p.place(ActPlace::Work, {60, 20});
  p.place(ActPlace::Tool, {96, 46});
  p.place(ActPlace::Way, {50, 70});
}

}  // namespace core::sheets::detail
