#include "app/sound/sound_out.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QIODevice>
#include <QMediaDevices>

#include "app/sound/sound_server.h"

namespace app::sound {
namespace {

constexpr int kSampleRate = 48'000;
constexpr int kChannels = 2;
// 100 ms of two channels of 16 bits at 48 kHz. With half of it a busy machine leaves holes in the tones, and some
// servers fall silent without an error; with more the silence already queued delays the tone.
constexpr int kBufferBytes = 19200;

// A server that went is mostly back at once; one that was never there is not worth waking for.
constexpr int kLookSoonMilliseconds = 200;
constexpr int kLookLaterMilliseconds = 1000;
constexpr qint64 kSoonMilliseconds = 30'000;
constexpr int kKnockMilliseconds = 3000;
constexpr int kUnansweredMilliseconds = 1000;
constexpr int kProgressMilliseconds = 250;
// A stream is silent while the server still links it, and a mixer passes zero on the way elsewhere.
constexpr int kMutingMilliseconds = 400;
constexpr qint64 kStallMilliseconds = 1000;
// The running sink wakes two processes fifty times a second: it rests when nothing has been wanted for so long.
constexpr qint64 kRestMilliseconds = 5000;

std::optional<QAudioDevice> deviceNamed(const QByteArray& id) {
  for (const QAudioDevice& device : QMediaDevices::audioOutputs()) {
    if (device.id() == id) return device;
  }
  return std::nullopt;
}

}  // namespace

// An endless source: the player's samples, else silence.
class SoundOut::Source : public QIODevice {
 public:
  explicit Source(Player& player) : m_player(player) { open(QIODevice::ReadOnly | QIODevice::Unbuffered); }
  bool isSequential() const override { return true; }
  qint64 bytesAvailable() const override { return kBufferBytes; }
  qint64 taken() const { return m_taken; }

 protected:
  qint64 readData(char* data, qint64 size) override {
    constexpr qint64 kFrame = kChannels * static_cast<qint64>(sizeof(std::int16_t));
    const qint64 frames = size / kFrame;
    m_player.take(reinterpret_cast<std::int16_t*>(data), static_cast<std::size_t>(frames), kChannels);
    m_taken += frames;
    return frames * kFrame;
  }
  qint64 writeData(const char*, qint64) override { return -1; }

 private:
  Player& m_player;
  qint64 m_taken = 0;
};

SoundOut::SoundOut() : m_player(kSampleRate), m_source(std::make_unique<Source>(m_player)) {
  m_unanswered.setSingleShot(true);
  m_muting.setSingleShot(true);
  connect(&m_muting, &QTimer::timeout, this, [this] { say(State::Muted); });
  connect(&m_look, &QTimer::timeout, this, &SoundOut::lookForServer);
  connect(&m_unanswered, &QTimer::timeout, this, [this] { say(State::Stalled); });
  connect(&m_progress, &QTimer::timeout, this, &SoundOut::watchProgress);
}

SoundOut::~SoundOut() { shut(); }

void SoundOut::start() {
  m_sinceLooking.start();
  m_sinceWanted.start();
  lookForServer();
}

void SoundOut::lookForServer() {
  if (!soundServerAnswers()) {
    say(State::NoDevice);
    m_look.start(m_sinceLooking.elapsed() < kSoonMilliseconds ? kLookSoonMilliseconds : kLookLaterMilliseconds);
    return;
  }
  m_look.stop();
  m_watch = std::make_unique<ServerWatch>();
  connect(m_watch.get(), &ServerWatch::changed, this, &SoundOut::takeOutlet, Qt::QueuedConnection);
  connect(
      m_watch.get(), &ServerWatch::lost, this,
      [this] {
        // One that never answered hangs for all we know.
        if (m_state != State::Stalled) say(State::NoDevice);
        // Where there was never one, nothing in this process has taken harm: a fresh one would find no more.
        if (m_isConnected || m_state == State::Stalled) {
          fail(kServerLost);
        } else {
          lookLater();
        }
      },
      Qt::QueuedConnection);
  // From the watch's thread: this one need not be woken.
  connect(
      m_watch.get(), &ServerWatch::answered, this, [this] { emit said(Answer{}); }, Qt::DirectConnection);
  m_unanswered.start(kUnansweredMilliseconds);
  m_watch->start();
}

// Where nothing shows beforehand whether a server is there, each look takes a connection of its own.
void SoundOut::lookLater() {
  m_unanswered.stop();
  m_watch.reset();
  m_look.start(kKnockMilliseconds);
}

void SoundOut::takeOutlet(const Outlet& outlet) {
  m_unanswered.stop();
  m_isConnected = true;
  m_outlet = outlet;
  follow();
}

void SoundOut::follow() {
  if (m_outlet.device.isEmpty()) {
    shut();
    m_muting.stop();
    say(State::NoDevice);
    return;
  }
  if (m_device != m_outlet.device) {
    shut();
    m_proven = false;
    if (!open()) return;
  }
  if (m_outlet.muted) {
    if (m_state != State::Muted && !m_muting.isActive()) m_muting.start(kMutingMilliseconds);
    return;
  }
  m_muting.stop();
  if (m_proven) say(State::Ready);
}

bool SoundOut::open() {
  const auto device = deviceNamed(m_outlet.device);
  if (!device) {
    // The library's own list lags behind or has lost its server: a fresh process reads it anew.
    fail(kSinkFailed);
    return false;
  }
  QAudioFormat format;
  format.setSampleRate(kSampleRate);
  format.setChannelCount(kChannels);
  format.setSampleFormat(QAudioFormat::Int16);
  m_sink = std::make_unique<QAudioSink>(*device, format);
  m_sink->setBufferSize(kBufferBytes);
  m_device = m_outlet.device;
  m_sinceWanted.restart();
  m_sink->start(m_source.get());
  if (m_sink->state() == QAudio::StoppedState) {
    fail(kSinkFailed);
    return false;
  }
  m_processed = 0;
  m_taken = m_source->taken();
  m_sinceProgress.start();
  m_progress.start(m_proven ? kProgressMilliseconds : kProgressMilliseconds / 5);
  return true;
}

void SoundOut::rest() {
  m_progress.stop();
  // Never started again: a sink that was stopped plays a second or two of its next stream and then no more.
  m_sink->stop();
  m_sink.reset();
}

void SoundOut::shut() {
  m_progress.stop();
  m_device.clear();
  if (!m_sink) return;
  m_sink->stop();
  m_sink.reset();
}

void SoundOut::watchProgress() {
  if (m_sink->state() == QAudio::StoppedState) {
    fail(kSinkFailed);
    return;
  }
  const qint64 processed = m_sink->processedUSecs();
  // The library partly derives the processed time from the clock, so it advances even while the server hangs; the count
  // of samples taken from the source does not.
  if (processed > m_processed && m_source->taken() > m_taken) {
    m_processed = processed;
    m_taken = m_source->taken();
    m_sinceProgress.restart();
    if (!m_proven) {
      m_proven = true;
      m_progress.start(kProgressMilliseconds);
      follow();
    }
    if (m_player.playing() || m_isOwed) {
      m_isOwed = false;
      m_sinceWanted.restart();
      emit said({Answer::Kind::Taken, State::Ready, m_taken});
    }
  }
  if (m_sinceProgress.elapsed() > kStallMilliseconds) {
    say(State::Stalled);
    fail(kSinkFailed);
  } else if (m_proven && m_sinceWanted.elapsed() > kRestMilliseconds) {
    rest();
  }
}

void SoundOut::warm() {
  m_sinceWanted.restart();
  if (!m_device.isEmpty() && !m_sink) open();
}

void SoundOut::obey(const Command& command) {
  switch (command.kind) {
    case Command::Kind::Play:
      m_player.play(command.tone, command.decibels);
      m_isOwed = true;
      warm();
      return;
    case Command::Kind::Hush:
      if (m_sink) {
        m_player.hush();
      } else {
        m_player.drop();
      }
      return;
    case Command::Kind::Drop: m_player.drop(); return;
    case Command::Kind::Prepare: warm(); return;
    case Command::Kind::Ping:
      if (m_isConnected) {
        m_watch->ask();
      } else {
        emit said(Answer{});
      }
      return;
    case Command::Kind::Say:
    case Command::Kind::Quiet: return;  // the voice's
  }
}

void SoundOut::say(State state) {
  if (m_state == state) return;
  m_state = state;
  emit said({Answer::Kind::State, state, 0});
}

void SoundOut::fail(int exitStatus) { emit failed(exitStatus); }

}  // namespace app::sound
