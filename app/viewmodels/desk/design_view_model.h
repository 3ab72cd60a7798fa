#pragma once
// A design at the desk: sections and fields, the entries, the drawing as it grows, the resulting work. Every change is
// stored at once; undo and redo go through the record.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <optional>
#include <string>

#include "app/clocks/clock.h"
#include "app/designing/drag.h"
#include "app/designing/ways.h"
#include "app/viewmodels/desk/chains_model.h"
#include "app/viewmodels/desk/form_view_model.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"
#include "core/workflow/agenda.h"
#include "core/workflow/workflow.h"

namespace app::viewmodels {

// The whole name, since the type registrar looks it up from outside.
class DesignViewModel : public app::viewmodels::FormViewModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
  Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed FINAL)
  Q_PROPERTY(bool complete READ complete NOTIFY changed FINAL)  // the design is complete enough to be made
  Q_PROPERTY(bool holds READ holds NOTIFY changed FINAL)        // measures valid; other entries may be missing
  Q_PROPERTY(QString state READ state NOTIFY changed FINAL)     // what of it is valid, or what is not
  Q_PROPERTY(bool inInches READ inInches NOTIFY changed FINAL)  // the units of its figures
  Q_PROPERTY(QString tally READ tally NOTIFY changed FINAL)     // steps, hands, days: a line
  Q_PROPERTY(
      QString benchReason READ benchReason NOTIFY changed FINAL)  // why it cannot go to the bench; "" where it can
  Q_PROPERTY(QString comesTo READ comesTo NOTIFY changed FINAL)   // steps, hands, waits
  Q_PROPERTY(QString lacks READ lacks NOTIFY changed FINAL)       // materials the shop lacks; "" for none known
  Q_PROPERTY(
      app::viewmodels::RowsModel* steps READ steps CONSTANT FINAL)  // the composed workflow, technique by technique
  Q_PROPERTY(app::viewmodels::RowsModel* measures READ measures CONSTANT FINAL)  // of the whole piece, part by part
  Q_PROPERTY(app::viewmodels::ChainsModel* chains READ chains CONSTANT FINAL)    // beside the drawing
  Q_PROPERTY(QString caption READ caption NOTIFY changed FINAL)                  // what the drawing shows
  Q_PROPERTY(QString about READ about NOTIFY changed FINAL)  // reference and for whom; "" where neither is entered
  // What stands against the design, that of the section shown first: where, what, and the one change that settles it.
  Q_PROPERTY(QString conflictPlace READ conflictPlace NOTIFY changed FINAL)  // "" for none
  Q_PROPERTY(QString conflict READ conflict NOTIFY changed FINAL)
  Q_PROPERTY(bool conflictIsNotice READ conflictIsNotice NOTIFY changed FINAL)  // nothing is wrong; to be looked at
  Q_PROPERTY(bool conflictIsHere READ conflictIsHere NOTIFY changed FINAL)      // in the section shown
  Q_PROPERTY(int conflictsMore READ conflictsMore NOTIFY changed FINAL)
  Q_PROPERTY(QString mendLabel READ mendLabel NOTIFY changed FINAL)  // "" where none is known
  Q_PROPERTY(QString mendSays READ mendSays NOTIFY changed FINAL)    // what changes; "" where the label says it
  Q_PROPERTY(QString dragged READ dragged NOTIFY changed FINAL)      // measures while an edge is dragged; "" for none
  Q_PROPERTY(View view READ view NOTIFY changed FINAL)
  Q_PROPERTY(bool drawn READ drawn NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)

 public:
  enum class View { Face, Back, Section, Steps, Measures };
  Q_ENUM(View)

  DesignViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  QString title() const;
  RowsModel* steps() { return &m_stepRows; }
  RowsModel* measures() { return &m_measureRows; }
  ChainsModel* chains() { return &m_chains; }
  QString caption() const;
  QString about() const;
  QString conflictPlace() const { return m_conflict.place; }
  QString conflict() const { return m_conflict.said; }
  bool conflictIsNotice() const { return m_conflict.notice; }
  bool conflictIsHere() const { return m_conflict.section == section(); }
  int conflictsMore() const { return m_conflict.more; }
  QString mendSays() const { return m_mend ? m_mend->says : QString(); }
  QString mendLabel() const { return m_mend ? m_mend->label : QString(); }
  bool canUndo() const;
  bool canRedo() const;
  bool holds() const { return m_read.design.has_value(); }
  bool complete() const { return m_composed && !m_read.problems.hasErrors(); }
  QString state() const;
  bool inInches() const { return m_read.design && m_read.design->job.units == core::units::UnitSystem::Inches; }
  QString tally() const { return m_comesTo.section(QLatin1Char('\n'), 0, 0); }
  QString benchReason() const;
  QString comesTo() const { return m_comesTo; }
  QString lacks() const { return m_lacks; }
  QString dragged() const { return m_dragged; }
  View view() const { return m_view; }
  bool drawn() const { return m_drawing.piece != nullptr; }
  PieceDrawing drawing() const { return m_drawing; }
  const std::string& id() const { return m_id; }

  // These return whether there is now a design to show.
  Q_INVOKABLE bool beginFresh();
  // Begins with the design of a job, or of a piece still at the desk, once more; the size of the new work is still to
  // be entered.
  Q_INVOKABLE bool beginAgain(const QString& pieceId);
  bool open(const std::string& designId);
  Q_INVOKABLE bool openDesign(const QString& designId) { return open(designId.toStdString()); }
  // Begins another piece of the same design, for a work of another size.
  Q_INVOKABLE bool sameAgain();

  // Makes the change that settles the conflict; goes to where it is.
  Q_INVOKABLE void mend();
  Q_INVOKABLE void goToConflict();

  Q_INVOKABLE void undo();
  Q_INVOKABLE void redo();
  Q_INVOKABLE void look(View view);
  // The maker drags an edge of the face by hand: grabs it at a place of the piece, in mm, within `reach` mm (returns
  // whether there is one), moves it and lets it go. Only then is it stored, as one change.
  Q_INVOKABLE bool grab(QPointF at, double reach);
  Q_INVOKABLE void drag(QPointF to);
  Q_INVOKABLE void letGo();

  // Takes the piece to the bench; returns whether it is there. Otherwise `refusal` holds the reason.
  Q_INVOKABLE bool toBench();

 signals:
  void onBench(const std::string& jobId);

 protected:
  const core::base::Value* document() const override { return drafted() == nullptr ? nullptr : &drafted()->document; }
  core::base::Message put(const core::base::Value& patch) override;
  void refresh() override;
  Answer answerOf(const designing::Option& option) override;
  Answer answerOfAct(const designing::Field& act) override;
  QDate today() const override;

 private:
  const core::drafts::Drafted* drafted() const { return m_workbench.designs().find(m_id); }
  bool begun(const core::base::Value& document, const std::string& from);
  void draw(const core::design::ReadDesign& read);
  void reckon();
  void tellNotices(std::vector<designing::Section>& sections);
  void weighStock();
  void findConflict();
  void seekMend();
  std::string placeInHand() const;
  std::string revision() const;
  void showSteps();
  void showMeasures();
  QString tollText(const designing::Way& way) const;
  QString tollText(const core::workflow::Agenda& agenda, const core::workflow::Bench& bench) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::string m_id;
  core::design::ReadDesign m_read;
  std::optional<core::workflow::Workflow> m_composed;
  std::optional<core::workflow::Agenda> m_agenda;  // of the composed workflow
  core::workflow::ComposeProblems m_against;       // why there is no composed workflow
  std::optional<designing::Ways> m_ways;           // of the present document
  View m_view = View::Face;
  PieceDrawing m_drawing;
  QString m_comesTo, m_lacks, m_dragged;
  // Sheets are laid out a moment after the last change: that may take longer than a frame.
  QTimer m_weigh;
  RowsModel m_stepRows, m_measureRows;
  ChainsModel m_chains;

  struct Conflict {
    QString place, said;
    std::size_t section = 0;
    int field = -1;  // -1: of the section itself
    bool notice = false;
    int more = 0;
  };
  Conflict m_conflict;
  std::optional<designing::Mend> m_mend;
  // What stock was weighed and a mend sought for last, so that looking round does not do it again.
  std::string m_weighedFor;
  QString m_soughtFor;

  // The edge being dragged.
  struct Held {
    designing::DragHandle handle;
    QPointF from;
    QRectF seen;
    QPointF window;  // the window's position when the drag began
    std::string measure;
  };
  std::optional<Held> m_held;
};

}  // namespace app::viewmodels
