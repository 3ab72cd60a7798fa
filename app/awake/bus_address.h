#pragma once
// The part of the message buses' addresses that concerns this machine: unix sockets.
#include <QString>
#include <string>
#include <vector>

namespace app::awake {

struct BusSocket {
  QString address;   // as it was written, one alone
  std::string name;  // of the socket; begins with a nought byte where it is not in the file system
};

// Returns the sockets among `addresses` ("unix:path=/run/bus;unix:abstract=/tmp/x,guid=..."), in their order. An
// address that is no unix socket, or is badly written, is left out.
std::vector<BusSocket> socketsOf(const QString& addresses);

}  // namespace app::awake
