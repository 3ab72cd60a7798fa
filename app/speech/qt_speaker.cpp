#include "app/speech/qt_speaker.h"

#include <QLocale>
#include <utility>

namespace app::speech {
namespace {

#ifdef Q_OS_LINUX
const QString kEngine = QStringLiteral("speechd");
#else
const QString kEngine;  // there is but one
#endif

// The service speaks within a tenth of a second; one that is gone gives neither words nor an error.
constexpr int kUnbegunMilliseconds = 3000;
constexpr int kAgainMilliseconds = 60'000;

}  // namespace

QtSpeaker::QtSpeaker(QObject* parent) : Speaker(parent), m_unbegun(this), m_again(this) {
  m_unbegun.setSingleShot(true);
  m_again.setSingleShot(true);
  connect(&m_unbegun, &QTimer::timeout, this, &QtSpeaker::lose);
  connect(&m_again, &QTimer::timeout, this, &QtSpeaker::start);
}

QtSpeaker::~QtSpeaker() = default;

void QtSpeaker::start() {
  const QStringList engines = QTextToSpeech::availableEngines();
  if (engines.isEmpty() || (!kEngine.isEmpty() && !engines.contains(kEngine))) {
    emit lost();  // for good: nobody installs one while the program runs
    return;
  }
  m_engine = std::make_unique<QTextToSpeech>(kEngine);
  if (m_engine->state() != QTextToSpeech::Ready) {
    lose();
    return;
  }
  // The words are English whatever the system speaks.
  m_engine->setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
  connect(m_engine.get(), &QTextToSpeech::stateChanged, this, &QtSpeaker::takeState);
  emit found();
}

void QtSpeaker::say(int number, const QString& text) {
  if (!m_engine) {
    emit lost();
    return;
  }
  m_nextNumber = number;
  m_next = text;
  // The end of the words before has not been told yet; it must not be taken for the end of these.
  if (m_number == 0) speak();
}

void QtSpeaker::speak() {
  m_number = std::exchange(m_nextNumber, 0);
  const QString text = std::exchange(m_next, {});
  if (text.trimmed().isEmpty()) {
    end();
    return;
  }
  m_cut = false;
  m_unbegun.start(kUnbegunMilliseconds);
  m_engine->say(text);
}

void QtSpeaker::quiet() {
  m_nextNumber = 0;
  if (!m_engine || m_number == 0) return;
  // The library does not stop words that it has not heard to begin.
  m_cut = m_unbegun.isActive();
  m_engine->stop();
}

void QtSpeaker::takeState(QTextToSpeech::State state) {
  switch (state) {
    case QTextToSpeech::Speaking:
      m_unbegun.stop();
      if (std::exchange(m_cut, false)) m_engine->stop();
      return;
    case QTextToSpeech::Ready: end(); return;
    default: lose(); return;
  }
}

void QtSpeaker::end() {
  m_unbegun.stop();
  const int number = std::exchange(m_number, 0);
  if (number != 0) emit ended(number);
  if (m_nextNumber != 0) speak();
}

void QtSpeaker::lose() {
  m_unbegun.stop();
  m_number = m_nextNumber = 0;
  // May be called by the engine itself.
  if (m_engine) {
    m_engine->disconnect(this);
    m_engine.release()->deleteLater();
  }
  m_again.start(kAgainMilliseconds);
  emit lost();
}

}  // namespace app::speech
