#include "app/words/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <vector>

#include "app/words/catalogue.h"
#include "core/base/text.h"
#include "core/units/length_entry.h"
#include "core/workflow/fill.h"

namespace app::words {
namespace {

using core::base::Argument;
using core::base::Message;
using core::base::Millimetres;
using core::base::Stretch;
using core::units::UnitSystem;

// Numbers longer than this were computed; three decimals of them are enough in a sentence.
constexpr std::size_t kLongestNumber = 9;

constexpr double kHalfNanometre = 0.5e-6;  // in mm; less is the rounding of a sum

// A length of a sentence as it is shown everywhere, unless that would hide what the sentence says: that there is a
// length at all, or that two lengths differ. Then all that look alike are shown as finely as it takes.
class ShownLengths {
 public:
  ShownLengths(const Message& message, UnitSystem units) : m_units(units) {
    for (const auto& [name, argument] : message.arguments) {
      const auto* length = std::get_if<Millimetres>(&argument);
      if (length != nullptr && std::isfinite(length->value)) m_values.push_back(length->value);
    }
  }

  std::string text(double millimetres) const {
    int finer = 0;
    while (finer < kMostFine && hides(millimetres, finer)) ++finer;
    return shown(millimetres, finer);
  }

 private:
  static constexpr int kMostFine = 6;  // down to the nanometre, in inches too

  bool hides(double millimetres, int finer) const {
    const std::string its = digits(millimetres, finer);
    const auto isLikewise = [&](double other) {
      return std::fabs(other - millimetres) >= kHalfNanometre && digits(other, finer) == its;
    };
    return isLikewise(0) || std::any_of(m_values.begin(), m_values.end(), isLikewise);
  }

  // A sentence does not know where its lengths come from. One that is whole in nanometres, and on a 64th of an inch, is
  // what somebody entered: what is computed hardly ever meets one.
  static bool isEntered(double millimetres) {
    constexpr double kLongest = 1e6;
    if (std::fabs(millimetres) > kLongest) return false;
    const core::units::Length nearest = core::units::nearestLength(millimetres);
    return core::units::isOddSixtyFourth(nearest) && std::fabs(nearest.inMillimetres() - millimetres) < 1e-9;
  }

  std::string shown(double millimetres, int finer) const {
    if (finer == 0 && isEntered(millimetres))
      return core::units::enteredText(core::units::nearestLength(millimetres), m_units);
    if (finer == 0) return core::units::lengthText(millimetres, m_units, core::units::Rounding::Nearest);
    if (m_units == UnitSystem::Millimetres) return core::base::fixedNumber(millimetres, 1 + finer) + " mm";
    constexpr double kInch = 25.4;
    return core::base::fixedNumber(millimetres / kInch, 2 + finer) + " in";
  }

  // Without the mark of what is near: it does not say how far two lengths are apart.
  std::string digits(double millimetres, int finer) const {
    static const std::string kNear = "\u2248 ";
    const std::string text = shown(millimetres, finer);
    return text.rfind(kNear, 0) == 0 ? text.substr(kNear.size()) : text;
  }

  UnitSystem m_units;
  std::vector<double> m_values;
};

struct ArgumentText {
  const ShownLengths& lengths;

  // Whatever a file or a file's name holds, it commands no screen and no terminal.
  std::string operator()(const std::string& text) const {
    return core::base::shownText(text, core::base::Lines::Several);
  }
  std::string operator()(std::int64_t number) const { return std::to_string(number); }
  std::string operator()(double number) const {
    if (!std::isfinite(number)) return "?";
    std::string text = core::base::shortestNumber(number);
    if (text.size() <= kLongestNumber || std::fabs(number) < 0.001 || std::fabs(number) >= 1e9) return text;
    return core::base::fixedNumber(number, 3);
  }
  std::string operator()(const Millimetres& length) const {
    if (!std::isfinite(length.value)) return "?";
    return lengths.text(length.value);
  }
  std::string operator()(const Stretch& time) const {
    using core::units::Duration;
    return span({Duration::milliseconds(time.least), Duration::milliseconds(time.likely),
                 Duration::milliseconds(time.most)})
        .toStdString();
  }
};

// The message of that id whose arguments stand in another one behind `prefix`.
Message within(const Message& outer, const std::string& prefix, const std::string& id) {
  Message inner(id);
  for (const auto& [name, value] : outer.arguments) {
    if (core::base::startsWith(name, prefix)) inner.arguments.emplace_back(name.substr(prefix.size()), value);
  }
  return inner;
}

// A slot of a template: the name of an argument, or how its value is said and then the name.
//   as:size      the word for that value of the property "size"
//   does:method  the same, as what somebody does
//   or:instead   each line of the argument, as a value of the property the argument "property" names: "a, b or c"
//   of:name      ", of the name"; nothing where it is empty
//   says:cause   the message whose id that argument is, with the arguments that stand behind "cause."
QString slot(const QString& name, const Message& message, const ShownLengths& lengths, UnitSystem units) {
  const qsizetype colon = name.indexOf(u':');
  const Argument* argument = message.argument(name.mid(colon + 1).toStdString());
  if (argument == nullptr) return u'{' + name + u'}';
  const QString value = QString::fromStdString(std::visit(ArgumentText{lengths}, *argument));
  const QString manner = name.left(std::max<qsizetype>(colon, 0));
  if (manner.isEmpty()) return value;
  if (manner == u"says")
    return text(within(message, name.mid(colon + 1).toStdString() + '.', value.toStdString()), units);
  if (manner == u"as") return property(name.mid(colon + 1), value);
  if (manner == u"does") return property(name, value);
  if (manner == u"of")
    return value.isEmpty() ? QString() : translated(QT_TRANSLATE_NOOP("words", ", of the %1")).arg(value);
  const Argument* of = message.argument("property");
  const QString named = of == nullptr ? QString() : QString::fromStdString(std::visit(ArgumentText{lengths}, *of));
  QStringList items = value.split(u'\n');
  for (QString& item : items) item = property(named, item);
  const QString last = items.takeLast();
  return items.isEmpty()
             ? last
             : translated(QT_TRANSLATE_NOOP("words", "%1 or %2")).arg(items.join(QStringLiteral(", ")), last);
}

// One pass over the template, so that braces within an argument are never taken for names.
QString filled(const QString& pattern, const Message& message, UnitSystem units) {
  const ShownLengths lengths(message, units);
  QString result;
  qsizetype at = 0;
  while (at < pattern.size()) {
    const qsizetype open = pattern.indexOf(u'{', at);
    const qsizetype close = open < 0 ? -1 : pattern.indexOf(u'}', open);
    if (close < 0) break;
    result += pattern.mid(at, open - at);
    result += slot(pattern.mid(open + 1, close - open - 1), message, lengths, units);
    at = close + 1;
  }
  return result + pattern.mid(at);
}

}  // namespace

QString capitalised(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

QString text(const Message& message, UnitSystem units) {
  const char* source = sourceOf(message.id);
  if (source == nullptr) return QString::fromStdString(core::base::dump(message));
  return filled(translated(source), message, units);
}

QString figureLabel(const core::design::Figure& figure) {
  const FigureWords* words = figureWordsOf(figure.kind);
  if (words == nullptr) return QString::fromStdString(figure.id);
  return QString::fromStdString(core::workflow::sayingOnce(translated(words->label).toStdString(), figure.element))
      .replace(QStringLiteral("{id}"), QString::fromStdString(figure.element))
      .replace(QStringLiteral("{n}"), QString::number(figure.number));
}

QString figureDatum(const core::design::Figure& figure) {
  const FigureWords* words = figureWordsOf(figure.kind);
  return words == nullptr ? QString() : translated(words->datum);
}

QString duration(core::units::Duration duration) {
  constexpr qint64 kSecond = 1'000;
  constexpr qint64 kMinute = 60 * kSecond;
  const qint64 milliseconds = duration.inMilliseconds();
  if (milliseconds < kMinute) {
    return translated(QT_TRANSLATE_NOOP("words", "{n} s"))
        .replace(QStringLiteral("{n}"), QString::number((milliseconds + kSecond / 2) / kSecond));
  }
  const qint64 minutes = (milliseconds + kMinute / 2) / kMinute;
  const qint64 parts[] = {minutes / (24 * 60), minutes / 60 % 24, minutes % 60};
  const char* units[] = {QT_TRANSLATE_NOOP("words", "{n} d"), QT_TRANSLATE_NOOP("words", "{n} h"),
                         QT_TRANSLATE_NOOP("words", "{n} min")};
  QStringList words;
  for (int i = 0; i < 3; ++i) {
    if (parts[i] != 0) words << translated(units[i]).replace(QStringLiteral("{n}"), QString::number(parts[i]));
  }
  return words.join(u' ');
}

QString about(core::units::Duration time) {
  // The first row whose times are longer is the one that counts; under all of them a time is said as it is.
  struct Grain {
    qint64 from, to;  // minutes
  };
  constexpr Grain kGrains[] = {{24 * 60, 60}, {3 * 60, 30}, {10, 5}};
  const qint64 milliseconds = time.inMilliseconds();
  for (const Grain& grain : kGrains) {
    const qint64 to = grain.to * 60'000;
    if (milliseconds < grain.from * 60'000) continue;
    return duration(core::units::Duration::milliseconds((milliseconds + to / 2) / to * to));
  }
  return duration(time);
}

namespace {

QString spanOf(const core::units::Span& span, QString (*said)(core::units::Duration)) {
  return translated(QT_TRANSLATE_NOOP("words", "{early} to {late}, likely {likely}"))
      .replace(QStringLiteral("{early}"), said(span.early))
      .replace(QStringLiteral("{late}"), said(span.late))
      .replace(QStringLiteral("{likely}"), said(span.likely));
}

}  // namespace

QString span(const core::units::Span& span) { return spanOf(span, duration); }

QString aboutSpan(const core::units::Span& span) { return spanOf(span, about); }

core::workflow::ThingWords thingWords() {
  const auto said = [](const char* source) { return translated(source).toStdString(); };
  core::workflow::ThingWords words;
  words.board = said(QT_TRANSLATE_NOOP("words", "{id} board"));
  words.band = said(QT_TRANSLATE_NOOP("words", "{id} band"));
  words.strip = said(QT_TRANSLATE_NOOP("words", "{side} strip of {band}"));
  words.corner = said(QT_TRANSLATE_NOOP("words", "{corner} corner of {band}"));
  words.line = said(QT_TRANSLATE_NOOP("words", "{id} line"));
  words.spandrel = said(QT_TRANSLATE_NOOP("words", "{id} spandrel"));
  words.wash = said(QT_TRANSLATE_NOOP("words", "{id} wash panel"));
  words.leaf = said(QT_TRANSLATE_NOOP("words", "leaf field {id}"));
  words.part = said(QT_TRANSLATE_NOOP("words", "part {number} of {of} of {field}"));
  words.piece = said(QT_TRANSLATE_NOOP("words", "piece {number}"));
  words.ofPiece = said(QT_TRANSLATE_NOOP("words", "{name} of piece {number}"));
  words.places = {{"top", said(QT_TRANSLATE_NOOP("words", "top"))},
                  {"right", said(QT_TRANSLATE_NOOP("words", "right"))},
                  {"bottom", said(QT_TRANSLATE_NOOP("words", "bottom"))},
                  {"left", said(QT_TRANSLATE_NOOP("words", "left"))},
                  {"tl", said(QT_TRANSLATE_NOOP("words", "top left"))},
                  {"tr", said(QT_TRANSLATE_NOOP("words", "top right"))},
                  {"br", said(QT_TRANSLATE_NOOP("words", "bottom right"))},
                  {"bl", said(QT_TRANSLATE_NOOP("words", "bottom left"))}};
  using core::craft::WaitKind;
  const std::string notYet = said(QT_TRANSLATE_NOOP("words", "Not yet"));
  const std::string ready = said(QT_TRANSLATE_NOOP("words", "Ready"));
  words.answers = {
      {WaitKind::Dry, {notYet, said(QT_TRANSLATE_NOOP("words", "Dry")), ""}},
      {WaitKind::Cure, {notYet, said(QT_TRANSLATE_NOOP("words", "Hard")), ""}},
      {WaitKind::Press, {notYet, said(QT_TRANSLATE_NOOP("words", "Holds")), ""}},
      {WaitKind::Tack,
       {notYet, said(QT_TRANSLATE_NOOP("words", "Tacky")), said(QT_TRANSLATE_NOOP("words", "Tack gone"))}},
      {WaitKind::Open,
       {notYet, said(QT_TRANSLATE_NOOP("words", "Still wet")), said(QT_TRANSLATE_NOOP("words", "Too dry"))}},
      {WaitKind::Soak, {notYet, ready, ""}},
      {WaitKind::Rest, {notYet, ready, ""}}};
  return words;
}

}  // namespace app::words
