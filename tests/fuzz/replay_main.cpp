// Runs every file of a folder through a fuzz target, and where the target knows how to change its files a sample of
// changed ones as well: the same in every run, or from another seed for as long as is asked. An empty or missing folder
// fails: a replay of nothing proves nothing.
#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
// Not every target has one.
extern "C" __attribute__((weak)) std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                                                     std::size_t most, unsigned int seed);

namespace {

using Bytes = std::vector<std::uint8_t>;

constexpr std::size_t kMost = 1U << 16U;
constexpr unsigned int kSample = 400;

std::size_t run(const Bytes& bytes) {
  static std::size_t runs = 0;
  LLVMFuzzerTestOneInput(bytes.data(), bytes.size());
  return ++runs;
}

Bytes changed(Bytes bytes, unsigned int seed) {
  const std::size_t size = bytes.size();
  bytes.resize(std::max(kMost, size));
  bytes.resize(LLVMFuzzerCustomMutator(bytes.data(), size, bytes.size(), seed));
  return bytes;
}

}  // namespace

int main(int count, char** arguments) {
  if (count < 2 || count > 5) {
    std::fprintf(stderr, "usage: %s FOLDER [SEED [SECONDS [LAST]]]\n", arguments[0]);
    return 2;
  }
  std::vector<Bytes> corpus;
  std::error_code error;
  for (const auto& entry : std::filesystem::directory_iterator(arguments[1], error)) {
    std::ifstream file(entry.path(), std::ios::binary);
    corpus.emplace_back((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
  }
  // Folders give their files in any order.
  std::sort(corpus.begin(), corpus.end());
  std::size_t runs = 0;
  for (const Bytes& bytes : corpus) runs = run(bytes);
  std::printf("%zu replayed\n", corpus.size());
  if (LLVMFuzzerCustomMutator == nullptr || corpus.empty()) return corpus.empty() ? 1 : 0;
  const auto first = count > 2 ? static_cast<unsigned int>(std::strtoul(arguments[2], nullptr, 10)) : 1;
  const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(count > 3 ? std::atol(arguments[3]) : 0);
  Bytes bytes;
  for (unsigned int seed = first;; ++seed) {
    if (count > 3 ? std::chrono::steady_clock::now() >= until : seed - first >= kSample) break;
    // Each file is changed again and again, so that changes meet; then the next is begun with.
    if ((seed - first) % 8 == 0) bytes = corpus[(seed - first) / 8 % corpus.size()];
    bytes = changed(std::move(bytes), seed);
    // Where one fails, it is in that file.
    if (count > 4) {
      std::ofstream(arguments[4], std::ios::binary)
          .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
    }
    runs = run(bytes);
  }
  std::printf("%zu in all, the last of seed %u on\n", runs, first);
  return 0;
}
