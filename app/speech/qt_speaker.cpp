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
// Stopped in the moment they begin, the words end without a word from the service.
constexpr int kCuttingMilliseconds = 200;
constexpr int kUnendedMilliseconds = 1000;
constexpr int kTailMilliseconds = 150;
constexpr int kAgainMilliseconds = 60'000;
constexpr int kAnewMilliseconds = 100;  // the service is there and has lost its thread

}  // namespace

QtSpeaker::QtSpeaker(QObject* parent)
    : Speaker(parent), m_unbegun(this), m_cutting(this), m_unended(this), m_tail(this), m_again(this) {
  for (QTimer* timer : {&m_unbegun, &m_cutting, &m_unended, &m_tail, &m_again}) timer->setSingleShot(true);
  connect(&m_unbegun, &QTimer::timeout, this, [this] { lose(kAgainMilliseconds); });
  connect(&m_cutting, &QTimer::timeout, this, &QtSpeaker::stop);
  connect(&m_unended, &QTimer::timeout, this, [this] { lose(kAnewMilliseconds); });
  connect(&m_tail, &QTimer::timeout, this, &QtSpeaker::end);
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
    lose(kAgainMilliseconds);
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
  // The end of the words before has not been reported yet; it must not be taken for the end of these.
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
  if (m_unbegun.isActive()) {
    m_cut = true;
  } else if (!m_cutting.isActive()) {
    stop();
  }
}

void QtSpeaker::stop() {
  m_cutting.stop();
  if (!m_engine || m_engine->state() != QTextToSpeech::Speaking) return;
  m_unended.start(kUnendedMilliseconds);
  m_engine->stop();
}

void QtSpeaker::takeState(QTextToSpeech::State state) {
  switch (state) {
    case QTextToSpeech::Speaking:
      m_unbegun.stop();
      if (m_cut) m_cutting.start(kCuttingMilliseconds);
      return;
    case QTextToSpeech::Ready:
      m_unended.stop();
      m_tail.start(kTailMilliseconds);
      return;
    default: lose(kAgainMilliseconds); return;
  }
}

void QtSpeaker::end() {
  m_cutting.stop();
  const int number = std::exchange(m_number, 0);
  if (number != 0) emit ended(number);
  if (m_nextNumber != 0) speak();
}

void QtSpeaker::lose(int againMilliseconds) {
  for (QTimer* timer : {&m_unbegun, &m_cutting, &m_unended, &m_tail}) timer->stop();
  m_number = m_nextNumber = 0;
  // May be called by the engine itself.
  if (m_engine) {
    m_engine->disconnect(this);
    m_engine.release()->deleteLater();
  }
  m_again.start(againMilliseconds);
  emit lost();
}

}  // namespace app::speech
