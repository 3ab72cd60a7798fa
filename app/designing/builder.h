#pragma once
// Gathers the fields of a design section by section. Only this folder uses it.
#include <initializer_list>
#include <utility>

#include "app/designing/fields.h"
#include "app/designing/usual.h"
#include "core/design/job_edit.h"

namespace app::designing {

// A choice as the file writes it, and as it is called.
using Named = std::pair<const char*, QString>;

class Builder {
 public:
  // `units`: where the document does not say itself what it is measured in.
  Builder(const core::base::Value& document, const core::design::ReadDesign& read,
          UnitSystem units = UnitSystem::Millimetres, AtHand atHand = {})
      : m_document(document), m_read(read), m_units(unitsOf(document).value_or(units)), m_atHand(std::move(atHand)) {}

  void section(const QString& name, const QString& summary = {});
  // Fields that follow belong to it.
  void of(const QString& name, const std::string& element = "");

  // `usual`: what holds where nothing is entered; "" where it has to be.
  Field& length(const QString& label, const std::string& pointer, const QString& usual = {});
  Field& number(const QString& label, const std::string& pointer, const QString& usual = {});
  // A share of 1, shown and keyed in in per cent.
  Field& share(const QString& label, const std::string& pointer);
  Field& text(const QString& label, const std::string& pointer, const QString& usual = {});
  Field& choice(const QString& label, const std::string& pointer, const std::vector<Named>& options,
                const char* usual = "");
  // A day; what was understood of it, or how it may be written, is its note.
  Field& date(const QString& label, const std::string& pointer);
  Field& act(const QString& label, core::base::Value patch);
  // Several ways to do the same, the likeliest first.
  Field& act(const QString& label, const std::vector<core::base::Value>& patches);

  // The field added last.
  Field& last() { return m_sections.back().fields.back(); }

  std::vector<Section> finish();

  const core::base::Value& document() const { return m_document; }
  const core::design::Design* design() const { return m_read.design ? &*m_read.design : nullptr; }
  const core::base::Value* at(const std::string& pointer) const { return core::base::at(m_document, pointer); }
  // The text there; "" where there is none.
  std::string textAt(const std::string& pointer) const;
  std::size_t countAt(const std::string& pointer) const;
  // A figure as it is shown; "" where the design does not lay out.
  QString figure(const std::string& id) const;
  // Returns the same for use in a document, on the steps of the display; `otherwise` where there is none.
  std::string written(const std::string& id, Usual otherwise) const;
  UnitSystem units() const { return m_units; }
  const AtHand& atHand() const { return m_atHand; }
  // What the desk enters of its own accord.
  std::string usual(Usual what) const { return designing::usual(what, m_units); }

 private:
  Field& add(Field::Kind kind, const QString& label, const std::string& pointer, const QString& usual);

  const core::base::Value& m_document;
  const core::design::ReadDesign& m_read;
  UnitSystem m_units;
  AtHand m_atHand;
  std::vector<Section> m_sections;
  QString m_of;
  std::string m_element;
};

// "420 mm × 350 mm"; "" where either is not known yet.
QString sizeText(const QString& width, const QString& height);
// Returns a length computed for the design as it is shown.
QString lengthShown(const Builder& build, double millimetres);
// Returns it without its millimetres, as a row of the schedule has it; inches keep their unit.
QString bare(const QString& length);
// Returns a count as text, for a section's summary.
QString counted(std::size_t count);

// Returns the place of the value that is meant, since a missing key is reported at its parent.
std::string placeOf(const core::base::Problem& problem);

core::base::Value patchOf(std::initializer_list<core::base::Value> operations);
core::base::Value addTo(const std::string& pointer, core::base::Value value);
core::base::Value removeFrom(const std::string& pointer);
core::base::Value patchOfEdits(const core::base::Value& document, const std::vector<core::design::JobEdit>& edits);

}  // namespace app::designing
