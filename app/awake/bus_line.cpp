#include "app/awake/bus_line.h"

#include <QThread>
#include <atomic>

#include "app/aside/aside.h"
#include "app/awake/bus_knock.h"

namespace app::awake {
namespace {

constexpr std::chrono::milliseconds kPatience{2000};

// The bus library calls slots by name and waits for its own thread when one is connected, so this is made, connected
// and handed over beside the thread it then lives in.
class Ears : public QObject {
  Q_OBJECT

 public slots:
  void hear(const QDBusMessage& message) { emit heard(message); }
  void notice() { emit cut(); }

 signals:
  void heard(const QDBusMessage& message);
  void cut();
};

QString newName() {
  static std::atomic<int> count = 0;
  return QStringLiteral("mountwright-awake-%1").arg(++count);
}

}  // namespace

struct BusLine::Open {
  QString name = newName();
  QDBusConnection connection;
  Ears* ears = new Ears;

  explicit Open(const QString& address) : connection(QDBusConnection::connectToBus(address, name)) {}
  Open(const Open&) = delete;
  Open& operator=(const Open&) = delete;
  ~Open() {
    if (ears->thread() == QThread::currentThread()) {
      delete ears;
    } else {
      ears->deleteLater();
    }
    QDBusConnection::disconnectFromBus(name);
  }

  bool listen(const std::vector<Signal>& signalsHeard) {
    // No sender is asked for: the library would look for its owner and wait for the answer.
    bool listening = connection.connect({}, QStringLiteral("/org/freedesktop/DBus/Local"),
                                        QStringLiteral("org.freedesktop.DBus.Local"), QStringLiteral("Disconnected"),
                                        ears, SLOT(notice()));
    for (const Signal& each : signalsHeard) {
      listening = connection.connect({}, each.path, each.interface, each.name, each.arguments, {}, ears,
                                     SLOT(hear(QDBusMessage))) &&
                  listening;
    }
    return listening;
  }
};

BusLine::BusLine(QString addresses, std::vector<Signal> signalsHeard)
    : m_addresses(std::move(addresses)), m_signals(std::move(signalsHeard)) {}

BusLine::~BusLine() = default;

const QDBusConnection* BusLine::connection() const { return m_open ? &m_open->connection : nullptr; }

void BusLine::open() {
  if (m_open || m_opening) return;
  m_opening = true;
  aside::aside(this, [this, addresses = m_addresses, heardSignals = m_signals, home = thread()]() -> aside::Told {
    std::shared_ptr<Open> open;
    if (const QString address = answeringAddress(addresses, kPatience); !address.isEmpty()) {
      open = std::make_shared<Open>(address);
      if (!open->connection.isConnected() || !open->listen(heardSignals)) open.reset();
    }
    if (open) open->ears->moveToThread(home);
    return [this, open] { take(open); };
  });
}

void BusLine::take(std::shared_ptr<Open> open) {
  m_opening = false;
  m_open = std::move(open);
  if (m_open) {
    connect(m_open->ears, &Ears::heard, this, &BusLine::heard);
    connect(
        m_open->ears, &Ears::cut, this,
        [this] {
          m_open.reset();
          emit changed();
        },
        Qt::QueuedConnection);  // not while its own ears speak
  }
  emit changed();
}

}  // namespace app::awake

#include "bus_line.moc"
