#pragma once
// How things of a job are called on the screens.
#include <QString>

#include "app/convert/text.h"
#include "core/record/job_state.h"

namespace app::viewmodels {

inline QString capitalised(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

// "top strip of inner band: paste sets"; the wait alone where the step is for the whole job.
inline QString waitName(const core::record::RunningWait& run) {
  const QString title = convert::toQt(run.wait->title);
  if (run.step->thingName.empty()) return capitalised(title);
  return capitalised(convert::toQt(run.step->thingName)) + QStringLiteral(": ") + title;
}

}  // namespace app::viewmodels
