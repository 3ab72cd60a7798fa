#include "app/viewmodels/bench/cutting_view_model.h"

#include <algorithm>
#include <map>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/sheets/cut_drawing.h"
#include "core/supply/sheets_there.h"
#include "core/units/length_entry.h"

namespace app::viewmodels {

using convert::toQt;
using core::cutting::Area;
using core::materials::PlanSheet;
using core::sheets::Point;
using core::sheets::Primitive;
using core::units::Length;
using core::units::Rounding;

namespace {

// A number and its unit stay in one line.
QString inOneLine(const std::string& length) { return toQt(length).replace(QLatin1Char(' '), QChar::Nbsp); }

bool isSameCut(const core::shop::OnHand& a, const core::shop::OnHand& b) {
  if (a.acts.size() != b.acts.size()) return false;
  return a.acts.empty() || a.acts.back().intentId == b.acts.back().intentId;
}

}  // namespace

CuttingViewModel::CuttingViewModel(workbench::Workbench& workbench, QObject* parent)
    : QObject(parent), m_workbench(workbench) {}

void CuttingViewModel::open(const std::string& jobId) {
  m_jobId = jobId;
  plan();
}

void CuttingViewModel::refresh() {
  if (m_jobId.empty()) return;
  const auto* state = m_workbench.job(m_jobId);
  const auto& shop = m_workbench.shop();
  if (state != nullptr && state->design && state->design == m_design && isSameCut(shop.onHand, m_onHand) &&
      core::supply::sheetsThere(m_jobId, m_design->job.stock, shop) == m_cutting.there) {
    return;
  }
  plan();
}

void CuttingViewModel::plan() {
  const auto* state = m_workbench.job(m_jobId);
  m_design = state == nullptr ? nullptr : state->design;
  m_onHand = m_workbench.shop().onHand;
  m_sheets.clear();
  m_sheet = 0;
  m_page = 0;
  m_keeping = true;
  m_refusal.clear();
  m_cutting = {};
  if (m_design) {
    m_cutting = core::supply::cuttingOf(m_jobId, *m_design, m_workbench.shop());
    for (const auto& group : m_cutting.plan.groups) {
      for (const PlanSheet& one : group.sheets) m_sheets.push_back(&one);
    }
  }
  show();
}

CuttingViewModel::Page CuttingViewModel::page() const {
  if (m_sheets.empty()) return Page::Over;
  return m_page == 0 ? Page::Fetch : m_page < lastPage() ? Page::Cut : Page::Keep;
}

QString CuttingViewModel::piece() const { return m_design ? pieceName(m_design->job.title) : QString(); }

QString CuttingViewModel::place() const {
  return sheets() < 2 ? QString() : tr("sheet %1 of %2").arg(m_sheet + 1).arg(sheets());
}

bool CuttingViewModel::keeps() const { return page() == Page::Keep && !sheet().offcuts.empty(); }

bool CuttingViewModel::canTakeBack() const {
  return m_page == 0 && !m_onHand.acts.empty() && m_onHand.acts.back().job == m_jobId && !m_jobId.empty();
}

QString CuttingViewModel::length(Length length, Rounding rounding) const {
  return inOneLine(core::units::lengthText(length.inMillimetres(), m_design->job.units, rounding));
}

QString CuttingViewModel::entered(Length length, Rounding rounding) const {
  return inOneLine(core::units::enteredText(length, m_design->job.units, rounding));
}

QString CuttingViewModel::size(Length width, Length height) const {
  return tr("%1\u00a0× %2").arg(length(width, Rounding::Nearest), length(height, Rounding::Nearest));
}

QString CuttingViewModel::sheetName() const {
  if (const auto* offcut = m_cutting.offcutOf(sheet())) return tr("Offcut %1").arg(offcut->mark);
  const QString name = capitalised(toQt(stock().material.empty() ? stock().id : stock().material));
  return stock().offcut ? tr("%1, the offcut listed").arg(name) : name;
}

// The piece that lies exactly there; "" where that part is cut further or falls away.
QString CuttingViewModel::nameAt(const Area& part) const {
  for (const auto& placed : sheet().pieces) {
    if (placed.at != part) continue;
    const auto& piece = m_cutting.pieces[placed.piece];
    const QString name = words::pieceName(piece);
    return piece.count == 1 ? name : tr("%1, number %2").arg(name).arg(placed.number);
  }
  return {};
}

void CuttingViewModel::show() {
  m_lines.clear();
  m_fence = {};
  m_drawing = {};
  m_fenceAt = {};
  m_parts.clear();
  if (page() == Page::Over) {
    showOver();
    emit changed();
    return;
  }
  m_drawing.piece = std::make_shared<const core::sheets::Drawing>(core::sheets::drawCutSheet(sheet(), stock()));
  switch (page()) {
    case Page::Fetch: showFetching(); break;
    case Page::Cut: showCut(sheet().cuts[static_cast<std::size_t>(m_page) - 1]); break;
    default: showKeeping(); break;
  }
  emit changed();
}

// Where each piece lies, by the name it goes by in the list.
void CuttingViewModel::showParts() {
  const double margin = stock().usableMargin.inMillimetres();
  for (const auto& placed : sheet().pieces) {
    const QRectF place(margin + placed.at.x.inMillimetres(), margin + placed.at.y.inMillimetres(),
                       placed.at.width.inMillimetres(), placed.at.height.inMillimetres());
    m_parts << QVariantMap{{QStringLiteral("name"), capitalised(words::pieceName(m_cutting.pieces[placed.piece]))},
                           {QStringLiteral("place"), place}};
  }
}

// The part that the cut divides, in ink: only the line to be made is worked.
void CuttingViewModel::inkPart(const core::cutting::SheetCut& cut) {
  auto drawing = std::make_shared<core::sheets::Drawing>(*m_drawing.piece);
  std::erase_if(drawing->primitives, [](const Primitive& one) { return core::base::endsWith(one.element, ".part"); });
  const double margin = stock().usableMargin.inMillimetres();
  const double left = margin + cut.part.x.inMillimetres();
  const double top = margin + cut.part.y.inMillimetres();
  const double right = left + cut.part.width.inMillimetres();
  const double bottom = top + cut.part.height.inMillimetres();
  const core::sheets::Stroke edge{{{left, top}, {right, top}, {right, bottom}, {left, bottom}, {left, top}}, false};
  drawing->primitives.push_back({"part", core::sheets::Role::Tool, edge});
  m_drawing.piece = std::move(drawing);
}

// From the edge that the fence is set from to the cut, across the middle of the part.
void CuttingViewModel::dimension(const core::cutting::SheetCut& cut) {
  constexpr double kEndShare = 0.012;  // half the length of the strokes at its ends, of the sheet's longer side
  const double margin = stock().usableMargin.inMillimetres();
  const double left = margin + cut.part.x.inMillimetres();
  const double top = margin + cut.part.y.inMillimetres();
  const double fence = cut.fence.inMillimetres();
  const Point from = cut.upright ? Point{left, top + cut.part.height.inMillimetres() / 2}
                                 : Point{left + cut.part.width.inMillimetres() / 2, top};
  const Point to = cut.upright ? Point{from.x + fence, from.y} : Point{from.x, from.y + fence};
  const double end = std::max(m_drawing.piece->width, m_drawing.piece->height) * kEndShare;
  const Point across = cut.upright ? Point{0, end} : Point{end, 0};
  std::vector<Primitive> lines;
  const auto line = [&](const Point& a, const Point& b) {
    lines.push_back({"fence", core::sheets::Role::Dimension, core::sheets::Stroke{{a, b}, false}});
  };
  line(from, to);
  for (const Point& at : {from, to}) line({at.x - across.x, at.y - across.y}, {at.x + across.x, at.y + across.y});
  m_drawing.dimension = std::make_shared<const std::vector<Primitive>>(std::move(lines));
  m_fenceAt = QPointF((from.x + to.x) / 2, (from.y + to.y) / 2);
}

void CuttingViewModel::showFetching() {
  m_heading = sheetName();
  showParts();
  m_drawing.worked = "piece";
  m_lines << (stock().offcut
                  ? size(stock().width, stock().height)
                  : tr("%1\u00a0× %2")
                        .arg(entered(stock().width, Rounding::Nearest), entered(stock().height, Rounding::Nearest)));
  if (stock().thickness) m_lines.back() += tr(", %1 thick").arg(entered(*stock().thickness, Rounding::Nearest));
  std::map<std::size_t, int> counts;
  for (const auto& placed : sheet().pieces) ++counts[placed.piece];
  for (const auto& [piece, count] : counts) {
    m_lines << tr("%1 × %2").arg(count).arg(words::pieceName(m_cutting.pieces[piece]));
  }
  if (stock().usableMargin > Length()) {
    m_lines << tr("Trim %1 off every edge first.").arg(entered(stock().usableMargin, Rounding::Up));
  }
}

void CuttingViewModel::showCut(const core::cutting::SheetCut& cut) {
  m_heading = tr("Cut %1 of %2").arg(m_page).arg(sheet().cuts.size());
  m_drawing.worked = "cut." + std::to_string(m_page);
  m_fence = core::units::showLength(cut.fence.inMillimetres(), m_design->job.units, Rounding::Nearest);
  inkPart(cut);
  dimension(cut);
  m_lines << (cut.upright ? tr("from the left edge of the part, top to bottom")
                          : tr("from the top edge of the part, side to side"));
  m_lines << tr("The part: %1").arg(size(cut.part.width, cut.part.height));
  const auto parts = core::cutting::partsOf(cut, stock().kerf);
  if (const QString name = nameAt(parts.before); !name.isEmpty()) m_lines << tr("This gives: %1").arg(name);
  if (!parts.beyond) return;
  if (const QString name = nameAt(*parts.beyond); !name.isEmpty()) m_lines << tr("And beyond it: %1").arg(name);
}

void CuttingViewModel::showKeeping() {
  m_heading = tr("%1 is cut").arg(sheetName());
  if (sheet().offcuts.empty()) m_lines << tr("Nothing of it is worth keeping.");
  m_drawing.worked = m_keeping ? "kept" : "sheet";
  std::int64_t mark = m_onHand.lastMark;
  for (const Area& area : sheet().offcuts) {
    m_lines << (m_keeping ? tr("Write %1 on it and keep: %2").arg(++mark).arg(size(area.width, area.height))
                          : tr("Not kept: %1").arg(size(area.width, area.height)));
  }
}

void CuttingViewModel::showOver() {
  m_heading = tr("Nothing more to cut from sheets");
  if (!m_design) return;
  if (m_cutting.pieces.empty()) {
    m_lines << tr("Every piece of this job is cut.");
    return;
  }
  showLacking();
}

// The sheets of a kind that are on record, each by its name and thickness; "" for none.
QString CuttingViewModel::sheetsOf(core::design::StockKind kind) const {
  QStringList names;
  for (std::size_t i = 0; i < m_cutting.there.size(); ++i) {
    const core::design::Stock& one = m_cutting.there.at(i);
    if (one.kind != kind) continue;
    QString name = toQt(one.material.empty() ? one.id : one.material);
    if (one.thickness) name = tr("%1, %2").arg(name, entered(*one.thickness, Rounding::Nearest));
    if (!names.contains(name)) names << name;
  }
  return names.join(tr("; "));
}

// Why there is no sheet for what is left, and what that is: a sheet that serves a piece and is too small or used up is
// another matter than none.
void CuttingViewModel::showLacking() {
  QStringList bought, small, few;
  std::map<core::design::StockKind, QStringList> unserved;
  const auto line = [&](std::size_t index, int count) {
    const auto& piece = m_cutting.pieces[index];
    const QString said = tr("%1 × %2, %3").arg(count).arg(words::pieceName(piece), size(piece.width, piece.height));
    return piece.thickness ? tr("%1, %2 thick").arg(said, entered(*piece.thickness, Rounding::Nearest)) : said;
  };
  for (std::size_t i = 0; i < m_cutting.pieces.size(); ++i) {
    const auto& piece = m_cutting.pieces[i];
    if (!m_cutting.plan.matches[i].stock.empty()) continue;
    const auto kind = piece.ofPaper() ? core::design::StockKind::Paper : core::design::StockKind::Board;
    (isBought(piece.use) ? bought : unserved[kind]) << line(i, piece.count);
  }
  for (const auto& group : m_cutting.plan.groups) {
    for (const auto& left : group.unplaced) (left.tooLarge ? small : few) << line(left.piece, left.count);
  }
  if (!unserved.empty() || !small.isEmpty() || !few.isEmpty()) m_heading = tr("No sheet to cut from");
  const auto say = [&](const QString& what, const QStringList& lines) {
    // What is said of them is never on another page than the first of them.
    if (!lines.isEmpty()) m_lines << what + QLatin1Char('\n') + lines.first() << lines.mid(1);
  };
  // Who entered sheets is told which, and why they are not cut from.
  for (const auto& [kind, pieces] : unserved) {
    const QString there = sheetsOf(kind);
    say(there.isEmpty() ? tr("No sheet is entered for these. That is done at the desk, under Materials:")
                        : tr("In stock is %1, of another material or thickness than these:").arg(there),
        pieces);
  }
  say(tr("No sheet is large enough for these:"), small);
  say(tr("Not enough stock for these:"), few);
  say(tr("Bought, and cut from no sheet:"), bought);
}

bool CuttingViewModel::forward() {
  m_refusal.clear();
  if (m_sheets.empty()) return false;
  if (m_page < lastPage()) {
    ++m_page;
    show();
    return true;
  }
  const auto refused = m_workbench.submit(core::intents::OfShop{core::supply::cutOf(m_cutting, sheet(), m_keeping)});
  if (!refused.id.empty()) {
    m_refusal = words::text(refused, m_design->job.units);
    emit changed();
    return true;
  }
  return true;  // the shop's change has planned what is left
}

bool CuttingViewModel::back() {
  m_refusal.clear();
  if (m_page == 0) return false;
  --m_page;
  show();
  return true;
}

void CuttingViewModel::otherSheet() {
  if (sheets() < 2) return;
  m_sheet = (m_sheet + 1) % m_sheets.size();
  m_page = 0;
  show();
}

void CuttingViewModel::turnKeeping() {
  m_keeping = !m_keeping;
  show();
}

void CuttingViewModel::takeBack() {
  if (!canTakeBack()) return;
  const auto refused =
      m_workbench.submit(core::intents::OfShop{core::intents::UndoInShop{m_onHand.acts.back().intentId}});
  if (refused.id.empty()) return;
  m_refusal = words::text(refused, core::units::UnitSystem::Millimetres);
  emit changed();
}

}  // namespace app::viewmodels
