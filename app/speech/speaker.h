#pragma once
// A voice that says one text at a time. It may be missing or be lost at any moment and then says so; nothing else
// depends on it. Calls return at once or late, as the voice's library pleases: it lives in a thread of its own.
#include <QObject>
#include <QString>

namespace app::speech {

class Speaker : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // Looks for a voice: `found` or `lost` follows, and again whenever that changes.
  virtual void start() = 0;
  // `ended` follows with the same number once the words are over or were cut short; `lost` where they are not said.
  virtual void say(int number, const QString& text) = 0;
  // Cuts short what is being said.
  virtual void quiet() = 0;

 signals:
  void found();
  void lost();
  void ended(int number);
};

}  // namespace app::speech
