// Pictures of every screen and state, in both lights and on every size of tablet, of every act on two sheets, and first
// of what all of them are made of: mountwright_gallery FOLDER [STATE]
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QQuickItem>
#include <cstdio>

#include "app/face/face.h"
#include "app/face/letters.h"
#include "tests/app/gallery/act_sheet.h"
#include "tests/app/gallery/piece_sheet.h"
#include "tests/app/gallery/settled.h"
#include "tests/app/gallery/specimen_sheet.h"
#include "tests/app/gallery/states.h"

namespace {

bool paint(const tests::State& state, const tests::Tablet& tablet, bool lamp, const QDir& folder) {
  tests::Stage stage(state.jobs);
  if (!state.reach(stage)) {
    std::fprintf(stderr, "%s was not reached\n", state.name.c_str());
    return false;
  }
  app::face::Face face;
  const bool clean = face.load(stage.desk(), tablet.dotsPerMm());
  for (const QString& warning : face.warnings()) std::fprintf(stderr, "%s\n", qPrintable(warning));
  if (!clean) return false;
  face.window()->resize(tablet.size);
  // An alert that is due as well would stand in front of what is to be seen.
  while (state.screen != "alert" && stage.desk().alert().up()) stage.desk().alert().hear();
  if (state.screen != "alert") face.open(QString::fromStdString(state.screen));
  face.window()->setProperty("lamp", lamp);
  face.window()->show();
  const QString name = QStringLiteral("%1-%2-%3.png")
                           .arg(QString::fromStdString(state.name))
                           .arg(tablet.size.width())
                           .arg(lamp ? QStringLiteral("lamp") : QStringLiteral("day"));
  return tests::settledPicture(*face.window()).save(folder.filePath(name));
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
