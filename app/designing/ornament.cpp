// What lies on the mount: bands, lines, wash, spandrel, leaf, coloured bevels.
#include "app/designing/ornament.h"

#include <QCoreApplication>
#include <set>

namespace app::designing {

using core::base::pointerTo;
using core::base::Value;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("design", text); }
QString shown(const std::string& text) { return QString::fromStdString(text); }

// Each entry of a list, with its pointer and id.
template <typename Use>
void eachOf(const Builder& build, const std::string& list, Use use) {
  for (std::size_t i = 0; i < build.countAt(list); ++i) {
    const std::string pointer = pointerTo(list, i);
    use(pointer, build.textAt(pointer + "/id"));
  }
}

std::vector<std::string> idsOf(const Builder& build, const std::string& list) {
  std::vector<std::string> ids;
  eachOf(build, list, [&](const std::string&, const std::string& id) { ids.push_back(id); });
  return ids;
}

// The first of "inner", "inner-2" ... that nothing on the piece is called.
std::string freeId(const Builder& build, const std::string& wanted) {
  std::set<std::string> taken;
  for (const char* list : {"/mount/boards", "/bands", "/lines", "/spandrels", "/washes", "/leaf"}) {
    for (const std::string& id : idsOf(build, list)) taken.insert(id);
  }
  std::string id = wanted;
  for (int number = 2; taken.contains(id); ++number) id = wanted + '-' + std::to_string(number);
  return id;
}

// Appends to a list that may not be there yet.
Value appended(const Builder& build, const std::string& list, Value entry) {
  return build.at(list) == nullptr ? patchOf({addTo(list, Value::array().append(std::move(entry)))})
                                   : patchOf({addTo(list + "/-", std::move(entry))});
}

void leaveOut(Builder& build, const QString& label, const std::string& list) {
  if (const std::size_t count = build.countAt(list))
    build.act(label, patchOf({removeFrom(pointerTo(list, count - 1))}));
}

Value entryOf(const std::string& id) { return Value::object().set("id", Value::text(id)); }

// Edges a line may follow, as the file writes them.
Field& along(Builder& build, const std::string& pointer) {
  Field& field = build.choice(tr("follows"), pointer, {});
  const std::string now = build.textAt(pointer);
  const auto offer = [&](const std::string& edge, const QString& called) {
    field.options.push_back({called, {}, putAt(build.document(), pointer, Value::text(edge)), now == edge});
    if (now == edge) field.value = called;
  };
  offer("window", tr("the window"));
  for (const std::string& band : idsOf(build, "/bands")) {
    offer("band:" + band + ".inner", tr("%1 band, window side").arg(shown(band)));
    offer("band:" + band + ".outer", tr("%1 band, outside").arg(shown(band)));
  }
  return field;
}

std::vector<Named> colours() {
  return {{"copper", tr("copper")}, {"bronze", tr("bronze")},        {"gold", tr("gold")},
          {"silver", tr("silver")}, {"black", tr("black")},          {"white", tr("white")},
          {"indigo", tr("indigo")}, {"reed green", tr("reed green")}};
}

QString noted(const QString& figure, const char* text) { return figure.isEmpty() ? QString() : tr(text).arg(figure); }

}  // namespace

void theBands(Builder& build) {
  build.section(tr("Bands"), counted(build.countAt("/bands")));
  std::size_t index = 0;
  eachOf(build, "/bands", [&](const std::string& band, const std::string& id) {
    build.of(tr("%1 band").arg(shown(id)), id);
    build.text(tr("paper"), band + "/paper");
    if (const Value* offset = build.at(band + "/offset"); offset != nullptr && offset->kind() == Value::Kind::Object) {
      build.length(tr("ground at the sides"), band + "/offset/sides");
      build.length(tr("ground above and below"), band + "/offset/topBottom");
    } else {
      build.length(tr("ground up to it"), band + "/offset");
    }
    build.length(tr("width"), band + "/width").note =
        noted(build.figure("band." + id + ".strip.horizontal"),
              QT_TRANSLATE_NOOP("design", "strips top and bottom %1")) +
        noted(build.figure("band." + id + ".strip.vertical"), QT_TRANSLATE_NOOP("design", ", left and right %1"));
    build.length(tr("trim at each end"), band + "/trim", QStringLiteral("0 mm"));
    build.length(tr("repeat of the pattern"), band + "/repeat", tr("none"));
    theCorners(build, index++);
    if (build.at(band + "/repeat") != nullptr) {
      build.choice(tr("motif"), band + "/motif",
                   {{"mirror", tr("mirrors")}, {"directional", tr("has a direction")}, {"plain", tr("plain")}},
                   "mirror");
      const std::vector<Named> centring = {{"motif", tr("a motif")}, {"ground", tr("ground")}};
      build.choice(tr("middle of the long strips"), band + "/centre/horizontal", centring, "motif");
      build.choice(tr("middle of the short strips"), band + "/centre/vertical", centring, "motif");
    }
  });
  build.of({});
  const std::string id = freeId(build, build.countAt("/bands") == 0 ? "inner" : "outer");
  Value band = entryOf(id);
  band.set("paper", Value::text("plain paper")).set("offset", Value::text("10 mm")).set("width", Value::text("12 mm"));
  band.set("trim", Value::text("6 mm"));
  build.act(build.countAt("/bands") == 0 ? tr("Add a band") : tr("One more band outside"),
            appended(build, "/bands", band));
  leaveOut(build, tr("Leave the outermost band out"), "/bands");
}

void theLines(Builder& build) {
  build.section(tr("Lines"), counted(build.countAt("/lines")));
  eachOf(build, "/lines", [&](const std::string& line, const std::string& id) {
    build.of(tr("%1 line").arg(shown(id)), id);
    along(build, line + "/along");
    build.length(tr("gap to that edge"), line + "/gap", QStringLiteral("0 mm"));
    build.length(tr("width"), line + "/width");
    build.choice(tr("colour"), line + "/colour", colours());
  });
  build.of({});
  Value line = entryOf(freeId(build, "line"));
  const bool banded = build.countAt("/bands") > 0;
  const std::string edge = banded ? "band:" + build.textAt("/bands/0/id") + ".outer" : "window";
  line.set("along", Value::text(edge)).set("gap", Value::text(banded ? "0 mm" : "5 mm"));
  line.set("width", Value::text("1 mm")).set("colour", Value::text("copper"));
  build.act(tr("Add a line"), appended(build, "/lines", line));
  leaveOut(build, tr("Leave the last line out"), "/lines");
}

void theWash(Builder& build) {
  build.section(tr("Wash"), counted(build.countAt("/washes")));
  eachOf(build, "/washes", [&](const std::string& wash, const std::string& id) {
    build.of(tr("%1 wash").arg(shown(id)), id);
    build.text(tr("colour"), wash + "/colour");
    if (build.at(wash + "/between") == nullptr) {
      along(build, wash + "/along");
      build.length(tr("gap to that edge"), wash + "/gap");
      build.length(tr("width"), wash + "/width").note =
          noted(build.figure("wash." + id + ".area"), QT_TRANSLATE_NOOP("design", "covers %1"));
    }
    build.choice(tr("order"), wash + "/order", {{"linesFirst", tr("lines first")}, {"washFirst", tr("wash first")}},
                 "linesFirst");
  });
  build.of({});
  Value wash = entryOf(freeId(build, "panel"));
  wash.set("colour", Value::text("indigo")).set("along", Value::text("window"));
  wash.set("gap", Value::text("12 mm")).set("width", Value::text("14 mm"));
  build.act(tr("Add a wash panel"), appended(build, "/washes", wash));
  leaveOut(build, tr("Leave the last wash out"), "/washes");
}

void theSpandrel(Builder& build) {
  build.section(tr("Spandrel"), counted(build.countAt("/spandrels")));
  eachOf(build, "/spandrels", [&](const std::string& spandrel, const std::string& id) {
    build.of(tr("%1 spandrel").arg(shown(id)), id);
    build.text(tr("paper"), spandrel + "/paper");
    if (build.at(spandrel + "/frame/offset") != nullptr) {
      build.length(tr("reaches beyond the window"), spandrel + "/frame/offset");
    }
    build.length(tr("tucked beyond its frame"), spandrel + "/under", QStringLiteral("0 mm"));
    build.choice(tr("down to"), spandrel + "/from", {{"springing", tr("the springing line")}, {"sill", tr("the sill")}},
                 "springing");
    build.length(tr("kept back from the edge"), spandrel + "/shy", QStringLiteral("0.3 mm")).note =
        noted(build.figure("spandrel." + id + ".area"), QT_TRANSLATE_NOOP("design", "covers %1"));
  });
  build.of({});
  Value frame = Value::object();
  if (build.countAt("/bands") > 0) {
    frame.set("band", Value::text(build.textAt("/bands/0/id")));
  } else {
    frame.set("offset", Value::text("10 mm"));
  }
  Value spandrel = entryOf(freeId(build, "crown"));
  spandrel.set("paper", Value::text("plain paper")).set("frame", frame);
  if (build.countAt("/spandrels") == 0)
    build.act(tr("Add paper round the head"), appended(build, "/spandrels", spandrel));
  leaveOut(build, tr("Leave the paper round the head out"), "/spandrels");
}

void theLeaf(Builder& build) {
  build.section(tr("Leaf"), counted(build.countAt("/leaf")));
  eachOf(build, "/leaf", [&](const std::string& leaf, const std::string& id) {
    build.of(tr("leaf, %1").arg(shown(id)), id);
    Field& where = build.choice(tr("where"), leaf + "/region", {});
    const std::string now = build.textAt(leaf + "/region");
    const auto offer = [&](const std::string& region, const QString& called) {
      where.options.push_back(
          {called, {}, putAt(build.document(), leaf + "/region", Value::text(region)), now == region});
      if (now == region) where.value = called;
    };
    offer("face", tr("the whole face"));
    for (const std::string& band : idsOf(build, "/bands")) {
      offer("outside:" + band, tr("outside the %1 band").arg(shown(band)));
      offer("inside:" + band, tr("inside the %1 band").arg(shown(band)));
      offer("on:" + band, tr("on the %1 band").arg(shown(band)));
    }
    for (const std::string& one : idsOf(build, "/spandrels")) offer("spandrel:" + one, tr("the spandrel"));
    for (const std::string& board : idsOf(build, "/mount/boards")) {
      offer("bevel:" + board, tr("bevel of the %1 board").arg(shown(board)));
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
    method.value = scattered ? tr("scattered") : tr("laid");
    method.options = {{tr("laid"), {}, become("laid"), !scattered},
                      {tr("scattered"), {}, become("scattered"), scattered}};
    if (scattered) build.number(tr("covered, a share of 1"), leaf + "/coverage");
    build.choice(tr("size"), leaf + "/size",
                 {{"methylCellulose", tr("methyl cellulose")},
                  {"starch", tr("starch")},
                  {"water", tr("water size")},
                  {"oil", tr("oil size")}});
    build.length(tr("kept off the edge"), leaf + "/keepOff/edge", QStringLiteral("0 mm"));
    build.length(tr("kept off lines"), leaf + "/keepOff/lines", QStringLiteral("0 mm")).note =
        noted(build.figure("leaf." + id + ".sheets"), QT_TRANSLATE_NOOP("design", "takes %1 leaves"));
  });
  build.of({});
  Value leaf = entryOf(freeId(build, "field"));
  const std::size_t bands = build.countAt("/bands");
  const std::string region = bands == 0 ? "face" : "outside:" + build.textAt(pointerTo("/bands", bands - 1) + "/id");
  leaf.set("region", Value::text(region)).set("method", Value::text("laid")).set("size", Value::text("water"));
  build.act(tr("Add leaf"), appended(build, "/leaf", leaf));
  leaveOut(build, tr("Leave the last leaf out"), "/leaf");
}

void theBevelColours(Builder& build) {
  std::size_t coloured = 0;
  eachOf(build, "/mount/boards", [&](const std::string& board, const std::string&) {
    if (build.at(board + "/bevel/colour") != nullptr) ++coloured;
  });
  build.section(tr("Bevel colours"), counted(coloured));
  eachOf(build, "/mount/boards", [&](const std::string& board, const std::string& id) {
    build.of(tr("%1 board").arg(shown(id)), id);
    const std::string pointer = board + "/bevel/colour";
    Field& field = build.choice(tr("bevel"), pointer, colours());
    const bool bare = build.at(pointer) == nullptr;
    if (bare) field.value = tr("as cut");
    field.options.insert(field.options.begin(),
                         {tr("as cut"), {}, bare ? patchOf({}) : patchOf({removeFrom(pointer)}), bare});
  });
}

}  // namespace app::designing
