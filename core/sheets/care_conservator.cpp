// The conservator's sheet: every layer and what holds it, how it was made and how it may be undone.
#include <algorithm>

#include "core/sheets/care_layers.h"
#include "core/sheets/care_writer.h"

namespace core::sheets {
namespace {

using base::Message;
using jobs::TimelineEntry;
using record::TimelineKind;

CareSection identity(const CareWriter& write) {
  const design::Job& job = write.job();
  CareSection section{"identity", Message("care.section-identity"), {}};
  auto& lines = section.lines;
  lines.push_back(CareWriter::entered(Message("care.what"), job.title));
  lines.push_back(CareWriter::entered(Message("care.reference"), job.reference));
  lines.push_back(CareWriter::entered(Message("care.owner"), job.client));
  lines.push_back(CareWriter::entered(Message("care.maker"), write.input().shop.stock.maker));
  lines.push_back(CareWriter::entered(Message("care.contact"), write.input().shop.stock.contact));
  lines.push_back({Message("care.work-shown"),
                   {write.length(job.artwork.width), write.length(job.artwork.height)},
                   CareKnown::Entered,
                   ""});
  lines.push_back({Message("care.work-sheet"),
                   {write.length(job.artwork.sheet.width), write.length(job.artwork.sheet.height)},
                   write.knownAt("/artwork/sheet"),
                   ""});
  lines.push_back(write.figure(Message("care.outer-width"), "outer.width"));
  lines.push_back(write.figure(Message("care.outer-height"), "outer.height"));
  std::size_t done = 0;
  for (const jobs::StepState& step : write.input().state.steps) done += step.status == jobs::StepStatus::Done;
  const auto count = static_cast<std::int64_t>(write.input().state.steps.size());
  lines.push_back({Message("care.state"),
                   {Message("care.steps-done").with("done", static_cast<std::int64_t>(done)).with("of", count)},
                   CareKnown::Observed,
                   ""});
  return section;
}

// A technique without a reversal of its own is undone as the preparations that fix it are.
void addReversal(const CareWriter& write, const CareWork& work, std::vector<CareLine>& lines) {
  const auto& reversal = work.first->reversal;
  if (!reversal && !work.preparations.empty()) {
    for (const std::string& id : work.preparations) {
      const CareWork* with = write.work(id);
      if (with == nullptr || !with->first->reversal) continue;
      lines.push_back(CareWriter::stated(Message("care.reversal-of").with("what", with->first->techniqueTitle),
                                         CareWriter::text(with->first->reversal->how), with->first->reversal->source));
    }
    return;
  }
  lines.push_back(reversal
                      ? CareWriter::stated(Message("care.reversal"), CareWriter::text(reversal->how), reversal->source)
                      : CareWriter::unknown(Message("care.reversal")));
}

void addRecord(const CareWriter& write, const CareWork& work, std::vector<CareLine>& lines) {
  const auto days = write.daysOf(work.done);
  lines.push_back(days ? CareLine{Message("care.when"), {*days}, CareKnown::Observed, ""}
                       : CareWriter::unknown(Message("care.when")));
  if (days && !work.all()) lines.back().values.emplace_back("care.not-all-done");
  if (const auto rooms = write.roomsOf(work.done))
    lines.push_back({Message("care.in-room"), {*rooms}, CareKnown::Observed, ""});
  const auto batches = write.batchesOf(work.done);
  if (!batches.empty()) {
    lines.push_back({Message("care.batches"), batches, CareKnown::Observed, ""});
  } else if (work.ofShop) {
    lines.push_back(CareWriter::unknown(Message("care.batches")));
  }
}

CareLine materials(const CareWork& work) {
  std::vector<Message> values;
  for (const std::string& what : work.materials) values.push_back(CareWriter::text(what));
  if (values.empty()) values.emplace_back("care.none-stated");
  return {Message("care.materials"), values, CareKnown::Stated, work.first->techniqueTitle};
}

CareLine heading(const CareWork& work) {
  return CareWriter::stated(Message("care.technique"), CareWriter::text(work.first->techniqueTitle), "");
}

CareSection preparations(const CareWriter& write) {
  CareSection section{"preparations", Message("care.section-preparations"), {}};
  for (const CareWork& work : write.works()) {
    if (!work.ofShop) continue;
    section.lines.push_back(heading(work));
    section.lines.push_back(materials(work));
    addRecord(write, work, section.lines);
    if (work.first->keeps) {
      section.lines.push_back(CareWriter::stated(Message("care.keeps"),
                                                 CareWriter::text(write.input().words.duration(*work.first->keeps)),
                                                 work.first->keepsSource));
    }
    addReversal(write, work, section.lines);
  }
  return section;
}

std::vector<Message> preparedWith(const CareWriter& write, const CareWork& work) {
  std::vector<Message> values;
  for (const std::string& id : work.preparations) {
    if (const CareWork* other = write.work(id)) values.push_back(CareWriter::text(other->first->techniqueTitle));
  }
  return values;
}

CareSection making(const CareWriter& write) {
  CareSection section{"making", Message("care.section-making"), {}};
  for (const CareWork& work : write.works()) {
    if (work.ofShop || work.materials.empty()) continue;
    section.lines.push_back(heading(work));
    section.lines.push_back(materials(work));
    const auto with = preparedWith(write, work);
    if (!with.empty()) section.lines.push_back({Message("care.prepared-with"), with, CareKnown::Stated, ""});
    addRecord(write, work, section.lines);
    addReversal(write, work, section.lines);
  }
  return section;
}

// Hinges, and whatever else is fixed to the work: what has to come off, and what is known of taking it off.
CareSection touching(const CareWriter& write) {
  CareSection section{"touching", Message("care.section-touching"), {}};
  for (const CareWork& work : write.works()) {
    if (!work.touchesWork || work.materials.empty()) continue;
    section.lines.push_back(heading(work));
    section.lines.push_back(materials(work));
    const auto with = preparedWith(write, work);
    if (!with.empty()) section.lines.push_back({Message("care.prepared-with"), with, CareKnown::Stated, ""});
    addReversal(write, work, section.lines);
  }
  return section;
}

CareSection measures(const CareWriter& write) {
  CareSection section{"measures", Message("care.section-measures"), {}};
  const jobs::JobState& state = write.input().state;
  for (const design::Figure& planned : state.plan->design.figures.all()) {
    const auto made = state.measures.find(planned.id);
    if (made == state.measures.end()) continue;
    section.lines.push_back({CareWriter::text(write.input().words.figure(planned)),
                             {Message("care.measured")
                                  .with("made", base::Millimetres{made->second.value.inMillimetres()})
                                  .with("planned", base::Millimetres{planned.value})},
                             CareKnown::Observed,
                             ""});
  }
  if (section.lines.empty())
    section.lines.push_back({Message("care.measures"), {Message("care.nothing-measured")}, CareKnown::Unknown, ""});
  return section;
}

CareSection departures(const CareWriter& write) {
  CareSection section{"departures", Message("care.section-departures"), {}};
  for (const CareWork& work : write.works()) {
    for (const TimelineEntry* entry : work.wrong) {
      section.lines.push_back({write.moment(*entry), {entry->what}, CareKnown::Observed, ""});
    }
  }
  if (section.lines.empty())
    section.lines.push_back({Message("care.departures"), {Message("care.none-recorded")}, CareKnown::Unknown, ""});
  return section;
}

CareSection notes(const CareWriter& write) {
  CareSection section{"notes", Message("care.section-notes"), {}};
  for (const TimelineEntry& entry : write.input().timeline) {
    const auto& beside = write.input().state.beside;
    if (entry.kind == TimelineKind::Noted && entry.takenBackBy.empty() && entry.correctedBy.empty() &&
        beside.note(entry.note) != nullptr) {
      section.lines.push_back(
          {write.moment(entry), {CareWriter::text(beside.note(entry.note)->text)}, CareKnown::Entered, ""});
    }
    const jobs::Photograph* photograph = beside.photograph(entry.photograph);
    if (entry.kind != TimelineKind::Photographed || photograph == nullptr || entry.hash.empty()) continue;
    section.lines.push_back(
        {write.moment(entry),
         {Message("care.photograph").with("caption", photograph->caption).with("file", photograph->hash)},
         CareKnown::Observed,
         ""});
  }
  if (section.lines.empty())
    section.lines.push_back({Message("care.notes"), {Message("care.none-recorded")}, CareKnown::Unknown, ""});
  return section;
}

// The facts a conservator asks for that this record has no place for: it is better to state the gaps than to omit them.
CareSection gaps() {
  CareSection section{"gaps", Message("care.section-gaps"), {}};
  for (const Message& label : {Message("care.gap-grade"), Message("care.gap-claims"), Message("care.gap-leaf"),
                               Message("care.gap-glazing"), Message("care.gap-inspection")}) {
    section.lines.push_back(CareWriter::unknown(label));
  }
  return section;
}

}  // namespace

std::vector<CareSection> conservatorSections(const CareWriter& write) {
  std::vector<CareSection> sections = {identity(write),     layerSection(write), touching(write),
                                       preparations(write), making(write),       measures(write),
                                       departures(write),   notes(write),        gaps()};
  std::erase_if(sections, [](const CareSection& one) { return one.lines.empty(); });
  return sections;
}

}  // namespace core::sheets
