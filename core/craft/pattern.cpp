#include "core/craft/pattern.h"

#include <algorithm>
#include <array>

#include "core/base/check.h"

namespace core::craft {

namespace {

template <typename Word, std::size_t kCount>
using WordTable = std::array<std::pair<Word, std::string_view>, kCount>;

constexpr WordTable<ThingKind, 11> kThingKinds = {{{ThingKind::Once, "once"},
                                                   {ThingKind::Board, "board"},
                                                   {ThingKind::Bevel, "bevel"},
                                                   {ThingKind::Band, "band"},
                                                   {ThingKind::Strip, "strip"},
                                                   {ThingKind::Corner, "corner"},
                                                   {ThingKind::Line, "line"},
                                                   {ThingKind::Spandrel, "spandrel"},
                                                   {ThingKind::Wash, "wash"},
                                                   {ThingKind::Leaf, "leaf"},
                                                   {ThingKind::Part, "part"}}};

constexpr WordTable<Relation, 7> kRelations = {{{Relation::Job, "job"},
                                                {Relation::This, "this"},
                                                {Relation::Owner, "owner"},
                                                {Relation::Reach, "reach"},
                                                {Relation::Adjoining, "adjoining"},
                                                {Relation::Outermost, "outermost"},
                                                {Relation::Innermost, "innermost"}}};

constexpr WordTable<WaitKind, 7> kWaitKinds = {{{WaitKind::Dry, "dry"},
                                                {WaitKind::Cure, "cure"},
                                                {WaitKind::Press, "press"},
                                                {WaitKind::Tack, "tack"},
                                                {WaitKind::Open, "open"},
                                                {WaitKind::Soak, "soak"},
                                                {WaitKind::Rest, "rest"}}};

constexpr WordTable<Hands, 5> kHands = {{{Hands::Clean, "clean"},
                                         {Hands::Paste, "paste"},
                                         {Hands::Paint, "paint"},
                                         {Hands::Leaf, "leaf"},
                                         {Hands::Blade, "blade"}}};

constexpr WordTable<SignalWord, 3> kSignalWords = {
    {{SignalWord::Warning, "WARNING"}, {SignalWord::Caution, "CAUTION"}, {SignalWord::Notice, "NOTICE"}}};

template <typename Word, std::size_t kCount>
std::string_view wordOf(const WordTable<Word, kCount>& table, Word value) {
  for (const auto& [entry, word] : table) {
    if (entry == value) return word;
  }
  ENSURE(false && "every enumerator has its word");
  return {};
}

template <typename Word, std::size_t kCount>
std::optional<Word> valueOf(const WordTable<Word, kCount>& table, std::string_view word) {
  for (const auto& [entry, text] : table) {
    if (text == word) return entry;
  }
  return std::nullopt;
}

template <typename Word, std::size_t kCount>
std::vector<Word> valuesOf(const WordTable<Word, kCount>& table) {
  std::vector<Word> values;
  for (const auto& [entry, word] : table) values.push_back(entry);
  return values;
}

std::string_view factKind(ThingKind kind) {
  if (kind == ThingKind::Once) return "job";
  return name(kind == ThingKind::Bevel ? ThingKind::Board : kind);
}

}  // namespace

std::string_view name(ThingKind kind) { return wordOf(kThingKinds, kind); }

std::optional<ThingKind> thingKind(std::string_view word) {
  const auto kind = valueOf(kThingKinds, word);
  return kind == ThingKind::Once ? std::nullopt : kind;
}

std::string_view name(Relation relation) { return wordOf(kRelations, relation); }
std::optional<Relation> relation(std::string_view word) { return valueOf(kRelations, word); }
std::string_view name(WaitKind kind) { return wordOf(kWaitKinds, kind); }
std::string_view name(Hands hands) { return wordOf(kHands, hands); }
std::vector<Relation> allRelations() { return valuesOf(kRelations); }
std::vector<Hands> allHands() { return valuesOf(kHands); }
std::string_view name(SignalWord word) { return wordOf(kSignalWords, word); }

ThingKind ownerKind(ThingKind kind, ThingKind outer) {
  if (kind == ThingKind::Strip || kind == ThingKind::Corner) return ThingKind::Band;
  return kind == ThingKind::Part ? outer : kind;
}

ThingKind outerKind(const Technique& technique) {
  return technique.when.mode == When::Mode::Each ? technique.when.kind : ThingKind::Once;
}

std::string normalised(const FactPattern& pattern, ThingKind kind, ThingKind outer) {
  if (pattern.every) return std::string(factKind(*pattern.every)) + ':' + pattern.is;
  const std::size_t dot = pattern.text.find('.');
  const std::string first = pattern.text.substr(0, dot);
  const bool ofThing = first == "this" || first == "previous";
  if (!ofThing && first != "owner") return "job:" + pattern.text;
  const std::string rest = dot == std::string::npos ? std::string() : pattern.text.substr(dot + 1);
  return std::string(factKind(ofThing ? kind : ownerKind(kind, outer))) + ':' + rest;
}

const std::vector<std::string>& literalWords() {
  static const std::vector<std::string> kWords = {"art",   "boards",   "piece", "package",  "size",
                                                  "paste", "adhesive", "wash",  "spandrel", "leaf"};
  return kWords;
}

bool isLiteralFact(std::string_view text) {
  const auto& words = literalWords();
  return std::find(words.begin(), words.end(), text.substr(0, text.find('.'))) != words.end();
}

}  // namespace core::craft
