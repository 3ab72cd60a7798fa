// The process that looks through the camera. It obeys commands on its standard input, writes the camera's picture to
// its standard output, and ends at once when nobody is left to see it.
#include <QGuiApplication>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <string>
#include <thread>

#include "app/camera/camera_out.h"

namespace {

// Nothing is tidied up at the end: the libraries may hang or crash over a camera that is gone, and the system takes
// everything back faster.
void tell(const app::camera::Answer& answer) {
  const QByteArray bytes = app::camera::written(answer);
  const auto size = static_cast<std::size_t>(bytes.size());
  if (std::fwrite(bytes.constData(), 1, size, stdout) != size) std::_Exit(1);
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char* argv[]) {
  // It has no window; turning frames into pictures wants a platform all the same.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  app::camera::CameraOut out;
  QObject::connect(&out, &app::camera::CameraOut::said, &out, &tell, Qt::DirectConnection);
  // A thread that only reads: it sees the end of the input even while the library holds the other up.
  std::thread([&out] {
    for (std::string line; std::getline(std::cin, line);) {
      if (const auto command = app::camera::readCommand(QByteArray::fromStdString(line)))
        QMetaObject::invokeMethod(
            &out, [&out, order = *command] { out.obey(order); }, Qt::QueuedConnection);
    }
    std::_Exit(0);
  }).detach();
  return QGuiApplication::exec();
}
