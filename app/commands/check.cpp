// Jobs and techniques, each with every problem at its place.
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/input.h"
#include "app/commands/saying.h"
#include "app/files/whole_file.h"
#include "app/words/words.h"
#include "core/base/stated_format.h"
#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/design/notices.h"
#include "core/materials/repeat_match.h"
#include "core/workflow/agenda.h"
#include "core/workflow/compose.h"
#include "core/workflow/notices.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Problem;
using core::base::Severity;
using core::craft::Catalogue;
using core::craft::CatalogueProblem;

// By the format it states; a file that states none, by its name.
bool isTechnique(const QString& path, const std::string& text) {
  const std::string format = core::base::statedFormat(text, core::base::kMaximumJsonBytes);
  if (!format.empty()) return core::base::startsWith(format, "mountwright-technique/");
  return path.endsWith(QStringLiteral(".technique.json"));
}

class Checker {
 public:
  Checker(const CommandLine& line, std::ostream& out, std::ostream& err) : m_line(line), m_out(out), m_err(err) {}

  int run() {
    for (const QString& path : m_line.files) checkFile(path);
    if (!m_techniques.empty() || !m_jobs.empty()) checkTogether();
    // One's own technique is read back in a few lines, to see whether it says what was meant.
    constexpr std::size_t kFew = 3;
    if (m_exit == kDone && m_techniques.size() <= kFew) {
      for (const auto& [path, technique] : m_techniques) sayTechnique(technique);
    }
    if (m_exit == kDone) {
      say(m_err, Message("command.no-problems").with("count", static_cast<std::int64_t>(m_line.files.size())));
    }
    return m_exit;
  }

 private:
  void leaveWith(int exit) { m_exit = std::max(m_exit, exit); }

  void tell(const QString& path, const Problem& problem, UnitSystem units = UnitSystem::Millimetres) {
    const bool error = problem.severity == Severity::Error;
    sayProblem(error ? m_out : m_err, path, problem, units);
    if (error) leaveWith(kProblem);
  }

  void checkFile(const QString& path) {
    const auto text = files::readWhole(path, core::base::kMaximumJsonBytes);
    if (!text) {
      sayProblem(m_err, path, text.error());
      leaveWith(kUnreadable);
      return;
    }
    if (isTechnique(path, text.value())) {
      core::craft::ReadTechnique read = core::craft::readTechnique(text.value());
      for (const Problem& problem : read.problems.sorted()) tell(path, problem);
      if (read.technique) m_techniques.emplace_back(path, std::move(*read.technique));
      return;
    }
    const core::design::ReadDesign read = core::design::readDesign(text.value());
    const UnitSystem units = read.design ? read.design->job.units : UnitSystem::Millimetres;
    for (const Problem& problem : read.problems.sorted()) tell(path, problem, units);
    if (!read.design || read.problems.hasErrors()) return;
    m_jobs.push_back({path, *read.design, core::base::parseJson(text.value()).root});
    tellNotices(m_jobs.back(), cornersThatMiss(*read.design));
    tellNotices(m_jobs.back(), core::design::noticesOf(read.design->job));
  }

  // A job without an error of its own, and its file's text as read, for the places of what is left to its default.
  struct Job {
    QString path;
    core::design::Design design;
    core::base::Value document;
  };

  // What the maker should know and decide before the first cut, though the job holds together. Their order is their own
  // and not the document's.
  void tellNotices(const Job& job, std::vector<Problem> notices) {
    for (Problem& notice : notices) {
      core::design::settle(notice, job.document);
      tell(job.path, notice, job.design.job.units);
    }
  }

  static std::vector<Problem> cornersThatMiss(const core::design::Design& design) {
    std::vector<Problem> notices;
    for (std::size_t i = 0; i < design.job.bands.size(); ++i) {
      const auto match = core::materials::matchOf(design.job, design.layout, i);
      if (match.state != core::materials::MatchState::Open) continue;
      const auto& band = design.job.bands[i];
      QStringList changes;
      if (!match.options.empty()) {
        for (const Message& change : match.options.front().says) changes << words::text(change, design.job.units);
      }
      notices.push_back(core::design::noticeAt(
          band.place.pointer + "/repeat",
          Message(changes.isEmpty() ? "command.corners-stay" : "command.corners-miss")
              .with("band", band.id)
              .with("by", core::base::Millimetres{std::fabs(match.mismatch)})
              .with("repeat", core::base::Millimetres{band.repeat->inMillimetres()})
              .with("changes", changes.join(words::text(Message("command.and"), design.job.units)).toStdString())));
    }
    return notices;
  }

  // Techniques among those at hand, in place of the ones of their ids; jobs against all of them.
  void checkTogether() {
    OrExit<workbench::Library> library = readTechniques(m_line, m_err);
    if (!library.value) return leaveWith(library.exit);
    Catalogue catalogue = library.value->catalogue;
    std::set<Key> known;
    for (const CatalogueProblem& found : core::craft::checkCatalogue(catalogue)) known.insert(keyOf(found));
    std::map<std::string, QString> files;
    for (const auto& [path, technique] : m_techniques) {
      const auto* other = catalogue.find(technique.id);
      if (other != nullptr && !(*other == technique)) m_stoodIn.insert(technique.id);
    }
    for (const auto& [path, technique] : m_techniques) {
      files[technique.id] = path;
      catalogue.add(technique);
    }
    for (const CatalogueProblem& found : core::craft::checkCatalogue(catalogue)) {
      if (const auto file = files.find(found.technique); file != files.end()) {
        tell(file->second, found.problem);
        // What speaks of no step, as a role whose techniques have nothing alike, is told of these files themselves.
      } else if (found.problem.message.argument("step") != nullptr && !known.contains(keyOf(found)) &&
                 found.problem.severity == Severity::Error) {
        leavesNeed(found);
      }
    }
    for (const Job& job : m_jobs) {
      const auto composed = core::workflow::compose(job.design, catalogue, words::thingWords());
      if (composed) {
        tellNotices(job, core::workflow::noticesOf(job.design, composed.value(), catalogue, words::thingWords(),
                                                   job.design.job.room));
        tellByTouch(job, composed.value());
        continue;
      }
      for (const auto& told : composed.error()) tell(job.path, told.problem, job.design.job.units);
    }
  }

  // Why some waits cannot be reckoned in the job's room.
  void tellByTouch(const Job& job, const core::workflow::Workflow& workflow) {
    const core::workflow::Agenda agenda(workflow, {job.design.job.room, {}});
    std::vector<Problem> notices;
    for (const Message& why : agenda.byTouch()) notices.push_back(core::design::noticeAt("/room", why));
    tellNotices(job, std::move(notices));
  }

  void sayTechnique(const core::craft::Technique& technique) {
    say(m_err, Message("command.technique").with("title", technique.title).with("id", technique.id));
    if (m_stoodIn.contains(technique.id)) say(m_err, Message("command.technique-stands-in").with("id", technique.id));
    if (!technique.role.empty()) say(m_err, Message("command.technique-role").with("role", technique.role));
    for (const core::craft::Step& step : technique.steps) {
      say(m_err, Message("command.technique-step")
                     .with("step", step.id)
                     .with("title", step.title)
                     .with("work", words::span(step.work).toStdString())
                     .with("source", step.workSource));
      for (const core::craft::Wait& wait : step.waits) {
        Message told = Message(wait.closes ? "command.technique-window" : "command.technique-wait")
                           .with("title", wait.title)
                           .with("span", words::span(wait.opens).toStdString())
                           .with("source", wait.source);
        // A message is not moved into itself, which would empty it.
        say(m_err, wait.closes ? std::move(told).with("closes", words::span(*wait.closes).toStdString()) : told);
      }
    }
  }

  // A need of a technique at hand that was met before these files took the place of others.
  void leavesNeed(const CatalogueProblem& found) {
    const auto textOf = [&](std::string_view name) {
      const core::base::Argument* argument = found.problem.message.argument(name);
      return argument == nullptr ? std::string("?") : std::get<std::string>(*argument);
    };
    Problem problem;
    problem.message = Message("command.leaves-need")
                          .with("technique", found.technique)
                          .with("step", textOf("step"))
                          .with("fact", textOf("fact"));
    tell(m_techniques.front().first, problem);
  }

  using Key = std::tuple<std::string, std::string>;
  static Key keyOf(const CatalogueProblem& found) { return {found.technique, found.problem.pointer}; }

  const CommandLine& m_line;
  std::ostream& m_out;
  std::ostream& m_err;
  int m_exit = kDone;
  std::set<std::string> m_stoodIn;  // ids of techniques at hand that these stand in for
  std::vector<std::pair<QString, core::craft::Technique>> m_techniques;
  std::vector<Job> m_jobs;
};

}  // namespace

int check(const CommandLine& line, std::ostream& out, std::ostream& err) { return Checker(line, out, err).run(); }

}  // namespace app::commands
