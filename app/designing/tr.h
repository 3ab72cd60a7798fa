#pragma once
// The words of the desk's forms. Only this folder uses it.
#include <QCoreApplication>

namespace app::designing {

// Returns a source text in the language shown.
inline QString tr(const char* text) { return QCoreApplication::translate("design", text); }

}  // namespace app::designing
