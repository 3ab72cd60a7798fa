#include "core/workflow/fast_clock.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace core::workflow {
namespace {

// A batch that is never used before it is too old would be made for ever.
constexpr int kMostTimes = 100;

}  // namespace

FastClock::FastClock(const Agenda& agenda, std::vector<double> starts, Listener* listener)
    : m_workflow(agenda.workflow()),
      m_agenda(agenda),
      m_listener(listener),
      m_work(m_workflow.steps.size(), 0),
      m_starts(std::move(starts)),
      m_leads(leadsOf(agenda, m_starts)),
      m_started(m_workflow.steps.size(), true),
      m_needs(m_workflow.steps.size()),
      m_waitsFor(m_workflow.steps.size()),
      m_after(m_workflow.steps.size()) {
  for (const AgendaStep& ahead : agenda.steps()) {
    m_started[ahead.step] = false;
    m_work[ahead.step] = ahead.work.likely.inMinutes();
  }
  for (const AgendaStep& ahead : agenda.steps()) stand(ahead.step);
  for (Batch& batch : batchesOf(m_workflow)) m_made.push_back({std::move(batch)});
  for (const AgendaBatch& at : agenda.batches()) {
    for (Made& made : m_made) {
      if (made.batch.technique == at.technique) made.oldAt = at.left.inMinutes();
    }
  }
  double stay = 0;  // until when a wait that runs keeps the hands
  for (const AgendaRun& run : agenda.running()) {
    const double opens = begin(run.step, *run.wait, run.from);
    if (run.wait->attended) stay = std::max(stay, opens);
  }
  if (stay > 0) passTo(stay);
}

// A step that is to be worked stands where those before it that are not worked put it.
void FastClock::stand(std::size_t i) {
  for (const WorkflowWait& wait : step(i).waits) m_facts[numberOf(wait.makes)].byWait = true;
  for (const std::string& fact : step(i).needs) {
    const std::size_t number = numberOf(fact);
    m_needs[i].push_back(number);
    m_facts[number].needing.push_back(i);
    ++m_facts[number].unstarted;
  }
  for (const std::size_t earlier : step(i).before) {
    if (m_started[earlier]) continue;
    ++m_waitsFor[i];
    m_after[earlier].push_back(i);
  }
  if (m_waitsFor[i] == 0) m_ready.insert(i);
}

bool FastClock::isWanted(const Made& made) const {
  return std::any_of(made.batch.users.begin(), made.batch.users.end(),
                     [&](std::size_t user) { return !m_started[user]; });
}

// A step has been worked; if it made a batch, that is as old as this.
void FastClock::make(std::size_t index) {
  if (!step(index).ofShop || !step(index).keeps) return;
  for (Made& made : m_made) {
    if (made.batch.technique != step(index).technique) continue;
    const bool whole =
        std::all_of(made.batch.steps.begin(), made.batch.steps.end(), [&](std::size_t one) { return m_started[one]; });
    made.oldAt = whole && made.times < kMostTimes ? m_now + made.batch.keeps.inMinutes() : kNever;
  }
}

// The steps of a batch are to be worked again, and who needs it waits for them again.
void FastClock::makeAnew(Made& made) {
  made.oldAt = kNever;
  ++made.times;
  for (const std::size_t i : made.batch.steps) {
    m_started[i] = false;
    m_work[i] = step(i).work.likely.inMinutes();
    m_needs[i].clear();
    m_waitsFor[i] = 0;
    m_after[i].clear();
    for (const WorkflowWait& wait : step(i).waits) m_facts[numberOf(wait.makes)].newest.reset();
  }
  for (const std::size_t i : made.batch.steps) {
    for (Fact& fact : m_facts) std::erase(fact.needing, i);
  }
  for (const std::size_t i : made.batch.steps) stand(i);
  for (std::size_t i = 0; i < m_started.size(); ++i) {
    if (m_started[i] || std::count(made.batch.steps.begin(), made.batch.steps.end(), i) > 0) continue;
    for (const std::size_t earlier : step(i).before) {
      if (std::count(made.batch.steps.begin(), made.batch.steps.end(), earlier) == 0) continue;
      ++m_waitsFor[i];
      m_after[earlier].push_back(i);
      m_ready.erase(i);
    }
  }
}

// Returns whether an earlier plan uses a batch only once it will be too old: then the next one is made ready in time.
bool FastClock::willBeOld(const Made& made) const {
  if (m_starts.empty() || made.oldAt == kNever) return false;
  return std::all_of(made.batch.users.begin(), made.batch.users.end(),
                     [&](std::size_t user) { return m_started[user] || m_starts[user] > made.oldAt; });
}

// Old batches that are still needed are made anew. One that is made of another needs that again.
void FastClock::discardOld() {
  const auto isPast = [this](const Made& made) { return isWanted(made) && (made.oldAt < m_now || willBeOld(made)); };
  auto old = std::find_if(m_made.begin(), m_made.end(), isPast);
  if (old == m_made.end()) return;
  for (; old != m_made.end(); old = std::find_if(m_made.begin(), m_made.end(), isPast)) makeAnew(*old);
  std::vector<double> left(m_started.size(), -1);
  for (std::size_t i = 0; i < left.size(); ++i) {
    if (!m_started[i]) left[i] = m_work[i];
  }
  m_leads = leadsAt(m_now, m_agenda, m_starts, std::move(left));
}

std::size_t FastClock::numberOf(const std::string& fact) {
  const auto [found, isNew] = m_numbers.emplace(fact, m_facts.size());
  if (isNew) m_facts.emplace_back();
  return found->second;
}

// The newest wait that makes a fact, or null where a step makes it directly.
const FastClock::Running* FastClock::runningFor(std::size_t fact) const {
  const auto& newest = m_facts[fact].newest;
  return newest ? &m_running[*newest] : nullptr;
}

bool FastClock::holds(std::size_t fact, double at) const {
  if (const Running* running = runningFor(fact)) return at >= running->opens && at <= running->closes;
  // The step that makes it directly precedes this one and is done: only steps that are free to start are asked about.
  return !m_facts[fact].byWait;
}

bool FastClock::holdsAll(std::size_t step) const {
  return std::all_of(m_needs[step].begin(), m_needs[step].end(), [&](std::size_t fact) { return holds(fact, m_now); });
}

bool FastClock::canFollow(std::size_t index, const std::vector<std::size_t>& turn) const {
  if (m_started[index] || startOf(index) > m_now) return false;
  for (const std::size_t earlier : step(index).before) {
    if (!m_started[earlier] && std::count(turn.begin(), turn.end(), earlier) == 0) return false;
  }
  double at = m_now;
  for (const std::size_t one : turn) at += m_work[one];
  for (const std::string& fact : step(index).needs) {
    bool made = false;
    for (const std::size_t one : turn) {
      for (const WorkflowWait& wait : step(one).waits) {
        if (wait.makes != fact) continue;
        if (wait.opens.late > units::Duration()) return false;
        made = true;
      }
      made = made || std::count(step(one).makes.begin(), step(one).makes.end(), fact) > 0;
    }
    if (!made && !holds(m_numbers.at(fact), at)) return false;
  }
  return true;
}

double FastClock::opensAt(std::size_t index) const { return overFrom(index, std::max(m_now, startOf(index))); }

// The first moment from then on at which no running wait that the step needs is still to open.
double FastClock::overFrom(std::size_t index, double from) const {
  for (const std::size_t fact : m_needs[index]) {
    if (const Running* running = runningFor(fact)) from = std::max(from, running->opens);
  }
  return from;
}

double FastClock::closingOf(std::size_t index) const {
  double closes = kNever;
  for (const std::size_t fact : m_needs[index]) {
    const Running* running = runningFor(fact);
    if (running == nullptr) continue;
    closes = std::min(closes, running->closes);
    if (running->heed >= m_now) closes = std::min(closes, running->heed);
  }
  return closes;
}

bool FastClock::opensWindow(std::size_t index) const {
  return std::any_of(step(index).waits.begin(), step(index).waits.end(),
                     [](const WorkflowWait& wait) { return wait.closes.has_value() || wait.punctual; });
}

bool FastClock::wouldBreak(const std::vector<std::size_t>& turn) const {
  const bool opens = std::any_of(turn.begin(), turn.end(), [this](std::size_t one) { return opensWindow(one); });
  if (m_closings.empty() && m_heeded.empty() && !opens) return false;
  if (!m_unmoved) {
    m_unmoved.emplace();
    m_unmoved->late = lateAfter({}, &m_unmoved->leading);
  }
  const bool concerned = std::any_of(turn.begin(), turn.end(), [this](std::size_t one) {
    return closingOf(one) < kNever || m_unmoved->leading.contains(one);
  });
  if (opens || concerned) return lateAfter(turn) > m_unmoved->late;
  // Steps that no window has to do with only put off what it has.
  double takes = 0;
  for (const std::size_t one : turn) takes += m_work[one];
  if (takes <= m_unmoved->harmless) return false;
  if (takes >= m_unmoved->harmful) return true;
  const bool late = lateAfter(turn) > m_unmoved->late;
  (late ? m_unmoved->harmful : m_unmoved->harmless) = takes;
  return late;
}

// Returns how many steps would start too late for their windows if these were worked now, and then those that a window
// gates: of these, one that waits for other steps too has those, the leading ones, to be worked and waited for first.
int FastClock::lateAfter(const std::vector<std::size_t>& turn, std::map<std::size_t, double>* leading) const {
  int late = 0;
  double at = m_now;
  std::map<std::size_t, std::pair<double, double>> windows;  // of each fact, when it opens and closes
  for (const Moments* ends : {&m_closings, &m_heeded}) {
    for (const auto& [end, index] : *ends) {
      const Running& running = m_running[index];
      if (m_facts[running.fact].newest == index) windows[running.fact] = {running.opens, end};
    }
  }
  const std::set<std::size_t> inTurn(turn.begin(), turn.end());
  for (const std::size_t one : turn) {
    for (const std::size_t fact : m_needs[one]) {
      const auto window = windows.find(fact);
      if (window != windows.end() && at > window->second.second) ++late;
    }
    at += m_work[one];
    double stay = at;
    for (const WorkflowWait& wait : step(one).waits) {
      const AgendaWait& from = m_agenda.of(wait);
      const double opens = at + from.opens.likely.inMinutes();
      if (wait.attended) stay = std::max(stay, opens);
      if (from.closes) windows[m_numbers.at(wait.makes)] = {opens, at + from.closes->likely.inMinutes()};
      if (wait.punctual) windows[m_numbers.at(wait.makes)] = {opens, at + from.opens.late.inMinutes()};
    }
    at = stay;
  }
  Dues dues;
  for (const auto& [fact, window] : windows) {
    for (const std::size_t gated : m_facts[fact].needing) {
      if (m_started[gated] || inTurn.contains(gated)) continue;
      const auto found = dues.try_emplace(gated, Due{window.first, window.second, 0, m_work[gated], 0}).first;
      found->second.from = std::max(found->second.from, window.first);
      found->second.closes = std::min(found->second.closes, window.second);
    }
  }
  std::map<std::size_t, double> free;  // when the hands can turn to a step, of those looked at
  for (auto& [gated, due] : dues) due.from = std::max(due.from, freeFrom(gated, at, inTurn, dues, free, due));
  if (leading != nullptr) *leading = free;
  std::vector<Due> all;
  for (const auto& [gated, due] : dues) all.push_back(due);
  return late + lateOf(std::move(all), at);
}

// Returns when the hands can turn to a step and what has to be worked before it, as far as its waits are known, and
// tells the due what that is: the work of steps that nobody counted yet, and other dues.
double FastClock::freeFrom(std::size_t index, double at, const std::set<std::size_t>& inTurn, const Dues& dues,
                           std::map<std::size_t, double>& known, Due& due) const {
  double from = overFrom(index, at);
  for (const std::size_t earlier : step(index).before) {
    if (m_started[earlier] || inTurn.contains(earlier)) continue;
    if (dues.contains(earlier)) {
      ++due.after;
      continue;
    }
    auto begun = known.find(earlier);
    if (begun == known.end()) {
      due.before += m_work[earlier];
      begun = known.emplace(earlier, freeFrom(earlier, at, inTurn, dues, known, due)).first;
    }
    double opens = begun->second;
    for (const WorkflowWait& wait : step(earlier).waits) {
      const bool needed = std::count(step(index).needs.begin(), step(index).needs.end(), wait.makes) > 0;
      if (needed) opens = std::max(opens, begun->second + m_agenda.of(wait).opens.likely.inMinutes());
    }
    from = std::max(from, opens);
  }
  return from;
}

double FastClock::nextMoment() const {
  double next = kNever;
  for (auto opening = m_openings.upper_bound({m_now, m_running.size()}); opening != m_openings.end(); ++opening) {
    if (!gates(m_running[opening->second])) continue;
    next = opening->first;
    break;
  }
  for (const std::size_t index : m_ready) {
    if (startOf(index) > m_now) next = std::min(next, startOf(index));
  }
  for (const Made& made : m_made) {
    if (made.oldAt >= m_now && isWanted(made)) next = std::min(next, std::nextafter(made.oldAt, kNever));
  }
  return next;
}

// A wait that starts now, or ran before; returns when it opens.
double FastClock::begin(std::size_t index, const WorkflowWait& wait, const AgendaWait& from) {
  Running running{index, &wait, numberOf(wait.makes), m_now + from.opens.likely.inMinutes(), kNever};
  if (from.closes) running.closes = m_now + from.closes->likely.inMinutes();
  m_facts[running.fact].byWait = true;
  m_facts[running.fact].newest = m_running.size();
  // A wait that opened before the agenda was made is not reported again.
  if (running.opens >= 0) m_openings.emplace(running.opens, m_running.size());
  if (running.closes < kNever) m_closings.emplace(running.closes, m_running.size());
  if (wait.punctual) {
    running.heed = m_now + from.opens.late.inMinutes();
    if (running.heed >= m_now) m_heeded.emplace(running.heed, m_running.size());
  }
  m_running.push_back(running);
  return running.opens;
}

void FastClock::work(std::size_t index) {
  m_unmoved.reset();
  m_started[index] = true;
  m_hands = step(index).hands;
  m_ready.erase(index);
  for (const std::size_t fact : m_needs[index]) --m_facts[fact].unstarted;
  passTo(m_now + m_work[index], index);
  make(index);
  for (const std::size_t later : m_after[index]) {
    if (--m_waitsFor[later] == 0) m_ready.insert(later);
  }
  double stay = m_now;
  for (const WorkflowWait& wait : step(index).waits) {
    if (m_listener != nullptr) m_listener->begins(m_now, index, wait);
    const double opens = begin(index, wait, m_agenda.of(wait));
    if (wait.attended) stay = std::max(stay, opens);
  }
  if (stay > m_now) passTo(stay, index);
}

// Lets time go by, telling what opens, closes and is missed on the way. `busy` is the step the hands are on.
void FastClock::passTo(double until, std::optional<std::size_t> busy) {
  tellOpenings(until);
  tellClosings(until, busy);
  m_now = std::max(m_now, until);
  m_unmoved.reset();
  while (!m_heeded.empty() && m_heeded.begin()->first < m_now) m_heeded.erase(m_heeded.begin());
  discardOld();
}

// What a step was still without when its window closed, while the hands were free: a step before it that was not
// started, or one whose wait was not over.
std::optional<std::size_t> FastClock::lackedBy(std::size_t gated, const Running& window) const {
  for (const std::size_t earlier : step(gated).before) {
    if (!m_started[earlier]) return earlier;
  }
  for (const std::size_t fact : m_needs[gated]) {
    const Running* running = runningFor(fact);
    if (running != nullptr && running->fact != window.fact && running->opens > window.closes) return running->step;
  }
  return std::nullopt;
}

void FastClock::end() {
  tellOpenings(kNever);
  tellClosings(kNever, std::nullopt);
}

void FastClock::tellOpenings(double until) {
  while (!m_openings.empty() && m_openings.begin()->first <= until && m_openings.begin()->first < kNever) {
    const Running& running = m_running[m_openings.begin()->second];
    m_openings.erase(m_openings.begin());
    if (m_listener != nullptr) m_listener->opens(running.opens, running.step, *running.wait, gates(running));
  }
}

// At the very moment of closing a step may still start, so only a closing before now is over.
void FastClock::tellClosings(double until, std::optional<std::size_t> busy) {
  while (!m_closings.empty() && m_closings.begin()->first < until) {
    const Running& running = m_running[m_closings.begin()->second];
    m_closings.erase(m_closings.begin());
    if (m_listener == nullptr) continue;
    m_listener->closes(running.closes, running.step, *running.wait);
    for (const std::size_t gated : m_facts[running.fact].needing) {
      if (!m_started[gated]) {
        m_listener->misses(running.closes, gated, running.step, *running.wait, busy ? busy : lackedBy(gated, running));
      }
    }
  }
}

}  // namespace core::workflow
