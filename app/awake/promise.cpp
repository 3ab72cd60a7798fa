#include "app/awake/promise.h"

#include <QDBusPendingCallWatcher>
#include <limits>

namespace app::awake {
namespace {

// An answer is waited for as long as the bus stands: one that came after a shorter wait would be lost, and what it
// promised could never be given back.
constexpr int kForEver = std::numeric_limits<int>::max();

}  // namespace

Promise::Promise(QDBusMessage question, Take take) : m_question(std::move(question)), m_take(std::move(take)) {}

Promise::~Promise() { giveBack(); }

void Promise::connectTo(const QDBusConnection* connection) {
  ++m_course;
  m_asking = m_refused = false;
  m_letGo = nullptr;
  m_connection.reset();
  if (connection != nullptr) m_connection.emplace(*connection);
  ask();
}

void Promise::want(bool wanted) {
  if (m_wanted == wanted) return;
  m_wanted = wanted;
  m_refused = false;
  wanted ? ask() : giveBack();
}

void Promise::tryAgain() {
  m_refused = false;
  ask();
}

void Promise::broken() {
  m_letGo = nullptr;
  m_refused = true;
  emit changed();
}

void Promise::ask() {
  if (!m_connection || !m_wanted || m_asking || m_refused || held()) return;
  m_asking = true;
  // The same question may be asked again: a message that was sent has a number of its own.
  QDBusMessage question = QDBusMessage::createMethodCall(m_question.service(), m_question.path(),
                                                         m_question.interface(), m_question.member());
  question.setArguments(m_question.arguments());
  auto* watcher = new QDBusPendingCallWatcher(m_connection->asyncCall(question, kForEver), this);
  connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, course = m_course] {
    watcher->deleteLater();
    if (course == m_course) answered(watcher->reply());
  });
}

void Promise::answered(const QDBusMessage& answer) {
  m_asking = false;
  if (answer.type() == QDBusMessage::ReplyMessage) m_letGo = m_take(*m_connection, answer);
  if (!m_wanted) {
    giveBack();
  } else {
    m_refused = !held();
  }
  emit changed();
}

void Promise::giveBack() {
  if (!m_letGo) return;
  const LetGo letGo = std::move(m_letGo);
  m_letGo = nullptr;
  letGo();
}

}  // namespace app::awake
