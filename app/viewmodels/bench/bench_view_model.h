#pragma once
// The job on the bench, ready to show: the maker's place in it, the step, the acts that are possible now.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <QVariantList>
#include <functional>
#include <optional>

#include "app/viewmodels/bench/drawn_once.h"
#include "app/viewmodels/bench/figure_view_model.h"
#include "app/viewmodels/bench/look_view_model.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"
#include "core/decisions/offers.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/cautions.h"

namespace app::viewmodels {

class BenchViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")

 public:
  enum class Kind { NoJob, Step, Waiting, Missed, Finished, Stuck, Trouble };
  Q_ENUM(Kind)

 private:
  Q_PROPERTY(app::viewmodels::BenchViewModel::Kind kind READ kind NOTIFY changed FINAL)
  Q_PROPERTY(QString shortPiece READ shortPiece NOTIFY changed FINAL)  // title up to the first comma, to read from afar
  Q_PROPERTY(QString stepId READ stepId NOTIFY changed FINAL)          // "" where no step is shown
  Q_PROPERTY(QString above READ above NOTIFY changed FINAL)            // the act done last, or taken back last
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)            // the act, or the message shown in its place
  Q_PROPERTY(QString thing READ thing NOTIFY changed FINAL)  // which board, strip or field; "" where the title names it
  // What an act of several kinds of steps holds, in order.
  Q_PROPERTY(QStringList parts READ parts NOTIFY changed FINAL)
  Q_PROPERTY(QVariantList stages READ stages NOTIFY changed FINAL)  // { "name", "standing" }; see StageStanding
  Q_PROPERTY(QString next READ next NOTIFY changed FINAL)
  // Where in the piece the act stands, which hands it wants and what comes next, in one line.
  Q_PROPERTY(QString afterwards READ afterwards NOTIFY changed FINAL)
  Q_PROPERTY(
      QString detail READ detail NOTIFY changed FINAL)  // the sentences under the title: wait, missed step, trouble
  // While the bench waits, the wait that is tested first: "test", "10:22" ("" where the verb says it all), what it is
  // told as, and its touch test. `detail` holds all of it and where the times come from.
  Q_PROPERTY(QString waitVerb READ waitVerb NOTIFY changed FINAL)
  Q_PROPERTY(QString waitTime READ waitTime NOTIFY changed FINAL)
  Q_PROPERTY(QString waitSentence READ waitSentence NOTIFY changed FINAL)
  Q_PROPERTY(QString waitTest READ waitTest NOTIFY changed FINAL)
  Q_PROPERTY(QString lies READ lies NOTIFY changed FINAL)  // "face up · marked corner top left"
  Q_PROPERTY(QString side READ side NOTIFY changed FINAL)  // "face up", "back up"; "" where neither matters
  Q_PROPERTY(bool backUp READ backUp NOTIFY changed FINAL)
  Q_PROPERTY(QString hands READ hands NOTIFY changed FINAL)
  Q_PROPERTY(QStringList sentences READ sentences NOTIFY changed FINAL)
  Q_PROPERTY(QString good READ good NOTIFY changed FINAL)
  Q_PROPERTY(QString trap READ trap NOTIFY changed FINAL)
  Q_PROPERTY(QStringList tools READ tools NOTIFY changed FINAL)  // and materials with their amounts
  Q_PROPERTY(QStringList checks READ checks NOTIFY changed FINAL)
  Q_PROPERTY(QString checksText READ checksText NOTIFY changed FINAL)  // a line each, with its box
  Q_PROPERTY(QStringList faults READ faults NOTIFY changed FINAL)
  // While a fault leaves a choice, these hold what was seen, the keys of its ways and the meaning of each. `mend` is
  // how the fault reported last is mended; it is "" until the maker has chosen a way.
  Q_PROPERTY(QString mend READ mend NOTIFY changed FINAL)
  Q_PROPERTY(QString considered READ considered NOTIFY changed FINAL)
  Q_PROPERTY(QStringList wayKeys READ wayKeys NOTIFY changed FINAL)
  Q_PROPERTY(QStringList wayMends READ wayMends NOTIFY changed FINAL)
  Q_PROPERTY(bool hasCaution READ hasCaution NOTIFY changed FINAL)
  Q_PROPERTY(QString cautionWord READ cautionWord NOTIFY changed FINAL)
  Q_PROPERTY(QString cautionHazard READ cautionHazard NOTIFY changed FINAL)
  Q_PROPERTY(QString cautionSign READ cautionSign NOTIFY changed FINAL)
  Q_PROPERTY(QString cautionText READ cautionText NOTIFY changed FINAL)
  Q_PROPERTY(bool canBegin READ canBegin NOTIFY changed FINAL)
  Q_PROPERTY(bool begun READ begun NOTIFY changed FINAL)
  // Of several things worked in one act, the first, which can be reported done alone; "" where there is one.
  Q_PROPERTY(QString first READ first NOTIFY changed FINAL)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
  Q_PROPERTY(bool canPutBack READ canPutBack NOTIFY changed FINAL)
  // For a few seconds after an act was done it can be undone from the line that says so; not with a blade in the hand
  // or an act begun, where what brushes against the glass must change nothing.
  Q_PROPERTY(bool justDone READ justDone NOTIFY changed FINAL)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  // This draws the piece, or the act where a step does not work on the piece (paste, rags, the bench itself).
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  Q_PROPERTY(bool hasAct READ hasAct NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing act READ act NOTIFY changed FINAL)  // what the hand does in the step shown
  Q_PROPERTY(app::viewmodels::FigureViewModel* figure READ figure CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::LookViewModel* look READ look CONSTANT FINAL)

 public:
  BenchViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  static constexpr core::units::Duration kJustDone = core::units::Duration::milliseconds(10'000);

  const std::string& jobId() const { return m_jobId; }
  void selectJob(const std::string& jobId);
  // The record cannot be used at all; the screens show this text instead.
  void setTrouble(const QString& trouble);
  // What was asked from another screen was refused: the bench says why.
  void tellRefusal(const QString& refusal);
  // Reads everything again from the workbench, as of the present time.
  void refresh();

  // Returns the steps of the act shown; none where none is shown or it cannot be worked now.
  const std::vector<const core::workflow::WorkflowStep*>& steps() const { return m_steps; }

  Kind kind() const { return m_kind; }
  QString shortPiece() const { return m_jobTitle.section(QLatin1Char(','), 0, 0); }
  QString stepId() const;
  QString above() const { return m_above; }
  QString title() const { return m_title; }
  QString thing() const;
  QStringList parts() const { return m_parts; }
  QString checksText() const;
  QVariantList stages() const { return m_stages; }
  QString next() const { return m_next; }
  QString afterwards() const;
  QString detail() const { return m_detail; }
  QString waitVerb() const { return m_waitVerb; }
  QString waitTime() const { return m_waitTime; }
  QString waitSentence() const { return m_waitSentence; }
  QString waitTest() const { return m_waitTest; }
  QString lies() const;
  QString side() const;
  bool backUp() const { return m_step != nullptr && m_step->up == core::craft::WayUp::Back; }
  QString hands() const;
  QStringList sentences() const;
  QString good() const;
  QString trap() const;
  QStringList tools() const;
  QStringList checks() const;
  QStringList faults() const;
  QString mend() const { return m_mend; }
  QString considered() const { return m_considered.seen; }
  QStringList wayKeys() const { return m_considered.wayKeys; }
  QStringList wayMends() const { return m_considered.wayMends; }
  bool hasCaution() const { return !m_cautions.empty(); }
  QString cautionWord() const;
  QString cautionHazard() const;
  QString cautionSign() const;
  QString cautionText() const;
  bool canBegin() const { return m_canBegin; }
  bool begun() const { return m_begun; }
  bool canUndo() const { return !m_undo.empty(); }
  bool canPutBack() const { return !m_redo.empty(); }
  bool justDone() const { return m_justDone; }
  QString refusal() const { return m_refusal; }
  PieceDrawing drawing() const { return m_drawing; }
  bool hasAct() const { return m_act.piece != nullptr; }
  PieceDrawing act() const { return m_act; }
  QString first() const;
  FigureViewModel* figure() { return &m_figure; }
  LookViewModel* look() { return &m_look; }

  // `finish` records every check as passed. These return whether the act was recorded.
  Q_INVOKABLE bool finish();
  Q_INVOKABLE bool finishFirst();
  Q_INVOKABLE bool begin();
  Q_INVOKABLE bool takeBack();
  Q_INVOKABLE bool putBack();
  Q_INVOKABLE bool takeUpMissed();
  Q_INVOKABLE bool wasBegunInTime();
  // Reports a fault of the step shown or of the last one done, by its place in `faults`. One that leaves a choice is
  // not recorded before a way is chosen. `mend` is then how it is mended; "" where it was refused or the choice is
  // open.
  Q_INVOKABLE void report(int fault);
  Q_INVOKABLE void takeWay(int way);
  Q_INVOKABLE void forgetRefusal();

 signals:
  void changed();
  // A step was finished or taken up; an alert held back while the hands were busy may now be shown.
  void handsFree();
  // Another job has come onto the bench in place of that one.
  void left(const std::string& jobId);

 private:
  QString progress() const;  // "act 13 of 41"
  const core::intents::FinishStep* firstAlone() const;
  void showPlace(const core::jobs::JobAt& job);
  void showWaiting(const core::jobs::JobAt& job, const std::string& waitId);
  void showAbove(const core::jobs::JobAt& job, const core::jobs::BenchPlace& place);
  void showSteps(const core::jobs::JobAt& job, const core::jobs::BenchPlace& place);
  void showFigures(const core::jobs::JobState* state);
  void showAct(const core::jobs::JobAt& job);
  void showOffers(const core::jobs::JobAt& job);
  void showJustDone(const core::jobs::JobAt& job, const core::jobs::BenchPlace& place);
  void showFault(const core::workflow::WorkflowStep& step, const core::intents::ReportFault& report);
  QString nextText(const core::jobs::JobAt& job, const core::jobs::BenchPlace& place) const;
  std::vector<const core::workflow::WorkflowStep*> shownSteps() const;
  QStringList joined(const std::function<QStringList(const core::workflow::WorkflowStep&)>& of) const;
  bool ask(const core::intents::Intent& intent);
  // Submits the first offer of that kind. Returns whether it was recorded; false where none is offered.
  template <typename Intent>
  bool askOffered();

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::string m_jobId;
  Kind m_kind = Kind::NoJob;
  // The first step of the act shown, or the step a missed window gated; owned by the job's plan, as those below are.
  const core::workflow::WorkflowStep* m_step = nullptr;
  std::vector<const core::workflow::WorkflowStep*> m_steps;  // of the act shown
  qsizetype m_thingsOfAct = 0;                               // with those of it that are done already
  core::craft::Hands m_hands = core::craft::Hands::Clean;    // that it needs
  std::vector<core::jobs::CautionAt> m_cautions;
  QStringList m_parts;
  QVariantList m_stages;
  std::size_t m_done = 0;
  std::size_t m_all = 0;
  QString m_jobTitle;
  QString m_title;
  QString m_above;
  QString m_next;
  QString m_detail;
  QString m_waitVerb;
  QString m_waitTime;
  QString m_waitSentence;
  QString m_waitTest;
  QString m_refusal;
  QString m_trouble;
  std::vector<core::decisions::Offer> m_offers;  // the acts that are possible for the job now
  std::string m_undo;
  std::string m_redo;
  struct FaultShown {
    core::intents::ReportFault report;
    QString seen;
    QString mend;  // "" where there are ways to choose from
    QStringList ways, wayKeys, wayMends;
  };
  std::vector<FaultShown> m_faults;
  FaultShown m_considered;
  QString m_mend;
  bool m_canBegin = false;
  bool m_begun = false;
  bool m_justDone = false;
  QTimer m_later;  // until what was just done is so no more
  DrawnOnce m_drawn;
  PieceDrawing m_drawing;
  PieceDrawing m_act;
  FigureViewModel m_figure;
  LookViewModel m_look;
};

}  // namespace app::viewmodels
