// The process that plays the bench's sounds. It does what it is told on its standard input, tells on its standard
// output what becomes of it, and ends at once when nobody is left to tell it anything.
#include <QCoreApplication>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <string>
#include <thread>

#include "app/sound/sound_out.h"

int main(int argc, char* argv[]) {
  const QCoreApplication application(argc, argv);
  app::sound::SoundOut out;
  // From several threads; each line goes out whole. Nothing is tidied up at the end: the libraries may hang or crash
  // over a server that is gone, and the system takes everything back faster.
  QObject::connect(
      &out, &app::sound::SoundOut::said, &out,
      [](const app::sound::Answer& answer) {
        const QByteArray line = app::sound::line(answer);
        if (std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stdout) == 0) std::_Exit(1);
        std::fflush(stdout);
      },
      Qt::DirectConnection);
  QObject::connect(&out, &app::sound::SoundOut::failed, &out, [](int status) { std::_Exit(status); });

  // A thread that only reads: it sees the end of the input even while the sound thread is held by a server.
  std::thread([&out] {
    std::string line;
    while (std::getline(std::cin, line)) {
      const auto command = app::sound::readCommand(QByteArrayView(line.data(), static_cast<qsizetype>(line.size())));
      if (!command) continue;
      QMetaObject::invokeMethod(
          &out, [&out, command = *command] { out.obey(command); }, Qt::QueuedConnection);
    }
    std::_Exit(0);
  }).detach();

  out.start();
  std::_Exit(QCoreApplication::exec());
}
