#pragma once
// The questions of a design, in the order a maker decides: sections of fields, each a place in the job file. A field's
// answer is written as a JSON Patch of the document; the core decides whether the job is then consistent.
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "app/designing/samples.h"
#include "core/base/json.h"
#include "core/design/design.h"
#include "core/units/length.h"

namespace app::designing {

// One of several answers to a field, or something that can be done there.
struct Option {
  QString label;
  QString why;  // of a proposal; "" for none
  core::base::Value patch;
  bool chosen = false;
  Sample sample = {};  // what it looks like; null where there is nothing to see
};

struct Field {
  enum class Kind {
    Length,  // keyed in
    Number,  // keyed in, without a unit
    Text,    // written
    Date,    // a day, written
    Choice,  // one of `options`
    Act,     // does at once the first of its options that can be done
  };
  Kind kind = Kind::Length;
  QString label;
  QString of;           // its owner, "under board"; "" where the section names it
  std::string pointer;  // of its value in the document
  QString value;        // as entered; what holds where nothing is
  bool entered = false;
  bool missing = false;  // has to be entered and is not
  QString note;          // what is computed from it
  QStringList problems;  // of its place
  // Of a text they are proposals beside what is written.
  std::vector<Option> options;
  Sample sample;       // what the value looks like
  bool plain = false;  // the samples of its options tell all: they stand without words
  // Finds answers that take time, when the field is opened. It uses the document and design the field was made from,
  // which must still exist.
  std::function<std::vector<Option>()> offers;
  // Of a length that is no value of the document: what keying it in comes to. It uses the document and design the field
  // was made from, which must still exist.
  struct Keyed {
    core::base::Value patch;
    QString says;
    QString barred;  // why it cannot be entered; "" where it can
  };
  std::function<Keyed(core::units::Length)> keyed;
  // Nothing is wrong there, but the maker should look.
  bool look = false;
  QStringList notices;  // what there is to look at
  QString mend;         // what the first of its offers does about them; "" for none
  double per = 1;       // of a number: keyed in as so many times its value; 100 for a share shown in per cent
  bool past = false;    // of a day: it is in the past, not to come
  std::string element;  // of the drawing that it shapes; "" for none
};

struct Section {
  QString name;
  QString summary;
  std::vector<Field> fields;
  QStringList problems;  // of places of the section that are no field's

  bool hasToLook() const;           // nothing is wrong, but the maker should look
  QStringList allProblems() const;  // with those of its fields
  QStringList missing() const;      // the names of what has to be entered and is not
  QStringList notices() const;      // why the maker should look
};

// Returns a document to begin from: it is empty for the work, and usual for the rest (common practice, no source), in
// round measures of these units.
core::base::Value freshDesign(core::units::UnitSystem units = core::units::UnitSystem::Millimetres);

// The names of boards and papers that the shop has.
struct AtHand {
  std::vector<std::string> boards, papers;
};

// `document` in any state; `read` is what the core makes of it. `units`: of a document without the size of the work.
std::vector<Section> sectionsOf(const core::base::Value& document, const core::design::ReadDesign& read,
                                core::units::UnitSystem units = core::units::UnitSystem::Millimetres,
                                const AtHand& atHand = {});

// A problem goes to the field of its place, or to the section nearest to it. A value that is only not entered yet makes
// its field a missing one. Requires a section.
void place(std::vector<Section>& sections, const core::base::Problem& problem, const QString& said);

// A notice is noted at the field of its place, which is then looked at. Returns false where there is no such field.
bool note(std::vector<Section>& sections, const core::base::Problem& notice, const QString& said);

// A patch that puts a value at a pointer, with what is missing above it.
core::base::Value putAt(const core::base::Value& document, const std::string& pointer, core::base::Value value);

}  // namespace app::designing
