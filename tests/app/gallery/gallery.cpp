// Pictures of every screen and state, in both lights and on every size of tablet, of every act on two sheets, and first
// of what all of them are made of: mountwright_gallery FOLDER [STATE]
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHash>
#include <QImage>
#include <QImageWriter>
#include <QQuickItem>
#include <algorithm>
#include <array>
#include <cstdio>
#include <string_view>

#include "app/face/face.h"
#include "app/face/letters.h"
#include "tests/app/gallery/act_sheet.h"
#include "tests/app/gallery/piece_sheet.h"
#include "tests/app/gallery/settled.h"
#include "tests/app/gallery/specimen_sheet.h"
#include "tests/app/gallery/states.h"

namespace {

// The state in a window of that tablet; a null image where it was not reached or the screens gave a warning.
QImage pictureOf(const tests::State& state, const tests::Tablet& tablet, bool lamp) {
  tests::Stage stage(state.jobs);
  if (!state.reach(stage)) {
    std::fprintf(stderr, "%s was not reached\n", state.name.c_str());
    return {};
  }
  app::face::Face face;
  const bool clean = face.load(stage.desk(), tablet.dotsPerMm());
  for (const QString& warning : face.warnings()) std::fprintf(stderr, "%s\n", qPrintable(warning));
  if (!clean) return {};
  face.window()->resize(tablet.size);
  // An alert that is due as well would stand in front of what is to be seen.
  while (state.screen != "alert" && stage.desk().alert().up()) stage.desk().alert().hear();
  if (state.screen != "alert") face.open(QString::fromStdString(state.screen));
  face.window()->setProperty("lamp", lamp);
  face.window()->show();
  return tests::settledPicture(*face.window());
}

bool paint(const tests::State& state, const tests::Tablet& tablet, bool lamp, const QDir& folder) {
  const QString name = QStringLiteral("%1-%2-%3.png")
                           .arg(QString::fromStdString(state.name))
                           .arg(tablet.size.width())
                           .arg(lamp ? QStringLiteral("lamp") : QStringLiteral("day"));
  const QImage picture = pictureOf(state, tablet, lamp);
  return !picture.isNull() && picture.save(folder.filePath(name));
}

// The pictures of README.md: of which state, in which light, under which name.
struct Shown {
  const char* file;
  const char* state;
  bool lamp;
};
constexpr std::array kReadme = {Shown{"bench.png", "bench-strips-second", false}, Shown{"act.png", "bench-act", false},
                                Shown{"waiting.png", "bench-waiting", true}, Shown{"alert.png", "alert-high", false},
                                Shown{"design.png", "design-borders", false}};
// A page with all of them should open at once anywhere.
constexpr qint64 kMostBytes = 200'000;

// In the colours that most of it has: a screen has few but for the leaf of a piece, and no eye misses the rest.
QImage inFewColours(const QImage& picture) {
  constexpr std::size_t kColours = 256;
  QHash<QRgb, int> counts;
  for (int y = 0; y < picture.height(); ++y) {
    for (int x = 0; x < picture.width(); ++x) ++counts[picture.pixel(x, y)];
  }
  QList<QRgb> table = counts.keys();
  std::sort(table.begin(), table.end(),
            [&](QRgb a, QRgb b) { return std::pair(counts[b], b) < std::pair(counts[a], a); });
  table.resize(std::min<qsizetype>(table.size(), kColours));
  return picture.convertToFormat(QImage::Format_Indexed8, table, Qt::ThresholdDither | Qt::AvoidDither);
}

bool paintReadme(const QDir& folder) {
  bool all = true;
  for (const Shown& shown : kReadme) {
    const auto& states = tests::states();
    const auto state =
        std::find_if(states.begin(), states.end(), [&](const auto& one) { return one.name == shown.state; });
    const QImage picture = state == states.end() ? QImage() : pictureOf(*state, tests::tablets().front(), shown.lamp);
    QImageWriter writer(folder.filePath(QString::fromLatin1(shown.file)), "png");
    constexpr int kSmallest = 100;
    writer.setCompression(kSmallest);
    const bool kept = !picture.isNull() && writer.write(inFewColours(picture));
    const qint64 bytes = QFileInfo(writer.fileName()).size();
    if (!kept || bytes > kMostBytes) {
      std::fprintf(stderr, "%s was not kept, or is too large: %lld bytes\n", shown.file, static_cast<long long>(bytes));
      all = false;
    }
  }
  return all;
}

}  // namespace

int main(int argc, char* argv[]) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QT_QUICK_BACKEND", "software");
  QGuiApplication application(argc, argv);
  if (argc < 2) {
    std::fprintf(stderr, "mountwright_gallery FOLDER [STATE]\n");
    return 2;
  }
  const QDir folder(QString::fromLocal8Bit(argv[1]));
  if (!folder.mkpath(QStringLiteral("."))) return 3;
  // Before anything is painted: what measured a text already would go on with the letters it found.
  app::face::chooseLetters();
  if (argc > 2 && std::string_view(argv[2]) == "readme") return paintReadme(folder) ? 0 : 1;
  bool all = true;
  if (argc < 3 || std::string_view(argv[2]) == "specimen") all = tests::paintSpecimen(folder);
  if (argc < 3 || std::string_view(argv[2]) == "acts") all = tests::paintActs(folder) && all;
  if (argc < 3 || std::string_view(argv[2]) == "materials") all = tests::paintPieces(folder) && all;
  for (const tests::State& state : tests::states()) {
    if (argc > 2 && state.name != argv[2]) continue;
    for (const tests::Tablet& tablet : tests::tablets()) {
      if (!tests::isShownOn(state, tablet)) continue;
      for (const bool lamp : {false, true}) all = paint(state, tablet, lamp, folder) && all;
    }
  }
  return all ? 0 : 1;
}
