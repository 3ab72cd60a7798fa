#pragma once
#include <map>
#include <string>

#include "core/craft/catalogue.h"

namespace app::workbench {

// The techniques available: as read, and id -> file text, so that a job can store the texts it was begun with.
struct Library {
  core::craft::Catalogue catalogue;
  std::map<std::string, std::string> texts;
};

}  // namespace app::workbench
