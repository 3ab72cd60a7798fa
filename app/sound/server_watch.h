#pragma once
// Reports the state of the sound server: the outlet sound would be played on, whether it is muted there, and that the
// server has ended. The multimedia library reports none of this.
#include <QByteArray>
#include <QObject>
#include <memory>

namespace app::sound {

struct Outlet {
  QByteArray device;   // the server's name for it, as the multimedia library's device id; empty: there is none
  bool muted = false;  // muted or at volume zero: the device, or our own stream in the mixer
  friend bool operator==(const Outlet&, const Outlet&) = default;
};

class ServerWatch : public QObject {
  Q_OBJECT

 public:
  explicit ServerWatch(QObject* parent = nullptr);
  ~ServerWatch() override;

  // Connects, once. `changed` is emitted when the server has answered, `lost` where it does not or no longer does.
  void start();
  // Asks for a sign of life: `answered` follows where the server lives.
  void ask();

 signals:
  // It may be emitted from a thread of the watch's own; connect with care. `changed` is emitted only after a real
  // change.
  void changed(const app::sound::Outlet& outlet);
  void lost();
  void answered();

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::sound
