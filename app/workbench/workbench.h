#pragma once
// The one entry point for acts: takes an intent, lets the core decide, commits the events in one transaction, folds
// again, and only then notifies the screens and publishes the alert schedule. Lives in the interface thread.
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "app/clocks/clock.h"
#include "app/photographs/photographs.h"
#include "app/workbench/job_entry.h"
#include "app/workbench/kept_designs.h"
#include "app/workbench/library.h"
#include "app/workbench/renewing.h"
#include "core/alerts/alert_schedule.h"
#include "core/base/problem.h"
#include "core/decisions/decide.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/job_state.h"
#include "core/jobs/timeline.h"
#include "core/record/event_store.h"
#include "core/shop/settings.h"

namespace app::workbench {

class Workbench : public QObject {
  Q_OBJECT

 public:
  Workbench(core::record::EventStore& store, const clocks::Clock& clock, Library library, std::string deviceId,
            QObject* parent = nullptr);
  ~Workbench() override;

  // Loads every job of the store. Returns what is wrong with the store, or an empty message.
  core::base::Message load();
  // Returns what load() returned; while it is not empty no job is known.
  const core::base::Message& unread() const;

  struct TakenIn {
    std::string jobId;
    bool already = false;                       // the same bytes are in the record; jobId is that job's
    bool sameReference = false;                 // the reference is in use with other content; taken in as a new design
    std::vector<core::base::Problem> problems;  // of the job file; an error refuses it, a notice does not
    std::vector<core::base::Message> refusals;  // of the composition or the store
    std::vector<core::base::Message> notes;     // of duplicate: what differs in the new one
  };
  TakenIn takeIn(const std::string& text);

  // Returns the designs under way.
  const KeptDesigns& designs() const;
  // Returns an unused id for a design that is about to be begun.
  std::string newId() const;
  // Makes a job of a design's finished job file; design.no-such-design is among the refusals.
  TakenIn takeDesign(const std::string& id);
  // Returns the job file a job was begun with; "" where it cannot be read.
  std::string jobText(const std::string& jobId) const;
  // Returns the settings of this bench.
  const core::shop::Settings& settings() const;
  // Returns the techniques available.
  const Library& library() const;

  // Returns what would change for a job under way with the present techniques; nullopt where nothing would, or where
  // the job is finished or has trouble. Reads and composes the job again, which takes some milliseconds.
  std::optional<Renewal> renewalOf(const std::string& jobId) const;
  // Adopts the present techniques. Returns the refusal, or an empty message: bench.no-such-job, the job's trouble,
  // renewal.nothing, or the refusal in renewalOf's result.
  core::base::Message renew(const std::string& jobId);

  // Returns a line for every job, archived ones too. It is valid until the next act, heartbeat or new job.
  const std::vector<JobEntry>& jobs() const;
  // Returns null where there is no such job or it has trouble. The pointer is valid, and shows the newest state, until
  // the workbench is destroyed or loads again. A job that rests is folded when it is first asked for, which takes some
  // milliseconds: lists are made from jobs(), and a caller should ask only about jobs that do not rest.
  const core::jobs::JobState* job(const std::string& jobId) const;
  // Returns the state at this instant, with the clock read. Requires job(jobId). Use it at once: it refers to the state
  // and the clock log, which the next act changes.
  core::jobs::JobAt at(const std::string& jobId) const;

  // Decides, commits and folds an act. Returns the refusal, or an empty message once the events are durably stored.
  // Refusals are the core's, the store's, bench.no-such-job, the job's own trouble, and of a material's picture that is
  // not kept photograph.gone or .no-folder.
  core::base::Message submit(const core::intents::Request& request);

  // Sets the store of photographs, without which none can be added. It must outlive the workbench.
  void keepPhotographsIn(const photographs::Photographs& photographs);
  // Returns null where none can be added.
  const photographs::Photographs* photographs() const;
  // Copies the picture in and then records it. Besides the refusals of Photographs::keep and of submit:
  // photograph.no-folder. A refusal of the record is returned before anything is copied. Takes as long as the copy;
  // screens call Photographs::keep on another thread and then the second overload.
  core::base::Message photograph(const std::string& jobId, const QString& path, const std::string& caption,
                                 const std::string& step);
  core::base::Message photograph(const std::string& jobId, const photographs::Kept& kept, const std::string& caption,
                                 const std::string& step);
  // Returns every hash that any job's record names, removed photographs included, and those of papers' own pictures, as
  // Photographs::unused needs it.
  std::set<std::string> photographsNamed() const;
  // Returns the record of a job in readable form. Empty where there is no such job or it has trouble.
  std::vector<core::jobs::TimelineEntry> timeline(const std::string& jobId, core::jobs::Order order) const;

  // Returns the intent id of the last act this device recorded, "" before the first; an undo key needs it.
  const std::string& lastIntentId() const;

  std::shared_ptr<const core::alerts::AlertSchedule> schedule() const;
  // Returns the room, the clocks and the lessons from this maker's own times.
  const core::shop::Shop& shop() const;
  // Updates the lines of jobs() to this instant. Records a heartbeat, or that the wall clock jumped or the zone changed
  // since the last one; call every 30 s, and when the machine goes to sleep. Returns the store's trouble, or an empty
  // message.
  core::base::Message heartbeat();

  // Returns the whole record of a job as JSON (its texts by hash, every event of its own and of the benches), for
  // export and proof. It is "" where there is no such job.
  std::string exportRecord(const std::string& jobId) const;

  // Returns the same for import elsewhere, of the benches' events only those that affect this job. It is complete and
  // can be read by importJob, or the error gives the reason: bench.no-such-job, the job's own trouble,
  // kept.text-missing {name}, kept.text-damaged {name}, export.too-large {most}, export.not-taken-up {detail}, or the
  // store's trouble. `piece`: one of several identical pieces alone, from 1, as a job of its own; where the job has no
  // such piece, or one alone, export.no-such-piece {count}.
  core::base::Result<std::string, core::base::Message> handOn(const std::string& jobId,
                                                              std::optional<int> piece = std::nullopt) const;
  // Returns the result of handOn, or "" on an error.
  std::string exportJob(const std::string& jobId) const;

  struct Imported {
    std::string jobId;                          // "" where nothing was imported
    std::size_t added = 0;                      // new events; 0: this record has all of them
    std::size_t mended = 0;                     // stored texts that were damaged or missing and are whole now
    std::vector<core::base::Problem> problems;  // of the file: see readyToImport
    std::vector<core::base::Message> refusals;  // of the store
  };
  // Imports a job that exportJob (or exportRecord) returned, here or on another device: all of it or nothing, without
  // duplicating what is in the record. The same job worked on two devices becomes one with the acts of both. A stored
  // text that is damaged here and whole there is replaced, and every job that could not be opened because of it opens
  // again.
  Imported importJob(const std::string& text);

  // Makes another job of the job's file, with the present techniques. Its reference gets the next free number, which
  // distinguishes the two; the due day is left out, since it was promised for the other. `notes` reports both.
  TakenIn duplicate(const std::string& jobId);

  // Called after each commit with the act's intent id, which a test harness acknowledges on its pipe.
  std::function<void(const std::string& intentId)> onCommitted;

 signals:
  void jobsChanged();
  void jobChanged(const QString& jobId);
  void shopChanged();
  void scheduleChanged();
  void designsChanged();

 private:
  core::base::Message loadAll();
  void mend(std::vector<core::record::StoredText> texts);
  void tellChanged(const std::vector<std::string>& jobs);
  core::base::Message ask(const core::intents::OfJob& request);
  core::base::Message ask(const core::intents::OfShop& request);
  core::base::Message ask(const core::intents::OfDesign& request);
  void shown(const std::string& jobId, const std::vector<core::record::Event>& events);

  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::workbench
