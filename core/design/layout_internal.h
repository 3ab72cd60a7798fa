#pragma once
// The steps of the layout, split by what they place. Only layout.cpp calls these.
#include <string>

#include "core/design/layout.h"

namespace core::design::detail {

// Adds an error at a place in the file. A pointer to a key the file leaves to its default is led back to the
// nearest value that is there when the problems are put in order.
void conflict(base::Problems& problems, std::string pointer, base::Message message,
              base::Severity severity = base::Severity::Error);

inline base::Millimetres mm(Length length) { return {length.inMillimetres()}; }

// The rectangle of the whole mount and that of the top board's face opening, in mm from the mount's top left.
geometry::Rectangle mountRectangle(const Layout& layout);
geometry::Rectangle faceRectangle(const Layout& layout);

void placeBands(const Job& job, Layout& layout, base::Problems& problems);
void placeLines(const Job& job, Layout& layout, base::Problems& problems);
void placeLeaf(const Job& job, Layout& layout, base::Problems& problems);

}  // namespace core::design::detail
