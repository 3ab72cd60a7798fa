#pragma once
// The course of one wait through its rooms: how much of the stated time has passed, and when a stated time will have
// passed if the room stays as it is.
#include <optional>
#include <vector>

#include "core/base/message.h"
#include "core/units/span.h"
#include "core/waits/drying.h"
#include "core/waits/room_track.h"

namespace core::waits {

class Course {
 public:
  // `rooms` has to be a result of roomsSince. Where no room is known the stated time is used unchanged. Where a room is
  // outside the model's limits nothing is predicted: see byTouch.
  Course(DryingModel model, const units::Room& reference, const std::vector<RoomFrom>& rooms);

  // Returns how much of the stated time has passed after `time` here; by the likely factor, to the millisecond.
  units::Duration stated(units::Duration time) const;
  // Converts a stated span to the time it takes here: the likely time by the likely factor; early and late widened by
  // the distance between the model's own limits, in quadrature on a logarithmic scale.
  units::Span here(const units::Span& span) const;
  // Returns the rest of the course, counted from a moment of it.
  Course after(units::Duration time) const;

  // Returns the factor of the wait's present room; nothing where no room is known or there is no model.
  const std::optional<Factor>& now() const { return m_now; }
  // Returns why nothing is predicted: a room on the way is outside the model's limits (room.too-cold and its like).
  // Times are then computed for the nearest room within them, and only serve to choose when to look.
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
