// The ornament on the mount: bands, lines, wash, spandrel.
#include "app/designing/ornament.h"

#include <set>

#include "app/convert/text.h"
#include "app/designing/entries.h"
#include "app/designing/tr.h"

namespace app::designing {

using convert::toQt;
using core::base::Value;

namespace {

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
    offer("band:" + band + ".inner", tr("%1 band, window side").arg(toQt(band)));
    offer("band:" + band + ".outer", tr("%1 band, outside").arg(toQt(band)));
  }
  return field;
}

// The widths of a list's entries, from the window outwards.
QString widthsOf(const Builder& build, const std::string& list) {
  QStringList widths;
  eachOf(build, list, [&](const std::string& entry, const std::string&) {
    const std::string width = build.textAt(entry + "/width");
    widths << (width.empty() ? QStringLiteral("…") : bare(toQt(width)));
  });
  return widths.isEmpty() ? tr("none") : widths.join(QStringLiteral(" + "));
}

// How many, and of which colour where they share one.
QString linesText(const Builder& build) {
  std::set<std::string> of;
  eachOf(build, "/lines",
         [&](const std::string& line, const std::string&) { of.insert(build.textAt(line + "/colour")); });
  const QString count = counted(build.countAt("/lines"));
  if (of.size() != 1 || of.begin()->empty()) return count;
  for (const auto& [written, called] : colours()) {
    if (*of.begin() == written) return tr("%1 %2").arg(count, called);
  }
  return tr("%1 %2").arg(count, toQt(*of.begin()));
}

}  // namespace

void theBands(Builder& build) {
  build.section(tr("Bands"), widthsOf(build, "/bands"));
  const bool first = build.countAt("/bands") == 0;
  Value added =
      entryOf(first ? freeName(build, {"inner", "middle"}) : freeName(build, {"outer", "outermost", "further"}));
  added.set("paper", Value::text("plain paper")).set("width", Value::text(build.usual(Usual::BandWidth)));
  added.set("trim", Value::text(build.usual(Usual::BandTrim)));
  if (const std::string dryEnd = build.usual(Usual::BandDryEnd); !dryEnd.empty()) {
    added.set("dryEnd", Value::text(dryEnd));
  }
  std::vector<Value> ways;
  for (const std::string& offset : ladder(Usual::BandGround, Usual::StepOfBands, build.units())) {
    ways.push_back(appended(build, "/bands", Value(added).set("offset", Value::text(offset))));
  }
  build.act(first ? tr("Add a band") : tr("One more band outside"), ways);
  std::size_t index = 0;
  eachOf(build, "/bands", [&](const std::string& band, const std::string& id) {
    build.of(entryName(tr("%1 band"), id), id);
    material(build, tr("paper"), band + "/paper", Material::Paper);
    if (const Value* offset = build.at(band + "/offset"); offset != nullptr && offset->kind() == Value::Kind::Object) {
      build.length(tr("ground at the sides"), band + "/offset/sides");
      build.length(tr("ground above and below"), band + "/offset/topBottom");
    } else {
      build.length(tr("ground up to it"), band + "/offset");
    }
    build.length(tr("width"), band + "/width").note =
        noted(build.figure("band." + id + ".strip.horizontal"),
              QT_TRANSLATE_NOOP("design", "follows: strips top and bottom %1")) +
        noted(build.figure("band." + id + ".strip.vertical"), QT_TRANSLATE_NOOP("design", ", left and right %1"));
    build.length(tr("trim at each end"), band + "/trim", toQt(build.usual(Usual::Nothing)));
    build.length(tr("repeat of the pattern"), band + "/repeat", tr("none"));
    theCorners(build, index++);
    if (build.at(band + "/repeat") != nullptr) {
      build.choice(tr("motif"), band + "/motif", named("motif", {"mirror", "directional", "plain"}), "mirror");
      const std::vector<Named> centring = {{"motif", tr("a motif")}, {"ground", tr("ground")}};
      build.choice(tr("middle of the long strips"), band + "/centre/horizontal", centring, "motif");
      build.choice(tr("middle of the short strips"), band + "/centre/vertical", centring, "motif");
    }
    build.length(tr("dry end at each corner"), band + "/dryEnd", build.figure("band." + id + ".dryEnd"));
  });
  build.of({});
  leaveOut(build, tr("Leave the outermost band out"), "/bands");
}

void theLines(Builder& build) {
  build.section(tr("Lines"), linesText(build));
  // As a rule outside the first band, each line a little farther out than the one before.
  Value added = entryOf(freeName(build, {"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"}));
  added.set("width", Value::text(build.usual(Usual::LineWidth))).set("colour", Value::text("copper"));
  std::vector<Value> ways;
  const auto offer = [&](const std::string& edge, Usual from) {
    for (const std::string& gap : ladder(from, Usual::StepOfLines, build.units())) {
      ways.push_back(
          appended(build, "/lines", Value(added).set("along", Value::text(edge)).set("gap", Value::text(gap))));
    }
  };
  if (build.countAt("/bands") > 0) {
    const std::string band = "band:" + build.textAt("/bands/0/id");
    offer(band + ".outer", Usual::Nothing);
    offer(band + ".inner", Usual::Nothing);
  }
  offer("window", Usual::LineGround);
  build.act(tr("Add a line"), ways);
  eachOf(build, "/lines", [&](const std::string& line, const std::string& id) {
    build.of(entryName(tr("%1 line"), id), id);
    along(build, line + "/along");
    build.length(tr("gap to that edge"), line + "/gap", toQt(build.usual(Usual::Nothing)));
    build.length(tr("width"), line + "/width");
    colour(build, tr("colour"), line + "/colour");
  });
  build.of({});
  leaveOut(build, tr("Leave the last line out"), "/lines");
}

void theWash(Builder& build) {
  build.section(tr("Wash"), widthsOf(build, "/washes"));
  Value added = entryOf(freeName(build, {"panel", "outer-panel", "further-panel"}));
  added.set("colour", Value::text("indigo"))
      .set("along", Value::text("window"))
      .set("width", Value::text(build.usual(Usual::WashWidth)));
  std::vector<Value> ways;
  for (const std::string& gap : ladder(Usual::WashGround, Usual::StepOfLines, build.units())) {
    ways.push_back(appended(build, "/washes", Value(added).set("gap", Value::text(gap))));
  }
  build.act(tr("Add a wash panel"), ways);
  eachOf(build, "/washes", [&](const std::string& wash, const std::string& id) {
    build.of(entryName(tr("%1 wash"), id), id);
    material(build, tr("colour"), wash + "/colour", Material::Wash);
    if (build.at(wash + "/between") == nullptr) {
      along(build, wash + "/along");
      build.length(tr("gap to that edge"), wash + "/gap");
      build.length(tr("width"), wash + "/width").note =
          noted(build.figure("wash." + id + ".area"), QT_TRANSLATE_NOOP("design", "covers %1"));
    }
    build.choice(tr("order"), wash + "/order", named("order", {"linesFirst", "washFirst"}), "linesFirst");
  });
  build.of({});
  leaveOut(build, tr("Leave the last wash out"), "/washes");
}

void theSpandrel(Builder& build) {
  build.section(tr("Spandrel"), counted(build.countAt("/spandrels")));
  eachOf(build, "/spandrels", [&](const std::string& spandrel, const std::string& id) {
    build.of(entryName(tr("%1 spandrel"), id), id);
    material(build, tr("paper"), spandrel + "/paper", Material::Paper);
    if (build.at(spandrel + "/frame/offset") != nullptr) {
      build.length(tr("reaches beyond the window"), spandrel + "/frame/offset");
    }
    build.length(tr("tucked beyond its frame"), spandrel + "/under", toQt(build.usual(Usual::Nothing)));
    build.choice(tr("down to"), spandrel + "/from", named("from", {"springing", "sill"}), "springing");
    build.length(tr("kept back from the edge"), spandrel + "/shy", QStringLiteral("0.3 mm")).note =
        noted(build.figure("spandrel." + id + ".area"), QT_TRANSLATE_NOOP("design", "covers %1"));
  });
  build.of({});
  Value frame = Value::object();
  if (build.countAt("/bands") > 0) {
    frame.set("band", Value::text(build.textAt("/bands/0/id")));
  } else {
    frame.set("offset", Value::text(build.usual(Usual::SpandrelFrame)));
  }
  Value spandrel = entryOf(freeName(build, {"crown"}));
  spandrel.set("paper", Value::text("plain paper")).set("frame", frame);
  if (build.countAt("/spandrels") == 0)
    build.act(tr("Add paper round the head"), appended(build, "/spandrels", spandrel));
  leaveOut(build, tr("Leave the paper round the head out"), "/spandrels");
}

}  // namespace app::designing
