#pragma once
#include <string>

#include "core/base/message.h"

namespace app::workbench {

struct JobEntry {
  std::string id;
  std::string title;
  std::string reference;
  std::string jobHash;
  // Not empty where the job cannot be opened (its texts are missing or no longer read): what to say.
  core::base::Message trouble;
};

}  // namespace app::workbench
