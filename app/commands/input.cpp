#include "app/commands/input.h"

#include <QStandardPaths>
#include <set>

#include "app/commands/commands.h"
#include "app/commands/saying.h"
#include "app/files/whole_file.h"
#include "app/stores/data_dir.h"
#include "app/words/words.h"
#include "core/base/json.h"
#include "core/workflow/compose.h"

namespace app::commands {
namespace {

using core::base::Message;

// Commands keep nothing, so the folder is not made where it does not exist.
QString ownTechniques(const CommandLine& line) {
  const QString data =
      line.data.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) : line.data;
  return stores::ownTechniques(data);
}

}  // namespace

OrExit<core::design::Design> readJob(const QString& path, std::ostream& err) {
  const auto text = files::readWhole(path, core::base::kMaximumJsonBytes);
  if (!text) {
    sayProblem(err, path, text.error());
    return {std::nullopt, kUnreadable};
  }
  core::design::ReadDesign read = core::design::readDesign(text.value());
  const UnitSystem units = read.design ? read.design->job.units : UnitSystem::Millimetres;
  for (const core::base::Problem& problem : read.problems.sorted()) sayProblem(err, path, problem, units);
  if (!read.design) return {std::nullopt, kProblem};
  return {std::move(read.design), kDone};
}

OrExit<workbench::Library> readTechniques(const CommandLine& line, std::ostream& err) {
  const auto folder = workbench::recipesFolder(line.recipes);
  if (!folder) {
    say(err, folder.error());
    return {std::nullopt, kUnreadable};
  }
  workbench::LoadedLibrary loaded = workbench::loadLibrary(folder.value(), ownTechniques(line));
  std::set<std::string> leftOut;
  for (const workbench::FileProblem& problem : loaded.problems) {
    const QString file = QString::fromStdString(problem.file);
    sayProblem(err, file, problem.problem);
    if (problem.problem.severity == core::base::Severity::Error) leftOut.insert(problem.file);
  }
  for (const std::string& file : leftOut) sayProblem(err, QString::fromStdString(file), Message("command.left-out"));
  return {std::move(loaded.library), kDone};
}

OrExit<core::workflow::Workflow> composeDesign(const CommandLine& line, const core::design::Design& design,
                                               std::ostream& err) {
  const OrExit<workbench::Library> library = readTechniques(line, err);
  if (!library.value) return {std::nullopt, library.exit};
  auto composed = core::workflow::compose(design, library.value->catalogue, words::thingWords());
  if (!composed) {
    for (const auto& told : composed.error()) sayProblem(err, line.files.first(), told.problem, design.job.units);
    return {std::nullopt, kProblem};
  }
  return {std::move(composed).value(), kDone};
}

}  // namespace app::commands
