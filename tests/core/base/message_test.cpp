// What a message tells, put together argument by argument.
#include "core/base/message.h"

#include <utility>

#include "tests/support/catch.h"

using core::base::Message;

TEST_CASE("a message holds its arguments in the order in which they were given", "[message]") {
  const Message message = Message("cut").with("width", std::int64_t{3}).with("board", std::string("top"));
  CHECK(dump(message) == "cut width=3 board=top");
  REQUIRE(message.argument("board") != nullptr);
  CHECK(message.argument("height") == nullptr);
}

TEST_CASE("a message to which an argument is added in place keeps what it held", "[message]") {
  // A vector that is moved into itself may come out empty, and so would a message.
  Message message = Message("cut").with("board", std::string("a name too long to lie in the string itself"));
  message = std::move(message).with("width", std::int64_t{3});
  CHECK(message.id == "cut");
  CHECK(dump(message) == "cut board=a name too long to lie in the string itself width=3");
}
