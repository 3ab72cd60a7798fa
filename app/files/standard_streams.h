#pragma once

namespace app::files {

// Call first of all. A program started with its input, output or errors closed would give their numbers to the next
// files it opens, and write its sentences into the record. What is closed is held by something that reads as empty and
// takes nothing: writing to it fails, and is told. So does writing into a pipe that nobody reads any more: it ends
// neither what is under way nor the program.
void holdStandardStreams();

}  // namespace app::files
