#pragma once
// Entries of a document's lists: their names, and the first content of a new one. Only this folder uses it.
#include <initializer_list>
#include <string>
#include <vector>

#include "app/designing/builder.h"

namespace app::designing {

// A property's values as the file writes them and as they are called.
std::vector<Named> named(const char* property, std::initializer_list<const char*> values);
std::vector<Named> colours();

// What is entered by its name and shown as it looks: a line of text, with the names at hand as proposals.
enum class Material { Board, Paper, Wash };
Field& material(Builder& build, const QString& label, const std::string& pointer, Material of);
// A choice of colours, each as it looks; one that is entered and not among them is one more.
Field& colour(Builder& build, const QString& label, const std::string& pointer);

// Calls `use` for each entry of a list, with its pointer and id.
template <typename Use>
void eachOf(const Builder& build, const std::string& list, Use use) {
  for (std::size_t i = 0; i < build.countAt(list); ++i) {
    const std::string pointer = core::base::pointerTo(list, i);
    use(pointer, build.textAt(pointer + "/id"));
  }
}
std::vector<std::string> idsOf(const Builder& build, const std::string& list);

// Returns an entry's name. An entry that is named after its own kind has the word only once: "line", not "line line".
QString entryName(const QString& pattern, const std::string& id);
// Returns a text such as "takes %1 leaves"; empty where the figure is not known.
QString noted(const QString& figure, const char* text);

// Returns the first of the words that is not yet an id on the piece; numbered where all are in use.
std::string freeName(const Builder& build, std::initializer_list<const char*> words);
core::base::Value entryOf(const std::string& id);
// Appends to a list that may not be there yet.
core::base::Value appended(const Builder& build, const std::string& list, core::base::Value entry);
// Takes the last entry out.
void leaveOut(Builder& build, const QString& label, const std::string& list);

}  // namespace app::designing
