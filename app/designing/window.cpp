// The window's shape: a choice of forms, each begun in proportion to what shows, and the measures of the one chosen.
#include <algorithm>
#include <array>

#include "app/designing/ornament.h"
#include "app/designing/samples.h"
#include "app/designing/tr.h"
#include "core/base/check.h"
#include "core/geometry/window_form.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Value;
using core::geometry::Head;
using core::geometry::Shape;
using core::geometry::ShapeEntry;

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
  Shape kind = Shape::Rectangle;
  Head arch = Head::Round;
};

// Shares that make a form of its kind at any size; only to begin from.
const std::vector<Form>& forms() {
  static const std::vector<Form> kForms = {
      {"rectangle", "", QT_TRANSLATE_NOOP("design", "rectangle"), {}, Shape::Rectangle},
      {"rounded", "", QT_TRANSLATE_NOOP("design", "rounded corners"), {{"corner", 0.08}}, Shape::Rounded},
      {"scalloped", "", QT_TRANSLATE_NOOP("design", "scalloped corners"), {{"corner", 0.08}}, Shape::Scalloped},
      {"chamfered", "", QT_TRANSLATE_NOOP("design", "chamfered corners"), {{"corner", 0.08}}, Shape::Chamfered},
      {"oval", "", QT_TRANSLATE_NOOP("design", "oval"), {}, Shape::Oval},
      {"round", "", QT_TRANSLATE_NOOP("design", "round"), {}, Shape::Round},
      {"arch", "round", QT_TRANSLATE_NOOP("design", "round arch"), {}, Shape::Arch, Head::Round},
      {"arch",
       "segmental",
       QT_TRANSLATE_NOOP("design", "segmental arch"),
       {{"rise", 0.25}},
       Shape::Arch,
       Head::Segmental},
      {"arch", "pointed", QT_TRANSLATE_NOOP("design", "pointed arch"), {{"rise", 0.87}}, Shape::Arch, Head::Pointed},
      {"arch",
       "fourCentred",
       QT_TRANSLATE_NOOP("design", "four-centred arch"),
       {{"rise", 0.37}, {"radius", 0.167}},
       Shape::Arch,
       Head::FourCentred},
      {"arch",
       "basket",
       QT_TRANSLATE_NOOP("design", "basket arch"),
       {{"rise", 0.35}, {"radius", 0.2}},
       Shape::Arch,
       Head::Basket},
      {"arch",
       "ogee",
       QT_TRANSLATE_NOOP("design", "ogee"),
       {{"rise", 0.6}, {"radius", 0.333}},
       Shape::Arch,
       Head::Ogee},
      {"arch",
       "horseshoe",
       QT_TRANSLATE_NOOP("design", "horseshoe arch"),
       {{"rise", 0.68}},
       Shape::Arch,
       Head::Horseshoe},
      {"arch",
       "trefoil",
       QT_TRANSLATE_NOOP("design", "trefoil"),
       {{"sideRadius", 0.208}, {"topRadius", 0.292}, {"topCentre", 0.333}},
       Shape::Arch,
       Head::Trefoil},
      {"arch", "multifoil", QT_TRANSLATE_NOOP("design", "multifoil"), {}, Shape::Arch, Head::Multifoil},
  };
  return kForms;
}

// A measure's key, what it is called, and where the form has it.
struct Measured {
  const char* key;
  const char* called;
  core::units::Length ShapeEntry::*member;
};

constexpr std::array kMeasured = {
    Measured{"corner", QT_TRANSLATE_NOOP("design", "corner"), &ShapeEntry::corner},
    Measured{"rise", QT_TRANSLATE_NOOP("design", "rise of the head"), &ShapeEntry::rise},
    Measured{"radius", QT_TRANSLATE_NOOP("design", "radius at the springing"), &ShapeEntry::radius},
    Measured{"sideRadius", QT_TRANSLATE_NOOP("design", "radius of the side lobes"), &ShapeEntry::sideRadius},
    Measured{"topRadius", QT_TRANSLATE_NOOP("design", "radius of the top lobe"), &ShapeEntry::topRadius},
    Measured{"topCentre", QT_TRANSLATE_NOOP("design", "its centre above the springing"), &ShapeEntry::topCentre}};

const Measured& measured(const char* key) {
  const auto* found = std::find_if(kMeasured.begin(), kMeasured.end(),
                                   [&](const Measured& one) { return std::string(one.key) == key; });
  ENSURE(found != kMeasured.end());
  return *found;
}

constexpr int kAngle = 55;
constexpr int kLobes = 5;

// Each form drawn once, somewhat higher than wide, so that those of the same height and width are told apart.
const Sample& sampleOf(const Form& form) {
  static const std::vector<Sample> kSamples = [] {
    constexpr double kWide = 40;
    constexpr double kHigh = 46;
    std::vector<Sample> samples;
    for (const Form& one : forms()) {
      ShapeEntry entry;
      entry.shape = one.kind;
      entry.head = one.arch;
      entry.angle = kAngle;
      entry.lobes = kLobes;
      for (const Parameter& each : one.parameters) {
        entry.*measured(each.key).member = core::units::nearestLength(each.share * kWide);
      }
      const bool round = one.kind == Shape::Round;
      const auto made = core::geometry::construct(entry, kWide, round ? kWide : kHigh);
      samples.push_back(made ? outlineSample(made.value().outline) : nullptr);
    }
    return samples;
  }();
  return kSamples[static_cast<std::size_t>(&form - forms().data())];
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
  if (form.head == std::string("fourCentred")) window.set("angle", Value::integer(kAngle));
  if (form.head == std::string("multifoil")) window.set("lobes", Value::integer(kLobes));
  for (const char* kept : {"overlap", "margin"}) {
    if (const Value* value = build.at(std::string("/mount/window/") + kept)) window.set(kept, *value);
  }
  return window;
}

// Returns the radii that follow from the form and are nowhere entered; "" where there are none.
QString radiiOf(const Builder& build, const Form& form) {
  const auto* design = build.design();
  if (design == nullptr) return {};
  std::vector<QString> shown;
  for (const Parameter& one : form.parameters) {
    const auto length = core::units::parseLength(build.textAt(std::string("/mount/window/") + one.key));
    if (length) shown.push_back(lengthShown(build, length.value().length.inMillimetres()));
  }
  const std::size_t entered = shown.size();
  for (const auto& segment : design->layout.boards.back().sightOutline.segments()) {
    const auto* arc = std::get_if<core::geometry::Arc>(&segment);
    if (arc == nullptr) continue;
    const QString radius = lengthShown(build, arc->radius);
    if (std::find(shown.begin(), shown.end(), radius) == shown.end()) shown.push_back(radius);
  }
  const QStringList follows(shown.begin() + static_cast<std::ptrdiff_t>(entered), shown.end());
  if (follows.isEmpty()) return {};
  return (follows.size() == 1 ? tr("follows: radius %1") : tr("follow: radii %1")).arg(follows.join(tr(", ")));
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
        {tr(form.called), {}, patchOf({addTo("/mount/window", windowOf(build, form))}), now == &form, sampleOf(form)});
  }
  choice.plain = true;
  if (now == nullptr) return theCover(build);
  for (const Parameter& one : now->parameters) {
    build.length(tr(measured(one.key).called), std::string("/mount/window/") + one.key);
  }
  build.last().note = radiiOf(build, *now);
  if (head == "fourCentred") build.number(tr("sweep of the lower arcs, degrees"), "/mount/window/angle");
  if (head == "multifoil") build.number(tr("lobes, an odd number"), "/mount/window/lobes");
  theCover(build);
}

}  // namespace app::designing
