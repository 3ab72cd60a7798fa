#pragma once
// Technique files from their folders. A broken one is told and left out; the others can still be worked with.
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
  // By file name within a folder, the folder delivered with the program first; errors and notices.
  std::vector<FileProblem> problems;
};

// Reads every *.technique.json of `folder`, then of `ownFolder`, whose techniques stand in for those of the same
// id; `ownFolder` may be empty or not exist. Two files of one folder with the same id: the second is left out
// (technique.same-id {id} {other}). A file that cannot be read: the messages of files::readWhole; a folder that
// does not exist: technique.folder-missing.
LoadedLibrary loadLibrary(const QString& folder, const QString& ownFolder);

// `option` where it is given; else the folder installed beside the program; else that of the source tree.
// recipes.not-found {path} where none of them exists.
core::base::Result<QString, core::base::Message> recipesFolder(const QString& option);

}  // namespace app::workbench
