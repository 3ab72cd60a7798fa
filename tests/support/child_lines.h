#pragma once
// The output of a child on its pipe, line by line, and instants on the boot-time clock to kill it at.
#include <poll.h>
#include <time.h>
#include <unistd.h>

#include <cerrno>
#include <cstdint>
#include <string>

namespace tests {

inline std::int64_t boottimeNanoseconds() {
  timespec now{};
  clock_gettime(CLOCK_BOOTTIME, &now);
  return std::int64_t{now.tv_sec} * 1'000'000'000 + now.tv_nsec;
}

inline void sleepUntil(std::int64_t nanoseconds) {
  const timespec until{static_cast<time_t>(nanoseconds / 1'000'000'000),
                       static_cast<long>(nanoseconds % 1'000'000'000)};
  while (clock_nanosleep(CLOCK_BOOTTIME, TIMER_ABSTIME, &until, nullptr) == EINTR) {
  }
}

// Whole lines from a pipe; text after the last line end was cut off by the kill.
class Lines {
 public:
  explicit Lines(int descriptor) : m_descriptor(descriptor) {}
  // False at the end of the pipe.
  bool readMore() {
    char buffer[4096];
    const ssize_t got = read(m_descriptor, buffer, sizeof buffer);
    if (got <= 0) return false;
    m_text.append(buffer, static_cast<std::size_t>(got));
    return true;
  }
  // Waits for more until an instant on the boot-time clock. False at the end of the pipe or of the time.
  bool readMoreUntil(std::int64_t instant) {
    const std::int64_t left = instant - boottimeNanoseconds();
    if (left <= 0) return false;
    const timespec wait{static_cast<time_t>(left / 1'000'000'000), static_cast<long>(left % 1'000'000'000)};
    pollfd one{m_descriptor, POLLIN, 0};
    return ppoll(&one, 1, &wait, nullptr) == 1 && readMore();
  }
  // Returns all lines so far, without a last one that was cut off.
  std::string whole() const { return m_text.substr(0, m_text.rfind('\n') + 1); }
  const std::string& text() const { return m_text; }

 private:
  int m_descriptor;
  std::string m_text;
};

}  // namespace tests
