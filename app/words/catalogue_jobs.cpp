#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& jobsEntries() {
  static const std::vector<Entry> kEntries = {
      {"record.put-away",
       QT_TRANSLATE_NOOP("words", "This job is put away. Bring it back to the bench before going on with it.")},
      {"record.already-put-away", QT_TRANSLATE_NOOP("words", "This job is put away already.")},
      {"record.not-put-away", QT_TRANSLATE_NOOP("words", "This job is on the bench.")},
      {"record.put-away-in-hand",
       QT_TRANSLATE_NOOP("words", "\"{step}\" is in hand. Finish it or undo it before the job is put away.")},
      {"record.put-away-waits",
       QT_TRANSLATE_NOOP("words",
                         "\"{wait}\" still runs and would call for a job that is out of sight. Put the job away when "
                         "the wait is over.")},

      {"job.numbered", QT_TRANSLATE_NOOP("words", "The new job has the reference \"{reference}\".")},
      {"job.due-left-out",
       QT_TRANSLATE_NOOP("words", "The day it is due, {due}, belongs to the first one and was left out.")},

      {"import.no-record",
       QT_TRANSLATE_NOOP("words",
                         "this file is \"{found}\"; a job with its record is \"{known}\". A job file is opened "
                         "with the bench: mountwright FILE")},
      {"import.no-id", QT_TRANSLATE_NOOP("words", "this is no id: at most 100 letters, digits and marks, no spaces")},
      {"import.no-hash", QT_TRANSLATE_NOOP("words", "this is no content hash: 64 digits from 0 to 9 and a to f")},
      {"import.no-clock", QT_TRANSLATE_NOOP("words", "this is no place in time such as \"0001764063195123-000004\"")},
      {"import.clock-not-believed",
       QT_TRANSLATE_NOOP("words",
                         "the clock that wrote this was wrong; it is put after what its bench wrote before it")},
      {"import.too-long", QT_TRANSLATE_NOOP("words", "this text is longer than {most} bytes")},
      {"import.other-bench", QT_TRANSLATE_NOOP("words", "a bench's own events are written by that bench alone")},
      {"import.not-written-here",
       QT_TRANSLATE_NOOP("words",
                         "this bench is said to have written this, and its record does not hold it: the file was "
                         "changed, or an older copy of the record was put back")},
      {"import.number-taken",
       QT_TRANSLATE_NOOP("words",
                         "this record holds another event of the same bench under the number {number}; one of the two "
                         "files was changed, or two benches work with copies of one record")},
      {"import.too-many-plans",
       QT_TRANSLATE_NOOP("words", "the techniques were taken anew more than {most} times; this file is not read")},
      {"import.other-stream",
       QT_TRANSLATE_NOOP("words", "this event belongs neither to the job of this file nor to a bench")},
      {"import.taken-in-twice", QT_TRANSLATE_NOOP("words", "the job is taken in a second time here")},
      {"import.not-taken-in", QT_TRANSLATE_NOOP("words", "no event says that the job was taken in")},
      {"import.event-twice", QT_TRANSLATE_NOOP("words", "an event of this id stands further up")},
      {"import.count-twice", QT_TRANSLATE_NOOP("words", "an event of the same device and number stands further up")},
      {"import.wrong-hash",
       QT_TRANSLATE_NOOP("words", "the text \"{name}\" is not the one its hash was made of: it was changed")},
      {"import.text-unused", QT_TRANSLATE_NOOP("words", "the text \"{name}\" is no part of this job; it is left out")},
      {"import.other-job",
       QT_TRANSLATE_NOOP("words", "another job has the id {job} in this record already; nothing was taken up")},
      {"import.event-differs",
       QT_TRANSLATE_NOOP("words", "this record has another content under the event id {event}; nothing was taken up")},
      {"import.shop-left-out",
       QT_TRANSLATE_NOOP("words", "{count} events of the shop make no difference to this job and are left out")},
      {"import.done", QT_TRANSLATE_NOOP("words", "\"{title}\" was taken up; new in its record: {count} events")},
      {"import.done-beside",
       QT_TRANSLATE_NOOP("words",
                         "\"{title}\" was taken up; new in its record: {count} events. Already there, and left as it "
                         "was: {beside}")},
      {"import.nothing-new", QT_TRANSLATE_NOOP("words", "\"{title}\" is there already, with all of its record")},
      {"called.no-such-job",
       QT_TRANSLATE_NOOP("words", "no job has the reference or id \"{name}\"; there are: {names}")},
      {"called.no-jobs", QT_TRANSLATE_NOOP("words", "there is no job in this record yet")},
      {"called.several-jobs",
       QT_TRANSLATE_NOOP("words", "several jobs have the reference \"{name}\"; ask for one by its id: {names}")},
      {"import.mended",
       QT_TRANSLATE_NOOP("words", "what was damaged or missing of \"{title}\" was put right from this file")},
      {"export.no-such-piece",
       QT_TRANSLATE_NOOP("words", "this job has no such piece alone: it is of {count}, numbered from 1")},
      {"export.too-large",
       QT_TRANSLATE_NOOP("words", "this job with its record is larger than the {most} MiB that can be taken up again")},
      {"export.not-taken-up",
       QT_TRANSLATE_NOOP("words", "the record of this job would not be taken up again: {detail}. Nothing was written")},
  };
  return kEntries;
}

}  // namespace app::words
