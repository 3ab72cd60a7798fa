#pragma once
// How far the work on a piece goes.
#include <optional>
#include <string_view>

namespace core::units {

enum class Deliver {
  Mount,     // the decorated mount alone
  Attached,  // with its artwork attached
  Framed,    // closed in its frame
};
inline constexpr Deliver kDelivers[] = {Deliver::Mount, Deliver::Attached, Deliver::Framed};

constexpr std::string_view name(Deliver deliver) {
  switch (deliver) {
    case Deliver::Mount: return "mount";
    case Deliver::Attached: return "attached";
    case Deliver::Framed: return "framed";
  }
  return "";
}

}  // namespace core::units
