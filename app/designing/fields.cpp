// The piece in the order in which a maker decides: the artwork, boards, window, borders, ornament, frame.
#include "app/designing/fields.h"

#include <set>

#include "app/convert/text.h"
#include "app/designing/builder.h"
#include "app/designing/entries.h"
#include "app/designing/ornament.h"
#include "app/designing/tr.h"
#include "app/words/words.h"
#include "core/design/package_parts.h"

namespace app::designing {

using core::base::Value;

namespace {

QString proposed(const char* value) { return QString::fromUtf8(value); }

// A sheet that is larger than what shows of it.
void theSheet(Builder& build) {
  if (build.at("/artwork/sheet") == nullptr) {
    Value sheet = Value::object();
    for (const char* side : {"width", "height"}) {
      const std::string shown = build.textAt(std::string("/artwork/") + side);
      sheet.set(side, Value::text(shown.empty() ? build.usual(Usual::StepOfShapes) : shown));
    }
    for (const char* side : {"left", "top"}) sheet.set(side, Value::text(build.usual(Usual::Nothing)));
    build.act(tr("The sheet is larger than what shows"), patchOf({addTo("/artwork/sheet", sheet)}));
    return;
  }
  build.of(tr("whole sheet"));
  build.length(tr("width"), "/artwork/sheet/width");
  build.length(tr("height"), "/artwork/sheet/height");
  build.length(tr("what shows, from its left"), "/artwork/sheet/left");
  build.length(tr("what shows, from its top"), "/artwork/sheet/top");
  build.of({});
  build.act(tr("The sheet is what shows"), patchOf({removeFrom("/artwork/sheet")}));
}

void theWork(Builder& build) {
  build.section(tr("The artwork"), bare(sizeText(QString::fromStdString(build.textAt("/artwork/width")),
                                                 QString::fromStdString(build.textAt("/artwork/height")))));
  build.length(tr("width"), "/artwork/width");
  build.length(tr("height"), "/artwork/height");
  build.text(tr("title"), "/title");
  build.text(tr("reference"), "/reference");
  build.text(tr("for whom"), "/client");
  build.date(tr("due"), "/due");
  build.length(tr("thickness"), "/artwork/thickness", proposed("0.3 mm"));
  theSheet(build);
}

// How many, and how thick where all are alike.
QString boardsText(const Builder& build, std::size_t count) {
  std::set<std::string> thick;
  for (std::size_t i = 0; i < count; ++i) {
    thick.insert(build.textAt(core::base::pointerTo("/mount/boards", i) + "/thickness"));
  }
  if (thick.size() != 1 || thick.begin()->empty()) return counted(count);
  return tr("%1 × %2").arg(QString::number(count), bare(convert::toQt(*thick.begin())));
}

void theBoards(Builder& build) {
  const std::size_t count = build.countAt("/mount/boards");
  build.section(tr("Boards"), boardsText(build, count));
  // First, where it is seen however many there are; leaving one out stands far from it.
  constexpr std::size_t kMostBoards = 3;
  if (count < kMostBoards) {
    const char* id = count == 1 ? "under" : "inmost";
    Value board = Value::object();
    board.set("id", Value::text(id)).set("thickness", Value::text(build.usual(Usual::Board)));
    board.set("reveal", Value::text(build.usual(Usual::Reveal)));
    board.set("bevel", Value::object().set("angle", Value::integer(45)));
    build.act(tr("One more board beneath"), patchOf({addTo("/mount/boards/-", board)}));
  }
  for (std::size_t i = 0; i < count; ++i) {
    const std::string board = core::base::pointerTo("/mount/boards", i);
    const std::string id = build.textAt(board + "/id");
    build.of(tr("%1 board").arg(QString::fromStdString(id)), id);
    material(build, tr("board"), board + "/material", Material::Board);
    build.length(tr("thickness"), board + "/thickness");
    if (i > 0) {
      const QString flat = build.figure("board." + id + ".reveal.flat");
      build.length(tr("reveal"), board + "/reveal").note =
          flat.isEmpty() ? QString() : tr("follows: flat %1").arg(flat);
    }
  }
  build.of({});
  if (count > 1) {
    build.act(tr("Leave the lowest board out"),
              patchOf({removeFrom(core::base::pointerTo("/mount/boards", count - 1))}));
  }
}

// Sides, and how much more the bottom has; or what differs from side to side.
QString bordersText(const Builder& build) {
  const auto* design = build.design();
  if (design == nullptr) return bare(convert::toQt(build.textAt("/mount/borders/sides")));
  const auto& board = design->layout.boards.front();
  const auto shown = [&](double length) { return bare(lengthShown(build, length)); };
  const QString left = shown(board.borderLeft);
  const QString top = shown(board.borderTop);
  const QString bottom = shown(board.borderBottom);
  if (left != shown(board.borderRight)) return tr("sides %1, %2").arg(left, shown(board.borderRight));
  if (top != left) return tr("%1, top %2").arg(left, top);
  // Inches have no room for both.
  if (bottom == top || build.units() == UnitSystem::Inches) return left;
  return tr("%1 +%2").arg(left, shown(board.borderBottom - board.borderTop));
}

void theBorders(Builder& build) {
  build.section(tr("Borders"), bordersText(build));
  const bool outer = build.at("/mount/borders/outer") != nullptr;
  const bool four = build.at("/mount/borders/top") != nullptr;
  // The weighting comes along, and what is shown becomes what is entered.
  const std::string board = build.design() == nullptr ? "" : build.design()->job.boards.front().id;
  const std::string weighted = build.textAt("/mount/borders/weighting");
  const auto weighting = [&](const char* otherwise) { return Value::text(weighted.empty() ? otherwise : weighted); };
  const auto border = [&](const char* side) {
    return Value::text(build.written("board." + board + ".border." + side, Usual::Border));
  };
  Value sides = Value::object();
  sides.set("sides", border("left")).set("weighting", weighting("4:3"));
  Value each = Value::object();
  for (const char* side : {"top", "bottom", "left", "right"}) each.set(side, border(side));
  Value whole = Value::object();
  Value size = Value::object();
  for (const char* side : {"width", "height"}) {
    size.set(side, Value::text(build.written(std::string("outer.") + side, Usual::MountSide)));
  }
  whole.set("outer", size).set("weighting", weighting("equal"));
  Field& way = build.choice(tr("given as"), "/mount/borders", {});
  way.pointer.clear();
  way.value = outer ? tr("size of the mount") : four ? tr("each side") : tr("sides and weighting");
  const auto become = [](const Value& entry) { return patchOf({addTo("/mount/borders", entry)}); };
  way.options = {{tr("sides and weighting"), {}, become(sides), !outer && !four},
                 {tr("each side"), {}, become(each), four},
                 {tr("size of the mount"), {}, become(whole), outer}};
  if (outer) {
    build.length(tr("mount width"), "/mount/borders/outer/width");
    build.length(tr("mount height"), "/mount/borders/outer/height");
  } else if (four) {
    build.length(tr("top"), "/mount/borders/top");
    build.length(tr("bottom"), "/mount/borders/bottom");
    if (build.at("/mount/borders/sides") != nullptr) {
      build.length(tr("sides"), "/mount/borders/sides");
    } else {
      build.length(tr("left"), "/mount/borders/left");
      build.length(tr("right"), "/mount/borders/right");
    }
  } else {
    build.length(tr("sides"), "/mount/borders/sides");
  }
  if (!four) theWeighting(build);
  theWholeSizes(build);
}

// What comes with a spacer, and with a float that one holds the glazing off from.
void theSpacerAndSupport(Builder& build) {
  const auto* design = build.design();
  const auto shown = [&](core::units::Length length) { return lengthShown(build, length.inMillimetres()); };
  const auto strips = design == nullptr ? std::nullopt : core::design::spacerOf(design->job, design->layout);
  if (strips || build.at("/package/spacerWidth") != nullptr) {
    build.length(tr("width of the spacer"), "/package/spacerWidth", strips ? shown(strips->width) : QString());
  }
  const bool floats = build.at("/mount/window/margin") != nullptr;
  if (!floats && build.at("/package/support") == nullptr) return;
  const auto support = design == nullptr ? std::nullopt : core::design::supportOf(design->job);
  build.length(tr("support under the float"), "/package/support",
               support ? shown(support->thickness) : convert::toQt(build.usual(Usual::Nothing)));
}

void theFrame(Builder& build) {
  build.section(tr("Frame"), bare(sizeText(build.figure("rebate.width"), build.figure("rebate.height"))));
  theFrameAtHand(build);
  build.length(tr("play in the rebate, both sides"), "/mount/rebate/allowanceTotal", proposed("3 mm"));
  build.length(tr("hidden by the lip"), "/mount/rebate/cover", proposed("6 mm"));
  build.length(tr("glazing"), "/package/glazing", proposed("2 mm"));
  build.length(tr("spacer"), "/package/spacer", convert::toQt(build.usual(Usual::Nothing)));
  theSpacerAndSupport(build);
  build.length(tr("back mount"), "/package/backMount", proposed("1.5 mm"));
  build.length(tr("backing"), "/package/backing", proposed("3 mm")).note =
      build.figure("rebate.depth").isEmpty() ? QString()
                                             : tr("follows: rebate %1 deep").arg(build.figure("rebate.depth"));
}

}  // namespace

void theCover(Builder& build) {
  const bool floats = build.at("/mount/window/margin") != nullptr;
  Field& way = build.choice(tr("edge of the artwork"), "/mount/window/overlap", {});
  way.pointer.clear();
  way.value = floats ? tr("shows") : tr("covered");
  const auto other = [&](const char* from, const char* to, Usual usual) {
    return floats == (std::string(to) == "margin")
               ? patchOf({})
               : patchOf({removeFrom(std::string("/mount/window/") + from),
                          addTo(std::string("/mount/window/") + to, Value::text(build.usual(usual)))});
  };
  way.options = {{tr("is covered by the mount"), {}, other("margin", "overlap", Usual::Overlap), !floats},
                 {tr("shows, with air round it"), {}, other("overlap", "margin", Usual::Air), floats}};
  build
      .length(floats ? tr("air round it") : tr("overlap, each side"),
              floats ? "/mount/window/margin" : "/mount/window/overlap")
      .note =
      build.figure("visible.width").isEmpty()
          ? QString()
          : tr("follows: shows %1").arg(sizeText(build.figure("visible.width"), build.figure("visible.height")));
}

Value freshDesign(UnitSystem units) {
  Value top = Value::object();
  top.set("id", Value::text("top"));
  top.set("bevel", Value::object().set("angle", Value::integer(45)));
  Value mount = Value::object();
  mount.set("window", Value::object().set("shape", Value::text("rectangle")));
  mount.set("boards", Value::array().append(top));
  mount.set("borders", Value::object().set("weighting", Value::text("4:3")));
  Value design = Value::object();
  design.set("format", Value::text("mountwright-job/1")).set("title", Value::text(""));
  design.set("artwork", Value::object()).set("mount", mount);
  return withUsual(std::move(design), units);
}

std::vector<Section> sectionsOf(const Value& document, const core::design::ReadDesign& read, UnitSystem units,
                                const AtHand& atHand) {
  Builder build(document, read, units, atHand);
  theWork(build);
  theBoards(build);
  theWindow(build);
  theBorders(build);
  theBevelColours(build);
  theBands(build);
  theLines(build);
  theWash(build);
  theLeaf(build);
  theFrame(build);
  theSpandrel(build);
  return build.finish();
}

}  // namespace app::designing
