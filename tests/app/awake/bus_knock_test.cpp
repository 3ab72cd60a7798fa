#include "app/awake/bus_knock.h"

#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <QElapsedTimer>
#include <cstring>
#include <string>
#include <thread>

#include "app/awake/bus_address.h"
#include "app/awake/sleep_control.h"
#include "tests/support/catch.h"
#include "tests/support/folders.h"

using app::awake::answeringAddress;
using app::awake::socketsOf;
using namespace std::chrono_literals;

namespace {

// Takes one caller and says one thing to it; with nothing to say it does not even take the caller.
class Listener {
 public:
  Listener(const tests::Folders& files, const QString& name, std::string says) : m_path(files.path(name)) {
    sockaddr_un here{};
    here.sun_family = AF_UNIX;
    std::strncpy(here.sun_path, m_path.toLocal8Bit().constData(), sizeof here.sun_path - 1);
    m_file = socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    REQUIRE(bind(m_file, reinterpret_cast<const sockaddr*>(&here), sizeof here) == 0);
    REQUIRE(listen(m_file, 5) == 0);
    if (says.empty()) return;
    m_thread = std::thread([file = m_file, says = std::move(says)] {
      const int caller = accept(file, nullptr, nullptr);
      char greeting[200];
      if (read(caller, greeting, sizeof greeting) > 0) send(caller, says.data(), says.size(), MSG_NOSIGNAL);
      char more = 0;
      while (read(caller, &more, 1) > 0) {
      }
      close(caller);
    });
  }
  ~Listener() {
    shutdown(m_file, SHUT_RDWR);
    if (m_thread.joinable()) m_thread.join();
    close(m_file);
  }
  QString address() const { return QStringLiteral("unix:path=") + m_path; }

 private:
  QString m_path;
  int m_file = -1;
  std::thread m_thread;
};

std::vector<std::string> namesOf(const QString& addresses) {
  std::vector<std::string> names;
  for (const auto& each : socketsOf(addresses)) names.push_back(each.name);
  return names;
}

}  // namespace

TEST_CASE("unix sockets are found among the addresses of a bus, whatever else stands there") {
  using Names = std::vector<std::string>;
  CHECK(namesOf("unix:path=/run/bus") == Names{"/run/bus"});
  CHECK(namesOf("unix:guid=12ab,path=/run/a%20bus;tcp:host=localhost,port=1;unix:abstract=/tmp/x") ==
        Names{"/run/a bus", std::string("\0/tmp/x", 7)});
  for (const char* none : {"", ";", "autolaunch:", "unix:", "unix:path", "unix:path=", "unixexec:path=/bin/x", "x"}) {
    CHECK(namesOf(none).empty());
  }
}

TEST_CASE("the buses of this machine are those the environment names") {
  const QByteArray before = qgetenv("DBUS_SYSTEM_BUS_ADDRESS");
  qputenv("DBUS_SYSTEM_BUS_ADDRESS", "unix:path=/a");
  CHECK(app::awake::machineBuses().system == "unix:path=/a");
  qunsetenv("DBUS_SYSTEM_BUS_ADDRESS");
  CHECK(namesOf(app::awake::machineBuses().system) == std::vector<std::string>{"/run/dbus/system_bus_socket"});
  if (!before.isNull()) qputenv("DBUS_SYSTEM_BUS_ADDRESS", before);

  const QByteArray session = qgetenv("DBUS_SESSION_BUS_ADDRESS");
  const QByteArray runtime = qgetenv("XDG_RUNTIME_DIR");
  qunsetenv("DBUS_SESSION_BUS_ADDRESS");
  qputenv("XDG_RUNTIME_DIR", "/run/user/a b;c");
  CHECK(namesOf(app::awake::machineBuses().session) == std::vector<std::string>{"/run/user/a b;c/bus"});
  qunsetenv("XDG_RUNTIME_DIR");
  CHECK(app::awake::machineBuses().session.isEmpty());
  if (!session.isNull()) qputenv("DBUS_SESSION_BUS_ADDRESS", session);
  if (!runtime.isNull()) qputenv("XDG_RUNTIME_DIR", runtime);
}

TEST_CASE("a bus that greets back lives, the first of several is named") {
  tests::Folders files;
  const Listener refusing(files, "refusing", "REJECTED EXTERNAL\r\n");
  const Listener living(files, "living", "OK 0123456789abcdef0123456789abcdef\r\n");
  CHECK(answeringAddress("unix:path=/nowhere;" + refusing.address() + ';' + living.address(), 1s) == living.address());
}

TEST_CASE("a socket where nobody answers, or not as a bus does, is no bus, and is not waited for beyond patience") {
  tests::Folders files;
  const Listener silent(files, "silent", "");
  const Listener endless(files, "endless", std::string(5000, 'x'));
  const Listener half(files, "half", "OK 0123");
  QElapsedTimer passed;
  passed.start();
  for (const auto* each : {&silent, &endless, &half}) CHECK(answeringAddress(each->address(), 200ms).isEmpty());
  CHECK(passed.elapsed() < 2000);
}

TEST_CASE("a name too long for a socket is no bus") {
  CHECK(answeringAddress("unix:path=/" + QString(500, u'x'), 100ms).isEmpty());
}
