// Where there is no POSIX: as Qt does it. What Qt cannot force to the disk is left to the system.
#include <QDateTime>
#include <QFile>
#include <QFileInfo>

#include "app/files/disk.h"

namespace app::files {
namespace {

Fault faultOf(const QFile& file) {
  switch (file.error()) {
    case QFileDevice::NoError: return Fault::None;
    case QFileDevice::PermissionsError: return Fault::NoPermission;
    case QFileDevice::ResourceError: return Fault::Full;
    default: return Fault::Failed;
  }
}

class PortableSource : public Source {
 public:
  explicit PortableSource(const QString& path) : m_file(path) {}
  QFile& file() { return m_file; }
  FileState state() override {
    const QFileInfo info(m_file.fileName());
    return {info.size(), info.lastModified().toMSecsSinceEpoch() * 1'000'000, 0};
  }
  std::int64_t read(char* buffer, std::int64_t most) override { return m_file.read(buffer, most); }

 private:
  QFile m_file;
};

class PortableTarget : public Target {
 public:
  explicit PortableTarget(const QString& path) : m_file(path) {}
  QFile& file() { return m_file; }
  Fault write(const char* bytes, std::int64_t count) override {
    if (m_file.write(bytes, count) == count) return Fault::None;
    return faultOf(m_file) == Fault::NoPermission ? Fault::NoPermission : Fault::Full;
  }
  Fault finish() override {
    if (!m_file.flush()) return Fault::Full;
    m_file.close();
    return faultOf(m_file);
  }

 private:
  QFile m_file;
};

class PortableDisk : public Disk {
 public:
  Open<Source> openSource(const QString& path) override {
    const QFileInfo info(path);
    if (!info.exists()) return Fault::Missing;
    if (info.isDir()) return Fault::Folder;
    if (!info.isFile()) return Fault::NotAFile;
    auto source = std::make_unique<PortableSource>(path);
    if (!source->file().open(QIODevice::ReadOnly)) return faultOf(source->file());
    return std::unique_ptr<Source>(std::move(source));
  }
  Open<Target> create(const QString& path) override {
    auto target = std::make_unique<PortableTarget>(path);
    if (!target->file().open(QIODevice::WriteOnly | QIODevice::NewOnly)) return faultOf(target->file());
    return std::unique_ptr<Target>(std::move(target));
  }
  Fault rename(const QString& from, const QString& to) override {
    QFile::remove(to);
    return QFile::rename(from, to) ? Fault::None : Fault::Failed;
  }
  void remove(const QString& path) override { QFile::remove(path); }
};

}  // namespace

std::unique_ptr<Disk> machineDisk() { return std::make_unique<PortableDisk>(); }

}  // namespace app::files
