// The outer size of the mount: made whole, or taken from a frame that is at hand.
#include "app/convert/text.h"
#include "app/designing/ornament.h"
#include "app/designing/tr.h"
#include "app/words/words.h"
#include "core/design/outer_size.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Message;
using core::base::Value;
using core::design::OuterSize;
using core::design::SizeChange;
using core::units::Length;
using core::units::UnitSystem;

namespace {

QString listed(const std::vector<Message>& messages, UnitSystem units) {
  QStringList all;
  for (const Message& message : messages) all << words::text(message, units);
  return all.join(QStringLiteral(", "));
}

std::vector<Option> wholeOffers(const Value& document, const core::design::Design& design) {
  std::vector<Option> offers;
  for (const SizeChange& change : core::design::wholeSizes(design.job, design.layout)) {
    const auto units = design.job.units;
    QStringList why;
    for (const auto* said : {&change.borders, &change.besides}) {
      if (!said->empty()) why << words::capitalised(listed(*said, units));
    }
    offers.push_back({words::capitalised(listed(change.sizes, units)), why.join(QStringLiteral(" · ")),
                      patchOfEdits(document, change.edits), false});
  }
  return offers;
}

// What the mount becomes, and its borders with it; where it does not fit, why.
QString comesTo(const SizeChange& change, UnitSystem units) {
  for (const auto& problem : change.problems.sorted()) {
    if (problem.severity == core::base::Severity::Error) return words::text(problem.message, units);
  }
  if (change.edits.empty()) return tr("The mount has that size already.");
  const QString borders = listed(change.borders, units);
  const QString size = tr("mount: %1").arg(listed(change.sizes, units));
  return words::capitalised(borders.isEmpty() ? size : tr("%1; borders: %2").arg(size, borders));
}

// How much larger the opening is than the mount.
Length playOf(const Builder& build) {
  if (const auto* design = build.design()) return design->job.rebate.allowanceTotal;
  const auto entered = core::units::parseLength(build.textAt("/mount/rebate/allowanceTotal"));
  return entered ? entered.value().length : core::design::Rebate().allowanceTotal;
}

// One side of the opening. Its value is that of the mount with the play.
void theOpening(Builder& build, const QString& label, const char* side, std::optional<Length> OuterSize::*member) {
  const std::string pointer = std::string("/mount/borders/outer/") + side;
  const auto* design = build.design();
  const auto entered = core::units::parseLength(build.textAt(pointer));
  if (design == nullptr && !entered) return;
  const Length play = playOf(build);
  Field& field = build.length(label, "");
  field.value = design != nullptr ? build.figure(std::string("rebate.") + side)
                                  : convert::toQt(core::units::entryText(entered.value().length + play, build.units()));
  field.note = tr("edge to edge; the mount follows, less the play");
  const Value* document = &build.document();
  const UnitSystem units = build.units();
  field.keyed = [document, design, pointer, play, units, member](Length opening) -> Field::Keyed {
    const Length mount = opening - play;
    if (mount <= Length()) return {Value::array(), {}, words::text(Message("sized.within-play"), units)};
    // Where nothing lays out, the size is entered already and is put right.
    if (design == nullptr) {
      return {putAt(*document, pointer, Value::text(core::units::entryText(mount, units))), {}, {}};
    }
    OuterSize size;
    size.*member = mount;
    const SizeChange change = core::design::sizedTo(design->job, design->layout, size);
    return {patchOfEdits(*document, change.edits), comesTo(change, units), {}};
  };
}

}  // namespace

void theWholeSizes(Builder& build) {
  const auto* design = build.design();
  if (design == nullptr) return;
  const auto whole = [&](double size) { return core::design::isWhole(size, design->job.units); };
  if (whole(design->layout.outerWidth) && whole(design->layout.outerHeight)) return;
  Field& field = build.choice(tr("size comes to"), "", {});
  field.value = sizeText(build.figure("outer.width"), build.figure("outer.height"));
  field.note = design->job.units == UnitSystem::Inches
                   ? tr("Open it for whole eighths of an inch, by the borders alone.")
                   : tr("Open it for whole millimetres, by the borders alone.");
  const Value* document = &build.document();
  field.offers = [document, design] { return wholeOffers(*document, *design); };
}

void theFrameAtHand(Builder& build) {
  build.of(tr("frame at hand"));
  theOpening(build, tr("rebate width"), "width", &OuterSize::width);
  theOpening(build, tr("rebate height"), "height", &OuterSize::height);
  build.of({});
}

}  // namespace app::designing
