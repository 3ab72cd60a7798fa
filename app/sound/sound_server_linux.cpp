#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <cstring>
#include <string>

#include <QByteArray>
#include <QtGlobal>

#include "app/sound/sound_server.h"

namespace app::sound {
namespace {

bool answers(const QByteArray& path) {
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  if (path.size() >= static_cast<qsizetype>(sizeof address.sun_path)) return false;
  std::memcpy(address.sun_path, path.constData(), static_cast<std::size_t>(path.size()));
  const int file = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0);
  if (file < 0) return false;
  const bool reached = connect(file, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
  close(file);
  return reached;
}

}  // namespace

bool soundServerAnswers() {
  const QByteArray named = qgetenv("PULSE_SERVER");
  if (named.startsWith("unix:")) return answers(named.mid(5));
  if (named.startsWith('/')) return answers(named);
  if (!named.isEmpty()) return true;
  const QByteArray ownFolder = qgetenv("PULSE_RUNTIME_PATH");
  if (!ownFolder.isEmpty()) return answers(ownFolder + "/native");
  const QByteArray runtime = qgetenv("XDG_RUNTIME_DIR");
  if (runtime.isEmpty()) return true;
  return answers(runtime + "/pulse/native") || answers("/run/pulse/native");
}

}  // namespace app::sound
