#include "core/workflow/property_words.h"

namespace core::workflow {

bool isShaped(const design::Job& job) { return job.window.form.shape != design::Shape::Rectangle; }

std::string_view word(design::Head head) {
  switch (head) {
    case design::Head::Round: return "round";
    case design::Head::Segmental: return "segmental";
    case design::Head::Pointed: return "pointed";
    case design::Head::FourCentred: return "fourCentred";
    case design::Head::Basket: return "basket";
    case design::Head::Ogee: return "ogee";
    case design::Head::Horseshoe: return "horseshoe";
    case design::Head::Trefoil: return "trefoil";
    case design::Head::Multifoil: return "multifoil";
  }
  return "";
}

std::string_view word(const geometry::ShapeEntry& form) {
  switch (form.shape) {
    case design::Shape::Rectangle: return "rectangle";
    case design::Shape::Rounded: return "rounded";
    case design::Shape::Scalloped: return "scalloped";
    case design::Shape::Chamfered: return "chamfered";
    case design::Shape::Oval: return "oval";
    case design::Shape::Round: return "round";
    case design::Shape::Arch: return word(form.head);
  }
  return "";
}

std::string_view word(design::Motif motif) {
  switch (motif) {
    case design::Motif::Mirror: return "mirror";
    case design::Motif::Directional: return "directional";
    case design::Motif::Plain: return "plain";
  }
  return "";
}

std::string_view word(design::Grain grain) {
  switch (grain) {
    case design::Grain::Along: return "along";
    case design::Grain::Across: return "across";
    case design::Grain::Any: return "any";
  }
  return "";
}

std::string_view word(design::SizeKind size) {
  switch (size) {
    case design::SizeKind::MethylCellulose: return "methylCellulose";
    case design::SizeKind::Starch: return "starch";
    case design::SizeKind::Water: return "water";
    case design::SizeKind::Oil: return "oil";
  }
  return "";
}

std::string_view word(std::optional<design::Metal> metal) {
  if (!metal) return "unknown";
  switch (*metal) {
    case design::Metal::Gold: return "gold";
    case design::Metal::Palladium: return "palladium";
    case design::Metal::Aluminium: return "aluminium";
    case design::Metal::Silver: return "silver";
    case design::Metal::Copper: return "copper";
    case design::Metal::Brass: return "brass";
  }
  return "";
}

std::string_view word(design::RegionKind region) {
  switch (region) {
    case design::RegionKind::Face: return "face";
    case design::RegionKind::Outside: return "outside";
    case design::RegionKind::Inside: return "inside";
    case design::RegionKind::On: return "on";
    case design::RegionKind::Spandrel: return "spandrel";
    case design::RegionKind::Bevel: return "bevel";
  }
  return "";
}

}  // namespace core::workflow
