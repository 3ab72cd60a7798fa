// Disks that fail: in place of the machine's, and the machine's own.
#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <functional>

#include "app/photographs/photographs.h"
#include "tests/app/photographs/pictures.h"
#include "tests/support/catch.h"
#include "tests/support/folders.h"
#include "tests/support/in_child.h"

using namespace tests;
using app::files::Disk;
using app::files::Fault;
using app::files::FileState;
using app::files::Source;
using app::files::Target;
using app::photographs::Photographs;

namespace {

// The machine's disk, but for one call that fails.
struct Faults {
  Fault create = Fault::None, write = Fault::None, finish = Fault::None, rename = Fault::None;
  int writesBefore = 0;
  std::int64_t readsBefore = -1;               // reads that go well before one fails; less than 0: all do
  std::function<void()> whileReading = [] {};  // after the first piece
};

class FaultySource : public Source {
 public:
  FaultySource(std::unique_ptr<Source> real, Faults& faults) : m_real(std::move(real)), m_faults(faults) {}
  FileState state() override { return m_real->state(); }
  std::int64_t read(char* buffer, std::int64_t most) override {
    if (m_faults.readsBefore == m_reads) return -1;
    const std::int64_t got = m_real->read(buffer, most);
    if (m_reads++ == 0) m_faults.whileReading();
    return got;
  }

 private:
  std::unique_ptr<Source> m_real;
  Faults& m_faults;
  std::int64_t m_reads = 0;
};

class FaultyTarget : public Target {
 public:
  FaultyTarget(std::unique_ptr<Target> real, Faults& faults) : m_real(std::move(real)), m_faults(faults) {}
  Fault write(const char* bytes, std::int64_t count) override {
    if (m_faults.write != Fault::None && m_faults.writesBefore-- == 0) {
      // A disk that fills up takes a part.
      m_real->write(bytes, count / 2);
      return m_faults.write;
    }
    return m_real->write(bytes, count);
  }
  Fault finish() override { return m_faults.finish == Fault::None ? m_real->finish() : m_faults.finish; }

 private:
  std::unique_ptr<Target> m_real;
  Faults& m_faults;
};

class FaultyDisk : public Disk {
 public:
  explicit FaultyDisk(Faults& faults) : m_faults(faults) {}
  Open<Source> openSource(const QString& path) override {
    auto real = m_real->openSource(path);
    if (!real) return real.error();
    return std::unique_ptr<Source>(std::make_unique<FaultySource>(std::move(real).value(), m_faults));
  }
  Open<Target> create(const QString& path) override {
    if (m_faults.create != Fault::None) return m_faults.create;
    auto real = m_real->create(path);
    if (!real) return real.error();
    return std::unique_ptr<Target>(std::make_unique<FaultyTarget>(std::move(real).value(), m_faults));
  }
  Fault rename(const QString& from, const QString& to) override {
    return m_faults.rename == Fault::None ? m_real->rename(from, to) : m_faults.rename;
  }
  void remove(const QString& path) override { m_real->remove(path); }

 private:
  std::unique_ptr<Disk> m_real = app::files::machineDisk();
  Faults& m_faults;
};

struct Bench {
  Folders folders;
  Faults faults;
  Photographs photographs{folders.path("photographs"), std::make_shared<FaultyDisk>(faults)};
  QByteArray bytes = encoded(noise(1600, 1200), "jpg", 95);
  QString path = folders.path("picture.jpg");

  Bench() {
    REQUIRE(bytes.size() > 1'500'000);
    REQUIRE(folders.write("picture.jpg", bytes));
  }
  std::string said() const {
    const auto kept = photographs.keep(path);
    return kept ? "" : kept.error().id;
  }
  QStringList there() const {
    return QDir(photographs.folder()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
  }
  // Nothing is left of what failed, the maker's file is whole, and once the fault is over it is kept.
  void checkNothingLost() {
    CHECK(there().isEmpty());
    QFile own(path);
    REQUIRE(own.open(QIODevice::ReadOnly));
    CHECK(own.readAll() == bytes);
    faults = Faults();
    CHECK(said().empty());
    CHECK(there().size() == 1);
  }
};

}  // namespace

TEST_CASE("a disk that fills up while a photograph is copied is told, and nothing is lost") {
  Bench bench;
  SECTION("at once") { bench.faults.create = Fault::Full; }
  SECTION("half way") {
    bench.faults.write = Fault::Full;
    bench.faults.writesBefore = 1;
  }
  SECTION("when it is forced to the disk") { bench.faults.finish = Fault::Full; }
  SECTION("when it gets its name") { bench.faults.rename = Fault::Full; }
  CHECK(bench.said() == "photograph.disk-full");
  bench.checkNothingLost();
}

TEST_CASE("a disk that fails while a photograph is copied is told, and nothing is lost") {
  Bench bench;
  std::string expected = "photograph.cannot-keep";
  SECTION("no permission in the folder") { bench.faults.create = Fault::NoPermission; }
  SECTION("a bad block") { bench.faults.write = Fault::Failed; }
  SECTION("a bad block found late") { bench.faults.finish = Fault::Failed; }
  SECTION("no name to be had") { bench.faults.rename = Fault::Failed; }
  SECTION("a card pulled out of its reader") {
    bench.faults.readsBefore = 1;
    expected = "photograph.read-failed";
  }
  CHECK(bench.said() == expected);
  bench.checkNothingLost();
}

TEST_CASE("a file that is written to while it is copied is not kept") {
  Bench bench;
  const auto append = [&](const QByteArray& more, bool truncate) {
    QFile file(bench.path);
    REQUIRE(file.open(truncate ? QIODevice::WriteOnly : QIODevice::WriteOnly | QIODevice::Append));
    file.write(more);
  };
  SECTION("it grows") {
    bench.faults.whileReading = [&] { append("more", false); };
  }
  SECTION("it shrinks") {
    bench.faults.whileReading = [&] { append("less", true); };
  }
  SECTION("it is written anew with as many bytes") {
    bench.faults.whileReading = [&] { append(bench.bytes, true); };
  }
  CHECK(bench.said() == "photograph.changed-meanwhile");
  CHECK(bench.there().isEmpty());
}

TEST_CASE("a limit of the system on the size of files is told as no room, by the system itself") {
  Bench bench;
  const QString folder = bench.photographs.folder();
  const int said = inChild([&] {
    ::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{1'000'000, 1'000'000};
    if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 3;
    const auto kept = Photographs(folder).keep(bench.path);
    return kept ? 1 : kept.error().id == "photograph.disk-full" ? 0 : 2;
  });
  CHECK(said == 0);
  bench.checkNothingLost();
}

TEST_CASE("a bench killed between two pieces of a copy leaves one unfinished file, which the next one sweeps away") {
  Bench bench;
  const int killed = inChild([&] {
    bench.faults.whileReading = [] { ::raise(SIGKILL); };
    return bench.said().empty() ? 1 : 2;
  });
  CHECK(killed == 128 + SIGKILL);
  REQUIRE(bench.there().size() == 1);
  CHECK(bench.there()[0].startsWith(".keeping-"));
  CHECK(bench.photographs.sweep() == 1);
  bench.checkNothingLost();
}

TEST_CASE("a file that may not be read, and a folder that may not be written, are told") {
  Bench bench;
  // Whoever has all rights is somebody else for this.
  const auto asNobody = [&](const std::string& expected) {
    constexpr uid_t kNobody = 65534;
    return inChild([&] {
      if (::geteuid() == 0 && (::setgid(kNobody) != 0 || ::setuid(kNobody) != 0)) return 3;
      return bench.said() == expected ? 0 : 1;
    });
  };
  REQUIRE(::chmod(QFile::encodeName(bench.folders.path()).constData(), 0755) == 0);
  REQUIRE(QDir().mkpath(bench.photographs.folder()));
  REQUIRE(::chmod(QFile::encodeName(bench.photographs.folder()).constData(), 0555) == 0);
  CHECK(asNobody("photograph.cannot-keep") == 0);
  REQUIRE(::chmod(QFile::encodeName(bench.path).constData(), 0000) == 0);
  CHECK(asNobody("photograph.no-permission") == 0);
  REQUIRE(::chmod(QFile::encodeName(bench.path).constData(), 0644) == 0);
  REQUIRE(::chmod(QFile::encodeName(bench.photographs.folder()).constData(), 0755) == 0);
  bench.checkNothingLost();
}
