#include "app/alerts/sound_out.h"

#include <QAudioFormat>
#include <QIODevice>
#include <QMediaDevices>

#include "app/sound/sound_server.h"

namespace app::alerts {
namespace {

constexpr int kLookMilliseconds = 1000;
constexpr int kServerMilliseconds = 500;
constexpr int kSoonMilliseconds = 50;  // after opening: whether it really takes samples
constexpr qint64 kStallMilliseconds = 2000;
constexpr qint64 kReopenStalledMilliseconds = 30'000;
constexpr int kChannels = 2;
// 50 ms of two channels of 16 bits at 48 kHz: below that some servers fall silent without an error, above it the
// silence already queued delays the tone.
constexpr int kBufferBytes = 9600;

// A sound server without hardware shows a device that leads nowhere.
bool leadsNowhere(const QAudioDevice& device) {
  return device.isNull() || device.id() == "auto_null" || device.description() == QLatin1String("Dummy Output");
}

QAudioDevice usableDevice() {
  const QAudioDevice preferred = QMediaDevices::defaultAudioOutput();
  if (!leadsNowhere(preferred)) return preferred;
  for (const QAudioDevice& device : QMediaDevices::audioOutputs()) {
    if (!leadsNowhere(device)) return device;
  }
  return {};
}

}  // namespace

// Endless: what the player says, else silence.
class SoundOut::Source : public QIODevice {
 public:
  explicit Source(sound::Player& player) : m_player(player) { open(QIODevice::ReadOnly | QIODevice::Unbuffered); }
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
  sound::Player& m_player;
  qint64 m_taken = 0;
};

SoundOut::SoundOut(sound::Player& player) : m_player(player), m_timer(this) {
  connect(&m_timer, &QTimer::timeout, this, &SoundOut::look);
}

SoundOut::~SoundOut() { shut(); }

void SoundOut::start() {
  m_source = std::make_unique<Source>(m_player);
  m_timer.start(kLookMilliseconds);
  look();
}

void SoundOut::requestStop() { m_stop.release(); }

void SoundOut::say(Alerts::Sound sound) {
  if (sound == m_sound) return;
  m_sound = sound;
  m_timer.setInterval(kLookMilliseconds);
  emit soundChanged(sound);
}

void SoundOut::shut() {
  if (!m_sink) return;
  m_sink->disconnect(this);
  m_sink->stop();
  m_sink.reset();
  m_deviceId.clear();
}

void SoundOut::waitForServer() {
  // Events of the multimedia library stay queued meanwhile: its one attempt to connect again, three seconds after
  // a server went, would fail and be the last.
  while (!sound::soundServerAnswers()) {
    ++m_beats;
    if (m_stop.tryAcquire(1, kServerMilliseconds)) {
      m_stop.release();
      return;
    }
  }
}

void SoundOut::look() {
  ++m_beats;
  if (!sound::soundServerAnswers()) {
    shut();
    say(Alerts::Sound::NoDevice);
    waitForServer();
    return;
  }
  const QAudioDevice device = usableDevice();
  if (device.isNull()) {
    shut();
    say(Alerts::Sound::NoDevice);
    return;
  }
  if (m_sink && (m_sink->state() == QAudio::StoppedState || device.id() != m_deviceId)) shut();
  if (m_sink) {
    watchProgress();
  } else {
    m_reopenings = 0;
    open(device);
  }
}

void SoundOut::open(const QAudioDevice& device) {
  QAudioFormat format;
  format.setSampleRate(m_player.sampleRate());
  format.setChannelCount(kChannels);
  format.setSampleFormat(QAudioFormat::Int16);
  m_sink = std::make_unique<QAudioSink>(device, format);
  m_sink->setBufferSize(kBufferBytes);
  m_sink->start(m_source.get());
  if (m_sink->error() == QAudio::OpenError || m_sink->error() == QAudio::FatalError) {
    shut();
    say(Alerts::Sound::NoDevice);
    return;
  }
  m_deviceId = device.id();
  m_processed = 0;
  m_taken = m_source->taken();
  m_sinceProgress.start();
  if (m_sound != Alerts::Sound::Ready) m_timer.setInterval(kSoonMilliseconds);
}

void SoundOut::watchProgress() {
  const qint64 processed = m_sink->processedUSecs();
  // What was processed is partly reckoned from the time of day and goes on beside a server that hangs; what is taken
  // out of our hands does not.
  if (processed > m_processed && m_source->taken() > m_taken) {
    m_processed = processed;
    m_taken = m_source->taken();
    m_sinceProgress.restart();
    m_reopenings = 0;
    say(Alerts::Sound::Ready);
    return;
  }
  if (m_sinceProgress.elapsed() < kStallMilliseconds) return;
  if (m_reopenings > 0) {
    say(Alerts::Sound::Stalled);
    if (m_sinceProgress.elapsed() < kReopenStalledMilliseconds) return;
  }
  ++m_reopenings;
  shut();
  open(usableDevice());
}

}  // namespace app::alerts
