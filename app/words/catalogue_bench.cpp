#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& benchEntries() {
  static const std::vector<Entry> kEntries = {
      {"settings.no-such", QT_TRANSLATE_NOOP("words", "There is nothing called \"{what}\" to set on this bench.")},
      {"settings.cannot-be", QT_TRANSLATE_NOOP("words", "\"{what}\" cannot be set to \"{value}\".")},
      {"store.is-directory",
       QT_TRANSLATE_NOOP("words", "{path} is a folder, not the record file. Nothing was changed.")},
      {"store.folder-missing", QT_TRANSLATE_NOOP("words", "The folder for {path} does not exist.")},
      {"store.not-a-file", QT_TRANSLATE_NOOP("words", "{path} is not an ordinary file. Nothing was changed.")},
      {"store.unreadable", QT_TRANSLATE_NOOP("words", "{path} cannot be read: {detail}")},
      {"store.not-a-database",
       QT_TRANSLATE_NOOP("words", "{path} is not a record of this program. Nothing was changed.")},
      {"store.other-program", QT_TRANSLATE_NOOP("words", "{path} belongs to another program. Nothing was changed.")},
      {"store.newer",
       QT_TRANSLATE_NOOP("words",
                         "{path} was written by a newer version of this program (record version {found}, this one "
                         "knows {known}). Nothing was changed; open it with the newer version.")},
      {"store.damaged",
       QT_TRANSLATE_NOOP(
           "words", "{path} is damaged or cut short. It was left as it is: keep a copy of it before anything else.")},
      {"store.in-use",
       QT_TRANSLATE_NOOP(
           "words", "Another bench already works with the record in {path}. Close it, or open this one with --data.")},
      {"store.in-use-by",
       QT_TRANSLATE_NOOP("words",
                         "Another bench already works with the record in {path} (process {process} on {host}). Close "
                         "it, or open this one with --data.")},
      {"store.lock-not-a-file",
       QT_TRANSLATE_NOOP("words",
                         "{path} is not an ordinary file. Take it away: whether another bench works here cannot be "
                         "told as long as it is there.")},
      {"store.lost-before",
       QT_TRANSLATE_NOOP("words",
                         "There is no record in {path}, or it is empty, and yet {beside} shows that there was one. "
                         "Nothing was changed. Put a copy of the record back; to begin anew, move {beside} away.")},
      {"store.written-back",
       QT_TRANSLATE_NOOP("words",
                         "{path} was taken away while the bench ran. It was written there again, with all that was "
                         "confirmed. Close the bench and open it again; until then nothing more is kept.")},
      {"store.saved-beside",
       QT_TRANSLATE_NOOP("words",
                         "{path} is another file than the bench began with. All that was confirmed is in {copy}. "
                         "Close the bench, put the right one in place, and open it again; until then nothing more is "
                         "kept.")},
      {"store.log-gone",
       QT_TRANSLATE_NOOP("words",
                         "The log beside {path} was taken away while the bench ran. All that was confirmed is in the "
                         "record. Close the bench and open it again; until then nothing more is kept.")},
      {"store.not-saved",
       QT_TRANSLATE_NOOP("words",
                         "{path} was taken away or replaced while the bench ran, and what was confirmed cannot be "
                         "saved there: {detail}. Leave the bench open and make room or put the folder back: it is "
                         "tried again with the next act.")},
      {"store.locked",
       QT_TRANSLATE_NOOP("words", "{path} is in use by another program. Close that one and try again.")},
      {"store.read-only-file",
       QT_TRANSLATE_NOOP("words", "{path} may only be read, not written. The record could not be kept.")},
      {"store.read-only-folder",
       QT_TRANSLATE_NOOP("words", "The folder of {path} may only be read, not written. The record could not be kept.")},
      {"store.full",
       QT_TRANSLATE_NOOP("words", "There is no room left on the disk for {path}. Nothing of the last act was kept.")},
      {"store.cannot-open", QT_TRANSLATE_NOOP("words", "{path} cannot be opened: {detail}")},
      {"store.failed", QT_TRANSLATE_NOOP("words", "The record {path} could not be used: {detail}")},
      {"store.no-driver", QT_TRANSLATE_NOOP("words", "The SQLite driver of Qt is missing on this machine.")},
      {"data.not-a-folder", QT_TRANSLATE_NOOP("words", "{path} is a file; a folder is needed for the data.")},
      {"data.missing", QT_TRANSLATE_NOOP("words", "There is no folder {path} for the data.")},
      {"data.device-unreadable",
       QT_TRANSLATE_NOOP("words",
                         "{path} should hold the name under which this tablet writes, and does not. Put the "
                         "file back from a copy; or take it away, and this tablet goes on under a new name.")},
      {"data.device-closed",
       QT_TRANSLATE_NOOP("words",
                         "{path} holds the name under which this tablet writes, and cannot be opened. Whoever "
                         "looks after the tablet has to let this program read it.")},
      {"data.device-newer",
       QT_TRANSLATE_NOOP("words", "{path} was written by a newer version of this program. Use that one.")},
      {"data.device-unkept",
       QT_TRANSLATE_NOOP("words", "The name under which this tablet writes cannot be kept in {path}.")},
      {"data.cannot-make", QT_TRANSLATE_NOOP("words", "The data folder {path} cannot be made.")},
      {"kept.text-missing",
       QT_TRANSLATE_NOOP("words",
                         "The kept text of \"{name}\" is missing from the record. What was done is still in it.")},
      {"kept.text-damaged",
       QT_TRANSLATE_NOOP(
           "words", "The kept text of \"{name}\" is no longer what was kept. What was done is still in the record.")},
      {"kept.job-unreadable",
       QT_TRANSLATE_NOOP(
           "words", "The kept job text no longer reads with this version of the program, at {place}: {says:cause}")},
      {"kept.technique-unreadable", QT_TRANSLATE_NOOP("words",
                                                      "The kept text of the technique \"{technique}\" no longer reads "
                                                      "with this version of the program, at {place}: {says:cause}")},
      {"kept.does-not-compose",
       QT_TRANSLATE_NOOP("words", "The kept techniques no longer compose into this job: {says:cause}")},
      {"kept.taking-in-unreadable",
       QT_TRANSLATE_NOOP("words", "The event that took this job in cannot be read by this version of the program.")},
      {"bench.no-such-job", QT_TRANSLATE_NOOP("words", "There is no such job on this bench.")},

      {"offer.use-prepared", QT_TRANSLATE_NOOP("words", "Use what another bench has ready")},
      {"offer.done-one", QT_TRANSLATE_NOOP("words", "Done: {step}, {thing} alone")},
      {"offer.done-this", QT_TRANSLATE_NOOP("words", "Done: {step} alone")},
      {"offer.done", QT_TRANSLATE_NOOP("words", "Done")},
      {"offer.begin", QT_TRANSLATE_NOOP("words", "Begin")},
      {"offer.begun-in-time", QT_TRANSLATE_NOOP("words", "Laid in time")},
      {"offer.mend", QT_TRANSLATE_NOOP("words", "Take it up again")},
      {"offer.heard", QT_TRANSLATE_NOOP("words", "Heard")},
      {"offer.undo", QT_TRANSLATE_NOOP("words", "Undo")},
      {"offer.redo", QT_TRANSLATE_NOOP("words", "Redo")},
      {"offer.fault", QT_TRANSLATE_NOOP("words", "Fault: {seen}")},
      {"offer.fault-way", QT_TRANSLATE_NOOP("words", "Fault: {seen}. {way}")},
      {"offer.look", QT_TRANSLATE_NOOP("words", "{answer}")},
      {"offer.look.sure", QT_TRANSLATE_NOOP("words", "It was so")},
      {"record.already-taken-in", QT_TRANSLATE_NOOP("words", "This job is already on the bench.")},
      {"record.already-begun", QT_TRANSLATE_NOOP("words", "\"{step}\" is begun already.")},
      {"record.already-done", QT_TRANSLATE_NOOP("words", "\"{step}\" is done already.")},
      {"record.already-heard", QT_TRANSLATE_NOOP("words", "This alert was heard already.")},
      {"record.already-undone", QT_TRANSLATE_NOOP("words", "This was undone already.")},
      {"record.cannot-undo-taking-in", QT_TRANSLATE_NOOP("words", "Taking a job in cannot be undone.")},
      {"record.checks-unanswered", QT_TRANSLATE_NOOP("words", "\"{step}\" has checks to answer first: {count}.")},
      {"record.comes-after", QT_TRANSLATE_NOOP("words", "\"{step}\" comes after \"{earlier}\".")},
      {"record.needs", QT_TRANSLATE_NOOP("words", "\"{step}\" still needs: {facts}.")},
      {"record.not-prepared-elsewhere", QT_TRANSLATE_NOOP("words", "No other bench has this ready: \"{step}\".")},
      {"record.no-such-fault", QT_TRANSLATE_NOOP("words", "\"{step}\" has no fault \"{fault}\".")},
      {"record.no-such-way", QT_TRANSLATE_NOOP("words", "\"{fault}\" has no way out called \"{way}\".")},
      {"record.way-not-chosen", QT_TRANSLATE_NOOP("words", "\"{fault}\": choose what to do about it.")},
      {"record.no-such-step", QT_TRANSLATE_NOOP("words", "There is no step \"{step}\".")},
      {"record.no-such-wait", QT_TRANSLATE_NOOP("words", "No such wait is running: \"{wait}\".")},
      {"record.not-missed", QT_TRANSLATE_NOOP("words", "This window is not missed: \"{wait}\".")},
      {"record.nothing-to-undo", QT_TRANSLATE_NOOP("words", "There is nothing to undo.")},
      {"record.others-rest-on-it", QT_TRANSLATE_NOOP("words", "Other work rests on this. Undo first: {steps}.")},
      {"record.read-only",
       QT_TRANSLATE_NOOP("words", "This job was worked with a newer program and can only be read here: {events}.")},
      {"record.redo-too-late",
       QT_TRANSLATE_NOOP("words", "Something was done since; this can no longer be done again.")},
      {"record.still-waiting", QT_TRANSLATE_NOOP("words", "\"{step}\" must wait: {wait}.")},
      {"record.nothing-doubted", QT_TRANSLATE_NOOP("words", "Nothing is doubted of this wait: \"{wait}\".")},
      {"record.wait-over", QT_TRANSLATE_NOOP("words", "This wait no longer matters: \"{wait}\".")},
      {"record.window-closed",
       QT_TRANSLATE_NOOP("words", "\"{step}\" comes too late: {wait} has likely closed. Test by touch.")},
      {"record.window-not-open",
       QT_TRANSLATE_NOOP("words", "\"{step}\" comes too early: {wait} is not likely open yet. Test by touch.")},
      {"record.would-miss-window",
       QT_TRANSLATE_NOOP(
           "words", "\"{step}\" cannot be left once begun, and \"{gated}\" would miss its time meanwhile: {wait}.")},
  };
  return kEntries;
}

}  // namespace app::words
