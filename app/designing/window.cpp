// The window's shape: a choice of forms, each begun in proportion to what shows, and the measures of the one chosen.
#include <algorithm>

#include "app/designing/ornament.h"
#include "app/designing/tr.h"

namespace app::designing {

using core::base::Value;

namespace {

struct Parameter {
  const char* key;
  double share;  // of the width that shows
};

struct Form {
  const char* shape;
  const char* head;  // "" for none
  const char* called;
  std::vector<Parameter> parameters;
};

// Shares that make a form of its kind at any size; only to begin from.
const std::vector<Form>& forms() {
  static const std::vector<Form> kForms = {
      {"rectangle", "", QT_TRANSLATE_NOOP("design", "rectangle"), {}},
      {"rounded", "", QT_TRANSLATE_NOOP("design", "rounded corners"), {{"corner", 0.08}}},
      {"scalloped", "", QT_TRANSLATE_NOOP("design", "scalloped corners"), {{"corner", 0.08}}},
      {"chamfered", "", QT_TRANSLATE_NOOP("design", "chamfered corners"), {{"corner", 0.08}}},
      {"oval", "", QT_TRANSLATE_NOOP("design", "oval"), {}},
      {"round", "", QT_TRANSLATE_NOOP("design", "round"), {}},
      {"arch", "round", QT_TRANSLATE_NOOP("design", "round arch"), {}},
      {"arch", "segmental", QT_TRANSLATE_NOOP("design", "segmental arch"), {{"rise", 0.25}}},
      {"arch", "pointed", QT_TRANSLATE_NOOP("design", "pointed arch"), {{"rise", 0.87}}},
      {"arch", "fourCentred", QT_TRANSLATE_NOOP("design", "four-centred arch"), {{"rise", 0.37}, {"radius", 0.167}}},
      {"arch", "basket", QT_TRANSLATE_NOOP("design", "basket arch"), {{"rise", 0.35}, {"radius", 0.2}}},
      {"arch", "ogee", QT_TRANSLATE_NOOP("design", "ogee"), {{"rise", 0.6}, {"radius", 0.333}}},
      {"arch", "horseshoe", QT_TRANSLATE_NOOP("design", "horseshoe arch"), {{"rise", 0.68}}},
      {"arch",
       "trefoil",
       QT_TRANSLATE_NOOP("design", "trefoil"),
       {{"sideRadius", 0.208}, {"topRadius", 0.292}, {"topCentre", 0.333}}},
      {"arch", "multifoil", QT_TRANSLATE_NOOP("design", "multifoil"), {}},
  };
  return kForms;
}

QString called(const std::string& parameter) {
  if (parameter == "corner") return tr("corner");
  if (parameter == "rise") return tr("rise of the head");
  if (parameter == "radius") return tr("radius at the springing");
  if (parameter == "sideRadius") return tr("radius of the side lobes");
  if (parameter == "topRadius") return tr("radius of the top lobe");
  return tr("its centre above the springing");
}

// Returns the width that shows, as far as it follows from the entries.
double shownWidth(const Builder& build) {
  constexpr double kSomeWidth = 300;
  const auto width = core::units::parseLength(build.textAt("/artwork/width"));
  if (!width) return kSomeWidth;
  const auto cover = core::units::parseLength(build.textAt("/mount/window/overlap"));
  const double less = cover ? 2 * cover.value().length.inMillimetres() : 0;
  return std::max(1.0, width.value().length.inMillimetres() - less);
}

Value windowOf(const Builder& build, const Form& form) {
  Value window = Value::object();
  window.set("shape", Value::text(form.shape));
  if (*form.head != 0) window.set("head", Value::text(form.head));
  for (const Parameter& one : form.parameters) {
    window.set(one.key, Value::text(wholeInSteps(one.share * shownWidth(build), build.units())));
  }
  constexpr int kAngle = 55;
  constexpr int kLobes = 5;
  if (form.head == std::string("fourCentred")) window.set("angle", Value::integer(kAngle));
  if (form.head == std::string("multifoil")) window.set("lobes", Value::integer(kLobes));
  for (const char* kept : {"overlap", "margin"}) {
    if (const Value* value = build.at(std::string("/mount/window/") + kept)) window.set(kept, *value);
  }
  return window;
}

}  // namespace

void theWindow(Builder& build) {
  const std::string shape = build.textAt("/mount/window/shape");
  const std::string head = build.textAt("/mount/window/head");
  const Form* now = nullptr;
  for (const Form& form : forms()) {
    if (shape == form.shape && head == form.head) now = &form;
  }
  build.section(tr("Window"), now == nullptr ? QString() : tr(now->called));
  Field& choice = build.choice(tr("shape"), "/mount/window/shape", {});
  choice.value = now == nullptr ? QString::fromStdString(shape) : tr(now->called);
  for (const Form& form : forms()) {
    choice.options.push_back(
        {tr(form.called), {}, patchOf({addTo("/mount/window", windowOf(build, form))}), now == &form});
  }
  if (now == nullptr) return;
  for (const Parameter& one : now->parameters) {
    build.length(called(one.key), std::string("/mount/window/") + one.key);
  }
  if (head == "fourCentred") build.number(tr("sweep of the lower arcs, degrees"), "/mount/window/angle");
  if (head == "multifoil") build.number(tr("lobes, an odd number"), "/mount/window/lobes");
}

}  // namespace app::designing
