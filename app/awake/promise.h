#pragma once
// A service of the message bus that is asked for a promise, grants or refuses it, and is released again.
#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>
#include <functional>
#include <optional>

namespace app::awake {

class Promise : public QObject {
  Q_OBJECT

 public:
  using LetGo = std::function<void()>;
  // Returns the function that gives back what an answer granted; null where the answer is not understood.
  using Take = std::function<LetGo(const QDBusConnection& connection, const QDBusMessage& answer)>;

  Promise(QDBusMessage question, Take take);
  // Gives back the promise it holds.
  ~Promise() override;

  // `connection` is null when the bus is gone, and with it everything that was promised over it.
  void connectTo(const QDBusConnection* connection);
  void want(bool wanted);
  // Asks again where it was refused.
  void tryAgain();
  // To be called when the service withdraws its promise.
  void broken();

  bool held() const { return m_letGo != nullptr; }
  bool asking() const { return m_asking; }
  bool refused() const { return m_refused; }

 signals:
  void changed();

 private:
  void ask();
  void answered(const QDBusMessage& answer);
  void giveBack();

  QDBusMessage m_question;
  Take m_take;
  std::optional<QDBusConnection> m_connection;
  int m_course = 0;  // counts connections: an answer that came over an earlier one is dropped
  bool m_wanted = false;
  bool m_asking = false;
  bool m_refused = false;
  LetGo m_letGo;
};

}  // namespace app::awake
