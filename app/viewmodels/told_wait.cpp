#include "app/viewmodels/told_wait.h"

#include <cmath>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"

namespace app::viewmodels {
namespace {

using core::base::Message;
using core::units::Duration;
using core::waits::Telling;

constexpr std::int64_t kMinute = 60'000;

// The test as a question: "Clicks, stays clean?"
std::string question(std::string test) {
  if (!test.empty() && test.back() == '.') test.back() = '?';
  return test;
}

std::string uncapitalised(const std::string& text) {
  const QString words = convert::toQt(text);
  return convert::fromQt(words.left(1).toLower() + words.mid(1));
}

// The arguments of every sentence; each takes those it names.
class Arguments {
 public:
  Arguments(const core::jobs::JobAt& job, const core::jobs::RunningWait& run, const core::waits::Told& told,
            const std::string& zone)
      : m_job(job), m_run(run), m_told(told), m_now(job.now().utcMilliseconds), m_zone(zone) {}

  QString said(Message message, Day day) const {
    const auto opening = [&](Duration at) { return clock(rounded(instantOf(at), m_now, Expected::Opening), day); };
    const auto closing = [&](Duration at) { return clock(rounded(instantOf(at), m_now, Expected::Closing), day); };
    Message filled = std::move(message)
                         .with("early", opening(m_told.early))
                         .with("half", opening(m_told.half))
                         .with("late", opening(m_told.late))
                         .with("true", convert::fromQt(words::waitTrue(m_run.wait->kind)))
                         .with("test", question(m_run.wait->test))
                         .with("found", m_run.wait->answers.found)
                         .with("past", m_run.wait->answers.pastIt)
                         .with("remedy", m_run.wait->missedSay);
    if (m_told.lookedAt) filled = std::move(filled).with("looked", clock(instantOf(*m_told.lookedAt), day));
    if (m_told.closes) {
      const std::int64_t left = (m_told.closes->early - m_told.passed).inMilliseconds() / kMinute;
      filled = std::move(filled).with("closes", closing(m_told.closes->early));
      filled = std::move(filled).with("gone", closing(m_told.closes->late));
      filled = std::move(filled).with("minutes", left);
    }
    if (const auto gated = m_job.gatedStep(m_run)) {
      const auto& step = m_job.state().plan->workflow.steps[*gated];
      filled = std::move(filled).with("act", uncapitalised(step.title));
    }
    return words::text(filled, core::units::UnitSystem::Millimetres);
  }

  // The time that the state is told by; "" for none.
  QString time() const {
    switch (m_told.telling) {
      case Telling::FirstTest:
      case Telling::WideTest:
      case Telling::TestAgain:
      case Telling::TackAhead:
      case Telling::About:
        return convert::toQt(clock(rounded(instantOf(m_told.early), m_now, Expected::Opening), Day::Short));
      case Telling::TackOpen:
      case Telling::PasteOpen:
        return convert::toQt(clock(rounded(instantOf(m_told.closes->early), m_now, Expected::Closing), Day::Short));
      case Telling::PastIt: return convert::toQt(clock(instantOf(*m_told.lookedAt), Day::Short));
      case Telling::TestNow:
      case Telling::Ready:
      case Telling::TackNow:
      case Telling::LastMinutes:
      case Telling::MayClose:
      case Telling::LikelyClosed:
      case Telling::ByTouch: break;
    }
    return {};
  }

  bool isFirstTestOtherDay() const {
    const bool ahead = m_told.telling == Telling::FirstTest || m_told.telling == Telling::WideTest;
    return ahead && isOtherDay(instantOf(m_told.early), m_now, m_zone);
  }

 private:
  std::int64_t instantOf(Duration at) const { return m_now + (at - m_told.passed).inMilliseconds(); }
  std::string clock(std::int64_t instant, Day day) const {
    return convert::fromQt(clockTime(instant, m_now, m_zone, day));
  }

  const core::jobs::JobAt& m_job;
  const core::jobs::RunningWait& m_run;
  const core::waits::Told& m_told;
  std::int64_t m_now;
  const std::string& m_zone;
};

}  // namespace

ToldWait toldWait(const core::jobs::JobAt& job, const core::jobs::RunningWait& run, const std::string& zone) {
  ToldWait wait;
  const core::waits::WaitState state = job.waitState(run);
  wait.told = core::waits::tell(core::jobs::termsOf(job.state(), run, job.shop().clockLog), state);
  const Telling telling = wait.told.telling;
  const Arguments arguments(job, run, wait.told, zone);
  const std::string name(core::waits::name(telling));
  wait.brief = arguments.said(Message("wait.brief." + name), Day::Short);
  wait.time = arguments.time();
  wait.verb = QString(wait.brief).remove(wait.time).simplified();
  wait.sentence =
      arguments.said(Message("wait.told." + (arguments.isFirstTestOtherDay() ? "other-day" : name)), Day::Long);
  if (telling == Telling::ByTouch) wait.sentence += QLatin1Char(' ') + capitalised(whyText(state)) + QLatin1Char('.');
  // Who has not tested it yet is asked to, however late it is.
  if (telling == Telling::MayClose && !wait.told.found)
    wait.sentence = convert::toQt(question(run.wait->test)) + QLatin1Char(' ') + wait.sentence;
  if (!state.elapsed.known() && telling != Telling::About)
    wait.sentence += QLatin1Char(' ') + arguments.said(Message("wait.told.about"), Day::Long);
  wait.question = convert::toQt(question(run.wait->test));
  wait.isWindow = wait.told.closes.has_value();
  wait.isClosed = telling == Telling::LikelyClosed || telling == Telling::PastIt;
  wait.isSolid = wait.told.found && !wait.isClosed;
  if (wait.isWindow && !wait.isClosed && wait.told.passed < wait.told.closes->late) {
    if (wait.told.passed < wait.told.closes->early) wait.mayClose = arguments.said(Message("wait.closes"), Day::Short);
    wait.gone = arguments.said(Message("wait.gone"), Day::Short);
  }
  return wait;
}

QList<QPointF> outlinePoints(const core::waits::Told& told, double hours) {
  constexpr double kHour = 60;
  QList<QPointF> points;
  const Duration until = Duration::milliseconds(std::llround(hours * kHour * kMinute));
  for (const auto& point : core::waits::outlineOf(told, until))
    points << QPointF(point.at.inMinutes() / kHour, point.height);
  return points;
}

}  // namespace app::viewmodels
