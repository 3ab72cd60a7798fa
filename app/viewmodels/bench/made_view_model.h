#pragma once
// The figures as made: those a step lets the maker measure, one at a time, keyed in on a pad; then the changes they
// cause, and the choice of what an inner window shall preserve.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>

#include "app/viewmodels/bench/drawn_once.h"
#include "app/viewmodels/number_entry.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class MadeViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int total READ total NOTIFY changed FINAL)  // 0 where the step shown has no measurement
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
  Q_PROPERTY(QString label READ label NOTIFY changed FINAL)
  Q_PROPERTY(QString datum READ datum NOTIFY changed FINAL)
  Q_PROPERTY(QString computed READ computed NOTIFY changed FINAL)      // "computed 316.0 mm"
  Q_PROPERTY(QString difference READ difference NOTIFY changed FINAL)  // of the figure keyed in, otherwise measured
  Q_PROPERTY(QString tolerance READ tolerance NOTIFY changed FINAL)
  Q_PROPERTY(QString measured READ measured NOTIFY changed FINAL)  // "measured 317.0 mm"; "" where not measured
  // The figure being keyed in.
  Q_PROPERTY(bool keyed READ keyed NOTIFY changed FINAL)
  Q_PROPERTY(bool inches READ inches NOTIFY changed FINAL)
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)
  Q_PROPERTY(bool fraction READ fraction NOTIFY changed FINAL)
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  // Asks which of two contradicting measures is right; "" where there is no question.
  Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
  Q_PROPERTY(QString newer READ newer NOTIFY changed FINAL)
  Q_PROPERTY(QString older READ older NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  // The changes caused by the measures of this step, a line each; and the finished steps they contradict.
  Q_PROPERTY(QStringList changes READ changes NOTIFY changed FINAL)
  Q_PROPERTY(QStringList contradicted READ contradicted NOTIFY changed FINAL)
  // The choice for an inner window; "" where there is none to make.
  Q_PROPERTY(QString followBoard READ followBoard NOTIFY changed FINAL)
  Q_PROPERTY(bool reveal READ reveal NOTIFY changed FINAL)  // which of the two is chosen
  Q_PROPERTY(QString coverFigures READ coverFigures NOTIFY changed FINAL)
  Q_PROPERTY(QString revealFigures READ revealFigures NOTIFY changed FINAL)

 public:
  explicit MadeViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  // Follows the act that the bench shows; another act begins with its first figure.
  void show(const std::string& jobId, const std::vector<const core::workflow::WorkflowStep*>& steps);

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

  // The screen opens: begins with the first figure, and takes the present design as the base for the changes shown.
  Q_INVOKABLE void open();
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  Q_INVOKABLE void turnUnits();
  // These drop the digits keyed in and return whether there was another figure to go to.
  Q_INVOKABLE bool forward();
  Q_INVOKABLE bool back();
  // Records the figure keyed in. Returns whether it was recorded; the next figure is then shown.
  Q_INVOKABLE bool keep();
  // The maker measured the computed figure.
  Q_INVOKABLE bool agrees();
  // Removes the measurement, so that the figure is computed again.
  Q_INVOKABLE bool forget();
  // Answers the question: the measure keyed in is right, or the earlier one.
  Q_INVOKABLE void answer(bool newerIsRight);
  Q_INVOKABLE bool follow(bool keepReveal);
  // Returns whether every figure was keyed in or passed over.
  Q_INVOKABLE bool over() const { return m_over; }

 signals:
  void changed();

 private:
  const core::jobs::JobState* state() const { return m_workbench.job(m_jobId); }
  core::units::UnitSystem jobUnits() const;
  const std::string& figureId() const { return m_figures[static_cast<std::size_t>(m_index)].figure; }
  const std::string& stepId() const { return m_figures[static_cast<std::size_t>(m_index)].step; }
  const core::design::Figure* figure() const;
  // The step that lets the figure be measured; requires a figure.
  const core::workflow::WorkflowStep* measuredAt() const;
  // The figure without this step's measurement: computed, or as measured on another piece.
  const core::design::Figure* plainFigure() const;
  bool measuredHere() const;
  bool enter(core::units::Length value, const std::string& overrules);
  void ask(const core::base::Message& refused, core::units::Length value);
  void refresh();
  void showChanges();
  void showFollowing();

  workbench::Workbench& m_workbench;
  std::string m_jobId;
  std::string m_act;  // tells the act shown from others
  struct Measured {
    std::string figure;
    std::string step;  // which lets it be measured
  };
  std::vector<Measured> m_figures;
  int m_index = 0;
  bool m_over = false;
  NumberEntry m_entry;
  QString m_refusal, m_question, m_newer, m_older;
  std::string m_overrules;  // the measure that the one keyed in would overrule
  std::shared_ptr<const core::design::Design> m_before;
  std::shared_ptr<const core::design::Design> m_without;  // the design without the measurement shown
  DrawnOnce m_drawn;
  PieceDrawing m_drawing;
  QStringList m_changes, m_contradicted;
  QString m_followBoard, m_coverFigures, m_revealFigures;
  bool m_reveal = false;
};

}  // namespace app::viewmodels
