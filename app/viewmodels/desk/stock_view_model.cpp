#include "app/viewmodels/desk/stock_view_model.h"

#include <QLocale>
#include <algorithm>

#include "app/convert/text.h"
#include "app/designing/stock_form.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/supply/sheets_there.h"
#include "core/units/length_entry.h"

namespace app::viewmodels {

using convert::toQt;
using core::base::Message;
using core::base::Value;
using core::intents::Measure;
using core::intents::StockEntry;
using core::units::Rounding;

namespace {

constexpr auto kMillimetres = core::units::UnitSystem::Millimetres;

QString textOfEntered(core::units::Length length, core::units::UnitSystem units) {
  return toQt(core::units::enteredText(length, units));
}

// Of what is left of a sheet, which nobody entered.
QString lengthText(core::units::Length length, core::units::UnitSystem units) {
  return toQt(core::units::lengthText(length.inMillimetres(), units, Rounding::Nearest));
}

QString amountText(Measure measure, std::int64_t quantity) {
  const auto plain = [&](double scale) { return toQt(core::base::shortestNumber(double(quantity) / scale)); };
  switch (measure) {
    case Measure::Pieces: return QString::number(quantity);
    case Measure::Microlitres: return StockViewModel::tr("%1 ml").arg(plain(1e3));
    case Measure::Micrograms: return StockViewModel::tr("%1 g").arg(plain(1e6));
  }
  return {};
}

QString sizeText(const StockEntry& entry, core::units::UnitSystem units) {
  if (!entry.width || !entry.height) return {};
  const QString size =
      StockViewModel::tr("%1 × %2").arg(textOfEntered(*entry.width, units), textOfEntered(*entry.height, units));
  return entry.thickness ? StockViewModel::tr("%1, %2 thick").arg(size, textOfEntered(*entry.thickness, units)) : size;
}

QString priceText(const StockEntry& entry) {
  if (!entry.price) return {};
  const QString money =
      (toQt(core::units::shownText(*entry.price)) + QLatin1Char(' ') + toQt(entry.currency)).trimmed();
  switch (entry.measure) {
    case Measure::Pieces: return StockViewModel::tr("%1 each").arg(money);
    case Measure::Microlitres: return StockViewModel::tr("%1 a litre").arg(money);
    case Measure::Micrograms: return StockViewModel::tr("%1 a kilogram").arg(money);
  }
  return {};
}

QString kindText(core::intents::StockKind kind) {
  using core::intents::StockKind;
  switch (kind) {
    case StockKind::Board: return StockViewModel::tr("mount board");
    case StockKind::Paper: return StockViewModel::tr("paper");
    case StockKind::Leaf: return StockViewModel::tr("leaf");
    case StockKind::Size: return StockViewModel::tr("adhesive size");
    case StockKind::Paste: return StockViewModel::tr("paste");
    case StockKind::Paint: return StockViewModel::tr("paint");
  }
  return {};
}

void add(QStringList& parts, const QString& part) {
  if (!part.isEmpty()) parts << part;
}

}  // namespace

StockViewModel::StockViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : FormViewModel(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::shopChanged, this, &StockViewModel::refresh);
}

void StockViewModel::refresh() {
  const auto& shop = m_workbench.shop();
  const auto units = m_workbench.settings().units;
  const auto day = [zone = m_clock.zone()](std::int64_t utc) {
    return QLocale().toString(local(utc, zone).date(), QStringLiteral("d MMM yyyy"));
  };
  std::vector<RowsModel::Row> rows;
  m_entries.clear();
  const auto row = [&](Sort sort, const std::string& id, const QString& of, const QString& title, const QString& value,
                       const QString& note, const QString& problem) {
    const bool first = m_entries.empty() || m_entries.back().sort != sort;
    m_entries.push_back({sort, id});
    rows.push_back({title, first ? of : QString(), value, note, problem, m_entries.back() == m_chosen, false});
  };
  for (const auto& one : shop.stock.items) {
    QStringList note = {kindText(one.entry.kind)};
    add(note, sizeText(one.entry, units));
    add(note, priceText(one.entry));
    row(Sort::Item, one.id, tr("In stock"), toQt(one.entry.name), amountText(one.entry.measure, one.there()),
        note.join(tr(" · ")),
        one.overdrawn() ? tr("more was taken out than was there: count it") : lookTrouble(one.entry.name));
  }
  for (const auto& one : shop.stock.batches) {
    if (one.usedUpUtc) continue;
    const Message look = core::shop::beforeUse(one, m_clock.now().utcMilliseconds);
    row(Sort::Batch, one.id, tr("Batches"), tr("%1 · %2").arg(one.mark).arg(toQt(one.entry.name)),
        (one.entry.opened ? tr("opened %1") : tr("made %1")).arg(day(one.entry.madeUtc)),
        one.entry.keeps ? tr("keeps %1, says %2").arg(words::duration(*one.entry.keeps), toQt(one.entry.keepsSource))
                        : QString(),
        look.id.empty() ? QString() : tr("older than it keeps: look, feel and smell first"));
  }
  for (const auto& one : shop.onHand.offcuts) {
    row(Sort::Offcut, one.id, tr("Offcuts"),
        tr("%1 · %2 × %3").arg(one.mark).arg(lengthText(one.piece.width, units), lengthText(one.piece.height, units)),
        one.piece.paper ? tr("paper") : tr("board"), toQt(one.piece.material), {});
  }
  m_rows.show(std::move(rows));
  if (item() == nullptr && batch() == nullptr && offcut() == nullptr) m_chosen = {};
  if (formOpen()) showForm();
  emit changed();
}

const core::shop::StockItem* StockViewModel::item() const {
  return m_chosen.sort == Sort::Item ? m_workbench.shop().stock.item(m_chosen.id) : nullptr;
}

const core::shop::Batch* StockViewModel::batch() const {
  const auto* found = m_chosen.sort == Sort::Batch ? m_workbench.shop().stock.batch(m_chosen.id) : nullptr;
  return found == nullptr || found->usedUpUtc ? nullptr : found;
}

const core::shop::KeptOffcut* StockViewModel::offcut() const {
  return m_chosen.sort == Sort::Offcut ? m_workbench.shop().onHand.offcut(m_chosen.id) : nullptr;
}

StockViewModel::Sort StockViewModel::chosenSort() const { return m_chosen.sort; }

bool StockViewModel::chosenCounted() const { return item() != nullptr && item()->entry.measure == Measure::Pieces; }

QString StockViewModel::chosenTitle() const {
  if (item() != nullptr) return toQt(item()->entry.name);
  if (batch() != nullptr) return toQt(batch()->entry.name);
  if (offcut() != nullptr) return tr("Offcut %1").arg(offcut()->mark);
  return {};
}

QString StockViewModel::chosenSays() const {
  QStringList says;
  if (const auto* one = item()) {
    says << tr("%1 there, as counted or entered").arg(amountText(one->entry.measure, one->there()));
    add(says, sizeText(one->entry, m_workbench.settings().units));
    add(says, priceText(one->entry));
    add(says, toQt(one->entry.note));
  } else if (const auto* made = batch()) {
    add(says, toQt(made->entry.of));
    says << (made->entry.opened ? tr("bought and opened") : tr("made here"));
    if (made->entry.keeps) {
      says << tr("keeps %1, says %2").arg(words::duration(*made->entry.keeps), toQt(made->entry.keepsSource));
    }
    add(says, toQt(made->entry.note));
  } else if (const auto* left = offcut()) {
    const auto units = m_workbench.settings().units;
    says << tr("%1 × %2").arg(lengthText(left->piece.width, units), lengthText(left->piece.height, units));
    add(says, toQt(left->piece.material));
    says << tr("cut jobs use it before a whole sheet");
  }
  return says.join(QLatin1Char('\n'));
}

void StockViewModel::setAppearances(const ShopAppearances& appearances) {
  m_appearances = &appearances;
  connect(&appearances, &ShopAppearances::changed, this, &StockViewModel::refresh);
}

QString StockViewModel::lookTrouble(const std::string& material) const {
  const Message why = m_appearances == nullptr ? Message() : m_appearances->trouble(material);
  return why.id.empty() ? QString() : words::text(why, kMillimetres);
}

bool StockViewModel::chosenLooks() const {
  using core::intents::StockKind;
  if (item() == nullptr) return false;
  switch (item()->entry.kind) {
    case StockKind::Board:
    case StockKind::Paper:
    case StockKind::Paint: return true;
    // Leaf has its own tones, and of size and paste nothing is seen.
    case StockKind::Leaf:
    case StockKind::Size:
    case StockKind::Paste: break;
  }
  return false;
}

void StockViewModel::openAppearance() {
  if (chosenLooks()) emit appearanceAsked(m_chosen.id);
}

QString StockViewModel::chosenWarning() const {
  if (item() != nullptr) return lookTrouble(item()->entry.name);
  if (batch() == nullptr) return {};
  const Message look = core::shop::beforeUse(*batch(), m_clock.now().utcMilliseconds);
  return look.id.empty() ? QString() : words::text(look, kMillimetres);
}

void StockViewModel::choose(int row) {
  if (row < 0 || row >= static_cast<int>(m_entries.size())) return;
  m_chosen = m_entries[static_cast<std::size_t>(row)];
  m_form = Form::Closed;
  m_serves = servesText();
  told({});
  refresh();
}

// The pieces are looked through by what they need and not planned: which of them it will be cut for is not known yet.
QString StockViewModel::servesText() const {
  constexpr std::size_t kMostPieces = 24;  // each is read from the record
  const auto& shop = m_workbench.shop();
  if (offcut() == nullptr && (item() == nullptr || !core::supply::isSheet(*item()))) return {};
  QStringList names;
  std::vector<std::string> jobs;
  for (const auto& entry : m_workbench.jobs()) {
    if (!entry.archived && entry.trouble.id.empty() && entry.place != core::jobs::BenchPlace::Kind::Finished)
      jobs.push_back(entry.id);
  }
  const std::size_t left = jobs.size() - std::min(jobs.size(), kMostPieces);
  jobs.resize(jobs.size() - left);
  for (const std::string& id : jobs) {
    const auto* state = m_workbench.job(id);
    if (state == nullptr || !state->design) continue;
    const auto there = core::supply::sheetsThere(id, state->design->job.stock, shop);
    const auto cut = shop.onHand.cut.find(id);
    const auto pieces =
        core::materials::stillToCut(core::materials::cuttingList(state->design->job, state->design->layout),
                                    cut == shop.onHand.cut.end() ? std::map<std::string, int>() : cut->second.pieces);
    const auto matches = core::materials::matchSheets(pieces, there);
    const bool serves = std::any_of(matches.begin(), matches.end(), [&](const auto& match) {
      return std::any_of(match.stock.begin(), match.stock.end(),
                         [&](std::size_t i) { return !there.isListed(i) && there.at(i).id == m_chosen.id; });
    });
    if (serves) names << pieceName(state->design->job.title);
  }
  const QString serves =
      names.isEmpty() ? tr("No piece under way is cut from it.") : tr("Serves: %1").arg(names.join(tr(", ")));
  return left == 0 ? serves : tr("%1 (%2 more pieces not looked through)").arg(serves).arg(left);
}

void StockViewModel::enterStock() { openForm(Form::Stock, designing::freshStock()); }

void StockViewModel::enterBatch() {
  openForm(Form::Batch, designing::freshBatch(today().toString(Qt::ISODate).toStdString()));
}

QDate StockViewModel::today() const { return local(m_clock.now().utcMilliseconds, m_clock.zone()).date(); }

void StockViewModel::correct() {
  if (item() != nullptr) openForm(Form::Correction, designing::documentOf(asItStands()));
}

// Returns the entry of the chosen item with its present quantity.
core::intents::StockEntry StockViewModel::asItStands() const {
  core::intents::StockEntry entry = item()->entry;
  entry.quantity = item()->there();
  return entry;
}

// Where only the quantity differs, the maker has counted the item.
void StockViewModel::putRight(core::intents::StockEntry entry) {
  if (item() == nullptr) return;
  core::intents::StockEntry counted = asItStands();
  counted.quantity = entry.quantity;
  if (counted == entry) {
    ask(core::intents::CountStock{m_chosen.id, entry.quantity});
  } else {
    ask(core::intents::CorrectStock{m_chosen.id, std::move(entry)});
  }
}

void StockViewModel::openForm(Form form, Value document) {
  m_form = form;
  m_document = std::move(document);
  restart(m_workbench.settings().units);
  showForm();
  emit changed();
}

void StockViewModel::showForm() {
  show({m_form == Form::Batch ? designing::batchSection(m_document) : designing::stockSection(m_document)});
}

void StockViewModel::closeForm() {
  m_form = Form::Closed;
  told({});
}

Message StockViewModel::put(const Value& patch) {
  auto patched = core::base::patched(m_document, patch);
  if (!patched) return patched.error();
  m_document = std::move(patched).value();
  showForm();
  return {};
}

bool StockViewModel::keepForm() {
  if (m_form == Form::Batch) {
    auto entry = designing::batchEntryOf(m_document, m_clock.zone(), m_clock.now().utcMilliseconds);
    if (!entry) {
      told(entry.error());
      return false;
    }
    ask(core::intents::EnterBatch{std::move(entry).value()});
  } else {
    auto entry = designing::stockEntryOf(m_document);
    if (!entry) {
      told(entry.error());
      return false;
    }
    if (m_form == Form::Correction) {
      putRight(std::move(entry).value());
    } else {
      ask(core::intents::EnterStock{std::move(entry).value()});
    }
  }
  if (!m_refusal.isEmpty()) return false;
  m_form = Form::Closed;
  emit changed();
  return true;
}

void StockViewModel::ask(const core::intents::ShopIntent& intent) {
  const Message refused = m_workbench.submit(core::intents::OfShop{intent});
  if (refused.id.empty()) m_lastAct = m_workbench.lastIntentId();
  told(refused);
}

void StockViewModel::oneMore() {
  if (chosenCounted()) ask(core::intents::MoveStock{m_chosen.id, 1});
}

void StockViewModel::oneLess() {
  if (chosenCounted()) ask(core::intents::MoveStock{m_chosen.id, -1});
}

void StockViewModel::gone() {
  switch (m_chosen.sort) {
    case Sort::Item: ask(core::intents::RemoveStock{m_chosen.id}); break;
    case Sort::Batch: ask(core::intents::UseUpBatch{m_chosen.id}); break;
    case Sort::Offcut: ask(core::intents::DropOffcut{m_chosen.id}); break;
    case Sort::Nothing: break;
  }
}

void StockViewModel::takeBack() {
  if (m_lastAct.empty()) return;
  const Message refused = m_workbench.submit(core::intents::OfShop{core::intents::UndoInShop{m_lastAct}});
  if (refused.id.empty()) m_lastAct.clear();
  told(refused);
}

}  // namespace app::viewmodels
