#pragma once
// Random jobs whose bands have little room.
#include <cmath>
#include <random>

#include "core/materials/repeat_match.h"

namespace tests {

// Jobs with little room: narrow borders, small grounds, lines about the band. Sizes are multiples of `grain` nm, the
// artwork's and the repeat's of twice that, so that halves lie on the grain.
class TightJobs {
 public:
  TightJobs(unsigned seed, int grain, int mostBands) : m_random(seed), m_grain(grain), m_mostBands(mostBands) {}

  int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(m_random); }
  core::units::Length length(int least, int most, int multiple = 1) {
    const int unit = m_grain * multiple;
    return core::units::Length::nanometres(static_cast<std::int64_t>(unit) *
                                           whole(least * (1'000'000 / unit), most * (1'000'000 / unit)));
  }

  core::design::Job job() {
    core::design::Job job;
    job.artwork.width = job.artwork.sheet.width = length(120, 260, 2);
    job.artwork.height = job.artwork.sheet.height = length(120, 260, 2);
    job.window.distance = length(2, 4);
    core::design::Board board;
    board.id = "only";
    board.thickness = core::units::Length::wholeMillimetres(2);
    board.bevelAngle = core::units::Angle::degrees(45);
    board.place.pointer = "/mount/boards/0";
    job.boards = {board};
    job.borders.place.pointer = "/mount/borders";
    job.borders.entry = core::design::FourBorders{length(22, 34), length(22, 34), length(22, 34), length(22, 34)};
    for (int i = 0, count = whole(1, m_mostBands); i < count; ++i) job.bands.push_back(band(i));
    if (job.bands.size() > 1 && whole(0, 1) == 0) meet(job, whole(0, 1));
    if (whole(0, 2) == 0) job.lines.push_back(line("inside", "/lines/0", core::design::Edge::Window, length(0, 1)));
    if (whole(0, 2) == 0) job.lines.push_back(line("outside", "/lines/1", core::design::Edge::Window, length(14, 28)));
    return job;
  }

 private:
  core::design::Band band(int index) {
    core::design::Band band;
    band.id = "band" + std::to_string(index);
    band.place.pointer = "/bands/" + std::to_string(index);
    band.offsetSides = length(0, 4);
    band.offsetTopBottom = whole(0, 1) == 0 ? band.offsetSides : length(0, 4);
    band.width = length(3, 8);
    band.repeat = length(4, 24, 2);
    band.motif = whole(0, 4) == 0 && index == 1 ? core::design::Motif::Plain : core::design::Motif::Mirror;
    if (whole(0, 2) == 0) band.centreVertical = core::design::Centring::Ground;
    if (whole(0, 3) == 0) band.centreHorizontal = core::design::Centring::Ground;
    return band;
  }
  core::design::Line line(const char* id, const char* pointer, core::design::Edge along, core::units::Length gap) {
    core::design::Line line;
    line.id = id;
    line.place.pointer = pointer;
    line.along = along;
    line.gap = gap;
    line.width = core::units::Length::nanometres(500'000);
    return line;
  }
  // Makes one band's corners meet.
  static void meet(core::design::Job& job, int index) {
    core::base::Problems problems;
    const core::design::Layout layout = core::design::layOut(job, problems);
    if (problems.hasErrors()) return;
    auto& band = job.bands[static_cast<std::size_t>(index)];
    const auto off = core::materials::cornerMismatch(band, layout.bands[static_cast<std::size_t>(index)]);
    if (!off) return;
    const core::units::Length by = core::units::Length::nanometres(std::llround(*off * 1e6));
    (by > core::units::Length() ? band.offsetTopBottom : band.offsetSides) =
        (by > core::units::Length() ? band.offsetTopBottom + by : band.offsetSides - by);
  }

  std::mt19937 m_random;
  int m_grain;
  int m_mostBands;
};

}  // namespace tests
