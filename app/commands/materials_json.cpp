// "materials" for scripts; the header of materials.cpp describes it.
#include "app/commands/materials_parts.h"
#include "core/base/text.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Value;
using core::cutting::Area;
using core::materials::CostKind;
using core::materials::CutPiece;
using core::materials::PieceGrain;
using core::materials::StockGroup;
using core::units::Length;
using core::units::Rounding;

Value text(const QString& said) { return Value::text(said.toStdString()); }

Value lengthJson(Length length, const std::string& display) {
  return Value::object().set("value", Value::number(length.inMillimetres())).set("display", Value::text(display));
}

Value count(std::size_t number) { return Value::integer(static_cast<std::int64_t>(number)); }

std::string_view grainName(PieceGrain grain) {
  return grain == PieceGrain::Any ? "any" : grain == PieceGrain::Width ? "width" : "height";
}

class MaterialsWriter {
 public:
  explicit MaterialsWriter(const Materials& materials) : m_materials(materials) {}

  Value run() const {
    Value pieces = Value::array();
    for (std::size_t i = 0; i < m_materials.pieces.size(); ++i) pieces.append(piece(i));
    Value groups = Value::array();
    Value sheets = Value::array();
    for (std::size_t i = 0; i < m_materials.plan.groups.size(); ++i) {
      groups.append(group(m_materials.plan.groups[i]));
      addSheets(i, sheets);
    }
    Value amounts = Value::array();
    for (const auto& one : m_materials.amounts) amounts.append(amount(one));
    Value costs = Value::array();
    for (const auto& line : m_materials.quote.lines) costs.append(cost(line));
    return Value::object()
        .set("format", Value::text("mountwright-materials/1"))
        .set("pieces", std::move(pieces))
        .set("groups", std::move(groups))
        .set("sheets", std::move(sheets))
        .set("match", matches())
        .set("amounts", std::move(amounts))
        .set("costs", std::move(costs))
        .set("quote", quote());
  }

 private:
  Value matches() const {
    Value list = Value::array();
    for (const BandMatch& one : m_materials.matches) list.append(matchJson(m_materials, one));
    return list;
  }

  Value notes(const std::vector<Message>& messages) const {
    Value list = Value::array();
    for (const Message& message : messages) {
      list.append(Value::object().set("id", Value::text(message.id)).set("text", text(m_materials.said(message))));
    }
    return list;
  }

  Value stockIds(const std::vector<std::size_t>& stock) const {
    Value ids = Value::array();
    for (const std::size_t i : stock) ids.append(Value::text(m_materials.stock(i).id));
    return ids;
  }

  Value piece(std::size_t index) const {
    const CutPiece& one = m_materials.pieces[index];
    const core::materials::StockMatch& match = m_materials.plan.matches[index];
    Value json = Value::object();
    json.set("id", Value::text(one.id));
    json.set("name", text(m_materials.name(one)));
    json.set("count", Value::integer(one.count));
    json.set("width", lengthJson(one.width, m_materials.side(one, one.width)));
    json.set("height", lengthJson(one.height, m_materials.side(one, one.height)));
    json.set("allowance", lengthJson(one.allowance, m_materials.entered(one.allowance)));
    json.set("thickness", one.thickness
                              ? lengthJson(*one.thickness, m_materials.entered(*one.thickness, Rounding::Nearest))
                              : Value());
    json.set("grain", Value::text(grainName(one.grain)));
    json.set("patterned", Value::boolean(one.patterned));
    json.set("material", Value::text(one.material));
    json.set("figures", Value::texts(one.figures));
    json.set("stock", stockIds(match.stock));
    json.set("by", Value::text(core::materials::name(match.by)));
    json.set("notes", notes(match.notes));
    return json;
  }

  Value group(const StockGroup& one) const {
    Value pieces = Value::array();
    for (const std::size_t i : one.pieces) pieces.append(Value::text(m_materials.pieces[i].id));
    Value unplaced = Value::array();
    for (const auto& left : one.unplaced) {
      unplaced.append(Value::object()
                          .set("piece", Value::text(m_materials.pieces[left.piece].id))
                          .set("count", Value::integer(left.count))
                          .set("why", Value::text(left.tooLarge ? "too-large" : "too-few")));
    }
    Value json = Value::object();
    json.set("stock", stockIds(one.stock));
    json.set("pieces", std::move(pieces));
    json.set("unplaced", std::move(unplaced));
    json.set("worthIn", Value::text(one.byPrice ? "money" : "mm2"));
    json.set("worth", Value::number(one.worth));
    json.set("bound", Value::number(one.bound));
    json.set("gap", Value::number(one.gap));
    json.set("exact", Value::boolean(one.exact));
    json.set("notes", notes(one.notes));
    return json;
  }

  Value areaJson(const Area& area) const {
    const auto length = [&](Length one) { return lengthJson(one, m_materials.nearest(one)); };
    return Value::object()
        .set("x", length(area.x))
        .set("y", length(area.y))
        .set("width", length(area.width))
        .set("height", length(area.height));
  }

  void addSheets(std::size_t groupIndex, Value& sheets) const {
    const StockGroup& group = m_materials.plan.groups[groupIndex];
    for (const auto& one : group.sheets) {
      const core::design::Stock& stock = m_materials.stock(one.stock);
      Value pieces = Value::array();
      for (const auto& placed : one.pieces) {
        Value json = Value::object();
        json.set("piece", Value::text(m_materials.pieces[placed.piece].id));
        json.set("number", Value::integer(placed.number));
        json.set("at", areaJson(placed.at));
        json.set("turned", Value::boolean(placed.turned));
        pieces.append(std::move(json));
      }
      Value cuts = Value::array();
      for (const auto& cut : one.cuts) {
        Value json = Value::object();
        json.set("part", areaJson(cut.part));
        json.set("upright", Value::boolean(cut.upright));
        json.set("fence", lengthJson(cut.fence, m_materials.nearest(cut.fence)));
        cuts.append(std::move(json));
      }
      Value offcuts = Value::array();
      for (const Area& area : one.offcuts) offcuts.append(areaJson(area));
      Value json = Value::object();
      json.set("group", count(groupIndex));
      json.set("stock", Value::text(stock.id));
      json.set("number", Value::integer(one.number));
      json.set("offcut", Value::boolean(stock.offcut));
      json.set("width", lengthJson(stock.width, m_materials.entered(stock.width)));
      json.set("height", lengthJson(stock.height, m_materials.entered(stock.height)));
      json.set("margin", lengthJson(stock.usableMargin, m_materials.entered(stock.usableMargin)));
      json.set("kerf", lengthJson(stock.kerf, m_materials.entered(stock.kerf)));
      json.set("bound", Value::number(group.bound));
      json.set("gap", Value::number(group.gap));
      json.set("exact", Value::boolean(group.exact));
      json.set("pieces", std::move(pieces));
      json.set("cuts", std::move(cuts));
      json.set("offcuts", std::move(offcuts));
      sheets.append(std::move(json));
    }
  }

  Value amount(const core::materials::Amount& one) const {
    const bool leaf = one.kind == core::materials::AmountKind::Leaf;
    Value json = Value::object();
    json.set("id", Value::text(one.id));
    json.set("name", text(m_materials.name(one)));
    json.set("value", Value::number(one.value));
    json.set("unit", Value::text(leaf ? "count" : "ml"));
    json.set("display", Value::text(m_materials.amount(one)));
    json.set("area", Value::number(one.area));
    json.set("spread", leaf ? Value() : Value::number(one.spread));
    json.set("potLoss", leaf ? Value() : Value::number(one.potLoss));
    json.set("figures", Value::texts(one.figures));
    return json;
  }

  Value moneyJson(core::units::Money money) const {
    return Value::object()
        .set("value", Value::text(core::units::exactText(money)))
        .set("display", Value::text(m_materials.money(money)));
  }

  static std::string_view unitOf(CostKind kind) {
    switch (kind) {
      case CostKind::Sheets: return "sheet";
      case CostKind::Leaf: return "leaf";
      case CostKind::Labour: return "h";
      case CostKind::Size:
      case CostKind::Paste:
      case CostKind::Paint: return "l";
    }
    return "";
  }

  Value cost(const core::materials::CostLine& line) const {
    const bool sheets = line.kind == CostKind::Sheets;
    constexpr double kMillion = 1e6;
    Value json = Value::object();
    json.set("id", Value::text(line.id));
    json.set("name", text(m_materials.name(line)));
    json.set("quantity", Value::number(static_cast<double>(line.quantity) / static_cast<double>(line.per)));
    json.set("unit", Value::text(unitOf(line.kind)));
    json.set("price", moneyJson(line.price));
    json.set("cost", moneyJson(line.cost));
    json.set("share", sheets ? Value::number(static_cast<double>(line.share) / kMillion) : Value());
    json.set("byShare", moneyJson(line.byShare));
    return json;
  }

  Value quote() const {
    const core::materials::Quote& quote = m_materials.quote;
    return Value::object()
        .set("currency", Value::text(m_materials.design.job.currency))
        .set("total", moneyJson(quote.total))
        .set("totalByShare", moneyJson(quote.totalByShare))
        .set("notPriced", Value::texts(quote.notPriced));
  }

  const Materials& m_materials;
};

}  // namespace

Value materialsJson(const Materials& materials) { return MaterialsWriter(materials).run(); }

}  // namespace app::commands
