#include "core/craft/circumstance.h"

#include "core/units/deliver.h"

namespace core::craft {
namespace {

std::vector<std::string> deliverWords() {
  std::vector<std::string> words;
  for (const units::Deliver one : units::kDelivers) words.emplace_back(units::name(one));
  return words;
}

}  // namespace

std::string_view name(Circumstance circumstance) {
  switch (circumstance) {
    case Circumstance::Deliver: return "deliver";
    case Circumstance::Artwork: return "artwork";
    case Circumstance::Spacer: return "spacer";
    case Circumstance::Decorated: return "decorated";
  }
  return "";
}

const std::vector<std::string>& valuesOf(Circumstance circumstance) {
  static const std::vector<std::string> kDeliver = deliverWords();
  static const std::vector<std::string> kArtwork = {"overlap", "float"};
  static const std::vector<std::string> kYesOrNo = {"yes", "no"};
  switch (circumstance) {
    case Circumstance::Deliver: return kDeliver;
    case Circumstance::Artwork: return kArtwork;
    case Circumstance::Spacer:
    case Circumstance::Decorated: break;
  }
  return kYesOrNo;
}

}  // namespace core::craft
