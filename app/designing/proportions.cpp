// The usual proportions of the bottom border to the top, each with its reason and its result for this design.
#include <cmath>

#include "app/convert/text.h"
#include "app/designing/ornament.h"
#include "app/designing/tr.h"
#include "core/design/outer_size.h"
#include "core/units/length_entry.h"

namespace app::designing {

namespace {

struct Proportion {
  const char* written;
  const char* called;
  const char* why;
};

const std::vector<Proportion>& proportions() {
  static const std::vector<Proportion> kProportions = {
      {"equal", QT_TRANSLATE_NOOP("design", "equal"),
       QT_TRANSLATE_NOOP("design", "for round and oval openings, or a set in a row")},
      {"4:3", QT_TRANSLATE_NOOP("design", "4 to 3"), QT_TRANSLATE_NOOP("design", "stands plainly above the middle")},
      {"5:4", QT_TRANSLATE_NOOP("design", "5 to 4"), QT_TRANSLATE_NOOP("design", "the same, less marked")},
      {"10:9", QT_TRANSLATE_NOOP("design", "10 to 9"),
       QT_TRANSLATE_NOOP("design", "just enough that it does not seem to sink")},
  };
  return kProportions;
}

struct Borders {
  double top = 0, side = 0, opening = 0, outer = 0;  // mm; outer: the height of the mount
  bool ofOuter = false;                              // the mount's size is entered
};

// How much more the bottom has where the opening's middle stands a twentieth of the mount's height above the mount's.
// That is the least of what is usual (5 to 10 %, common practice). With the mount's size given, the top is kept as wide
// as the sides.
double optical(const Borders& borders, double step, bool& held) {
  const double more = borders.ofOuter ? borders.outer / 10 : (borders.opening + 2 * borders.top) / 9;
  held = false;
  if (!borders.ofOuter) return std::round(more / step) * step;
  const double most = borders.outer - borders.opening - 2 * borders.side;
  held = most > 0 && most < more;
  return held ? std::floor(most / step) * step : std::round(more / step) * step;
}

// Top and bottom that a weighting comes to, mm.
std::pair<double, double> comesTo(const Borders& borders, double ratio, double addition) {
  const double top = borders.ofOuter ? (borders.outer - borders.opening - addition) / (1 + ratio) : borders.side;
  return {top, top * ratio + addition};
}

}  // namespace

void theWeighting(Builder& build) {
  const std::string pointer = "/mount/borders/weighting";
  const std::string now = build.textAt(pointer);
  Field& field = build.choice(tr("bottom against top"), pointer, {});
  const auto* design = build.design();
  Borders borders;
  if (design != nullptr) {
    const auto& layout = design->layout;
    borders = {layout.boards.front().sightAt.top, layout.boards.front().sightAt.left,
               layout.boards.front().sight.height, layout.outerHeight, build.at("/mount/borders/outer") != nullptr};
  }
  const auto offer = [&](const std::string& written, const QString& called, const QString& why, double ratio,
                         double addition) {
    QString reason = why;
    if (design != nullptr) {
      const auto [top, bottom] = comesTo(borders, ratio, addition);
      const auto shown = [&](double mm) {
        return convert::toQt(core::units::lengthText(mm, design->job.units, core::units::Rounding::Nearest));
      };
      reason = tr("%1 above, %2 below · %3").arg(shown(top), shown(bottom), why);
    }
    field.options.push_back(
        {called, reason, putAt(build.document(), pointer, core::base::Value::text(written)), now == written});
    if (now == written) field.value = called;
  };
  for (const Proportion& one : proportions()) {
    const std::string written = one.written;
    const auto colon = written.find(':');
    const double ratio = colon == std::string::npos ? 1 : std::stod(written) / std::stod(written.substr(colon + 1));
    offer(written, tr(one.called), tr(one.why), ratio, 0);
  }
  const std::string step = build.usual(Usual::BottomMore);
  if (const auto more = core::units::parseLength(step)) {
    offer("+" + step, tr("%1 more").arg(convert::toQt(step)), tr("the same step for every size in a series"), 1,
          more.value().length.inMillimetres());
  }
  if (design == nullptr) return;
  bool held = false;
  const double whole = core::design::wholeStep(build.units()).inMillimetres();
  const double more = optical(borders, whole, held);
  if (more < whole) return;
  offer("+" + core::units::entryText(core::units::nearestLength(more), build.units()), tr("by the optical centre"),
        held ? tr("as far up as the sides allow") : tr("5 % of the height above the middle (common practice)"), 1,
        more);
}

}  // namespace app::designing
