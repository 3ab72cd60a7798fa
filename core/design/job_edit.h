#pragma once
// A change of one value of a job file, as it is offered to the maker.
#include <string>

namespace core::design {

// A value to put into the job file in place of the one at the pointer, or to add there.
struct JobEdit {
  std::string pointer;
  std::string value;  // JSON; "" where the value there is to be taken out
};

}  // namespace core::design
