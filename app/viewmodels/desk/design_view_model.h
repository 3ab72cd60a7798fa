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
  Q_PROPERTY(bool complete READ complete NOTIFY changed FINAL)   // the design is complete enough to be made
  Q_PROPERTY(bool holds READ holds NOTIFY changed FINAL)         // measures valid; other entries may be missing
  Q_PROPERTY(QString state READ state NOTIFY changed FINAL)      // what of it is valid, or what is not
  Q_PROPERTY(QString comesTo READ comesTo NOTIFY changed FINAL)  // steps, hands, waits
  Q_PROPERTY(QString lacks READ lacks NOTIFY changed FINAL)      // materials the shop lacks; "" for none known
  Q_PROPERTY(
      app::viewmodels::RowsModel* steps READ steps CONSTANT FINAL)  // the composed workflow, technique by technique
  Q_PROPERTY(QString dragged READ dragged NOTIFY changed FINAL)     // measures while an edge is dragged; "" for none
  Q_PROPERTY(View view READ view NOTIFY changed FINAL)
  Q_PROPERTY(bool drawn READ drawn NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)

 public:
  enum class View { Face, Back, Section, Steps };
  Q_ENUM(View)

  DesignViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  QString title() const;
  RowsModel* steps() { return &m_stepRows; }
  bool canUndo() const;
  bool canRedo() const;
  bool holds() const { return m_read.design.has_value(); }
  bool complete() const { return m_composed && !m_read.problems.hasErrors(); }
  QString state() const;
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
  void showSteps();
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
  RowsModel m_stepRows;

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
