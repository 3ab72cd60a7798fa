// What stands between or follows bands and lines: the edges they follow, spandrels, washes.
#include "core/base/text.h"
#include "core/design/job_reader_internal.h"

namespace core::design::detail {
namespace {

using base::Message;

bool readFrame(const Node& node, const Job& job, const std::set<std::string>& leftOut, Spandrel& spandrel,
               Problems& problems) {
  if (!node) return false;
  ObjectReader frame(node, problems);
  if (!frame.valid()) return false;
  bool good = false;
  if (frame.has("band")) {
    const Node band = frame.required("band");
    if (const auto id = base::readText(band, problems)) {
      spandrel.frameBand = *id;
      good = knownBand(*id, band, job, leftOut, problems);
    }
  } else if (const auto offset = readLength(frame.required("offset"), LengthRange::Distance, problems)) {
    spandrel.frameOffset = *offset;
    good = true;
  }
  frame.finish();
  return good;
}

std::optional<Spandrel> readSpandrel(const Node& node, const Job& job, std::set<std::string>& ids,
                                     const std::set<std::string>& leftOut, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Spandrel spandrel;
  spandrel.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  const auto paper = base::readText(reader.required("paper"), problems);
  bool good = id && paper;
  if (id) spandrel.id = *id;
  if (paper) spandrel.paper = *paper;
  good = readFrame(reader.required("frame"), job, leftOut, spandrel, problems) && good;
  const auto distance = [&](std::string_view key, Length& target) {
    good = readInto(reader.optional(key), LengthRange::Distance, target, problems) && good;
  };
  distance("under", spandrel.under);
  distance("shy", spandrel.shy);
  distance("trim", spandrel.trim);
  if (const Node from = reader.optional("from")) {
    const auto index = base::readChoice(from, {"springing", "sill"}, problems);
    spandrel.fromSill = index == 1;
    good = good && index;
  }
  if (const Node grain = reader.optional("grain")) {
    Grain value = Grain::Any;
    good = readWord(grain, {"along", "across", "any"}, value, problems) && good;
    spandrel.grain = value;
  }
  reader.finish();
  if (!good) return std::nullopt;
  return spandrel;
}

// "line:ID" of a line that was read.
bool readLineName(const Node& node, const Job& job, const std::set<std::string>& leftOut, std::string& target,
                  Problems& problems) {
  constexpr std::string_view kPrefix = "line:";
  const std::string text = node.value->kind() == base::Value::Kind::Text ? node.value->asText() : "";
  if (!base::startsWith(text, kPrefix)) {
    base::report(problems, node, Message("job.wash-between-two"));
    return false;
  }
  target = text.substr(kPrefix.size());
  for (const Line& line : job.lines) {
    if (line.id == target) return true;
  }
  if (!leftOut.contains(target)) base::report(problems, node, Message("job.no-such-line").with("id", target));
  return false;
}

bool readBetween(const Node& node, const Job& job, const std::set<std::string>& leftOut, Wash& wash,
                 Problems& problems) {
  wash.between = true;
  const auto items = base::readItems(node, problems, kMostLines);
  if (!items) return false;
  if (items->size() != 2) {
    base::report(problems, node, Message("job.wash-between-two"));
    return false;
  }
  const bool first = readLineName(items->front(), job, leftOut, wash.lineA, problems);
  const bool second = readLineName(items->back(), job, leftOut, wash.lineB, problems);
  if (!first || !second) return false;
  if (wash.lineA != wash.lineB) return true;
  base::report(problems, node, Message("job.wash-between-two"));
  return false;
}

std::optional<Wash> readWash(const Node& node, const Job& job, std::set<std::string>& ids,
                             const std::set<std::string>& leftOut, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Wash wash;
  wash.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  const auto colour = base::readText(reader.required("colour"), problems);
  bool good = id && colour;
  if (id) wash.id = *id;
  if (colour) wash.colour = *colour;
  if (reader.has("between")) {
    good = readBetween(reader.required("between"), job, leftOut, wash, problems) && good;
  } else {
    good = readEdge(reader.required("along"), job, leftOut, wash.along, wash.band, problems) && good;
    const auto gap = readLength(reader.required("gap"), LengthRange::Distance, problems);
    const auto width = readLength(reader.required("width"), LengthRange::Size, problems);
    if (gap) wash.gap = *gap;
    if (width) wash.width = *width;
    good = good && gap && width;
  }
  if (const Node order = reader.optional("order")) {
    const auto index = base::readChoice(order, {"linesFirst", "washFirst"}, problems);
    wash.washFirst = index == 1;
    good = good && index;
  }
  reader.finish();
  if (!good) return std::nullopt;
  return wash;
}

}  // namespace

bool knownBand(const std::string& id, const Node& node, const Job& job, const std::set<std::string>& leftOut,
               Problems& problems) {
  for (const Band& band : job.bands) {
    if (band.id == id) return true;
  }
  if (!leftOut.contains(id)) base::report(problems, node, Message("job.no-such-band").with("id", id));
  return false;
}

bool readEdge(const Node& node, const Job& job, const std::set<std::string>& leftOut, Edge& along, std::string& band,
              Problems& problems) {
  if (!node) return false;
  const std::string text = node.value->kind() == base::Value::Kind::Text ? node.value->asText() : "";
  if (text == "window") return true;
  constexpr std::string_view kPrefix = "band:";
  constexpr std::size_t kSuffix = 6;  // ".inner", ".outer"
  const bool inner = base::endsWith(text, ".inner");
  if (!base::startsWith(text, kPrefix) || !(inner || base::endsWith(text, ".outer")) ||
      text.size() < kPrefix.size() + kSuffix) {
    base::report(problems, node, Message("job.bad-edge"));
    return false;
  }
  along = inner ? Edge::BandInner : Edge::BandOuter;
  band = text.substr(kPrefix.size(), text.size() - kPrefix.size() - kSuffix);
  return knownBand(band, node, job, leftOut, problems);
}

bool knownSpandrel(const std::string& id, const Node& node, const Job& job, const std::set<std::string>& leftOut,
                   Problems& problems) {
  for (const Spandrel& spandrel : job.spandrels) {
    if (spandrel.id == id) return true;
  }
  if (!leftOut.contains(id)) base::report(problems, node, Message("job.no-such-spandrel").with("id", id));
  return false;
}

void readSpandrels(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
                   Problems& problems) {
  forEach(root, "spandrels", kMostSpandrels, problems, [&](const Node& node) {
    if (auto spandrel = readSpandrel(node, job, ids, leftOut, problems)) job.spandrels.push_back(*std::move(spandrel));
  });
}

void readWashes(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
                Problems& problems) {
  forEach(root, "washes", kMostWashes, problems, [&](const Node& node) {
    if (auto wash = readWash(node, job, ids, leftOut, problems)) job.washes.push_back(*std::move(wash));
  });
}

}  // namespace core::design::detail
