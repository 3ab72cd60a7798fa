#include "app/designing/entries.h"

#include <algorithm>
#include <set>

#include "app/convert/text.h"
#include "app/designing/samples.h"
#include "app/designing/tr.h"
#include "app/words/words.h"
#include "core/workflow/fill.h"

namespace app::designing {

using convert::toQt;
using core::base::pointerTo;
using core::base::Value;

namespace {

// The first of "inner", "inner-2" ... that nothing on the piece is called.
std::string freeId(const Builder& build, const std::string& wanted) {
  std::set<std::string> taken;
  for (const char* list : {"/mount/boards", "/bands", "/lines", "/spandrels", "/washes", "/leaf"}) {
    for (const std::string& id : idsOf(build, list)) taken.insert(id);
  }
  std::string id = wanted;
  for (int number = 2; taken.contains(id); ++number) id = wanted + '-' + std::to_string(number);
  return id;
}

}  // namespace

std::vector<Named> named(const char* property, std::initializer_list<const char*> values) {
  std::vector<Named> all;
  for (const char* value : values) {
    all.emplace_back(value, words::property(QString::fromLatin1(property), QString::fromLatin1(value)));
  }
  return all;
}

QString entryName(const QString& pattern, const std::string& id) {
  const QString place = QStringLiteral("{id}");
  return toQt(core::workflow::sayingOnce(pattern.arg(place).toStdString(), id)).replace(place, toQt(id));
}

std::vector<std::string> idsOf(const Builder& build, const std::string& list) {
  std::vector<std::string> ids;
  eachOf(build, list, [&](const std::string&, const std::string& id) { ids.push_back(id); });
  return ids;
}

std::string freeName(const Builder& build, std::initializer_list<const char*> words) {
  for (const char* word : words) {
    if (freeId(build, word) == word) return word;
  }
  return freeId(build, *words.begin());
}

Value appended(const Builder& build, const std::string& list, Value entry) {
  return build.at(list) == nullptr ? patchOf({addTo(list, Value::array().append(std::move(entry)))})
                                   : patchOf({addTo(list + "/-", std::move(entry))});
}

void leaveOut(Builder& build, const QString& label, const std::string& list) {
  if (const std::size_t count = build.countAt(list))
    build.act(label, patchOf({removeFrom(pointerTo(list, count - 1))}));
}

Value entryOf(const std::string& id) { return Value::object().set("id", Value::text(id)); }

namespace {

// Names whose words tell what it looks like.
const std::vector<std::string>& usualNames(Material of) {
  static const std::vector<std::string> kBoards = {"white board",      "cream board", "pale stone board",
                                                   "pale slate board", "sand board",  "black board"};
  static const std::vector<std::string> kPapers = {"plain paper",  "wave paper",   "reed paper", "scale paper",
                                                   "rope paper",   "key paper",    "comb paper", "laid paper",
                                                   "ripple paper", "lozenge paper"};
  static const std::vector<std::string> kWashes = {"indigo",    "sea green", "ochre", "sienna",
                                                   "verdigris", "madder",    "slate", "sepia"};
  switch (of) {
    case Material::Board: return kBoards;
    case Material::Paper: return kPapers;
    case Material::Wash: return kWashes;
  }
  return kBoards;
}

Sample looks(Material of, const std::string& name, bool repeats) {
  switch (of) {
    case Material::Board: return sampleOf(core::sheets::Substance::Board, name);
    case Material::Paper: return paperSample(name, repeats);
    case Material::Wash: return sampleOf(core::sheets::Substance::Wash, name);
  }
  return nullptr;
}

}  // namespace

Field& material(Builder& build, const QString& label, const std::string& pointer, Material of) {
  Field& field = build.text(label, pointer);
  const std::string now = build.textAt(pointer);
  const bool repeats = build.at(pointer.substr(0, pointer.rfind('/')) + "/repeat") != nullptr;
  field.sample = looks(of, now, repeats);
  std::vector<std::string> names = of == Material::Board   ? build.atHand().boards
                                   : of == Material::Paper ? build.atHand().papers
                                                           : std::vector<std::string>();
  for (const std::string& usual : usualNames(of)) {
    if (std::find(names.begin(), names.end(), usual) == names.end()) names.push_back(usual);
  }
  for (const std::string& name : names) {
    field.options.push_back({toQt(name),
                             {},
                             putAt(build.document(), pointer, Value::text(name)),
                             name == now,
                             looks(of, name, repeats && name == now)});
  }
  return field;
}

Field& colour(Builder& build, const QString& label, const std::string& pointer) {
  std::vector<Named> names = colours();
  const std::string now = build.textAt(pointer);
  const bool known = std::any_of(names.begin(), names.end(), [&](const Named& one) { return now == one.first; });
  if (!now.empty() && !known) names.emplace_back(now.c_str(), toQt(now));
  Field& field = build.choice(label, pointer, names);
  for (std::size_t i = 0; i < names.size(); ++i) {
    field.options[i].sample = sampleOf(core::sheets::Substance::Pigment, names[i].first);
  }
  field.sample = sampleOf(core::sheets::Substance::Pigment, now);
  return field;
}

std::vector<Named> colours() {
  return {{"copper", tr("copper")}, {"bronze", tr("bronze")},        {"gold", tr("gold")},
          {"silver", tr("silver")}, {"black", tr("black")},          {"white", tr("white")},
          {"indigo", tr("indigo")}, {"reed green", tr("reed green")}};
}

QString noted(const QString& figure, const char* text) { return figure.isEmpty() ? QString() : tr(text).arg(figure); }

}  // namespace app::designing
