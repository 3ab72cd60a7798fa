#pragma once
// A running wait in words: the one place in which the states of core/waits/telling.h become a verb with its time and a
// sentence.
#include <QList>
#include <QPointF>
#include <QString>
#include <string>

#include "core/jobs/job_state.h"
#include "core/waits/telling.h"

namespace app::viewmodels {

struct ToldWait {
  core::waits::Told told;
  QString verb;      // "test"
  QString time;      // "10:22"; "" where no time belongs to the state
  QString brief;     // both: "test 10:22"
  QString sentence;  // "May be dry from 10:22; half are by 10:45, four in five by 11:10."
  QString question;  // the touch test as one; "" for none
  QString mayClose;  // "may close 11:25"; "" where no window closes or it may have closed already
  QString gone;      // "likely gone 11:37"; "" as above
  bool isWindow = false;
  bool isSolid = false;   // found by touch
  bool isClosed = false;  // likely, or found to be so
};

ToldWait toldWait(const core::jobs::JobAt& job, const core::jobs::RunningWait& run, const std::string& zone);

// The outline of a wait, in hours from now and tenths of its height, over so many hours.
QList<QPointF> outlinePoints(const core::waits::Told& told, double hours);

}  // namespace app::viewmodels
