#include "core/base/problem.h"

#include <algorithm>

namespace core::base {

void Problems::add(Problem problem) {
  std::size_t& found = problem.severity == Severity::Error ? m_errors : m_notices;
  if (++found <= kMostProblems) m_told.push_back(std::move(problem));
}

void Problems::append(const Problems& others) {
  const std::size_t errors = m_errors + others.m_errors;
  const std::size_t notices = m_notices + others.m_notices;
  for (const Problem& problem : others.m_told) add(problem);
  m_errors = errors;
  m_notices = notices;
}

std::vector<Problem> Problems::sorted() const {
  std::vector<Problem> problems = m_told;
  std::stable_sort(problems.begin(), problems.end(),
                   [](const Problem& a, const Problem& b) { return a.order < b.order; });
  if (const std::size_t more = m_errors + m_notices - problems.size(); more > 0) {
    Problem last;
    last.message = moreProblems(more);
    last.severity = m_errors > kMostProblems ? Severity::Error : Severity::Notice;
    last.order = static_cast<std::size_t>(-1);
    problems.push_back(std::move(last));
  }
  return problems;
}

Message moreProblems(std::size_t count) {
  return Message("problems.more").with("count", static_cast<std::int64_t>(count));
}

std::string dump(const Problem& problem) {
  std::string place = problem.pointer;
  if (problem.line > 0) place = std::to_string(problem.line) + ':' + std::to_string(problem.column);
  return place + (problem.severity == Severity::Notice ? " notice " : " ") + dump(problem.message);
}

}  // namespace core::base
