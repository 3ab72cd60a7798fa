#pragma once
// The figures as made: those a step lets the maker measure, one at a time, set on a scale by what the gauge tells or
// keyed in on a pad; then the changes they cause, and the choice of what an inner window shall preserve.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <memory>
#include <optional>

#include "app/viewmodels/bench/drawn_once.h"
#include "app/viewmodels/number_entry.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"
#include "core/decisions/made_bands.h"

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
  // The head of the page: what is done, from where, on what and how that lies.
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(QString where READ where NOTIFY changed FINAL)
  Q_PROPERTY(QString thing READ thing NOTIFY changed FINAL)
  Q_PROPERTY(QString side READ side NOTIFY changed FINAL)  // "" where neither side matters
  Q_PROPERTY(bool backUp READ backUp NOTIFY changed FINAL)
  // The scale, in mm: { "at", "label" }, and { "from", "to", "word", "since", "until", "drawn" } side by side on it.
  Q_PROPERTY(QVariantList ticks READ ticks NOTIFY changed FINAL)
  Q_PROPERTY(QVariantList bands READ bands NOTIFY changed FINAL)
  Q_PROPERTY(double reading READ reading NOTIFY changed FINAL)
  Q_PROPERTY(double drawnAt READ drawnAt NOTIFY changed FINAL)
  Q_PROPERTY(double value READ value NOTIFY changed FINAL)
  Q_PROPERTY(QString drawnText READ drawnText NOTIFY changed FINAL)  // "316.0 ±0.5"
  Q_PROPERTY(QString readingText READ readingText NOTIFY changed FINAL)
  // Whether the value is the maker's: set, keyed in or measured before. Until then it is the drawn one.
  Q_PROPERTY(bool touched READ touched NOTIFY changed FINAL)
  Q_PROPERTY(QString valueWhole READ valueWhole NOTIFY changed FINAL)
  Q_PROPERTY(QString valueNumerator READ valueNumerator NOTIFY changed FINAL)
  Q_PROPERTY(QString valueDenominator READ valueDenominator NOTIFY changed FINAL)
  Q_PROPERTY(QString valueUnit READ valueUnit NOTIFY changed FINAL)
  // What would come of the value: the word of its band; why it would be refused; the figure that follows first.
  Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)
  Q_PROPERTY(QString wouldRefuse READ wouldRefuse NOTIFY changed FINAL)
  Q_PROPERTY(QString followLabel READ followLabel NOTIFY changed FINAL)
  Q_PROPERTY(QString followBefore READ followBefore NOTIFY changed FINAL)
  Q_PROPERTY(QString followAfter READ followAfter NOTIFY changed FINAL)
  Q_PROPERTY(QString followCount READ followCount NOTIFY changed FINAL)
  // How many measures this way of working asks for after this one; then the measuring may end.
  Q_PROPERTY(int left READ left NOTIFY changed FINAL)
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
  Q_PROPERTY(bool drawn READ drawn NOTIFY changed FINAL)  // whether a drawing can tell where it is measured
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
  QString title() const;
  QString where() const;
  QString thing() const;
  QString side() const;
  bool backUp() const;
  QVariantList ticks() const { return m_ticks; }
  QVariantList bands() const { return m_bandsShown; }
  double reading() const;
  double drawnAt() const;
  double value() const { return chosen().inMillimetres(); }
  QString drawnText() const;
  QString readingText() const;
  bool touched() const { return m_value.has_value() || keyed() || measuredHere(); }
  QString valueWhole() const;
  QString valueNumerator() const;
  QString valueDenominator() const;
  QString valueUnit() const;
  QString outcome() const;
  QString wouldRefuse() const { return m_wouldRefuse; }
  QString followLabel() const { return m_following.label; }
  QString followBefore() const { return m_following.before; }
  QString followAfter() const { return m_following.after; }
  QString followCount() const { return m_following.count; }
  int left() const;
  QString refusal() const { return m_refusal; }
  QString question() const { return m_question; }
  QString newer() const { return m_newer; }
  QString older() const { return m_older; }
  PieceDrawing drawing() const { return m_drawing; }
  bool drawn() const { return m_drawing.piece != nullptr; }
  QStringList changes() const { return m_changes; }
  QStringList contradicted() const { return m_contradicted; }
  QString followBoard() const { return m_followBoard; }
  bool reveal() const { return m_reveal; }
  QString coverFigures() const { return m_coverFigures; }
  QString revealFigures() const { return m_revealFigures; }

  // The screen opens: begins with the first figure, and takes the present design as the base for the changes shown.
  Q_INVOKABLE void open();
  // These set the value to the gauge's next reading that way.
  Q_INVOKABLE void less();
  Q_INVOKABLE void more();
  // Records the value shown, which untouched is the drawn one; one that was measured here already stands. Returns
  // whether it was taken; the next figure is then shown.
  Q_INVOKABLE bool next();
  // The same where the measuring ends: a figure that is only lent to the maker is left as it is unless it was set.
  Q_INVOKABLE bool finish();
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  Q_INVOKABLE void turnUnits();
  // Lets go of what was keyed in.
  Q_INVOKABLE void drop();
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
  // Whether this way of marking asks for the measure.
  bool isAsked(int index) const;
  core::design::Gauge gauge() const;
  core::units::Length chosen() const;
  core::units::ShownLength shownValue() const;
  QString readingOn(core::units::Length length) const;
  void step(int by);
  void showScale();
  void showOutcome();
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
  std::optional<core::units::Length> m_value;  // set on the scale
  QString m_refusal, m_question, m_newer, m_older;
  std::string m_overrules;  // the measure that the one keyed in would overrule
  std::shared_ptr<const core::design::Design> m_before;
  std::shared_ptr<const core::design::Design> m_without;  // the design without the measurement shown
  // The scale of one figure of one design.
  std::string m_scaleOf;
  std::shared_ptr<const core::design::Design> m_scaleDesign;
  std::vector<core::decisions::MadeBand> m_bands;
  QVariantList m_ticks, m_bandsShown;
  QString m_wouldRefuse;
  struct Following {
    QString label, before, after, count;
  };
  Following m_following;
  DrawnOnce m_drawn;
  PieceDrawing m_drawing;
  QStringList m_changes, m_contradicted;
  QString m_followBoard, m_coverFigures, m_revealFigures;
  bool m_reveal = false;
};

}  // namespace app::viewmodels
