#pragma once
// The conditions for beginning a job from its file, and what is then stored of it.
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "app/workbench/library.h"
#include "core/base/json.h"
#include "core/base/message.h"
#include "core/base/problem.h"
#include "core/intents/intent.h"
#include "core/record/event_store.h"

namespace app::workbench {

struct ReadyToTakeIn {
  std::optional<core::intents::TakeIn> intent;  // only where nothing prevents it
  std::vector<core::record::StoredText> texts;  // of the job and of every technique it follows
  std::vector<core::base::Problem> problems;    // of the job file, notices included
  std::vector<core::base::Message> refusals;    // of the composition
};

// A job file for a second copy of the job: job.numbered {reference}, and job.due-left-out {due} where it had one.
struct OnceMore {
  std::string text;
  std::vector<core::base::Message> notes;
};
OnceMore onceMore(const core::base::Value& document, const std::set<std::string>& references);

ReadyToTakeIn readyToTakeIn(const std::string& text, const std::string& hash, const Library& library);

}  // namespace app::workbench
