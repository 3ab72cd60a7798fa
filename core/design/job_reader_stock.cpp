// Stock and prices.
#include <algorithm>

#include "core/design/job_reader_internal.h"

namespace core::design::detail {
namespace {

using base::Message;
using base::Millimetres;
using units::Money;
using units::Price;

constexpr std::int64_t kMostSheets = 10'000;

struct NamedCurrency {
  Node node;
  std::string currency;
};

class MaterialsReader {
 public:
  MaterialsReader(Job& job, Problems& problems) : m_job(job), m_problems(problems) {}

  void readStock(ObjectReader& root) {
    std::set<std::string> ids;
    forEach(root, "stock", kMostStock, m_problems, [&](const Node& node) {
      if (auto stock = readSheets(node, ids)) m_job.stock.push_back(*std::move(stock));
    });
  }

  void readPrices(ObjectReader& root) {
    const Node node = root.optional("prices");
    if (!node) return;
    ObjectReader reader(node, m_problems);
    if (!reader.valid()) return;
    m_job.prices.labour = readPrice(reader.optional("labour"), "h");
    m_job.prices.leaf = readPrice(reader.optional("leaf"), "");
    m_job.prices.size = readPrice(reader.optional("size"), "l");
    m_job.prices.paste = readPrice(reader.optional("paste"), "l");
    m_job.prices.paint = readPrice(reader.optional("paint"), "l");
    reader.finish();
  }

  // Every price that is not in the currency of the file's first. Call last.
  void settleCurrency() {
    std::stable_sort(m_currencies.begin(), m_currencies.end(), [](const NamedCurrency& a, const NamedCurrency& b) {
      return a.node.value->order() < b.node.value->order();
    });
    for (const NamedCurrency& named : m_currencies) {
      const std::string& first = m_currencies.front().currency;
      if (named.currency == first) continue;
      if (first.empty()) {
        base::report(m_problems, named.node, Message("job.currency-unlike-none").with("this", named.currency));
      } else if (named.currency.empty()) {
        base::report(m_problems, named.node, Message("job.currency-missing").with("first", first));
      } else {
        base::report(m_problems, named.node,
                     Message("job.currency-twice").with("first", first).with("this", named.currency));
      }
    }
    if (!m_currencies.empty()) m_job.currency = m_currencies.front().currency;
  }

 private:
  std::optional<Money> readPrice(const Node& node, std::string_view measure) {
    if (!node) return std::nullopt;
    std::optional<Price> price;
    if (node.value->kind() == base::Value::Kind::Text) {
      price = units::parsePrice(node.value->asText(), measure);
    } else if (node.value->kind() == base::Value::Kind::Number) {
      if (const auto money = units::moneyOf(node.value->asNumber())) price = Price{*money, ""};
    }
    if (!price) {
      const std::string example = measure.empty() ? "18.50 GBP" : "18.50 GBP/" + std::string(measure);
      base::report(m_problems, node, Message("job.bad-price").with("example", example));
      return std::nullopt;
    }
    m_currencies.push_back({node, price->currency});
    return price->money;
  }

  std::optional<Stock> readSheets(const Node& node, std::set<std::string>& ids) {
    ObjectReader reader(node, m_problems);
    if (!reader.valid()) return std::nullopt;
    Stock stock;
    stock.place = placeOf(node);
    const auto id = readId(reader.required("id"), ids, m_problems);
    const Node kind = reader.required("kind");
    bool good = readWord(kind, {"board", "paper"}, stock.kind, m_problems) && kind && id;
    if (id) stock.id = *id;
    good = readSize(reader, stock) && good;
    if (const Node thickness = reader.optional("thickness")) {
      stock.thickness = readLength(thickness, LengthRange::Size, m_problems);
      good = stock.thickness && good;
    }
    if (const Node material = reader.optional("material")) {
      const auto text = base::readText(material, m_problems);
      good = text && good;
      stock.material = text.value_or("");
    }
    good = readGrain(reader.optional("grain"), stock) && good;
    if (const Node pattern = reader.optional("pattern")) {
      SheetSide side = SheetSide::Width;
      good = readWord(pattern, {"width", "height"}, side, m_problems) && good;
      stock.pattern = side;
    }
    good = readInto(reader.optional("kerf"), LengthRange::Distance, stock.kerf, m_problems) && good;
    if (const Node quantity = reader.optional("quantity")) {
      const auto count = base::readInteger(quantity, m_problems, 0, kMostSheets);
      good = count && good;
      stock.quantity = static_cast<int>(count.value_or(0));
    }
    if (const Node price = reader.optional("price")) {
      stock.price = readPrice(price, "");
      good = stock.price && good;
    }
    if (const Node offcut = reader.optional("offcut")) {
      const auto kept = base::readBoolean(offcut, m_problems);
      good = kept && good;
      stock.offcut = kept.value_or(false);
      // An offcut is a thing on the shelf, not a kind of sheet to be had again.
      if (stock.offcut && !stock.quantity) stock.quantity = 1;
    }
    reader.finish();
    if (!good) return std::nullopt;
    return stock;
  }

  bool readSize(ObjectReader& reader, Stock& stock) {
    const auto width = readLength(reader.required("width"), LengthRange::Size, m_problems);
    const auto height = readLength(reader.required("height"), LengthRange::Size, m_problems);
    const Node margin = reader.optional("usableMargin");
    if (!readInto(margin, LengthRange::Distance, stock.usableMargin, m_problems) || !width || !height) return false;
    stock.width = *width;
    stock.height = *height;
    const Length shorter = std::min(*width, *height);
    const Length both = 2 * stock.usableMargin;
    if (both < shorter) return true;
    base::report(m_problems, margin ? margin : reader.node(),
                 Message("job.margins-meet")
                     .with("margin", Millimetres{stock.usableMargin.inMillimetres()})
                     .with("side", Millimetres{shorter.inMillimetres()})
                     .with("by", Millimetres{(both - shorter).inMillimetres()}));
    return false;
  }

  // Requires the size to be read. Where the sides are equal, its long side is its width.
  bool readGrain(const Node& node, Stock& stock) {
    if (!node) return true;
    const auto word = base::readChoice(node, {"width", "height", "along", "across", "any"}, m_problems);
    if (!word) return false;
    const bool wide = stock.width >= stock.height;
    const SheetSide longSide = wide ? SheetSide::Width : SheetSide::Height;
    const SheetSide shortSide = wide ? SheetSide::Height : SheetSide::Width;
    const std::optional<SheetSide> sides[] = {SheetSide::Width, SheetSide::Height, longSide, shortSide, std::nullopt};
    stock.grain = sides[*word];
    return true;
  }

  Job& m_job;
  Problems& m_problems;
  std::vector<NamedCurrency> m_currencies;
};

}  // namespace

void readMaterials(ObjectReader& root, Job& job, Problems& problems) {
  MaterialsReader reader(job, problems);
  reader.readStock(root);
  reader.readPrices(root);
  reader.settleCurrency();
}

}  // namespace core::design::detail
