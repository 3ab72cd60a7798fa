#pragma once
// Finds out whether a sound server can be reached now, without the multimedia library: its connection to the server is
// made once in the life of the process and, where none answers, never again. So it is not touched before.
namespace app::sound {

// True where it cannot be known on this system.
bool soundServerAnswers();

}  // namespace app::sound
