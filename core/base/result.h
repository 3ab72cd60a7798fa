#pragma once
// A value or the reason there is none. Use it for expected refusals (a file that cannot be read as a job);
// use std::optional where absence needs no reason, and ENSURE where failure would be our own mistake.
#include <utility>
#include <variant>

#include "core/base/check.h"

namespace core::base {

template <typename Value, typename Error>
class [[nodiscard]] Result {
 public:
  Result(Value value) : m_state(std::in_place_index<0>, std::move(value)) {}
  Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) {}

  bool ok() const { return m_state.index() == 0; }
  explicit operator bool() const { return ok(); }

  // Requires ok().
  const Value& value() const& {
    ENSURE(ok());
    return std::get<0>(m_state);
  }
  Value&& value() && {
    ENSURE(ok());
    return std::get<0>(std::move(m_state));
  }
  // Requires !ok().
  const Error& error() const {
    ENSURE(!ok());
    return std::get<1>(m_state);
  }

 private:
  std::variant<Value, Error> m_state;
};

}  // namespace core::base
