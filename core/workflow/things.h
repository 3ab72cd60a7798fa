#pragma once
// The things of a job that steps are done for, with the properties techniques may ask about or put in words.
#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/craft/technique.h"
#include "core/design/design.h"

namespace core::workflow {

// The names of things in the texts of steps. The core has no words of its own: these are templates filled by name
// ("{id}", "{band}", "{side}", "{corner}", "{field}", "{number}", "{of}"), and the app passes those of its language.
// The defaults are the bare ids.
struct ThingWords {
  std::string board = "{id}";
  std::string band = "{id}";
  std::string strip = "{id}";
  std::string corner = "{id}";
  std::string line = "{id}";
  std::string spandrel = "{id}";
  std::string wash = "{id}";
  std::string leaf = "{id}";
  std::string part = "{id}";
  // Of several identical pieces: one of them, and a thing of one.
  std::string piece = "{number}";
  std::string ofPiece = "{name} {number}";
  // Words for "top", "right", "bottom", "left", "tl", "tr", "br", "bl"; a key without a word is shown itself.
  std::map<std::string, std::string> places;
  // The names of a touch test's answers where the technique has none.
  std::map<craft::WaitKind, craft::Answers> answers;
};

struct Thing {
  std::string id;  // "top", "inner", "inner.top", "inner.corner.tl", "field", "field#2"; "" for the job
  craft::ThingKind kind = craft::ThingKind::Once;
  std::string owner;                              // "" where it owns itself
  std::string pointer;                            // to its source in the job file; "" where it is owned
  std::map<std::string, std::string> properties;  // used by techniques to select; the same in every language
  std::map<std::string, std::string> words;       // the values of {placeholders}
  int order = 0;  // place among all things: outermost board first, then innermost band, line, spandrel, wash, leaf
};

// Returns whether the thing has every wanted property.
bool isMeant(const Thing& thing, const craft::Where& where);

// A property that a maker chooses for a thing itself: the job file has it under the property's own name. `values` lists
// all that the file format allows, in the order in which another is tried where one cannot be worked.
struct ThingChoice {
  std::string property;
  std::vector<std::string> values;
};
const std::vector<ThingChoice>& choicesOf(craft::ThingKind kind);

// A property value that replaces the job's own, to find out whether the job could be worked with it.
struct Supposed {
  std::string thing;
  std::string property;
  std::string value;
};

class Things {
 public:
  Things(const design::Design& design, const ThingWords& words, const Supposed& supposed = {});

  const Thing* find(const std::string& id) const;
  std::size_t count() const { return m_things.size(); }
  // Returns the job's figure of that id, or null.
  const design::Figure* figure(const std::string& id) const;
  // Returns how many things the queries below have looked at so far: the cost of a composition.
  std::size_t looks() const { return m_looks; }
  // Returns the thing a fact is about, or that thing's owner; null for a fact of the job or the shop.
  const Thing* ownerOfFact(const std::string& fact) const;
  // Returns the things of a kind in order. Bevel gives the boards whose bevel is coloured.
  std::vector<const Thing*> of(craft::ThingKind kind) const;
  // Returns the strips or corners of a band, or the parts of a field.
  std::vector<const Thing*> ownedBy(const std::string& owner, craft::ThingKind kind) const;
  // Returns the strips that meet in a corner, or the corners at the ends of a strip.
  std::vector<const Thing*> adjoining(const Thing& thing, craft::ThingKind kind) const;
  // Returns the things that touch the thing's area or are in it. A board's bevel is in reach of everything: weight on
  // the mount presses on it.
  std::vector<const Thing*> inReach(const Thing& thing, craft::ThingKind kind) const;
  // Returns the thing before this one among those of its kind and owner; null for the first.
  const Thing* previous(const Thing& thing, craft::ThingKind kind) const;
  // Returns the technique's own words for the answers of a wait's touch test, completed by those of its kind.
  craft::Answers answersTo(const craft::Wait& wait) const;
  // Splits a thing into parts "<id>#1".."<id>#n", once.
  void split(const std::string& id, int parts);

 private:
  void addBoards(const design::Job& job);
  void addBands(const design::Job& job);
  void addLines(const design::Job& job);
  void addSpandrels(const design::Job& job);
  void addWashes(const design::Job& job);
  void addLeaf(const design::Job& job);
  Thing& add(Thing thing, const std::string& nameTemplate);
  std::string nameOf(const Thing& thing, const std::string& nameTemplate) const;

  const design::Design& m_design;
  ThingWords m_words;
  Supposed m_supposed;
  // Stable addresses: steps keep pointers while parts are added.
  std::map<std::string, Thing> m_things;
  std::map<craft::ThingKind, std::vector<const Thing*>> m_byKind;  // in order
  std::unordered_map<std::string_view, const design::Figure*> m_figures;
  mutable std::size_t m_looks = 0;
  int m_nextOrder = 0;
};

}  // namespace core::workflow
