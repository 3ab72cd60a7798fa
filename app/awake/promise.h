#pragma once
// A service of the message bus that is asked for its word, gives it or does not, and is let go again.
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
  // What an answer gave, as the way to give it back; null where the answer is not understood.
  using Take = std::function<LetGo(const QDBusConnection& connection, const QDBusMessage& answer)>;

  Promise(QDBusMessage question, Take take);
  // Gives back what it holds.
  ~Promise() override;

  // Null when the bus is gone, and all that was promised over it.
  void connectTo(const QDBusConnection* connection);
  void want(bool wanted);
  // Asks again where it was refused.
  void tryAgain();
  // The service takes its word back.
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
