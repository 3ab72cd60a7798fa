#pragma once
// Files as somebody would make them who wants a bench to hang: deep, wide, long, many, and with every number at its
// end. The same seed gives the same files.
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/base/json.h"

namespace hostile {

using core::base::Value;

enum class Kind { Job, Technique, Record };

struct File {
  Kind kind = Kind::Job;
  std::string name;  // what is hostile in it
  std::string text;  // never above base::kMaximumJsonBytes
  std::string id;    // of a technique, or of a record's job
};

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : m_engine(seed) {}
  // From `least` to `most`.
  std::int64_t number(std::int64_t least, std::int64_t most) {
    return std::uniform_int_distribution<std::int64_t>(least, most)(m_engine);
  }
  bool chance(int percent) { return number(1, 100) <= percent; }
  template <typename Item>
  const Item& one(const std::vector<Item>& items) {
    return items[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(items.size()) - 1))];
  }

 private:
  std::mt19937_64 m_engine;
};

// A job every reader takes, to start from.
Value goodJob();
File hostileJob(std::uint64_t seed);
File hostileTechnique(std::uint64_t seed);
// `techniques`: the bodies of the trade's technique files.
File hostileRecord(std::uint64_t seed, const std::vector<std::string>& techniques);
// One of the three.
File hostileFile(std::uint64_t seed, const std::vector<std::string>& techniques);

// How many entries a hostile list has: at a limit, one beyond, or as many as the file holds.
std::int64_t hostileCount(Dice& dice, std::int64_t limit, std::int64_t most);
std::string hostileText(Dice& dice);
// Any JSON at all, as deep or as wide as it gets.
std::string hostileShape(Dice& dice, std::string& name);

}  // namespace hostile
