// Photographs recorded by the workbench over the real store: the file first, then the event.
#include <QTemporaryDir>

#include "app/photographs/photographs.h"
#include "app/stores/sqlite_event_store.h"
#include "tests/app/photographs/pictures.h"
#include "tests/app/workbench/bench.h"
#include "tests/app/workbench/own_store.h"

using namespace tests;
using app::photographs::Photographs;

namespace {

QString fileIn(const QTemporaryDir& folder, const QString& name, const QByteArray& bytes) {
  QFile file(folder.filePath(name));
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(bytes) == bytes.size());
  return file.fileName();
}

}  // namespace

TEST_CASE("a photograph is in the record after a restart, and its file is what was taken") {
  QTemporaryDir folder;
  const Photographs photographs(folder.filePath("photographs"));
  const QString path = fileIn(folder, "corner.jpg", jpegBytes());
  std::string job;
  {
    const auto store = openIn(folder);
    StoredBench bench(*store, "this-tablet");
    job = bench.takeIn(demoJob());
    CHECK(bench.work.photograph(job, path, "The corner", "").id == "photograph.no-folder");
    bench.work.keepPhotographsIn(photographs);
    REQUIRE(bench.work.photograph(job, path, "The corner", "").id.empty());
    CHECK(bench.work.photograph("none", path, "", "").id == "bench.no-such-job");
  }
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const auto& kept = bench.work.job(job)->beside.photographs;
  REQUIRE(kept.size() == 1);
  CHECK(kept[0].caption == "The corner");
  CHECK(photographs.thumbnail(kept[0].hash, {20, 20}).ok());
  CHECK(bench.work.timeline(job, core::jobs::Order::NewestFirst).front().hash == kept[0].hash);

  REQUIRE(bench.work.submit(core::intents::OfJob{job, core::intents::RemovePhotograph{kept[0].id}}).id.empty());
  // Taking it back must find the file.
  CHECK(photographs.unused(bench.work.photographsNamed()).hashes.empty());
}

TEST_CASE("what cannot be recorded is told before anything is copied, and what cannot be copied is not recorded") {
  QTemporaryDir folder;
  const Photographs photographs(folder.filePath("photographs"));
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob());
  bench.work.keepPhotographsIn(photographs);
  const QString path = fileIn(folder, "corner.jpg", jpegBytes());
  CHECK(bench.work.photograph(job, path, "a\ab", "").id == "text.control-character");
  CHECK(bench.work.photograph(job, path, "", "no/such").id == "record.no-such-step");
  CHECK_FALSE(QFileInfo::exists(photographs.folder()));
  CHECK(bench.work.photograph(job, fileIn(folder, "none.jpg", "words"), "", "").id == "photograph.not-a-picture");
  CHECK(bench.work.job(job)->beside.photographs.empty());
}

TEST_CASE("a bench cut off between the file and its event has lost nothing, and the same picture is kept again") {
  QTemporaryDir folder;
  const Photographs photographs(folder.filePath("photographs"));
  const auto store = openIn(folder);
  StoredBench bench(*store, "this-tablet");
  const std::string job = bench.takeIn(demoJob());
  bench.work.keepPhotographsIn(photographs);
  const QString path = fileIn(folder, "corner.jpg", jpegBytes());
  const auto kept = photographs.keep(path);
  REQUIRE(kept.ok());
  CHECK(photographs.unused(bench.work.photographsNamed()).hashes == std::vector<std::string>{kept.value().hash});
  REQUIRE(bench.work.photograph(job, path, "", "").id.empty());
  CHECK(photographs.unused(bench.work.photographsNamed()).hashes.empty());
  CHECK(photographs.sweep() == 0);
}
