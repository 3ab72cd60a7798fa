// The client's sheet: what it is, what it is made of, how to live with it, whom to ask.
#include <algorithm>
#include <set>

#include "core/sheets/care_writer.h"

namespace core::sheets {
namespace {

using base::Message;

constexpr const char* kPractice = "common practice";

CareSection piece(const CareWriter& write) {
  const design::Job& job = write.job();
  CareSection section{"piece", Message("care.section-piece"), {}};
  section.lines.push_back(CareWriter::entered(Message("care.what"), job.title));
  section.lines.push_back(CareWriter::entered(Message("care.reference"), job.reference));
  section.lines.push_back(CareWriter::entered(Message("care.made-for"), job.client));
  section.lines.push_back(CareWriter::entered(Message("care.maker"), write.input().shop.stock.maker));
  std::vector<const jobs::TimelineEntry*> done;
  for (const CareWork& work : write.works()) {
    if (!work.ofShop) done.insert(done.end(), work.done.begin(), work.done.end());
  }
  std::stable_sort(done.begin(), done.end(),
                   [](const auto* a, const auto* b) { return a->occurredUtc < b->occurredUtc; });
  const auto days = write.daysOf(done);
  section.lines.push_back(days ? CareLine{Message("care.made"), {*days}, CareKnown::Observed, ""}
                               : CareWriter::unknown(Message("care.made")));
  section.lines.push_back(write.figure(Message("care.outer-width"), "outer.width"));
  section.lines.push_back(write.figure(Message("care.outer-height"), "outer.height"));
  return section;
}

std::vector<Message> eachOnce(const std::vector<std::string>& texts) {
  std::vector<Message> values;
  std::set<std::string> seen;
  for (const std::string& text : texts) {
    if (!text.empty() && seen.insert(text).second) values.push_back(CareWriter::text(text));
  }
  return values;
}

CareSection madeOf(const CareWriter& write) {
  const design::Job& job = write.job();
  CareSection section{"made-of", Message("care.section-made-of"), {}};
  const auto add = [&](Message label, std::vector<Message> values, CareKnown known) {
    if (!values.empty()) section.lines.push_back({std::move(label), std::move(values), known, ""});
  };
  std::vector<std::string> boards, papers, colours;
  for (const design::Board& board : job.boards) {
    boards.push_back(board.material);
    colours.push_back(board.bevelColour.value_or(""));
  }
  for (const design::Band& band : job.bands) papers.push_back(band.paper);
  for (const design::Spandrel& spandrel : job.spandrels) papers.push_back(spandrel.paper);
  for (const design::Line& line : job.lines) colours.push_back(line.colour);
  for (const design::Wash& wash : job.washes) colours.push_back(wash.colour);
  std::vector<Message> ofBoard = {Message("care.boards").with("count", static_cast<std::int64_t>(job.boards.size()))};
  for (Message& one : eachOnce(boards)) ofBoard.push_back(std::move(one));
  add(Message("care.boards-label"), ofBoard, CareKnown::Entered);
  add(Message("care.papers"), eachOnce(papers), CareKnown::Entered);
  add(Message("care.colours"), eachOnce(colours), CareKnown::Entered);
  if (!job.leaf.empty()) add(Message("care.leaf"), {Message("care.leaf-there")}, CareKnown::Entered);
  if (job.deliver == units::Deliver::Framed && job.package.glazing > units::Length())
    add(Message("care.layer-glazing"), {write.length(job.package.glazing)}, write.knownAt("/package/glazing"));
  std::vector<std::string> fixings;
  for (const CareWork& work : write.works()) {
    if (work.touchesWork && !work.materials.empty()) fixings.push_back(work.first->techniqueTitle);
  }
  add(Message("care.held-by"), eachOnce(fixings), CareKnown::Stated);
  return section;
}

CareSection living(const CareWriter& write) {
  CareSection section{"care", Message("care.section-care"), {}};
  const auto say = [&](Message label, Message value) {
    section.lines.push_back(CareWriter::stated(std::move(label), std::move(value), kPractice));
  };
  say(Message("care.light"), Message("care.light-says"));
  say(Message("care.climate"), Message("care.climate-says"));
  say(Message("care.place"), Message("care.place-says"));
  const bool framed = write.job().deliver == units::Deliver::Framed;
  if (framed) {
    say(Message("care.cleaning"), Message("care.cleaning-says"));
    say(Message("care.handling"), Message("care.handling-says"));
    say(Message("care.opening"), Message("care.opening-says"));
  } else {
    say(Message("care.handling"), Message("care.handling-unframed-says"));
  }
  if (framed && !write.job().leaf.empty()) say(Message("care.leaf"), Message("care.leaf-says"));
  say(Message("care.keep-sheet"), Message("care.keep-sheet-says"));
  return section;
}

CareSection asking(const CareWriter& write) {
  CareSection section{"ask", Message("care.section-ask"), {}};
  section.lines.push_back(CareWriter::entered(Message("care.maker"), write.input().shop.stock.maker));
  section.lines.push_back(CareWriter::entered(Message("care.contact"), write.input().shop.stock.contact));
  section.lines.push_back(CareWriter::stated(Message("care.valuable"), Message("care.valuable-says"), kPractice));
  return section;
}

}  // namespace

std::vector<CareSection> clientSections(const CareWriter& write) {
  return {piece(write), madeOf(write), living(write), asking(write)};
}

}  // namespace core::sheets
