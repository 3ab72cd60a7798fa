// The materials that are laid on last: leaf, and the colours of the bevels.
#include <algorithm>

#include "app/convert/text.h"
#include "app/designing/entries.h"
#include "app/designing/ornament.h"
#include "app/designing/tr.h"
#include "app/words/words.h"

namespace app::designing {

using convert::toQt;
using core::base::Value;

namespace {

// A metal that is not known yet is asked for when the field is sized.
void theMetal(Builder& build, const std::string& leaf) {
  const std::string pointer = leaf + "/metal";
  Field& metal = build.choice(
      tr("metal"), pointer, designing::named("metal", {"gold", "palladium", "aluminium", "silver", "copper", "brass"}));
  const bool unknown = build.at(pointer) == nullptr;
  const QString called = words::property(QStringLiteral("metal"), QStringLiteral("unknown"));
  if (unknown) metal.value = called;
  metal.options.insert(metal.options.begin(),
                       {called, {}, unknown ? patchOf({}) : patchOf({removeFrom(pointer)}), unknown});
}

// How each field is laid, and how much of it where it is scattered.
QString leafText(const Builder& build) {
  QStringList fields;
  eachOf(build, "/leaf", [&](const std::string& leaf, const std::string&) {
    const std::string way = build.textAt(leaf + "/method");
    QString one = words::property(QStringLiteral("method"), toQt(way));
    if (const Value* share = build.at(leaf + "/coverage"); share != nullptr && share->kind() == Value::Kind::Number) {
      one = tr("%1 %2 %").arg(one).arg(qRound(share->asNumber() * 100));
    }
    if (!fields.contains(one)) fields << one;
  });
  return fields.isEmpty() ? tr("none") : fields.join(tr(", "));
}

}  // namespace

void theLeaf(Builder& build) {
  build.section(tr("Leaf"), leafText(build));
  Value added = entryOf(freeName(build, {"one", "two", "three", "four", "five", "six", "seven", "eight"}));
  added.set("method", Value::text("laid")).set("size", Value::text("water"));
  // The ground outside the bands first, then whatever carries nothing yet.
  std::vector<std::string> regions;
  std::vector<std::string> bands = idsOf(build, "/bands");
  std::reverse(bands.begin(), bands.end());
  for (const char* side : {"outside:", "inside:", "on:"}) {
    for (const std::string& band : bands) regions.push_back(side + band);
  }
  regions.insert(bands.empty() ? regions.begin() : regions.end(), "face");
  for (const std::string& one : idsOf(build, "/spandrels")) regions.push_back("spandrel:" + one);
  for (const std::string& board : idsOf(build, "/mount/boards")) regions.push_back("bevel:" + board);
  std::vector<Value> ways;
  for (const std::string& region : regions) {
    ways.push_back(appended(build, "/leaf", Value(added).set("region", Value::text(region))));
  }
  build.act(tr("Add leaf"), ways);
  eachOf(build, "/leaf", [&](const std::string& leaf, const std::string& id) {
    build.of(entryName(tr("leaf field %1"), id), id);
    Field& where = build.choice(tr("where"), leaf + "/region", {});
    const std::string now = build.textAt(leaf + "/region");
    const auto offer = [&](const std::string& region, const QString& called) {
      where.options.push_back(
          {called, {}, putAt(build.document(), leaf + "/region", Value::text(region)), now == region});
      if (now == region) where.value = called;
    };
    offer("face", tr("the whole face"));
    for (const std::string& band : idsOf(build, "/bands")) {
      offer("outside:" + band, tr("outside the %1 band").arg(toQt(band)));
      offer("inside:" + band, tr("inside the %1 band").arg(toQt(band)));
      offer("on:" + band, tr("on the %1 band").arg(toQt(band)));
    }
    for (const std::string& one : idsOf(build, "/spandrels")) offer("spandrel:" + one, tr("the spandrel"));
    for (const std::string& board : idsOf(build, "/mount/boards")) {
      offer("bevel:" + board, tr("bevel of the %1 board").arg(toQt(board)));
    }
    const bool scattered = build.textAt(leaf + "/method") == "scattered";
    Field& method = build.choice(tr("laid or scattered"), leaf + "/method", {});
    const auto become = [&](const char* way) {
      Value patch = putAt(build.document(), leaf + "/method", Value::text(way));
      const bool covers = build.at(leaf + "/coverage") != nullptr;
      if (std::string(way) == "laid" && covers) patch.append(removeFrom(leaf + "/coverage"));
      if (std::string(way) == "scattered" && !covers) patch.append(addTo(leaf + "/coverage", Value::number(0.2)));
      return patch;
    };
    for (const auto& [way, called] : named("method", {"laid", "scattered"})) {
      const bool chosen = build.textAt(leaf + "/method") == way;
      method.options.push_back({called, {}, become(way), chosen});
      if (chosen) method.value = called;
    }
    if (scattered) build.share(tr("coverage"), leaf + "/coverage");
    build.choice(tr("size"), leaf + "/size", named("size", {"methylCellulose", "starch", "water", "oil"}));
    theMetal(build, leaf);
    build.length(tr("kept off the edge"), leaf + "/keepOff/edge", toQt(build.usual(Usual::Nothing)));
    build.length(tr("kept off lines"), leaf + "/keepOff/lines", toQt(build.usual(Usual::Nothing))).note =
        noted(build.figure("leaf." + id + ".sheets"), QT_TRANSLATE_NOOP("design", "takes %1 leaves"));
  });
  build.of({});
  leaveOut(build, tr("Leave the last leaf out"), "/leaf");
}

void theBevelColours(Builder& build) {
  QStringList bevels;
  eachOf(build, "/mount/boards", [&](const std::string& board, const std::string&) {
    const std::string now = build.textAt(board + "/bevel/colour");
    bevels << (now.empty() ? tr("core") : toQt(now));
  });
  build.section(tr("Bevels"), bevels.join(tr(", ")));
  eachOf(build, "/mount/boards", [&](const std::string& board, const std::string& id) {
    build.of(entryName(tr("%1 board"), id), id);
    const std::string pointer = board + "/bevel/colour";
    const QString plan = build.figure("board." + id + ".bevel.plan");
    build.number(tr("angle, degrees"), board + "/bevel/angle", QStringLiteral("45")).note =
        plan.isEmpty() ? QString() : tr("follows: %1 wide, seen from the front").arg(plan);
    Field& field = colour(build, tr("colour"), pointer);
    const bool bare = build.at(pointer) == nullptr;
    if (bare) field.value = tr("as cut");
    field.options.insert(field.options.begin(),
                         {tr("as cut"), {}, bare ? patchOf({}) : patchOf({removeFrom(pointer)}), bare});
  });
}

}  // namespace app::designing
