#include "app/viewmodels/desk/renewal_view_model.h"

#include <utility>

#include "app/convert/text.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::fromQt;
using convert::toQt;
using core::base::Message;
using core::workflow::StepChange;
using core::workflow::StepDifference;

RenewalViewModel::RenewalViewModel(workbench::Workbench& workbench, QObject* parent)
    : QObject(parent), m_workbench(workbench) {
  // An act done meanwhile can make the renewal impossible.
  connect(&workbench, &workbench::Workbench::jobChanged, this, [this](const QString& jobId) {
    if (fromQt(jobId) != m_job || !offered()) return;
    read();
    emit changed();
  });
}

void RenewalViewModel::open(const std::string& jobId) {
  m_job = jobId;
  m_intent.clear();
  read();
  emit changed();
}

void RenewalViewModel::read() {
  const auto units = m_workbench.settings().units;
  const auto renewal = m_workbench.renewalOf(m_job);
  m_refused = renewal ? renewal->refused : Message();
  std::vector<RowsModel::Row> rows;
  for (const StepDifference& difference : renewal ? renewal->differences : std::vector<StepDifference>()) {
    std::vector<Message> what = difference.what;
    if (difference.change == StepChange::Goes) what = {Message("renewal.goes")};
    if (difference.change == StepChange::Comes) {
      const auto late = renewal->comesLate.find(difference.step);
      what = {late == renewal->comesLate.end() ? Message("renewal.comes")
                                               : Message("renewal.comes-late").with("step", late->second)};
    }
    QStringList lines;
    for (const Message& one : what) lines << words::text(one, units);
    RowsModel::Row row;
    row.title = toQt(difference.title);
    row.note = words::capitalised(lines.join(QStringLiteral("; ")));
    rows.push_back(std::move(row));
  }
  m_rows.show(std::move(rows));
}

QString RenewalViewModel::title() const {
  const core::jobs::JobState* state = m_workbench.job(m_job);
  return state == nullptr ? QString() : toQt(state->plan->design.job.title);
}

QString RenewalViewModel::said() const {
  const auto units = m_workbench.settings().units;
  if (!m_refused.id.empty()) return words::text(m_refused, units);
  return taken() ? words::text(Message("renewal.taken"), units) : QString();
}

QString RenewalViewModel::extent() const {
  return m_rows.count() == 1 ? tr("One step would change") : tr("%1 steps would change").arg(m_rows.count());
}

void RenewalViewModel::take() {
  const Message refused = m_workbench.renew(m_job);
  if (refused.id.empty()) m_intent = m_workbench.lastIntentId();
  read();
  if (!refused.id.empty()) m_refused = refused;
  emit changed();
}

void RenewalViewModel::takeBack() {
  const Message refused = m_workbench.submit(core::intents::OfJob{m_job, core::intents::Undo{m_intent}});
  if (refused.id.empty()) m_intent.clear();
  read();
  if (!refused.id.empty()) m_refused = refused;
  emit changed();
}

}  // namespace app::viewmodels
