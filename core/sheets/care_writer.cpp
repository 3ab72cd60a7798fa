#include "core/sheets/care_writer.h"

#include <algorithm>
#include <iterator>

#include "core/base/text.h"
#include "core/units/length_entry.h"

namespace core::sheets {

using base::Message;
using jobs::TimelineEntry;
using record::TimelineKind;

namespace {

bool ofWork(const std::string& fact) { return base::startsWith(fact, "art."); }

}  // namespace

CareWriter::CareWriter(const CareInput& input)
    : m_input(input),
      m_units(input.units),
      m_figures(input.state.design->job, input.state.design->layout, input.units, input.state.design->made) {
  if (!input.jobText.empty()) m_file = base::parseJson(input.jobText).root;
  gather();
}

void CareWriter::gather() {
  const workflow::Workflow& workflow = m_input.state.plan->workflow;
  for (const workflow::WorkflowStep& step : workflow.steps) {
    const auto [at, fresh] = m_byTechnique.emplace(step.technique, m_works.size());
    if (fresh) m_works.emplace_back();
    CareWork& work = m_works[at->second];
    if (fresh) work.first = &step;
    ++work.steps;
    work.ofShop = step.ofShop;
    for (const workflow::WorkflowMaterial& material : step.materials) {
      if (!std::count(work.materials.begin(), work.materials.end(), material.what))
        work.materials.push_back(material.what);
    }
    const auto touches = [](const std::vector<std::string>& facts) {
      return std::any_of(facts.begin(), facts.end(), ofWork);
    };
    // Only what is made of the work lays a hand on it; that it lies ready or is put away is needed by others too.
    work.touchesWork = work.touchesWork || touches(step.makes);
    for (const std::string& fact : step.needs) {
      for (const std::size_t maker : workflow.making(fact)) {
        const workflow::WorkflowStep& other = workflow.steps[maker];
        if (!other.ofShop || other.technique == step.technique) continue;
        if (!std::count(work.preparations.begin(), work.preparations.end(), other.technique))
          work.preparations.push_back(other.technique);
      }
    }
  }
  for (const TimelineEntry& entry : m_input.timeline) {
    const workflow::WorkflowStep* step = workflow.find(entry.step);
    if (step == nullptr) step = workflow.findWait(entry.wait).step;
    if (step == nullptr || !entry.takenBackBy.empty()) continue;
    CareWork& work = m_works[m_byTechnique.at(step->technique)];
    if (entry.kind == TimelineKind::Done) work.done.push_back(&entry);
    if (entry.kind == TimelineKind::Fault || entry.kind == TimelineKind::Mended) work.wrong.push_back(&entry);
  }
}

const CareWork* CareWriter::work(const std::string& technique) const {
  const auto found = m_byTechnique.find(technique);
  return found == m_byTechnique.end() ? nullptr : &m_works[found->second];
}

Message CareWriter::text(const std::string& text) { return Message("care.text").with("text", text); }

Message CareWriter::length(units::Length length) const {
  // A thickness below the finest fraction shown would be displayed as zero.
  constexpr units::Length kFinest = units::Length::nanometres(units::kNanometresPerInch / 32);
  if (m_units == units::UnitSystem::Inches && length < kFinest && !units::isOddSixtyFourth(length))
    return text(base::fixedNumber(length.inMillimetres(), 1) + " mm");
  return Message("care.length").with("length", base::Millimetres{length.inMillimetres()});
}

Message CareWriter::moment(const TimelineEntry& entry) const {
  // A date from a wrong clock must not be given to a client.
  if (!entry.timeKnown) return Message("care.not-recorded");
  return text(m_input.words.moment(entry.occurredUtc, entry.zone));
}

CareLine CareWriter::figure(Message label, const std::string& id) const {
  const design::Figure* figure = m_figures.find(id);
  if (figure == nullptr) return unknown(std::move(label));
  const CareKnown known = figure->made      ? CareKnown::Observed
                          : figure->entered ? CareKnown::Entered
                                            : CareKnown::Computed;
  return {std::move(label), {text(figure->display)}, known, ""};
}

CareLine CareWriter::unknown(Message label) {
  return {std::move(label), {Message("care.not-recorded")}, CareKnown::Unknown, ""};
}

CareLine CareWriter::entered(Message label, const std::string& said) {
  if (said.empty()) return unknown(std::move(label));
  return {std::move(label), {text(said)}, CareKnown::Entered, ""};
}

CareLine CareWriter::stated(Message label, Message value, const std::string& source) {
  return {std::move(label), {std::move(value)}, CareKnown::Stated, source};
}

CareKnown CareWriter::knownAt(const std::string& pointer) const {
  return m_file.isNull() || base::at(m_file, pointer) != nullptr ? CareKnown::Entered : CareKnown::Default;
}

std::optional<Message> CareWriter::daysOf(const std::vector<const TimelineEntry*>& done) const {
  std::vector<const TimelineEntry*> dated;
  std::copy_if(done.begin(), done.end(), std::back_inserter(dated),
               [](const TimelineEntry* entry) { return entry->timeKnown; });
  if (dated.empty()) return std::nullopt;
  const std::string first = m_input.words.day(dated.front()->occurredUtc, dated.front()->zone);
  const std::string last = m_input.words.day(dated.back()->occurredUtc, dated.back()->zone);
  if (first == last) return Message("care.on-day").with("day", first);
  return Message("care.from-to").with("first", first).with("last", last);
}

std::optional<Message> CareWriter::roomsOf(const std::vector<const TimelineEntry*>& done) const {
  std::optional<double> coldest, warmest, driest, dampest;
  bool planned = false;
  for (const TimelineEntry* entry : done) {
    if (!entry->room) continue;
    const double temperature = entry->room->room.temperature.inCelsius();
    const double humidity = entry->room->room.humidity.inPercent();
    coldest = std::min(coldest.value_or(temperature), temperature);
    warmest = std::max(warmest.value_or(temperature), temperature);
    driest = std::min(driest.value_or(humidity), humidity);
    dampest = std::max(dampest.value_or(humidity), humidity);
    planned = planned || entry->room->from == jobs::RoomThen::From::Planned;
  }
  if (!coldest) return std::nullopt;
  const auto span = [](double least, double most) {
    const std::string low = base::fixedNumber(least, 1), high = base::fixedNumber(most, 1);
    return low == high ? low : low + "\xE2\x80\x93" + high;
  };
  const std::string temperature = span(*coldest, *warmest), humidity = span(*driest, *dampest);
  if (planned) return Message("care.room-planned").with("temperature", temperature).with("humidity", humidity);
  return Message("care.room").with("temperature", temperature).with("humidity", humidity);
}

std::vector<Message> CareWriter::batchesOf(const std::vector<const TimelineEntry*>& done) const {
  std::vector<Message> batches;
  std::set<std::string> seen;
  for (const TimelineEntry* entry : done) {
    for (const jobs::BatchThen& used : entry->batches) {
      if (!seen.insert(used.id).second) continue;
      const shop::Batch* batch = m_input.shop.stock.batch(used.id);
      if (batch == nullptr) {
        batches.emplace_back("care.batch-unknown");
        continue;
      }
      const std::string day = m_input.words.day(batch->entry.madeUtc, entry->zone);
      const std::string of = batch->entry.of.empty() ? batch->entry.name : batch->entry.name + ", " + batch->entry.of;
      batches.push_back(batch->entry.opened
                            ? Message("care.batch-opened").with("mark", batch->mark).with("of", of).with("day", day)
                            : Message("care.batch-made").with("mark", batch->mark).with("of", of).with("day", day));
      if (used.shelf == shop::Shelf::LookBeforeUse) batches.emplace_back("care.batch-past-shelf");
    }
  }
  return batches;
}

}  // namespace core::sheets
