#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

// The board with its bevel towards the opening, to the right.
Slab edge(bool back) {
  Slab board;
  board.left = 6;
  board.right = back ? 72 : 58;
  board.slope = back ? -14 : 14;
  board.top = 54;
  board.away = {22, -38};
  return board;
}

}  // namespace

void tapeEdge(ActPainter& p, bool back) {
  const Slab board = edge(back);
  paint(p, board);
  p.area(Role::Film, board.patch(board.right - 20, board.right, 0, 1));
  // Rubbed down along the edge it must not pass.
  p.line(Role::Motion, {board.onTop(board.right, 0), board.onTop(board.right, 1)});
  p.bone(board.onTop(board.right - 3, 0.42), 40);
  p.arrow({board.onTop(board.right - 29, 0.95), board.onTop(board.right - 29, 0.2)});
  p.place(ActPlace::Work, board.onTop(board.right - 10, 0.16));
  p.place(ActPlace::End, board.onTop(board.right - 10, 0.9));
  p.place(ActPlace::Tool, board.onTop(board.right - 3, 0.42) + Point{22, -10});
}

void fluidEdge(ActPainter& p, bool back) {
  const Slab board = edge(back);
  paint(p, board);
  Points film;
  for (int i = 0; i <= 12; ++i) {
    const double ragged = i % 2 == 0 ? 8.5 : 10.5;
    film.push_back(board.onTop(board.right - ragged, 1 - 0.62 * i / 12));
  }
  film.push_back(board.onTop(board.right, 0.38));
  film.push_back(board.onTop(board.right, 1));
  p.area(Role::Film, film);
  p.line(Role::Motion, {board.onTop(board.right, 0.38), board.onTop(board.right, 1)});
  p.brush(board.onTop(board.right - 4, 0.36), 50);
  p.arrow({board.onTop(board.right - 20, 0.95), board.onTop(board.right - 20, 0.25)});
  p.place(ActPlace::Tool, board.onTop(board.right - 4, 0.36) + Point{22, -12});
  p.place(ActPlace::End, board.onTop(board.right - 5, 0.94));
}

void brushBevel(ActPainter& p, bool) {
  // A bevel is coloured from the side it is seen from.
  const Slab board = edge(false);
  paint(p, board);
  p.area(Role::Tool, board.patch(board.right - 18, board.right, 0, 1));
  p.area(Role::Film, board.bevelPatch(0.36, 1));
  p.brush(board.onBevel(0.55, 0.33), 28);
  p.arrow({board.onBevel(0.5, 0.96), board.onBevel(0.5, 0.58)});
  p.place(ActPlace::Work, board.onBevel(0.5, 0.86));
  p.place(ActPlace::Under, board.onTop(board.right - 9, 0.3));
}

void peel(ActPainter& p, bool) {
  Slab board;
  board.left = 4;
  board.right = 88;
  board.top = 64;
  board.thickness = 11;
  board.away = {28, -26};
  paint(p, board);
  // Drawn back low over what still holds, from the right end to the left.
  const double fold = 58;
  const Point lifted{-36, -22};
  p.area(Role::Tool, board.patch(6, fold, 0.3, 0.72));
  const Point near = board.onTop(fold, 0.3);
  const Point far = board.onTop(fold, 0.72);
  p.area(Role::Sheet, {near, far, far + lifted, near + lifted});
  p.area(Role::Film, {near, far, far + lifted, near + lifted});
  const Point held = (near + far) * 0.5 + lifted;
  p.finger(held + Point{5, 3}, 160);
  p.arrow(curve({108, 32}, {96, 10}, {62, 14}));
  p.place(ActPlace::Way, {98, 24});
  p.place(ActPlace::Piece, {66, 69});
  p.place(ActPlace::Under, board.onTop(20, 0.5));
}

void rubOff(ActPainter& p, bool back) {
  const Slab board = edge(back);
  paint(p, board);
  if (!back) p.area(Role::Section, board.bevelPatch());
  p.area(Role::Film, board.patch(board.right - 10, board.right, 0.55, 1));
  // What has been rubbed off lies in crumbs.
  const double crumbs[][2] = {{24, 0.3}, {28, 0.42}, {20, 0.2}, {33, 0.34}, {27, 0.16}, {36, 0.48}, {31, 0.24}};
  for (const auto& crumb : crumbs) p.disc(Role::Film, board.onTop(board.right - crumb[0], crumb[1]), 1.3);
  p.finger(board.onTop(board.right - 8, 0.36), 30);
  p.arrow({board.onTop(board.right - 12, 0.62), board.onTop(board.right - 40, 0.62)});
  p.place(ActPlace::Tool, board.onTop(board.right - 8, 0.36) + Point{20, -4});
  p.place(ActPlace::Work, board.onTop(board.right - 5, 0.92));
  p.place(ActPlace::Aside, board.onTop(board.right - 44, 0.24));
}

}  // namespace core::sheets::detail
