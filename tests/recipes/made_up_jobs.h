#pragma once
// Jobs made up for a test: as small as will switch a technique on, or with everything a design can have.
#include <map>
#include <string>
#include <vector>

#include "core/craft/catalogue.h"
#include "core/design/design.h"

namespace tests {

struct MadeUp {
  int boards = 1;
  bool coloured = false;  // every bevel
  bool arched = false;
  int bands = 0;
  bool lineAlongWindow = false;
  bool lineAlongBand = false;
  bool spandrel = false;
  std::string washOrder;                               // "" for no wash
  std::map<std::string, std::string> leaf;             // region -> members of the field that follow it
  std::map<std::string, std::string> techniques = {};  // role -> technique id
  std::vector<std::string> thickness = {};             // of each board; "1.5 mm" where missing
  std::vector<int> angle = {};                         // of each bevel; 45 where missing
  std::string deliver = "framed";
  int count = 1;        // pieces
  bool floats = false;  // the artwork, with all its edges in sight
  bool spacer = false;  // between mount and glazing
};

// The smallest job that switches the technique on, by what its `when` asks for, and chooses it in its role.
// A technique that waits to be needed has none of its own.
MadeUp switchingOn(const core::craft::Technique& technique);
// Makes the job one that the technique suits, as far as its `when` asks for a circumstance.
void suit(MadeUp& madeUp, const core::craft::Technique& technique);
// Three coloured boards under an arched window, two bands, lines, a wash, a field of leaf on each size; round the head
// a spandrel where the lines come first, a line where the wash does.
MadeUp everything(const std::string& washOrder);

core::design::Design designOf(const MadeUp& madeUp);

}  // namespace tests
