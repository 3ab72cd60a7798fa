#pragma once
// Always-on checks for promises this program makes to itself. Never for input: input that is wrong is a Problem with a
// place, not a broken promise. A failed check prints its file and line and aborts, because going on with a broken
// figure costs the maker the sheet.

namespace core::base {

[[noreturn]] void checkFailed(const char* expression, const char* file, int line);

}  // namespace core::base

#define ENSURE(expression) \
  ((expression) ? static_cast<void>(0) : ::core::base::checkFailed(#expression, __FILE__, __LINE__))
