#include "app/stores/device.h"

#include <QDateTime>
#include <QFileInfo>

#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "app/files/private.h"
#include "app/files/whole_file.h"
#include "core/base/json.h"

namespace app::stores {
namespace {

using core::base::Message;
using core::base::Value;

constexpr const char* kFormat = "mountwright-device/1";
constexpr std::size_t kMostBytes = 1000;
constexpr std::size_t kLongestName = 100;

// "" where it holds none.
std::string nameIn(const std::string& text) {
  const core::base::ParsedJson json = core::base::parseJson(text);
  if (!json.readable) return "";
  const Value* format = json.root.find("format");
  const Value* name = json.root.find("device");
  const bool known = format != nullptr && format->kind() == Value::Kind::Text && format->asText() == kFormat;
  if (!known || name == nullptr || name->kind() != Value::Kind::Text) return "";
  return name->asText().size() <= kLongestName ? name->asText() : "";
}

}  // namespace

QString deviceFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/device.json"); }

core::base::Result<std::string, Message> deviceOf(const QString& dataDirectory, const std::string& former, bool made) {
  const QString path = deviceFile(dataDirectory);
  const std::string place = convert::fromQt(path);
  if (!made && QFileInfo::exists(path)) {
    const auto text = files::readWhole(path, kMostBytes);
    const std::string name = text ? nameIn(text.value()) : std::string();
    if (name.empty()) return Message("data.device-unreadable").with("path", place);
    return name;
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
