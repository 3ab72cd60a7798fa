// The process that plays the bench's sounds and speaks its words. It obeys commands on its standard input, reports on
// its standard output, and ends at once when its input is closed.
#include <QCoreApplication>
#include <QThread>
#include <QTimer>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <string>
#include <thread>

#include "app/sound/sound_out.h"
#include "app/speech/qt_speaker.h"

namespace {

using app::sound::Answer;
using app::sound::Command;

// A voice takes the machine a second or more to come up: the bench and its tones go first.
constexpr int kVoiceAfterMilliseconds = 2000;

// From several threads; each line goes out whole. Nothing is tidied up at the end: the libraries may hang or crash
// over a server that is gone, and the system takes everything back faster.
void tell(const Answer& answer) {
  const QByteArray line = app::sound::line(answer);
  if (std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stdout) == 0) std::_Exit(1);
  std::fflush(stdout);
}

// In its own thread: what holds it up holds up no tone.
void connectVoice(app::sound::SoundOut& out, app::speech::Speaker& speaker, QThread& thread) {
  using app::speech::Speaker;
  QObject::connect(&speaker, &Speaker::found, &speaker, [] { tell(Answer{Answer::Kind::Voice}); });
  QObject::connect(&speaker, &Speaker::lost, &speaker, [] { tell(Answer{Answer::Kind::NoVoice}); });
  QObject::connect(&speaker, &Speaker::ended, &speaker, [](int number) {
    tell({Answer::Kind::Spoken, app::sound::State::NoDevice, 0, number});
  });
  // Where nothing can be heard there is nothing to speak to, and the speech service may take offence at it.
  QObject::connect(
      &out, &app::sound::SoundOut::said, &speaker,
      [&out, &speaker, &thread](const Answer& answer) {
        if (answer.kind != Answer::Kind::State || answer.state != app::sound::State::Ready || thread.isRunning())
          return;
        speaker.moveToThread(&thread);
        thread.start();
        QTimer::singleShot(kVoiceAfterMilliseconds, &speaker, [&speaker] { speaker.start(); });
      },
      Qt::DirectConnection);
}

}  // namespace

int main(int argc, char* argv[]) {
  const QCoreApplication application(argc, argv);
  app::sound::SoundOut out;
  app::speech::QtSpeaker speaker;
  QThread voice;
  QObject::connect(&out, &app::sound::SoundOut::said, &out, &tell, Qt::DirectConnection);
  QObject::connect(&out, &app::sound::SoundOut::failed, &out, [](int status) { std::_Exit(status); });
  if (!QCoreApplication::arguments().contains(QLatin1String(app::sound::kWithoutVoice)))
    connectVoice(out, speaker, voice);

  const auto obey = [&](const Command& command) {
    switch (command.kind) {
      case Command::Kind::Say:
        QMetaObject::invokeMethod(
            &speaker, [&speaker, command] { speaker.say(command.number, QString::fromUtf8(command.text)); },
            Qt::QueuedConnection);
        return;
      case Command::Kind::Quiet:
        QMetaObject::invokeMethod(
            &speaker, [&speaker] { speaker.quiet(); }, Qt::QueuedConnection);
        return;
      default:
        QMetaObject::invokeMethod(
            &out, [&out, command] { out.obey(command); }, Qt::QueuedConnection);
    }
  };
  // A thread that only reads: it sees the end of the input even while the sound thread is held by a server.
  std::thread([&obey] {
    std::string line;
    while (std::getline(std::cin, line)) {
      const auto command = app::sound::readCommand(QByteArrayView(line.data(), static_cast<qsizetype>(line.size())));
      if (command) obey(*command);
    }
    std::_Exit(0);
  }).detach();

  out.start();
  std::_Exit(QCoreApplication::exec());
}
