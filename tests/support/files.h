#pragma once
// Whole files for tests.
#include <fstream>
#include <iterator>
#include <optional>
#include <string>

namespace tests {

inline std::optional<std::string> readWholeFile(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return std::nullopt;
  return std::string(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
}

// Returns false where the file could not be written whole.
inline bool writeWholeFile(const std::string& path, const std::string& text) {
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file << text;
  file.close();
  return file.good();
}

}  // namespace tests
