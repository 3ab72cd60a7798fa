#pragma once
// The alert thread's own object: asks the rules what to sound, sets the timer and commands the player. It waits neither
// for the interface nor for the player.
#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>

#include "app/alerts/alerts.h"
#include "app/alerts/boottime_timer.h"
#include "app/alerts/sound_process.h"
#include "core/alerts/sounding.h"

namespace app::alerts {

class AlertLoop : public QObject {
  Q_OBJECT

 public:
  // `player` is the player's file.
  AlertLoop(std::function<std::int64_t()> boottimeNow, const QString& player);

  // These are called in the alert thread only.
  void start();
  void publish(std::shared_ptr<const core::alerts::AlertSchedule> schedule);
  void releaseHeld();
  void tryOut();

 signals:
  void dueChanged(std::shared_ptr<const core::alerts::AlertSchedule> due);
  void soundChanged(app::alerts::Alerts::Sound sound);
  void beat();

 private:
  // Returns when a tone that is sent now is heard.
  std::int64_t heardAt() const;
  void turn();
  void takeSound(Alerts::Sound sound);
  void setTimers(std::int64_t wake);

  const std::function<std::int64_t()> m_boottimeNow;
  SoundProcess m_player;
  core::alerts::Sounding m_sounding;
  BoottimeTimer m_timer;
  QTimer m_tick;
  std::shared_ptr<const core::alerts::AlertSchedule> m_due = std::make_shared<core::alerts::AlertSchedule>();
  Alerts::Sound m_sound = Alerts::Sound::Starting;
};

}  // namespace app::alerts
