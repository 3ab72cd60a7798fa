#pragma once
// Starts the process that plays sounds, keeps it alive and says whether a sound would be heard. It lives in the
// alert thread and waits for nobody: whatever the player or the sound server do, every call returns at once.
#include <QElapsedTimer>
#include <QObject>
#include <QProcess>
#include <QString>
#include <QTimer>

#include "app/alerts/alerts.h"
#include "app/sound/protocol.h"

namespace app::alerts {

class SoundProcess : public QObject {
  Q_OBJECT

 public:
  // `program` is the player's file.
  explicit SoundProcess(QString program);
  ~SoundProcess() override;

  // The player beside the running program.
  static QString besideTheProgram();

  void start();
  // Lost where no player runs: whoever calls sees from `soundChanged` that it was not heard.
  void play(sound::Tone tone, double decibels);
  void hush();
  void drop();
  // A sound will be wanted within seconds.
  void prepare();
  // Asks for a sign of life; one that is not given in time ends the player, and a fresh one is started.
  void ping();

 signals:
  // Not Starting; that is what it is until the first of these.
  void soundChanged(app::alerts::Alerts::Sound sound);
  // The player, and the server where there is one, have answered a ping.
  void beat();

 private:
  void launch();
  void launchAgain();
  void send(const sound::Command& command);
  void read();
  void take(const sound::Answer& answer);
  void say(Alerts::Sound sound);
  void missed(QTimer& timer);

  const QString m_program;
  QProcess m_process;
  QTimer m_again;
  QTimer m_unanswered;
  QTimer m_untaken;  // from a call until the server has taken some of it
  QTimer m_silent;   // from the loss of a player until a fresh one says how it is
  QElapsedTimer m_sinceLaunch;
  int m_distance = 0;  // milliseconds until the next launch
  bool m_hasAnswered = false;
  Alerts::Sound m_sound = Alerts::Sound::Starting;
};

}  // namespace app::alerts
