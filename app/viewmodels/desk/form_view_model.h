#pragma once
// Fields in sections, entered one by one on a pad, as a choice or as a line of text. An entry is a patch of a document;
// the derived class decides where the document is stored.
#include <QtQml/qqmlregistration.h>
#include <QDate>
#include <QObject>
#include <QString>
#include <vector>

#include "app/designing/fields.h"
#include "app/viewmodels/number_entry.h"
#include "app/viewmodels/rows_model.h"

namespace app::viewmodels {

class FormViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(app::viewmodels::RowsModel* sections READ sections CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* fields READ fields CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* options READ options CONSTANT FINAL)  // of the field being edited
  Q_PROPERTY(bool optionsHaveReasons READ optionsHaveReasons NOTIFY changed FINAL)
  Q_PROPERTY(QString sectionName READ sectionName NOTIFY changed FINAL)
  Q_PROPERTY(QString sectionProblem READ sectionProblem NOTIFY changed FINAL)
  // These describe the field being edited.
  Q_PROPERTY(Entering entering READ entering NOTIFY changed FINAL)
  Q_PROPERTY(int fieldIndex READ fieldIndex NOTIFY changed FINAL)       // in `fields`; -1 for none
  Q_PROPERTY(bool optionsPlain READ optionsPlain NOTIFY changed FINAL)  // their samples stand without words
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

 public:
  enum class Entering { Nothing, Length, Number, Text, Choice };
  Q_ENUM(Entering)

  using QObject::QObject;

  RowsModel* sections() { return &m_sectionRows; }
  RowsModel* fields() { return &m_fieldRows; }
  RowsModel* options() { return &m_optionRows; }
  bool optionsHaveReasons() const { return m_reasons; }
  QString sectionName() const;
  QString sectionProblem() const;
  Entering entering() const;
  int fieldIndex() const { return field() == nullptr ? -1 : m_field; }
  bool optionsPlain() const { return field() != nullptr && field()->plain; }
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

  Q_INVOKABLE void chooseSection(int section);
  Q_INVOKABLE void chooseField(int field);
  // Goes to the next field of the section; after the last no field is being edited.
  Q_INVOKABLE void nextField();
  Q_INVOKABLE void leaveField();
  Q_INVOKABLE void chooseOption(int option);
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  Q_INVOKABLE void turnUnits();
  // Stores the entry keyed in or written; returns whether it was stored. An empty text removes the value.
  Q_INVOKABLE bool keep();
  Q_INVOKABLE bool keepText(const QString& text);
  // Removes the entry, where there is a value that applies without one.
  Q_INVOKABLE void takeOut();

 signals:
  void changed();

 protected:
  // Returns null where there is nothing to enter into.
  virtual const core::base::Value* document() const = 0;
  // Stores a change of the document, or returns why it cannot; `refresh` follows where it was stored.
  virtual core::base::Message put(const core::base::Value& patch) = 0;
  // Builds everything shown again.
  virtual void refresh() = 0;
  // An answer that can be chosen, and the texts shown with it.
  struct Answer {
    core::base::Value patch;
    QString why;
    QString barred;  // why it cannot be chosen; "" where it can
  };
  virtual Answer answerOf(const designing::Option& option) { return {option.patch, option.why, {}}; }
  virtual Answer answerOfAct(const designing::Field& act) { return answerOf(act.options.front()); }
  // Returns today's date where the maker is.
  virtual QDate today() const { return QDate::currentDate(); }

  // Shows the sections of the present document; the field being edited stays the same.
  void show(std::vector<designing::Section> sections);
  // Goes to the first section; lengths are keyed in these units.
  void restart(core::units::UnitSystem units);
  bool change(const core::base::Value& patch);
  // Shows why something was not done; an empty message clears it.
  void told(const core::base::Message& refused);
  void refuse(const QString& why);
  const designing::Field* field() const;
  const std::vector<designing::Section>& shown() const { return m_sections; }
  std::size_t section() const { return m_section; }
  core::units::UnitSystem units() const { return m_entry.units(); }

  QString m_refusal;

 private:
  void showFields();
  void showOptions();

  std::vector<designing::Section> m_sections;
  std::size_t m_section = 0;
  int m_field = -1;
  NumberEntry m_entry;
  bool m_reasons = false;
  std::vector<Answer> m_answers;  // for the field being edited, as its options
  RowsModel m_sectionRows, m_fieldRows, m_optionRows;
};

}  // namespace app::viewmodels
