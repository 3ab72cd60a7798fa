#include "core/workflow/notices.h"

#include <algorithm>
#include <set>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/craft/pattern.h"
#include "core/design/laps.h"
#include "core/design/notices.h"
#include "core/design/package_parts.h"

namespace core::workflow {
namespace {

using base::Message;
using craft::Measure;
using craft::Quantity;
using craft::Technique;
using craft::Want;
using design::noticeAt;

// The rebate's play is wanted for each so much of the longer side.
constexpr double kPlayFor = 600;

// Nothing for the climate of a room that is not known.
std::optional<double> valueOf(Measure measure, const design::Design& design, const std::optional<units::Room>& room) {
  const design::Job& job = design.job;
  const auto support = design::supportOf(job);
  switch (measure) {
    case Measure::Lap: return design::lapsOf(design.layout).edge;
    case Measure::CornerLap: return design::lapsOf(design.layout).corner;
    case Measure::Air: return design::airOf(job).inMillimetres();
    case Measure::Artwork: return job.artwork.thickness.inMillimetres();
    case Measure::Support: return support ? support->thickness.inMillimetres() : 0;
    case Measure::Glazing: return job.package.glazing.inMillimetres();
    case Measure::BackMount: return job.package.backMount.inMillimetres();
    case Measure::Backing: return job.package.backing.inMillimetres();
    case Measure::Play:
      return job.rebate.allowanceTotal.inMillimetres() * kPlayFor /
             std::max(design.layout.outerWidth, design.layout.outerHeight);
    case Measure::Temperature: return room ? std::optional(room->temperature.inCelsius()) : std::nullopt;
    case Measure::Humidity: return room ? std::optional(room->humidity.inPercent()) : std::nullopt;
  }
  return std::nullopt;
}

base::Argument shown(double value, Quantity quantity) {
  if (quantity == Quantity::Length) return base::Millimetres{value};
  return value;
}

std::string_view name(Quantity quantity) {
  switch (quantity) {
    case Quantity::Length: return "length";
    case Quantity::Temperature: return "temperature";
    case Quantity::Humidity: return "humidity";
  }
  return "";
}

class Gathering {
 public:
  Gathering(const design::Design& design, const Workflow& workflow, const craft::Catalogue& catalogue,
            const ThingWords& words, const std::optional<units::Room>& room)
      : m_design(design), m_workflow(workflow), m_catalogue(catalogue), m_things(design, words), m_room(room) {
    for (const WorkflowStep& step : workflow.steps) m_used.insert(step.technique);
  }

  std::vector<base::Problem> all() {
    idleChoices();
    for (const Technique* technique : m_catalogue.all()) {
      if (!m_used.contains(technique->id)) continue;
      for (const Want& want : technique->wants) {
        if (want.of) measure(*technique, want);
        if (!want.where.empty()) such(*technique, want);
        if (want.without) without(*technique, want);
      }
    }
    for (Unmet& unmet : m_unmet) {
      // The words put a pair of quotes round the whole.
      const std::string titles = base::join(unmet.titles, "\", \"");
      m_notices.push_back(noticeAt(unmet.pointer, std::move(unmet.message).with("techniques", titles)));
    }
    return std::move(m_notices);
  }

 private:
  // One measure that several techniques want for one reason is told once.
  struct Unmet {
    std::string pointer;
    Message message;
    std::vector<std::string> titles;
  };

  void tell(std::string pointer, Message message) {
    m_notices.push_back(noticeAt(std::move(pointer), std::move(message)));
  }

  // A choice for something that the piece has not does no harm, but the maker may have meant another piece.
  void idleChoices() {
    for (const auto& [role, id] : m_design.job.techniques) {
      if (m_used.contains(id)) continue;
      const Technique* technique = m_catalogue.find(id);
      tell(base::pointerTo("/techniques", role),
           Message("design.choice-idle").with("technique", technique == nullptr ? id : technique->title));
    }
  }

  void measure(const Technique& technique, const Want& want) {
    constexpr double kHair = 1e-9;
    const auto value = valueOf(*want.of, m_design, m_room);
    if (!value || (want.isLeast ? *value >= want.bound - kHair : *value <= want.bound + kHair)) return;
    const craft::MeasureTraits& traits = craft::traitsOf(*want.of);
    const std::string quantity(name(traits.quantity));
    Message message = Message((want.isLeast ? "design.wants-least." : "design.wants-most.") + quantity)
                          .with("measure", Message("design.measure." + std::string(traits.name)).id)
                          .with("is", shown(*value, traits.quantity))
                          .with("wanted", shown(want.bound, traits.quantity))
                          .with("why", want.why);
    const auto same =
        std::find_if(m_unmet.begin(), m_unmet.end(), [&](const Unmet& unmet) { return unmet.message == message; });
    if (same != m_unmet.end()) {
      same->titles.push_back(technique.title);
    } else {
      m_unmet.push_back({std::string(traits.place), std::move(message), {technique.title}});
    }
  }

  void such(const Technique& technique, const Want& want) {
    if (technique.when.mode != craft::When::Mode::Each) return;
    for (const Thing* thing : m_things.of(technique.when.kind)) {
      if (!isMeant(*thing, technique.when.where)) continue;
      for (const auto& [property, values] : want.where) {
        if (isMeant(*thing, {{property, values}})) continue;
        const auto now = thing->properties.find(property);
        std::vector<std::string> instead = values;
        std::erase(instead, "unknown");
        if (now != thing->properties.end() && now->second == "unknown") {
          tell(thing->pointer + '/' + property, Message("design.wants-named")
                                                    .with("technique", technique.title)
                                                    .with("name", thing->words.at("name"))
                                                    .with("property", property)
                                                    .with("instead", base::join(instead, "\n"))
                                                    .with("why", want.why));
          continue;
        }
        tell(thing->pointer + '/' + property, Message("design.wants-such")
                                                  .with("technique", technique.title)
                                                  .with("name", thing->words.at("name"))
                                                  .with("property", property)
                                                  .with("now", now == thing->properties.end() ? "" : now->second)
                                                  .with("instead", base::join(instead, "\n"))
                                                  .with("why", want.why));
      }
    }
  }

  void without(const Technique& technique, const Want& want) {
    std::vector<std::string> facts = {want.without->text};
    if (want.without->every) {
      facts.clear();
      for (const Thing* thing : m_things.of(*want.without->every)) {
        if (isMeant(*thing, want.without->where)) facts.push_back(thing->id + '.' + want.without->is);
      }
    }
    for (const std::string& fact : facts) {
      const std::vector<std::size_t> making = m_workflow.making(fact);
      if (making.empty()) continue;
      const std::string pointer =
          technique.role.empty() ? std::string("/techniques") : base::pointerTo("/techniques", technique.role);
      return tell(pointer, Message("design.wants-without")
                               .with("technique", technique.title)
                               .with("other", m_workflow.steps[making.front()].techniqueTitle)
                               .with("why", want.why));
    }
  }

  const design::Design& m_design;
  const Workflow& m_workflow;
  const craft::Catalogue& m_catalogue;
  const Things m_things;
  const std::optional<units::Room>& m_room;
  std::set<std::string> m_used;  // ids of techniques
  std::vector<Unmet> m_unmet;
  std::vector<base::Problem> m_notices;
};

}  // namespace

std::vector<base::Problem> noticesOf(const design::Design& design, const Workflow& workflow,
                                     const craft::Catalogue& catalogue, const ThingWords& words,
                                     const std::optional<units::Room>& room) {
  return Gathering(design, workflow, catalogue, words, room).all();
}

}  // namespace core::workflow
