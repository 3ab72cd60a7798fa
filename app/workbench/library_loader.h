#pragma once
// Reads technique files from their folders. A broken one is reported and left out; the others can still be used.
#include <QString>
#include <string>
#include <vector>

#include "app/workbench/library.h"
#include "core/base/problem.h"
#include "core/base/result.h"

namespace app::workbench {

struct FileProblem {
  std::string file;
  core::base::Problem problem;
};

struct LoadedLibrary {
  Library library;
  // Errors and notices, by file name within a folder, the folder delivered with the program first.
  std::vector<FileProblem> problems;
};

// Reads every *.technique.json of `folder`, then of `ownFolder`, whose techniques replace those of the same id;
// `ownFolder` may be empty or not exist. Two files of one folder with the same id: the second is left out
// (technique.same-id {id} {other}). A file that cannot be read gives the messages of files::readWhole; a folder that
// does not exist gives technique.folder-missing.
LoadedLibrary loadLibrary(const QString& folder, const QString& ownFolder);

// Returns `option` where it is given; else the folder installed beside the program; else that of the source tree. The
// error is recipes.not-found {path} where none of them exists.
core::base::Result<QString, core::base::Message> recipesFolder(const QString& option);

}  // namespace app::workbench
