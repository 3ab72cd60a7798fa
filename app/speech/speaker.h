#pragma once
// A voice that says one text at a time. It may be missing or be lost at any moment and then reports it; nothing else
// depends on it. Calls return at once or late, depending on the voice's library: it lives in a thread of its own.
#include <QObject>
#include <QString>

namespace app::speech {

class Speaker : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // Looks for a voice: `found` or `lost` follows, and again whenever that changes.
  virtual void start() = 0;
  // `ended` follows with the same number once the words are over or were cut short; `lost` where they are not spoken.
  virtual void say(int number, const QString& text) = 0;
  // Cuts short the text being spoken.
  virtual void quiet() = 0;

 signals:
  void found();
  void lost();
  void ended(int number);
};

}  // namespace app::speech
