#pragma once
// The course of one wait through the rooms it has seen: how much of the stated time has passed, and when a stated
// time will have passed if the room stays as it is.
#include <optional>
#include <vector>

#include "core/base/message.h"
#include "core/units/span.h"
#include "core/waits/drying.h"
#include "core/waits/room_track.h"

namespace core::waits {

class Course {
 public:
  // `rooms` as roomsSince gives them. Where no room is known the stated time is taken as it is. Where a room lies
  // outside the model's limits nothing is predicted: see byTouch.
  Course(DryingModel model, const units::Room& reference, const std::vector<RoomFrom>& rooms);

  // Of the stated time, how much has passed after `time` here; by the likely factor, to the millisecond.
  units::Duration stated(units::Duration time) const;
  // A stated span as it comes out here: the likely time by the likely factor; early and late widened by how far the
  // model's own limits lie apart, in quadrature on a logarithmic scale.
  units::Span here(const units::Span& span) const;
  // The rest of the course, counted from a moment of it.
  Course after(units::Duration time) const;

  // The factor of the room the wait is in now; nothing where no room is known or the model is none.
  const std::optional<Factor>& now() const { return m_now; }
  // Why nothing is predicted: a room on the way outside the model's limits (room.too-cold and its like). Times then
  // come from the nearest room within them, and serve to say when to look, no more.
  const std::optional<base::Message>& byTouch() const { return m_byTouch; }

 private:
  Course() = default;
  struct Piece {
    double from = 0;  // milliseconds since the start
    Factor factor{1, 1, 1};
  };
  double when(double stated, double Factor::*which) const;

  std::vector<Piece> m_pieces;
  std::optional<Factor> m_now;
  std::optional<base::Message> m_byTouch;
};

}  // namespace core::waits
