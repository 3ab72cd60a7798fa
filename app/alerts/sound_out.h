#pragma once
// The one long-lived way out to the loudspeaker: owns the sink, watches the devices and says whether a sound would
// be heard. Lives in a thread of its own, because the multimedia library may block on a sound server that hangs.
#include <QAudioDevice>
#include <QAudioSink>
#include <QByteArray>
#include <QElapsedTimer>
#include <QObject>
#include <QSemaphore>
#include <QTimer>
#include <atomic>
#include <memory>

#include "app/alerts/alerts.h"
#include "app/sound/player.h"

namespace app::alerts {

class SoundOut : public QObject {
  Q_OBJECT

 public:
  // `player` outlives it.
  explicit SoundOut(sound::Player& player);
  ~SoundOut() override;

  // In the sound thread: looks for a device and goes on looking.
  void start();
  // From any thread: ends a wait for the server, so that the thread can be ended.
  void requestStop();
  // From any thread: grows while the sound thread is alive.
  unsigned beats() const { return m_beats.load(std::memory_order_relaxed); }

 signals:
  // Starting, Ready, NoDevice or Stalled.
  void soundChanged(app::alerts::Alerts::Sound sound);

 private:
  class Source;

  void look();
  void waitForServer();
  void open(const QAudioDevice& device);
  void shut();
  void watchProgress();
  void say(Alerts::Sound sound);

  sound::Player& m_player;
  std::unique_ptr<Source> m_source;
  std::unique_ptr<QAudioSink> m_sink;  // after its source: it goes first
  QByteArray m_deviceId;
  QTimer m_timer;
  QElapsedTimer m_sinceProgress;
  qint64 m_processed = -1;
  qint64 m_taken = -1;
  int m_reopenings = 0;  // since sound last went through
  Alerts::Sound m_sound = Alerts::Sound::Starting;
  std::atomic<unsigned> m_beats = 0;
  QSemaphore m_stop;
};

}  // namespace app::alerts
