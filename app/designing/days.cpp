#include "app/designing/days.h"

#include <QLocale>
#include <QRegularExpression>
#include <optional>

namespace app::designing {

using core::base::Message;
using core::base::Result;

namespace {

// Returns which of them a word names, by its first three letters or more; 0 for none.
template <typename Name>
int named(const QString& word, int count, Name name) {
  constexpr int kFewest = 3;
  if (word.size() < kFewest) return 0;
  for (int number = 1; number <= count; ++number) {
    if (name(number).startsWith(word, Qt::CaseInsensitive)) return number;
  }
  return 0;
}

int monthOf(const QString& word) {
  const auto name = [](int month) { return QLocale::c().monthName(month); };
  return word.compare(QLatin1String("sept"), Qt::CaseInsensitive) == 0 ? 9 : named(word, 12, name);
}

int weekdayOf(const QString& word) {
  return named(word, 7, [](int day) { return QLocale::c().dayName(day); });
}

struct Written {
  int day = 0;
  int month = 0;
  QString year;  // "" where none is written
  bool strokes = false;
};

std::optional<Written> taken(const QString& text) {
  const auto match = [&](const char* pattern) { return QRegularExpression(QLatin1String(pattern)).match(text); };
  if (const auto iso = match("^(\\d{4})-(\\d{1,2})-(\\d{1,2})$"); iso.hasMatch()) {
    return Written{iso.captured(3).toInt(), iso.captured(2).toInt(), iso.captured(1)};
  }
  if (const auto dots = match("^(\\d{1,2})\\.\\s*(\\d{1,2})\\.?\\s*(\\d{4}|\\d{2})?$"); dots.hasMatch()) {
    return Written{dots.captured(1).toInt(), dots.captured(2).toInt(), dots.captured(3)};
  }
  if (const auto strokes = match("^(\\d{1,2})([/-])(\\d{1,2})(?:\\2(\\d{4}|\\d{2}))?$"); strokes.hasMatch()) {
    return Written{strokes.captured(1).toInt(), strokes.captured(3).toInt(), strokes.captured(4), true};
  }
  if (const auto words =
          match("^(\\d{1,2})(?:st|nd|rd|th)?\\.?\\s*(?:of\\s+)?([A-Za-z]+)\\.?(?:,?\\s*(\\d{4}|\\d{2}))?$");
      words.hasMatch()) {
    if (const int month = monthOf(words.captured(2)))
      return Written{words.captured(1).toInt(), month, words.captured(3)};
  }
  if (const auto words = match("^([A-Za-z]+)\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?(?:,?\\s+(\\d{4}))?$");
      words.hasMatch()) {
    if (const int month = monthOf(words.captured(1)))
      return Written{words.captured(2).toInt(), month, words.captured(3)};
  }
  return std::nullopt;
}

QDate dayOf(const Written& written, QDate today, Nearest nearest) {
  if (!written.year.isEmpty()) {
    constexpr int kCentury = 100;
    const int year = written.year.toInt();
    return {year < kCentury ? today.year() / kCentury * kCentury + year : year, written.month, written.day};
  }
  // A 29th of February may be some years off.
  constexpr int kYears = 8;
  const int direction = nearest == Nearest::Coming ? 1 : -1;
  for (int years = 0; years <= kYears; ++years) {
    const QDate day(today.year() + direction * years, written.month, written.day);
    if (day.isValid() && direction * today.daysTo(day) >= 0) return day;
  }
  return {};
}

}  // namespace

Result<QDate, Message> readDay(const QString& text, QDate today, Nearest nearest) {
  QString rest = text.simplified();
  int weekday = 0;
  if (const auto first = QRegularExpression(QStringLiteral("^([A-Za-z]+)\\.?,?\\s+(?=\\d)")).match(rest);
      first.hasMatch() && monthOf(first.captured(1)) == 0) {
    weekday = weekdayOf(first.captured(1));
    if (weekday != 0) rest = rest.mid(first.capturedLength());
  }
  const auto written = taken(rest);
  if (!written) return Message("day.unreadable").with("written", text.toStdString());
  const QDate day = dayOf(*written, today, nearest);
  if (written->strokes && written->day != written->month) {
    Written turned = *written;
    std::swap(turned.day, turned.month);
    const QDate other = dayOf(turned, today, nearest);
    if (day.isValid() && other.isValid()) {
      return Message("day.either").with("one", dayText(day).toStdString()).with("other", dayText(other).toStdString());
    }
  }
  constexpr int kFirstYear = 1000;
  if (!day.isValid() || day.year() < kFirstYear) return Message("day.none").with("written", text.toStdString());
  if (weekday != 0 && day.dayOfWeek() != weekday) {
    return Message("day.weekday")
        .with("day", dayText(day).toStdString())
        .with("weekday", QLocale::c().dayName(weekday).toStdString());
  }
  return day;
}

QString dayText(QDate day) { return QLocale::c().toString(day, QStringLiteral("dddd d MMMM yyyy")); }

}  // namespace app::designing
