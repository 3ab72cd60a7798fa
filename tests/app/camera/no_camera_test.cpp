// Where there is no camera, or nothing to look through it with, the maker is told and the file remains.
#include <QFile>
#include <QTemporaryDir>

#include "app/viewmodels/desk/camera_view_model.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"

using app::camera::CameraProcess;
using app::viewmodels::CameraViewModel;
using tests::becomesSo;

namespace {

constexpr int kWithin = 20'000;

// A program that stands where the camera's process stands, and does this.
QString script(const QTemporaryDir& folder, const char* text) {
  const QString path = folder.filePath("camera");
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray("#!/bin/sh\n") + text + '\n');
  file.close();
  REQUIRE(file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
  return path;
}

}  // namespace

TEST_CASE("without a camera that is said, and nothing is left running") {
  QTemporaryDir empty;
  // No server that could hand one round, and none of this machine's own is looked for.
  qputenv("XDG_RUNTIME_DIR", empty.path().toLocal8Bit());
  qputenv("GST_PLUGIN_FEATURE_RANK", "v4l2deviceprovider:NONE");
  CameraViewModel camera(CameraProcess::besideTheProgram());
  camera.open();
  CHECK(camera.up());
  const QString looking = camera.said();
  REQUIRE(becomesSo([&] { return camera.said() != looking; }, kWithin));
  CHECK_FALSE(camera.live());
  CHECK(camera.said().contains("no camera"));
  camera.take();  // does nothing
  camera.close();
  CHECK_FALSE(camera.up());
  CHECK(camera.said().isEmpty());
}

TEST_CASE("a part that is missing, ends, raves or says nothing good is told") {
  QTemporaryDir folder;
  const char* kinds[] = {"exit 0", "kill -9 $$", "echo 'frame 999999999999'; sleep 60",
                         "head -c 100000 /dev/zero; sleep 60", "echo 'trouble The device is busy'; sleep 60"};
  for (const char* kind : kinds) {
    INFO(kind);
    CameraViewModel camera(script(folder, kind));
    camera.open();
    const QString looking = camera.said();
    REQUIRE(becomesSo([&] { return camera.said() != looking; }, kWithin));
    CHECK_FALSE(camera.live());
    CHECK(camera.up());
  }
  CameraViewModel missing(folder.filePath("nowhere"));
  missing.open();
  REQUIRE(becomesSo([&] { return missing.said().contains("cannot be used"); }, kWithin));
}

TEST_CASE("pictures that are none are not shown") {
  QTemporaryDir folder;
  CameraViewModel camera(script(folder, "printf 'camera 1 2 Front\\nframe 5\\nhello'; sleep 60"));
  camera.open();
  REQUIRE(becomesSo([&] { return camera.several(); }, kWithin));
  tests::letPass(200);
  CHECK_FALSE(camera.live());
  camera.close();
  CHECK_FALSE(camera.several());
}
