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
#include "core/alerts/sounding.h"

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
  // Lost where there is no voice. The voice is Speaking from now on until the words are over or are given up.
  void say(const QString& text);
  void quiet();
  core::alerts::Sounding::Voice voice() const { return m_voice; }
  // Asks for a sign of life; one that is not given in time ends the player, and a fresh one is started.
  void ping();

 signals:
  // Not Starting; that is what it is until the first of these.
  void soundChanged(app::alerts::Alerts::Sound sound);
  // The player, and the server where there is one, have answered a ping.
  void beat();
  // Not by `say` and `quiet`.
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
  QTimer m_untaken;   // from a call until the server has taken some of it
  QTimer m_silent;    // from the loss of a player until a fresh one says how it is
  QTimer m_unspoken;  // from words being given out until they are taken for lost
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
