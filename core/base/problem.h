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

class Problems {
 public:
  void add(Problem problem) { m_problems.push_back(std::move(problem)); }
  void append(const Problems& others);

  bool empty() const { return m_problems.empty(); }
  bool hasErrors() const;
  // In document order; problems of one place in the order they were found.
  std::vector<Problem> sorted() const;

 private:
  std::vector<Problem> m_problems;
};

// "/bands/0/width severity id name=value": for logs and tests.
std::string dump(const Problem& problem);

}  // namespace core::base
