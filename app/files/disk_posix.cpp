#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <cerrno>
#include <cstdio>

#include "app/files/disk.h"

namespace app::files {
namespace {

Fault faultOf(int error) {
  switch (error) {
    case ENOENT:
    case ENOTDIR: return Fault::Missing;
    case EISDIR: return Fault::Folder;
    case ENXIO:
    case ENODEV: return Fault::NotAFile;
    case EACCES:
    case EPERM:
    case EROFS: return Fault::NoPermission;
    case ENOSPC:
    case EDQUOT:
    case EFBIG: return Fault::Full;
    default: return Fault::Failed;
  }
}

std::int64_t nanoseconds(const timespec& time) { return std::int64_t{time.tv_sec} * 1'000'000'000 + time.tv_nsec; }

class PosixSource : public Source {
 public:
  explicit PosixSource(int file) : m_file(file) {}
  ~PosixSource() override { ::close(m_file); }
  PosixSource(const PosixSource&) = delete;
  PosixSource& operator=(const PosixSource&) = delete;

  FileState state() override {
    struct stat now {};
    if (::fstat(m_file, &now) != 0) return {-1, 0, 0};
#ifdef Q_OS_DARWIN
    return {now.st_size, nanoseconds(now.st_mtimespec), nanoseconds(now.st_ctimespec)};
#else
    return {now.st_size, nanoseconds(now.st_mtim), nanoseconds(now.st_ctim)};
#endif
  }

  std::int64_t read(char* buffer, std::int64_t most) override {
    for (;;) {
      const ssize_t got = ::read(m_file, buffer, static_cast<std::size_t>(most));
      if (got >= 0 || errno != EINTR) return got;
    }
  }

 private:
  int m_file;
};

class PosixTarget : public Target {
 public:
  explicit PosixTarget(int file) : m_file(file) {}
  ~PosixTarget() override {
    if (m_file >= 0) ::close(m_file);
  }
  PosixTarget(const PosixTarget&) = delete;
  PosixTarget& operator=(const PosixTarget&) = delete;

  Fault write(const char* bytes, std::int64_t count) override {
    while (count > 0) {
      const ssize_t put = ::write(m_file, bytes, static_cast<std::size_t>(count));
      if (put < 0 && errno == EINTR) continue;
      if (put <= 0) return put == 0 ? Fault::Full : faultOf(errno);
      bytes += put;
      count -= put;
    }
    return Fault::None;
  }

  Fault finish() override {
    if (::fsync(m_file) != 0) return faultOf(errno);
    const int file = m_file;
    m_file = -1;
    return ::close(file) == 0 ? Fault::None : faultOf(errno);
  }

 private:
  int m_file;
};

class PosixDisk : public Disk {
 public:
  Open<Source> openSource(const QString& path) override {
    // Not waiting matters where a pipe is opened that nobody writes to.
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);
    if (file < 0) return faultOf(errno);
    auto source = std::make_unique<PosixSource>(file);
    struct stat found {};
    if (::fstat(file, &found) != 0) return faultOf(errno);
    if (S_ISDIR(found.st_mode)) return Fault::Folder;
    if (!S_ISREG(found.st_mode)) return Fault::NotAFile;
    return std::unique_ptr<Source>(std::move(source));
  }

  Open<Target> create(const QString& path) override {
    const int file = ::open(QFile::encodeName(path).constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (file < 0) return faultOf(errno);
    return std::unique_ptr<Target>(std::make_unique<PosixTarget>(file));
  }

  Fault rename(const QString& from, const QString& to) override {
    if (::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) != 0) return faultOf(errno);
    const QByteArray folder = QFile::encodeName(QFileInfo(to).absolutePath());
    const int file = ::open(folder.constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file < 0) return faultOf(errno);
    const int forced = ::fsync(file);
    const int error = errno;
    ::close(file);
    // A file system that cannot force a folder says so by EINVAL; there is no more to be done there.
    return forced == 0 || error == EINVAL ? Fault::None : faultOf(error);
  }

  void remove(const QString& path) override { ::unlink(QFile::encodeName(path).constData()); }
};

}  // namespace

std::unique_ptr<Disk> machineDisk() { return std::make_unique<PosixDisk>(); }

}  // namespace app::files
