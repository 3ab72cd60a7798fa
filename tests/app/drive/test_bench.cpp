// The bench with a clock that stands still until told otherwise, and a socket to ask it what it shows. Everything
// else is the program's own: screens, view models, workbench, SQLite file. Nothing here acts for the maker.
//   mountwright_test_bench DATABASE SOCKET WIDTH HEIGHT JOB...
// One line a request: "advance MINUTES", "off MINUTES" (and on again, with a wall clock nobody
// steered), "state", "export", "design" (the document at the desk), "piece" (where it is drawn), "quit"; one line an
// answer.
#include <QDir>
#include <QGuiApplication>
#include <QLocalServer>
#include <QLocalSocket>
#include <QQuickItem>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "app/convert/text.h"
#include "app/face/face.h"
#include "app/stores/sqlite_event_store.h"
#include "app/viewmodels/desk.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/base/json.h"
#include "tests/support/fake_clock.h"

namespace {

using core::base::Value;

constexpr double kTabletWidth = 217;  // mm of the longer side of the screen that is played

// What a list has scrolled out of view no finger reaches.
void collectKeys(const QQuickItem* item, const QRectF& seen, Value& keys) {
  if (!item->isVisible()) return;
  const QRectF here = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
  const QRectF within = item->clip() ? seen.intersected(here) : seen;
  if (item->property("isKey").toBool() && item->isEnabled() && seen.contains(here.center())) {
    const QRectF& place = here;
    // What stands on it; where that is drawn by hand, what its action is called.
    const QString legend = item->property("legend").toString();
    const QString called = item->property("text").toString();
    keys.append(Value::object()
                    .set("legend", Value::text((legend.isEmpty() ? called : legend).toStdString()))
                    .set("x", Value::number(place.center().x()))
                    .set("y", Value::number(place.center().y())));
  }
  for (const QQuickItem* child : item->childItems()) collectKeys(child, within, keys);
}

std::string stateOf(const app::face::Face& face, app::viewmodels::Desk& desk) {
  Value keys = Value::array();
  constexpr double kEndless = 1e6;
  collectKeys(face.window()->contentItem(), QRectF(-kEndless, -kEndless, 2 * kEndless, 2 * kEndless), keys);
  Value state = Value::object();
  state.set("screen", Value::text(face.window()->property("shown").toString().toStdString()));
  state.set("kind", Value::integer(static_cast<int>(desk.bench().kind())));
  state.set("step", Value::text(desk.bench().stepId().toStdString()));
  state.set("title", Value::text(desk.bench().title().toStdString()));
  state.set("thing", Value::text(desk.bench().thing().toStdString()));
  state.set("next", Value::text(desk.bench().next().toStdString()));
  state.set("number", Value::integer(desk.bench().figure()->index()));
  state.set("numbers", Value::integer(desk.bench().figure()->total()));
  state.set("refusal", Value::text(desk.bench().refusal().toStdString()));
  state.set("alert", Value::text(desk.alert().identity().toStdString()));
  state.set("running", Value::integer(desk.shelf().count()));
  state.set("design", Value::text(desk.design().id()));
  state.set("dragged", Value::text(desk.design().dragged().toStdString()));
  state.set("toll", Value::text(desk.design().comesTo().toStdString()));
  state.set("jobChosen", Value::text(desk.jobs().chosenTitle().toStdString()));
  state.set("pieceChosen", Value::text(desk.pieces().chosenTitle().toStdString()));
  state.set("cutting",
            Value::text((desk.cutting().heading() + QLatin1Char('\n') + desk.cutting().said()).toStdString()));
  state.set("keys", std::move(keys));
  return core::base::writeJson(state, 0);
}

// Where an item stands in the window; of a drawing also where its own origin lies, and its scale.
std::string placeOf(const app::face::Face& face, const char* name) {
  const auto* item = face.window()->findChild<QQuickItem*>(QString::fromLatin1(name));
  const QRectF place = item == nullptr ? QRectF() : item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
  const QPointF origin = item == nullptr ? QPointF() : place.topLeft() + item->property("origin").toPointF();
  const double perMm = item == nullptr ? 0 : item->property("pixelsPerMm").toDouble();
  return core::base::writeJson(Value::object()
                                   .set("left", Value::number(origin.x()))
                                   .set("top", Value::number(origin.y()))
                                   .set("perMm", Value::number(perMm))
                                   .set("x", Value::number(place.x()))
                                   .set("y", Value::number(place.y()))
                                   .set("width", Value::number(place.width()))
                                   .set("height", Value::number(place.height())),
                               0);
}

int complain(const char* what) {
  std::fprintf(stderr, "test bench: %s\n", what);
  return 3;
}

}  // namespace

int main(int count, char** arguments) {
  QGuiApplication application(count, arguments);
  const QStringList given = QGuiApplication::arguments();
  if (given.size() < 5) return complain("wrong use");
  tests::FakeClock clock;
  auto store = app::stores::SqliteEventStore::open(given[1]);
  if (!store) return complain(store.error().id.c_str());
  auto library = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString());
  app::workbench::Workbench workbench(*store.value(), clock, library.library, "this-tablet");
  if (!workbench.load().id.empty()) return complain("the record does not load");
  for (const QString& path : given.mid(5)) {
    std::ifstream file(path.toStdString(), std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    if (workbench.takeIn(text.str()).jobId.empty()) return complain("a job was not taken in");
  }
  app::viewmodels::Desk desk(workbench, clock);
  app::face::Face face;
  const int width = given[3].toInt();
  const int height = given[4].toInt();
  if (!face.load(desk, std::max(width, height) / kTabletWidth)) {
    std::fprintf(stderr, "%s\n", face.warnings().join(QLatin1Char('\n')).toUtf8().constData());
    return complain("the screens do not load");
  }
  face.window()->setGeometry(0, 0, width, height);
  face.window()->show();

  QLocalServer server;
  if (!server.listen(given[2])) return complain("no socket");
  QObject::connect(&server, &QLocalServer::newConnection, &application, [&] {
    QLocalSocket* socket = server.nextPendingConnection();
    QObject::connect(socket, &QLocalSocket::readyRead, socket, [&, socket] {
      while (socket->canReadLine()) {
        const QString line = QString::fromUtf8(socket->readLine()).trimmed();
        std::string answer = "ok";
        if (line.startsWith(QLatin1String("advance "))) {
          clock.advance(static_cast<std::int64_t>(line.section(QLatin1Char(' '), 1).toDouble() * 60'000));
          desk.refresh();
        } else if (line.startsWith(QLatin1String("off "))) {
          workbench.heartbeat();
          clock.setSynced(false);
          clock.reboot(static_cast<std::int64_t>(line.section(QLatin1Char(' '), 1).toDouble() * 60'000), 120'000);
          desk.refresh();
        } else if (line == QLatin1String("state")) {
          answer = stateOf(face, desk);
        } else if (line == QLatin1String("export")) {
          const auto parsed = core::base::parseJson(workbench.exportRecord(workbench.jobs().front().id));
          answer = core::base::writeJson(parsed.root, 0);
        } else if (line == QLatin1String("design")) {
          const auto* design = workbench.designs().find(desk.design().id());
          answer = core::base::writeJson(design == nullptr ? Value() : design->document, 0);
        } else if (line == QLatin1String("piece")) {
          answer = placeOf(face, "piece");
        } else if (line == QLatin1String("quit")) {
          QCoreApplication::quit();
        }
        socket->write(answer.c_str());
        socket->write("\n");
        socket->flush();
      }
    });
  });
  std::printf("ready\n");
  std::fflush(stdout);
  return QGuiApplication::exec();
}
