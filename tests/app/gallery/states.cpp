#include "tests/app/gallery/states.h"

#include <QEventLoop>
#include <QObject>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <set>

#include "app/convert/content_hash.h"
#include "app/photographs/photographs.h"
#include "app/workbench/library_loader.h"
#include "core/base/text.h"
#include "tests/app/gallery/sheet_print.h"
#include "tests/support/event_loop.h"
#include "tests/support/files.h"

namespace tests {
namespace {

using app::viewmodels::BenchViewModel;
using app::viewmodels::CuttingViewModel;
using app::viewmodels::DesignViewModel;
using Kind = BenchViewModel::Kind;

constexpr int kMostSteps = 2000;
constexpr std::int64_t kMinute = 60'000;

bool kindIs(Stage& stage, Kind kind) {
  return stage.workUntil([&] { return stage.desk().bench().kind() == kind; });
}

bool enterRoom(Stage& stage, double celsius, double percent) {
  const core::units::Room room{core::units::Temperature::celsius(celsius), core::units::Humidity::percent(percent)};
  return stage.workbench().submit(core::intents::OfShop{core::intents::EnterRoom{room, false}}).id.empty();
}

}  // namespace

Stage::Stage(const std::vector<std::string>& jobs) {
  auto loaded = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString());
  m_workbench = std::make_unique<app::workbench::Workbench>(m_store, m_clock, std::move(loaded.library), m_deviceId);
  static_cast<void>(m_workbench->load());
  for (const std::string& job : jobs) {
    const std::size_t times = job.find('*');
    auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/" + job.substr(0, times) + ".job.json");
    if (!text) continue;
    if (times != std::string::npos) {
      text->insert(text->find('{') + 1, R"("deliver": "mount", "count": )" + job.substr(times + 1) + ", ");
    }
    static_cast<void>(m_workbench->takeIn(*text));
  }
  m_desk = std::make_unique<app::viewmodels::Desk>(*m_workbench, m_clock);
}

bool Stage::reopenWith(const std::string& technique, const std::string& found, const std::string& put) {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/" + technique + ".technique.json");
  QTemporaryDir own;
  if (!text || text->find(found) == std::string::npos ||
      !writeWholeFile(own.filePath(QStringLiteral("own.technique.json")).toStdString(),
                      core::base::replaceAll(*text, found, put))) {
    return false;
  }
  auto loaded = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), own.path());
  m_desk.reset();
  m_workbench = std::make_unique<app::workbench::Workbench>(m_store, m_clock, std::move(loaded.library), m_deviceId);
  if (!loaded.problems.empty() || !m_workbench->load().id.empty()) return false;
  m_desk = std::make_unique<app::viewmodels::Desk>(*m_workbench, m_clock);
  return true;
}

bool Stage::damage(const std::string& job) {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/" + job + ".job.json");
  if (!text) return false;
  m_store.replaceText(app::convert::contentHash(*text), "{}");
  return true;
}

bool Stage::reopen() {
  auto loaded = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString());
  m_desk.reset();
  m_workbench = std::make_unique<app::workbench::Workbench>(m_store, m_clock, std::move(loaded.library), m_deviceId);
  if (!m_workbench->load().id.empty()) return false;
  m_desk = std::make_unique<app::viewmodels::Desk>(*m_workbench, m_clock);
  return true;
}

bool Stage::beginDesign(const std::string& job) {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/" + job + ".job.json");
  if (!text) return false;
  const std::string id = m_workbench->newId();
  const core::intents::BeginDesign begin{core::base::parseJson(*text).root, ""};
  return m_workbench->submit(core::intents::OfDesign{id, begin}).id.empty() && m_desk->design().open(id);
}

bool Stage::workUntil(const std::function<bool()>& there) {
  BenchViewModel& bench = m_desk->bench();
  for (int i = 0; i < kMostSteps; ++i) {
    if (there()) return true;
    if (bench.kind() == Kind::Step) {
      if (!bench.finish()) return false;
      m_clock.advance(kMinute);
    } else if (bench.kind() == Kind::Missed) {
      bench.takeUpMissed();
    } else if (bench.kind() == Kind::Waiting) {
      m_clock.advance(5 * kMinute);
    } else {
      return there();
    }
    m_desk->refresh();
  }
  return false;
}

const std::vector<State>& states() {
  static const std::vector<std::string> kChart = {"pilots-chart"};
  static const std::vector<std::string> kTwelve = {"pilots-chart*12"};
  static const std::vector<std::string> kHeron = {"heron"};
  static const std::vector<std::string> kTide = {"tide-table"};
  static const std::vector<std::string> kBoth = {"heron", "pilots-chart"};
  static const std::vector<std::string> kMany = {"heron",           "pilots-chart", "tide-table",
                                                 "pilots-chart*12", "heron*2",      "tide-table*3"};
  static const std::vector<std::string> kAll = {"heron", "pilots-chart", "tide-table"};
  static const auto kFirst = [](Stage&) { return true; };
  static const auto kCaution = [](Stage& stage) {
    return stage.workUntil(
        [&] { return stage.desk().bench().hasCaution() && stage.desk().bench().figure()->present(); });
  };
  static const auto kFraction = [](Stage& stage) {
    return stage.workUntil([&] {
      const auto* figure = stage.desk().bench().figure();
      return !figure->denominator().isEmpty() && !figure->whole().isEmpty() && figure->total() > 1;
    });
  };
  // Where the last look takes ten times as long as when the piece was begun.
  static const auto kRenewed = [](Stage& stage) {
    return stage.reopenWith("final-look", R"("early": "2 min", "likely": "4 min", "late": "8 min")",
                            R"("early": "20 min", "likely": "40 min", "late": "80 min")");
  };
  static const auto kAlert = [](bool high) {
    return [high](Stage& stage) {
      return stage.workUntil([&] {
        if (!stage.desk().alert().up()) return false;
        if (stage.desk().alert().high() == high) return true;
        stage.desk().alert().hear();
        return false;
      });
    };
  };
  // Led the short way, to the act that holds such a step.
  static const auto kShort = [](const QString& step) {
    return [step](Stage& stage) {
      stage.desk().settings().turnWay();
      stage.desk().refresh();
      return stage.workUntil([&] {
        const auto& steps = stage.desk().bench().steps();
        return std::any_of(steps.begin(), steps.end(),
                           [&](const auto* one) { return QString::fromStdString(one->id).contains(step); });
      });
    };
  };
  static const auto kAct = [](const QString& step) {
    return [step](Stage& stage) {
      return stage.workUntil([&] {
        const auto& steps = stage.desk().bench().steps();
        return std::any_of(steps.begin(), steps.end(),
                           [&](const auto* one) { return QString::fromStdString(one->id).contains(step); });
      });
    };
  };
  // In the setting-out of an arch, at the radius of its head.
  static const auto kRadius = [](Stage& stage) {
    if (!kAct("/set-out@top")(stage)) return false;
    auto* figure = stage.desk().bench().figure();
    while (!figure->label().contains(QObject::tr("radius"))) {
      if (!figure->forward()) return false;
    }
    return true;
  };
  // In an act that holds such a step, at a number.
  static const auto kAtNumber = [](const QString& step, const std::string& number) {
    return [step, number](Stage& stage) {
      if (!kAct(step)(stage)) return false;
      auto* figure = stage.desk().bench().figure();
      while (!core::base::endsWith(figure->currentId(), number)) {
        if (!figure->forward()) return false;
      }
      return true;
    };
  };
  // The four borders in place of the marks.
  static const auto kBorders = [](Stage& stage) {
    stage.desk().settings().turnMarking();
    return kShort("/mark-window@top")(stage) && stage.desk().bench().figure()->forward();
  };
  // At what the cutter is set to.
  static const auto kDepth = [](Stage& stage) {
    if (!kShort("/mark-window@top")(stage)) return false;
    auto* figure = stage.desk().bench().figure();
    while (!figure->label().contains(QObject::tr("slope"))) {
      if (!figure->forward()) return false;
    }
    return true;
  };
  // The pad.
  static const auto kMeasuring = [](Stage& stage) {
    return stage.workUntil([&] { return stage.desk().made().total() > 1; });
  };
  // A window not as was computed.
  static const auto kWiderWindow = [](Stage& stage) {
    if (!kAct("/measure-window@")(stage)) return false;
    auto& made = stage.desk().made();
    while (!made.label().contains(QObject::tr("sight width"))) {
      if (!made.forward()) return false;
    }
    for (const int digit : {3, 1, 6}) made.digit(digit);
    return made.keep();
  };
  // More than one alert that takes the screen.
  static const auto kSeveral = [](Stage& stage) {
    return stage.workUntil([&] {
      if (!stage.desk().alert().others().isEmpty()) return true;
      stage.clock().advance(30 * kMinute);
      stage.desk().refresh();
      return !stage.desk().alert().others().isEmpty();
    });
  };
  // Two waits begun in one go, on one line of the shelf.
  static const auto kTwoTrials = [](Stage& stage) {
    return stage.workUntil([&] {
      const auto& shelf = stage.desk().shelf();
      int trials = 0;
      for (int row = 0; row < shelf.count(); ++row) {
        const auto name = shelf.data(shelf.index(row), app::viewmodels::ShelfModel::Name).toString();
        trials += name.contains(QObject::tr("trial hardens")) ? 1 : 0;
      }
      return trials > 0;
    });
  };
  // The piece on the bench waits, and another has an act that ends in time.
  static const auto kMeanwhile = [](Stage& stage) {
    return stage.workUntil([&] { return stage.desk().meanwhile().present(); });
  };
  // Two pieces at which something dries, the one left last first.
  static const auto kPlaces = [](Stage& stage) {
    if (!kMeanwhile(stage)) return false;
    stage.desk().meanwhile().take();
    stage.desk().refresh();
    const auto ofBoth = [&] {
      std::set<std::string> jobs;
      for (const auto& row : stage.desk().shelf().rows()) jobs.insert(row.job);
      return jobs.size() > 1;
    };
    return stage.workUntil(ofBoth);
  };
  static const auto kLookDue = [](Stage& stage) {
    return stage.workUntil([&] {
      const auto& shelf = stage.desk().shelf();
      for (int row = 0; row < shelf.count(); ++row) {
        if (shelf.data(shelf.index(row), app::viewmodels::ShelfModel::Look).toBool()) return true;
      }
      return false;
    });
  };
  // Off over night in the middle of a wait, and a clock no server has steered since.
  static const auto kUnknownOff = [](Stage& stage) {
    if (!kindIs(stage, Kind::Waiting)) return false;
    stage.workbench().heartbeat();
    stage.clock().setSynced(false);
    stage.clock().reboot(14 * 60 * kMinute, 5 * kMinute);
    stage.desk().refresh();
    return stage.desk().off().asked();
  };
  // One piece dries, and of the other nobody knows.
  static const auto kDamagedBeside = [](Stage& s) {
    if (!s.workUntil([&] { return s.desk().shelf().count() > 0; }) || !s.damage("pilots-chart") || !s.reopen())
      return false;
    // The sound one is on the bench, whichever of the two was listed first.
    for (const auto& entry : std::vector(s.workbench().jobs())) {
      if (s.workbench().job(entry.id) != nullptr) s.desk().bench().selectJob(entry.id);
    }
    s.desk().refresh();
    return s.desk().shelf().count() > 0 && !s.desk().shelf().unknown().isEmpty();
  };
  static const auto kChosen = [](Stage& s) {
    s.desk().jobs().choose(0);
    return true;
  };
  // So many pages into the first sheet; -1: its last.
  static const auto kSheetUnderWay = [](int pages) {
    return [pages](Stage& s) {
      s.desk().jobs().choose(0);
      auto& cutting = s.desk().cutting();
      for (int i = 0; i != pages && cutting.page() != CuttingViewModel::Page::Keep; ++i) cutting.forward();
      return true;
    };
  };
  static const auto kAllCut = [](Stage& s) {
    s.desk().jobs().choose(0);
    for (int i = 0; i < kMostSteps && s.desk().cutting().page() != CuttingViewModel::Page::Over; ++i) {
      s.desk().cutting().forward();
    }
    return s.desk().cutting().page() == CuttingViewModel::Page::Over;
  };
  // A few things in stock, one of them chosen, an old batch, and the offcuts of a job.
  static const auto kStocked = [](Stage& s) {
    using namespace core::intents;
    using core::units::Length;
    StockEntry board;
    board.name = "museum board";
    board.quantity = 4;
    board.width = Length::wholeMillimetres(810);
    board.height = Length::wholeMillimetres(1020);
    board.thickness = Length::wholeMillimetres(2);
    board.price = core::units::parseMoney("12.40");
    board.currency = "EUR";
    StockEntry leaf;
    leaf.kind = StockKind::Leaf;
    leaf.name = "copper leaf";
    leaf.quantity = 75;
    BatchEntry paste;
    paste.name = "starch paste 1 : 7";
    paste.madeUtc = s.clock().now().utcMilliseconds - 6 * 24 * 60 * kMinute;
    paste.keeps = core::units::Duration::minutes(3 * 24 * 60);
    paste.keepsSource = "the maker";
    for (const ShopIntent& intent :
         {ShopIntent(EnterStock{board}), ShopIntent(EnterStock{leaf}), ShopIntent(EnterBatch{paste})}) {
      if (!s.workbench().submit(core::intents::OfShop{intent}).id.empty()) return false;
    }
    s.desk().stock().choose(2);
    return true;
  };
  // The chart's paper in stock, its look open; `across`: how much of the sheet its picture shows, 0 for none entered.
  static const auto kPictured = [](Stage& s, double across) {
    using namespace core::intents;
    using core::units::Length;
    StockEntry paper;
    paper.kind = StockKind::Paper;
    paper.name = "wave-block print";
    paper.quantity = 3;
    paper.width = Length::wholeMillimetres(700);
    paper.height = Length::wholeMillimetres(500);
    if (!s.workbench().submit(core::intents::OfShop{EnterStock{paper}}).id.empty()) return false;
    s.desk().stock().choose(0);
    s.desk().stock().openAppearance();
    if (across == 0) return true;
    // Kept for all stages, as long as the program runs.
    static const QTemporaryDir kFolder;
    static const app::photographs::Photographs kPhotographs(kFolder.filePath(QStringLiteral("photographs")));
    const QString sheet = kFolder.filePath(QStringLiteral("sheet.png"));
    s.workbench().keepPhotographsIn(kPhotographs);
    auto& appearance = s.desk().appearance();
    if (!writeSheetPrint(sheet)) return false;
    appearance.keepPhotograph(sheet);
    return becomesSo([&] { return appearance.lacksAcross(); }) && appearance.enterAcross(QString::number(across)) &&
           becomesSo([&] { return !s.desk().appearances().busy(); });
  };
  static const auto kIndexed = [](Stage& s, int steps) { return s.workUntil([&] { return steps-- == 0; }); };
  static const auto kFresh = [](Stage& s) { return s.desk().design().beginFresh(); };
  // The design of the chart, in a section, perhaps at one of its fields, seen from some side.
  static const auto kDesign = [](int section, int field = -1,
                                 DesignViewModel::View view = DesignViewModel::View::Face) {
    return [=](Stage& s) {
      auto& design = s.desk().design();
      if (!s.beginDesign("pilots-chart")) return false;
      design.chooseSection(section);
      design.chooseField(field);
      design.look(view);
      return true;
    };
  };
  static const std::vector<State> kStates = {
      {"bench-first", "bench", kChart, kFirst},
      {"bench-caution", "bench", kChart, kCaution},
      {"bench-inches", "bench", kHeron, kFraction},
      {"bench-waiting", "bench", kChart, [](Stage& s) { return kindIs(s, Kind::Waiting); }},
      {"bench-meanwhile", "bench", kBoth, kMeanwhile},
      // A tack that is still to come, among the waits.
      {"bench-tack", "bench", kTide,
       [](Stage& s) {
         return s.workUntil([&] {
           const auto& rows = s.desk().shelf().rows();
           const bool tack =
               std::any_of(rows.begin(), rows.end(), [](const auto& row) { return row.told.isWindow && row.lead > 0; });
           return tack && s.desk().bench().kind() == Kind::Waiting;
         });
       }},
      {"bench-undo", "bench", kChart,
       [](Stage& s) {
         return s.workUntil([&] {
           if (s.desk().bench().steps().empty() || !s.desk().bench().finish()) return false;
           s.desk().refresh();
           return s.desk().bench().justDone();
         });
       }},
      {"waits", "waits", kBoth, kPlaces},
      {"waits-many", "waits", kAll,
       [](Stage& s) { return kPlaces(s) && s.workUntil([&] { return s.desk().places().pages() > 1; }); }},
      {"waits-none", "waits", kChart, kFirst},
      {"test", "test", kBoth,
       [](Stage& s) {
         if (!kPlaces(s)) return false;
         s.desk().places().enter();
         for (int row = 0; row < s.desk().places().count(); ++row) {
           if (s.desk().places().choose(row)) return true;
         }
         return false;
       }},
      {"bench-missed", "bench", kHeron,
       [](Stage& s) {
         return s.workUntil([&] {
           s.clock().advance(40 * kMinute);
           s.desk().refresh();
           return s.desk().bench().kind() == Kind::Missed;
         });
       }},
      {"bench-finished", "bench", kHeron, [](Stage& s) { return kindIs(s, Kind::Finished); }},
      {"bench-taken-back", "bench", kChart,
       [](Stage& s) {
         int left = 4;
         return s.workUntil([&] { return left-- == 0; }) && s.desk().bench().takeBack();
       }},
      {"bench-no-sound", "bench", kChart,
       [](Stage& s) {
         s.desk().watch().set(app::viewmodels::WatchViewModel::Trouble::Sound,
                              QObject::tr("No sound device: watch the shelf."));
         return kCaution(s);
       }},
      {"bench-store-trouble",
       "bench",
       {},
       [](Stage& s) {
         s.desk().setTrouble(QStringLiteral(
             "/home/maker/record.sqlite is damaged or cut short. It was left as it is: keep a copy of it before "
             "anything else."));
         return true;
       }},
      {"bench-damaged-beside", "bench", kBoth, kDamagedBeside},
      {"bench-empty", "bench", {}, kFirst},
      {"more", "more", kChart, kCaution},
      {"more-inches", "more", kHeron, kFraction},
      {"more-act", "more", kChart, kAct("/mitre@")},
      {"more-act-long", "more", kChart, kAct("/gum-cloth")},
      {"bench-act", "bench", kChart, kAct("/tear-hinges")},
      {"bench-strips", "bench", kChart, kAct("/cut-strips@")},
      {"bench-strips-second", "bench", kChart,
       [](Stage& s) { return kAct("/cut-strips@")(s) && s.desk().bench().figure()->forward(); }},
      {"bench-blank", "bench", kChart, kAct("/cut-blank@top")},
      {"bench-line", "bench", kHeron, kAct("/rule@")},
      {"bench-arch", "bench", kTide, kAct("/set-out@top")},
      {"bench-card", "bench", kChart, kAct("/mark-window@top")},
      {"card-marks", "bench", kChart, kShort("/mark-window@under")},
      {"card-borders", "bench", kChart, kBorders},
      {"card-inches", "bench", kHeron, kShort("/mark-window@")},
      {"card-arch", "bench", kTide, kRadius},
      {"card-depth", "bench", kChart, kDepth},
      {"card-sill", "bench", kTide, kAtNumber("/set-out@top", "mark.bottom")},
      {"card-lines", "bench", kChart, kAtNumber("/mark-window@top", "mark.top")},
      {"card-measured", "bench", kChart, kAtNumber("/measure-window@", "sight.height")},
      {"sizes-one", "bench", kChart, kAct("/cut-back")},
      {"sizes-three", "bench", kTide, kShort("/cut-blank@")},
      {"sizes-inches", "bench", kHeron, kShort("/cut-blank@")},
      {"bench-spandrel", "bench", kTide, kAct("/cut@crown")},
      {"bench-wash", "bench", kTide, kAct("/wash@shallows")},
      {"short-boards", "bench", kChart, kShort("/cut-blank@")},
      {"short-window", "bench", kChart, kShort("/mark-window@top")},
      {"short-bevels", "bench", kChart, kShort("/read-trial@")},
      {"short-strips", "bench", kChart, kShort("/brush@inner.top")},
      {"short-lines", "bench", kHeron, kShort("/rule@")},
      {"short-leaf", "bench", kChart, kShort("/frame@field")},
      {"short-twelve", "bench", kTwelve, [](Stage& s) { return kShort("/join")(s) && s.desk().bench().finishFirst(); }},
      {"short-twelve-more", "more", kTwelve, kShort("/join")},
      {"short-hinges", "bench", kChart, kShort("/hinge")},
      {"short-more", "more", kChart, kShort("/mark-window@top")},
      {"short-faults", "faults", kChart, kShort("/brush@inner.top")},
      {"short-far", "far", kChart, kShort("/mark-window@top")},
      {"look", "look", kChart,
       [](Stage& s) { return s.workUntil([&] { return s.desk().bench().look()->present(); }); }},
      {"look-doubted", "look", kChart,
       [](Stage& s) {
         if (!s.workUntil([&] { return s.desk().bench().look()->present(); })) return false;
         s.clock().advance(kMinute);
         s.desk().refresh();
         s.desk().bench().look()->ready();
         return s.desk().bench().look()->doubted();
       }},
      {"faults", "faults", kChart,
       [](Stage& s) { return s.workUntil([&] { return s.desk().bench().faults().size() > 1; }); }},
      {"mend-choice", "mend", kChart,
       [](Stage& s) {
         if (!kAct("/cut-window@top")(s)) return false;
         auto& bench = s.desk().bench();
         for (int fault = 0; fault < bench.faults().size() && bench.wayKeys().isEmpty(); ++fault) {
           if (bench.faults()[fault].contains(QObject::tr("between"))) static_cast<void>(bench.report(fault));
         }
         return bench.wayKeys().size() == 2;
       }},
      {"bench-trials", "bench", kChart, kTwoTrials},
      {"far", "far", kChart, kCaution},
      {"far-inches", "far", kHeron, kFraction},
      {"far-strips", "far", kChart, kAct("/cut-strips@")},
      {"far-act", "far", kChart, kAct("/mitre@")},
      {"far-waiting", "far", kChart, [](Stage& s) { return kindIs(s, Kind::Waiting); }},
      {"far-damaged-beside", "far", kBoth, kDamagedBeside},
      {"alert-medium", "alert", kHeron, kAlert(false)},
      {"alert-high", "alert", kHeron, kAlert(true)},
      {"alert-several", "alert", kBoth, kSeveral},
      {"made", "made", kChart, kMeasuring},
      {"made-inches", "made", kHeron, kMeasuring},
      {"made-kept", "made", kChart, kWiderWindow},
      {"made-window", "made", kChart, kAct("/measure-window@top")},
      {"made-wider", "made", kChart,
       [](Stage& s) {
         if (!kAct("/measure-window@top")(s)) return false;
         for (int half = 0; half < 3; ++half) s.desk().made().more();
         return s.desk().made().followAfter() != QString() && s.desk().made().next();
       }},
      {"room", "room", kChart,
       [](Stage& s) {
         s.desk().room().setSensors([] { return QStringList{QStringLiteral("/sys/class/hwmon/hwmon4")}; });
         return enterRoom(s, 17.5, 68);
       }},
      {"room-by-touch", "room", kChart, [](Stage& s) { return enterRoom(s, 41, 9); }},
      {"bench-look", "bench", kChart, kLookDue},
      {"off-time", "off", kChart, kUnknownOff},
      {"bench-off-time", "bench", kChart,
       [](Stage& s) {
         if (!kUnknownOff(s)) return false;
         s.desk().off().later();
         return true;
       }},
      {"jobs", "jobs", kBoth, kFirst},
      {"job", "job", kBoth, kChosen},
      {"cutting", "cutting", kChart, kChosen},
      {"cutting-cut", "cutting", kChart, kSheetUnderWay(2)},
      {"cutting-keep", "cutting", kChart, kSheetUnderWay(-1)},
      {"cutting-over", "cutting", kChart, kAllCut},
      {"cutting-lacks", "cutting", kHeron, [](Stage& s) { return kStocked(s) && kChosen(s); }},
      {"pieces", "pieces", kAll, [](Stage& s) { return s.beginDesign("heron") && s.desk().design().beginFresh(); }},
      {"pieces-many", "pieces", kMany,
       [](Stage& s) {
         return s.workUntil([&] { return s.desk().shelf().count() > 0; }) && s.desk().pieces().count() == 6;
       }},
      {"pieces-empty", "pieces", {}, kFirst},
      {"piece", "piece", kBoth,
       [](Stage& s) {
         s.desk().pieces().choose(1);
         return true;
       }},
      {"piece-drying", "piece", kHeron,
       [](Stage& s) {
         if (!kStocked(s) || !s.workUntil([&] { return s.desk().shelf().count() > 1; })) return false;
         s.desk().pieces().choose(0);
         return s.desk().pieces().waits()->count() > 0 && s.desk().pieces().wants()->count() > 0;
       }},
      {"piece-design",
       "piece",
       {},
       [](Stage& s) {
         if (!s.beginDesign("heron")) return false;
         s.desk().pieces().choose(0);
         return s.desk().pieces().chosenDesign();
       }},
      {"piece-renewal", "piece", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 3) || !kRenewed(s)) return false;
         s.desk().pieces().choose(0);
         return s.desk().renewal().takeable();
       }},
      {"renewal", "renewal", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 3) || !kRenewed(s)) return false;
         s.desk().pieces().choose(0);
         return s.desk().renewal().takeable();
       }},
      {"renewal-taken", "renewal", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 3) || !kRenewed(s)) return false;
         s.desk().pieces().choose(0);
         s.desk().renewal().take();
         return s.desk().renewal().taken() && !s.desk().renewal().offered();
       }},
      {"renewal-refused", "renewal", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 20) || !s.reopenWith("square-boards", "this.blank.cut", "this.blank.sawn")) return false;
         s.desk().pieces().choose(0);
         return s.desk().renewal().offered() && !s.desk().renewal().takeable();
       }},
      {"record", "record", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 3)) return false;
         s.desk().pieces().choose(0);
         s.desk().record().choose(1);
         return s.desk().record().addNote(QObject::tr("The bevel took two coats; the second lay better."));
       }},
      {"record-camera", "record", kChart,
       [](Stage& s) {
         if (!kIndexed(s, 3)) return false;
         s.desk().pieces().choose(0);
         auto& camera = s.desk().camera();
         camera.open();
         const QString looking = camera.said();
         return becomesSo([&] { return camera.live() || camera.said() != looking; }, 20'000);
       }},
      {"record-client", "record", kChart,
       [](Stage& s) {
         s.desk().pieces().choose(0);
         s.desk().record().look(app::viewmodels::RecordViewModel::Page::ForClient);
         return true;
       }},
      {"record-conservator", "record", kHeron,
       [](Stage& s) {
         s.desk().pieces().choose(0);
         s.desk().record().look(app::viewmodels::RecordViewModel::Page::ForConservator);
         return true;
       }},
      {"stock", "stock", kChart, kStocked},
      {"stock-serves", "stock", kBoth,
       [](Stage& s) {
         if (!kStocked(s)) return false;
         s.desk().stock().choose(0);
         return !s.desk().stock().chosenServes().isEmpty();
       }},
      {"stock-empty", "stock", {}, kFirst},
      {"stock-form", "stock", kChart,
       [](Stage& s) {
         if (!kStocked(s)) return false;
         s.desk().stock().enterStock();
         return true;
       }},
      {"stock-look", "appearance", kChart, [](Stage& s) { return kPictured(s, kPrintAcross); }},
      {"stock-look-colour", "appearance", kChart,
       [](Stage& s) { return kPictured(s, 0) && s.desk().appearance().chooseColour(4); }},
      {"stock-look-refused", "appearance", kChart,
       [](Stage& s) {
         return kPictured(s, kPrintAcross) && !s.desk().appearance().enterColour(QObject::tr("reddish"));
       }},
      {"piece-pictured", "piece", kChart,
       [](Stage& s) {
         if (!kPictured(s, kPrintAcross)) return false;
         s.desk().pieces().choose(0);
         return true;
       }},
      {"settings", "settings", kChart, kFirst},
      {"settings-inches", "settings", kChart,
       [](Stage& s) {
         s.desk().settings().setInches(true);
         s.desk().settings().setSound(QObject::tr("No sound device: watch the shelf."));
         return true;
       }},
      {"welcome", "welcome", {}, kFirst},
      {"design-fresh", "design", {}, kFresh},
      {"design-work", "design", {}, kDesign(0)},
      {"design-text", "design", {}, kDesign(0, 2)},
      {"design-boards", "design", {}, kDesign(1, -1, DesignViewModel::View::Section)},
      {"design-length", "design", {}, kDesign(1, 2)},
      {"design-window", "design", {}, kDesign(2, 0)},
      {"design-borders", "design", {}, kDesign(3)},
      {"design-proportions", "design", {}, kDesign(3, 2)},
      {"design-whole-size", "design", {}, kDesign(3, 3)},
      {"design-frame", "design", {}, kDesign(9)},
      {"design-frame-at-hand",
       "design",
       {},
       [](Stage& s) {
         if (!kDesign(9, 0)(s)) return false;
         for (const int digit : {4, 5, 0}) s.desk().design().digit(digit);
         return s.desk().design().fieldNote().contains(QLatin1String("instead of"));
       }},
      {"design-inches",
       "design",
       {},
       [](Stage& s) {
         auto& design = s.desk().design();
         if (!design.beginFresh()) return false;
         for (const auto& [field, digits] : {std::pair{0, std::vector<int>{1, 2}}, std::pair{1, std::vector<int>{9}}}) {
           design.chooseField(field);
           if (!design.inches()) design.turnUnits();
           for (const int digit : digits) design.digit(digit);
           if (!design.keep()) return false;
         }
         design.leaveField();
         design.chooseSection(5);
         design.chooseField(0);
         return design.fields()->count() > 5;
       }},
      {"design-bands", "design", {}, kDesign(5, -1, DesignViewModel::View::Back)},
      {"design-corners", "design", {}, kDesign(5, 6)},
      {"design-conflict",
       "design",
       {},
       [](Stage& s) {
         if (!s.beginDesign("pilots-chart")) return false;
         auto& design = s.desk().design();
         design.chooseSection(5);
         design.chooseField(2);
         for (const int digit : {8, 0}) design.digit(digit);
         if (!design.keep()) return false;
         design.leaveField();
         // What settles it is sought a moment later.
         QEventLoop loop;
         QTimer::singleShot(400, &loop, &QEventLoop::quit);
         loop.exec();
         return !design.complete() && !design.mendLabel().isEmpty();
       }},
      {"design-lacks", "design", {}, [](Stage& s) { return kStocked(s) && kDesign(3)(s); }},
      {"design-papers", "design", {}, kDesign(5, 1)},
      {"design-colours", "design", {}, kDesign(4, 1)},
      {"design-reveal", "design", {}, kDesign(1, 4)},
      {"design-reveal-section", "design", {}, kDesign(1, 4, DesignViewModel::View::Section)},
      {"design-band-width", "design", {}, kDesign(5, 3)},
      {"design-measures", "design", {}, kDesign(3, -1, DesignViewModel::View::Measures)},
      {"design-rise",
       "design",
       {},
       [](Stage& s) {
         if (!s.beginDesign("tide-table")) return false;
         auto& design = s.desk().design();
         design.chooseSection(2);
         design.chooseField(0);
         for (int option = 0; option < design.options()->count(); ++option) {
           const auto index = design.options()->index(option);
           if (design.options()->data(index, app::viewmodels::RowsModel::Title) != QLatin1String("ogee")) continue;
           design.chooseOption(option);
           break;
         }
         design.chooseField(1);
         return design.fieldIndex() == 1;
       }},
      {"design-lines", "design", {}, kDesign(6)},
      {"design-leaf", "design", {}, kDesign(8)},
      {"design-techniques", "design", {}, kDesign(11, 0, DesignViewModel::View::Steps)},
      {"jobs-empty", "jobs", {}, kFirst},
  };
  return kStates;
}

bool isOfBench(const State& state) {
  static const std::vector<std::string> kScreens = {"bench", "waits", "test", "more", "look", "faults", "mend",  "far",    "made",
                                                    "room",  "off",  "jobs", "job",    "alert", "cutting"};
  return std::count(kScreens.begin(), kScreens.end(), state.screen) > 0;
}

const std::vector<Tablet>& tablets() {
  static const std::vector<Tablet> kTablets = {{{1280, 800}}, {{1920, 1200}}, {{800, 1280}}, {{1024, 600}, 155}};
  return kTablets;
}

bool isShownOn(const State& state, const Tablet& tablet) {
  return isOfBench(state) || (!tablet.upright() && !tablet.isSmall());
}

}  // namespace tests
