#pragma once
// A fault of an input and its place. Problems are gathered, never thrown: a file's every problem is reported at once,
// in the order of the document.
#include <cstddef>
#include <string>
#include <vector>

#include "core/base/message.h"

namespace core::base {

enum class Severity {
  Error,   // the input cannot be used
  Notice,  // it can, but the maker should know
};

struct Problem {
  // JSON pointer (RFC 6901) of the value; "" is the root. A missing key points at its parent.
  std::string pointer;
  Message message;
  Severity severity = Severity::Error;
  // 1-based place of a syntax error, which has no pointer; 0 otherwise.
  std::size_t line = 0;
  std::size_t column = 0;
  // Position of the value in the document: see Value::order.
  std::size_t order = 0;
};

// Where the input comes from.
enum class Source {
  File,  // new to this bench: every rule holds
  Kept,  // recorded already, perhaps before texts had limits: long ones are shortened and never refused
};

// At most this many errors are reported for one input, and this many notices; the others are only counted. Nobody mends
// more at a time, and a hostile file would fill the memory with them.
inline constexpr std::size_t kMostProblems = 100;

class Problems {
 public:
  explicit Problems(Source source = Source::File) : m_source(source) {}

  Source source() const { return m_source; }
  void add(Problem problem);
  void append(const Problems& others);
  // Applies `change`, a function of a problem, to each reported problem.
  template <typename Change>
  void changeEach(Change change) {
    for (Problem& problem : m_told) change(problem);
  }

  bool empty() const { return m_told.empty(); }
  bool hasErrors() const { return m_errors > 0; }
  // Returns whether a further error would only be counted.
  bool isFull() const { return m_errors >= kMostProblems; }
  // Returns the problems in document order, and those of one place in the order they were found. Where more were found
  // than are reported, problems.more {count} is the last, as an error where one of the others was an error.
  std::vector<Problem> sorted() const;

 private:
  Source m_source;
  std::vector<Problem> m_told;
  std::size_t m_errors = 0;  // found
  std::size_t m_notices = 0;
};

// Returns "problems.more" {count}: that many more were found than are reported.
Message moreProblems(std::size_t count);

// "/bands/0/width severity id name=value": for logs and tests.
std::string dump(const Problem& problem);

}  // namespace core::base
