#include "app/clocks/zone_watch.h"

#include <QCryptographicHash>
#include <QFileInfo>

#include "app/convert/text.h"
#include "app/files/whole_file.h"

namespace app::clocks {
namespace {

constexpr std::size_t kLongestZone = 1 << 16;

}  // namespace

QStringList systemZoneFiles() { return {QStringLiteral("/etc/localtime"), QStringLiteral("/etc/timezone")}; }

ZoneWatch::ZoneWatch(const QStringList& files, QObject* parent)
    : QObject(parent), m_files(files), m_state(state()), m_watcher(this), m_settled(this) {
  m_settled.setSingleShot(true);
  m_settled.setInterval(100);
  connect(&m_settled, &QTimer::timeout, this, &ZoneWatch::look);
  const auto settle = [this] { m_settled.start(); };
  connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, settle);
  connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, settle);
  watch();
}

// The files themselves are watched for being written, which follows a link to where it leads, and their folders for a
// file or a link being put in the place of another.
void ZoneWatch::watch() {
  for (const QString& file : m_files) {
    const QString folder = QFileInfo(file).absolutePath();
    for (const QString& path : {folder, file}) {
      const bool watched = m_watcher.files().contains(path) || m_watcher.directories().contains(path);
      if (!watched && QFileInfo::exists(path)) m_watcher.addPath(path);
    }
  }
}

void ZoneWatch::look() {
  // A file that was replaced is another one to the system: what is watched under its name has to be the new one.
  const QStringList watched = m_watcher.files();
  if (!watched.isEmpty()) m_watcher.removePaths(watched);
  watch();
  QByteArray now = state();
  if (now == m_state) return;
  m_state = std::move(now);
  emit changed();
}

QByteArray ZoneWatch::state() const {
  QCryptographicHash hash(QCryptographicHash::Sha256);
  for (const QString& path : m_files) {
    hash.addData(QFileInfo(path).symLinkTarget().toUtf8() + '\0');
    const auto read = files::readWhole(path, kLongestZone);
    if (!read) continue;
    const QByteArray text = convert::toBytes(read.value());
    hash.addData(QByteArray::number(text.size()) + '\0' + text);
  }
  return hash.result();
}

}  // namespace app::clocks
