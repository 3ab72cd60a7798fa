#pragma once
// The system's speech service by way of Qt. The engine is named where there are several: the library's own choice among
// them differs from one run to the next.
#include <QTextToSpeech>
#include <QTimer>
#include <memory>

#include "app/speech/speaker.h"

namespace app::speech {

class QtSpeaker : public Speaker {
  Q_OBJECT

 public:
  explicit QtSpeaker(QObject* parent = nullptr);
  ~QtSpeaker() override;

  // Blocks for a second or more while the service starts and lists its voices.
  void start() override;
  void say(int number, const QString& text) override;
  void quiet() override;

 private:
  void takeState(QTextToSpeech::State state);
  void speak();
  void stop();
  void end();
  void lose(int againMilliseconds);

  std::unique_ptr<QTextToSpeech> m_engine;
  QTimer m_unbegun;  // from the words being handed over until they sound
  QTimer m_cutting;  // from the words having begun until they may be stopped
  QTimer m_unended;  // from the words being stopped until their end is reported
  QTimer m_tail;     // what is over for the service is still on its way to the loudspeaker
  QTimer m_again;
  int m_number = 0;    // of the text being spoken; 0 for none
  bool m_cut = false;  // to be stopped as soon as it begins
  QString m_next;      // waits for the words before it to end
  int m_nextNumber = 0;
};

}  // namespace app::speech
