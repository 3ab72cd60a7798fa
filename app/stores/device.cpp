#include "app/stores/device.h"

#include <QDateTime>
#include <QFileInfo>
#include <string_view>
#include <utility>

#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "app/files/private.h"
#include "app/files/whole_file.h"
#include "core/base/json.h"
#include "core/base/text.h"
#include "core/record/event.h"

namespace app::stores {
namespace {

using core::base::Message;
using core::base::Value;

constexpr std::string_view kFamily = "mountwright-device/";
constexpr std::string_view kFormat = "mountwright-device/1";
constexpr std::size_t kMostBytes = 1000;

// A link whose end is missing is there as well: what it led to may come back.
bool isThere(const QFileInfo& file) { return file.exists() || file.isSymLink(); }

// The message is empty where the name could be read.
struct Named {
  std::string name;
  Message trouble;
};

Named nameIn(const std::string& text, const std::string& place) {
  const core::base::ParsedJson json = core::base::parseJson(text);
  const Value* format = json.root.find("format");
  const std::string stated =
      format != nullptr && format->kind() == Value::Kind::Text ? format->asText() : std::string();
  if (stated != kFormat && core::base::startsWith(stated, kFamily))
    return {"", Message("data.device-newer").with("path", place)};
  const Value* name = json.root.find("device");
  const bool whole = json.readable && !json.problems.hasErrors() && stated == kFormat && name != nullptr &&
                     json.root.members().size() == 2 && name->kind() == Value::Kind::Text;
  // Whatever is written under it has to be readable elsewhere.
  if (!whole || !core::record::isPlainId(name->asText()))
    return {"", Message("data.device-unreadable").with("path", place)};
  return {name->asText(), {}};
}

}  // namespace

QString deviceFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/device.json"); }

core::base::Result<std::string, Message> deviceOf(const QString& dataDirectory, const std::string& former, bool made) {
  const QString path = deviceFile(dataDirectory);
  const std::string place = convert::fromQt(path);
  if (!made && isThere(QFileInfo(path))) {
    const auto text = files::readWhole(path, kMostBytes);
    if (!text) return Message("data.device-closed").with("path", place);
    Named found = nameIn(text.value(), place);
    if (!found.trouble.id.empty()) return found.trouble;
    return found.name;
  }
  const bool goesOn = !made && !former.empty();
  const std::string name = goesOn ? former : convert::newUuid(QDateTime::currentMSecsSinceEpoch());
  const Value json = Value::object().set("format", Value::text(kFormat)).set("device", Value::text(name));
  if (!files::writeWhole(path, core::base::writeJson(json, 2) + '\n')) {
    files::closeToOthers(path);
  } else if (!goesOn) {
    return Message("data.device-unkept").with("path", place);
  }
  return name;
}

}  // namespace app::stores
