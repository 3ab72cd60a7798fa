#pragma once
// What a shape of the piece is made of, in the maker's words, and how its pattern lies. How that looks is the
// painter's.
#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/region.h"

namespace core::sheets {

using geometry::Point;

enum class Substance {
  Board,    // its face or its back
  Core,     // a bevel as it was cut
  Paint,    // a bevel that was coloured
  Paper,    // a strip or a spandrel
  Pigment,  // a ruled line
  Wash,
  Flake,  // scattered leaf
  LaidLeaf,
  Sheet,  // the artwork's
};

// Whether it is there by the record of the job.
enum class Standing { ToCome, Made };

// How a pattern runs along a strip of paper.
struct Run {
  Point from;         // on the strip's inner edge, where a motif's centre stands
  Point along;        // unit vector
  Point outwards;     // unit vector, from the inner edge to the outer
  double repeat = 0;  // mm; 0: the paper has none, or it is not known
  double width = 0;
  bool mirror = false;  // each motif is symmetric about its own centre
};

// Convex.
struct Flake {
  std::array<Point, 4> corners;
  int tone = 0;      // of three: 0, 1, 2
  bool cut = false;  // the field's edge runs through it
};

// A field of leaf: in all of `within` and in none of `without`, where flakes are cut. They nowhere overlap.
struct Scatter {
  std::vector<Flake> flakes;  // none where it is laid
  std::vector<geometry::Patch> within;
  std::vector<geometry::Patch> without;
};

struct Matter {
  Substance substance = Substance::Board;
  std::string name;  // the colour or the paper as the job calls it; "" where it says none
  std::optional<Run> run;
  double width = 0;                      // of a line or a wash, where it is narrowest, mm
  double leafWidth = 0, leafHeight = 0;  // laid leaf: from lap to lap, mm
  double lap = 0;
  std::shared_ptr<const Scatter> scatter;  // leaf of both kinds
};

}  // namespace core::sheets
