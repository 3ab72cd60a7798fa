#pragma once
// The parts of the job reader, split by what they read. Only job_reader.cpp calls these.
#include <set>
#include <string>

#include "core/design/readers.h"

namespace core::design::detail {

// Each returns false where something the layout rests on could not be read.
bool readArtwork(ObjectReader& root, Job& job, Problems& problems);
bool readMount(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems);
// Bands, lines and leaf that could not be read are left out, along with what rests on them.
void readBands(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems);
void readLines(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
               Problems& problems);
void readLeaf(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
              Problems& problems);
void readPackage(ObjectReader& root, Job& job, Problems& problems);
void readTechniques(ObjectReader& root, Job& job, Problems& problems);
void readRoom(ObjectReader& root, Job& job, Problems& problems);
// Read strictly, then refused as not yet worked.
void readSpandrels(ObjectReader& root, std::set<std::string>& ids, Problems& problems);
void readWashes(ObjectReader& root, std::set<std::string>& ids, Problems& problems);
void readStock(ObjectReader& root, Problems& problems);
void readWindow(ObjectReader& mount, Job& job, bool& readable, Problems& problems);

void notYet(const Node& node, std::string_view what, Problems& problems);

}  // namespace core::design::detail
