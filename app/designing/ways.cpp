#include "app/designing/ways.h"

#include <algorithm>

#include "app/designing/builder.h"
#include "app/designing/reading.h"
#include "app/words/words.h"

namespace app::designing {

using core::base::Problem;
using core::base::Severity;
using core::base::Value;

namespace {

// Returns a key of a reason from its place and message without its measures, which change with everything else.
std::string keyOf(const Problem& problem) {
  std::string key = problem.pointer + ' ' + problem.message.id;
  for (const auto& [name, value] : problem.message.arguments) {
    if (const auto* text = std::get_if<std::string>(&value)) key += ' ' + name + '=' + *text;
  }
  return key;
}

// Returns whether a patch sets that very value.
bool sets(const Value& patch, const std::string& pointer) {
  return std::any_of(patch.items().begin(), patch.items().end(), [&](const Value& operation) {
    const Value* path = operation.find("path");
    return path != nullptr && path->asText() == pointer;
  });
}

QString sentence(QString text) {
  text = words::capitalised(text);
  return text.endsWith(u'.') ? text : text + u'.';
}

}  // namespace

Value sized(const Value& document) {
  Value some = document;
  for (const auto& [place, size] : {std::pair{"/artwork/width", "300 mm"}, std::pair{"/artwork/height", "240 mm"}}) {
    if (core::base::at(some, place) != nullptr) continue;
    if (auto patched = core::base::patched(some, putAt(some, place, Value::text(size)))) {
      some = std::move(patched).value();
    }
  }
  return some;
}

QString reasonText(const core::workflow::ComposeProblem& problem, core::units::UnitSystem units) {
  return sentence(words::text(problem.problem.message, units));
}

Ways::Standing Ways::standing(const Value& document, bool measures) const {
  Standing found;
  auto read = readForNow(document);
  if (measures) {
    for (const Problem& problem : read.problems.sorted()) {
      if (problem.severity != Severity::Error || standsAside(placeOf(problem))) continue;
      found.problems.add(problem);
      found.reasons.insert(keyOf(problem));
      found.said.emplace(words::text(problem.message, m_units), keyOf(problem));
    }
  }
  if (!read.design) return found;
  auto composed = core::workflow::compose(*read.design, m_catalogue, words::thingWords());
  if (composed) {
    found.comes.emplace(Way::Comes{*std::move(read.design), std::move(composed).value()});
    return found;
  }
  found.against = std::move(composed).error();
  for (const auto& told : found.against) {
    found.reasons.insert(keyOf(told.problem));
    found.said.emplace(reasonText(told, m_units), keyOf(told.problem));
  }
  return found;
}

const Ways::Standing& Ways::before(bool measures) {
  auto& known = measures ? m_beforeMeasured : m_before;
  if (!known) known = standing(measures ? sized(m_document) : m_document, measures);
  return *known;
}

Way Ways::taken(const Value& document, const Value& patch, bool measures) {
  Way way;
  way.patch = patch;
  // Each turn settles one more value.
  constexpr int kMostTurns = 8;
  for (int turn = 0; turn < kMostTurns; ++turn) {
    const auto patched = core::base::patched(document, way.patch);
    if (!patched) {
      way.barred = words::text(patched.error(), m_units);
      return way;
    }
    Standing after = standing(patched.value(), measures);
    const auto& known = before(measures).reasons;
    for (const Problem& problem : after.problems.sorted()) {
      if (known.contains(keyOf(problem))) continue;
      way.barred = sentence(words::text(problem.message, m_units));
      return way;
    }
    const auto fresh = std::find_if(after.against.begin(), after.against.end(),
                                    [&](const auto& told) { return !known.contains(keyOf(told.problem)); });
    if (fresh == after.against.end()) {
      way.comes = std::move(after.comes);
      if (!after.against.empty()) way.wanting = reasonText(after.against.front(), m_units);
      return way;
    }
    const std::string& pointer = fresh->problem.pointer;
    if (fresh->instead.empty() || sets(way.patch, pointer)) {
      way.barred = reasonText(*fresh, m_units);
      return way;
    }
    const std::string& instead = fresh->instead.front();
    way.patch.append(addTo(pointer, Value::text(instead)));
    const QString key = QString::fromStdString(pointer.substr(pointer.rfind('/') + 1));
    if (!way.with.isEmpty()) way.with += QStringLiteral(", ");
    way.with += words::property(key, QString::fromStdString(instead));
  }
  return way;
}

Way Ways::of(const Value& patch) { return taken(m_document, patch, false); }

Way Ways::ofAct(const Field& act) {
  if (act.options.size() == 1) return of(act.options.front().patch);
  const Value document = sized(m_document);
  std::optional<Way> first;
  for (const Option& option : act.options) {
    Way way = taken(document, option.patch, true);
    if (way.barred.isEmpty()) return way;
    if (!first) first = std::move(way);
  }
  return first ? *std::move(first) : Way();
}

}  // namespace app::designing
