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
#include "core/base/strict_reader.h"
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

core::base::Result<std::string, Message> nameIn(const std::string& text, const std::string& place) {
  core::base::ParsedJson json = core::base::parseJson(text);
  core::base::ObjectReader file({&json.root, ""}, json.problems);
  const std::string format = core::base::readText(file.required("format"), json.problems).value_or("");
  const std::string name = core::base::readText(file.required("device"), json.problems).value_or("");
  file.finish();
  if (format != kFormat && core::base::startsWith(format, kFamily))
    return Message("data.device-newer").with("path", place);
  // Whatever is written under it has to be readable elsewhere.
  if (json.problems.hasErrors() || format != kFormat || !core::record::isPlainId(name))
    return Message("data.device-unreadable").with("path", place);
  return name;
}

}  // namespace

QString deviceFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/device.json"); }

core::base::Result<std::string, Message> deviceOf(const QString& dataDirectory, const std::string& former, bool made) {
  const QString path = deviceFile(dataDirectory);
  const std::string place = convert::fromQt(path);
  if (!made && isThere(QFileInfo(path))) {
    const auto text = files::readWhole(path, kMostBytes);
    if (!text) return Message("data.device-closed").with("path", place);
    return nameIn(text.value(), place);
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
