#pragma once
// Reading of what a step lists besides its facts: materials, figures, checks, cautions, faults.
#include <optional>
#include <string>
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

std::vector<Material> readMaterials(const base::Node& node, const Scope& scope, base::Problems& problems);
std::vector<StepFigure> readStepFigures(const base::Node& node, const Scope& scope, base::Problems& problems);
std::vector<Check> readChecks(const base::Node& node, const Scope& scope, base::Problems& problems);
std::vector<Caution> readCautions(const base::Node& node, const Scope& scope, base::Problems& problems);
std::vector<Fault> readFaults(const base::Node& node, const Scope& scope, base::Problems& problems);
std::optional<Setup> readSetup(const base::Node& node, const Scope& scope, base::Problems& problems);
std::vector<std::string> readAsMade(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
