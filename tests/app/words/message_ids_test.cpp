// Reads the sources as text, so that no message can be said for which there are no words.
#include <algorithm>
#include <filesystem>
#include <map>
#include <regex>
#include <set>

#include "app/words/catalogue.h"
#include "core/base/text.h"
#include "core/record/happening.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

namespace {

namespace fs = std::filesystem;

struct Said {
  std::set<std::string> arguments;  // of every place that says it
  std::string file;
};

std::vector<std::string> sources() {
  std::vector<std::string> paths;
  for (const char* folder : {"/core", "/app"}) {
    for (const auto& entry : fs::recursive_directory_iterator(std::string(PROJECT_ROOT) + folder)) {
      const std::string extension = entry.path().extension().string();
      const std::string path = entry.path().string();
      if ((extension == ".cpp" || extension == ".h") && path.find("/app/words/") == std::string::npos) {
        paths.push_back(path);
      }
    }
  }
  std::sort(paths.begin(), paths.end());
  return paths;
}

// The end of the bracket that opens before `at`; quotes are skipped.
std::size_t closing(const std::string& text, std::size_t at) {
  int depth = 1;
  bool quoted = false;
  for (; at < text.size() && depth > 0; ++at) {
    if (text[at] == '\\') {
      ++at;
    } else if (text[at] == '"') {
      quoted = !quoted;
    } else if (!quoted) {
      depth += text[at] == '(' ? 1 : text[at] == ')' ? -1 : 0;
    }
  }
  return at;
}

// Names given by the calls of with() that follow `at`.
std::set<std::string> argumentsFrom(const std::string& text, std::size_t at) {
  static const std::regex kWith(R"(^\s*\.with\(\s*"(\w+)\")");
  std::set<std::string> names;
  std::smatch match;
  while (std::regex_search(text.begin() + static_cast<std::ptrdiff_t>(at), text.end(), match, kWith,
                           std::regex_constants::match_continuous)) {
    names.insert(match[1]);
    const std::size_t open = text.find('(', at);
    at = closing(text, open + 1);
  }
  return names;
}

std::vector<std::string> literals(const std::string& text) {
  static const std::regex kId(R"raw("([a-z]+\.[A-Za-z.-]+)")raw");
  std::vector<std::string> ids;
  for (auto it = std::sregex_iterator(text.begin(), text.end(), kId); it != std::sregex_iterator(); ++it) {
    ids.push_back((*it)[1]);
  }
  return ids;
}

struct Sources {
  std::map<std::string, Said> said;          // ids named where a message is made
  std::set<std::string> addedLater;          // arguments added to a message that already exists
  std::map<std::string, std::string> loose;  // literals that look like ids of a known group, and their files
};

Sources readSources() {
  Sources found;
  static const std::regex kMake(R"(\bMessage\()");
  static const std::regex kLater(R"(move\(\w+\)(?=\s*\.with\())");
  std::map<std::string, std::string> texts;
  for (const std::string& path : sources()) texts[path] = tests::readWholeFile(path).value();
  for (const auto& [path, text] : texts) {
    for (auto it = std::sregex_iterator(text.begin(), text.end(), kMake); it != std::sregex_iterator(); ++it) {
      const auto start = static_cast<std::size_t>(it->position() + it->length());
      const std::size_t end = closing(text, start);
      for (const std::string& id : literals(text.substr(start, end - start))) {
        found.said[id].arguments.merge(argumentsFrom(text, end));
        found.said[id].file = path;
      }
    }
    for (auto it = std::sregex_iterator(text.begin(), text.end(), kLater); it != std::sregex_iterator(); ++it) {
      found.addedLater.merge(argumentsFrom(text, static_cast<std::size_t>(it->position() + it->length())));
    }
  }
  std::set<std::string> groups;
  for (const auto& [id, said] : found.said) groups.insert(id.substr(0, id.find('.')));
  for (const auto& entry : app::words::allEntries()) {
    groups.insert(std::string(entry.id.substr(0, entry.id.find('.'))));
  }
  for (const auto& [path, text] : texts) {
    for (const std::string& id : literals(text)) {
      if (groups.contains(id.substr(0, id.find('.'))) && !found.said.contains(id)) found.loose[id] = path;
    }
  }
  return found;
}

std::set<std::string> namesIn(const std::string& pattern) {
  static const std::regex kName(R"(\{(\w+)\})");
  std::set<std::string> names;
  for (auto it = std::sregex_iterator(pattern.begin(), pattern.end(), kName); it != std::sregex_iterator(); ++it) {
    names.insert((*it)[1]);
  }
  return names;
}

bool hasWords(const std::string& id) {
  // An id put together from a beginning and a word is met by every entry that begins so.
  if (!core::base::endsWith(id, ".")) return app::words::sourceOf(id) != nullptr;
  const auto& entries = app::words::allEntries();
  return std::any_of(entries.begin(), entries.end(),
                     [&](const app::words::Entry& entry) { return core::base::startsWith(entry.id, id); });
}

}  // namespace

TEST_CASE("every message the sources name has words") {
  const Sources found = readSources();
  CHECK(found.said.size() > 150);
  for (const auto& [id, said] : found.said) {
    INFO(id << " in " << said.file);
    CHECK(hasWords(id));
  }
  for (const auto& [id, file] : found.loose) {
    INFO(id << " in " << file);
    CHECK(hasWords(id));
  }
}

TEST_CASE("words name no argument that the sources do not give") {
  const Sources found = readSources();
  int named = 0;
  for (const auto& [id, said] : found.said) {
    const char* source = app::words::sourceOf(id);
    if (source == nullptr) continue;
    for (const std::string& name : namesIn(source)) {
      INFO(id << " {" << name << "} in " << said.file);
      CHECK((said.arguments.contains(name) || found.addedLater.contains(name)));
      ++named;
    }
  }
  CHECK(named > 100);
}

namespace {

// The names a type's members have in its payload.
struct MemberNames {
  std::set<std::string> names;
  void operator()(const char* name, const auto&) { names.insert(name); }
  void unlessEmpty(const char* name, const auto&) { names.insert(name); }
  void flat(const auto&) {}
};

template <typename One>
void checkTold() {
  if constexpr (!One::kTraits.told.empty()) {
    MemberNames members;
    const One one{};
    One::fields(one, members);
    const std::string id(One::kTraits.told);
    const char* source = app::words::sourceOf(id);
    INFO(One::kType << " told as " << id);
    REQUIRE(source != nullptr);
    // These say more than their members, each in a function of its own.
    const std::set<std::string> more = {"answer", "value", "stock", "count", "type"};
    for (const std::string& name : namesIn(source)) CHECK((members.names.contains(name) || more.contains(name)));
  }
}

template <std::size_t... place>
void checkEachTold(std::index_sequence<place...>) {
  (checkTold<std::variant_alternative_t<place, core::record::Happening>>(), ...);
}

}  // namespace

TEST_CASE("every event of a job's record is told, and the words name only what it holds") {
  checkEachTold(std::make_index_sequence<std::variant_size_v<core::record::Happening>>());
}

TEST_CASE("no words are kept for a message nobody says, and none are given twice") {
  const Sources found = readSources();
  std::set<std::string_view> seen;
  for (const app::words::Entry& entry : app::words::allEntries()) {
    const std::string id(entry.id);
    INFO(id);
    CHECK(seen.insert(entry.id).second);
    const bool putTogether = found.said.contains(id.substr(0, id.rfind('.') + 1));
    CHECK((found.said.contains(id) || found.loose.contains(id) || putTogether));
  }
}
