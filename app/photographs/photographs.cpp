#include "app/photographs/photographs.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <algorithm>
#include <utility>

#include "app/convert/text.h"
#include "app/files/private.h"
#include "app/files/unfinished.h"
#include "app/photographs/look.h"
#include "core/base/text.h"
#include "core/jobs/beside_work.h"

namespace app::photographs {
namespace {

using core::base::Message;
using core::base::Result;
using files::Fault;
using files::FileState;
using files::Source;
using files::Target;

constexpr std::int64_t kPiece = 1 << 20;

// The name prefix of files that are being copied. No other name in the folder begins so.
const QString& unfinished() {
  static const QString kBeginning = QStringLiteral(".keeping-");
  return kBeginning;
}

QString endingOf(const std::string& type) {
  return type == "jpeg" ? QStringLiteral("jpg") : QString::fromStdString(type);
}

const QStringList& endings() {
  static const QStringList kEndings = {QStringLiteral("jpg"), QStringLiteral("png"), QStringLiteral("webp")};
  return kEndings;
}

Message sourceTrouble(Fault fault, const QString& path) {
  const std::string place = convert::fromQt(path);
  switch (fault) {
    case Fault::Missing: return Message("photograph.missing").with("path", place);
    case Fault::Folder: return Message("photograph.is-folder").with("path", place);
    case Fault::NotAFile: return Message("photograph.not-a-file").with("path", place);
    case Fault::NoPermission: return Message("photograph.no-permission").with("path", place);
    case Fault::None:
    case Fault::Full:
    case Fault::Failed: break;
  }
  return Message("photograph.unreadable").with("path", place);
}

Message targetTrouble(Fault fault, const QString& folder) {
  if (fault == Fault::Full) return Message("photograph.disk-full").with("path", convert::fromQt(folder));
  return Message("photograph.cannot-keep").with("path", convert::fromQt(folder));
}

bool isHash(const QString& text) { return core::base::isHash(convert::fromQt(text)); }

}  // namespace

struct Photographs::Copied {
  std::int64_t bytes = 0;
  QCryptographicHash hash{QCryptographicHash::Sha256};
};

Photographs::Photographs(QString folder, std::shared_ptr<files::Disk> disk)
    : m_folder(std::move(folder)), m_disk(std::move(disk)) {}

Message Photographs::copy(Source& source, Target& target, Copied& copied) const {
  const FileState before = source.state();
  if (before.bytes == 0) return Message("photograph.empty");
  const Message tooLarge = Message("photograph.too-large").with("most", core::jobs::kLargestPhotograph / 1'000'000);
  if (before.bytes > core::jobs::kLargestPhotograph) return tooLarge;
  std::string buffer(kPiece, '\0');
  for (;;) {
    const std::int64_t got = source.read(buffer.data(), kPiece);
    if (got < 0) return Message("photograph.read-failed");
    if (got == 0) break;
    copied.bytes += got;
    // A file that grows while it is read never ends.
    if (copied.bytes > core::jobs::kLargestPhotograph) return tooLarge;
    copied.hash.addData(QByteArrayView(buffer.data(), got));
    if (const Fault fault = target.write(buffer.data(), got); fault != Fault::None)
      return targetTrouble(fault, m_folder);
  }
  const FileState after = source.state();
  if (!(before == after) || copied.bytes != after.bytes) return Message("photograph.changed-meanwhile");
  const Fault fault = target.finish();
  return fault == Fault::None ? Message() : targetTrouble(fault, m_folder);
}

Result<Kept, Message> Photographs::keep(const QString& path) const {
  auto source = m_disk->openSource(path);
  if (!source) return sourceTrouble(source.error(), path);
  if (!files::makePrivateFolder(m_folder)) return Message("photograph.folder").with("path", convert::fromQt(m_folder));
  const QString name = unfinished() + QUuid::createUuid().toString(QUuid::WithoutBraces);
  files::Unfinished copyOf(*m_disk, m_folder + u'/' + name);
  Copied copied;
  {
    auto target = m_disk->create(copyOf.path());
    if (!target) return targetTrouble(target.error(), m_folder);
    if (Message trouble = copy(*source.value(), *target.value(), copied); !trouble.id.empty()) return trouble;
  }
  // The copy is looked at, not the file it came from: what is judged is what is kept.
  const auto head = headOf(copyOf.path());
  if (!head) return head.error();
  Kept kept{copied.hash.result().toHex().toStdString(), copied.bytes, head.value().type, head.value().pixels.width(),
            head.value().pixels.height()};
  const QString place = m_folder + u'/' + QString::fromStdString(kept.hash) + u'.' + endingOf(kept.type);
  // One that lies there already is replaced by the same bytes; where it was altered, that mends it.
  if (const Fault fault = copyOf.becomes(place); fault != Fault::None) return targetTrouble(fault, m_folder);
  return kept;
}

QString Photographs::file(const std::string& hash) const {
  const QString name = QString::fromStdString(hash);
  if (!isHash(name)) return {};
  for (const QString& ending : endings()) {
    const QString path = m_folder + u'/' + name + u'.' + ending;
    if (QFileInfo(path).isFile()) return path;
  }
  return {};
}

Message Photographs::trouble(const std::string& hash) const {
  const QString path = file(hash);
  if (path.isEmpty()) return Message("photograph.gone");
  QFile kept(path);
  if (!kept.open(QIODevice::ReadOnly)) return Message("photograph.gone");
  QCryptographicHash sum(QCryptographicHash::Sha256);
  if (!sum.addData(&kept) || sum.result().toHex().toStdString() != hash) return Message("photograph.altered");
  return {};
}

Result<QImage, Message> Photographs::thumbnail(const std::string& hash, QSize atMost) const {
  if (Message found = trouble(hash); !found.id.empty()) return found;
  return scaled(file(hash), atMost);
}

int Photographs::sweep() const {
  int swept = 0;
  const QDir folder(m_folder);
  const auto found = folder.entryInfoList({unfinished() + u'*'}, QDir::Files | QDir::Hidden | QDir::NoSymLinks);
  for (const QFileInfo& one : found) {
    if (QUuid::fromString(one.fileName().mid(unfinished().size())).isNull()) continue;
    if (QFile::remove(one.filePath())) ++swept;
  }
  return swept;
}

Photographs::Unused Photographs::unused(const std::set<std::string>& named) const {
  Unused unused;
  for (const QFileInfo& one : QDir(m_folder).entryInfoList(QDir::Files | QDir::NoSymLinks, QDir::Name)) {
    const QString hash = one.completeBaseName();
    if (!isHash(hash) || !endings().contains(one.suffix()) || named.contains(hash.toStdString())) continue;
    unused.hashes.push_back(hash.toStdString());
    unused.bytes += one.size();
  }
  return unused;
}

}  // namespace app::photographs
