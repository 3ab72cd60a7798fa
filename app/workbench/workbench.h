#pragma once
// One way in, one way out: takes an intent, lets the core decide, commits the events in one transaction, folds
// again, and only then tells the screens and publishes the alert schedule. Lives in the interface thread.
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
  // What load() returned: as long as it is not empty nothing is known of any job.
  const core::base::Message& unread() const;

  struct TakenIn {
    std::string jobId;
    bool already = false;        // the same bytes were there: that job
    bool sameReference = false;  // another content under a reference that is there: taken in as a new design
    std::vector<core::base::Problem> problems;  // of the job file; an error keeps it out, a notice does not
    std::vector<core::base::Message> refusals;  // composition or store
    std::vector<core::base::Message> notes;     // of duplicate: what is another in the new one
  };
  TakenIn takeIn(const std::string& text);

  // Designs under way.
  const KeptDesigns& designs() const;
  // An id nothing has yet, for a design that is about to be begun.
  std::string newId() const;
  // Takes the job file a design has become in; design.no-such-design is among the refusals.
  TakenIn takeDesign(const std::string& id);
  // The job file a job was taken in with; "" where it cannot be read.
  std::string jobText(const std::string& jobId) const;
  // How this bench is set.
  const core::shop::Settings& settings() const;
  // The techniques at hand.
  const Library& library() const;

  // What would change for a job under way if its techniques were taken as they are now; nothing where nothing would, or
  // where it is finished or has trouble. Reads and composes the job again, which takes some milliseconds.
  std::optional<Renewal> renewalOf(const std::string& jobId) const;
  // Takes them. Returns the refusal, or an empty message: bench.no-such-job, the job's trouble, renewal.nothing, or why
  // renewalOf says it cannot be.
  core::base::Message renew(const std::string& jobId);

  // A line for every job, archived ones too. Good until the next act, heartbeat or taking in.
  const std::vector<JobEntry>& jobs() const;
  // Null where there is no such job or it has trouble. Stays where it is, and shows the newest state, until the
  // workbench goes or loads again. A job that rests is folded when it is first asked for, which takes some
  // milliseconds: lists are made from jobs(), and only lines that do not rest are worth asking about.
  const core::jobs::JobState* job(const std::string& jobId) const;
  // The state with the clock in hand, of this instant. Requires job(jobId). Use it at once: it looks at the state
  // and the clock log, which the next act changes.
  core::jobs::JobAt at(const std::string& jobId) const;

  // The one way in: decides, commits, folds. Returns the refusal, or an empty message once the events are durably kept.
  // Besides the core's and the store's: bench.no-such-job, or the job's own trouble.
  core::base::Message submit(const core::intents::Request& request);

  // Where photographs are kept; without it none can be. Must outlive the workbench.
  void keepPhotographsIn(const photographs::Photographs& photographs);
  // Null where none can be kept.
  const photographs::Photographs* photographs() const;
  // Copies the picture in and then records it. Besides the refusals of Photographs::keep and of submit:
  // photograph.no-folder. What stands against the record is told before anything is copied. Takes as long as the copy;
  // screens call Photographs::keep beside their thread and then the second.
  core::base::Message photograph(const std::string& jobId, const QString& path, const std::string& caption,
                                 const std::string& step);
  core::base::Message photograph(const std::string& jobId, const photographs::Kept& kept, const std::string& caption,
                                 const std::string& step);
  // Every hash that any job's record names, removed photographs included: what Photographs::unused asks for.
  std::set<std::string> photographsNamed() const;
  // The record of a job as people read it. Empty where there is no such job or it has trouble.
  std::vector<core::jobs::TimelineEntry> timeline(const std::string& jobId, core::jobs::Order order) const;

  // The intent id of the last act this device kept, "" before the first: what a key that takes back asks for.
  const std::string& lastIntentId() const;

  std::shared_ptr<const core::alerts::AlertSchedule> schedule() const;
  // The room, the clocks and what this maker's own times have taught.
  const core::shop::Shop& shop() const;
  // Fits the lines of jobs() to this instant. Writes a heartbeat, or that the wall clock jumped or the zone changed
  // since the last one; call every 30 s, and when the machine goes to sleep. Returns the store's trouble, or an empty
  // message.
  core::base::Message heartbeat();

  // The whole record of a job as JSON (its texts by hash, every event of its own and of the benches), for export
  // and proof. "" where there is no such job.
  std::string exportRecord(const std::string& jobId) const;

  // The same for handing on: of the benches' events those alone that made a difference to this job. Whole, and such
  // that importJob takes it up, or the reason why not: bench.no-such-job, the job's own trouble, kept.text-missing
  // {name}, kept.text-damaged {name}, export.too-large {most}, export.not-taken-up {detail}, or the store's trouble.
  core::base::Result<std::string, core::base::Message> handOn(const std::string& jobId) const;
  // That, "" where it cannot be had.
  std::string exportJob(const std::string& jobId) const;

  struct Imported {
    std::string jobId;                          // "" where nothing was taken up
    std::size_t added = 0;                      // events that were not there yet; 0: this record has all of it
    std::size_t mended = 0;                     // kept texts of it that were damaged or missing and are whole now
    std::vector<core::base::Problem> problems;  // of the file: see readyToImport
    std::vector<core::base::Message> refusals;  // of the store
  };
  // Takes up a job from what exportJob (or exportRecord) gave, here or on another device: all of it or nothing, and
  // what is there already once. The same job worked on two devices becomes one with the acts of both. A kept text that
  // is damaged here and whole there is put right, and every job that did not open for it opens again.
  Imported importJob(const std::string& text);

  // Takes the job's file in once more as a job of its own, with the techniques as they are now. Its reference gets the
  // next free number, by which the two are told apart; the day it is due is left out, since it was promised of the
  // other. Both are said in `notes`.
  TakenIn duplicate(const std::string& jobId);

  // Called after each commit with the act's intent id: what a test harness acknowledges on its pipe.
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
