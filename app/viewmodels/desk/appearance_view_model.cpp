#include "app/viewmodels/desk/appearance_view_model.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <array>
#include <utility>

#include "app/aside/aside.h"
#include "app/convert/text.h"
#include "app/painting/tints.h"
#include "app/words/words.h"
#include "core/units/length_entry.h"

namespace app::viewmodels {

using convert::fromQt;
using convert::toQt;
using core::base::Message;
using core::intents::Appearance;
using core::intents::StockKind;
using core::units::Length;
using core::units::UnitSystem;

namespace {

// Colours of the trade by their names (tints.h), light before dark and warm before cold.
constexpr std::array kColours = {
    QT_TRANSLATE_NOOP("colours", "white"),      QT_TRANSLATE_NOOP("colours", "cream"),
    QT_TRANSLATE_NOOP("colours", "sand"),       QT_TRANSLATE_NOOP("colours", "stone"),
    QT_TRANSLATE_NOOP("colours", "ochre"),      QT_TRANSLATE_NOOP("colours", "sienna"),
    QT_TRANSLATE_NOOP("colours", "terracotta"), QT_TRANSLATE_NOOP("colours", "vermilion"),
    QT_TRANSLATE_NOOP("colours", "madder"),     QT_TRANSLATE_NOOP("colours", "umber"),
    QT_TRANSLATE_NOOP("colours", "sepia"),      QT_TRANSLATE_NOOP("colours", "copper"),
    QT_TRANSLATE_NOOP("colours", "reed green"), QT_TRANSLATE_NOOP("colours", "sea green"),
    QT_TRANSLATE_NOOP("colours", "verdigris"),  QT_TRANSLATE_NOOP("colours", "indigo"),
    QT_TRANSLATE_NOOP("colours", "slate"),      QT_TRANSLATE_NOOP("colours", "lamp black")};

// The strip that is shown where no piece in hand has one of this paper, mm.
constexpr double kSampleWidth = 14;
constexpr double kSampleLength = 130;
constexpr double kSampleLine = 3;

}  // namespace

AppearanceViewModel::AppearanceViewModel(workbench::Workbench& workbench, ShopAppearances& appearances, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_appearances(appearances) {
  connect(&appearances, &ShopAppearances::changed, this, &AppearanceViewModel::refresh);
}

void AppearanceViewModel::open(const std::string& item) {
  m_item = item;
  m_chosen.reset();
  m_lastAct.clear();
  m_refusal.clear();
  drawSample();
  refresh();
}

void AppearanceViewModel::refresh() {
  showColours();
  m_sample.appearances = m_appearances.all().all;
  emit changed();
}

const core::shop::StockItem* AppearanceViewModel::item() const { return m_workbench.shop().stock.item(m_item); }

Appearance AppearanceViewModel::told() const {
  if (item() == nullptr) return {};
  const auto& all = m_workbench.shop().stock.appearances;
  const auto found = all.find(item()->entry.name);
  return found == all.end() ? Appearance{item()->entry.name, "", std::nullopt} : found->second;
}

QString AppearanceViewModel::title() const { return toQt(told().material); }
QString AppearanceViewModel::colour() const { return toQt(told().colour); }

bool AppearanceViewModel::paper() const { return item() != nullptr && item()->entry.kind == StockKind::Paper; }

QString AppearanceViewModel::picture() const {
  if (m_chosen) return toQt(m_chosen->hash);
  const Appearance as = told();
  return as.picture ? toQt(as.picture->hash) : QString();
}

QString AppearanceViewModel::across() const {
  const Appearance as = told();
  if (m_chosen || !as.picture) return {};
  return toQt(core::units::enteredText(as.picture->across, m_workbench.settings().units));
}

QString AppearanceViewModel::unit() const {
  return m_workbench.settings().units == UnitSystem::Inches ? tr("in") : tr("mm");
}

QString AppearanceViewModel::sheetAcross() const {
  if (!paper() || !item()->entry.width) return {};
  return toQt(core::units::enteredText(*item()->entry.width, m_workbench.settings().units));
}

QString AppearanceViewModel::trouble() const {
  if (m_chosen) return {};
  const Message why = m_appearances.trouble(told().material);
  return why.id.empty() ? QString() : words::text(why, m_workbench.settings().units);
}

void AppearanceViewModel::showColours() {
  std::vector<RowsModel::Row> rows;
  const QString now = colour();
  for (const char* name : kColours) {
    RowsModel::Row row;
    row.title = QCoreApplication::translate("colours", name);
    row.value = painting::colourIn(name).name();
    row.chosen = row.value == now;
    rows.push_back(std::move(row));
  }
  m_colours.show(std::move(rows));
}

// A strip as a piece in hand has it, or a usual one; of a board or a paint a field or a line of it.
void AppearanceViewModel::drawSample() {
  using namespace core::sheets;
  m_sample = {};
  if (item() == nullptr) return;
  const std::string& name = item()->entry.name;
  Matter matter;
  matter.name = name;
  double width = kSampleWidth;
  Role role = Role::BoardFace;
  if (item()->entry.kind == StockKind::Paper) {
    role = Role::Band;
    matter.substance = Substance::Paper;
    Run run;
    for (const auto& entry : m_workbench.jobs()) {
      // Those at rest are not opened for a sample's sake.
      const auto* state = entry.rests ? nullptr : m_workbench.job(entry.id);
      if (state == nullptr) continue;
      for (const auto& band : state->design->job.bands) {
        if (band.paper != name || run.repeat > 0) continue;
        run.repeat = band.repeat ? band.repeat->inMillimetres() : 0;
        run.mirror = band.motif == core::design::Motif::Mirror;
        width = band.width.inMillimetres();
      }
    }
    run.from = {kSampleLength / 2, width};
    run.along = {1, 0};
    run.outwards = {0, -1};
    run.width = width;
    matter.run = run;
  } else if (item()->entry.kind == StockKind::Paint) {
    role = Role::Line;
    matter.substance = Substance::Pigment;
    matter.width = width = kSampleLine;
  }
  Drawing drawing;
  drawing.width = kSampleLength;
  drawing.height = width;
  drawing.primitives.push_back({"sample", role,
                                Stroke{{{0, 0}, {kSampleLength, 0}, {kSampleLength, width}, {0, width}}, true}, matter,
                                core::sheets::Standing::Made});
  m_sample.piece = std::make_shared<const Drawing>(std::move(drawing));
}

bool AppearanceViewModel::give(Appearance appearance) {
  if (item() == nullptr) return refuse(Message("stock.no-such-item"));
  const Message refused =
      m_workbench.submit(core::intents::OfShop{core::intents::GiveAppearance{std::move(appearance)}});
  if (refused.id.empty()) m_lastAct = m_workbench.lastIntentId();
  return refuse(refused);
}

// Returns whether there is nothing to refuse.
bool AppearanceViewModel::refuse(const Message& refused) {
  m_refusal = refused.id.empty() ? QString() : words::text(refused, m_workbench.settings().units);
  refresh();
  return refused.id.empty();
}

bool AppearanceViewModel::chooseColour(int row) {
  if (row < 0 || row >= static_cast<int>(kColours.size())) return false;
  return enterColour(painting::colourIn(kColours[static_cast<std::size_t>(row)]).name());
}

bool AppearanceViewModel::enterColour(const QString& text) {
  Appearance as = told();
  as.colour = fromQt(text.trimmed());
  return give(std::move(as));
}

bool AppearanceViewModel::enterAcross(const QString& text) {
  const QString entered = text.trimmed();
  const bool bare = !entered.isEmpty() && entered.back().isDigit();
  const QString unitOf =
      m_workbench.settings().units == UnitSystem::Inches ? QStringLiteral(" in") : QStringLiteral(" mm");
  const auto length = core::units::parseLength(fromQt(bare ? entered + unitOf : entered));
  if (!length) return refuse(length.error());
  Appearance as = told();
  if (m_chosen) as.picture = m_chosen;
  if (!as.picture) return false;
  as.picture->across = length.value().length;
  const bool kept = give(std::move(as));
  if (kept) m_chosen.reset();
  refresh();
  return kept;
}

bool AppearanceViewModel::enterWholeSheet() {
  return paper() && item()->entry.width &&
         enterAcross(toQt(core::units::entryText(*item()->entry.width, UnitSystem::Millimetres)));
}

void AppearanceViewModel::findPictures() {
  m_files = m_find ? m_find() : QStringList();
  m_pictures.show(rowsOfFiles(m_files));
  m_refusal.clear();
  emit changed();
}

void AppearanceViewModel::keepPicture(int row) {
  if (row >= 0 && row < m_files.size()) keepPhotograph(m_files[row]);
}

void AppearanceViewModel::keepPhotograph(const QString& path) {
  const auto* photographs = m_workbench.photographs();
  if (photographs == nullptr) {
    refuse(Message("photograph.no-folder"));
    return;
  }
  ++m_copying;
  // Its own copies: what is closed meanwhile may not pull the ground from under it.
  aside::aside(this, [this, folder = *photographs, file = path, of = m_item]() -> aside::Told {
    auto kept = folder.keep(file);
    return [this, kept = std::move(kept), of] {
      --m_copying;
      if (kept && of == m_item) {
        const auto& one = kept.value();
        m_chosen = core::intents::SheetPicture{one.hash, one.bytes, one.type, one.width, one.height, Length()};
      }
      refuse(kept ? Message() : kept.error());
    };
  });
  emit changed();
}

void AppearanceViewModel::removePicture() {
  if (m_chosen) {
    m_chosen.reset();
    refuse({});
    return;
  }
  Appearance as = told();
  as.picture.reset();
  give(std::move(as));
}

void AppearanceViewModel::makePlain() {
  m_chosen.reset();
  give({told().material, "", std::nullopt});
}

void AppearanceViewModel::takeBack() {
  if (m_lastAct.empty()) return;
  const Message refused = m_workbench.submit(core::intents::OfShop{core::intents::UndoInShop{m_lastAct}});
  if (refused.id.empty()) m_lastAct.clear();
  refuse(refused);
}

}  // namespace app::viewmodels
