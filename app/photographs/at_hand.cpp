#include "app/photographs/at_hand.h"

#include <QDateTime>
#include <QDir>
#include <QDirIterator>
#include <QFileInfo>
#include <QStandardPaths>
#include <algorithm>
#include <vector>

namespace app::photographs {

QStringList usualFolders() {
  QStringList folders;
  for (const auto place : {QStandardPaths::PicturesLocation, QStandardPaths::DownloadLocation}) {
    for (const QString& folder : QStandardPaths::standardLocations(place)) {
      // A home without such a folder of its own would be searched whole.
      if (QDir(folder) != QDir::home()) folders << folder;
    }
  }
  const QString user = QDir::home().dirName();
  folders << QStringLiteral("/media/") + user << QStringLiteral("/run/media/") + user;
  folders.removeDuplicates();
  folders.erase(std::remove_if(folders.begin(), folders.end(), [](const QString& one) { return !QDir(one).exists(); }),
                folders.end());
  return folders;
}

QStringList filesIn(const QStringList& folders, const QStringList& endings, int most) {
  constexpr int kMostLooked = 20'000;
  struct Found {
    qint64 time;
    QString path;
  };
  std::vector<Found> found;
  int looked = 0;
  for (const QString& folder : folders) {
    // Links are not followed: they may go round in a ring.
    QDirIterator files(folder, endings, QDir::Files | QDir::Readable, QDirIterator::Subdirectories);
    while (files.hasNext() && looked++ < kMostLooked) {
      const QString path = files.next();
      found.push_back({files.fileInfo().lastModified().toMSecsSinceEpoch(), path});
    }
  }
  std::sort(found.begin(), found.end(),
            [](const Found& a, const Found& b) { return a.time != b.time ? a.time > b.time : a.path < b.path; });
  QStringList paths;
  for (const Found& one : found) {
    if (paths.size() == most) break;
    paths << one.path;
  }
  return paths;
}

QStringList picturesIn(const QStringList& folders, int most) {
  return filesIn(folders,
                 {QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png"), QStringLiteral("*.webp")},
                 most);
}

}  // namespace app::photographs
