#pragma once
// The alert thread's own object: asks the rules what to sound, sets the timer and tells the player. It waits for
// nobody: neither the interface nor the sound thread.
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>

#include "app/alerts/alerts.h"
#include "app/alerts/boottime_timer.h"
#include "app/alerts/sound_out.h"
#include "app/sound/player.h"
#include "core/record/sounding.h"

namespace app::alerts {

class AlertLoop : public QObject {
  Q_OBJECT

 public:
  AlertLoop(std::function<std::int64_t()> boottimeNow, sound::Player& player, const SoundOut& out);

  // All in the alert thread.
  void start();
  void publish(std::shared_ptr<const core::record::AlertSchedule> schedule);
  void releaseHeld();
  void takeSound(app::alerts::Alerts::Sound sound);

 signals:
  void dueChanged(std::shared_ptr<const core::record::AlertSchedule> due);
  void soundChanged(app::alerts::Alerts::Sound sound);

 private:
  void turn();
  void tick();
  void judgeSound();

  const std::function<std::int64_t()> m_boottimeNow;
  sound::Player& m_player;
  const SoundOut& m_out;
  core::record::Sounding m_sounding;
  BoottimeTimer m_timer;
  QTimer m_tick;
  std::shared_ptr<const core::record::AlertSchedule> m_due = std::make_shared<core::record::AlertSchedule>();
  Alerts::Sound m_outSound = Alerts::Sound::Starting;
  Alerts::Sound m_sound = Alerts::Sound::Starting;
  unsigned m_beats = 0;
  QElapsedTimer m_sinceBeat;
};

}  // namespace app::alerts
