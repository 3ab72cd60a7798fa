#pragma once
// A design at the desk: sections and fields, what is keyed in, the drawing as it grows, what comes of it. Every change
// is kept at once; taking back and bringing again go through the record.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <string>

#include "app/designing/drag.h"
#include "app/designing/fields.h"
#include "app/viewmodels/number_entry.h"
#include "app/viewmodels/piece_drawing.h"
#include "app/viewmodels/rows_model.h"
#include "app/workbench/workbench.h"
#include "core/workflow/workflow.h"

namespace app::viewmodels {

class DesignViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* sections READ sections CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* fields READ fields CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* options READ options CONSTANT FINAL)  // of the field being worked
  Q_PROPERTY(bool optionsHaveReasons READ optionsHaveReasons NOTIFY changed FINAL)
  Q_PROPERTY(QString sectionName READ sectionName NOTIFY changed FINAL)
  Q_PROPERTY(QString sectionProblem READ sectionProblem NOTIFY changed FINAL)
  // The field being worked.
  Q_PROPERTY(Entering entering READ entering NOTIFY changed FINAL)
  Q_PROPERTY(QString fieldLabel READ fieldLabel NOTIFY changed FINAL)
  Q_PROPERTY(QString fieldValue READ fieldValue NOTIFY changed FINAL)
  Q_PROPERTY(QString fieldNote READ fieldNote NOTIFY changed FINAL)
  Q_PROPERTY(QString fieldProblem READ fieldProblem NOTIFY changed FINAL)
  Q_PROPERTY(bool keyed READ keyed NOTIFY changed FINAL)
  Q_PROPERTY(bool inches READ inches NOTIFY changed FINAL)
  Q_PROPERTY(QString whole READ whole NOTIFY changed FINAL)
  Q_PROPERTY(bool fraction READ fraction NOTIFY changed FINAL)
  Q_PROPERTY(QString numerator READ numerator NOTIFY changed FINAL)
  Q_PROPERTY(QString denominator READ denominator NOTIFY changed FINAL)
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)

  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
  Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed FINAL)
  Q_PROPERTY(bool complete READ complete NOTIFY changed FINAL)   // a job that could be made
  Q_PROPERTY(QString state READ state NOTIFY changed FINAL)      // what of it holds, or what does not
  Q_PROPERTY(QString comesTo READ comesTo NOTIFY changed FINAL)  // steps, hands, waits
  Q_PROPERTY(
      app::viewmodels::RowsModel* steps READ steps CONSTANT FINAL)  // the composed workflow, technique by technique
  Q_PROPERTY(QString dragged READ dragged NOTIFY changed FINAL)     // what an edge in the hand comes to; "" for none
  Q_PROPERTY(View view READ view NOTIFY changed FINAL)
  Q_PROPERTY(bool drawn READ drawn NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)

 public:
  enum class Entering { Nothing, Length, Number, Text, Choice };
  Q_ENUM(Entering)
  enum class View { Face, Back, Section, Steps };
  Q_ENUM(View)

  explicit DesignViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  QString title() const;
  RowsModel* sections() { return &m_sectionRows; }
  RowsModel* fields() { return &m_fieldRows; }
  RowsModel* options() { return &m_optionRows; }
  RowsModel* steps() { return &m_stepRows; }
  bool optionsHaveReasons() const { return m_reasons; }
  QString sectionName() const;
  QString sectionProblem() const;
  Entering entering() const;
  QString fieldLabel() const;
  QString fieldValue() const;
  QString fieldNote() const;
  QString fieldProblem() const;
  bool keyed() const { return !m_entry.empty(); }
  bool inches() const { return m_entry.units() == core::units::UnitSystem::Inches; }
  QString whole() const { return m_entry.whole(); }
  bool fraction() const { return m_entry.fraction(); }
  QString numerator() const { return m_entry.numerator(); }
  QString denominator() const { return m_entry.denominator(); }
  QString unit() const;
  QString refusal() const { return m_refusal; }
  bool canUndo() const;
  bool canRedo() const;
  bool complete() const { return m_read.design.has_value(); }
  QString state() const;
  QString comesTo() const { return m_comesTo; }
  QString dragged() const { return m_dragged; }
  View view() const { return m_view; }
  bool drawn() const { return m_drawing.piece != nullptr; }
  PieceDrawing drawing() const { return m_drawing; }
  const std::string& id() const { return m_id; }

  // Each returns whether there is now a design to show.
  Q_INVOKABLE bool beginFresh();
  // The design of a job, or of a piece still at the desk, again: the same design, the size of another work still to be entered.
  Q_INVOKABLE bool beginAgain(const QString& pieceId);
  bool open(const std::string& designId);
  Q_INVOKABLE bool openDesign(const QString& designId) { return open(designId.toStdString()); }
  // Another piece of the same design, for a work of another size.
  Q_INVOKABLE bool sameAgain();

  Q_INVOKABLE void chooseSection(int section);
  Q_INVOKABLE void chooseField(int field);
  // To the next field of the section, or none after the last.
  Q_INVOKABLE void nextField();
  Q_INVOKABLE void leaveField();
  Q_INVOKABLE void chooseOption(int option);
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  Q_INVOKABLE void turnUnits();
  // Keeps what is keyed in or written; returns whether it was kept. An empty text takes the value out.
  Q_INVOKABLE bool keep();
  Q_INVOKABLE bool keepText(const QString& text);
  // Back to what holds without an entry, where there is something that does.
  Q_INVOKABLE void takeOut();
  Q_INVOKABLE void undo();
  Q_INVOKABLE void redo();
  Q_INVOKABLE void look(View view);
  // An edge of the face drawn with the hand: taken hold of at a place of the piece, in mm, within `reach` mm (returns
  // whether there is one), moved, and let go. Only then is it kept, as one change.
  Q_INVOKABLE bool grab(QPointF at, double reach);
  Q_INVOKABLE void drag(QPointF to);
  Q_INVOKABLE void letGo();

  // Takes the piece to the bench; returns whether it is there. What stands against it is then the refusal.
  Q_INVOKABLE bool toBench();

 signals:
  void changed();
  void onBench(const std::string& jobId);

 private:
  const core::record::Drafted* drafted() const { return m_workbench.designs().find(m_id); }
  const designing::Field* field() const;
  bool begun(const core::base::Value& document, const std::string& from);
  bool change(const core::base::Value& patch);
  void told(const core::base::Message& refused);
  void refresh();
  void showFields();
  void showOptions();
  void draw(const core::design::ReadDesign& read);
  void reckon();
  void showSteps();
  QString tollText(const core::base::Value& document) const;

  workbench::Workbench& m_workbench;
  std::string m_id;
  core::design::ReadDesign m_read;
  std::optional<core::workflow::Workflow> m_composed;
  std::vector<designing::Section> m_sections;
  std::size_t m_section = 0;
  int m_field = -1;
  NumberEntry m_entry;
  View m_view = View::Face;
  PieceDrawing m_drawing;
  QString m_refusal, m_comesTo, m_dragged;
  RowsModel m_sectionRows, m_fieldRows, m_optionRows, m_stepRows;

  // An edge in the hand.
  struct Held {
    designing::DragHandle handle;
    QPointF from;
    QRectF seen;
    QPointF window;  // where the window stood
    std::string measure;
  };
  std::optional<Held> m_held;
  bool m_reasons = false;
};

}  // namespace app::viewmodels
