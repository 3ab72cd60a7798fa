// Bands, lines, leaf, package, techniques, room.
#include <algorithm>

#include "core/base/text.h"
#include "core/design/job_reader_internal.h"

namespace core::design::detail {
namespace {

using base::Message;

bool readOffset(const Node& node, Band& band, Problems& problems) {
  if (!node) return false;
  if (node.value->kind() != base::Value::Kind::Object) {
    const auto offset = readLength(node, LengthRange::Distance, problems);
    if (offset) band.offsetSides = band.offsetTopBottom = *offset;
    return offset.has_value();
  }
  ObjectReader reader(node, problems);
  const auto sides = readLength(reader.required("sides"), LengthRange::Distance, problems);
  const auto topBottom = readLength(reader.required("topBottom"), LengthRange::Distance, problems);
  reader.finish();
  if (!sides || !topBottom) return false;
  band.offsetSides = *sides;
  band.offsetTopBottom = *topBottom;
  return true;
}

std::optional<Band> readBand(const Node& node, std::set<std::string>& ids, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Band band;
  band.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  const auto paper = base::readText(reader.required("paper"), problems);
  bool good = id && paper;
  if (id) band.id = *id;
  if (paper) band.paper = *paper;
  good = readOffset(reader.required("offset"), band, problems) && good;
  if (const auto width = readLength(reader.required("width"), LengthRange::Size, problems)) {
    band.width = *width;
  } else {
    good = false;
  }
  good = readInto(reader.optional("trim"), LengthRange::Distance, band.trim, problems) && good;
  const auto optionalSize = [&](std::string_view key, std::optional<Length>& target) {
    const Node member = reader.optional(key);
    target = readLength(member, LengthRange::Size, problems);
    if (member && !target) good = false;
  };
  optionalSize("dryEnd", band.dryEnd);
  optionalSize("repeat", band.repeat);
  band.motif = band.repeat ? Motif::Mirror : Motif::Plain;
  good = readWord(reader.optional("motif"), {"mirror", "directional", "plain"}, band.motif, problems) && good;
  if (const Node centre = reader.optional("centre")) {
    ObjectReader centring(centre, problems);
    const std::vector<std::string> words = {"motif", "ground"};
    good = readWord(centring.optional("horizontal"), words, band.centreHorizontal, problems) && good;
    good = readWord(centring.optional("vertical"), words, band.centreVertical, problems) && good;
    centring.finish();
  }
  if (const Node grain = reader.optional("grain")) {
    Grain value = Grain::Any;
    good = readWord(grain, {"along", "across", "any"}, value, problems) && good;
    band.grain = value;
  }
  reader.finish();
  if (!good) return std::nullopt;
  return band;
}

std::optional<Line> readLine(const Node& node, const Job& job, std::set<std::string>& ids,
                             const std::set<std::string>& leftOut, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Line line;
  line.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  const bool edge = readEdge(reader.required("along"), job, leftOut, line.along, line.band, problems);
  const auto width = readLength(reader.required("width"), LengthRange::Size, problems);
  const auto colour = base::readText(reader.required("colour"), problems);
  const Node gapNode = reader.optional("gap");
  bool good = readInto(gapNode, LengthRange::Signed, line.gap, problems) && id && edge && width && colour;
  if (width && line.gap < -*width) {
    base::report(problems, gapNode,
                 Message("job.gap-beyond-width")
                     .with("gap", base::Millimetres{line.gap.inMillimetres()})
                     .with("width", base::Millimetres{width->inMillimetres()}));
    good = false;
  }
  reader.finish();
  if (!good) return std::nullopt;
  line.id = *id;
  line.width = *width;
  line.colour = *colour;
  return line;
}

struct RegionWord {
  std::string_view prefix;
  RegionKind kind;
};

bool readRegion(const Node& node, const Job& job, const std::set<std::string>& leftOut, Leaf& leaf,
                Problems& problems) {
  if (!node) return false;
  const std::string text = node.value->kind() == base::Value::Kind::Text ? node.value->asText() : "";
  if (text == "face") return true;
  for (const auto& [prefix, kind] : {RegionWord{"outside:", RegionKind::Outside},
                                     {"inside:", RegionKind::Inside},
                                     {"on:", RegionKind::On},
                                     {"spandrel:", RegionKind::Spandrel},
                                     {"bevel:", RegionKind::Bevel}}) {
    if (!base::startsWith(text, prefix)) continue;
    leaf.region = kind;
    leaf.regionOf = text.substr(prefix.size());
    if (kind == RegionKind::Spandrel) return knownSpandrel(leaf.regionOf, node, job, leftOut, problems);
    if (kind != RegionKind::Bevel) return knownBand(leaf.regionOf, node, job, leftOut, problems);
    for (const Board& board : job.boards) {
      if (board.id == leaf.regionOf) return true;
    }
    base::report(problems, node, Message("job.no-such-board").with("id", leaf.regionOf));
    return false;
  }
  base::report(problems, node, Message("job.bad-region"));
  return false;
}

std::optional<Leaf> readLeafField(const Node& node, const Job& job, std::set<std::string>& ids,
                                  const std::set<std::string>& leftOut, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Leaf leaf;
  leaf.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  bool good = readRegion(reader.required("region"), job, leftOut, leaf, problems) && id;
  if (id) leaf.id = *id;
  const Node methodNode = reader.required("method");
  good = readWord(methodNode, {"scattered", "laid"}, leaf.method, problems) && methodNode && good;
  const bool scattered = leaf.method == LeafMethod::Scattered && methodNode;
  const Node sizeNode = reader.required("size");
  good = readWord(sizeNode, {"methylCellulose", "starch", "water", "oil"}, leaf.size, problems) && sizeNode && good;

  if (const Node metalNode = reader.optional("metal")) {
    Metal metal = Metal::Gold;
    good =
        readWord(metalNode, {"gold", "palladium", "aluminium", "silver", "copper", "brass"}, metal, problems) && good;
    leaf.metal = metal;
  }

  if (scattered) {
    const auto coverage = base::readNumber(reader.required("coverage"), problems, 0, 1);
    if (coverage) leaf.coverage = *coverage;
    good = coverage && good;
  } else if (const Node coverage = reader.optional("coverage"); coverage && methodNode) {
    base::report(problems, coverage, Message("job.coverage-of-laid"));
  }
  if (const Node keepOffNode = reader.optional("keepOff")) {
    ObjectReader keepOff(keepOffNode, problems);
    good = readInto(keepOff.optional("edge"), LengthRange::Distance, leaf.keepOffEdge, problems) && good;
    good = readInto(keepOff.optional("lines"), LengthRange::Distance, leaf.keepOffLines, problems) && good;
    keepOff.finish();
  }
  if (const Node leafNode = reader.optional("leaf")) {
    ObjectReader leafSize(leafNode, problems);
    const auto width = readLength(leafSize.required("width"), LengthRange::Size, problems);
    const auto height = readLength(leafSize.required("height"), LengthRange::Size, problems);
    leafSize.finish();
    good = width && height && good;
    if (width && height) {
      leaf.leafWidth = *width;
      leaf.leafHeight = *height;
    }
  }
  const Node lapNode = reader.optional("lap");
  good = readInto(lapNode, LengthRange::Distance, leaf.lap, problems) && good;
  if (leaf.lap >= std::min(leaf.leafWidth, leaf.leafHeight)) {
    base::report(problems, lapNode ? lapNode : node, Message("job.lap-beyond-leaf"));
    good = false;
  }
  leaf.waste = scattered ? 0.6 : 0.24;
  const auto optionalNumber = [&](std::string_view key, double most, double& target) {
    const Node member = reader.optional(key);
    const auto number = base::readNumber(member, problems, 0, most);
    if (number) target = *number;
    if (member && !number) good = false;
  };
  // Scattered leaf divides by what is not wasted; beyond 95 % the entry is a mistake.
  optionalNumber("waste", scattered ? 0.95 : 10, leaf.waste);
  optionalNumber("potLoss", 10, leaf.potLoss);
  const Node spreadNode = reader.optional("spread");
  if (const auto spread = readSpread(spreadNode, problems)) {
    leaf.spread = *spread;
  } else if (spreadNode) {
    good = false;
  }
  reader.finish();
  if (!good) return std::nullopt;
  return leaf;
}

}  // namespace

void readBands(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems) {
  bool complete = true;
  forEach(root, "bands", kMostBands, problems, [&](const Node& node) {
    auto band = readBand(node, ids, problems);
    // Each band lies outside the one before: after one that could not be read, nothing is known of the rest.
    complete = complete && band;
    if (complete) job.bands.push_back(*std::move(band));
  });
}

void readLines(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
               Problems& problems) {
  forEach(root, "lines", kMostLines, problems, [&](const Node& node) {
    if (auto line = readLine(node, job, ids, leftOut, problems)) job.lines.push_back(*std::move(line));
  });
}

void readLeaf(ObjectReader& root, Job& job, std::set<std::string>& ids, const std::set<std::string>& leftOut,
              Problems& problems) {
  forEach(root, "leaf", kMostLeafFields, problems, [&](const Node& node) {
    if (auto leaf = readLeafField(node, job, ids, leftOut, problems)) job.leaf.push_back(*std::move(leaf));
  });
}

void readPackage(ObjectReader& root, Job& job, Problems& problems) {
  const Node node = root.optional("package");
  if (!node) return;
  ObjectReader reader(node, problems);
  Package& package = job.package;
  package.place = placeOf(node);
  const auto into = [&](std::string_view key, Length& target) {
    (void)readInto(reader.optional(key), LengthRange::Distance, target, problems);
  };
  into("glazing", package.glazing);
  into("spacer", package.spacer);
  package.spacerWidth = readLength(reader.optional("spacerWidth"), LengthRange::Size, problems);
  package.support = readLength(reader.optional("support"), LengthRange::Distance, problems);
  into("decoration", package.decoration);
  into("hinge", package.hinge);
  into("backMount", package.backMount);
  into("backing", package.backing);
  into("seal", package.seal);
  into("fixing", package.fixing);
  reader.finish();
}

void readTechniques(ObjectReader& root, Job& job, Problems& problems) {
  const Node node = root.optional("techniques");
  if (!node) return;
  if (node.value->kind() != base::Value::Kind::Object) {
    base::report(problems, node, Message("read.expected-object"));
    return;
  }
  if (const std::size_t count = node.value->members().size(); count > kMostRoles) {
    base::report(problems, node,
                 Message("read.too-many-items")
                     .with("count", static_cast<std::int64_t>(count))
                     .with("most", static_cast<std::int64_t>(kMostRoles)));
    return;
  }
  for (const auto& [role, value] : node.value->members()) {
    const Node member{&value, base::pointerTo(node.pointer, role)};
    if (const auto technique = base::readText(member, problems)) job.techniques[role] = *technique;
  }
}

void readDelivery(ObjectReader& root, Job& job, Problems& problems) {
  std::vector<std::string> words;
  for (const units::Deliver one : units::kDelivers) words.emplace_back(units::name(one));
  if (const auto index = base::readChoice(root.optional("deliver"), words, problems)) {
    job.deliver = units::kDelivers[*index];
  }
  job.count = static_cast<int>(base::readInteger(root.optional("count"), problems, 1, kMostPieces).value_or(1));
}

void readRoom(ObjectReader& root, Job& job, Problems& problems) {
  const Node node = root.optional("room");
  if (!node) return;
  ObjectReader reader(node, problems);
  const auto temperatureText = base::readText(reader.required("temperature"), problems);
  const auto humidityText = base::readText(reader.required("humidity"), problems);
  reader.finish();
  if (!temperatureText || !humidityText) return;
  const auto temperature = units::parseTemperature(*temperatureText);
  const auto humidity = units::parseHumidity(*humidityText);
  if (!temperature) base::report(problems, reader.optional("temperature"), temperature.error());
  if (!humidity) base::report(problems, reader.optional("humidity"), humidity.error());
  if (temperature && humidity) job.room = units::Room{temperature.value(), humidity.value()};
}

}  // namespace core::design::detail
