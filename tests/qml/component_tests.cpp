// Runs the tests of the components: each tst_*.qml here. They find a desk with the demo jobs on it, for what needs one.
#include <QQmlContext>
#include <QQmlEngine>
#include <QTemporaryDir>
#include <QtQuickTest>
#include <algorithm>

#include "app/face/letters.h"
#include "app/photographs/photographs.h"
#include "app/viewmodels/registration.h"
#include "tests/app/gallery/sheet_print.h"
#include "tests/app/gallery/states.h"

// For the engine, which makes one for each file of tests.
class Setup : public QObject {
  Q_OBJECT

 public slots:
  void applicationAvailable() {
    app::viewmodels::registerTypes();
    app::face::chooseLetters();
  }
  void qmlEngineAvailable(QQmlEngine* engine) {
    engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_stage = std::make_unique<tests::Stage>(std::vector<std::string>{"heron", "pilots-chart"});
    engine->rootContext()->setContextProperty(QStringLiteral("demo"), &m_stage->desk());
    engine->rootContext()->setContextProperty(QStringLiteral("stage"), this);
  }
  void cleanupTestCase() { m_stage.reset(); }

 public:
  // Works until something dries, and a quarter of an hour longer.
  Q_INVOKABLE bool workUntilSomethingDries() {
    const bool dries = m_stage->workUntil([this] { return m_stage->desk().shelf().count() > 0; });
    m_stage->clock().advance(15 * 60'000);
    m_stage->desk().refresh();
    return dries;
  }
  // Works until another piece has an act that ends before the next test.
  Q_INVOKABLE bool workUntilMeanwhile() {
    return m_stage->workUntil([this] { return m_stage->desk().meanwhile().present(); });
  }
  // Works until an act was done just now and can be undone from its line.
  Q_INVOKABLE bool workUntilJustDone() {
    return m_stage->workUntil([this] {
      auto& bench = m_stage->desk().bench();
      return !bench.steps().empty() && bench.finish() && bench.justDone();
    });
  }
  Q_INVOKABLE void advance(int seconds) {
    m_stage->clock().advance(seconds * std::int64_t{1000});
    m_stage->desk().refresh();
  }
  // Works until an alert of a window that can still be caught takes the screen.
  Q_INVOKABLE bool workUntilAWindowCalls() {
    return m_stage->workUntil([this] {
      auto& alert = m_stage->desk().alert();
      if (alert.up() && !alert.gone().isEmpty()) return true;
      if (alert.up()) alert.hear();
      return false;
    });
  }
  // Works until the act shown holds a step of that name.
  Q_INVOKABLE bool workUntilStep(const QString& name) {
    return m_stage->workUntil([&] {
      const auto& steps = m_stage->desk().bench().steps();
      return std::any_of(steps.begin(), steps.end(),
                         [&](const auto* step) { return QString::fromStdString(step->id).contains(name); });
    });
  }
  // What keeps an alert from being heard; "" ends it.
  Q_INVOKABLE void trouble(const QString& text) {
    m_stage->desk().watch().set(app::viewmodels::WatchViewModel::Trouble::Sound, text);
  }
  Q_INVOKABLE bool beginDesign() { return m_stage->beginDesign("heron"); }
  // A paper in stock and its look open, with one picture to choose.
  Q_INVOKABLE bool openLook() {
    const QString sheet = m_folder.filePath(QStringLiteral("sheet.png"));
    m_stage->workbench().keepPhotographsIn(m_photographs);
    m_stage->desk().appearance().setPictures([sheet] { return QStringList{sheet}; });
    core::intents::StockEntry paper;
    paper.kind = core::intents::StockKind::Paper;
    paper.name = "wave-block print";
    paper.width = core::units::Length::wholeMillimetres(700);
    paper.height = core::units::Length::wholeMillimetres(500);
    const core::intents::OfShop entering{core::intents::EnterStock{paper}};
    if (!tests::writeSheetPrint(sheet) || !m_stage->workbench().submit(entering).id.empty()) return false;
    m_stage->desk().stock().choose(0);
    m_stage->desk().stock().openAppearance();
    return true;
  }

 private:
  QTemporaryDir m_folder;
  app::photographs::Photographs m_photographs{m_folder.filePath(QStringLiteral("photographs"))};
  std::unique_ptr<tests::Stage> m_stage;
};

QUICK_TEST_MAIN_WITH_SETUP(components, Setup)

#include "component_tests.moc"
