#pragma once
// The one way out to the loudspeaker: owns the sink and reports whether a sound would be heard. It lives in a process
// of its own and never mends a connection or a sink that has failed: it asks to be replaced (`failed`), because the
// multimedia library connects to a server once in a process. Where the library blocks on a server that hangs, this
// blocks with it; the missing answer to a ping shows it.
#include <QAudioSink>
#include <QByteArray>
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "app/sound/player.h"
#include "app/sound/protocol.h"
#include "app/sound/server_watch.h"

namespace app::sound {

class SoundOut : public QObject {
  Q_OBJECT

 public:
  SoundOut();
  ~SoundOut() override;

  // Looks for a server and goes on looking.
  void start();
  void obey(const Command& command);

 signals:
  void said(const app::sound::Answer& answer);
  void failed(int exitStatus);

 private:
  class Source;

  void lookForServer();
  void lookLater();
  void takeOutlet(const Outlet& outlet);
  void follow();
  bool open();
  void rest();
  void shut();
  void watchProgress();
  void warm();
  void say(State state);
  void fail(int exitStatus);

  Player m_player;
  std::unique_ptr<Source> m_source;
  std::unique_ptr<QAudioSink> m_sink;  // declared after its source, so that it is destroyed first
  QByteArray m_device;                 // of the sink, also while it is stopped
  std::unique_ptr<ServerWatch> m_watch;
  QTimer m_look;
  QTimer m_unanswered;
  QTimer m_muting;
  QTimer m_progress;  // runs while the sink does
  QElapsedTimer m_sinceLooking;
  QElapsedTimer m_sinceProgress;
  QElapsedTimer m_sinceWanted;
  qint64 m_processed = 0;
  qint64 m_taken = 0;
  bool m_proven = false;  // this device has taken samples
  bool m_isOwed = false;  // a call whose samples were not yet reported as taken
  Outlet m_outlet;
  std::optional<State> m_state;
  bool m_isConnected = false;
};

}  // namespace app::sound
