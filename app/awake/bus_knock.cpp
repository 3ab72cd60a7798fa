#include "app/awake/bus_knock.h"

#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <cerrno>
#include <cstddef>
#include <cstring>
#include <string>

#include "app/awake/bus_address.h"

namespace app::awake {
namespace {

using Clock = std::chrono::steady_clock;

class Socket {
 public:
  Socket() : m_file(socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0)) {}
  Socket(const Socket&) = delete;
  Socket& operator=(const Socket&) = delete;
  ~Socket() {
    if (m_file >= 0) close(m_file);
  }

  // A socket whose queue of callers is full is not answered either.
  bool call(const std::string& name) const {
    sockaddr_un there{};
    there.sun_family = AF_UNIX;
    const bool inFileSystem = name[0] != '\0';
    if (m_file < 0 || name.size() + inFileSystem > sizeof there.sun_path) return false;
    std::memcpy(there.sun_path, name.data(), name.size());
    const auto size = static_cast<socklen_t>(offsetof(sockaddr_un, sun_path) + name.size() + inFileSystem);
    return connect(m_file, reinterpret_cast<const sockaddr*>(&there), size) == 0;
  }

  bool say(const std::string& text) const {
    return send(m_file, text.data(), text.size(), MSG_NOSIGNAL) == static_cast<ssize_t>(text.size());
  }

  // One line without its end; "" where none has come in time.
  std::string hear(Clock::time_point until) const {
    constexpr std::size_t kLongest = 1000;
    std::string heard;
    while (heard.size() < kLongest) {
      const auto left = std::chrono::ceil<std::chrono::milliseconds>(until - Clock::now()).count();
      pollfd one{m_file, POLLIN, 0};
      if (left <= 0 || (poll(&one, 1, static_cast<int>(left)) <= 0 && errno != EINTR)) return {};
      char part[128];
      const ssize_t got = recv(m_file, part, sizeof part, 0);
      if (got == 0 || (got < 0 && errno != EINTR && errno != EAGAIN)) return {};
      if (got > 0) heard.append(part, static_cast<std::size_t>(got));
      if (const auto end = heard.find("\r\n"); end != std::string::npos) return heard.substr(0, end);
    }
    return {};
  }

 private:
  int m_file;
};

// The way a client begins to identify itself: a nought byte, then its number in digits written as hexadecimal
// characters.
std::string greeting() {
  std::string text(1, '\0');
  text += "AUTH EXTERNAL ";
  for (const char digit : std::to_string(geteuid())) {
    text += '3';
    text += digit;
  }
  return text + "\r\n";
}

bool answers(const std::string& name, std::chrono::milliseconds patience) {
  const Socket socket;
  return socket.call(name) && socket.say(greeting()) && socket.hear(Clock::now() + patience).rfind("OK ", 0) == 0;
}

}  // namespace

QString answeringAddress(const QString& addresses, std::chrono::milliseconds patience) {
  for (const BusSocket& each : socketsOf(addresses)) {
    if (answers(each.name, patience)) return each.address;
  }
  return {};
}

}  // namespace app::awake
