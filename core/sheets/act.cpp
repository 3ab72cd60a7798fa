#include "core/sheets/act.h"

#include "core/sheets/act_families.h"

namespace core::sheets {
namespace {

using craft::Act;
using craft::WayUp;

using Painted = void (*)(detail::ActPainter&, bool);

Painted painterOf(Act act) {
  switch (act) {
    case Act::Measure: return detail::measure;
    case Act::Square: return detail::square;
    case Act::MarkOut: return detail::markOut;
    case Act::MarkCorners: return detail::markCorners;
    case Act::Note: return detail::note;
    case Act::CutSquare: return detail::cutSquare;
    case Act::CutBevel: return detail::cutBevel;
    case Act::CutCurve: return detail::cutCurve;
    case Act::CutStrips: return detail::cutStrips;
    case Act::Refit: return detail::refit;
    case Act::Register: return detail::registerBlank;
    case Act::JoinBoards: return detail::joinBoards;
    case Act::Press: return detail::press;
    case Act::TapeEdge: return detail::tapeEdge;
    case Act::FluidEdge: return detail::fluidEdge;
    case Act::BrushBevel: return detail::brushBevel;
    case Act::Peel: return detail::peel;
    case Act::RubOff: return detail::rubOff;
    case Act::BrushStrip: return detail::brushStrip;
    case Act::FitStrips: return detail::fitStrips;
    case Act::LayStrip: return detail::layStrip;
    case Act::Mitre: return detail::mitre;
    case Act::CloseCorner: return detail::closeCorner;
    case Act::LaySpandrel: return detail::laySpandrel;
    case Act::RuleLine: return detail::ruleLine;
    case Act::FloodWash: return detail::floodWash;
    case Act::FrameField: return detail::frameField;
    case Act::SizeField: return detail::sizeField;
    case Act::ScatterLeaf: return detail::scatterLeaf;
    case Act::LayLeaf: return detail::layLeaf;
    case Act::Burnish: return detail::burnish;
    case Act::SweepLeaf: return detail::sweepLeaf;
    case Act::RubOver: return detail::rubOver;
    case Act::Rags: return detail::rags;
    case Act::Weigh: return detail::weigh;
    case Act::Stir: return detail::stir;
    case Act::Cook: return detail::cook;
    case Act::Strain: return detail::strain;
    case Act::SetOut: return detail::setOut;
    case Act::Clean: return detail::clean;
    case Act::TryPatch: return detail::tryPatch;
    case Act::Look: return detail::look;
    case Act::PutAway: return detail::putAway;
    case Act::GumCloth: return detail::gumCloth;
    case Act::PlaceWork: return detail::placeWork;
    case Act::TearHinge: return detail::tearHinge;
    case Act::Hinge: return detail::hinge;
    case Act::Rest: return detail::rest;
    case Act::Stack: return detail::stack;
    case Act::SealEdge: return detail::sealEdge;
    case Act::FitFrame: return detail::fitFrame;
  }
  return nullptr;
}

// Returns whether an act is done from the back unless a step states otherwise.
bool usuallyBackUp(Act act) {
  return act == Act::CutBevel || act == Act::MarkOut || act == Act::CutCurve || act == Act::Refit ||
         act == Act::Register || act == Act::GumCloth;
}

}  // namespace

ActPapers papersOf(const design::Job& job, const std::string& thing) {
  const std::string whole = thing.substr(0, thing.find('.'));
  ActPapers papers;
  for (const design::Board& board : job.boards) {
    if (papers.board.empty() || board.id == whole) papers.board = board.material;
  }
  for (const design::Spandrel& spandrel : job.spandrels) {
    if (spandrel.id == whole) {
      papers.paper = spandrel.paper;
      return papers;
    }
  }
  for (const design::Band& band : job.bands) {
    if (!papers.paper.empty() && band.id != whole) continue;
    papers.paper = band.paper;
    const double width = band.width.inMillimetres();
    papers.repeat = band.repeat && width > 0 ? band.repeat->inMillimetres() / width : 0;
  }
  return papers;
}

Drawing drawAct(Act act, WayUp up, const ActPapers& papers) {
  const bool back = up == WayUp::Back || (up == WayUp::None && usuallyBackUp(act));
  detail::ActPainter painter(papers);
  painterOf(act)(painter, back);
  Drawing drawing = painter.take();
  drawing.side = back ? Side::Back : Side::Face;
  return drawing;
}

std::vector<Numeral> numerals(const Drawing& act, const std::vector<std::optional<craft::ActPlace>>& places) {
  std::vector<Numeral> found;
  int number = 0;
  for (const auto& place : places) {
    ++number;
    if (!place) continue;
    for (const DrawnPlace& drawn : act.places) {
      if (drawn.place == *place) found.push_back({number, drawn.at});
    }
  }
  return found;
}

}  // namespace core::sheets
