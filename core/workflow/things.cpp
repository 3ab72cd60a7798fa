#include "core/workflow/things.h"

#include <algorithm>
#include <set>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/workflow/fill.h"
#include "core/workflow/property_words.h"

namespace core::workflow {
namespace {

using craft::ThingKind;

// Room between things for the parts of each.
constexpr int kOrderStep = 10'000;

bool hasBevel(const Thing& board) { return board.properties.at("coloured") == "yes"; }

}  // namespace

bool isMeant(const Thing& thing, const craft::Where& where) {
  return std::all_of(where.begin(), where.end(), [&](const auto& condition) {
    const auto property = thing.properties.find(condition.first);
    const std::string value = property == thing.properties.end() ? "" : property->second;
    return std::find(condition.second.begin(), condition.second.end(), value) != condition.second.end();
  });
}

const std::vector<ThingChoice>& choicesOf(ThingKind kind) {
  using design::Grain;
  using design::Motif;
  using design::SizeKind;
  const auto words = [](auto... values) { return std::vector<std::string>{std::string(word(values))...}; };
  static const std::vector<std::string> kGrains = words(Grain::Along, Grain::Across, Grain::Any);
  static const std::map<ThingKind, std::vector<ThingChoice>> kChoices = {
      {ThingKind::Band, {{"motif", words(Motif::Mirror, Motif::Directional, Motif::Plain)}, {"grain", kGrains}}},
      {ThingKind::Spandrel, {{"from", {"springing", "sill"}}, {"grain", kGrains}}},
      {ThingKind::Wash, {{"order", {"linesFirst", "washFirst"}}}},
      {ThingKind::Leaf,
       {{"size", words(SizeKind::MethylCellulose, SizeKind::Starch, SizeKind::Water, SizeKind::Oil)},
        {"method", {"laid", "scattered"}}}},
  };
  static const std::vector<ThingChoice> kNone;
  const auto found = kChoices.find(kind);
  return found == kChoices.end() ? kNone : found->second;
}

Things::Things(const design::Design& design, const ThingWords& words, const Supposed& supposed)
    : m_design(design), m_words(words), m_supposed(supposed) {
  for (const design::Figure& figure : design.figures.all()) m_figures.emplace(figure.id, &figure);
  addBoards(design.job);
  addBands(design.job);
  addLines(design.job);
  addSpandrels(design.job);
  addWashes(design.job);
  addLeaf(design.job);
}

Thing& Things::add(Thing thing, const std::string& nameTemplate) {
  if (thing.order == 0) thing.order = m_nextOrder += kOrderStep;
  thing.properties["id"] = thing.id;
  if (!m_supposed.thing.empty() && thing.id == m_supposed.thing) {
    thing.properties[m_supposed.property] = m_supposed.value;
  }
  thing.words.insert(thing.properties.begin(), thing.properties.end());
  thing.words["name"] = nameOf(thing, nameTemplate);
  const std::string id = thing.id;
  Thing& added = m_things.insert_or_assign(id, std::move(thing)).first->second;
  std::vector<const Thing*>& ofKind = m_byKind[added.kind];
  const auto after = std::upper_bound(ofKind.begin(), ofKind.end(), added.order,
                                      [](int order, const Thing* other) { return order < other->order; });
  ofKind.insert(after, &added);
  return added;
}

const design::Figure* Things::figure(const std::string& id) const {
  const auto found = m_figures.find(id);
  return found == m_figures.end() ? nullptr : found->second;
}

std::string Things::nameOf(const Thing& thing, const std::string& nameTemplate) const {
  const std::string once = fill(sayingOnce(nameTemplate, thing.id), thing.words);
  const bool taken = std::any_of(m_things.begin(), m_things.end(), [&](const auto& entry) {
    return entry.first != thing.id && entry.second.words.at("name") == once;
  });
  // Said twice is better than two things of one name.
  return taken ? fill(nameTemplate, thing.words) : once;
}

void Things::addBoards(const design::Job& job) {
  const std::string shape(word(job.window.form));
  const bool shaped = isShaped(job);
  for (std::size_t i = 0; i < job.boards.size(); ++i) {
    const design::Board& board = job.boards[i];
    Thing thing;
    thing.id = board.id;
    thing.pointer = base::pointerTo("/mount/boards", i);
    thing.kind = ThingKind::Board;
    const bool first = i == 0;
    const bool last = i + 1 == job.boards.size();
    thing.properties["place"] = first && last ? "only" : first ? "outermost" : last ? "innermost" : "middle";
    thing.properties["window"] = shaped ? "shaped" : "straight";
    thing.properties["shape"] = shape;
    thing.properties["coloured"] = board.bevelColour ? "yes" : "no";
    if (board.bevelColour) thing.properties["colour"] = *board.bevelColour;
    add(std::move(thing), m_words.board);
  }
}

void Things::addBands(const design::Job& job) {
  const auto placeWord = [&](const std::string& place) {
    const auto found = m_words.places.find(place);
    return found == m_words.places.end() ? place : found->second;
  };
  for (std::size_t i = 0; i < job.bands.size(); ++i) {
    const design::Band& band = job.bands[i];
    Thing thing;
    thing.id = band.id;
    thing.pointer = base::pointerTo("/bands", i);
    thing.kind = ThingKind::Band;
    thing.properties = {{"paper", band.paper},
                        {"motif", std::string(word(band.motif))},
                        {"grain", std::string(word(band.grain.value_or(design::Grain::Any)))},
                        {"repeat", band.repeat ? "yes" : "no"}};
    const Thing& owner = add(std::move(thing), m_words.band);
    const auto addOwned = [&](ThingKind kind, const std::string& id, const std::string& key, const std::string& place,
                              const std::string& value, const std::string& nameTemplate) {
      Thing owned;
      owned.id = id;
      owned.kind = kind;
      owned.owner = band.id;
      owned.properties = owner.properties;
      owned.properties[key] = value;
      owned.words = {{key, placeWord(place)}, {"band", owner.words.at("name")}};
      add(std::move(owned), nameTemplate);
    };
    for (const char* side : {"top", "right", "bottom", "left"}) {
      addOwned(ThingKind::Strip, band.id + '.' + side, "side", side, side, m_words.strip);
    }
    for (const auto& [corner, value] :
         {std::pair{"tl", "top left"}, {"tr", "top right"}, {"br", "bottom right"}, {"bl", "bottom left"}}) {
      addOwned(ThingKind::Corner, band.id + ".corner." + corner, "corner", corner, value, m_words.corner);
    }
  }
}

void Things::addLines(const design::Job& job) {
  // From the window outwards, so that no wet line is crossed.
  for (const std::string& id : m_design.layout.linesFromWindow()) {
    const auto line =
        std::find_if(job.lines.begin(), job.lines.end(), [&](const auto& entry) { return entry.id == id; });
    Thing thing;
    thing.id = id;
    thing.pointer = base::pointerTo("/lines", static_cast<std::size_t>(line - job.lines.begin()));
    thing.kind = ThingKind::Line;
    const bool window = line->along == design::Edge::Window;
    thing.properties = {{"colour", line->colour},
                        {"along", window ? "window" : "band"},
                        {"gap", line->gap > units::Length() ? "clear" : "none"},
                        {"course", window && isShaped(job) ? "curved" : "straight"},
                        {"edge", window                                   ? "window"
                                 : line->along == design::Edge::BandInner ? "inner"
                                                                          : "outer"}};
    add(std::move(thing), m_words.line);
  }
}

void Things::addSpandrels(const design::Job& job) {
  for (std::size_t i = 0; i < job.spandrels.size(); ++i) {
    const design::Spandrel& spandrel = job.spandrels[i];
    Thing thing;
    thing.id = spandrel.id;
    thing.pointer = base::pointerTo("/spandrels", i);
    thing.kind = ThingKind::Spandrel;
    thing.properties = {{"paper", spandrel.paper},
                        {"from", spandrel.fromSill ? "sill" : "springing"},
                        {"grain", std::string(word(spandrel.grain.value_or(design::Grain::Any)))}};
    add(std::move(thing), m_words.spandrel);
  }
}

void Things::addWashes(const design::Job& job) {
  for (std::size_t i = 0; i < job.washes.size(); ++i) {
    const design::Wash& wash = job.washes[i];
    Thing thing;
    thing.id = wash.id;
    thing.pointer = base::pointerTo("/washes", i);
    thing.kind = ThingKind::Wash;
    thing.properties = {{"colour", wash.colour}, {"order", wash.washFirst ? "washFirst" : "linesFirst"}};
    add(std::move(thing), m_words.wash);
  }
}

void Things::addLeaf(const design::Job& job) {
  for (std::size_t i = 0; i < job.leaf.size(); ++i) {
    const design::Leaf& leaf = job.leaf[i];
    Thing thing;
    thing.id = leaf.id;
    thing.pointer = base::pointerTo("/leaf", i);
    thing.kind = ThingKind::Leaf;
    thing.properties = {{"method", leaf.method == design::LeafMethod::Laid ? "laid" : "scattered"},
                        {"size", std::string(word(leaf.size))},
                        {"metal", std::string(word(leaf.metal))},
                        {"region", std::string(word(leaf.region))}};
    add(std::move(thing), m_words.leaf);
  }
}

const Thing* Things::find(const std::string& id) const {
  const auto found = m_things.find(id);
  return found == m_things.end() ? nullptr : &found->second;
}

const Thing* Things::ownerOfFact(const std::string& fact) const {
  // "field#2.sized", "inner.corner.tl.mitred": the longest beginning that is a thing.
  const Thing* thing = nullptr;
  for (std::size_t end = fact.rfind('.'); thing == nullptr && end != std::string::npos && end > 0;
       end = fact.rfind('.', end - 1)) {
    thing = find(fact.substr(0, end));
  }
  return thing == nullptr || thing->owner.empty() ? thing : find(thing->owner);
}

std::vector<const Thing*> Things::of(ThingKind kind) const {
  const auto found = m_byKind.find(kind == ThingKind::Bevel ? ThingKind::Board : kind);
  if (found == m_byKind.end()) return {};
  m_looks += found->second.size();
  std::vector<const Thing*> things = found->second;
  if (kind == ThingKind::Bevel) std::erase_if(things, [](const Thing* thing) { return !hasBevel(*thing); });
  return things;
}

std::vector<const Thing*> Things::ownedBy(const std::string& owner, ThingKind kind) const {
  std::vector<const Thing*> things = of(kind);
  std::erase_if(things, [&](const Thing* thing) { return thing->owner != owner; });
  return things;
}

std::vector<const Thing*> Things::adjoining(const Thing& thing, ThingKind kind) const {
  // A corner is called by the strips that meet in it.
  const auto meets = [](const std::string& side, const std::string& corner) {
    return corner.find(side) != std::string::npos;
  };
  std::vector<const Thing*> things = ownedBy(thing.owner, kind);
  std::erase_if(things, [&](const Thing* other) {
    if (thing.kind == ThingKind::Corner && kind == ThingKind::Strip) {
      return !meets(other->properties.at("side"), thing.properties.at("corner"));
    }
    if (thing.kind == ThingKind::Strip && kind == ThingKind::Corner) {
      return !meets(thing.properties.at("side"), other->properties.at("corner"));
    }
    return true;
  });
  return things;
}

std::vector<const Thing*> Things::inReach(const Thing& thing, ThingKind kind) const {
  if (kind == ThingKind::Board || kind == ThingKind::Bevel) return of(kind);
  const std::string& id = thing.owner.empty() ? thing.id : thing.owner;
  const std::vector<std::string> near = m_design.layout.inReachOf(id);
  const std::set<std::string_view> ids(near.begin(), near.end());
  m_looks += near.size();
  std::vector<const Thing*> things = of(kind);
  std::erase_if(things, [&](const Thing* other) {
    const std::string& otherId = other->owner.empty() ? other->id : other->owner;
    return !ids.contains(otherId);
  });
  return things;
}

const Thing* Things::previous(const Thing& thing, ThingKind kind) const {
  const Thing* before = nullptr;
  for (const Thing* other : of(kind)) {
    if (other->owner == thing.owner && other->order < thing.order) before = other;
  }
  return before;
}

craft::Answers Things::answersTo(const craft::Wait& wait) const {
  const auto ofKind = m_words.answers.find(wait.kind);
  const craft::Answers plain = ofKind == m_words.answers.end() ? craft::Answers{} : ofKind->second;
  const auto either = [](const std::string& own, const std::string& other) { return own.empty() ? other : own; };
  return {either(wait.answers.notYet, plain.notYet), either(wait.answers.found, plain.found),
          wait.closes ? either(wait.answers.pastIt, plain.pastIt) : std::string()};
}

void Things::split(const std::string& id, int parts) {
  const Thing whole = m_things.at(id);
  for (int number = 1; number <= parts; ++number) {
    Thing part;
    part.id = id + '#' + std::to_string(number);
    if (m_things.contains(part.id)) continue;
    part.kind = ThingKind::Part;
    part.owner = id;
    part.order = whole.order + number;
    part.properties = whole.properties;
    part.properties["number"] = std::to_string(number);
    part.properties["of"] = std::to_string(parts);
    part.words = {{"field", whole.words.at("name")}};
    // A field that is not really split is called by its own name.
    add(std::move(part), parts == 1 ? "{field}" : m_words.part);
  }
}

}  // namespace core::workflow
