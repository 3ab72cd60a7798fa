#pragma once
// Trees of small files for tests, such as the kernel shows of devices; they are removed with their object.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QString>
#include <QTemporaryDir>

namespace tests {

class Folders {
 public:
  QString path(const QString& inside = {}) const { return inside.isEmpty() ? m_root.path() : m_root.filePath(inside); }

  // Makes the folders on the way. A reader sees the old text or the new one. Returns whether it was written.
  bool write(const QString& inside, const QByteArray& text) const {
    QDir().mkpath(QFileInfo(path(inside)).path());
    QSaveFile file(path(inside));
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
  }
  bool remove(const QString& inside) const {
    return QFileInfo(path(inside)).isDir() ? QDir(path(inside)).removeRecursively() : QFile::remove(path(inside));
  }

 private:
  QTemporaryDir m_root;
};

}  // namespace tests
