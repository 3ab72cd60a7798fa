#include "core/design/layout.h"

#include <algorithm>

#include "core/design/layout_internal.h"
#include "core/design/package_parts.h"

namespace core::design {
namespace {

using base::Message;
using base::Millimetres;
using detail::conflict;

struct TopBorders {
  double top = 0, bottom = 0, left = 0, right = 0;
};

struct BorderMaker {
  const Box& sight;

  TopBorders operator()(const FourBorders& entry) const {
    return {entry.top.inMillimetres(), entry.bottom.inMillimetres(), entry.left.inMillimetres(),
            entry.right.inMillimetres()};
  }
  TopBorders operator()(const SidesAndWeighting& entry) const {
    const double sides = entry.sides.inMillimetres();
    const Weighting& weighting = entry.weighting;
    const double bottom =
        weighting.byAddition ? (entry.sides + weighting.addition).inMillimetres() : sides * weighting.ratio;
    return {sides, bottom, sides, sides};
  }
  TopBorders operator()(const OuterAndWeighting& entry) const {
    const double sides = (entry.width.inMillimetres() - sight.width) / 2;
    const double spare = entry.height.inMillimetres() - sight.height;
    const Weighting& weighting = entry.weighting;
    if (weighting.byAddition) {
      const double addition = weighting.addition.inMillimetres();
      const double top = (spare - addition) / 2;
      return {top, top + addition, sides, sides};
    }
    const double top = spare / (1 + weighting.ratio);
    return {top, weighting.ratio * top, sides, sides};
  }
};

void placeBorders(const Job& job, Layout& layout) {
  const Box& topSight = layout.boards.front().sight;
  const TopBorders top = std::visit(BorderMaker{topSight}, job.borders.entry);
  BoardLayout& outermost = layout.boards.front();
  outermost.borderTop = top.top;
  outermost.borderBottom = top.bottom;
  outermost.borderLeft = top.left;
  outermost.borderRight = top.right;
  detail::settleOpenings(layout);
  layout.outerWidth = topSight.width + top.left + top.right;
  layout.outerHeight = topSight.height + top.top + top.bottom;
  if (const auto* outer = std::get_if<OuterAndWeighting>(&job.borders.entry)) {
    // Entered exactly, so not to be had back from its own halves.
    layout.outerWidth = outer->width.inMillimetres();
    layout.outerHeight = outer->height.inMillimetres();
  }
}

// A part to be cut can be no longer than the longest length that can be entered. Returns false where the mount itself
// is.
bool checkOuter(const Job& job, const Layout& layout, base::Problems& problems) {
  const bool width = detail::checkCuttable(layout.outerWidth, job.borders.place.pointer + "/outer/width",
                                           Message("job.mount-too-wide"), problems);
  const bool height = detail::checkCuttable(layout.outerHeight, job.borders.place.pointer + "/outer/height",
                                            Message("job.mount-too-high"), problems);
  return width && height;
}

void frameBorders(const Job& job, Layout& layout, base::Problems& problems) {
  const BoardLayout& board = layout.boards.front();
  const TopBorders top{board.borderTop, board.borderBottom, board.borderLeft, board.borderRight};
  const double plan = board.bevelPlan;
  layout.seenTop = top.top - plan;
  layout.seenBottom = top.bottom - plan;
  layout.seenLeft = top.left - plan;
  layout.seenRight = top.right - plan;
  const double cover = job.rebate.cover.inMillimetres();
  const double allowance = job.rebate.allowanceTotal.inMillimetres();
  layout.framedLeft = layout.seenLeft - cover + allowance / 2;
  layout.framedRight = layout.seenRight - cover + allowance / 2;
  layout.framedTop = layout.seenTop - cover + allowance;
  layout.framedBottom = layout.seenBottom - cover;

  const struct {
    const char* side;
    const char* keys[2];  // where the file may say it: the first that is there is pointed at
    double border, seen, framed;
  } sides[] = {{"top", {"top", "outer/height"}, top.top, layout.seenTop, layout.framedTop},
               {"bottom", {"bottom", "outer/height"}, top.bottom, layout.seenBottom, layout.framedBottom},
               {"left", {"left", "outer/width"}, top.left, layout.seenLeft, layout.framedLeft},
               {"right", {"right", "outer/width"}, top.right, layout.seenRight, layout.framedRight}};
  const bool byOuter = std::holds_alternative<OuterAndWeighting>(job.borders.entry);
  for (const auto& side : sides) {
    const std::string pointer = job.borders.place.pointer + '/' + side.keys[byOuter ? 1 : 0];
    if (side.border <= 0) {
      conflict(problems, pointer,
               Message("job.no-border").with("side", std::string(side.side)).with("by", Millimetres{-side.border}));
    } else if (side.seen <= 0) {
      conflict(problems, pointer,
               Message("job.border-within-bevel")
                   .with("side", std::string(side.side))
                   .with("border", Millimetres{side.border})
                   .with("bevel", Millimetres{plan})
                   .with("by", Millimetres{-side.seen}));
    } else if (side.framed <= 0) {
      conflict(problems, job.rebate.place.pointer.empty() ? pointer : job.rebate.place.pointer + "/cover",
               Message("job.border-under-lip")
                   .with("side", std::string(side.side))
                   .with("cover", Millimetres{cover})
                   .with("seen", Millimetres{side.seen})
                   .with("by", Millimetres{-side.framed}));
    }
  }
}

void placeWork(const Job& job, Layout& layout, base::Problems& problems) {
  const BoardLayout& innermost = layout.boards.back();
  const double distance = job.window.distance.inMillimetres();
  const Sheet& sheet = job.artwork.sheet;
  if (job.window.floats) {
    layout.artLeft = innermost.borderLeft + distance;
    layout.artTop = innermost.borderTop + distance;
  } else {
    layout.artLeft = innermost.borderLeft - (job.window.distance + sheet.left).inMillimetres();
    layout.artTop = innermost.borderTop - (job.window.distance + sheet.top).inMillimetres();
  }
  layout.artLeft += layout.widerBy.width / 2;
  layout.artTop += layout.widerBy.height / 2;
  layout.sheetWidth = sheet.width.inMillimetres();
  layout.sheetHeight = sheet.height.inMillimetres();
  const auto within = [&](double from, double size, double whole, std::string_view key) {
    const double over = std::max(-from, from + size - whole);
    if (over <= 1e-9) return;
    conflict(problems, job.artwork.sheetPlace.pointer + '/' + std::string(key),
             Message("job.sheet-beyond-mount")
                 .with("sheet", Millimetres{size})
                 .with("mount", Millimetres{whole})
                 .with("by", Millimetres{over}));
  };
  within(layout.artLeft, layout.sheetWidth, layout.outerWidth, "width");
  within(layout.artTop, layout.sheetHeight, layout.outerHeight, "height");
}

void placePackage(const Job& job, Layout& layout) {
  const double allowance = job.rebate.allowanceTotal.inMillimetres();
  layout.rebateWidth = layout.outerWidth + allowance;
  layout.rebateHeight = layout.outerHeight + allowance;
  const Package& package = job.package;
  Length depth = package.glazing + package.spacer + package.decoration + job.artwork.thickness + package.hinge +
                 package.backMount + package.backing + package.seal;
  for (const Board& board : job.boards) depth = depth + board.thickness;
  layout.packageDepth = depth.inMillimetres();
  layout.rebateDepth = (depth + package.fixing).inMillimetres();
}

// What no maker could put together, however it is worked.
void checkPackage(const Job& job, const Layout& layout, base::Problems& problems) {
  if (hasSpacer(job)) {
    const double most = std::min(layout.outerWidth, layout.outerHeight) / 2;
    const double width = spacerWidth(job).inMillimetres();
    if (width >= most) {
      conflict(problems, "/package/spacerWidth",
               Message("job.spacer-strips-meet")
                   .with("spacer", Millimetres{width})
                   .with("mount", Millimetres{2 * most})
                   .with("most", Millimetres{most}));
    }
  }
  const bool isGlazed = job.deliver == units::Deliver::Framed && job.package.glazing > Length();
  if (const Length air = airOf(job); job.window.floats && isGlazed && air < Length()) {
    const auto support = supportOf(job);
    conflict(problems, support ? "/package/support" : "/package/spacer",
             Message("job.float-beyond-glazing")
                 .with("support", detail::mm(support ? support->thickness : Length()))
                 .with("artwork", detail::mm(job.artwork.thickness))
                 .with("by", detail::mm(Length() - air)));
  }
}

template <typename Item>
const Item* findById(const std::vector<Item>& items, const std::string& id) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  return found == items.end() ? nullptr : &*found;
}

}  // namespace

namespace detail {

void conflict(base::Problems& problems, std::string pointer, Message message, base::Severity severity) {
  base::Problem problem;
  problem.pointer = std::move(pointer);
  problem.message = std::move(message);
  problem.severity = severity;
  problems.add(std::move(problem));
}

bool checkCuttable(double length, std::string pointer, Message message, base::Problems& problems) {
  const double most = units::kLongestLength.inMillimetres();
  if (length <= most) return true;
  conflict(problems, std::move(pointer),
           std::move(message).with("length", Millimetres{length}).with("most", Millimetres{most}));
  return false;
}

Rectangle mountRectangle(const Layout& layout) { return {0, 0, layout.outerWidth, layout.outerHeight}; }
Rectangle faceRectangle(const Layout& layout) { return layout.boards.front().faceAt; }

geometry::Patch patchOf(const Layout& layout, const geometry::Ring& ring) {
  const Rectangle face = faceRectangle(layout);
  return {geometry::outlineOf(geometry::outside(face, ring.to)),
          geometry::outlineOf(geometry::outside(face, ring.from))};
}

}  // namespace detail

const BoardLayout* Layout::board(const std::string& id) const { return findById(boards, id); }
const BandLayout* Layout::band(const std::string& id) const { return findById(bands, id); }
const LineLayout* Layout::line(const std::string& id) const { return findById(lines, id); }
const SpandrelLayout* Layout::spandrel(const std::string& id) const { return findById(spandrels, id); }
const WashLayout* Layout::wash(const std::string& id) const { return findById(washes, id); }

std::vector<std::string> Layout::inReachOf(const std::string& id) const {
  std::vector<std::pair<std::string, geometry::Ring>> rings;
  for (const BandLayout& band : bands) rings.emplace_back(band.id, band.ring);
  for (const LineLayout& line : lines) rings.emplace_back(line.id, line.ring);
  for (const SpandrelLayout& spandrel : spandrels) rings.emplace_back(spandrel.id, spandrel.ring);
  for (const WashLayout& wash : washes) rings.emplace_back(wash.id, wash.ring);
  for (const LeafLayout& field : leaf) {
    if (!field.onBevel) rings.emplace_back(field.id, field.ring);
  }
  const auto self = std::find_if(rings.begin(), rings.end(), [&](const auto& entry) { return entry.first == id; });
  std::vector<std::string> ids;
  if (self == rings.end()) return ids;
  for (const auto& [other, ring] : rings) {
    if (other != id && geometry::touch(self->second, ring)) ids.push_back(other);
  }
  return ids;
}

std::vector<std::string> Layout::linesFromWindow() const {
  std::vector<const LineLayout*> sorted;
  for (const LineLayout& line : lines) sorted.push_back(&line);
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const LineLayout* a, const LineLayout* b) { return a->ring.from.sides < b->ring.from.sides; });
  std::vector<std::string> ids;
  for (const LineLayout* line : sorted) ids.push_back(line->id);
  return ids;
}

Layout layOut(const Job& job, base::Problems& problems) { return layOut(job, AsMade(), problems); }

Layout layOut(const Job& job, const AsMade& made, base::Problems& problems) {
  Effort effort;
  return layOut(job, made, effort, problems);
}

Layout layOut(const Job& planned, const AsMade& made, Effort& effort, base::Problems& problems) {
  const Job job = asMeasured(planned, made);
  Layout layout;
  base::Problems found;
  if (!detail::mayBegin(job, effort, found)) {
    problems.append(found);
    return layout;
  }
  const detail::ExactBox opening = detail::visibleOpening(job, found);
  layout.visible = opening.box();
  const bool open = opening.width > Length() && opening.height > Length();
  if (!open || !detail::makeOpenings(job, opening, layout, effort, found)) {
    // Without an opening every further conflict would be a consequence of this one.
    problems.append(found);
    return layout;
  }
  placeBorders(job, layout);
  if (!checkOuter(job, layout, found)) {
    problems.append(found);
    return layout;
  }
  if (!made.empty() && !detail::openAsMade(job, made, layout, effort, found)) {
    problems.append(found);
    return layout;
  }
  frameBorders(job, layout, found);
  detail::checkCover(job, layout, found);
  placeWork(job, layout, found);
  placePackage(job, layout);
  checkPackage(job, layout, found);
  detail::placeBands(job, made, layout, found);
  detail::placeLines(job, layout, effort, found);
  // What lies between them, and areas, mean nothing while things overlap or hang over an edge.
  if (!found.hasErrors()) detail::placeSpandrels(job, layout, effort, found);
  if (!found.hasErrors()) detail::placeWashes(job, layout, effort, found);
  if (!found.hasErrors()) detail::placeLeaf(job, layout, effort, found);
  problems.append(found);
  return layout;
}

}  // namespace core::design
