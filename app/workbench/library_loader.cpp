#include "app/workbench/library_loader.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include "app/convert/text.h"
#include "app/files/whole_file.h"
#include "core/base/json.h"
#include "core/craft/technique_reader.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Problem;

void tell(LoadedLibrary& loaded, const QString& file, Message message) {
  Problem problem;
  problem.message = std::move(message);
  loaded.problems.push_back({convert::fromQt(file), std::move(problem)});
}

void loadFile(const QString& path, std::map<std::string, std::string>& fileOfId, LoadedLibrary& loaded) {
  auto whole = files::readWhole(path, core::base::kMaximumJsonBytes);
  if (!whole) return tell(loaded, path, whole.error());
  std::string text = std::move(whole).value();
  core::craft::ReadTechnique read = core::craft::readTechnique(text);
  for (Problem& problem : read.problems.sorted()) {
    loaded.problems.push_back({convert::fromQt(path), std::move(problem)});
  }
  if (!read.technique) return;
  const std::string id = read.technique->id;
  const auto [known, isNew] = fileOfId.emplace(id, convert::fromQt(QFileInfo(path).fileName()));
  if (!isNew) {
    tell(loaded, path, Message("technique.same-id").with("id", id).with("other", known->second));
    return;
  }
  loaded.library.texts[id] = std::move(text);
  loaded.library.catalogue.add(std::move(*read.technique));
}

// More than a maker writes in a life; each is held whole.
constexpr qsizetype kMostFiles = 150;

void loadFolder(const QString& folder, LoadedLibrary& loaded) {
  std::map<std::string, std::string> fileOfId;
  const QDir directory(folder);
  // An entry with such a name that is no file, such as a pipe or a dangling link, is reported and not passed over.
  const QStringList names = directory.entryList(
      {QStringLiteral("*.technique.json")}, QDir::Files | QDir::Dirs | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
  for (const QString& name : names.mid(0, kMostFiles)) loadFile(directory.filePath(name), fileOfId, loaded);
  if (names.size() > kMostFiles) {
    tell(loaded, folder, Message("technique.too-many-files").with("most", std::int64_t{kMostFiles}));
  }
}

}  // namespace

LoadedLibrary loadLibrary(const QString& folder, const QString& ownFolder) {
  LoadedLibrary loaded;
  if (!QFileInfo(folder).isDir()) {
    tell(loaded, folder, Message("technique.folder-missing"));
  } else {
    loadFolder(folder, loaded);
  }
  if (ownFolder.isEmpty()) return loaded;
  const QFileInfo own(ownFolder);
  if (own.isDir() && own.isReadable() && own.isExecutable()) {
    loadFolder(ownFolder, loaded);
  } else if (own.exists() || own.isSymLink()) {
    tell(loaded, ownFolder, Message("technique.folder-unreadable"));
  }
  return loaded;
}

core::base::Result<QString, Message> recipesFolder(const QString& option) {
  QStringList places;
  if (!option.isEmpty()) {
    places << option;
  } else {
    places << QCoreApplication::applicationDirPath() + QStringLiteral("/../share/mountwright/recipes")
           << QStringLiteral(MOUNTWRIGHT_SOURCE_RECIPES);
  }
  for (const QString& place : places) {
    if (QFileInfo(place).isDir()) return QDir::cleanPath(QFileInfo(place).absoluteFilePath());
  }
  return Message("recipes.not-found").with("path", convert::fromQt(QDir::cleanPath(places.first())));
}

}  // namespace app::workbench
