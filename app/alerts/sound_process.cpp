#include "app/alerts/sound_process.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QtDebug>
#include <algorithm>
#include <utility>

namespace app::alerts {
namespace {

constexpr int kAnswerMilliseconds = 1000;
// A fresh process loads its libraries first, on a slow tablet from a cold disk.
constexpr int kFirstAnswerMilliseconds = 4000;
constexpr int kTakenMilliseconds = 1500;
constexpr int kSilentMilliseconds = 3000;
constexpr qint64 kLivedMilliseconds = 3000;  // a player that lived so long is replaced at once
constexpr int kFirstDistance = 50;
constexpr int kLongestDistance = 4000;
// So long at most where a sound will be wanted within seconds.
constexpr int kHurriedDistance = 500;
constexpr int kMissingMilliseconds = 30'000;
// Longer than a slow voice needs: as long as the voice counts as speaking, most tones wait.
constexpr int kUnspokenMilliseconds = 4000;
constexpr int kLetterMilliseconds = 150;
// A player that crashes so often so soon is started without its voice, which is the larger part of what may crash.
constexpr qint64 kSoonMilliseconds = 15'000;
constexpr int kCrashes = 3;

using core::alerts::Sounding;

}  // namespace

SoundProcess::SoundProcess(QString program)
    : m_program(std::move(program)),
      m_process(this),
      m_again(this),
      m_unanswered(this),
      m_untaken(this),
      m_silent(this),
      m_unspoken(this) {
  for (QTimer* timer : {&m_again, &m_unanswered, &m_untaken, &m_silent, &m_unspoken}) timer->setSingleShot(true);
  m_process.setProgram(m_program);
  m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  connect(&m_again, &QTimer::timeout, this, &SoundProcess::launch);
  connect(&m_unanswered, &QTimer::timeout, this, [this] { missed(m_unanswered); });
  connect(&m_untaken, &QTimer::timeout, this, [this] { missed(m_untaken); });
  connect(&m_silent, &QTimer::timeout, this, [this] { say(Alerts::Sound::Stalled); });
  connect(&m_unspoken, &QTimer::timeout, this, [this] {
    send({sound::Command::Kind::Quiet});
    setVoice(Sounding::Voice::Absent);
  });
  connect(&m_process, &QProcess::readyReadStandardOutput, this, &SoundProcess::read);
  connect(&m_process, &QProcess::finished, this, &SoundProcess::launchAgain);
  connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
    if (error != QProcess::FailedToStart) return;
    qWarning("The sound player %s cannot be started: %s", qUtf8Printable(m_program),
             qUtf8Printable(m_process.errorString()));
    m_unanswered.stop();
    m_silent.stop();
    say(Alerts::Sound::NoDevice);
    m_again.start(kMissingMilliseconds);
  });
}

SoundProcess::~SoundProcess() {
  m_process.disconnect(this);
  // Killed, even a player that is stopped or held by a server ends within milliseconds.
  m_process.kill();
  m_process.waitForFinished(1000);
}

QString SoundProcess::besideTheProgram() {
#ifdef Q_OS_WIN
  const QString name = QStringLiteral("mountwright-sound.exe");
#else
  const QString name = QStringLiteral("mountwright-sound");
#endif
  return QDir(QCoreApplication::applicationDirPath()).filePath(name);
}

void SoundProcess::start() {
  m_silent.start(kSilentMilliseconds);
  launch();
}

void SoundProcess::launch() {
  m_hasAnswered = m_isEnded = false;
  if (m_crashes >= kCrashes) m_process.setArguments({QLatin1String(sound::kWithoutVoice)});
  m_sinceLaunch.start();
  m_process.start(QIODevice::ReadWrite);
  ping();
}

void SoundProcess::launchAgain() {
  m_unanswered.stop();
  m_untaken.stop();
  read();  // its last words
  const bool isCrash = m_process.exitStatus() == QProcess::CrashExit && !m_isEnded;
  m_crashes = isCrash && m_sinceLaunch.elapsed() < kSoonMilliseconds ? m_crashes + 1 : 0;
  setVoice(Sounding::Voice::Absent);
  // A tone under way is lost, even if the player was ready; a reported trouble remains until the next player reports
  // its state.
  if (m_sound == Alerts::Sound::Ready) say(Alerts::Sound::Starting);
  if (!m_silent.isActive()) m_silent.start(kSilentMilliseconds);
  m_distance =
      m_sinceLaunch.elapsed() > kLivedMilliseconds ? 0 : std::clamp(m_distance * 2, kFirstDistance, kLongestDistance);
  m_again.start(m_distance);
}

void SoundProcess::send(const sound::Command& command) {
  if (m_process.state() != QProcess::NotRunning) m_process.write(sound::line(command));
}

void SoundProcess::play(sound::Tone tone, double decibels) {
  send({sound::Command::Kind::Play, tone, decibels});
  m_untaken.start(kTakenMilliseconds);
}

void SoundProcess::hush() {
  m_untaken.stop();
  send({sound::Command::Kind::Hush});
}

void SoundProcess::drop() {
  m_untaken.stop();
  send({sound::Command::Kind::Drop});
}

void SoundProcess::prepare() {
  if (m_again.isActive() && m_again.interval() <= kLongestDistance && m_again.remainingTime() > kHurriedDistance) {
    m_again.start(kHurriedDistance);
  }
  send({sound::Command::Kind::Prepare});
}

void SoundProcess::ping() {
  if (m_process.state() == QProcess::NotRunning || m_unanswered.isActive()) return;
  send({sound::Command::Kind::Ping});
  m_unanswered.start(m_hasAnswered ? kAnswerMilliseconds : kFirstAnswerMilliseconds);
}

void SoundProcess::missed(QTimer& timer) {
  // Where this thread itself was held up, the answer lies there unread: one more turn of the event loop reads it.
  if (timer.interval() > 0) {
    timer.start(0);
    return;
  }
  say(Alerts::Sound::Stalled);
  end();
}

void SoundProcess::end() {
  m_isEnded = true;
  m_process.kill();
}

void SoundProcess::say(const QString& text) {
  if (m_voice == Sounding::Voice::Absent) return;
  sound::Command command{sound::Command::Kind::Say};
  command.number = ++m_number;
  command.text = text.toUtf8();
  send(command);
  m_voice = Sounding::Voice::Speaking;
  m_unspoken.start(kUnspokenMilliseconds + kLetterMilliseconds * static_cast<int>(text.size()));
}

void SoundProcess::quiet() {
  if (m_voice != Sounding::Voice::Speaking) return;
  m_unspoken.stop();
  send({sound::Command::Kind::Quiet});
  m_voice = Sounding::Voice::Idle;
}

void SoundProcess::setVoice(Sounding::Voice voice) {
  m_unspoken.stop();
  if (voice == m_voice) return;
  m_voice = voice;
  emit voiceChanged();
}

void SoundProcess::read() {
  while (m_process.canReadLine()) {
    if (const auto answer = sound::readAnswer(m_process.readLine())) take(*answer);
  }
}

void SoundProcess::take(const sound::Answer& answer) {
  switch (answer.kind) {
    case sound::Answer::Kind::Pong:
      m_unanswered.stop();
      m_hasAnswered = true;
      emit beat();
      return;
    case sound::Answer::Kind::Taken: m_untaken.stop(); return;
    case sound::Answer::Kind::Voice: setVoice(Sounding::Voice::Idle); return;
    case sound::Answer::Kind::NoVoice: setVoice(Sounding::Voice::Absent); return;
    case sound::Answer::Kind::Spoken:
      // The end of words that were cut short may be reported while the next are being spoken. Even late, it shows that
      // the voice works.
      if (answer.number == m_number) setVoice(Sounding::Voice::Idle);
      return;
    case sound::Answer::Kind::State: break;
  }
  m_silent.stop();
  switch (answer.state) {
    case sound::State::Ready: say(Alerts::Sound::Ready); return;
    case sound::State::NoDevice: say(Alerts::Sound::NoDevice); return;
    case sound::State::Stalled: say(Alerts::Sound::Stalled); return;
    case sound::State::Muted: say(Alerts::Sound::Muted); return;
  }
}

void SoundProcess::say(Alerts::Sound sound) {
  if (sound == m_sound) return;
  m_sound = sound;
  if (sound != Alerts::Sound::Ready) m_untaken.stop();
  emit soundChanged(sound);
}

}  // namespace app::alerts
