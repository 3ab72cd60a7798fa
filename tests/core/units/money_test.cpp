#include "core/units/money.h"

#include <limits>

#include "tests/support/catch.h"

using namespace core::units;

TEST_CASE("money is shown to two decimals, halves upwards, and told exactly beside", "[money]") {
  CHECK(shownText(Money::parts(185'000)) == "18.50");
  CHECK(shownText(Money::parts(49)) == "0.00");
  CHECK(shownText(Money::parts(50)) == "0.01");
  CHECK(shownText(Money::parts(149)) == "0.01");
  CHECK(shownText(Money::parts(9'999'950)) == "1000.00");
  CHECK(exactText(Money::parts(185'000)) == "18.5");
  CHECK(exactText(Money::parts(1)) == "0.0001");
  CHECK(exactText(Money()) == "0");
  CHECK(exactText(Money::parts(100'000)) == "10");
}

TEST_CASE("ten times a tenth is one, and a third of one three times is not", "[money]") {
  const Money tenth = *parseMoney("0.1");
  Money sum;
  for (int i = 0; i < 10; ++i) sum = sum + tenth;
  CHECK(sum == *parseMoney("1"));
  CHECK(parseMoney("1")->times(1, 3) == Money::parts(3'333));
  CHECK(parseMoney("1")->times(2, 3) == Money::parts(6'667));
  CHECK(parseMoney("0.0001")->times(1, 2) == Money::parts(1));  // halves away from zero
}

TEST_CASE("a part of a price is what long division gives", "[money]") {
  // 24 an hour for 3 h 25 min 30 s: 24 x 12330 / 3600 = 82.2.
  CHECK(parseMoney("24")->times(12'330, 3'600) == *parseMoney("82.2"));
  // The dearest price by a million litres, and what does not fit stays at the greatest there is.
  CHECK(kDearest.times(1'000'000'000'000, 1'000'000) == Money::parts(1'000'000'000'000'000'000));
  CHECK(kDearest.times(std::numeric_limits<std::int64_t>::max()).inParts() == std::numeric_limits<std::int64_t>::max());
  const Money most = Money::parts(std::numeric_limits<std::int64_t>::max());
  CHECK(most + most == most);
  CHECK(most.times(999'999'999, 1'000'000'000).inParts() == 9'223'372'027'631'403'770);
}

TEST_CASE("numbers become the money their text says, or nothing", "[money]") {
  CHECK(moneyOf(0.1) == Money::parts(1'000));
  CHECK(moneyOf(99'999'999.9999) == Money::parts(999'999'999'999));
  CHECK_FALSE(moneyOf(0.1 + 0.2));  // 0.30000000000000004
  CHECK_FALSE(moneyOf(-0.0001));
  CHECK_FALSE(moneyOf(100'000'001));
  CHECK_FALSE(moneyOf(std::numeric_limits<double>::infinity()));
  CHECK_FALSE(moneyOf(std::numeric_limits<double>::quiet_NaN()));
}
