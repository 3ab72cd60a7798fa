#pragma once
// Sheets cut up at the bench: what to fetch, then cut by cut with the fence of each, then what is kept. One sheet at a
// time, in the order they are cut; nothing is recorded before the sheet is said to be cut.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
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
  Q_PROPERTY(QString heading READ heading NOTIFY changed FINAL)  // the sheet; of a cut, which of how many
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)      // "sheet 1 of 3"
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)      // the fence
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QStringList lines READ lines NOTIFY changed FINAL)
  Q_PROPERTY(QString said READ said NOTIFY changed FINAL)             // the lines in one
  Q_PROPERTY(bool keeps READ keeps NOTIFY changed FINAL)              // there is something worth keeping
  Q_PROPERTY(bool keeping READ keeping NOTIFY changed FINAL)          // and it is to be kept
  Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed FINAL)  // a sheet cut last
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)

 public:
  enum class Page { Fetch, Cut, Keep, Over };
  Q_ENUM(Page)

  explicit CuttingViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  // Begins with the first sheet of that job. An unknown job has nothing to cut.
  void open(const std::string& jobId);
  // Plans anew where the job or what is on hand is no longer what the sheets were planned from; a sheet whose cuts
  // are under way stays as long as it is still the one planned.
  void refresh();

  Page page() const;
  int sheets() const { return static_cast<int>(m_sheets.size()); }
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

  // On to the next cut; on the last page the sheet is cut. Returns whether there is more to show.
  Q_INVOKABLE bool forward();
  // Returns whether there was a page to go back to.
  Q_INVOKABLE bool back();
  // Another sheet first; goes round.
  Q_INVOKABLE void otherSheet();
  Q_INVOKABLE void turnKeeping();
  // The sheet cut last is whole again, what was kept of it gone.
  Q_INVOKABLE void takeBack();

 signals:
  void changed();

 private:
  const core::materials::PlanSheet& sheet() const { return *m_sheets[m_sheet]; }
  const core::design::Stock& stock() const { return m_cutting.there.at(sheet().stock); }
  int lastPage() const { return static_cast<int>(sheet().cuts.size()) + 1; }
  QString length(core::units::Length length, core::units::Rounding rounding) const;
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

  workbench::Workbench& m_workbench;
  std::string m_jobId;
  std::shared_ptr<const core::design::Design> m_design;  // held: the sheets were planned from it
  core::shop::OnHand m_onHand;                           // what was cut and kept when they were
  core::supply::Cutting m_cutting;
  std::vector<const core::materials::PlanSheet*> m_sheets;
  std::size_t m_sheet = 0;
  int m_page = 0;  // 0: fetch; then the cuts; then what is kept
  bool m_keeping = true;
  QString m_heading, m_refusal;
  QStringList m_lines;
  core::units::ShownLength m_fence;
  PieceDrawing m_drawing;
};

}  // namespace app::viewmodels
