#include "app/viewmodels/desk/form_view_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/designing/days.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::fromQt;
using core::base::Message;
using core::base::Value;
using designing::Field;

namespace {

PieceDrawing drawingOf(const designing::Sample& sample) {
  PieceDrawing drawing;
  drawing.piece = sample;
  return drawing;
}

}  // namespace

QString FormViewModel::sectionName() const { return m_sections.empty() ? QString() : m_sections[m_section].name; }

QString FormViewModel::sectionProblem() const {
  return m_sections.empty() ? QString() : convert::lines(m_sections[m_section].problems);
}

const designing::Field* FormViewModel::field() const {
  if (m_sections.empty() || m_field < 0) return nullptr;
  const auto& fields = m_sections[m_section].fields;
  const auto index = static_cast<std::size_t>(m_field);
  return index < fields.size() && fields[index].kind != Field::Kind::Act ? &fields[index] : nullptr;
}

FormViewModel::Entering FormViewModel::entering() const {
  if (field() == nullptr) return Entering::Nothing;
  switch (field()->kind) {
    case Field::Kind::Length: return Entering::Length;
    case Field::Kind::Number: return Entering::Number;
    case Field::Kind::Text:
    case Field::Kind::Date: return Entering::Text;
    case Field::Kind::Choice: return Entering::Choice;
    case Field::Kind::Act: break;
  }
  return Entering::Nothing;
}

QString FormViewModel::fieldLabel() const {
  if (field() == nullptr) return {};
  return field()->of.isEmpty() ? capitalised(field()->label) : capitalised(field()->of) + tr(", ") + field()->label;
}

QString FormViewModel::fieldValue() const { return field() == nullptr ? QString() : field()->value; }

QString FormViewModel::fieldNote() const {
  if (field() == nullptr) return {};
  // What a measure comes to is shown while it is keyed in, before it is entered.
  if (field()->keyed && !m_entry.empty()) {
    if (const auto length = m_entry.length()) {
      const auto comes = field()->keyed(length.value());
      return comes.barred.isEmpty() ? comes.says : comes.barred;
    }
  }
  return field()->note;
}

QString FormViewModel::fieldProblem() const {
  return field() == nullptr ? QString() : convert::lines(field()->problems);
}

QString FormViewModel::unit() const {
  if (entering() != Entering::Number) return m_entry.unit();
  return field()->per == 100 ? QStringLiteral("%") : QString();
}

void FormViewModel::chooseSection(int section) {
  if (section < 0 || section >= static_cast<int>(m_sections.size())) return;
  m_section = static_cast<std::size_t>(section);
  m_field = -1;
  m_refusal.clear();
  refresh();
}

void FormViewModel::chooseField(int field) {
  if (m_sections.empty() || field < 0 || field >= static_cast<int>(m_sections[m_section].fields.size())) return;
  m_refusal.clear();
  const Field& chosen = m_sections[m_section].fields[static_cast<std::size_t>(field)];
  if (chosen.kind == Field::Kind::Act) {
    const Answer answer = answerOfAct(chosen);
    if (answer.barred.isEmpty()) {
      change(answer.patch);
    } else {
      refuse(answer.barred);
    }
    return;
  }
  m_field = field;
  m_entry = NumberEntry(m_entry.units());
  refresh();
}

void FormViewModel::nextField() {
  if (m_sections.empty()) return;
  const auto& fields = m_sections[m_section].fields;
  int next = m_field + 1;
  while (next < static_cast<int>(fields.size()) && fields[static_cast<std::size_t>(next)].kind == Field::Kind::Act) {
    ++next;
  }
  if (next < static_cast<int>(fields.size())) {
    chooseField(next);
  } else {
    leaveField();
  }
}

void FormViewModel::leaveField() {
  m_field = -1;
  m_refusal.clear();
  refresh();
}

void FormViewModel::chooseOption(int option) {
  if (field() == nullptr || option < 0 || option >= static_cast<int>(field()->options.size())) return;
  if (field()->options[static_cast<std::size_t>(option)].chosen) return leaveField();
  const Answer answer = m_answers[static_cast<std::size_t>(option)];
  if (!answer.barred.isEmpty()) return refuse(answer.barred);
  if (change(answer.patch)) leaveField();
}

void FormViewModel::digit(int digit) {
  m_entry.digit(digit);
  emit changed();
}

void FormViewModel::part() {
  m_entry.part();
  emit changed();
}

void FormViewModel::erase() {
  m_entry.erase();
  emit changed();
}

void FormViewModel::turnUnits() {
  m_entry.turnUnits();
  emit changed();
}

bool FormViewModel::keep() {
  if (field() == nullptr || m_entry.empty()) return field() != nullptr;
  const auto length = m_entry.length();
  if (!length) {
    told(length.error());
    return false;
  }
  if (field()->keyed) {
    const auto comes = field()->keyed(length.value());
    if (!comes.barred.isEmpty()) {
      refuse(comes.barred);
      return false;
    }
    return change(comes.patch);
  }
  Value value;
  if (entering() == Entering::Number) {
    // Whole numbers stay whole: lobes and degrees are counted, shares are not.
    const double number = length.value().inMillimetres() / field()->per;
    const auto rounded = static_cast<std::int64_t>(number);
    value = static_cast<double>(rounded) == number ? Value::integer(rounded) : Value::number(number);
  } else {
    value = Value::text(m_entry.text());
  }
  return change(designing::putAt(*document(), field()->pointer, value));
}

bool FormViewModel::keepText(const QString& text) {
  if (field() == nullptr) return false;
  const QString plain = text.trimmed();
  if (plain.isEmpty()) {
    takeOut();
    return true;
  }
  std::string value = fromQt(plain);
  if (field()->kind == Field::Kind::Date) {
    const auto day =
        designing::readDay(plain, today(), field()->past ? designing::Nearest::Past : designing::Nearest::Coming);
    if (!day) {
      told(day.error());
      return false;
    }
    value = fromQt(day.value().toString(Qt::ISODate));
  }
  return change(designing::putAt(*document(), field()->pointer, Value::text(value)));
}

void FormViewModel::takeOut() {
  if (field() == nullptr || !field()->entered || field()->pointer.empty()) return;
  Value patch = Value::array();
  patch.append(Value::object().set("op", Value::text("remove")).set("path", Value::text(field()->pointer)));
  change(patch);
}

bool FormViewModel::change(const Value& patch) {
  const Message refused = put(patch);
  told(refused);
  if (!refused.id.empty()) return false;
  m_entry.clear();
  emit changed();
  return true;
}

void FormViewModel::told(const Message& refused) {
  refuse(refused.id.empty() ? QString() : words::text(refused, m_entry.units()));
}

void FormViewModel::refuse(const QString& why) {
  m_refusal = why;
  emit changed();
}

void FormViewModel::restart(core::units::UnitSystem units) {
  m_section = 0;
  m_field = -1;
  m_refusal.clear();
  m_entry = NumberEntry(units);
}

void FormViewModel::show(std::vector<designing::Section> sections) {
  m_sections = std::move(sections);
  m_section = m_sections.empty() ? 0 : std::min(m_section, m_sections.size() - 1);
  showFields();
  showOptions();
}

void FormViewModel::showFields() {
  std::vector<RowsModel::Row> rows;
  for (std::size_t i = 0; i < m_sections.size(); ++i) {
    const designing::Section& section = m_sections[i];
    const QStringList wrong = section.allProblems();
    const QStringList missing = section.missing();
    RowsModel::Row row;
    row.title = section.name;
    row.value = missing.isEmpty()     ? section.summary
                : missing.size() == 1 ? tr("to enter: %1").arg(missing.front())
                                      : tr("%1 to enter").arg(missing.size());
    row.missing = !missing.isEmpty();
    row.notice = wrong.isEmpty() && section.hasToLook();
    row.problem = convert::lines(row.notice ? section.notices() : wrong);
    row.chosen = i == m_section;
    rows.push_back(std::move(row));
  }
  m_sectionRows.show(std::move(rows));
  rows = {};
  QString above;
  const auto& fields = m_sections[m_section].fields;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    const Field& one = fields[i];
    rows.push_back({one.label,
                    one.of == above ? QString() : one.of,
                    one.value,
                    one.note,
                    convert::lines(one.problems),
                    static_cast<int>(i) == m_field,
                    one.kind == Field::Kind::Act,
                    {},
                    one.missing,
                    false,
                    drawingOf(one.sample)});
    above = one.of;
  }
  m_fieldRows.show(std::move(rows));
}

void FormViewModel::showOptions() {
  std::vector<RowsModel::Row> rows;
  m_answers.clear();
  if (field() != nullptr) {
    designing::Field& opened = m_sections[m_section].fields[static_cast<std::size_t>(m_field)];
    if (opened.options.empty() && opened.offers) opened.options = opened.offers();
    for (const designing::Option& option : opened.options) {
      const Answer& answer = m_answers.emplace_back(answerOf(option));
      rows.push_back({option.label,
                      {},
                      {},
                      answer.barred.isEmpty() ? answer.why : answer.barred,
                      answer.barred,
                      option.chosen,
                      false,
                      {},
                      false,
                      false,
                      drawingOf(option.sample)});
    }
  }
  m_reasons = std::any_of(rows.begin(), rows.end(), [](const RowsModel::Row& row) { return !row.note.isEmpty(); });
  m_optionRows.show(std::move(rows));
}

}  // namespace app::viewmodels
