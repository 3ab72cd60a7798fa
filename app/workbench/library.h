#pragma once
#include <map>
#include <string>

#include "core/craft/catalogue.h"

namespace app::workbench {

// The techniques at hand: as read, and id -> file text, so that a job can keep the texts it was taken in with.
struct Library {
  core::craft::Catalogue catalogue;
  std::map<std::string, std::string> texts;
};

}  // namespace app::workbench
