#include "core/craft/pattern_reader.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/craft/where_reader.h"

namespace core::craft {

using base::Message;
using base::Node;
using base::ObjectReader;
using base::Problems;
using base::report;

namespace {

bool isFactWord(std::string_view word) {
  return !word.empty() && std::all_of(word.begin(), word.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
  });
}

bool areFactWords(const std::vector<std::string>& words) {
  return std::all_of(words.begin(), words.end(), [](const std::string& word) { return isFactWord(word); });
}

bool isOwned(ThingKind kind) {
  return kind == ThingKind::Strip || kind == ThingKind::Corner || kind == ThingKind::Part;
}

bool isOnce(const Scope& scope) { return scope.kind && *scope.kind == ThingKind::Once; }

bool checkFirstWord(const std::string& fact, const std::string& word, const Node& node, const Scope& scope,
                    Problems& problems) {
  const bool isOfOne = word == "this" || word == "previous";
  if (isOnce(scope) && (isOfOne || word == "owner")) {
    report(problems, node, Message("technique.word-without-thing").with("fact", fact).with("word", word));
    return false;
  }
  if (isOfOne) return true;
  if (word == "owner") {
    if (!scope.kind || isOwned(*scope.kind)) return true;
    report(problems, node,
           Message("technique.no-owner").with("fact", fact).with("kind", std::string(name(*scope.kind))));
    return false;
  }
  if (isLiteralFact(fact)) return true;
  report(problems, node,
         Message("technique.unknown-first-word")
             .with("fact", fact)
             .with("word", word)
             .with("words", base::join(literalWords(), ", ")));
  return false;
}

std::optional<FactPattern> readPlain(const Node& node, const Scope& scope, Allowed allowed, Problems& problems) {
  const auto text = base::readText(node, problems);
  if (!text) return std::nullopt;
  FactPattern pattern;
  pattern.text = *text;
  pattern.pointer = node.pointer;
  if (*text == "this.*") {
    if (allowed != Allowed::EveryFact) {
      report(problems, node, Message("technique.every-fact-not-here"));
      return std::nullopt;
    }
    if (!checkFirstWord(*text, "this", node, scope, problems)) return std::nullopt;
    return pattern;
  }
  const std::vector<std::string> words = base::split(*text, '.');
  if (words.size() < 2 || !areFactWords(words)) {
    report(problems, node, Message("technique.malformed-fact").with("fact", *text));
    return std::nullopt;
  }
  if (!checkFirstWord(*text, words.front(), node, scope, problems)) return std::nullopt;
  return pattern;
}

// Returns whether `every` things can have this relation to a thing of the scope's kind at all.
bool fits(Relation of, ThingKind every, ThingKind kind, const Scope& scope) {
  const auto belongsToOuter = [&] {
    if (every == ThingKind::Part) return scope.splits;
    return scope.outer == ThingKind::Band && (every == ThingKind::Strip || every == ThingKind::Corner);
  };
  switch (of) {
    case Relation::Job: return true;
    case Relation::This: return kind == scope.outer && kind != ThingKind::Once && belongsToOuter();
    case Relation::Owner: return isOwned(kind) && belongsToOuter();
    case Relation::Reach: return kind != ThingKind::Once;
    case Relation::Adjoining:
      return (kind == ThingKind::Corner && every == ThingKind::Strip) ||
             (kind == ThingKind::Strip && every == ThingKind::Corner);
    case Relation::Outermost:
    case Relation::Innermost: return every == ThingKind::Board || every == ThingKind::Bevel;
  }
  return false;
}

std::optional<FactPattern> readQuantified(const Node& node, const Scope& scope, Problems& problems) {
  static const std::vector<ThingKind> kKinds = {
      ThingKind::Board, ThingKind::Bevel,    ThingKind::Band, ThingKind::Strip, ThingKind::Corner,
      ThingKind::Line,  ThingKind::Spandrel, ThingKind::Wash, ThingKind::Leaf,  ThingKind::Part};
  static const std::vector<Relation> relations = allRelations();
  const auto words = [](const auto& values) {
    std::vector<std::string> texts;
    for (const auto value : values) texts.emplace_back(name(value));
    return texts;
  };
  ObjectReader object(node, problems);
  const auto every = base::readChoice(object.required("every"), words(kKinds), problems);
  const Node ofNode = object.optional("of");
  const auto of = base::readChoice(ofNode, words(relations), problems);
  const Node whereNode = object.optional("where");
  const Node isNode = object.required("is");
  const auto is = base::readText(isNode, problems);
  object.finish();
  if (is && !areFactWords(base::split(*is, '.'))) {
    report(problems, isNode, Message("technique.malformed-every-fact").with("fact", *is));
    return std::nullopt;
  }
  if (!every || !is || (ofNode && !of)) return std::nullopt;
  FactPattern pattern;
  pattern.every = kKinds[*every];
  pattern.of = of ? relations[*of] : Relation::Job;
  pattern.where = readWhere(whereNode, pattern.every, problems);
  pattern.is = *is;
  pattern.pointer = node.pointer;
  if (scope.kind && !fits(pattern.of, *pattern.every, *scope.kind, scope)) {
    const auto told = [&](const char* id) {
      return Message(id)
          .with("every", std::string(name(*pattern.every)))
          .with("relation", std::string(name(pattern.of)));
    };
    report(problems, ofNode,
           isOnce(scope) ? told("technique.relation-without-thing")
                         : told("technique.relation-not-here").with("kind", std::string(name(*scope.kind))));
    return std::nullopt;
  }
  return pattern;
}

bool isObject(const Node& node) { return node && node.value->kind() == base::Value::Kind::Object; }

std::optional<Need> readNeed(const Node& node, const Scope& scope, Problems& problems) {
  Need need;
  if (!isObject(node) || node.value->find("anyOf") == nullptr) {
    auto pattern = readPattern(node, scope, Allowed::EveryToo, problems);
    if (!pattern) return std::nullopt;
    need.alternatives.push_back(*std::move(pattern));
    return need;
  }
  ObjectReader object(node, problems);
  const Node list = object.required("anyOf");
  need.alternatives = readPatterns(list, scope, Allowed::EveryToo, problems);
  object.finish();
  if (list.value->kind() == base::Value::Kind::Array && list.value->items().empty()) {
    report(problems, list, Message("technique.empty-list"));
  }
  if (need.alternatives.empty()) return std::nullopt;
  return need;
}

}  // namespace

std::optional<FactPattern> readPattern(const Node& node, const Scope& scope, Allowed allowed, Problems& problems) {
  if (!node) return std::nullopt;
  if (!isObject(node)) return readPlain(node, scope, allowed, problems);
  if (node.value->find("anyOf") != nullptr) {
    report(problems, node, Message("technique.any-of-not-here"));
    return std::nullopt;
  }
  if (allowed == Allowed::Plain) {
    report(problems, node, Message("technique.every-not-here"));
    return std::nullopt;
  }
  return readQuantified(node, scope, problems);
}

std::vector<FactPattern> readPatterns(const Node& node, const Scope& scope, Allowed allowed, Problems& problems) {
  std::vector<FactPattern> patterns;
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return patterns;
  for (const Node& item : *items) {
    if (auto pattern = readPattern(item, scope, allowed, problems)) patterns.push_back(*std::move(pattern));
  }
  return patterns;
}

std::vector<Need> readNeeds(const Node& node, const Scope& scope, Problems& problems) {
  std::vector<Need> needs;
  const auto items = base::readItems(node, problems, kMostEntries);
  if (!items) return needs;
  for (const Node& item : *items) {
    if (auto need = readNeed(item, scope, problems)) needs.push_back(*std::move(need));
  }
  return needs;
}

}  // namespace core::craft
