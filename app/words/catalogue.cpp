#include "app/words/catalogue.h"

#include <map>

namespace app::words {

const char* sourceOf(std::string_view id) {
  static const std::map<std::string_view, const char*> kById = [] {
    std::map<std::string_view, const char*> byId;
    for (const auto* entries : {&jobEntries(), &techniqueEntries(), &benchEntries(), &waitEntries(), &commandEntries(),
                                &materialEntries(), &roomEntries()}) {
      for (const Entry& entry : *entries) byId.emplace(entry.id, entry.source);
    }
    return byId;
  }();
  const auto found = kById.find(id);
  return found == kById.end() ? nullptr : found->second;
}

const FigureWords* figureWordsOf(std::string_view kind) {
  for (const FigureWords& words : figureEntries()) {
    if (words.kind == kind) return &words;
  }
  return nullptr;
}

}  // namespace app::words
