// How the patterned bands of a job meet at their corners, in the two forms of "materials".
#include <algorithm>
#include <array>
#include <cmath>

#include "app/commands/materials_parts.h"
#include "app/commands/saying.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Value;
using core::materials::JobEdit;
using core::materials::MatchOption;
using core::materials::MatchState;
using core::materials::RunRound;
using core::materials::StripCut;
using core::materials::StripSide;
using core::units::lengthText;
using core::units::Rounding;

// Options beyond are left to the JSON: nobody weighs more of them at the bench.
constexpr std::size_t kOptionsTold = 3;

std::string_view stateName(MatchState state) {
  switch (state) {
    case MatchState::Directional: return "directional";
    case MatchState::Meets: return "meets";
    case MatchState::Near: return "near";
    case MatchState::Open:
    case MatchState::Plain: break;  // a band with a repeat is not plain
  }
  return "open";
}

std::string_view sideName(StripSide side) {
  static constexpr std::array<std::string_view, 4> kNames = {"top", "right", "bottom", "left"};
  return kNames[static_cast<std::size_t>(side)];
}

class MatchWriter {
 public:
  explicit MatchWriter(const Materials& materials) : m_materials(materials) {}

  Value band(const BandMatch& one) const {
    Value options = Value::array();
    for (const MatchOption& each : one.match.options) options.append(option(each));
    Value strips = Value::array();
    for (const StripCut& each : one.order.strips) strips.append(strip(each));
    const bool directional = one.match.state == MatchState::Directional;
    Value json = Value::object();
    json.set("band", Value::text(m_materials.design.job.bands[one.band].id));
    json.set("state", Value::text(stateName(one.match.state)));
    json.set("mismatch", directional ? Value() : length(one.match.mismatch));
    json.set("round", one.match.round ? round(*one.match.round) : Value());
    json.set("notes", notes(one.match.notes));
    json.set("options", std::move(options));
    json.set("strips", std::move(strips));
    return json;
  }

 private:
  Value length(double millimetres) const {
    return Value::object()
        .set("value", Value::number(millimetres))
        .set("display", Value::text(lengthText(millimetres, m_materials.units, Rounding::Nearest)));
  }

  Value notes(const std::vector<Message>& messages) const {
    Value list = Value::array();
    for (const Message& message : messages) {
      list.append(Value::object()
                      .set("id", Value::text(message.id))
                      .set("text", Value::text(m_materials.said(message).toStdString())));
    }
    return list;
  }

  static Value edits(const std::vector<JobEdit>& edits) {
    Value list = Value::array();
    for (const JobEdit& edit : edits) {
      list.append(Value::object().set("pointer", Value::text(edit.pointer)).set("value", Value::text(edit.value)));
    }
    return list;
  }

  Value round(const RunRound& one) const {
    static constexpr std::array<std::string_view, 3> kAlong = {"outer", "mean", "inner"};
    return Value::object()
        .set("outer", length(one.outer))
        .set("mean", length(one.mean))
        .set("inner", length(one.inner))
        .set("best", Value::text(kAlong[static_cast<std::size_t>(one.best)]));
  }

  Value option(const MatchOption& one) const {
    Value json = Value::object();
    json.set("opensOthers", Value::boolean(one.opensOthers));
    json.set("bringsNotice", Value::boolean(one.bringsNotice));
    json.set("cost", length(one.cost.inMillimetres()));
    json.set("why", notes({one.why}));
    json.set("says", notes(one.says));
    json.set("disturbs", notes(one.disturbs));
    json.set("edits", edits(one.edits));
    json.set("mismatch", length(one.figures.mismatch));
    json.set("strips", Value::object()
                           .set("horizontal", length(one.figures.stripHorizontal))
                           .set("vertical", length(one.figures.stripVertical)));
    json.set(
        "outer",
        Value::object().set("width", length(one.figures.outer.width)).set("height", length(one.figures.outer.height)));
    json.set(
        "onSteps",
        one.onSteps
            ? Value::object().set("edits", edits(one.onSteps->edits)).set("mismatch", length(one.onSteps->mismatch))
            : Value());
    return json;
  }

  Value strip(const StripCut& one) const {
    return Value::object()
        .set("number", Value::integer(one.number))
        .set("side", Value::text(sideName(one.side)))
        .set("begin", length(one.begin))
        .set("length", length(one.length))
        .set("lost", length(one.lost))
        .set("firstMotif", length(one.firstMotif));
  }

  const Materials& m_materials;
};

Message stripSaid(StripSide side) {
  switch (side) {
    case StripSide::Top: return Message("materials.strip-top");
    case StripSide::Right: return Message("materials.strip-right");
    case StripSide::Bottom: return Message("materials.strip-bottom");
    case StripSide::Left: break;
  }
  return Message("materials.strip-left");
}

class Speaker {
 public:
  Speaker(std::ostream& out, const Materials& materials) : m_out(out), m_materials(materials) {}

  void band(const BandMatch& one) {
    line(1, state(one));
    for (const Message& note : one.match.notes) line(2, note);
    const std::size_t told = std::min(kOptionsTold, one.match.options.size());
    if (told > 1) line(2, Message("materials.option-order"));
    for (std::size_t i = 0; i < told; ++i) option(i + 1, one.match.options[i]);
    if (told < one.match.options.size()) {
      line(2,
           Message("materials.more-options").with("count", static_cast<std::int64_t>(one.match.options.size() - told)));
    }
    strips(one);
  }

 private:
  std::string length(double millimetres) const { return lengthText(millimetres, m_materials.units, Rounding::Nearest); }
  void line(int depth, const QString& text) { sayLine(m_out, QString(2 * depth, QLatin1Char(' ')) + text); }
  void line(int depth, const Message& message) { line(depth, m_materials.said(message)); }

  Message state(const BandMatch& one) const {
    const std::string& band = m_materials.design.job.bands[one.band].id;
    const core::base::Millimetres off{std::abs(one.match.mismatch)};
    switch (one.match.state) {
      case MatchState::Directional: return Message("materials.match-directional").with("band", band);
      case MatchState::Meets: return Message("materials.match-meets").with("band", band);
      case MatchState::Near: return Message("materials.match-near").with("band", band).with("by", off);
      case MatchState::Open:
      case MatchState::Plain: break;
    }
    return Message("materials.match-open").with("band", band).with("by", off);
  }

  // What changes, what it makes of the strips, and what to write into the job file.
  void option(std::size_t number, const MatchOption& one) {
    QStringList says;
    for (const Message& change : one.says) says.append(m_materials.said(change));
    line(2, Message("materials.option")
                .with("number", static_cast<std::int64_t>(number))
                .with("changes", says.join(QStringLiteral("; ")).toStdString())
                .with("why", m_materials.said(one.why).toStdString()));
    line(3, Message("materials.option-figures")
                .with("level", length(one.figures.stripHorizontal))
                .with("upright", length(one.figures.stripVertical))
                .with("width", length(one.figures.outer.width))
                .with("height", length(one.figures.outer.height)));
    if (one.cost > core::units::Length()) {
      line(3, Message("materials.option-cost").with("by", core::base::Millimetres{one.cost.inMillimetres()}));
    }
    for (const Message& message : one.disturbs) line(3, message);
    for (const JobEdit& edit : one.edits) {
      line(3, Message("materials.option-edit").with("pointer", edit.pointer).with("value", edit.value));
    }
    if (one.onSteps) {
      line(3,
           Message("materials.option-on-steps").with("by", core::base::Millimetres{std::abs(one.onSteps->mismatch)}));
      for (const JobEdit& edit : one.onSteps->edits) {
        line(4, Message("materials.option-edit").with("pointer", edit.pointer).with("value", edit.value));
      }
    }
  }

  void strips(const BandMatch& one) {
    line(2, Message("materials.strips-along").with("run", length(one.order.run)).with("lost", length(one.order.lost)));
    std::vector<QStringList> rows;
    for (const StripCut& strip : one.order.strips) {
      rows.push_back({QStringLiteral("      %1").arg(strip.number), m_materials.said(stripSaid(strip.side)),
                      m_materials.said(Message("materials.strip-place")
                                           .with("begin", length(strip.begin))
                                           .with("end", length(strip.begin + strip.length))
                                           .with("motif", length(strip.firstMotif)))});
    }
    sayTable(m_out, rows, {Align::Left, Align::Left, Align::Left});
  }

  std::ostream& m_out;
  const Materials& m_materials;
};

}  // namespace

Value matchJson(const Materials& materials, const BandMatch& band) { return MatchWriter(materials).band(band); }

void sayMatch(std::ostream& out, const Materials& materials, const BandMatch& band) {
  Speaker(out, materials).band(band);
}

}  // namespace app::commands
