#pragma once
// The request on the command line.
#include <QString>
#include <QStringList>
#include <optional>

#include "core/base/message.h"
#include "core/units/way.h"
#include "core/units/length_display.h"

namespace app::commands {

struct CommandLine {
  QString command;  // "" where none is given: the bench opens
  QStringList files;
  QString data;     // "" where not given
  QString recipes;  // "" where not given
  bool json = false;
  std::optional<core::units::UnitSystem> units;
  QString careFor;  // "client" or "conservator"; "" where not given
  std::optional<int> piece;  // from 1
  core::units::Way way = core::units::Way::Every;
  bool help = false;
  bool version = false;
  // Not empty where the program was used wrongly; the other members are then meaningless.
  core::base::Message wrongUse;
};

// `arguments` without the program's own name. Options may stand anywhere; "--" ends them.
CommandLine parseCommandLine(const QStringList& arguments);

}  // namespace app::commands
