#pragma once
// Picture files that a maker may mean: among this machine's pictures and downloads, and on what is plugged in.
#include <QStringList>

namespace app::photographs {

// Returns pictures by their names alone, the newest first, at most `most` of them. Looks at no more than 20 000 files.
QStringList picturesIn(const QStringList& folders, int most);
// Does the same for files with one of these endings ("*.json").
QStringList filesIn(const QStringList& folders, const QStringList& endings, int most);
// The folders above, as far as they are there.
QStringList usualFolders();

}  // namespace app::photographs
