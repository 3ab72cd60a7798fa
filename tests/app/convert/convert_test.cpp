#include <set>
#include <string>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "tests/support/catch.h"

using namespace app::convert;

TEST_CASE("text comes back from Qt as it went in") {
  const std::string text = GENERATE(as<std::string>{}, "", "a", "caf\xC3\xA9", "\xF0\x9F\xAA\xB6 feather",
                                    "\xEF\xBB\xBFmark first", std::string("zero\0inside", 11));
  CHECK(fromQt(toQt(text)) == text);
  CHECK(fromBytes(toBytes(text)) == text);
}

TEST_CASE("bytes that are no text are not lost from a byte array") {
  const std::string bytes = "\xFF\xFE\x80";
  CHECK(fromBytes(toBytes(bytes)) == bytes);
}

TEST_CASE("content hashes are those FIPS 180-4 gives") {
  CHECK(contentHash("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(contentHash("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("the example of RFC 9562, appendix A.6 is met") {
  CHECK(uuidVersion7(0x017F22E279B0, 0xCC3, 0x18C4DC0C0C07398F) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST_CASE("version and variant stand whatever the random bits are") {
  const std::string uuid = uuidVersion7(0, ~0ULL, ~0ULL);
  CHECK(uuid == "00000000-0000-7fff-bfff-ffffffffffff");
}

TEST_CASE("a time out of range is cut to the range") {
  CHECK(uuidVersion7(-5, 0, 0) == uuidVersion7(0, 0, 0));
  CHECK(uuidVersion7(std::int64_t{1} << 60, 0, 0).substr(0, 13) == "ffffffff-ffff");
}

TEST_CASE("ids made later sort later, and those of one millisecond differ") {
  CHECK(newUuid(1000) < newUuid(1001));
  std::set<std::string> ids;
  for (int i = 0; i < 1000; ++i) ids.insert(newUuid(1000));
  CHECK(ids.size() == 1000);
}
