#include "core/waits/course.h"

#include <algorithm>
#include <cmath>

namespace core::waits {
namespace {

using units::Duration;

// A time `factor` times as far from `likely` as the model's own bracket and the stated spread make it together.
double widened(double likely, double at, double bracket) {
  if (at <= 0 || likely <= 0 || bracket == 0) return at;
  const double stated = std::log(at / likely);
  return likely * std::exp(std::copysign(std::hypot(stated, bracket), bracket));
}

}  // namespace

Course::Course(DryingModel model, const units::Room& reference, const std::vector<RoomFrom>& rooms) {
  for (const RoomFrom& entry : rooms) {
    Piece piece;
    piece.from = static_cast<double>(entry.from.inMilliseconds());
    m_now.reset();
    if (entry.room && model != DryingModel::None) {
      auto factor = dryingFactor(model, *entry.room, reference);
      if (!factor) {
        m_byTouch = factor.error();
        factor = dryingFactor(model, nearestWithin(model, *entry.room), nearestWithin(model, reference));
      }
      piece.factor = factor.value();
      m_now = piece.factor;
    }
    m_pieces.push_back(piece);
  }
  if (m_pieces.empty()) m_pieces.emplace_back();
}

Duration Course::stated(Duration time) const {
  const auto end = static_cast<double>(time.inMilliseconds());
  double passed = 0;
  for (std::size_t i = 0; i < m_pieces.size() && m_pieces[i].from < end; ++i) {
    const double until = i + 1 < m_pieces.size() ? std::min(end, m_pieces[i + 1].from) : end;
    passed += (until - m_pieces[i].from) / m_pieces[i].factor.likely;
  }
  return Duration::milliseconds(std::llround(passed));
}

Course Course::after(Duration time) const {
  const auto at = static_cast<double>(time.inMilliseconds());
  Course rest;
  rest.m_now = m_now;
  rest.m_byTouch = m_byTouch;
  for (std::size_t i = 0; i < m_pieces.size(); ++i) {
    if (i + 1 < m_pieces.size() && m_pieces[i + 1].from <= at) continue;
    rest.m_pieces.push_back({std::max(0.0, m_pieces[i].from - at), m_pieces[i].factor});
  }
  return rest;
}

double Course::when(double stated, double Factor::*which) const {
  double left = stated;
  for (std::size_t i = 0;; ++i) {
    const double factor = m_pieces[i].factor.*which;
    const double needs = left * factor;
    if (i + 1 == m_pieces.size()) return m_pieces[i].from + needs;
    const double length = m_pieces[i + 1].from - m_pieces[i].from;
    if (needs <= length) return m_pieces[i].from + needs;
    left -= length / factor;
  }
}

units::Span Course::here(const units::Span& span) const {
  const auto early = static_cast<double>(span.early.inMilliseconds());
  const auto likely = static_cast<double>(span.likely.inMilliseconds());
  const auto late = static_cast<double>(span.late.inMilliseconds());
  const double at = when(likely, &Factor::likely);
  double below = 0;
  double above = 0;
  if (at > 0) {
    below = std::min(0.0, std::log(when(likely, &Factor::least) / at));
    above = std::max(0.0, std::log(when(likely, &Factor::most) / at));
  }
  const auto rounded = [](double milliseconds) { return Duration::milliseconds(std::llround(milliseconds)); };
  units::Span out{rounded(widened(at, when(early, &Factor::likely), below)), rounded(at),
                  rounded(widened(at, when(late, &Factor::likely), above))};
  out.early = std::min(out.early, out.likely);
  out.late = std::max(out.late, out.likely);
  return out;
}

}  // namespace core::waits
