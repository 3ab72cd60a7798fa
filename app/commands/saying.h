#pragma once
// The output of commands: messages and problems as lines, tables in columns.
#include <QString>
#include <QStringList>
#include <ostream>
#include <vector>

#include "core/base/json.h"
#include "core/base/problem.h"
#include "core/units/length_display.h"

namespace app::commands {

using core::units::UnitSystem;

// No text can command the terminal: control characters are written as \uXXXX (base::shownText), and line ends too
// unless several lines are allowed.
void say(std::ostream& stream, const core::base::Message& message, UnitSystem units = UnitSystem::Millimetres);
void sayLine(std::ostream& stream, const QString& text);

// "FILE:/pointer: message", or "FILE:LINE:COL: message" where the place is one of the text. It is never more than one
// line. A notice is marked as one in front of its message.
void sayProblem(std::ostream& stream, const QString& file, const core::base::Problem& problem,
                UnitSystem units = UnitSystem::Millimetres);
// A problem of the whole file: "FILE:: message".
void sayProblem(std::ostream& stream, const QString& file, const core::base::Message& message,
                UnitSystem units = UnitSystem::Millimetres);

enum class Align { Left, Right };
// Rows of cells in aligned columns, two spaces between; nothing trails. A row with fewer cells than columns runs on
// as it likes.
void sayTable(std::ostream& stream, const std::vector<QStringList>& rows, const std::vector<Align>& columns);

void sayJson(std::ostream& stream, const core::base::Value& value);

}  // namespace app::commands
