#include "app/designing/builder.h"

#include "app/designing/tr.h"

#include <algorithm>
#include <cmath>

#include "app/convert/text.h"
#include "app/designing/days.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/design/notices.h"
#include "core/units/length_entry.h"

namespace app::designing {

using convert::toQt;
using core::base::Value;

namespace {

Value operation(const char* op, const std::string& pointer) {
  return Value::object().set("op", Value::text(op)).set("path", Value::text(pointer));
}

QString shown(const Value& value) {
  switch (value.kind()) {
    case Value::Kind::Text: return toQt(value.asText());
    case Value::Kind::Number: return toQt(core::base::shortestNumber(value.asNumber()));
    default: return {};
  }
}

// Returns how much of a problem's place a pointer covers, in whole steps only.
std::size_t covers(const std::string& pointer, const std::string& place) {
  if (pointer == place) return pointer.size() + 1;
  return core::base::startsWith(place, pointer + '/') ? pointer.size() : 0;
}

// Returns how many steps two pointers have in common.
std::size_t common(const std::string& a, const std::string& b) {
  std::size_t steps = 0;
  for (std::size_t i = 0; i <= std::min(a.size(), b.size()); ++i) {
    const bool ends = (i == a.size() || a[i] == '/') && (i == b.size() || b[i] == '/');
    if (ends && i > 0) ++steps;
    if (i == a.size() || i == b.size() || a[i] != b[i]) break;
  }
  return steps;
}

}  // namespace

std::string placeOf(const core::base::Problem& problem) {
  const auto* key = problem.message.id == "read.missing-key" ? problem.message.argument("key") : nullptr;
  const auto* name = key == nullptr ? nullptr : std::get_if<std::string>(key);
  return name == nullptr ? problem.pointer : core::base::pointerTo(problem.pointer, *name);
}

QStringList Section::allProblems() const {
  QStringList all = problems;
  for (const Field& field : fields) all += field.problems;
  return all;
}

QStringList Section::missing() const {
  QStringList names;
  for (const Field& field : fields) {
    if (field.missing && !names.contains(field.label)) names << field.label;
  }
  return names;
}

QStringList Section::notices() const {
  QStringList all;
  for (const Field& field : fields) {
    if (field.look) all += field.notices;
  }
  return all;
}

bool Section::hasToLook() const {
  return std::any_of(fields.begin(), fields.end(), [](const Field& field) { return field.look; });
}

QString sizeText(const QString& width, const QString& height) {
  if (width.isEmpty() || height.isEmpty()) return {};
  // One unit for both where they have the same.
  const qsizetype space = width.lastIndexOf(QLatin1Char(' '));
  const QString unit = space < 0 ? QString() : width.mid(space);
  const bool same = !unit.isEmpty() && height.endsWith(unit);
  return tr("%1 × %2").arg(same ? width.left(space) : width, height);
}

QString lengthShown(const Builder& build, double millimetres) {
  return toQt(core::units::lengthText(millimetres, build.units(), core::units::Rounding::Nearest));
}

QString bare(const QString& length) {
  const QLatin1String unit(" mm");
  return length.endsWith(unit) ? length.chopped(unit.size()) : length;
}

QString counted(std::size_t count) { return count == 0 ? tr("none") : QString::number(count); }

Value addTo(const std::string& pointer, Value value) {
  return operation("add", pointer).set("value", std::move(value));
}

Value removeFrom(const std::string& pointer) { return operation("remove", pointer); }

Value patchOf(std::initializer_list<Value> operations) {
  Value patch = Value::array();
  for (const Value& one : operations) patch.append(one);
  return patch;
}

Value putAt(const Value& document, const std::string& pointer, Value value) {
  Value patch = Value::array();
  for (std::size_t end = pointer.find('/', 1); end != std::string::npos; end = pointer.find('/', end + 1)) {
    const std::string above = pointer.substr(0, end);
    if (core::base::at(document, above) == nullptr) patch.append(addTo(above, Value::object()));
  }
  patch.append(addTo(pointer, std::move(value)));
  return patch;
}

Value patchOfEdits(const Value& document, const std::vector<core::design::JobEdit>& edits) {
  Value patch = Value::array();
  for (const core::design::JobEdit& edit : edits) {
    if (edit.value.empty()) {
      patch.append(removeFrom(edit.pointer));
      continue;
    }
    const auto parsed = core::base::parseJson(edit.value);
    const Value put = putAt(document, edit.pointer, parsed.root);
    for (const Value& operation : put.items()) patch.append(operation);
  }
  return patch;
}

void Builder::section(const QString& name, const QString& summary) {
  m_sections.push_back({name, summary, {}, {}});
  of({});
}

void Builder::of(const QString& name, const std::string& element) {
  m_of = name;
  m_element = element;
}

Field& Builder::add(Field::Kind kind, const QString& label, const std::string& pointer, const QString& usual) {
  Field field;
  field.kind = kind;
  field.label = label;
  field.of = m_of;
  field.element = m_element;
  field.pointer = pointer;
  const Value* value = pointer.empty() ? nullptr : at(pointer);
  field.entered = value != nullptr;
  field.value = value == nullptr ? usual : shown(*value);
  return m_sections.back().fields.emplace_back(std::move(field));
}

Field& Builder::length(const QString& label, const std::string& pointer, const QString& usual) {
  return add(Field::Kind::Length, label, pointer, usual);
}

Field& Builder::number(const QString& label, const std::string& pointer, const QString& usual) {
  return add(Field::Kind::Number, label, pointer, usual);
}

Field& Builder::share(const QString& label, const std::string& pointer) {
  Field& field = add(Field::Kind::Number, label, pointer, {});
  field.per = 100;
  const Value* value = at(pointer);
  if (value == nullptr || value->kind() != Value::Kind::Number) return field;
  // A share such as 0.07 is none of the binary numbers; a millionth of a per cent is nobody's.
  constexpr double kFine = 1e6;
  const double percent = std::round(value->asNumber() * field.per * kFine) / kFine;
  field.value = QStringLiteral("%1 %").arg(toQt(core::base::shortestNumber(percent)));
  return field;
}

Field& Builder::text(const QString& label, const std::string& pointer, const QString& usual) {
  return add(Field::Kind::Text, label, pointer, usual);
}

Field& Builder::choice(const QString& label, const std::string& pointer, const std::vector<Named>& options,
                       const char* usual) {
  Field& field = add(Field::Kind::Choice, label, pointer, {});
  const std::string now = field.entered ? textAt(pointer) : usual;
  field.value = toQt(now);
  for (const auto& [written, called] : options) {
    field.options.push_back({called, {}, putAt(m_document, pointer, Value::text(written)), now == written});
    if (now == written) field.value = called;
  }
  return field;
}

Field& Builder::act(const QString& label, Value patch) { return act(label, std::vector<Value>{std::move(patch)}); }

Field& Builder::date(const QString& label, const std::string& pointer) {
  Field& field = add(Field::Kind::Date, label, pointer, {});
  const QDate day = QDate::fromString(field.value, Qt::ISODate);
  field.note = day.isValid() ? dayText(day) : tr("11 December, 11.12. or 2026-12-11: the day before the month");
  return field;
}

Field& Builder::act(const QString& label, const std::vector<Value>& patches) {
  Field& field = add(Field::Kind::Act, label, "", {});
  // What is put in has a plus before it, what is taken out a minus.
  const Value& first = patches.front();
  const Value* op = first.items().empty() ? nullptr : first.items().front().find("op");
  field.value = op != nullptr && op->asText() == "remove" ? QStringLiteral("−") : QStringLiteral("+");
  for (const Value& patch : patches) field.options.push_back({label, {}, patch, false});
  return field;
}

std::string Builder::textAt(const std::string& pointer) const {
  const Value* value = at(pointer);
  return value != nullptr && value->kind() == Value::Kind::Text ? value->asText() : "";
}

std::size_t Builder::countAt(const std::string& pointer) const {
  const Value* value = at(pointer);
  return value != nullptr && value->kind() == Value::Kind::Array ? value->items().size() : 0;
}

QString Builder::figure(const std::string& id) const {
  const auto* figure = design() == nullptr ? nullptr : design()->figures.find(id);
  return figure == nullptr ? QString() : toQt(figure->display);
}

std::string Builder::written(const std::string& id, Usual otherwise) const {
  const auto* figure = design() == nullptr ? nullptr : design()->figures.find(id);
  if (figure == nullptr) return usual(otherwise);
  return core::units::entryText(core::units::onStep(figure->value, m_units, core::design::roundingOf(figure->kind)),
                                m_units);
}

std::vector<Section> Builder::finish() {
  for (const core::base::Problem& problem : m_read.problems.sorted()) {
    place(m_sections, problem, words::text(problem.message, m_units));
  }
  if (design() != nullptr) {
    for (const core::base::Problem& notice : core::design::noticesOf(design()->job)) {
      static_cast<void>(note(m_sections, notice, words::text(notice.message, m_units)));
    }
  }
  return std::move(m_sections);
}

void place(std::vector<Section>& sections, const core::base::Problem& problem, const QString& said) {
  const std::string at = placeOf(problem);
  Field* field = nullptr;
  Section* nearest = &sections.front();
  std::size_t covered = 0;
  std::size_t shared = 0;
  for (Section& section : sections) {
    for (Field& one : section.fields) {
      if (one.pointer.empty()) continue;
      if (const std::size_t much = covers(one.pointer, at); much > covered) {
        covered = much;
        field = &one;
      }
      if (const std::size_t steps = common(one.pointer, at); steps > shared) {
        shared = steps;
        nearest = &section;
      }
    }
  }
  const bool empty = field != nullptr && ((!field->entered && problem.message.id == "read.missing-key") ||
                                          (field->value.isEmpty() && problem.message.id == "read.empty-text"));
  if (empty) {
    field->missing = true;
  } else {
    (field != nullptr ? field->problems : nearest->problems) << said;
  }
}

bool note(std::vector<Section>& sections, const core::base::Problem& notice, const QString& said) {
  for (Section& section : sections) {
    for (Field& field : section.fields) {
      if (field.pointer.empty() || field.pointer != notice.pointer) continue;
      const QString sentence = words::capitalised(said);
      field.note = field.note.isEmpty() ? sentence : field.note + QLatin1Char('\n') + sentence;
      // No spacer, entered, is a decision.
      if (!(field.entered && notice.message.id == "design.face-touches-glazing")) {
        field.look = true;
        field.notices << sentence;
      }
      return true;
    }
  }
  return false;
}

}  // namespace app::designing
