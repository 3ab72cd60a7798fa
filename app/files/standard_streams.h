#pragma once

namespace app::files {

// Call first of all. A program started with its input, output or errors closed would give their numbers to the next
// files it opens, and write its sentences into the record. A closed stream is replaced by one that reads as empty and
// accepts nothing: writing to it fails and is reported. Writing into a pipe that nobody reads any more fails in the
// same way and ends neither the work under way nor the program.
void holdStandardStreams();

}  // namespace app::files
