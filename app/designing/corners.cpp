// The corners of a band where its pattern has to meet, and the least changes that make it meet.
#include <cmath>

#include "app/convert/text.h"
#include "app/designing/ornament.h"
#include "app/designing/tr.h"
#include "app/words/words.h"
#include "core/materials/repeat_match.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Value;
using core::materials::MatchOption;

namespace {

// More than these nobody weighs against each other.
constexpr std::size_t kMostOffers = 5;

std::vector<Option> offersFor(const Value& document, const core::design::Design& design, std::size_t band) {
  const auto match = core::materials::matchOf(design.job, design.layout, band);
  std::vector<Option> offers;
  const auto units = design.job.units;
  for (const MatchOption& option : match.options) {
    if (offers.size() == kMostOffers) break;
    QStringList changes;
    for (const auto& change : option.says) changes << words::text(change, units);
    QStringList why = {words::text(option.why, units)};
    for (const auto& disturbs : option.disturbs) why << words::text(disturbs, units);
    // On the steps of a rule where what that leaves does not show.
    const auto& edits = option.onSteps ? option.onSteps->edits : option.edits;
    offers.push_back(
        {changes.join(QStringLiteral("; ")), why.join(QStringLiteral(" · ")), patchOfEdits(document, edits), false});
  }
  return offers;
}

}  // namespace

void theCorners(Builder& build, std::size_t band) {
  const auto* design = build.design();
  if (design == nullptr || band >= design->job.bands.size()) return;
  const auto miss = core::materials::cornerMismatch(design->job.bands[band], design->layout.bands[band]);
  if (!miss) return;
  Field& field = build.choice(tr("corners"), "", {});
  const auto shown = [&](double mm) {
    return convert::toQt(core::units::lengthText(mm, design->job.units, core::units::Rounding::Nearest));
  };
  const bool meets = std::abs(*miss) < core::materials::kMismatchShows;
  field.value =
      meets ? tr("meet")
            : tr("miss by %1 of %2")
                  .arg(shown(std::abs(*miss)),
                       convert::toQt(core::units::enteredText(*design->job.bands[band].repeat, design->job.units)));
  field.look = !meets;
  if (meets) return;
  field.notices << tr("The pattern's corners %1.").arg(field.value);
  field.mend = tr("Make them meet");
  field.note = tr("Open it for the least changes that make them meet.");
  const Value* document = &build.document();
  field.offers = [document, design, band] { return offersFor(*document, *design, band); };
}

}  // namespace app::designing
