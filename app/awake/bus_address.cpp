#include "app/awake/bus_address.h"

#include <QStringList>
#include <QUrl>

#include "app/awake/sleep_control.h"

namespace app::awake {
namespace {

std::string nameOf(const QString& address) {
  const QString kind = QStringLiteral("unix:");
  if (!address.startsWith(kind)) return {};
  for (const QString& pair : address.mid(kind.size()).split(u',')) {
    const QString key = pair.section(u'=', 0, 0);
    const std::string value = QByteArray::fromPercentEncoding(pair.section(u'=', 1).toUtf8()).toStdString();
    if (value.empty()) continue;
    if (key == QLatin1String("path")) return value;
    if (key == QLatin1String("abstract")) return std::string(1, '\0') + value;
  }
  return {};
}

QString addressOf(const QString& path) {
  return QStringLiteral("unix:path=") + QString::fromLatin1(QUrl::toPercentEncoding(path, "/"));
}

}  // namespace

std::vector<BusSocket> socketsOf(const QString& addresses) {
  std::vector<BusSocket> sockets;
  for (const QString& address : addresses.split(u';', Qt::SkipEmptyParts)) {
    std::string name = nameOf(address);
    if (!name.empty()) sockets.push_back({address, std::move(name)});
  }
  return sockets;
}

Buses machineBuses() {
  Buses buses{qEnvironmentVariable("DBUS_SYSTEM_BUS_ADDRESS"), qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS")};
  if (buses.system.isEmpty()) buses.system = addressOf(QStringLiteral("/run/dbus/system_bus_socket"));
  // A session without a bus gets none started for it: nobody would be there to be asked.
  const QString runtime = qEnvironmentVariable("XDG_RUNTIME_DIR");
  if (buses.session.isEmpty() && !runtime.isEmpty()) buses.session = addressOf(runtime + QStringLiteral("/bus"));
  return buses;
}

}  // namespace app::awake
