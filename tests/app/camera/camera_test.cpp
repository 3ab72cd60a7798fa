// A real camera's way through a real server and the camera's own process: colour bars seen, and taken.
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <csignal>

#include "app/camera/camera_process.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"

using app::camera::CameraProcess;
using tests::becomesSo;

namespace {

constexpr int kWithin = 20'000;

struct Watched {
  Watched() : camera(CameraProcess::besideTheProgram()) {
    QObject::connect(&camera, &CameraProcess::found, &camera, [this](const QString& called, int) { name = called; });
    QObject::connect(&camera, &CameraProcess::seen, &camera, [this](const QImage& image) {
      picture = image;
      ++frames;
    });
    QObject::connect(&camera, &CameraProcess::taken, &camera, [this](const QString& path) { taken = path; });
    QObject::connect(&camera, &CameraProcess::lost, &camera, [this](CameraProcess::Lost why, const QString& what) {
      lost = why;
      detail = what;
    });
  }

  CameraProcess camera;
  QString name, taken, detail;
  QImage picture;
  int frames = 0;
  std::optional<CameraProcess::Lost> lost;
};

// The upper part of the bars of SMPTE EG 1: grey, yellow, cyan, green, magenta, red, blue, at three quarters.
bool showsBars(const QImage& image) {
  const bool on[7][3] = {{true, true, true},  {true, true, false},  {false, true, true}, {false, true, false},
                         {true, false, true}, {true, false, false}, {false, false, true}};
  for (int bar = 0; bar < 7; ++bar) {
    const QColor colour = image.pixelColor((2 * bar + 1) * image.width() / 14, image.height() / 4);
    const int parts[3] = {colour.red(), colour.green(), colour.blue()};
    for (int part = 0; part < 3; ++part) {
      if (on[bar][part] ? parts[part] < 140 : parts[part] > 60) return false;
    }
  }
  return true;
}

// The camera's process, by its parent.
int childOf(qint64 parent) {
  for (const QString& entry : QDir("/proc").entryList(QDir::Dirs)) {
    bool isPid = false;
    const int pid = entry.toInt(&isPid);
    QFile status("/proc/" + entry + "/stat");
    if (!isPid || !status.open(QIODevice::ReadOnly)) continue;
    const QByteArray text = status.readAll();
    if (!text.contains("(mountwright-cam")) continue;
    if (text.mid(text.lastIndexOf(')') + 2).split(' ').value(1).toLongLong() == parent) return pid;
  }
  return 0;
}

}  // namespace

TEST_CASE("the camera is found, seen through and a picture taken, as large as it gives") {
  Watched watched;
  watched.camera.start();
  REQUIRE(becomesSo([&] { return watched.frames >= 5; }, kWithin));
  CHECK(watched.name == "bench-camera");
  CHECK_FALSE(watched.lost.has_value());
  CHECK(showsBars(watched.picture));

  QTemporaryDir folder;
  const QString path = folder.filePath("a picture.jpg");
  watched.camera.take(path);
  REQUIRE(becomesSo([&] { return !watched.taken.isEmpty(); }, kWithin));
  CHECK(watched.taken == path);
  const QImage taken(path, "jpg");
  CHECK(taken.size() == QSize(640, 480));
  CHECK(showsBars(taken));

  // Where it cannot be written that is told, and it is seen through as before.
  watched.camera.take(folder.filePath("nowhere/picture.jpg"));
  REQUIRE(becomesSo([&] { return watched.lost.has_value(); }, kWithin));
  CHECK(*watched.lost == CameraProcess::Lost::Unwritten);
  const int before = watched.frames;
  CHECK(becomesSo([&] { return watched.frames > before; }, kWithin));

  watched.camera.end();
  CHECK_FALSE(watched.camera.running());
  CHECK(childOf(QCoreApplication::applicationPid()) == 0);
}

TEST_CASE("a camera's process that dies is told, and it can be opened again") {
  Watched watched;
  watched.camera.start();
  REQUIRE(becomesSo([&] { return watched.frames > 0; }, kWithin));
  const int pid = childOf(QCoreApplication::applicationPid());
  REQUIRE(pid > 0);
  REQUIRE(::kill(pid, SIGKILL) == 0);
  REQUIRE(becomesSo([&] { return watched.lost.has_value(); }));
  CHECK(*watched.lost == CameraProcess::Lost::Missing);
  watched.frames = 0;
  watched.camera.start();
  CHECK(becomesSo([&] { return watched.frames > 0; }, kWithin));
}
