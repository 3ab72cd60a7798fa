#include "core/sheets/act_families.h"

namespace core::sheets::detail {
namespace {

// A board with a field in its middle.
Slab fieldBoard() {
  Slab board;
  board.left = 4;
  board.right = 90;
  board.top = 60;
  board.thickness = 12;
  board.away = {24, -40};
  return board;
}

void flake(ActPainter& p, const Point& at, double size, double turn) {
  p.area(Role::Film, turned({at + Point{-size, -size * 0.6}, at + Point{size * 0.7, -size},
                             at + Point{size, size * 0.5}, at + Point{-size * 0.4, size}},
                            at, turn));
}

}  // namespace

void frameField(ActPainter& p, bool) {
  p.box(Role::Section, {3, 2}, {117, 78});
  p.ring(Role::Sheet, {11, 8}, {109, 72}, {40, 27}, {80, 53});
  p.box(Role::Film, {40, 27}, {80, 53});
  for (const double x : {24.0, 96.0}) {
    for (const double y : {19.0, 61.0}) {
      p.box(Role::Tool, {x - 8, y - 7}, {x + 8, y + 7});
      p.disc(Role::Section, {x, y}, 3.4);
    }
  }
  p.place(ActPlace::Under, {22, 40});
  p.place(ActPlace::Tool, {82, 14});
  p.place(ActPlace::Work, {60, 40});
}

void sizeField(ActPainter& p, bool) {
  p.board({4, 3}, {116, 77});
  p.box(Role::Guide, {18, 12}, {102, 68});
  p.area(Role::Film, {{18, 12}, {102, 12}, {102, 45}, {99, 48}, {80, 47}, {62, 49}, {60, 38}, {40, 37}, {18, 38}});
  p.arrow({{26, 21}, {92, 21}});
  p.arrow({{94, 31}, {28, 31}});
  p.line(Role::Motion, {{26, 42}, {46, 42}});
  p.brush({61, 44}, 325);
  p.place(ActPlace::Tool, {92, 58});
  p.place(ActPlace::Work, {40, 26});
  p.place(ActPlace::End, {106, 40});
  p.place(ActPlace::Piece, {10, 70});
  p.place(ActPlace::Way, {60, 26});
}

void scatterLeaf(ActPainter& p, bool) {
  p.box(Role::Section, {6, 66}, {114, 77});
  p.box(Role::Film, {24, 63.6}, {96, 66});
  // A tapped tray, held high.
  p.area(Role::Tool, turned({{34, 8}, {68, 8}, {68, 16}, {34, 16}}, {51, 12}, -14));
  p.finger({41, 13}, 186);
  const double fall[][4] = {{70, 24, 1.8, 20},   {76, 31, 1.5, 70},  {66, 34, 2, 130},  {60, 45, 1.6, 15},
                            {72, 43, 1.9, 95},   {82, 41, 1.4, 50},  {52, 54, 1.7, 75}, {66, 55, 2, 33},
                            {78, 53, 1.6, 10},   {88, 56, 1.8, 115}, {44, 61, 1.6, 40}, {58, 62, 1.8, 5},
                            {72, 61.5, 1.6, 62}, {84, 62, 1.9, 88},  {34, 62, 1.5, 20}};
  for (const auto& one : fall) flake(p, {one[0], one[1]}, one[2], one[3]);
  p.arrow({{104, 18}, {104, 58}});
  p.place(ActPlace::Tool, {80, 12});
  p.place(ActPlace::Work, {14, 60});
}

void layLeaf(ActPainter& p, bool) {
  p.board({3, 4}, {117, 76});
  p.box(Role::Guide, {10, 20}, {110, 60});
  // Each laps the one before: the laps show double.
  for (const double x : {12.0, 34.0}) p.box(Role::Film, {x, 22}, {x + 28, 58});
  const Points next = turned({{60, 14}, {88, 14}, {88, 50}, {60, 50}}, {60, 50}, -5);
  p.area(Role::Sheet, turned({{62, 8}, {94, 8}, {94, 54}, {62, 54}}, {60, 50}, -5));
  p.area(Role::Film, next);
  p.finger({88, 34}, 8);
  p.arrow({{68, 30}, {58, 46}});
  p.place(ActPlace::Work, {37, 40});
  p.place(ActPlace::Tool, {104, 46});
}

void burnish(ActPainter& p, bool) {
  const Slab board = fieldBoard();
  paint(p, board);
  p.area(Role::Film, board.patch(14, 80, 0.14, 0.86));
  // Paper between: nothing touches the leaf itself.
  const Points paper = {board.onTop(24, -0.02), board.onTop(86, -0.02), board.onTop(84, 1.1), board.onTop(22, 1.1)};
  p.area(Role::Sheet, paper);
  p.arrow(arc(board.onTop(40, 0.5), 16, 9, 210, -100));
  p.bone(board.onTop(58, 0.42), 35);
  p.place(ActPlace::Tool, {88, 16});
  p.place(ActPlace::Under, {34, 54});
}

void sweepLeaf(ActPainter& p, bool) {
  p.board({3, 6}, {72, 74});
  p.box(Role::Guide, {12, 15}, {63, 65});
  p.area(Role::Film, {{12, 15}, {36, 15}, {38, 40}, {36, 65}, {12, 65}});
  p.area(Role::Sheet, {{76, 12}, {117, 9}, {117, 72}, {78, 70}});
  const double loose[][4] = {{84, 34, 2, 30},   {92, 46, 1.7, 80},  {88, 55, 2.1, 10}, {100, 38, 1.6, 50},
                             {98, 54, 1.9, 95}, {106, 48, 1.7, 25}, {86, 44, 1.6, 66}, {56, 50, 1.8, 40},
                             {62, 36, 1.6, 15}, {66, 54, 1.7, 70}};
  for (const auto& one : loose) flake(p, {one[0], one[1]}, one[2], one[3]);
  p.brush({46, 38}, 56, false);
  p.arrow({{50, 46}, {78, 46}});
  p.place(ActPlace::Tool, {66, 12});
  p.place(ActPlace::Aside, {100, 24});
  p.place(ActPlace::Work, {24, 40});
}

void rubOver(ActPainter& p, bool) {
  const Slab board = fieldBoard();
  paint(p, board);
  p.area(Role::Film, board.patch(10, 84, 0.12, 0.88));
  // A soft pad, always the one way.
  for (const double depth : {0.3, 0.5, 0.7}) {
    p.arrow({board.onTop(depth == 0.5 ? 46 : 20, depth), board.onTop(76, depth)});
  }
  const Point pad = board.onTop(34, 0.5);
  p.area(Role::Tool, joined(arc(pad + Point{0, -3}, 9, 6, 0, 180), arc(pad + Point{0, -3}, 9, 8, 180, 360)));
  p.finger(pad + Point{-2, -4}, 118);
  p.place(ActPlace::Tool, {26, 28});
  p.place(ActPlace::Way, {96, 24});
  p.place(ActPlace::End, {92, 50});
  p.place(ActPlace::Work, {58, 54});
}

void rags(ActPainter& p, bool) {
  p.line(Role::Guide, {{6, 75}, {114, 75}});
  // A metal can: rags, water over them, a lid that closes.
  p.area(Role::Film, {{37, 44}, {83, 44}, {83, 75}, {37, 75}});
  p.area(Role::Section, joined(curve({42, 72}, {46, 52}, {60, 60}), curve({60, 60}, {78, 48}, {78, 72})));
  p.line(Role::Guide, curve({48, 68}, {56, 60}, {66, 70}));
  p.line(Role::Guide, curve({62, 66}, {70, 58}, {74, 66}));
  p.line(Role::Tool, {{36, 32}, {36, 75}, {84, 75}, {84, 32}});
  p.area(Role::Tool, turned({{32, 16}, {88, 16}, {88, 21}, {32, 21}}, {60, 18}, 8));
  p.arrow({{100, 14}, {100, 36}});
  p.arrow({{20, 18}, {20, 40}});
  p.place(ActPlace::Work, {46, 12});
  p.place(ActPlace::Under, {100, 68});
}

}  // namespace core::sheets::detail
