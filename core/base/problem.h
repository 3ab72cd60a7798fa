#pragma once
// What is wrong with an input, and where. Problems are gathered, never thrown: a file's every problem is
// reported at once, in the order of the document.
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

// Whence what is read comes.
enum class Source {
  File,  // new to this bench: every rule holds
  Kept,  // taken in already, perhaps before texts had limits: those are shown shortened and never refused
};

// So many errors are told of one input, and so many notices; of the others their number alone. Nobody mends more at
// a time, and a hostile file would fill the memory with them.
inline constexpr std::size_t kMostProblems = 100;

class Problems {
 public:
  explicit Problems(Source source = Source::File) : m_source(source) {}

  Source source() const { return m_source; }
  void add(Problem problem);
  void append(const Problems& others);
  // Changes each problem that is told by `change`, a function of it.
  template <typename Change>
  void changeEach(Change change) {
    for (Problem& problem : m_told) change(problem);
  }

  bool empty() const { return m_told.empty(); }
  bool hasErrors() const { return m_errors > 0; }
  // Whether a further error would only be counted.
  bool isFull() const { return m_errors >= kMostProblems; }
  // In document order; problems of one place in the order they were found. Where more were found than are told
  // problems.more {count} ends them, as an error where one of those was.
  std::vector<Problem> sorted() const;

 private:
  Source m_source;
  std::vector<Problem> m_told;
  std::size_t m_errors = 0;  // found
  std::size_t m_notices = 0;
};

// "problems.more" {count}: that many more were found than are told.
Message moreProblems(std::size_t count);

// "/bands/0/width severity id name=value": for logs and tests.
std::string dump(const Problem& problem);

}  // namespace core::base
