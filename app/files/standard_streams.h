#pragma once

namespace app::files {

// Call first of all. A program started with its input, output or errors closed would give their numbers to the next
// files it opens, and write its sentences into the record. What is closed is held by something that reads as empty and
// takes nothing: writing to it fails, and is told.
void holdStandardStreams();

}  // namespace app::files
