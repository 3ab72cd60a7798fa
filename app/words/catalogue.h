#pragma once
// The words for each id. They are divided by the part of the program they belong to, so that each list can be read in
// one go.
#include <QString>
#include <optional>
#include <string_view>
#include <vector>

namespace app::words {

struct Entry {
  std::string_view id;
  const char* source;  // English; {name} stands for an argument
};

const std::vector<Entry>& noticeEntries();     // what to know of a design before the first cut
const std::vector<Entry>& jobEntries();        // job files and their lengths, temperatures, conflicts
const std::vector<Entry>& techniqueEntries();  // technique files and what is composed of them
const std::vector<Entry>& benchEntries();      // the record, its store, what the bench offers and refuses
const std::vector<Entry>& waitEntries();       // on waits and their reasons
const std::vector<Entry>& commandEntries();    // the command line
const std::vector<Entry>& madeEntries();       // what was measured
const std::vector<Entry>& matchEntries();      // on ways to make a band's corners meet
const std::vector<Entry>& materialEntries();   // cutting lists, sheets, amounts, cost
const std::vector<Entry>& roomEntries();       // the room's climate sensor, the machine's sleep and battery
const std::vector<Entry>& designEntries();     // designs at the desk
const std::vector<Entry>& recordEntries();     // the record as people read it: notes, photographs, stock, batches
const std::vector<Entry>& careEntries();       // sheets that go with a piece
const std::vector<Entry>& jobsEntries();       // putting jobs away, making them once more, handing them on

// Returns all of them.
std::vector<Entry> allEntries();

struct FigureWords {
  std::string_view kind;
  const char* label;  // {id} stands for the element
  const char* datum;
};

const std::vector<FigureWords>& figureEntries();

// A source text in the language shown.
QString translated(const char* source);
// The source text of a message id; null where there is none.
const char* sourceOf(std::string_view id);
const FigureWords* figureWordsOf(std::string_view kind);

}  // namespace app::words
