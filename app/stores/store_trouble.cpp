#include "app/stores/store_trouble.h"

#include <QFileInfo>

#include "app/convert/text.h"

namespace app::stores {
namespace {

// Primary result codes of SQLite (sqlite.org/rescode.html); the upper bits of a code say more about the same.
constexpr int kError = 1;  // a statement of ours that the tables do not fit
constexpr int kBusy = 5;
constexpr int kLocked = 6;
constexpr int kReadOnly = 8;
constexpr int kCorrupt = 11;
constexpr int kFull = 13;
constexpr int kCannotOpen = 14;
constexpr int kNotADatabase = 26;

bool folderIsReadOnly(const QString& path) { return !QFileInfo(QFileInfo(path).absolutePath()).isWritable(); }

}  // namespace

core::base::Message troubleOf(const QSqlError& error, const QString& path) {
  using core::base::Message;
  const std::string place = convert::fromQt(path);
  const std::string detail = convert::fromQt(error.text().simplified());
  switch (error.nativeErrorCode().toInt() & 0xFF) {
    case kBusy:
    case kLocked: return Message("store.locked").with("path", place);
    case kReadOnly:
      return Message(folderIsReadOnly(path) ? "store.read-only-folder" : "store.read-only-file").with("path", place);
    case kError:
    case kCorrupt: return Message("store.damaged").with("path", place).with("detail", detail);
    case kNotADatabase: return Message("store.not-a-database").with("path", place);
    case kFull: return Message("store.full").with("path", place);
    case kCannotOpen:
      if (folderIsReadOnly(path)) return Message("store.read-only-folder").with("path", place);
      return Message("store.cannot-open").with("path", place).with("detail", detail);
    default: return Message("store.failed").with("path", place).with("detail", detail);
  }
}

}  // namespace app::stores
