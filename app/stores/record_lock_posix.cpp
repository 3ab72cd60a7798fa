#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QByteArray>
#include <QFile>
#include <QFileInfo>
#include <QSysInfo>
#include <cerrno>

#include "app/convert/text.h"
#include "app/stores/record_lock.h"

namespace app::stores {

using core::base::Message;

struct RecordLock::Private {
  explicit Private(int opened) : file(opened) {}
  ~Private() {
    if (file >= 0) ::close(file);
  }
  Private(const Private&) = delete;
  Private& operator=(const Private&) = delete;
  const int file;  // less than 0: nothing is held
};

namespace {

// Somebody who takes the file away between opening and locking it can do so this often.
constexpr int kTries = 16;

int opened(const QByteArray& name) {
  return ::open(name.constData(), O_RDWR | O_CREAT | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC | O_NOCTTY, 0600);
}

bool locked(int file) {
  while (::flock(file, LOCK_EX | LOCK_NB) != 0) {
    if (errno != EINTR) return errno != EWOULDBLOCK;
  }
  return true;
}

bool isOrdinary(int file) {
  struct stat found {};
  return ::fstat(file, &found) == 0 && S_ISREG(found.st_mode);
}

// Returns whether the name still leads to the file: a removed file may be locked by any number of programs.
bool hasName(int file, const QByteArray& name) {
  struct stat held {};
  struct stat named {};
  return ::fstat(file, &held) == 0 && ::stat(name.constData(), &named) == 0 && held.st_dev == named.st_dev &&
         held.st_ino == named.st_ino;
}

// In the lines Qt's lock files have, which earlier versions of this program read: process, program, machine.
void writeHolder(int file) {
  const QByteArray text =
      QByteArray::number(qint64{::getpid()}) + "\nmountwright\n" + QSysInfo::machineHostName().toUtf8() + '\n';
  // Who it is only helps to find the window; the lock holds without it.
  if (::ftruncate(file, 0) == 0) (void)!::pwrite(file, text.constData(), static_cast<std::size_t>(text.size()), 0);
}

Message inUse(int file, const QString& folder) {
  constexpr std::size_t kLongest = 512;
  char text[kLongest];
  const ssize_t got = ::pread(file, text, kLongest, 0);
  const QList<QByteArray> lines = QByteArray(text, got > 0 ? static_cast<qsizetype>(got) : 0).split('\n');
  bool isNumber = false;
  const qint64 process = lines.front().toLongLong(&isNumber);
  if (!isNumber || lines.size() < 3) return Message("store.in-use").with("path", convert::fromQt(folder));
  return Message("store.in-use-by")
      .with("path", convert::fromQt(folder))
      .with("process", std::int64_t{process})
      .with("host", convert::fromQt(QString::fromUtf8(lines[2])));
}

}  // namespace

RecordLock::RecordLock(std::unique_ptr<Private> held) : d(std::move(held)) {}

RecordLock::~RecordLock() = default;

core::base::Result<std::unique_ptr<RecordLock>, Message> RecordLock::take(const QString& recordFile) {
  const QString path = recordFile + QStringLiteral(".lock");
  const QByteArray name = QFile::encodeName(path);
  const Message notAFile = Message("store.lock-not-a-file").with("path", convert::fromQt(path));
  for (int i = 0; i < kTries; ++i) {
    auto held = std::make_unique<Private>(opened(name));
    if (held->file < 0) {
      if (errno == ELOOP || errno == EISDIR || errno == ENXIO || errno == ENODEV) return notAFile;
      return std::unique_ptr<RecordLock>(new RecordLock(std::move(held)));
    }
    if (!isOrdinary(held->file)) return notAFile;
    if (!locked(held->file)) return inUse(held->file, QFileInfo(recordFile).absolutePath());
    if (!hasName(held->file, name)) continue;
    writeHolder(held->file);
    return std::unique_ptr<RecordLock>(new RecordLock(std::move(held)));
  }
  return Message("store.in-use").with("path", convert::fromQt(QFileInfo(recordFile).absolutePath()));
}

}  // namespace app::stores
