#include "core/base/problem.h"

#include <algorithm>

namespace core::base {

void Problems::append(const Problems& others) {
  m_problems.insert(m_problems.end(), others.m_problems.begin(), others.m_problems.end());
}

bool Problems::hasErrors() const {
  return std::any_of(m_problems.begin(), m_problems.end(),
                     [](const Problem& problem) { return problem.severity == Severity::Error; });
}

std::vector<Problem> Problems::sorted() const {
  std::vector<Problem> problems = m_problems;
  std::stable_sort(problems.begin(), problems.end(),
                   [](const Problem& a, const Problem& b) { return a.order < b.order; });
  return problems;
}

std::string dump(const Problem& problem) {
  std::string place = problem.pointer;
  if (problem.line > 0) place = std::to_string(problem.line) + ':' + std::to_string(problem.column);
  return place + (problem.severity == Severity::Notice ? " notice " : " ") + dump(problem.message);
}

}  // namespace core::base
