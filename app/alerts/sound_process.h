#pragma once
// Starts the process that plays sounds, keeps it alive and reports whether a sound would be heard. It lives in the
// alert thread and never blocks: every call returns at once, even when the player or the sound server hangs.
#include <QElapsedTimer>
#include <QObject>
#include <QProcess>
#include <QString>
#include <QTimer>

#include "app/alerts/alerts.h"
#include "app/sound/protocol.h"
#include "core/alerts/sounding.h"

namespace app::alerts {

class SoundProcess : public QObject {
  Q_OBJECT

 public:
  // `program` is the player's file.
  explicit SoundProcess(QString program);
  ~SoundProcess() override;

  // Returns the player beside the running program.
  static QString besideTheProgram();

  void start();
  // The tone is lost where no player runs: `soundChanged` shows the caller that it was not heard.
  void play(sound::Tone tone, double decibels);
  void hush();
  void drop();
  // A sound will be wanted within seconds.
  void prepare();
  // The text is lost where there is no voice. The voice is Speaking from now on until the words are over or are given
  // up.
  void say(const QString& text);
  void quiet();
  core::alerts::Sounding::Voice voice() const { return m_voice; }
  // Asks for a sign of life; one that is not given in time ends the player, and a fresh one is started.
  void ping();

 signals:
  // Never emitted with Starting, which is the state until the first of these.
  void soundChanged(app::alerts::Alerts::Sound sound);
  // The player, and the server where there is one, have answered a ping.
  void beat();
  // The caller's own `say` and `quiet` do not emit it.
  void voiceChanged();

 private:
  void launch();
  void launchAgain();
  void send(const sound::Command& command);
  void read();
  void take(const sound::Answer& answer);
  void say(Alerts::Sound sound);
  void missed(QTimer& timer);
  void end();
  void setVoice(core::alerts::Sounding::Voice voice);

  const QString m_program;
  QProcess m_process;
  QTimer m_again;
  QTimer m_unanswered;
  QTimer m_untaken;   // from a call until the server has accepted some of it
  QTimer m_silent;    // from the loss of a player until a fresh one reports its state
  QTimer m_unspoken;  // from words being sent until they are given up as lost
  QElapsedTimer m_sinceLaunch;
  int m_distance = 0;  // milliseconds until the next launch
  bool m_hasAnswered = false;
  bool m_isEnded = false;  // by us
  int m_crashes = 0;       // in a row, soon after the start
  int m_number = 0;        // of the words given out last
  core::alerts::Sounding::Voice m_voice = core::alerts::Sounding::Voice::Absent;
  Alerts::Sound m_sound = Alerts::Sound::Starting;
};

}  // namespace app::alerts
