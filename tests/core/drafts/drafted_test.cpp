// A design changed, taken back and brought again, as a fold of patches.
#include "core/drafts/drafted.h"

#include "core/base/text.h"
#include "tests/support/catch.h"

using namespace core::drafts;
using namespace core::record;
using core::base::Message;
using core::base::Value;

namespace {

Value json(const char* text) { return core::base::parseJson(text).root; }

// A desk that keeps what is decided.
class Desk {
 public:
  explicit Desk(const char* document) { keep(decide(nullptr, core::intents::BeginDesign{json(document), ""})); }

  std::string change(const char* patch) { return ask(core::intents::ChangeDesign{json(patch)}); }
  std::string undo() { return ask(core::intents::UndoChange{}); }
  std::string redo() { return ask(core::intents::RedoChange{}); }
  Drafted drafted() const { return foldDrafted("one", events); }
  std::string document() const { return core::base::writeJson(drafted().document, 0); }

  std::vector<Event> events;

 private:
  std::string ask(const core::intents::DesignIntent& intent) {
    const Drafted now = drafted();
    return keep(decide(&now, intent));
  }
  std::string keep(const core::base::Result<std::vector<EventDraft>, Message>& decided) {
    if (!decided) return decided.error().id;
    for (const EventDraft& draft : decided.value()) keep(draft);
    return "";
  }
  void keep(const EventDraft& draft) {
    Event event;
    const auto number = static_cast<std::int64_t>(events.size());
    event.eventId = "e" + std::to_string(number);
    event.intentId = "i" + std::to_string(number);
    event.deviceId = "tablet";
    event.deviceSequence = number;
    event.hlc = {1'764'000'000'000 + number, 0};
    event.occurredUtc = event.hlc.milliseconds;
    event.stream = "design/one";
    event.type = draft.type;
    event.payload = draft.payload;
    events.push_back(event);
  }
};

}  // namespace

TEST_CASE("every change is one step back and one forward, to the byte") {
  Desk desk(R"({"title": "a", "bands": []})");
  std::vector<std::string> states = {desk.document()};
  const char* const patches[] = {
      R"([{"op": "replace", "path": "/title", "value": "b"}])",
      R"([{"op": "add", "path": "/bands/-", "value": {"id": "inner"}}])",
      R"([{"op": "add", "path": "/bands/0/width", "value": "14 mm"}, {"op": "add", "path": "/room", "value": {}}])",
      R"([{"op": "remove", "path": "/bands/0"}])"};
  for (const char* patch : patches) {
    REQUIRE(desk.change(patch) == "");
    states.push_back(desk.document());
  }
  for (std::size_t i = states.size() - 1; i > 0; --i) {
    CHECK(desk.document() == states[i]);
    REQUIRE(desk.undo() == "");
  }
  CHECK(desk.document() == states[0]);
  CHECK(desk.undo() == "design.nothing-to-undo");
  for (std::size_t i = 1; i < states.size(); ++i) {
    REQUIRE(desk.redo() == "");
    CHECK(desk.document() == states[i]);
  }
  CHECK(desk.redo() == "design.nothing-to-redo");
}

TEST_CASE("after another change there is nothing to bring again, but still everything to take back") {
  Desk desk(R"({"title": "a"})");
  REQUIRE(desk.change(R"([{"op": "replace", "path": "/title", "value": "b"}])") == "");
  REQUIRE(desk.undo() == "");
  REQUIRE(desk.change(R"([{"op": "replace", "path": "/title", "value": "c"}])") == "");
  CHECK(desk.redo() == "design.nothing-to-redo");
  CHECK(desk.document() == R"({"title": "c"})");
  REQUIRE(desk.undo() == "");
  CHECK(desk.document() == R"({"title": "a"})");
  REQUIRE(desk.redo() == "");
  CHECK(desk.document() == R"({"title": "c"})");
}

TEST_CASE("a patch that is none or does not apply is refused and changes nothing") {
  Desk desk(R"({"title": "a"})");
  for (const char* patch : {R"({})", R"([{"op": "replace", "path": "/missing", "value": 1}])", R"([{"op": "grow"}])",
                            R"("patch")", R"([{"op": "test", "path": "/title", "value": "z"}])",
                            R"([{"op": "replace", "path": "/title", "value": "b"}, {"op": "remove", "path": "/no"}])",
                            R"([{"op": "add", "path": "/bands/3", "value": 1}])", R"([{"op": "add", "path": 3}])"}) {
    INFO(patch);
    CHECK(desk.change(patch) == "json.patch");
  }
  CHECK(desk.document() == R"({"title": "a"})");
  CHECK(desk.events.size() == 1);
}

TEST_CASE("events in any order and twice give the same design; one that cannot be read locks it and loses nothing") {
  Desk desk(R"({"title": "a"})");
  REQUIRE(desk.change(R"([{"op": "replace", "path": "/title", "value": "b"}])") == "");
  REQUIRE(desk.undo() == "");
  REQUIRE(desk.redo() == "");
  std::vector<Event> events(desk.events.rbegin(), desk.events.rend());
  events.insert(events.end(), desk.events.begin(), desk.events.end());
  const Drafted twice = foldDrafted("one", events);
  CHECK(twice.document.find("title")->asText() == "b");
  Event later = desk.events.back();
  later.eventId = later.intentId = "later";
  later.hlc.milliseconds += 1;
  later.type = "DesignFolded";
  desk.events.push_back(later);
  CHECK(desk.drafted().spoilt);
  CHECK(desk.document() == R"({"title": "b"})");
  CHECK(desk.change(R"([])") == "design.spoilt");
  CHECK(desk.undo() == "design.spoilt");
}

TEST_CASE("a pointer finds what is there and nothing else") {
  const Value root = json(R"({"a": [{"b/c": 1, "~": 2}], "": 3})");
  CHECK(core::base::at(root, "") == &root);
  CHECK(core::base::at(root, "/a/0/b~1c")->asInteger() == 1);
  CHECK(core::base::at(root, "/a/0/~0")->asInteger() == 2);
  CHECK(core::base::at(root, "/")->asInteger() == 3);
  for (const char* none : {"a", "/a/1", "/a/-", "/a/0x", "/a/0/b/c", "/b", "/a/0/b~1c/d"}) {
    INFO(none);
    CHECK(core::base::at(root, none) == nullptr);
  }
}

TEST_CASE("followed event by event a design is what folding all of them gives") {
  Desk desk(R"({"title": "a", "bands": []})");
  Drafted followed = desk.drafted();
  for (int i = 0; i < 20; ++i) {
    const std::string patch = i % 3 == 0
                                  ? R"([{"op": "add", "path": "/bands/-", "value": {"id": "x"}}])"
                                  : R"([{"op": "add", "path": "/title", "value": ")" + std::to_string(i) + "\"}]";
    REQUIRE(desk.change(patch.c_str()) == "");
    follow(followed, desk.events.back());
    const Drafted folded = desk.drafted();
    CHECK(followed.text() == folded.text());
    CHECK(followed.lastChange == folded.lastChange);
    CHECK(followed.changedUtc == folded.changedUtc);
  }
}
