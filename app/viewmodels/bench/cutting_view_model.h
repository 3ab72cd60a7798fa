#pragma once
// Sheets cut up at the bench: the sheet to fetch, then each cut with its fence setting, then the offcuts to keep. The
// sheets are shown one at a time in cutting order; nothing is recorded before the maker confirms that one is cut.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <optional>

#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"
#include "core/supply/cutting.h"
#include "core/units/length_display.h"

namespace app::viewmodels {

class CuttingViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(Page page READ page NOTIFY changed FINAL)
  Q_PROPERTY(int sheets READ sheets NOTIFY changed FINAL)        // still to be cut
  Q_PROPERTY(QString piece READ piece NOTIFY changed FINAL)      // its title up to the first comma
  Q_PROPERTY(QString heading READ heading NOTIFY changed FINAL)  // the sheet; of a cut, which of how many
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)      // "sheet 1 of 3"
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)      // the fence setting, split as a stacked number
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QStringList lines READ lines NOTIFY changed FINAL)
  Q_PROPERTY(QString said READ said NOTIFY changed FINAL)             // all lines joined
  Q_PROPERTY(bool keeps READ keeps NOTIFY changed FINAL)              // the sheet leaves an offcut worth keeping
  Q_PROPERTY(bool keeping READ keeping NOTIFY changed FINAL)          // the maker wants to keep it
  Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed FINAL)  // the last sheet can be taken back
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  // Of a cut: the middle of the dimension from the edge of the part to the cut, in mm of the sheet.
  Q_PROPERTY(QPointF fenceAt READ fenceAt NOTIFY changed FINAL)
  // What lies on the sheet: the "name" of each piece and its "place", a rectangle in mm of the sheet.
  Q_PROPERTY(QVariantList parts READ parts NOTIFY changed FINAL)

 public:
  enum class Page { Fetch, Cut, Keep, Over };
  Q_ENUM(Page)

  explicit CuttingViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  // Begins with the first sheet of that job. An unknown job has no sheets.
  void open(const std::string& jobId);
  // Plans again where the job or the stock has changed since the sheets were planned; a sheet whose cuts are under way
  // stays shown as long as the new plan still has it.
  void refresh();

  Page page() const;
  int sheets() const { return static_cast<int>(m_sheets.size()); }
  QString piece() const;
  QString heading() const { return m_heading; }
  QString place() const;
  QString whole() const { return QString::fromStdString(m_fence.whole); }
  QString numerator() const { return m_fence.denominator == 0 ? QString() : QString::number(m_fence.numerator); }
  QString denominator() const { return m_fence.denominator == 0 ? QString() : QString::number(m_fence.denominator); }
  QString unit() const { return QString::fromStdString(m_fence.unit); }
  QStringList lines() const { return m_lines; }
  QString said() const { return m_lines.join(QLatin1Char('\n')); }
  bool keeps() const;
  bool keeping() const { return m_keeping; }
  bool canTakeBack() const;
  QString refusal() const { return m_refusal; }
  PieceDrawing drawing() const { return m_drawing; }
  QPointF fenceAt() const { return m_fenceAt; }
  QVariantList parts() const { return m_parts; }

  // Goes to the next cut; on the last page it records the sheet as cut. Returns whether there is more to show.
  Q_INVOKABLE bool forward();
  // Returns whether there was a page to go back to.
  Q_INVOKABLE bool back();
  // Chooses another sheet to cut first; after the last it begins again.
  Q_INVOKABLE void otherSheet();
  Q_INVOKABLE void turnKeeping();
  // Takes back the last cutting: the sheet is whole again and its offcuts are no longer in stock.
  Q_INVOKABLE void takeBack();

 signals:
  void changed();

 private:
  const core::materials::PlanSheet& sheet() const { return *m_sheets[m_sheet]; }
  const core::design::Stock& stock() const { return m_cutting.there.at(sheet().stock); }
  int lastPage() const { return static_cast<int>(sheet().cuts.size()) + 1; }
  QString length(core::units::Length length, core::units::Rounding rounding) const;
  QString entered(core::units::Length length, core::units::Rounding rounding) const;
  QString size(core::units::Length width, core::units::Length height) const;
  QString sheetName() const;
  QString nameAt(const core::cutting::Area& part) const;
  void plan();
  void show();
  void showFetching();
  void showCut(const core::cutting::SheetCut& cut);
  void showKeeping();
  void showOver();
  void showLacking();
  void showParts();
  void inkPart(const core::cutting::SheetCut& cut);
  void dimension(const core::cutting::SheetCut& cut);
  QString sheetsOf(core::design::StockKind kind) const;

  workbench::Workbench& m_workbench;
  std::string m_jobId;
  std::shared_ptr<const core::design::Design> m_design;  // kept alive, since the sheets were planned from it
  core::shop::OnHand m_onHand;                           // the stock when they were planned
  core::supply::Cutting m_cutting;
  std::vector<const core::materials::PlanSheet*> m_sheets;
  std::size_t m_sheet = 0;
  int m_page = 0;  // 0: fetch; then the cuts; then the offcuts
  bool m_keeping = true;
  QString m_heading, m_refusal;
  QStringList m_lines;
  core::units::ShownLength m_fence;
  PieceDrawing m_drawing;
  QPointF m_fenceAt;
  QVariantList m_parts;
};

}  // namespace app::viewmodels
