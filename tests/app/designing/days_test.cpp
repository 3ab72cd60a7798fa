// Days as makers write them.
#include "app/designing/days.h"

#include "app/words/words.h"
#include "tests/support/catch.h"

using app::designing::readDay;

namespace {

const QDate kToday(2026, 11, 28);

std::string readAs(const char* written) {
  const auto day = readDay(QString::fromUtf8(written), kToday);
  return day ? day.value().toString(Qt::ISODate).toStdString() : day.error().id;
}

}  // namespace

TEST_CASE("a day is taken however it is plainly written") {
  for (const char* written :
       {"2026-12-12", "12 December", "12 december 2026", "12 Dec 2026", "12 Dec", "12. Dec.", "12th December", "12.12.",
        "12.12.2026", "12.12.26", "12/12/2026", "12-12-2026", "12/12", "December 12", "Dec 12, 2026", "Sat 12 Dec",
        "Saturday, 12 December 2026", "  12   December ", "12th of December"}) {
    INFO(written);
    CHECK(readAs(written) == "2026-12-12");
  }
  CHECK(readAs("13/2/2027") == "2027-02-13");
  CHECK(readAs("28 November") == "2026-11-28");
  CHECK(readAs("27 November") == "2027-11-27");
  CHECK(readAs("29 Feb") == "2028-02-29");
  CHECK(readAs("1.2.2027") == "2027-02-01");
  CHECK(readAs("Sept 3") == "2027-09-03");
}

TEST_CASE("a day that was lies in the year in which it was last") {
  const auto made = readDay(QStringLiteral("12 December"), kToday, app::designing::Nearest::Past);
  REQUIRE(made);
  CHECK(made.value() == QDate(2025, 12, 12));
  CHECK(readDay(QStringLiteral("28.11."), kToday, app::designing::Nearest::Past).value() == kToday);
}

TEST_CASE("a day that could be two, or is none, is asked about and never guessed") {
  CHECK(readAs("3/4/2027") == "day.either");
  CHECK(readAs("3/4") == "day.either");
  CHECK(readAs("31 June") == "day.none");
  CHECK(readAs("2026-02-30") == "day.none");
  CHECK(readAs("12/13/2026") == "day.none");
  CHECK(readAs("Friday 12 December 2026") == "day.weekday");
  for (const char* written : {"soon", "", "before Christmas", "12", "December", "12 Foo", "2026", "12 12 2026",
                              "1/2/3/4", "12 D", "99999999999 December", "12 December 20262", "-5 May"}) {
    INFO(written);
    CHECK(readAs(written) == "day.unreadable");
  }
  const auto either = readDay(QStringLiteral("3/4/2027"), kToday);
  CHECK(app::words::text(either.error(), core::units::UnitSystem::Millimetres) ==
        QLatin1String("that could be Saturday 3 April 2027 or Thursday 4 March 2027: write the month as a word"));
}

TEST_CASE("what was understood reads back as the same day") {
  for (QDate day(2024, 1, 1); day < QDate(2028, 3, 1); day = day.addDays(1)) {
    const auto again = readDay(app::designing::dayText(day), kToday);
    REQUIRE(again);
    CHECK(again.value() == day);
  }
}
