#pragma once
// How materials look whose maker told it: a colour, and of a paper the picture of its sheet. Everything else looks as
// its name says (materials.h).
#include <QColor>
#include <map>
#include <memory>
#include <string>
#include <utility>

#include "app/painting/sheet_picture.h"

namespace app::painting {

struct Appearance {
  QColor colour;                                // invalid: as the name tells
  std::shared_ptr<const SheetPicture> picture;  // null: none, or none that could be read
};

class Appearances {
 public:
  Appearances() = default;
  explicit Appearances(std::map<std::string, Appearance> byName) : m_byName(std::move(byName)) {}

  // Returns an empty one where the material has none of its own.
  const Appearance& of(const std::string& material) const {
    static const Appearance kNone;
    const auto found = m_byName.find(material);
    return found == m_byName.end() ? kNone : found->second;
  }

 private:
  std::map<std::string, Appearance> m_byName;
};

}  // namespace app::painting
