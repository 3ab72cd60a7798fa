// Artwork, window, boards, borders, rebate.
#include "core/design/job_reader_internal.h"

namespace core::design::detail {
namespace {

using base::Message;

struct LengthKey {
  std::string key;
  Length geometry::ShapeEntry::*target;
};

struct HeadWord {
  std::string word;
  std::vector<LengthKey> lengths;
};

const std::vector<std::string>& shapeWords() {
  static const std::vector<std::string> words = {"rectangle", "rounded", "scalloped", "chamfered",
                                                 "oval",      "round",   "arch"};
  return words;
}

const std::vector<HeadWord>& headWords() {
  using Entry = geometry::ShapeEntry;
  static const LengthKey rise = {"rise", &Entry::rise};
  static const LengthKey radius = {"radius", &Entry::radius};
  static const std::vector<HeadWord> words = {
      {"round", {}},
      {"segmental", {rise}},
      {"pointed", {rise}},
      {"fourCentred", {rise, radius}},
      {"basket", {rise, radius}},
      {"ogee", {rise, radius}},
      {"horseshoe", {rise}},
      {"trefoil",
       {{"sideRadius", &Entry::sideRadius}, {"topRadius", &Entry::topRadius}, {"topCentre", &Entry::topCentre}}},
      {"multifoil", {}},
  };
  return words;
}

// Returns whether the head and all its parameters could be read.
bool readHead(ObjectReader& window, geometry::ShapeEntry& form, Problems& problems) {
  std::vector<std::string> names;
  for (const HeadWord& head : headWords()) names.push_back(head.word);
  const auto index = base::readChoice(window.required("head"), names, problems);
  if (!index) {
    // Which parameters belong to it cannot be known: do not call them unknown as well.
    for (const char* key : {"rise", "radius", "angle", "sideRadius", "topRadius", "topCentre", "lobes"}) {
      (void)window.optional(key);
    }
    return false;
  }
  form.head = static_cast<Head>(*index);
  bool good = true;
  for (const LengthKey& key : headWords()[*index].lengths) {
    const auto length = readLength(window.required(key.key), LengthRange::Size, problems);
    if (length) form.*key.target = *length;
    good = good && length;
  }
  if (form.head == Head::FourCentred) {
    const auto angle = base::readNumber(window.required("angle"), problems, 1, 89);
    if (angle) form.angle = *angle;
    good = good && angle;
  }
  if (form.head == Head::Multifoil) {
    const Node lobes = window.required("lobes");
    const auto count = base::readInteger(lobes, problems, 3, 99);
    const bool even = count && *count % 2 == 0;
    if (even) base::report(problems, lobes, Message("job.even-lobes").with("lobes", *count));
    if (count) form.lobes = static_cast<int>(*count);
    good = good && count && !even;
  }
  return good;
}

std::optional<Board> readBoard(const Node& node, bool outermost, std::set<std::string>& ids, Problems& problems) {
  ObjectReader reader(node, problems);
  if (!reader.valid()) return std::nullopt;
  Board board;
  board.place = placeOf(node);
  const auto id = readId(reader.required("id"), ids, problems);
  const auto thickness = readLength(reader.required("thickness"), LengthRange::Size, problems);
  bool good = id && thickness;
  if (good) {
    board.id = *id;
    board.thickness = *thickness;
  }
  if (outermost) {
    const Node reveal = reader.optional("reveal");
    if (reveal) base::report(problems, reveal, Message("job.reveal-on-outermost"));
  } else if (const auto reveal = readLength(reader.required("reveal"), LengthRange::Size, problems)) {
    board.reveal = *reveal;
  } else {
    good = false;
  }
  if (const Node bevelNode = reader.optional("bevel")) {
    ObjectReader bevel(bevelNode, problems);
    if (const Node angle = bevel.optional("angle")) {
      const auto degrees = base::readNumber(angle, problems, 30, 90);
      if (degrees) board.bevelAngle = units::Angle::degrees(*degrees);
      good = good && degrees;
    }
    if (const Node colour = bevel.optional("colour")) board.bevelColour = base::readText(colour, problems);
    bevel.finish();
  }
  if (const auto material = base::readText(reader.optional("material"), problems)) board.material = *material;
  reader.finish();
  if (!good) return std::nullopt;
  return board;
}

// Of a list that says itself how many it may hold.
constexpr std::size_t kMostEntries = 1000;

bool readBoards(ObjectReader& mount, Job& job, std::set<std::string>& ids, Problems& problems) {
  const Node node = mount.required("boards");
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return false;
  if (items->empty() || items->size() > kMostBoards) {
    base::report(problems, node, Message("job.board-count").with("count", static_cast<std::int64_t>(items->size())));
  }
  bool good = !items->empty() && items->size() <= kMostBoards;
  for (std::size_t i = 0; i < items->size(); ++i) {
    auto board = readBoard((*items)[i], i == 0, ids, problems);
    good = good && board;
    if (board) job.boards.push_back(*std::move(board));
  }
  return good;
}

bool readBorders(ObjectReader& mount, Job& job, Problems& problems) {
  const Node node = mount.required("borders");
  ObjectReader reader(node, problems);
  if (!reader.valid()) return false;
  job.borders.place = placeOf(node);
  const auto size = [&](std::string_view key) { return readLength(reader.required(key), LengthRange::Size, problems); };
  bool good = false;
  if (reader.has("outer")) {
    ObjectReader outer(reader.required("outer"), problems);
    const auto width = readLength(outer.required("width"), LengthRange::Size, problems);
    const auto height = readLength(outer.required("height"), LengthRange::Size, problems);
    outer.finish();
    const auto weighting = readWeighting(reader.required("weighting"), problems);
    good = width && height && weighting;
    if (good) job.borders.entry = OuterAndWeighting{*width, *height, *weighting};
  } else if (reader.has("weighting")) {
    const auto sides = size("sides");
    const auto weighting = readWeighting(reader.required("weighting"), problems);
    good = sides && weighting;
    if (good) job.borders.entry = SidesAndWeighting{*sides, *weighting};
  } else {
    const bool symmetric = reader.has("sides") || !(reader.has("left") || reader.has("right"));
    const auto top = size("top");
    const auto bottom = size("bottom");
    const auto left = size(symmetric ? "sides" : "left");
    const auto right = symmetric ? left : size("right");
    good = top && bottom && left && right;
    if (good) job.borders.entry = FourBorders{*top, *bottom, *left, *right};
  }
  reader.finish();
  return good;
}

bool readRebate(ObjectReader& mount, Job& job, Problems& problems) {
  const Node node = mount.optional("rebate");
  if (!node) return true;
  ObjectReader reader(node, problems);
  job.rebate.place = placeOf(node);
  const bool allowance =
      readInto(reader.optional("allowanceTotal"), LengthRange::Distance, job.rebate.allowanceTotal, problems);
  const bool cover = readInto(reader.optional("cover"), LengthRange::Distance, job.rebate.cover, problems);
  reader.finish();
  return reader.valid() && allowance && cover;
}

}  // namespace

bool readArtwork(ObjectReader& root, Job& job, Problems& problems) {
  const Node node = root.required("artwork");
  ObjectReader reader(node, problems);
  if (!reader.valid()) return false;
  Artwork& artwork = job.artwork;
  artwork.place = placeOf(node);
  const auto width = readLengthWithUnit(reader.required("width"), LengthRange::Size, problems);
  const auto height = readLength(reader.required("height"), LengthRange::Size, problems);
  const bool thickness = readInto(reader.optional("thickness"), LengthRange::Size, artwork.thickness, problems);
  bool good = width && height && thickness;
  if (width && height) {
    artwork.width = width->length;
    artwork.height = *height;
    artwork.sheet = {artwork.width, artwork.height, Length(), Length()};
    const bool inches = width->unit == units::LengthUnit::Inch;
    job.units = inches ? units::UnitSystem::Inches : units::UnitSystem::Millimetres;
  }
  artwork.sheetPlace = artwork.place;
  if (const Node sheetNode = reader.optional("sheet")) {
    ObjectReader sheet(sheetNode, problems);
    artwork.sheetPlace = placeOf(sheetNode);
    const auto sheetWidth = readLength(sheet.required("width"), LengthRange::Size, problems);
    const auto sheetHeight = readLength(sheet.required("height"), LengthRange::Size, problems);
    const auto left = readLength(sheet.required("left"), LengthRange::Distance, problems);
    const auto top = readLength(sheet.required("top"), LengthRange::Distance, problems);
    sheet.finish();
    if (sheetWidth && sheetHeight && left && top) {
      artwork.sheet = {*sheetWidth, *sheetHeight, *left, *top};
    } else {
      good = false;
    }
  }
  reader.finish();
  return good;
}

void readWindow(ObjectReader& mount, Job& job, bool& readable, Problems& problems) {
  const Node node = mount.required("window");
  ObjectReader reader(node, problems);
  readable = false;
  if (!reader.valid()) return;
  job.window.place = placeOf(node);
  const Node shapeNode = reader.required("shape");
  const auto shape = base::readChoice(shapeNode, shapeWords(), problems);
  geometry::ShapeEntry& form = job.window.form;
  bool formRead = false;
  if (shape) {
    form.shape = static_cast<Shape>(*shape);
    formRead = true;
    if (form.shape == Shape::Rounded || form.shape == Shape::Scalloped || form.shape == Shape::Chamfered) {
      const auto corner = readLength(reader.required("corner"), LengthRange::Size, problems);
      if (corner) form.corner = *corner;
      formRead = corner.has_value();
    }
    if (form.shape == Shape::Arch) formRead = readHead(reader, form, problems);
  } else {
    for (const char* key :
         {"corner", "head", "rise", "radius", "angle", "sideRadius", "topRadius", "topCentre", "lobes"}) {
      (void)reader.optional(key);
    }
  }
  const Node overlap = reader.optional("overlap");
  const Node margin = reader.optional("margin");
  if (overlap && margin) {
    base::report(problems, margin, Message("job.overlap-and-margin"));
  } else if (!overlap && !margin) {
    base::report(problems, node, Message("job.no-overlap"));
  } else {
    job.window.floats = static_cast<bool>(margin);
    if (const auto distance = readLength(margin ? margin : overlap, LengthRange::Distance, problems)) {
      job.window.distance = *distance;
      readable = formRead;
    }
  }
  reader.finish();
}

bool readMount(ObjectReader& root, Job& job, std::set<std::string>& ids, Problems& problems) {
  ObjectReader mount(root.required("mount"), problems);
  if (!mount.valid()) return false;
  bool window = false;
  readWindow(mount, job, window, problems);
  const bool boards = readBoards(mount, job, ids, problems);
  const bool borders = readBorders(mount, job, problems);
  const bool rebate = readRebate(mount, job, problems);
  mount.finish();
  return window && boards && borders && rebate;
}

}  // namespace core::design::detail
