#include "app/words/catalogue.h"

#include <QCoreApplication>
#include <map>

namespace app::words {

std::vector<Entry> allEntries() {
  std::vector<Entry> all;
  for (const auto* entries : {&noticeEntries(), &jobEntries(), &techniqueEntries(), &benchEntries(), &waitEntries(),
                              &commandEntries(), &madeEntries(), &matchEntries(), &materialEntries(), &roomEntries(),
                              &designEntries(), &recordEntries(), &careEntries(), &jobsEntries()}) {
    all.insert(all.end(), entries->begin(), entries->end());
  }
  return all;
}

QString translated(const char* source) { return QCoreApplication::translate("words", source); }

const char* sourceOf(std::string_view id) {
  static const std::map<std::string_view, const char*> kById = [] {
    std::map<std::string_view, const char*> byId;
    for (const Entry& entry : allEntries()) byId.emplace(entry.id, entry.source);
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
