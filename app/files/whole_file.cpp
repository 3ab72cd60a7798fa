#include "app/files/whole_file.h"

#include <QFileInfo>
#include <QUuid>
#include <algorithm>
#include <memory>

#include "app/files/disk.h"
#include "app/files/unfinished.h"

namespace app::files {
namespace {

using core::base::Message;

constexpr std::size_t kPiece = 1 << 16;

Message readingTrouble(Fault fault) {
  switch (fault) {
    case Fault::Missing: return Message("file.missing");
    case Fault::Folder: return Message("file.is-folder");
    case Fault::NotAFile: return Message("file.not-a-file");
    case Fault::NoPermission: return Message("file.no-permission");
    case Fault::None:
    case Fault::Full:
    case Fault::Failed: break;
  }
  return Message("file.unreadable");
}

Message writingTrouble(Fault fault) { return Message(fault == Fault::Full ? "file.disk-full" : "file.cannot-write"); }

}  // namespace

core::base::Result<std::string, Message> readWhole(const QString& path, std::size_t most) {
  const auto source = machineDisk()->openSource(path);
  if (!source) return readingTrouble(source.error());
  // A buffer of its own: a text grown to the size of a piece would keep that much for the few kilobytes most files
  // have.
  const auto buffer = std::make_unique_for_overwrite<char[]>(kPiece);
  const std::size_t limit = most + 1;
  std::string text;
  while (text.size() < limit) {
    const auto piece = static_cast<std::int64_t>(std::min(kPiece, limit - text.size()));
    const std::int64_t got = source.value()->read(buffer.get(), piece);
    if (got < 0) return Message("file.unreadable");
    if (got == 0) break;
    text.append(buffer.get(), static_cast<std::size_t>(got));
  }
  return text;
}

std::optional<Message> writeWhole(const QString& path, const std::string& bytes) {
  const QFileInfo there(path);
  if (there.exists() && !there.isFile() && !there.isSymLink()) return Message("file.not-a-file");
  const auto disk = machineDisk();
  Unfinished file(
      *disk, there.absolutePath() + QStringLiteral("/.writing-") + QUuid::createUuid().toString(QUuid::WithoutBraces));
  {
    const auto target = disk->create(file.path());
    if (!target) return writingTrouble(target.error());
    Fault fault = target.value()->write(bytes.data(), static_cast<std::int64_t>(bytes.size()));
    if (fault == Fault::None) fault = target.value()->finish();
    if (fault != Fault::None) return writingTrouble(fault);
  }
  const Fault fault = file.becomes(path);
  return fault == Fault::None ? std::nullopt : std::optional(writingTrouble(fault));
}

}  // namespace app::files
