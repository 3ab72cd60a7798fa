#pragma once
// As made: the figures a step lets the maker measure, one at a time, keyed in on a pad; then what they changed, and
// what an inner window shall keep.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>

#include "app/viewmodels/number_entry.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class MadeViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int total READ total NOTIFY changed FINAL)  // 0 where the step shown measures nothing
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
  Q_PROPERTY(QString label READ label NOTIFY changed FINAL)
  Q_PROPERTY(QString datum READ datum NOTIFY changed FINAL)
  Q_PROPERTY(QString computed READ computed NOTIFY changed FINAL)      // "computed 316.0 mm"
  Q_PROPERTY(QString difference READ difference NOTIFY changed FINAL)  // of what is keyed in; else of what was measured
  Q_PROPERTY(QString tolerance READ tolerance NOTIFY changed FINAL)
  Q_PROPERTY(QString measured READ measured NOTIFY changed FINAL)  // "measured 317.0 mm"; "" where it was not
  // What is keyed in.
  Q_PROPERTY(bool keyed READ keyed NOTIFY changed FINAL)
  Q_PROPERTY(bool inches READ inches NOTIFY changed FINAL)
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)
  Q_PROPERTY(bool fraction READ fraction NOTIFY changed FINAL)
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  // Two measures that contradict each other: which is right? "" where nothing is asked.
  Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
  Q_PROPERTY(QString newer READ newer NOTIFY changed FINAL)
  Q_PROPERTY(QString older READ older NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  // What the measures of this step changed, a line each; finished steps they contradict.
  Q_PROPERTY(QStringList changes READ changes NOTIFY changed FINAL)
  Q_PROPERTY(QStringList contradicted READ contradicted NOTIFY changed FINAL)
  // The choice for an inner window: "" where there is none to make.
  Q_PROPERTY(QString followBoard READ followBoard NOTIFY changed FINAL)
  Q_PROPERTY(bool reveal READ reveal NOTIFY changed FINAL)  // which of the two holds
  Q_PROPERTY(QString coverFigures READ coverFigures NOTIFY changed FINAL)
  Q_PROPERTY(QString revealFigures READ revealFigures NOTIFY changed FINAL)

 public:
  explicit MadeViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  // What the bench shows; another step begins with its first figure.
  void show(const std::string& jobId, const core::workflow::WorkflowStep* step);

  int total() const { return static_cast<int>(m_figures.size()); }
  QString place() const;
  QString label() const;
  QString datum() const;
  QString computed() const;
  QString difference() const;
  QString tolerance() const;
  QString measured() const;
  bool keyed() const { return !m_entry.empty(); }
  bool inches() const { return m_entry.units() == core::units::UnitSystem::Inches; }
  QString whole() const { return m_entry.whole(); }
  bool fraction() const { return m_entry.fraction(); }
  QString numerator() const { return m_entry.numerator(); }
  QString denominator() const { return m_entry.denominator(); }
  QString unit() const { return m_entry.unit(); }
  QString refusal() const { return m_refusal; }
  QString question() const { return m_question; }
  QString newer() const { return m_newer; }
  QString older() const { return m_older; }
  PieceDrawing drawing() const { return m_drawing; }
  QStringList changes() const { return m_changes; }
  QStringList contradicted() const { return m_contradicted; }
  QString followBoard() const { return m_followBoard; }
  bool reveal() const { return m_reveal; }
  QString coverFigures() const { return m_coverFigures; }
  QString revealFigures() const { return m_revealFigures; }

  // The screen is shown: begins with the first figure, and with what is so far for what will have changed.
  Q_INVOKABLE void open();
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  Q_INVOKABLE void turnUnits();
  // Return whether there was another figure to go to; what was keyed in is dropped.
  Q_INVOKABLE bool forward();
  Q_INVOKABLE bool back();
  // Keeps what is keyed in. Returns whether it was kept; the next figure is then shown.
  Q_INVOKABLE bool keep();
  // The rule shows what was computed.
  Q_INVOKABLE bool agrees();
  // The figure is computed again.
  Q_INVOKABLE bool forget();
  // Answers the question: the measure keyed in is right, or the earlier one.
  Q_INVOKABLE void answer(bool newerIsRight);
  Q_INVOKABLE bool follow(bool keepReveal);
  // Whether the last figure is behind: everything was keyed in or passed over.
  Q_INVOKABLE bool over() const { return m_over; }

 signals:
  void changed();

 private:
  const core::jobs::JobState* state() const { return m_workbench.job(m_jobId); }
  core::units::UnitSystem jobUnits() const;
  const std::string& figureId() const { return m_figures[static_cast<std::size_t>(m_index)]; }
  const core::design::Figure* figure() const;
  // As it would be had this step not measured it: computed, or as another piece was measured.
  const core::design::Figure* plainFigure() const;
  bool measuredHere() const;
  bool enter(core::units::Length value, const std::string& overrules);
  void ask(const core::base::Message& refused, core::units::Length value);
  void refresh();
  void showChanges();
  void showFollowing();

  workbench::Workbench& m_workbench;
  std::string m_jobId;
  std::string m_step;
  std::vector<std::string> m_figures;
  int m_index = 0;
  bool m_over = false;
  NumberEntry m_entry;
  QString m_refusal, m_question, m_newer, m_older;
  std::string m_overrules;  // what the measure keyed in would overrule
  std::shared_ptr<const core::design::Design> m_before;
  std::shared_ptr<const core::design::Design> m_without;  // the figure shown not measured
  PieceDrawing m_drawing;
  QStringList m_changes, m_contradicted;
  QString m_followBoard, m_coverFigures, m_revealFigures;
  bool m_reveal = false;
};

}  // namespace app::viewmodels
