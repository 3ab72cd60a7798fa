// The composition root: the machine's clocks, the record's file, the techniques, the alerts and the screens meet
// here and nowhere else.
#include <QGuiApplication>
#include <QScopeGuard>
#include <QScreen>
#include <QStandardPaths>
#include <clocale>
#include <cstring>
#include <future>
#include <iostream>
#include <memory>
#include <optional>
#ifdef Q_OS_UNIX
#include <langinfo.h>
#endif

#include "app/alerts/alerts.h"
#include "app/aside/aside.h"
#include "app/caretaker/caretaker.h"
#include "app/clocks/system_clock.h"
#include "app/commands/command_line.h"
#include "app/commands/commands.h"
#include "app/convert/text.h"
#include "app/face/face.h"
#include "app/face/icon.h"
#include "app/files/standard_streams.h"
#include "app/files/whole_file.h"
#include "app/photographs/at_hand.h"
#include "app/photographs/photographs.h"
#include "app/room/sensors.h"
#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "app/viewmodels/desk.h"
#include "app/words/words.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"

namespace {

// The alerts report at once when something is due; this is for the minutes that are shown.
constexpr int kRefresh = 15'000;  // milliseconds

QString said(const core::base::Message& message) {
  return app::words::text(message, core::units::UnitSystem::Millimetres);
}

void complain(const QString& text) { std::cerr << text.toStdString() << '\n'; }

QString soundTrouble(app::alerts::Alerts::Sound sound) {
  using Sound = app::alerts::Alerts::Sound;
  switch (sound) {
    case Sound::NoDevice: return QCoreApplication::translate("bench", "No sound device: watch the shelf.");
    case Sound::Stalled: return QCoreApplication::translate("bench", "The sound has stalled: watch the shelf.");
    case Sound::Muted: return QCoreApplication::translate("bench", "The sound is muted: watch the shelf.");
    case Sound::Starting:
    case Sound::Ready: break;
  }
  return {};
}

void takeCare(app::caretaker::Caretaker& caretaker, app::viewmodels::Desk& desk) {
  using Caretaker = app::caretaker::Caretaker;
  const auto say = [&desk](Caretaker::Trouble trouble, const core::base::Message& message) {
    using Shown = app::viewmodels::WatchViewModel::Trouble;
    const auto shown = [trouble] {
      switch (trouble) {
        case Caretaker::Trouble::Record: return Shown::Record;
        case Caretaker::Trouble::Sleep: return Shown::Sleep;
        case Caretaker::Trouble::Battery: return Shown::Battery;
        case Caretaker::Trouble::Sensor: break;
      }
      return Shown::Sensor;
    };
    desk.watch().set(shown(), message.id.empty() ? QString() : said(message));
  };
  QObject::connect(&caretaker, &Caretaker::troubleChanged, &desk, say);
  QObject::connect(&caretaker, &Caretaker::timeChanged, &desk, &app::viewmodels::Desk::refresh);
  caretaker.start();
}

// A large record is opened without reading all of it; faults further in are reported as soon as they are known.
void checkWhole(const QString& folder, app::viewmodels::Desk& desk) {
  if (!app::stores::isReadInPart(folder)) return;
  app::aside::aside(&desk, [folder, &desk]() -> app::aside::Told {
    const core::base::Message trouble = app::stores::readThrough(folder);
    return [trouble, &desk] {
      if (!trouble.id.empty()) desk.setTrouble(said(trouble));
    };
  });
}

bool hasDisplay() {
#ifdef Q_OS_LINUX
  return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
         qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
#else
  return true;
#endif
}

// The trouble that prevents work at the bench; empty where there is none.
struct Opened {
  std::unique_ptr<app::stores::RecordLock> lock;
  std::unique_ptr<core::record::EventStore> store;
  std::string deviceId;
  core::base::Message trouble;
};

// A store for the time a trouble is on the screen: stores nothing and returns the reason.
class NoStore : public core::record::EventStore {
 public:
  explicit NoStore(core::base::Message why) : m_why(std::move(why)) {}
  template <typename Value>
  using Result = core::base::Result<Value, core::record::StoreError>;
  Result<core::record::Done> append(const std::vector<core::record::Event>&,
                                    const std::vector<core::record::StoredText>&) override {
    return m_why;
  }
  Result<core::record::Feed> since(const std::string&, std::size_t) override { return m_why; }
  Result<std::optional<core::record::StoredText>> text(const std::string&) override { return m_why; }
  Result<core::record::Done> logClock(const std::string&, const std::string&,
                                      const core::waits::ClockReading&) override {
    return m_why;
  }
  Result<core::waits::ClockLog> clockLog(const std::string&) override { return m_why; }

 private:
  core::base::Message m_why;
};

Opened openStore(const QString& option, QString& folder) {
  Opened opened;
  const auto data = app::stores::dataDirectory(option);
  if (!data.ok()) {
    opened.trouble = data.error();
  } else {
    folder = data.value();
    auto record = app::stores::openRecord(folder);
    if (record.ok()) {
      app::stores::OpenRecord held = std::move(record).value();
      opened.lock = std::move(held.lock);
      opened.deviceId = held.deviceId;
      opened.store = std::move(held.store);
    } else {
      opened.trouble = record.error();
    }
  }
  if (!opened.store) opened.store = std::make_unique<NoStore>(opened.trouble);
  return opened;
}

// Takes the files in; the last one that can be opened is the job on the bench.
std::string takeIn(app::workbench::Workbench& workbench, const QStringList& files) {
  std::string job;
  for (const QString& name : files) {
    const auto text = app::files::readWhole(name, core::base::kMaximumJsonBytes);
    if (!text) {
      complain(name + QStringLiteral(": ") + said(text.error()));
      continue;
    }
    const auto taken = workbench.takeIn(text.value());
    for (const auto& problem : taken.problems) complain(name + QStringLiteral(": ") + said(problem.message));
    for (const auto& refusal : taken.refusals) complain(name + QStringLiteral(": ") + said(refusal));
    if (!taken.jobId.empty()) job = taken.jobId;
  }
  return job;
}

int openBench(int& argc, char** argv, const app::commands::CommandLine& line, bool selfTest) {
  if (selfTest && !hasDisplay()) qputenv("QT_QPA_PLATFORM", "offscreen");
  if (!hasDisplay()) {
    complain(QCoreApplication::translate("bench", "There is no display to open the bench on."));
    return app::commands::kUnreadable;
  }
  QGuiApplication application(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("mountwright"));
  QGuiApplication::setDesktopFileName(QStringLiteral("mountwright"));

  const app::clocks::SystemClock clock;
  QString folder;
  Opened opened = openStore(line.data, folder);
  const auto recipes = app::workbench::recipesFolder(line.recipes);
  // The techniques are read while the screens are.
  std::future<app::workbench::LoadedLibrary> loading;
  if (recipes.ok()) {
    loading = std::async(std::launch::async, app::workbench::loadLibrary, recipes.value(),
                         folder.isEmpty() ? QString() : app::stores::ownTechniques(folder));
  } else {
    complain(said(recipes.error()));
  }
  app::face::Face face;
  app::workbench::LoadedLibrary loaded = loading.valid() ? loading.get() : app::workbench::LoadedLibrary();
  for (const auto& problem : loaded.problems) {
    complain(app::convert::toQt(problem.file) + QStringLiteral(": ") + said(problem.problem.message));
  }

  const app::photographs::Photographs photographs(app::stores::photographsFolder(folder));
  app::workbench::Workbench workbench(*opened.store, clock, std::move(loaded.library), opened.deviceId);
  // Only who holds the record may: another bench may be copying into the same folder.
  if (opened.trouble.id.empty()) {
    photographs.sweep();
    workbench.keepPhotographsIn(photographs);
  }
  // Without a store it gets the reason, and reports nothing as missing.
  const core::base::Message unread = workbench.load();
  if (opened.trouble.id.empty()) opened.trouble = unread;
  std::string job;
  if (opened.trouble.id.empty()) job = takeIn(workbench, line.files);

  app::viewmodels::Desk desk(workbench, clock);
  if (!job.empty()) desk.bench().selectJob(job);
  if (recipes.ok()) {
    const auto demo = app::files::readWhole(recipes.value() + QStringLiteral("/jobs/pilots-chart.job.json"),
                                            core::base::kMaximumJsonBytes);
    if (demo) desk.settings().setDemo(demo.value());
  }
  if (!opened.trouble.id.empty()) desk.setTrouble(said(opened.trouble));

  const auto shut = qScopeGuard([&face] { face.close(); });
  const bool clean = face.load(desk, app::face::dotsPerMillimetre(QGuiApplication::primaryScreen()));
  for (const QString& warning : face.warnings()) complain(warning);
  if (face.window() == nullptr) return app::commands::kUnreadable;
  if (selfTest) return clean ? app::commands::kDone : app::commands::kUnreadable;

  // Where nobody manages windows nothing is maximised: then it is at least no larger than the screen it stands on.
  face.window()->resize(face.window()->size().boundedTo(face.window()->screen()->availableSize()));
  face.window()->showMaximized();

  using Trouble = app::viewmodels::WatchViewModel::Trouble;
  app::alerts::Alerts alerts([&clock] { return clock.now().boottimeNanoseconds; });
  QObject::connect(&workbench, &app::workbench::Workbench::scheduleChanged, &alerts,
                   [&] { alerts.publish(workbench.schedule()); });
  QObject::connect(&alerts, &app::alerts::Alerts::dueChanged, &desk, [&desk] { desk.refresh(); });
  QObject::connect(&alerts, &app::alerts::Alerts::soundChanged, &desk, [&desk](app::alerts::Alerts::Sound sound) {
    desk.watch().set(Trouble::Sound, soundTrouble(sound));
    desk.settings().setSound(soundTrouble(sound));
  });
  QObject::connect(&desk.settings(), &app::viewmodels::SettingsViewModel::soundAsked, &alerts,
                   &app::alerts::Alerts::tryOut);
  QObject::connect(&face, &app::face::Face::pedalPressed, &desk.settings(),
                   &app::viewmodels::SettingsViewModel::pedalPressed);
  QObject::connect(&desk.bench(), &app::viewmodels::BenchViewModel::handsFree, &alerts,
                   &app::alerts::Alerts::releaseHeld);
  QObject::connect(&face, &app::face::Face::pedalPressed, &alerts, &app::alerts::Alerts::releaseHeld);
  desk.watch().set(Trouble::Sound, soundTrouble(alerts.sound()));
  desk.watch().setLiving([&alerts] { return alerts.sinceBeat() < std::chrono::seconds(24); });
  alerts.publish(workbench.schedule());
  desk.keepFresh(kRefresh);

  const auto pictures = [] {
    constexpr int kMostShown = 60;
    return app::photographs::picturesIn(app::photographs::usualFolders(), kMostShown);
  };
  desk.record().setPictures(pictures);
  desk.appearance().setPictures(pictures);
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  desk.pieces().setHandOver(documents + QStringLiteral("/Mountwright"), [documents] {
    constexpr int kMostShown = 60;
    QStringList folders = app::photographs::usualFolders();
    folders.prepend(documents + QStringLiteral("/Mountwright"));
    return app::photographs::filesIn(folders, {QStringLiteral("*.job.json"), QStringLiteral("*.record.json")},
                                     kMostShown);
  });
  desk.room().setSensors([] { return app::room::findSensors(); });
  // Where there is no record to keep there is nothing to look after.
  std::optional<app::caretaker::Caretaker> caretaker;
  // Not while the first picture is made: that is waited for.
  QObject::connect(
      face.window(), &QQuickWindow::frameSwapped, &desk, [] { QGuiApplication::setWindowIcon(app::face::icon()); },
      Qt::ConnectionType(Qt::QueuedConnection | Qt::SingleShotConnection));
  if (opened.trouble.id.empty()) {
    QObject::connect(
        face.window(), &QQuickWindow::frameSwapped, &desk, [&desk, folder] { checkWhole(folder, desk); },
        Qt::ConnectionType(Qt::QueuedConnection | Qt::SingleShotConnection));
  }
  if (opened.trouble.id.empty()) takeCare(caretaker.emplace(workbench, clock), desk);

  return QGuiApplication::exec();
}

// Qt warns on the error stream that a locale is not UTF-8, and continues as if it were: the warning is useless to a
// caller who only wants figures.
void useUtf8() {
#ifdef Q_OS_UNIX
  std::setlocale(LC_CTYPE, "");
  if (std::strcmp(nl_langinfo(CODESET), "UTF-8") == 0) return;
  qunsetenv("LC_ALL");
  qputenv("LC_CTYPE", "C.UTF-8");
#endif
}

}  // namespace

int main(int argc, char* argv[]) {
  app::files::holdStandardStreams();
  useUtf8();
  QStringList arguments;
  bool selfTest = false;
  for (int i = 1; i < argc; ++i) {
    const QString argument = QString::fromLocal8Bit(argv[i]);
    if (argument == QLatin1String("--self-test")) {
      selfTest = true;
    } else {
      arguments << argument;
    }
  }
  const app::commands::CommandLine line = app::commands::parseCommandLine(arguments);
  if (app::commands::opensBench(line)) return openBench(argc, argv, line, selfTest);
  const QCoreApplication application(argc, argv);
  return app::commands::run(line, std::cout, std::cerr);
}
