#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& commandEntries() {
  static const std::vector<Entry> kEntries = {
      {"command.help",
       QT_TRANSLATE_NOOP(
           "words",
           "mountwright [--data DIR] [JOB...]        opens the bench; job files are taken in\n"
           "mountwright check FILE...                every problem of jobs and techniques, at its place\n"
           "mountwright figures JOB [--json] [--units mm|in]\n"
           "                                         every measure of a job\n"
           "mountwright steps JOB [--way every|short] [--json]     the work in order\n"
           "mountwright materials JOB [--json] [--units mm|in]\n"
           "                                         what to cut and on which sheets, amounts, cost\n"
           "mountwright rehearse JOB [--way every|short] [--json]  the work on a fast clock\n"
           "mountwright care JOB [--for client|conservator] [--json] [--units mm|in]\n"
           "                                         the sheet that goes with a piece; JOB is a file, or the id or\n"
           "                                         reference of a job in the record\n"
           "mountwright export REFERENCE [--piece N]  a job with its record, to standard output; of several\n"
           "                                         identical pieces one alone\n"
           "mountwright import FILE...               takes such jobs up into the record\n"
           "\n"
           "--data DIR       where the record and your own techniques are kept\n"
           "--recipes DIR    where the techniques are\n"
           "--help, --version\n"
           "\n"
           "Leaves with 0 done, 1 the input has a problem, 2 wrong use, 3 something cannot be read or\n"
           "written, or is missing.")},
      {"command.unknown", QT_TRANSLATE_NOOP("words", "\"{command}\" is neither a command nor a job file; see --help")},
      {"command.unknown-option", QT_TRANSLATE_NOOP("words", "the option \"{option}\" is not known here; see --help")},
      {"command.option-twice", QT_TRANSLATE_NOOP("words", "the option \"{option}\" is given twice")},
      {"command.option-needs-value", QT_TRANSLATE_NOOP("words", "the option \"{option}\" needs a value after it")},
      {"command.bad-units", QT_TRANSLATE_NOOP("words", "units are mm or in, not \"{units}\"")},
      {"command.bad-way", QT_TRANSLATE_NOOP("words", "a way is every or short, not \"{way}\"")},
      {"command.bad-piece", QT_TRANSLATE_NOOP("words", "a piece is a number from 1, not \"{piece}\"")},
      {"command.bad-care", QT_TRANSLATE_NOOP("words", "a care sheet is for a client or a conservator, not \"{care}\"")},
      {"command.needs-reference",
       QT_TRANSLATE_NOOP("words", "\"{command}\" needs the reference or id of a job in the record")},
      {"command.needs-file", QT_TRANSLATE_NOOP("words", "\"{command}\" needs a file to work on")},
      {"command.one-file", QT_TRANSLATE_NOOP("words", "\"{command}\" works on one job at a time")},
      {"command.not-yet", QT_TRANSLATE_NOOP("words", "not yet: this version has no \"{command}\"")},
      {"command.not-written",
       QT_TRANSLATE_NOOP("words",
                         "not all of it could be written: there is no room left where it goes, or nobody takes it")},
      {"command.left-out", QT_TRANSLATE_NOOP("words", "this technique is left out until it is mended")},
      {"command.leaves-need",
       QT_TRANSLATE_NOOP(
           "words",
           "with this file, step \"{step}\" of \"{technique}\" needs \"{fact}\", which no technique makes any more")},
      {"command.technique", QT_TRANSLATE_NOOP("words", "{title} ({id})")},
      {"command.technique-stands-in", QT_TRANSLATE_NOOP("words", "  stands in for the \"{id}\" at hand")},
      {"command.technique-role", QT_TRANSLATE_NOOP("words", "  in the role \"{role}\"")},
      {"command.technique-step", QT_TRANSLATE_NOOP("words", "  {step}: {title}, {work} [{source}]")},
      {"command.technique-window",
       QT_TRANSLATE_NOOP("words", "    then {title}: opens {span}, closes {closes} [{source}]")},
      {"command.technique-wait", QT_TRANSLATE_NOOP("words", "    then {title}: {span} [{source}]")},
      {"command.nothing-learned",
       QT_TRANSLATE_NOOP("words", "the record cannot be read: what your own times taught is left out")},
      {"command.no-problems", QT_TRANSLATE_NOOP("words", "{count} read, no problems")},
      {"command.missed", QT_TRANSLATE_NOOP("words", "{text}")},
      {"command.notice", QT_TRANSLATE_NOOP("words", "notice: {text}")},
      {"command.made-anew", QT_TRANSLATE_NOOP("words", "the first batch is too old by now; a fresh one: {technique}")},
      {"command.corners-miss",
       QT_TRANSLATE_NOOP("words",
                         "the corners of the {band} band miss by {by} of {repeat}; what closes them: {changes}")},
      {"command.and", QT_TRANSLATE_NOOP("words", " and ")},
      {"command.corners-stay",
       QT_TRANSLATE_NOOP(
           "words",
           "the corners of the {band} band miss by {by} of {repeat}, and no change that fits the piece closes them")},
      {"command.waits", QT_TRANSLATE_NOOP("words", "{wait}: {span}")},
      {"command.waits-none", QT_TRANSLATE_NOOP("words", "{wait}: at once")},
      {"command.waits-from-now", QT_TRANSLATE_NOOP("words", "{wait}: open at once, closes {closes}")},
      {"command.waits-by-touch",
       QT_TRANSLATE_NOOP("words", "{line}; stated for {celsius} °C and {percent} %, not for this room: by touch")},
      {"command.waits-until", QT_TRANSLATE_NOOP("words", "{wait}: opens {span}, closes {closes}")},

      {"file.missing", QT_TRANSLATE_NOOP("words", "there is no such file")},
      {"file.is-folder", QT_TRANSLATE_NOOP("words", "this is a folder, not a file")},
      {"file.no-permission", QT_TRANSLATE_NOOP("words", "this file may not be read")},
      {"file.not-a-file", QT_TRANSLATE_NOOP("words", "this is no ordinary file but a pipe or a device")},
      {"file.disk-full", QT_TRANSLATE_NOOP("words", "there is no room left for it")},
      {"file.cannot-write", QT_TRANSLATE_NOOP("words", "it cannot be written there")},
      {"file.unreadable", QT_TRANSLATE_NOOP("words", "this file cannot be read")},

      {"rehearsal.wait", QT_TRANSLATE_NOOP("words", "{wait}: begins; half are ready in {time}")},
      {"rehearsal.at-once", QT_TRANSLATE_NOOP("words", "{wait}: begins, open at once")},
      {"rehearsal.opens", QT_TRANSLATE_NOOP("words", "{wait}: half are open by now")},
      {"rehearsal.over", QT_TRANSLATE_NOOP("words", "{wait}: half are ready by now")},
      {"rehearsal.closes", QT_TRANSLATE_NOOP("words", "{wait}: half are closed by now")},
      {"rehearsal.alert", QT_TRANSLATE_NOOP("words", "{wait}: test by touch")},
      {"rehearsal.missed",
       QT_TRANSLATE_NOOP("words", "missed: {gated} was not begun before \"{wait}\" closed; {busy} was in the way")},
      {"rehearsal.changes", QT_TRANSLATE_NOOP("words", "{acts} acts, {hands} changes of hands, {setups} set-ups")},
      {"rehearsal.length", QT_TRANSLATE_NOOP("words", "{time} in all, on typical times, worked round the clock")},
  };
  return kEntries;
}

}  // namespace app::words
