#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>

#include "app/files/standard_streams.h"

namespace app::files {

void holdStandardStreams() {
  std::signal(SIGPIPE, SIG_IGN);
  for (int number = 0; number <= 2; ++number) {
    // The lowest free number is given out: with those below held it is this one.
    if (::fcntl(number, F_GETFD) < 0 && errno == EBADF) (void)::open("/dev/null", O_RDONLY);
  }
}

}  // namespace app::files
