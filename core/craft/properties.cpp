#include "core/craft/properties.h"

namespace core::craft {

std::vector<std::string> propertiesOf(ThingKind kind, ThingKind outer) {
  switch (kind) {
    case ThingKind::Once: return {};
    case ThingKind::Board:
    case ThingKind::Bevel: return {"name", "colour", "coloured", "place", "window", "shape"};
    case ThingKind::Band: return {"name", "paper", "motif", "grain", "repeat"};
    case ThingKind::Strip: return {"name", "paper", "motif", "grain", "repeat", "side"};
    case ThingKind::Corner: return {"name", "paper", "motif", "grain", "repeat", "corner"};
    case ThingKind::Line: return {"name", "colour", "along", "edge", "gap", "course"};
    case ThingKind::Spandrel: return {"name", "paper", "from", "grain"};
    case ThingKind::Wash: return {"name", "colour", "order"};
    case ThingKind::Leaf: return {"name", "method", "size", "metal", "region"};
    case ThingKind::Part: break;
  }
  // Nothing is a part of parts.
  std::vector<std::string> names =
      outer == ThingKind::Part ? std::vector<std::string>{"name"} : propertiesOf(outer, outer);
  names.insert(names.end(), {"number", "of"});
  return names;
}

std::vector<std::string> valuesOf(std::string_view property) {
  if (property == "coloured" || property == "repeat") return {"yes", "no"};
  if (property == "place") return {"outermost", "middle", "innermost", "only"};
  if (property == "motif") return {"mirror", "directional", "plain"};
  if (property == "grain") return {"along", "across", "any"};
  if (property == "side") return {"top", "right", "bottom", "left"};
  if (property == "corner") return {"top left", "top right", "bottom right", "bottom left"};
  if (property == "along") return {"window", "band"};
  if (property == "edge") return {"inner", "outer", "window"};
  if (property == "gap") return {"none", "clear"};
  if (property == "window") return {"straight", "shaped"};
  if (property == "shape") {
    return {"rectangle", "rounded",     "scalloped", "chamfered", "oval",      "round",   "segmental",
            "pointed",   "fourCentred", "basket",    "ogee",      "horseshoe", "trefoil", "multifoil"};
  }
  if (property == "course") return {"straight", "curved"};
  if (property == "from") return {"springing", "sill"};
  if (property == "order") return {"linesFirst", "washFirst"};
  if (property == "method") return {"scattered", "laid"};
  if (property == "metal") return {"gold", "palladium", "aluminium", "silver", "copper", "brass", "unknown"};
  if (property == "region") return {"face", "outside", "inside", "on", "spandrel", "bevel"};
  if (property == "size") return {"methylCellulose", "starch", "water", "oil"};
  return {};
}

}  // namespace core::craft
