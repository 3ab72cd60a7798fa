#pragma once
// The parts that both care sheets are put together from. Only care_*.cpp include this.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/sheets/care_sheet.h"

namespace core::sheets {

// One technique of the job, with everything recorded of it.
struct CareWork {
  const workflow::WorkflowStep* first = nullptr;  // any step of it: title, reversal, shelf life
  std::vector<std::string> materials;             // in the techniques' words, each once
  bool ofShop = false;
  bool touchesWork = false;                       // some step needs or makes a fact of the work itself
  std::vector<std::string> preparations;          // shop techniques it needs, by id
  std::vector<const jobs::TimelineEntry*> done;   // steps done and not undone, in order
  std::vector<const jobs::TimelineEntry*> wrong;  // faults and mendings
  std::size_t steps = 0;                          // of the workflow
  bool all() const { return done.size() >= steps; }
};

class CareWriter {
 public:
  explicit CareWriter(const CareInput& input);

  const CareInput& input() const { return m_input; }
  const design::Job& job() const { return m_input.state.plan->design.job; }
  const design::Layout& layout() const { return m_input.state.design->layout; }
  // Both know the techniques of the job, in the order of the work; `work` finds one by its id.
  const std::vector<CareWork>& works() const { return m_works; }
  const CareWork* work(const std::string& technique) const;

  static base::Message text(const std::string& text);
  base::Message length(units::Length length) const;
  base::Message moment(const jobs::TimelineEntry& entry) const;
  // A figure as it is shown, computed, entered or as it was measured.
  CareLine figure(base::Message label, const std::string& id) const;
  static CareLine unknown(base::Message label);
  static CareLine entered(base::Message label, const std::string& text);  // unknown where the text is empty
  static CareLine stated(base::Message label, base::Message value, const std::string& source);
  // Entered, or Default where the job's file has nothing at the pointer.
  CareKnown knownAt(const std::string& pointer) const;
  // The days between which steps were done; nothing where none was.
  std::optional<base::Message> daysOf(const std::vector<const jobs::TimelineEntry*>& done) const;
  // Returns the climate of the rooms the steps were done in, as a span; nothing where none was entered.
  std::optional<base::Message> roomsOf(const std::vector<const jobs::TimelineEntry*>& done) const;
  // Returns every batch the steps were linked to, each once.
  std::vector<base::Message> batchesOf(const std::vector<const jobs::TimelineEntry*>& done) const;

 private:
  void gather();

  const CareInput& m_input;
  base::Value m_file;  // null where the text is empty or does not read
  units::UnitSystem m_units;
  design::Figures m_figures;  // in the units asked for
  std::vector<CareWork> m_works;
  std::map<std::string, std::size_t> m_byTechnique;
};

std::vector<CareSection> clientSections(const CareWriter& write);
std::vector<CareSection> conservatorSections(const CareWriter& write);

}  // namespace core::sheets
