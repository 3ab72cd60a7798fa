#include "core/base/text.h"
#include "core/design/job.h"
#include "tests/app/hostile/hostile_files.h"

namespace hostile {
namespace {

namespace design = core::design;

std::string mm(double millimetres) { return core::base::fixedNumber(millimetres, 6) + " mm"; }

const std::vector<std::string>& extremes() {
  static const std::vector<std::string> kLengths = {"0 mm",           "0.000001 mm", "0.1 mm",     "5 mm",
                                                    "9999.999999 mm", "10000 mm",    "10000.1 mm", "1/64 in",
                                                    "393 45/64 in",   "-10000 mm",   "-1 mm"};
  return kLengths;
}

Value object(std::initializer_list<std::pair<const char*, Value>> members) {
  Value made = Value::object();
  for (const auto& [key, value] : members) made.set(key, value);
  return made;
}

// From what is held against everything else in closed form to what is by sampling, or by the hundred.
Value window(Dice& dice, std::string& name) {
  Value made = object({{"shape", Value::text("rectangle")}, {"overlap", Value::text("3 mm")}});
  if (dice.chance(40)) return made;
  if (dice.chance(30)) {
    name += " round an oval";
    return made.set("shape", Value::text("oval"));
  }
  const std::int64_t lobes = dice.chance(50) ? 99 : 2 * dice.number(1, 48) + 1;
  name += " round " + std::to_string(lobes) + " lobes";
  made.set("shape", Value::text("arch")).set("head", Value::text("multifoil"));
  return made.set("lobes", Value::integer(lobes));
}

// A mount of ten metres with room for everything a list may hold.
Value roomyJob(Dice& dice, std::string& name) {
  Value job = goodJob();
  job.set("artwork", object({{"width", Value::text("300 mm")}, {"height", Value::text("400 mm")}}));
  Value mount = Value::object();
  mount.set("window", window(dice, name));
  mount.set("boards", Value::array().append(object({{"id", Value::text("top")}, {"thickness", Value::text("2 mm")}})));
  mount.set(
      "borders",
      object({{"top", Value::text("4500 mm")}, {"bottom", Value::text("4500 mm")}, {"sides", Value::text("4500 mm")}}));
  job.set("mount", std::move(mount));
  for (const char* list : {"bands", "lines", "leaf"}) job.set(list, Value::array());
  return job;
}

Value bands(Dice& dice, std::int64_t count, bool patterned) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) {
    Value band = object({{"id", Value::text("b" + std::to_string(i))},
                         {"paper", Value::text("paper " + std::to_string(dice.number(0, 9)))},
                         {"offset", Value::text(mm(static_cast<double>(i == 0 ? 100 : dice.number(1, 20))))},
                         {"width", Value::text(mm(static_cast<double>(dice.number(1, 60))))},
                         {"trim", Value::text("5 mm")}});
    if (patterned) band.set("repeat", Value::text(mm(static_cast<double>(dice.number(10, 700)) / 7)));
    list.append(std::move(band));
  }
  return list;
}

// Side by side, or all over each other.
Value lines(std::int64_t count, bool apart) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) {
    list.append(object({{"id", Value::text("l" + std::to_string(i))},
                        {"along", Value::text("window")},
                        {"gap", Value::text(mm(apart ? static_cast<double>(i) * 0.01 : 1))},
                        {"width", Value::text("0.005 mm")},
                        {"colour", Value::text("colour " + std::to_string(i))}}));
  }
  return list;
}

Value washes(std::int64_t count, bool apart) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) {
    list.append(object({{"id", Value::text("w" + std::to_string(i))},
                        {"colour", Value::text("grey")},
                        {"along", Value::text("window")},
                        {"gap", Value::text(mm(apart ? 2 + static_cast<double>(i) : 2))},
                        {"width", Value::text("0.9 mm")}}));
  }
  return list;
}

Value leaf(std::int64_t count, bool apart) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) {
    const std::string region = apart ? "on:b" + std::to_string(i) : "face";
    list.append(object({{"id", Value::text("f" + std::to_string(i))},
                        {"region", Value::text(region)},
                        {"method", Value::text("laid")},
                        {"size", Value::text("water")},
                        {"keepOff", object({{"lines", Value::text("0.001 mm")}})}}));
  }
  return list;
}

Value stock(Dice& dice, std::int64_t count) {
  Value list = Value::array();
  for (std::int64_t i = 0; i < count; ++i) {
    const bool paper = dice.chance(70);
    Value sheet = object({{"id", Value::text("s" + std::to_string(i))},
                          {"kind", Value::text(paper ? "paper" : "board")},
                          {"width", Value::text(mm(static_cast<double>(dice.number(100, 10'000))))},
                          {"height", Value::text(mm(static_cast<double>(dice.number(100, 10'000))))},
                          {"kerf", Value::text(mm(static_cast<double>(dice.number(0, 3))))},
                          {"price", Value::text(std::to_string(dice.number(0, 100'000'000)) + " GBP")}});
    if (paper) sheet.set("material", Value::text("paper " + std::to_string(dice.number(0, 9))));
    if (dice.chance(50)) sheet.set("quantity", Value::integer(dice.number(0, 10'000)));
    list.append(std::move(sheet));
  }
  return list;
}

Value numbers(Dice& dice, const Value& value, int percent) {
  switch (value.kind()) {
    case Value::Kind::Object: {
      Value changed = Value::object();
      for (const auto& [key, member] : value.members()) changed.set(key, numbers(dice, member, percent));
      return changed;
    }
    case Value::Kind::Array: {
      Value changed = Value::array();
      for (const Value& item : value.items()) changed.append(numbers(dice, item, percent));
      return changed;
    }
    case Value::Kind::Text:
      if (!core::base::endsWith(value.asText(), " mm") || !dice.chance(percent)) return value;
      return Value::text(dice.one(extremes()));
    case Value::Kind::Number:
      if (!dice.chance(percent)) return value;
      return Value::number(dice.one(std::vector<double>{0, -1, 1e-300, 1, 0.95, 45, 89.999999, 90, 1e308}));
    default: return value;
  }
}

Value texts(Dice& dice, const Value& value, int percent) {
  Value changed = Value::object();
  for (const auto& [key, member] : value.members()) {
    const bool free = key == "title" || key == "reference" || key == "client";
    changed.set(key, free && dice.chance(percent) ? Value::text(hostileText(dice)) : member);
  }
  return changed;
}

void fill(Dice& dice, Value& job, std::string& name) {
  const auto at = [&](std::size_t limit, std::int64_t most) {
    return hostileCount(dice, static_cast<std::int64_t>(limit), most);
  };
  const bool apart = dice.chance(60);
  const bool patterned = dice.chance(50);
  const std::int64_t bandCount = at(design::kMostBands, 20'000);
  name += apart ? " apart" : " on one another";
  if (dice.chance(60)) job.set("bands", bands(dice, bandCount, patterned));
  if (dice.chance(60)) job.set("lines", lines(at(design::kMostLines, 20'000), apart));
  if (dice.chance(50)) job.set("washes", washes(at(design::kMostWashes, 20'000), apart));
  const bool banded = job.find("bands")->items().size() > 1;
  if (dice.chance(60))
    job.set("leaf", leaf(apart && banded ? bandCount : at(design::kMostLeafFields, 15'000), apart && banded));
  if (dice.chance(60)) job.set("stock", stock(dice, at(design::kMostStock, 15'000)));
  if (dice.chance(30)) job.set("prices", object({{"labour", Value::text("100000000 GBP/h")}}));
}

}  // namespace

Value goodJob() {
  return core::base::parseJson(R"({
    "format": "mountwright-job/1", "title": "Chart of the bar", "reference": "26-041", "client": "Harbour library",
    "artwork": {"width": "310 mm", "height": "240 mm", "thickness": "0.3 mm"},
    "mount": {
      "window": {"shape": "rectangle", "overlap": "3 mm"},
      "boards": [{"id": "top", "thickness": "1.5 mm", "bevel": {"angle": 45, "colour": "copper"}},
                 {"id": "under", "thickness": "2 mm", "reveal": "6 mm"}],
      "borders": {"sides": "70 mm", "weighting": "4:3"},
      "rebate": {"allowanceTotal": "3 mm", "cover": "6 mm"}},
    "bands": [{"id": "inner", "paper": "print", "offset": "10 mm", "width": "14 mm", "trim": "6 mm", "repeat": "24 mm"}],
    "lines": [{"id": "outside", "along": "band:inner.outer", "gap": "0 mm", "width": "1 mm", "colour": "copper"}],
    "leaf": [{"id": "field", "region": "outside:inner", "method": "scattered", "coverage": 0.15,
              "size": "methylCellulose", "keepOff": {"edge": "6 mm"}}],
    "stock": [{"id": "board", "kind": "board", "width": "1200 mm", "height": "810 mm", "kerf": "1 mm"},
              {"id": "sheet", "kind": "paper", "width": "700 mm", "height": "500 mm"}],
    "room": {"temperature": "19 C", "humidity": "58 %"}})")
      .root;
}

File hostileJob(std::uint64_t seed) {
  Dice dice(seed);
  File file;
  file.kind = Kind::Job;
  Value job = goodJob();
  switch (dice.number(0, 4)) {
    case 0: file.text = hostileShape(dice, file.name); return file;
    case 1:
      file.name = "numbers at their ends";
      job = numbers(dice, job, static_cast<int>(dice.number(5, 60)));
      break;
    case 2:
      file.name = "long texts";
      job = texts(dice, job, 60);
      break;
    default:
      file.name = "many";
      job = roomyJob(dice, file.name);
      fill(dice, job, file.name);
      break;
  }
  file.text = core::base::writeJson(job, 0);
  file.text.resize(std::min(file.text.size(), core::base::kMaximumJsonBytes));
  return file;
}

}  // namespace hostile
