#pragma once
// The parts of the job reader, split by what they read. Only job_reader.cpp calls these.
#include <set>
#include <string>

#include "core/design/readers.h"

namespace core::design::detail {

// Each returns false where something the layout depends on could not be read.
bool readArtwork(ObjectReader& root, Job& job, Problems& problems);
bool readMount(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems);
// Bands, lines, spandrels, washes and leaf that could not be read are left out, along with everything that depends on
// them.
void readBands(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems);
void readLines(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
               Problems& problems);
void readLeaf(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
              Problems& problems);
void readPackage(ObjectReader& root, Job& job, Problems& problems);
void readTechniques(ObjectReader& root, Job& job, Problems& problems);
void readDelivery(ObjectReader& root, Job& job, Problems& problems);
void readRoom(ObjectReader& root, Job& job, Problems& problems);
void readSpandrels(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
                   Problems& problems);
void readWashes(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
                Problems& problems);
// Stock and prices, which share their currency. Stock that could not be read is left out.
void readMaterials(ObjectReader& root, Job& job, Problems& problems);
void readWindow(ObjectReader& mount, Job& job, bool& readable, Problems& problems);

// "window", "band:ID.inner", "band:ID.outer".
bool readEdge(const Node& node, const Job& job, const std::set<std::string>& leftOut, Edge& along, std::string& band,
              Problems& problems);
// Returns whether a band of that id was read. One that is named but could not be read is not reported a second time.
bool knownBand(const std::string& id, const Node& node, const Job& job, const std::set<std::string>& leftOut,
               Problems& problems);
bool knownSpandrel(const std::string& id, const Node& node, const Job& job, const std::set<std::string>& leftOut,
                   Problems& problems);

// Calls `read` for each item of an optional list of at most `most`.
template <typename Read>
void forEach(ObjectReader& root, std::string_view key, std::size_t most, Problems& problems, Read read) {
  const auto items = base::readItems(root.optional(key), problems, most);
  if (!items) return;
  for (const Node& item : *items) read(item);
}

template <typename Enum>
bool readWord(const Node& node, const std::vector<std::string>& words, Enum& target, Problems& problems) {
  if (!node) return true;
  const auto index = base::readChoice(node, words, problems);
  if (index) target = static_cast<Enum>(*index);
  return index.has_value();
}

}  // namespace core::design::detail
