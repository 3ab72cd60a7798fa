// The scale on which a measure as made is set: what the gauge tells, and what would come of each value.
#include <algorithm>
#include <array>
#include <cmath>

#include "app/convert/text.h"
#include "app/viewmodels/bench/made_view_model.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"
#include "core/decisions/decide_made.h"
#include "core/decisions/made_changes.h"
#include "core/units/length_entry.h"
#include "core/workflow/acts.h"

namespace app::viewmodels {

using convert::toQt;
using core::decisions::MadeOutcome;
using core::decisions::Outcome;
using core::design::Figure;
using core::design::Gauge;
using core::units::Length;
using core::units::Rounding;
using core::units::ShownLength;
using core::units::UnitSystem;

namespace {

struct FollowWord {
  const char* begins;  // of the ids of the figures that follow
  QString word;
};
struct RefusalWord {
  const char* message;
  QString word;
};

QString wordOf(const MadeOutcome& outcome, Gauge gauge) {
  // The first of what follows that the hand cuts next.
  const std::array<FollowWord, 4> follows = {{{"band", MadeViewModel::tr("strips follow")},
                                              {"board", MadeViewModel::tr("boards follow")},
                                              {"line", MadeViewModel::tr("lines follow")},
                                              {"leaf", MadeViewModel::tr("leaf follows")}}};
  const QString anew = gauge == Gauge::Micrometer ? MadeViewModel::tr("another board") : MadeViewModel::tr("cut anew");
  const std::array<RefusalWord, 4> refusals = {{{"made.too-far", anew},
                                                {"made.work-not-covered", anew},
                                                {"made.shows-beyond", MadeViewModel::tr("shows too much")},
                                                {"made.strip-too-short", MadeViewModel::tr("too short")}}};
  switch (outcome.outcome) {
    case Outcome::AsDrawn: return MadeViewModel::tr("drawn");
    case Outcome::Contradicts: return MadeViewModel::tr("work done is off");
    case Outcome::Follows:
      for (const FollowWord& one : follows) {
        if (outcome.follow.contains(one.begins)) return one.word;
      }
      return outcome.follow.empty() ? MadeViewModel::tr("nothing follows") : MadeViewModel::tr("the rest follows");
    case Outcome::Refused:
      for (const RefusalWord& one : refusals) {
        if (outcome.refusal == one.message) return one.word;
      }
      return MadeViewModel::tr("does not fit");
  }
  return {};
}

// How many steps lie from one tick with a number to the next.
constexpr std::int64_t kMillimetreSteps = 2;
constexpr std::int64_t kInchSteps = 4;

}  // namespace

Gauge MadeViewModel::gauge() const { return total() == 0 ? Gauge::Rule : core::design::toleranceOf(figureId()).gauge; }

double MadeViewModel::reading() const { return core::design::readingOf(gauge(), jobUnits()).inMillimetres(); }

double MadeViewModel::drawnAt() const { return plainFigure() == nullptr ? 0 : plainFigure()->value; }

Length MadeViewModel::chosen() const {
  if (m_value) return *m_value;
  if (keyed()) {
    if (const auto length = m_entry.length()) return length.value();
  }
  if (figure() == nullptr) return {};
  return core::units::nearestLength(measuredHere() ? figure()->value : drawnAt());
}

QString MadeViewModel::readingOn(Length length) const {
  const bool millimetres = jobUnits() == UnitSystem::Millimetres;
  if (millimetres) return QString::number(length.inMillimetres(), 'f', gauge() == Gauge::Micrometer ? 2 : 1);
  return toQt(core::units::textOf(core::units::showEntered(length, jobUnits(), Rounding::Nearest)))
      .section(QLatin1String(" in"), 0, 0);
}

QString MadeViewModel::readingText() const { return readingOn(core::design::readingOf(gauge(), jobUnits())); }

QString MadeViewModel::drawnText() const {
  const Figure* plain = plainFigure();
  if (plain == nullptr) return {};
  // Without its unit, which stands beside the value.
  const QString drawn = toQt(plain->display).section(QLatin1Char(' '), 0, -2);
  const Length within = core::design::toleranceOf(figureId()).within;
  if (jobUnits() == UnitSystem::Millimetres) return tr("%1 ±%2").arg(drawn, readingOn(within));
  // No fraction of an inch on the rule is as fine.
  return tr("%1 ±%2").arg(drawn, toQt(core::units::entryText(within, UnitSystem::Millimetres)));
}

ShownLength MadeViewModel::shownValue() const {
  if (figure() == nullptr) return {};
  const Figure* plain = plainFigure();
  if (!touched() && plain != nullptr) return plain->shown;
  ShownLength shown = core::units::showEntered(chosen(), jobUnits(), Rounding::Nearest);
  if (jobUnits() == UnitSystem::Millimetres) shown.whole = readingOn(chosen()).toStdString();
  return shown;
}

QString MadeViewModel::valueWhole() const {
  const ShownLength shown = shownValue();
  return (shown.approximate ? QStringLiteral("≈") : QString()) + toQt(shown.whole);
}
QString MadeViewModel::valueNumerator() const {
  const ShownLength shown = shownValue();
  return shown.denominator == 0 ? QString() : QString::number(shown.numerator);
}
QString MadeViewModel::valueDenominator() const {
  const ShownLength shown = shownValue();
  return shown.denominator == 0 ? QString() : QString::number(shown.denominator);
}
QString MadeViewModel::valueUnit() const { return toQt(shownValue().unit); }

void MadeViewModel::step(int by) {
  if (figure() == nullptr || !m_question.isEmpty()) return;
  const std::int64_t least = core::design::readingOf(gauge(), jobUnits()).inNanometres();
  const std::int64_t now = chosen().inNanometres();
  // To the gauge's next reading that way, from wherever the drawn value lies between two.
  const std::int64_t down = now % least;
  const std::int64_t next = by > 0 ? now - down + least : down > 0 ? now - down : now - least;
  if (next <= 0 || Length::nanometres(next) > core::units::kLongestLength) return;
  m_entry.clear();
  m_refusal.clear();
  m_value = Length::nanometres(next);
  showOutcome();
  emit changed();
}

void MadeViewModel::less() { step(-1); }
void MadeViewModel::more() { step(1); }

bool MadeViewModel::isAsked(int index) const {
  const Measured& measured = m_figures[static_cast<std::size_t>(index)];
  const auto* step = state() == nullptr ? nullptr : state()->plan->workflow.find(measured.step);
  if (step == nullptr) return true;
  const auto listed = std::find_if(step->figures.begin(), step->figures.end(),
                                   [&](const auto& figure) { return figure.id == measured.figure; });
  return listed == step->figures.end() || core::workflow::isNeeded(*listed, m_workbench.settings().marking);
}

int MadeViewModel::left() const {
  int left = 0;
  for (int i = m_index + 1; i < total(); ++i) left += isAsked(i) ? 1 : 0;
  return left;
}

bool MadeViewModel::next() {
  if (figure() == nullptr || !m_question.isEmpty()) return false;
  if (keyed()) return keep();
  if (!m_value && measuredHere()) {
    forward();
    return true;
  }
  return enter(chosen(), "");
}

bool MadeViewModel::finish() {
  if (!m_value && !keyed() && !isAsked(m_index)) return m_question.isEmpty();
  return next();
}

void MadeViewModel::showScale() {
  if (figure() == nullptr || plainFigure() == nullptr) {
    m_scaleOf.clear();
    m_scaleDesign.reset();
    m_bands.clear();
    m_ticks.clear();
    m_bandsShown.clear();
    return;
  }
  if (m_scaleOf == figureId() && m_scaleDesign == state()->design) return;
  m_scaleOf = figureId();
  m_scaleDesign = state()->design;
  const double least = reading();
  const double drawn = drawnAt();
  const double reach = core::design::plausibleWithin(drawn) + 6 * least;
  const double from = std::max(least, drawn - reach);
  m_bands = core::decisions::bandsBetween(*state(), *m_without, figureId(), from, drawn + reach, least);
  m_bandsShown.clear();
  // Beyond what was asked for a band may go on.
  const auto said = [&](double end) {
    const bool known = end > from && end < drawn + reach;
    return known ? readingOn(core::units::nearestLength(end)) : QString();
  };
  for (const auto& band : m_bands) {
    const QString word = wordOf(band.outcome, gauge());
    const bool isDrawn = band.outcome.outcome == Outcome::AsDrawn;
    // What is told in the same word is one band to the eye.
    if (!m_bandsShown.isEmpty() && m_bandsShown.last().toMap().value(QStringLiteral("word")) == word) {
      QVariantMap longer = m_bandsShown.takeLast().toMap();
      longer[QStringLiteral("to")] = band.to;
      longer[QStringLiteral("until")] = said(band.to);
      m_bandsShown << longer;
      continue;
    }
    m_bandsShown << QVariantMap{{QStringLiteral("from"), band.from},      {QStringLiteral("to"), band.to},
                                {QStringLiteral("word"), word},           {QStringLiteral("since"), said(band.from)},
                                {QStringLiteral("until"), said(band.to)}, {QStringLiteral("drawn"), isDrawn}};
  }
  m_ticks.clear();
  const Length step = core::design::readingOf(gauge(), jobUnits());
  const std::int64_t steps = jobUnits() == UnitSystem::Millimetres ? kMillimetreSteps : kInchSteps;
  const auto first = static_cast<std::int64_t>(std::ceil(from / least));
  const auto last = static_cast<std::int64_t>(std::floor((drawn + reach) / least));
  for (std::int64_t at = first; at <= last; ++at) {
    const Length length = at * step;
    QString label;
    if (at % steps == 0) {
      label = jobUnits() == UnitSystem::Inches
                  ? readingOn(length)
                  : QString::number(length.inMillimetres(), 'f', gauge() == Gauge::Micrometer ? 1 : 0);
    }
    m_ticks << QVariantMap{{QStringLiteral("at"), length.inMillimetres()}, {QStringLiteral("label"), label}};
  }
}

void MadeViewModel::showOutcome() {
  m_wouldRefuse.clear();
  m_following = {};
  if (figure() == nullptr || !m_without || !touched()) return;
  const Length value = chosen();
  if (const auto refused = core::decisions::refusalOf(*state(), figureId(), value)) {
    m_wouldRefuse = words::text(*refused, jobUnits());
    return;
  }
  const auto with = core::decisions::designWith(*state(), figureId(), value);
  if (!with.design) return;
  const auto changes = core::decisions::changesBetween(*state(), *m_without, *with.design);
  // A strip's length is cut next and cannot be mended by eye.
  const core::decisions::FigureChange* shown = nullptr;
  for (const auto& change : changes.figures) {
    if (!change.ahead) continue;
    const bool strip = change.figure.find(".strip.") != std::string::npos;
    if (shown == nullptr || (strip && shown->figure.find(".strip.") == std::string::npos)) shown = &change;
  }
  const Figure* named = shown == nullptr ? nullptr : with.design->figures.find(shown->figure);
  if (named == nullptr) return;
  const QString datum = words::figureDatum(*named);
  m_following.label =
      capitalised(words::figureLabel(*named)) + (datum.isEmpty() ? QString() : QStringLiteral(", ") + datum);
  m_following.before = toQt(shown->displayBefore).section(QLatin1Char(' '), 0, -2);
  m_following.after = toQt(shown->displayAfter);
  int count = 1;
  for (const auto& step : state()->plan->workflow.steps) {
    for (const auto& one : step.figures) {
      if (one.id == shown->figure) count = std::max(count, one.count);
    }
  }
  if (count > 1) m_following.count = tr("%1 off").arg(count);
}

QString MadeViewModel::outcome() const {
  const double at = value();
  const auto band = std::find_if(m_bands.begin(), m_bands.end(), [at](const auto& one) { return at <= one.to + 1e-9; });
  return band == m_bands.end() ? QString() : wordOf(band->outcome, gauge());
}

QString MadeViewModel::title() const {
  if (figure() == nullptr) return {};
  const auto* step = measuredAt();
  // Where the act is another, its title would say that the work is still to be done.
  return step->act == core::craft::Act::Measure ? toQt(step->title) : tr("Measure as made");
}

QString MadeViewModel::where() const {
  if (figure() == nullptr) return {};
  const QString what = words::figureLabel(*figure()).section(QStringLiteral(", "), -1);
  return datum().isEmpty() ? capitalised(what) : tr("%1: %2").arg(datum(), what);
}

QString MadeViewModel::thing() const { return figure() == nullptr ? QString() : toQt(measuredAt()->thingName); }

bool MadeViewModel::backUp() const { return figure() != nullptr && measuredAt()->up == core::craft::WayUp::Back; }

QString MadeViewModel::side() const {
  if (figure() == nullptr || measuredAt()->up == core::craft::WayUp::None) return {};
  return words::wayUp(measuredAt()->up);
}

}  // namespace app::viewmodels
