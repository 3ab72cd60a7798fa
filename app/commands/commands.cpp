#include "app/commands/commands.h"

#include <QFileInfo>

#include "app/commands/each.h"
#include "app/commands/saying.h"
#include "app/convert/text.h"

namespace app::commands {

bool opensBench(const CommandLine& line) {
  return line.wrongUse.id.empty() && line.command.isEmpty() && !line.help && !line.version;
}

namespace {

using core::base::Message;

// A command that only reads would go on without the record and the own techniques that were asked for. A folder to
// write into is made.
Message dataTrouble(const CommandLine& line) {
  if (line.data.isEmpty() || line.command.isEmpty()) return {};
  const QFileInfo data(line.data);
  const std::string path = convert::fromQt(line.data);
  if (data.exists() && !data.isDir()) return Message("data.not-a-folder").with("path", path);
  if (!data.exists() && line.command != QStringLiteral("import")) return Message("data.missing").with("path", path);
  return {};
}

int obey(const CommandLine& line, std::ostream& out, std::ostream& err) {
  if (!line.wrongUse.id.empty()) {
    say(err, line.wrongUse);
    return kWrongUse;
  }
  if (line.help) {
    say(out, Message("command.help"));
    return kDone;
  }
  if (line.version) {
    out << "mountwright " MOUNTWRIGHT_VERSION "\n";
    return kDone;
  }
  if (const Message trouble = dataTrouble(line); !trouble.id.empty()) {
    say(err, trouble);
    return kWrongUse;
  }
  if (line.command == QStringLiteral("check")) return check(line, out, err);
  if (line.command == QStringLiteral("figures")) return figures(line, out, err);
  if (line.command == QStringLiteral("steps")) return steps(line, out, err);
  if (line.command == QStringLiteral("materials")) return materials(line, out, err);
  if (line.command == QStringLiteral("rehearse")) return rehearse(line, out, err);
  if (line.command == QStringLiteral("care")) return care(line, out, err);
  if (line.command == QStringLiteral("export")) return exportJob(line, out, err);
  if (line.command == QStringLiteral("import")) return importJobs(line, out, err);
  if (line.command.isEmpty()) {
    say(err, Message("command.needs-file").with("command", std::string("mountwright")));
  } else {
    say(err, Message("command.not-yet").with("command", line.command.toStdString()));
  }
  return kWrongUse;
}

}  // namespace

int run(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const int exit = obey(line, out, err);
  // Only after the flush is it known whether the output arrived.
  out.flush();
  if (out.good()) return exit;
  say(err, Message("command.not-written"));
  return kUnreadable;
}

int run(const QStringList& arguments, std::ostream& out, std::ostream& err) {
  return run(parseCommandLine(arguments), out, err);
}

}  // namespace app::commands
