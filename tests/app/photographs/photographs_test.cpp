// Photographs copied in from real files, and files that are none.
#include "app/photographs/photographs.h"

#include <sys/stat.h>
#include <unistd.h>

#include <QCryptographicHash>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>

#include "core/jobs/beside_work.h"
#include "tests/app/photographs/pictures.h"
#include "tests/support/catch.h"
#include "tests/support/folders.h"

using namespace tests;
using app::photographs::Photographs;

namespace {

struct Shelf {
  Folders folders;
  Photographs photographs{folders.path("photographs")};

  QString file(const QString& name, const QByteArray& bytes) const {
    REQUIRE(folders.write(name, bytes));
    return folders.path(name);
  }
  // The id of what was said; "" where it was kept.
  std::string said(const QString& path) const {
    const auto kept = photographs.keep(path);
    return kept ? "" : kept.error().id;
  }
  QStringList there() const {
    return QDir(photographs.folder()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
  }
};

std::string hashOf(const QByteArray& bytes) {
  return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
}

}  // namespace

TEST_CASE("a photograph is kept byte for byte under its hash, whatever its name says, and once") {
  const Shelf shelf;
  const QByteArray bytes = jpegBytes();
  const auto kept = shelf.photographs.keep(shelf.file("picture.txt", bytes));
  REQUIRE(kept.ok());
  CHECK(kept.value().hash == hashOf(bytes));
  CHECK(kept.value().type == "jpeg");
  CHECK(kept.value().bytes == bytes.size());
  CHECK(kept.value().width == 64);
  CHECK(kept.value().height == 48);
  QFile copy(shelf.photographs.file(kept.value().hash));
  REQUIRE(copy.open(QIODevice::ReadOnly));
  CHECK(copy.readAll() == bytes);
  CHECK(shelf.said(shelf.file("again.jpg", bytes)).empty());
  CHECK(shelf.there().size() == 1);
  CHECK(shelf.said(shelf.file("other.png", pngBytes())).empty());
  CHECK(shelf.there().size() == 2);
}

TEST_CASE("a photograph of 40 MB is kept and shown small") {
  const Shelf shelf;
  // Noise at full quality: as large a file as a camera makes, and no larger a picture.
  const QByteArray bytes = encoded(noise(5400, 4050), "jpg", 100);
  INFO(bytes.size());
  REQUIRE(bytes.size() > 40'000'000);
  REQUIRE(bytes.size() < core::jobs::kLargestPhotograph);
  const auto kept = shelf.photographs.keep(shelf.file("large.jpg", bytes));
  REQUIRE(kept.ok());
  CHECK(kept.value().width == 5400);
  const auto shown = shelf.photographs.thumbnail(kept.value().hash, {300, 300});
  REQUIRE(shown.ok());
  CHECK(shown.value().size() == QSize(300, 225));
}

TEST_CASE("a picture that takes more room to show than there is for one is kept and says so") {
  const Shelf shelf;
  // A byte a point, and no way to decode it smaller.
  QImage image(12'000, 12'000, QImage::Format_Indexed8);
  image.setColorTable({qRgb(20, 40, 20), qRgb(90, 120, 90)});
  image.fill(1);
  const auto kept = shelf.photographs.keep(shelf.file("wall.png", encoded(image, "png")));
  REQUIRE(kept.ok());
  const auto shown = shelf.photographs.thumbnail(kept.value().hash, {300, 300});
  REQUIRE_FALSE(shown.ok());
  CHECK(core::base::dump(shown.error()) == "photograph.too-large-to-show width=12000 height=12000");
}

TEST_CASE("a photograph's file and folder are for their user alone") {
  const Shelf shelf;
  const auto kept = shelf.photographs.keep(shelf.file("a.png", pngBytes()));
  REQUIRE(kept.ok());
  struct stat found {};
  REQUIRE(::stat(QFile::encodeName(shelf.photographs.file(kept.value().hash)).constData(), &found) == 0);
  CHECK((found.st_mode & 07777) == 0600);
  REQUIRE(::stat(QFile::encodeName(shelf.photographs.folder()).constData(), &found) == 0);
  CHECK((found.st_mode & 07777) == 0700);
}

TEST_CASE("a file beyond the limit is refused before it is copied, however much it claims to hold") {
  const Shelf shelf;
  const QString path = shelf.file("sparse.jpg", jpegBytes());
  REQUIRE(::truncate(QFile::encodeName(path).constData(), core::jobs::kLargestPhotograph + 1) == 0);
  const auto kept = shelf.photographs.keep(path);
  REQUIRE_FALSE(kept.ok());
  CHECK(core::base::dump(kept.error()) == "photograph.too-large most=100");
  CHECK(shelf.there().isEmpty());
}

TEST_CASE("what is no photograph is told apart, and leaves nothing behind") {
  const Shelf shelf;
  CHECK(shelf.said(shelf.file("empty.jpg", "")) == "photograph.empty");
  CHECK(shelf.said(shelf.file("text.jpg", "Dear sir, the picture is in the post.")) == "photograph.not-a-picture");
  CHECK(shelf.said(shelf.file("zeros.png", QByteArray(5000, '\0'))) == "photograph.not-a-picture");
  CHECK(shelf.said(shelf.file("bitmap.jpg", encoded(noise(20, 20), "bmp"))) == "photograph.other-type");
  CHECK(shelf.said(shelf.folders.path("nowhere.jpg")) == "photograph.missing");
  CHECK(shelf.said(shelf.folders.path()) == "photograph.is-folder");
  CHECK(shelf.said("/dev/zero") == "photograph.not-a-file");
  REQUIRE(::mkfifo(QFile::encodeName(shelf.folders.path("pipe.jpg")).constData(), 0600) == 0);
  CHECK(shelf.said(shelf.folders.path("pipe.jpg")) == "photograph.not-a-file");
  CHECK(shelf.there().isEmpty());
}

TEST_CASE("a picture cut short at any place, or altered in the middle, is not kept") {
  const Shelf shelf;
  const QByteArray jpeg = jpegBytes(), png = pngBytes();
  for (const QByteArray& whole : {jpeg, png}) {
    for (qsizetype length = 1; length < whole.size(); length += 1 + length / 3) {
      const std::string said = shelf.said(shelf.file("cut.jpg", whole.left(length)));
      INFO(length << " of " << whole.size() << ": " << said);
      CHECK((said == "photograph.cut-short" || said == "photograph.not-a-picture" || said == "photograph.damaged"));
    }
    CHECK(shelf.said(shelf.file("cut.jpg", whole.chopped(2))) == "photograph.cut-short");
  }
  QByteArray altered = png;
  altered[png.size() / 2] = static_cast<char>(altered[png.size() / 2] ^ 1);
  CHECK(shelf.said(shelf.file("altered.png", altered)) == "photograph.damaged");
  CHECK(shelf.there().isEmpty());
  // What a camera writes after the end of the picture does not spoil it.
  CHECK(shelf.said(shelf.file("trailer.jpg", jpeg + QByteArray(300, 'x'))).empty());
}

TEST_CASE("a picture that claims more than 250 million pixels is refused by its head, in no time") {
  const Shelf shelf;
  QElapsedTimer timer;
  timer.start();
  const auto kept = shelf.photographs.keep(shelf.file("bomb.png", claiming(50'000, 50'000)));
  REQUIRE_FALSE(kept.ok());
  CHECK(core::base::dump(kept.error()) == "photograph.too-many-pixels width=50000 height=50000 most=250");
  CHECK(timer.elapsed() < 1000);
  CHECK_FALSE(shelf.photographs.keep(shelf.file("bomb2.png", claiming(0x7FFFFFFF, 0x7FFFFFFF))).ok());
  CHECK_FALSE(shelf.photographs.keep(shelf.file("bomb3.png", claiming(0, 7))).ok());
  CHECK(shelf.there().isEmpty());
}

TEST_CASE("a picture that claims a size its bytes do not fill is kept or not, and showing it never falls over") {
  const Shelf shelf;
  const auto kept = shelf.photographs.keep(shelf.file("claims.png", claiming(12'000, 12'000)));
  if (kept.ok()) CHECK_FALSE(shelf.photographs.thumbnail(kept.value().hash, {100, 100}).ok());
}

TEST_CASE("a photograph is shown as its camera was held, no larger than asked and never enlarged") {
  const Shelf shelf;
  const auto kept = shelf.photographs.keep(shelf.file("turned.jpg", turnedJpeg()));
  REQUIRE(kept.ok());
  const auto whole = shelf.photographs.thumbnail(kept.value().hash, {500, 500});
  REQUIRE(whole.ok());
  CHECK(whole.value().size() == QSize(40, 80));
  // A quarter clockwise: the left half comes to the top.
  CHECK(whole.value().pixelColor(20, 10).red() > 200);
  CHECK(whole.value().pixelColor(20, 70).blue() > 200);
  const auto small = shelf.photographs.thumbnail(kept.value().hash, {20, 20});
  REQUIRE(small.ok());
  CHECK(small.value().size() == QSize(10, 20));
}

TEST_CASE("a kept file that is gone or altered is told when it is shown, and kept again it is whole") {
  const Shelf shelf;
  const QByteArray bytes = jpegBytes();
  const QString path = shelf.file("picture.jpg", bytes);
  const std::string hash = shelf.photographs.keep(path).value().hash;
  const QString place = shelf.photographs.file(hash);
  QByteArray other = bytes;
  other[bytes.size() / 2] = static_cast<char>(other[bytes.size() / 2] ^ 4);
  REQUIRE(shelf.folders.write("photographs/" + QFileInfo(place).fileName(), other));
  CHECK(shelf.photographs.thumbnail(hash, {50, 50}).error().id == "photograph.altered");
  REQUIRE(shelf.photographs.keep(path).ok());
  CHECK(shelf.photographs.trouble(hash).id.empty());
  REQUIRE(QFile::remove(place));
  CHECK(shelf.photographs.thumbnail(hash, {50, 50}).error().id == "photograph.gone");
  CHECK(shelf.photographs.thumbnail("../../etc/passwd", {50, 50}).error().id == "photograph.gone");
  CHECK(shelf.photographs.thumbnail("", {50, 50}).error().id == "photograph.gone");
}

TEST_CASE("what a cut off copy left is swept away and nothing else is touched") {
  const Shelf shelf;
  REQUIRE(shelf.said(shelf.file("picture.jpg", jpegBytes())).empty());
  const QString left = "photographs/.keeping-0b0f6f5c-3a0e-4a0e-9f2e-2f6f3c1d9a77";
  shelf.file(left, "half a pic");
  shelf.file("photographs/.keeping-mine", "somebody's own");
  shelf.file("photographs/notes.txt", "somebody's own");
  REQUIRE(QFile::link(shelf.folders.path("picture.jpg"),
                      shelf.folders.path("photographs/.keeping-1b0f6f5c-3a0e-4a0e-9f2e-2f6f3c1d9a77")));
  CHECK(shelf.photographs.sweep() == 1);
  CHECK(shelf.photographs.sweep() == 0);
  CHECK(shelf.there().size() == 4);
  CHECK(QFileInfo::exists(shelf.folders.path("picture.jpg")));
}

TEST_CASE("a kept file that no record names is told with its size, and stays") {
  const Shelf shelf;
  const QByteArray one = jpegBytes(), two = pngBytes();
  const std::string named = shelf.photographs.keep(shelf.file("one.jpg", one)).value().hash;
  const std::string unnamed = shelf.photographs.keep(shelf.file("two.png", two)).value().hash;
  const auto unused = shelf.photographs.unused({named});
  CHECK(unused.hashes == std::vector<std::string>{unnamed});
  CHECK(unused.bytes == two.size());
  CHECK(shelf.there().size() == 2);
}
