#pragma once
// How things of a job are called on the screens.
#include <QString>
#include <QStringList>

#include "app/convert/text.h"
#include "app/words/words.h"
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

// Where the times of a wait come from, in one line: "cool and damp ×1.66; your last three ran 25 % slow".
inline QString whyText(const core::waits::WaitState& state) {
  QStringList reasons;
  for (const core::base::Message& reason : state.why) {
    reasons << words::text(reason, core::units::UnitSystem::Millimetres);
  }
  return reasons.join(QStringLiteral("; "));
}

}  // namespace app::viewmodels
