#include "app/files/standard_streams.h"

namespace app::files {

void holdStandardStreams() {}

}  // namespace app::files
