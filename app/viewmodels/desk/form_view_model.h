#pragma once
// Fields in sections, entered one by one on a pad, as a choice or as a line of text. What a field takes is a patch of a
// document; where that is kept is for whoever derives from this.
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

 signals:
  void changed();

 protected:
  // Null where there is nothing to enter into.
  virtual const core::base::Value* document() const = 0;
  // Keeps a change of the document, or says why not; `refresh` follows where it was kept.
  virtual core::base::Message put(const core::base::Value& patch) = 0;
  // Everything shown is made anew.
  virtual void refresh() = 0;
  // An answer as it can be taken, and what is said of it.
  struct Answer {
    core::base::Value patch;
    QString why;
    QString barred;  // why it cannot be taken; "" where it can
  };
  virtual Answer answerOf(const designing::Option& option) { return {option.patch, option.why, {}}; }
  virtual Answer answerOfAct(const designing::Field& act) { return answerOf(act.options.front()); }
  // The day it is where the maker is.
  virtual QDate today() const { return QDate::currentDate(); }

  // The sections of the document as it is now, the one being worked kept.
  void show(std::vector<designing::Section> sections);
  // Goes to the first section, with lengths keyed in these units.
  void restart(core::units::UnitSystem units);
  bool change(const core::base::Value& patch);
  // Says why something was not done; an empty message clears it.
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
  std::vector<Answer> m_answers;  // to the field being worked, as its options
  RowsModel m_sectionRows, m_fieldRows, m_optionRows;
};

}  // namespace app::viewmodels
