#include "app/viewmodels/bench/bench_view_model.h"

#include <algorithm>
#include <set>

#include "app/convert/text.h"
#include "app/viewmodels/bench/sizes_of_act.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "app/viewmodels/told_wait.h"
#include "app/words/words.h"
#include "core/workflow/acts.h"

namespace app::viewmodels {

using convert::toQt;
using core::jobs::BenchPlace;
using core::jobs::JobAt;

namespace {

// "technique/step", without the thing.
std::string kindOf(const core::workflow::WorkflowStep& step) { return step.id.substr(0, step.id.find_first_of("@#")); }

QString unitless(double amount) { return QString::number(amount, 'g', 3); }

}  // namespace

BenchViewModel::BenchViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent),
      m_workbench(workbench),
      m_clock(clock),
      m_look([this](const core::intents::Intent& intent) { ask(intent); }) {
  m_later.setSingleShot(true);
  connect(&m_later, &QTimer::timeout, this, &BenchViewModel::refresh);
}

void BenchViewModel::selectJob(const std::string& jobId) {
  const std::string before = m_jobId;
  if (m_jobId != jobId) {
    m_refusal.clear();
    m_considered = {};
  }
  m_jobId = jobId;
  refresh();
  if (before != jobId && !before.empty()) emit left(before);
}

void BenchViewModel::setTrouble(const QString& trouble) {
  m_trouble = trouble;
  refresh();
}

void BenchViewModel::tellRefusal(const QString& refusal) {
  m_refusal = refusal;
  refresh();
}

void BenchViewModel::refresh() {
  m_kind = Kind::NoJob;
  m_step = nullptr;
  m_steps.clear();
  m_thingsOfAct = 0;
  m_cautions.clear();
  m_parts.clear();
  m_stages.clear();
  m_done = m_all = 0;
  m_jobTitle.clear();
  m_above.clear();
  m_next.clear();
  m_detail.clear();
  m_waitVerb.clear();
  m_waitTime.clear();
  m_waitSentence.clear();
  m_waitTest.clear();
  m_undo.clear();
  m_redo.clear();
  m_faults.clear();
  m_offers.clear();
  m_canBegin = m_begun = m_justDone = false;
  m_drawing = {};
  m_act = {};
  m_title = tr("No job on the bench");
  const auto& jobs = m_workbench.jobs();
  const auto entry =
      std::find_if(jobs.begin(), jobs.end(), [this](const workbench::JobEntry& job) { return job.id == m_jobId; });
  const core::jobs::JobState* state = m_workbench.job(m_jobId);
  if (!m_trouble.isEmpty()) {
    m_kind = Kind::Trouble;
    m_title = tr("The record cannot be used");
    m_detail = m_trouble;
  } else if (state != nullptr) {
    const JobAt job = m_workbench.at(m_jobId);
    showPlace(job);
    showOffers(job);
    m_look.show(&job, m_clock.zone());
  } else if (entry != jobs.end()) {
    m_kind = Kind::Trouble;
    m_jobTitle = toQt(entry->title);
    m_title = tr("This job cannot be opened");
    m_detail = words::text(entry->trouble, core::units::UnitSystem::Millimetres);
  } else {
    m_detail = tr("Choose one under Jobs, or begin a piece at the desk.");
  }
  if (state == nullptr || !m_trouble.isEmpty()) m_look.show(nullptr, {});
  showFigures(state);
  emit changed();
}

void BenchViewModel::showPlace(const JobAt& job) {
  const core::jobs::JobPlan& plan = *job.state().plan;
  const BenchPlace place = core::jobs::benchPlace(job);
  m_jobTitle = toQt(plan.design.job.title);
  m_done = place.done;
  m_all = place.all;
  if (place.step) {
    m_step = &plan.workflow.steps[*place.step];
    m_begun = job.state().steps[*place.step].status == core::jobs::StepStatus::Begun;
  }
  showSteps(job, place);
  m_next = nextText(job, place);
  showAbove(job, place);
  showJustDone(job, place);
  switch (place.kind) {
    case BenchPlace::Kind::Step:
      m_kind = Kind::Step;
      m_title = actTitle(plan.workflow, job.way(), place.steps);
      break;
    case BenchPlace::Kind::Waiting:
      m_kind = Kind::Waiting;
      showWaiting(job, place.wait);
      break;
    case BenchPlace::Kind::Missed:
      m_kind = Kind::Missed;
      m_title = tr("Missed: %1").arg(actName(*m_step));
      m_detail = toQt(plan.workflow.findWait(place.wait).wait->missedSay);
      break;
    case BenchPlace::Kind::Finished:
      m_kind = Kind::Finished;
      m_title = tr("Every step is done");
      m_detail = tr("The record holds what was done, and when.");
      break;
    case BenchPlace::Kind::Stuck:
      m_kind = Kind::Stuck;
      m_title = tr("Nothing can be started");
      m_detail =
          tr("No step has what it needs and nothing is drying. Undo the last act, or ask again after "
             "looking at the piece.");
      break;
  }
  const auto side =
      m_step != nullptr && m_step->up == core::craft::WayUp::Back ? core::sheets::Side::Back : core::sheets::Side::Face;
  m_drawing.piece = m_drawn.piece(job.state().design, side, m_drawn.growth(job.state()));
  if (m_refusal.isEmpty() && !job.state().unmeasurable.id.empty()) {
    m_refusal = tr("What was measured no longer fits this job; the computed figures are shown. %1")
                    .arg(words::text(job.state().unmeasurable, plan.design.job.units));
  }
  const core::workflow::WorkflowStep* shown =
      m_kind == Kind::Waiting ? plan.workflow.findWait(place.wait).step : m_step;
  if (shown != nullptr) m_drawing.worked = core::workflow::wholeThing(shown->thing);
  showAct(job);
}

QString BenchViewModel::nextText(const JobAt& job, const BenchPlace& place) const {
  using core::jobs::BenchStand;
  const auto next = core::jobs::standAfter(job, place);
  if (!next) return {};
  const auto& workflow = job.state().plan->workflow;
  switch (next->kind) {
    case BenchStand::Kind::Step: return tr("next: %1").arg(actName(workflow, job.way(), next->steps));
    case BenchStand::Kind::Waiting: return tr("next: wait, %1").arg(waitName(workflow.findWait(next->wait)));
    case BenchStand::Kind::Missed: return tr("next: too late for %1").arg(actName(workflow.steps[*next->step]));
    case BenchStand::Kind::Finished: return tr("next: nothing, the piece is done");
    case BenchStand::Kind::Stuck: break;
  }
  return {};
}

void BenchViewModel::showAct(const JobAt& job) {
  const core::workflow::WorkflowStep* drawn = m_step;
  // Of an act the step that is worked longest.
  for (const auto* step : m_steps) {
    if (step->act && (!drawn->act || step->work.likely > drawn->work.likely)) drawn = step;
  }
  if (drawn == nullptr || !drawn->act) return;
  m_act.piece = m_drawn.act(job.state().plan, *drawn);
  // The sentences of an act of several kinds of steps are not counted from one.
  const bool alike =
      std::all_of(m_steps.begin(), m_steps.end(), [&](const auto* step) { return kindOf(*step) == kindOf(*drawn); });
  if (alike) m_act.numerals = core::sheets::numerals(*m_act.piece, drawn->places);
  // Where the step is for the whole job and no side is given as up, the piece would be all in pencil and show nothing.
  const bool ofJob = std::all_of(m_steps.begin(), m_steps.end(),
                                 [](const auto* step) { return core::workflow::wholeThing(step->thing).empty(); });
  if (m_kind == Kind::Step && ofJob && m_step->up == core::craft::WayUp::None) m_drawing = m_act;
}

void BenchViewModel::showSteps(const JobAt& job, const BenchPlace& place) {
  const auto& workflow = job.state().plan->workflow;
  for (const std::size_t step : place.steps) m_steps.push_back(&workflow.steps[step]);
  if (!place.steps.empty()) {
    std::set<std::string> things;
    for (const std::size_t step : workflow.acts(job.way())[workflow.actOf(job.way(), place.steps.front())].steps) {
      if (!workflow.steps[step].thingName.empty()) things.insert(workflow.steps[step].thingName);
    }
    m_thingsOfAct = static_cast<qsizetype>(things.size());
  }
  std::vector<std::size_t> shown = place.steps;
  if (shown.empty() && place.step) shown.push_back(*place.step);
  m_hands = core::workflow::handsOf(workflow, shown);
  m_cautions = core::jobs::cautionsOf(job, shown);
  // Its parts are the acts that the other way would have.
  std::vector<std::vector<std::size_t>> parts;
  for (const std::size_t step : place.steps) {
    const std::size_t act = workflow.actOf(core::craft::Way::Every, step);
    const bool goesOn = !parts.empty() && workflow.actOf(core::craft::Way::Every, parts.back().back()) == act;
    if (!goesOn) parts.emplace_back();
    parts.back().push_back(step);
  }
  // What is gathered over several things says so in its title.
  std::set<std::string> kinds;
  for (const auto& part : parts) kinds.insert(m_steps.empty() ? "" : kindOf(workflow.steps[part.front()]));
  if (parts.size() > 1 && kinds.size() == parts.size()) {
    for (const auto& part : parts) m_parts << actTitle(workflow, core::craft::Way::Every, part);
    m_parts.removeDuplicates();
  }
  for (const core::jobs::StageAt& at : core::jobs::stagesOf(job, place)) {
    m_stages << QVariantMap{{QStringLiteral("name"), words::stage(at.stage)},
                            {QStringLiteral("standing"), static_cast<int>(at.standing)}};
  }
}

void BenchViewModel::showFigures(const core::jobs::JobState* state) {
  std::string act;
  std::vector<core::workflow::WorkflowFigure> figures;
  if (state != nullptr && !m_steps.empty()) {
    const auto& workflow = state->plan->workflow;
    std::vector<std::size_t> steps;
    for (const auto* step : m_steps) {
      steps.push_back(*workflow.indexOf(step->id));
      act += step->id + '\n';
    }
    const auto marking = m_workbench.settings().marking;
    act = m_jobId + '\n' + std::string(core::units::name(marking)) + '\n' + act;
    figures = core::workflow::figuresOf(workflow, steps, marking);
  }
  const bool backUp = std::any_of(m_steps.begin(), m_steps.end(),
                                  [](const auto* step) { return step->up == core::craft::WayUp::Back; });
  if (state == nullptr) {
    m_figure.show(act, nullptr, nullptr, {}, backUp);
  } else {
    m_figure.show(act, state->design, m_drawn.growth(*state), std::move(figures), backUp,
                  sizesOfAct(m_steps, m_workbench.settings().marking));
  }
}

void BenchViewModel::showWaiting(const JobAt& job, const std::string& waitId) {
  const core::jobs::RunningWait& run = job.state().waits.at(waitId);
  const auto state = job.waitState(run);
  m_title = tr("Wait: %1").arg(toQt(run.wait->title));
  const ToldWait told = toldWait(job, run, m_clock.zone());
  m_waitVerb = told.time.isEmpty() ? told.brief : told.verb;
  m_waitTime = told.time;
  m_waitSentence = told.sentence;
  m_waitTest = toQt(run.wait->test);
  QStringList parts;
  if (!run.step->thingName.empty()) parts << capitalised(toQt(run.step->thingName)) + QLatin1Char('.');
  parts << told.sentence;
  if (!state.byTouch) parts << capitalised(whyText(state)) + QLatin1Char('.');
  if (state.elapsed.certainty == core::waits::Certainty::Told) parts << tr("The time this bench was off is as told.");
  if (state.elapsed.certainty == core::waits::Certainty::Checking) parts << tr("Checking the time.");
  // Where the sentence asks the test already it is not said twice.
  if (!run.wait->test.empty() && !told.sentence.contains(m_waitTest.chopped(1))) parts << m_waitTest;
  m_detail = parts.join(QLatin1Char(' '));
}

void BenchViewModel::showAbove(const JobAt& job, const BenchPlace& place) {
  const auto& workflow = job.state().plan->workflow;
  if (!job.state().lastUndo.empty()) {
    const auto& log = job.state().log;
    const auto taken = std::find_if(log.rbegin(), log.rend(), [](const core::jobs::LogLine& line) {
      return line.voided && !line.is<core::record::Undone>() && !line.is<core::record::StepBegun>();
    });
    if (taken != log.rend()) {
      const core::workflow::WorkflowStep* step = workflow.find(taken->about);
      const auto wait = workflow.findWait(taken->about);
      const std::string what = step != nullptr ? step->title : wait.wait != nullptr ? wait.wait->title : "";
      const auto* measured = taken->as<core::record::Measured>();
      const auto* figure = measured == nullptr ? nullptr : job.state().design->figures.find(measured->figure);
      if (taken->is<core::record::FollowChosen>()) {
        m_above = tr("undone: what the %1 board keeps").arg(toQt(taken->about));
      } else if (figure == nullptr && what.empty()) {
        m_above = tr("undone");
      } else {
        m_above =
            tr("undone: %1").arg(figure != nullptr ? tr("measure of %1").arg(words::figureLabel(*figure)) : toQt(what));
      }
      return;
    }
  }
  if (!place.lastDone) return;
  m_above = QStringLiteral("✓ ") +
            tr("%1 %2").arg(actName(workflow, job.way(), core::jobs::doneTogether(job, place)),
                            clockTime(place.lastDoneAt.utcMilliseconds, job.now().utcMilliseconds, m_clock.zone()));
}

void BenchViewModel::showJustDone(const JobAt& job, const BenchPlace& place) {
  using core::units::Duration;
  const auto& state = job.state();
  if (!place.lastDone || !state.lastUndo.empty()) return;
  if (state.lastIntent != state.steps[*place.lastDone].intentId) return;
  const auto since = core::waits::elapsedBetween(place.lastDoneAt, job.now(), job.shop().clockLog);
  const Duration left = kJustDone - since.time;
  const bool handsBusy = m_begun || (place.kind == BenchPlace::Kind::Step && m_hands == core::craft::Hands::Blade);
  m_justDone = since.known() && left > Duration() && !handsBusy;
  if (m_justDone) m_later.start(static_cast<int>(left.inMilliseconds()));
}

void BenchViewModel::showOffers(const JobAt& job) {
  m_offers = core::decisions::offers(job);
  for (const core::decisions::Offer& offer : m_offers) {
    if (const auto* undo = std::get_if<core::intents::Undo>(&offer.intent)) {
      (undo->intentId == job.state().lastUndo ? m_redo : m_undo) = undo->intentId;
    }
    if (const auto* report = std::get_if<core::intents::ReportFault>(&offer.intent)) {
      showFault(*job.state().plan->workflow.find(report->step), *report);
    }
    if (std::holds_alternative<core::intents::BeginStep>(offer.intent)) {
      // Beginning is worth a word of its own only where something hangs on it.
      const auto index = job.state().plan->workflow.indexOf(m_step->id);
      m_canBegin =
          m_step->uninterruptible || m_hands == core::craft::Hands::Blade || (index && job.gate(*index) != nullptr);
    }
  }
}

// The ways of a fault are offered one after the other.
void BenchViewModel::showFault(const core::workflow::WorkflowStep& step, const core::intents::ReportFault& report) {
  for (const auto& fault : step.faults) {
    if (fault.id != report.fault) continue;
    const auto* way = fault.way(report.way);
    const bool another = way != nullptr && !m_faults.empty() && m_faults.back().report.step == report.step &&
                         m_faults.back().report.fault == report.fault;
    if (!another) {
      QString seen = capitalised(toQt(fault.seen));
      if (m_steps.size() > 1 && !step.thingName.empty())
        seen = capitalised(toQt(step.thingName)) + QStringLiteral(": ") + toQt(fault.seen);
      m_faults.push_back({{report.step, report.fault, ""}, seen, toQt(fault.mend), {}, {}, {}});
    }
    if (way == nullptr) continue;
    m_faults.back().ways << toQt(way->id);
    m_faults.back().wayKeys << toQt(way->key);
    m_faults.back().wayMends << toQt(way->mend);
  }
}

bool BenchViewModel::ask(const core::intents::Intent& intent) {
  const core::base::Message refused = m_workbench.submit(core::intents::OfJob{m_jobId, intent});
  const core::jobs::JobState* state = m_workbench.job(m_jobId);
  const auto units = state == nullptr ? core::units::UnitSystem::Millimetres : state->plan->design.job.units;
  m_refusal = refused.id.empty() ? QString() : words::text(refused, units);
  refresh();
  return refused.id.empty();
}

QString BenchViewModel::stepId() const { return m_step == nullptr ? QString() : toQt(m_step->id); }

QString BenchViewModel::progress() const {
  return m_kind == Kind::Step ? tr("act %1 of %2").arg(m_done + 1).arg(m_all)
         : m_all > 0          ? tr("%1 of %2 done").arg(m_done).arg(m_all)
                              : QString();
}

QString BenchViewModel::checksText() const {
  QString text;
  for (const QString& check : checks())
    text += (text.isEmpty() ? QString() : QStringLiteral("\n")) + QStringLiteral("☐ ") + check;
  return text;
}

// Of several things worked together their names, or their number where they are many; "" where the title names it.
QString BenchViewModel::thing() const {
  if (m_step == nullptr || m_kind == Kind::Missed) return {};
  if (m_steps.size() < 2) return thingBeside(*m_step);
  QStringList names;
  for (const auto* step : m_steps) {
    if (!step->thingName.empty()) names << toQt(step->thingName);
  }
  names.removeDuplicates();
  constexpr qsizetype kReadAtAGlance = 40;
  const QString all = capitalised(names.join(QStringLiteral(", ")));
  if (names.size() < 2 || all.size() <= kReadAtAGlance)
    return title().contains(all, Qt::CaseInsensitive) ? QString() : all;
  QStringList owners;
  for (const auto* step : m_steps) owners << toQt(step->ownerName);
  owners.removeDuplicates();
  const bool ofOne = owners.size() == 1 && !owners.front().isEmpty();
  if (const qsizetype done = m_thingsOfAct - names.size(); done > 0) {
    return ofOne ? tr("%1, %2 of %3 done").arg(capitalised(owners.front())).arg(done).arg(m_thingsOfAct)
                 : tr("%1 of %2 done").arg(done).arg(m_thingsOfAct);
  }
  return ofOne ? tr("%1, %2 in turn").arg(capitalised(owners.front())).arg(names.size())
               : tr("%1 in turn").arg(names.size());
}

QStringList BenchViewModel::faults() const {
  QStringList seen;
  for (const FaultShown& fault : m_faults) seen << fault.seen;
  return seen;
}

QString BenchViewModel::lies() const {
  if (m_step == nullptr || m_step->up == core::craft::WayUp::None) return {};
  const QString corner =
      m_step->up == core::craft::WayUp::Back ? tr("marked corner top right") : tr("marked corner top left");
  return words::wayUp(m_step->up) + QStringLiteral(" · ") + corner;
}

QString BenchViewModel::side() const {
  return m_step == nullptr || m_step->up == core::craft::WayUp::None ? QString() : words::wayUp(m_step->up);
}

QString BenchViewModel::hands() const { return m_step == nullptr ? QString() : words::hands(m_hands); }

QString BenchViewModel::afterwards() const {
  QStringList parts = {progress(), hands(), m_next};
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

// Of an act each sentence once, under the step it belongs to where there are several kinds.
QStringList BenchViewModel::sentences() const {
  QStringList list;
  const auto shown = shownSteps();
  std::string last;
  for (const auto* step : shown) {
    const std::string kind = kindOf(*step);
    if (kind == last) continue;
    last = kind;
    if (!m_parts.isEmpty()) list << toQt(step->title) + QLatin1Char(':');
    for (const std::string& sentence : step->sentences) list << toQt(sentence);
  }
  list.removeDuplicates();
  return list;
}

QString BenchViewModel::good() const {
  return joined([](const auto& step) { return QStringList(toQt(step.good)); }).join(QLatin1Char(' '));
}

QString BenchViewModel::trap() const {
  return joined([](const auto& step) { return QStringList(toQt(step.trap)); }).join(QLatin1Char(' '));
}

std::vector<const core::workflow::WorkflowStep*> BenchViewModel::shownSteps() const {
  if (!m_steps.empty() || m_step == nullptr) return m_steps;
  return {m_step};
}

// What the steps of the act say, each once.
QStringList BenchViewModel::joined(const std::function<QStringList(const core::workflow::WorkflowStep&)>& of) const {
  QStringList list;
  for (const auto* step : shownSteps()) list << of(*step);
  list.removeAll(QString());
  list.removeDuplicates();
  return list;
}

QStringList BenchViewModel::tools() const {
  QStringList list = joined([](const core::workflow::WorkflowStep& step) {
    QStringList tools;
    for (const std::string& tool : step.tools) tools << toQt(tool);
    return tools;
  });
  // Of a material used by several steps the amounts are added.
  std::vector<std::pair<QString, std::pair<double, QString>>> amounts;
  for (const auto* step : shownSteps()) {
    for (const auto& material : step->materials) {
      const QString what = toQt(material.what);
      const QString unit = toQt(material.unit);
      const auto known = std::find_if(amounts.begin(), amounts.end(), [&](const auto& one) {
        return one.first == what && (one.second.second == unit || !material.amount);
      });
      if (known == amounts.end()) {
        amounts.push_back({what, {material.amount.value_or(0), unit}});
      } else {
        known->second.first += material.amount.value_or(0);
      }
    }
  }
  for (const auto& [what, amount] : amounts) {
    list << (amount.first > 0 ? QStringLiteral("%1, %2 %3").arg(what, unitless(amount.first), amount.second) : what);
  }
  return list;
}

QStringList BenchViewModel::checks() const {
  const auto* state = m_workbench.job(m_jobId);
  return joined([&](const core::workflow::WorkflowStep& step) {
    QStringList list;
    for (const auto& check : step.checks) {
      QString text = toQt(check.ask);
      const auto* figure = state == nullptr ? nullptr : state->design->figures.find(check.figure);
      if (figure != nullptr) text += QStringLiteral(" %1").arg(toQt(figure->display));
      if (!check.within.empty()) {
        text += check.within == "as computed" ? tr(", as computed") : tr(", within %1").arg(toQt(check.within));
      }
      list << text;
    }
    return list;
  });
}

QString BenchViewModel::cautionWord() const {
  return hasCaution() ? words::signalWord(m_cautions.front().caution.word) : QString();
}

// Those whose words were read before are named by their hazard alone.
QString BenchViewModel::cautionHazard() const {
  QStringList hazards;
  for (const core::jobs::CautionAt& one : m_cautions) hazards << toQt(one.caution.hazard);
  hazards.removeDuplicates();
  return hazards.join(QStringLiteral(", "));
}

QString BenchViewModel::cautionSign() const {
  for (const core::jobs::CautionAt& one : m_cautions) {
    if (!one.caution.sign.empty()) return toQt(one.caution.sign);
  }
  return {};
}

QString BenchViewModel::cautionText() const {
  QStringList list;
  for (const core::jobs::CautionAt& one : m_cautions) {
    if (!one.known) list << toQt(one.caution.text);
  }
  // A signal word alone says nothing: of what was told before the first is told again.
  if (list.isEmpty() && !m_cautions.empty()) list << toQt(m_cautions.front().caution.text);
  return list.join(QLatin1Char(' '));
}

template <typename Intent>
bool BenchViewModel::askOffered() {
  for (const core::decisions::Offer& offer : m_offers) {
    if (!std::holds_alternative<Intent>(offer.intent)) continue;
    // What is asked changes what is offered.
    const core::intents::Intent asked = offer.intent;
    return ask(asked);
  }
  return false;
}

bool BenchViewModel::finish() {
  const bool kept = m_kind == Kind::Step && askOffered<core::intents::FinishStep>();
  if (kept) emit handsFree();
  return kept;
}

// The offer beside the one for the whole act, where the act is worked on several things.
const core::intents::FinishStep* BenchViewModel::firstAlone() const {
  for (const core::decisions::Offer& offer : m_offers) {
    if (m_kind == Kind::Step && offer.label.id == "offer.done-one")
      return &std::get<core::intents::FinishStep>(offer.intent);
  }
  return nullptr;
}

QString BenchViewModel::first() const {
  if (firstAlone() == nullptr) return {};
  const QString name = toQt(m_steps.front()->thingName);
  return capitalised(name.isEmpty() ? toQt(m_steps.front()->title) : name);
}

bool BenchViewModel::finishFirst() {
  const core::intents::FinishStep* first = firstAlone();
  if (first == nullptr) return false;
  // What is asked changes what is offered.
  const core::intents::Intent asked = *first;
  const bool kept = ask(asked);
  if (kept) emit handsFree();
  return kept;
}

bool BenchViewModel::begin() { return askOffered<core::intents::BeginStep>(); }
bool BenchViewModel::takeBack() { return !m_undo.empty() && ask(core::intents::Undo{m_undo}); }
bool BenchViewModel::putBack() { return !m_redo.empty() && ask(core::intents::Undo{m_redo}); }
bool BenchViewModel::takeUpMissed() { return askOffered<core::intents::MendMissed>(); }
bool BenchViewModel::wasBegunInTime() { return m_kind == Kind::Missed && askOffered<core::intents::FinishStep>(); }

void BenchViewModel::report(int fault) {
  if (fault < 0 || fault >= static_cast<int>(m_faults.size())) return;
  const FaultShown seen = m_faults[static_cast<std::size_t>(fault)];
  m_mend.clear();
  m_considered = seen.ways.isEmpty() ? FaultShown() : seen;
  if (seen.ways.isEmpty() && ask(seen.report)) m_mend = seen.mend;
  emit changed();
}

void BenchViewModel::takeWay(int way) {
  if (way < 0 || way >= m_considered.ways.size()) return;
  const FaultShown seen = m_considered;
  core::intents::ReportFault intent = seen.report;
  intent.way = convert::fromQt(seen.ways[way]);
  if (!ask(intent)) return;
  m_considered = {};
  m_mend = seen.wayMends[way];
  emit changed();
}

void BenchViewModel::forgetRefusal() {
  if (m_refusal.isEmpty()) return;
  m_refusal.clear();
  emit changed();
}

}  // namespace app::viewmodels
