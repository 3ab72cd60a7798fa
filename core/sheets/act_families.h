#pragma once
// One function for each act, by family. `back` is true where the back faces up.
#include "core/sheets/act_painter.h"

namespace core::sheets::detail {

// act_mark.cpp
void measure(ActPainter& p, bool back);
void square(ActPainter& p, bool back);
void markOut(ActPainter& p, bool back);
void markCorners(ActPainter& p, bool back);
void note(ActPainter& p, bool back);
// act_cut.cpp
void cutSquare(ActPainter& p, bool back);
void cutBevel(ActPainter& p, bool back);
void cutCurve(ActPainter& p, bool back);
void cutStrips(ActPainter& p, bool back);
// act_board.cpp
void refit(ActPainter& p, bool back);
void registerBlank(ActPainter& p, bool back);
void joinBoards(ActPainter& p, bool back);
void press(ActPainter& p, bool back);
// act_edge.cpp
void tapeEdge(ActPainter& p, bool back);
void fluidEdge(ActPainter& p, bool back);
void brushBevel(ActPainter& p, bool back);
void peel(ActPainter& p, bool back);
void rubOff(ActPainter& p, bool back);
// act_paper.cpp
void brushStrip(ActPainter& p, bool back);
void fitStrips(ActPainter& p, bool back);
void layStrip(ActPainter& p, bool back);
void mitre(ActPainter& p, bool back);
void closeCorner(ActPainter& p, bool back);
void laySpandrel(ActPainter& p, bool back);
// act_line.cpp
void ruleLine(ActPainter& p, bool back);
void floodWash(ActPainter& p, bool back);
// act_leaf.cpp
void frameField(ActPainter& p, bool back);
void sizeField(ActPainter& p, bool back);
void scatterLeaf(ActPainter& p, bool back);
void layLeaf(ActPainter& p, bool back);
void burnish(ActPainter& p, bool back);
void sweepLeaf(ActPainter& p, bool back);
void rubOver(ActPainter& p, bool back);
void rags(ActPainter& p, bool back);
// act_prepare.cpp
void weigh(ActPainter& p, bool back);
void stir(ActPainter& p, bool back);
void cook(ActPainter& p, bool back);
void strain(ActPainter& p, bool back);
// act_bench.cpp
void setOut(ActPainter& p, bool back);
void clean(ActPainter& p, bool back);
void tryPatch(ActPainter& p, bool back);
void look(ActPainter& p, bool back);
// act_hinge.cpp
void putAway(ActPainter& p, bool back);
void gumCloth(ActPainter& p, bool back);
void placeWork(ActPainter& p, bool back);
void tearHinge(ActPainter& p, bool back);
void hinge(ActPainter& p, bool back);
void rest(ActPainter& p, bool back);
// act_package.cpp
void stack(ActPainter& p, bool back);
void sealEdge(ActPainter& p, bool back);
void fitFrame(ActPainter& p, bool back);

}  // namespace core::sheets::detail
