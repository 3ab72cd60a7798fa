#include "app/viewmodels/standing.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/told_wait.h"
#include "app/words/words.h"
#include "core/jobs/touch_tests.h"

namespace app::viewmodels {

using convert::toQt;
using core::jobs::BenchPlace;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("standing", text); }

// The word of a title that tells jobs apart on a shelf: the first that is no article.
QString wordOf(const workbench::JobEntry& job) {
  static const QStringList kArticles = {QStringLiteral("a"), QStringLiteral("an"), QStringLiteral("the")};
  const QStringList words = pieceName(job.title).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (const QString& word : words) {
    if (!kArticles.contains(word.toLower())) return capitalised(word);
  }
  return words.isEmpty() ? toQt(job.reference) : words.front();
}

QString titleOf(const workbench::JobEntry& job) { return pieceName(job.title); }

// By job; pieces of one word, or of one title, are told apart by their references, or by their places among the jobs.
std::map<std::string, QString> toldApart(const std::vector<workbench::JobEntry>& jobs,
                                         QString (*name)(const workbench::JobEntry&)) {
  std::map<QString, int> uses;
  for (const auto& job : jobs) ++uses[name(job)];
  std::map<std::string, QString> tags;
  std::map<QString, int> met;
  for (const auto& job : jobs) {
    QString tag = name(job);
    if (uses[tag] > 1) {
      const int number = ++met[tag];
      tag += QLatin1Char(' ') + (job.reference.empty() ? QString::number(number) : toQt(job.reference));
    }
    tags[job.id] = tag;
  }
  return tags;
}

}  // namespace

std::map<std::string, QString> shortNames(const std::vector<workbench::JobEntry>& jobs) {
  return toldApart(jobs, wordOf);
}

std::map<std::string, QString> titlesApart(const std::vector<workbench::JobEntry>& jobs) {
  return toldApart(jobs, titleOf);
}

QString nameOf(const workbench::JobEntry& entry) {
  const std::string& name = entry.title.empty() ? entry.reference : entry.title;
  if (!name.empty()) return toQt(name);
  return entry.trouble.id.empty() ? QString() : tr("A piece whose name cannot be read");
}

QString Standing::runs() const { return more == 0 ? wait : tr("%1, %2 more").arg(wait).arg(more); }

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry, const std::string& zone) {
  Standing standing;
  if (!entry.trouble.id.empty()) {
    standing.act = words::text(entry.trouble, core::units::UnitSystem::Millimetres);
    return standing;
  }
  standing.done = entry.done;
  standing.all = entry.all;
  switch (entry.place) {
    case BenchPlace::Kind::Step: standing.act = toQt(entry.step); break;
    case BenchPlace::Kind::Waiting: standing.act = tr("waits"); break;
    case BenchPlace::Kind::Missed: standing.act = tr("missed: %1").arg(toQt(entry.step)); break;
    case BenchPlace::Kind::Finished: standing.act = tr("every step is done"); break;
    case BenchPlace::Kind::Stuck: standing.act = tr("nothing can be started"); break;
  }
  // At a job that rests nothing runs; it is not folded to say so.
  if (entry.rests || workbench.job(entry.id) == nullptr) return standing;
  const core::jobs::JobAt job = workbench.at(entry.id);
  const auto tests = core::jobs::touchTests(job);
  if (tests.empty()) return standing;
  const core::jobs::RunningWait& next = job.state().waits.at(tests.front().wait);
  const ToldWait told = toldWait(job, next, zone);
  standing.wait = tr("%1: %2").arg(toQt(next.wait->title), told.brief);
  standing.window = told.isWindow;
  standing.more = tests.size() - 1;
  return standing;
}

}  // namespace app::viewmodels
