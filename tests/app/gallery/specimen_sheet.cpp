#include "tests/app/gallery/specimen_sheet.h"

#include <QQmlComponent>
#include <QQmlError>
#include <QQuickItem>
#include <cstdio>

#include "app/viewmodels/registration.h"
#include "tests/app/gallery/settled.h"

namespace tests {

SpecimenSheet::SpecimenSheet(bool lamp) : m_stage({"heron", "pilots-chart"}) {
  app::viewmodels::registerTypes();
  m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  QObject::connect(&m_engine, &QQmlEngine::warnings, &m_engine, [this](const QList<QQmlError>& errors) {
    for (const QQmlError& error : errors) m_warnings << error.toString();
  });
  app::viewmodels::Desk& desk = m_stage.desk();
  static_cast<void>(m_stage.workUntil([&] { return desk.shelf().count() > 0; }));
  static_cast<void>(m_stage.beginDesign("heron"));
  desk.design().chooseSection(0);
  desk.refresh();
  QQmlComponent sheet(&m_engine,
                      QUrl::fromLocalFile(QStringLiteral(PROJECT_ROOT "/tests/app/gallery/specimen/Specimen.qml")));
  for (const QQmlError& error : sheet.errors()) m_warnings << error.toString();
  // One that did not read must not be asked to make anything.
  if (!sheet.isReady()) return;
  std::unique_ptr<QObject> made(sheet.createWithInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(&desk)},
                                                                   {QStringLiteral("dotsPerMm"), kDotsPerMm},
                                                                   {QStringLiteral("lamp"), lamp}}));
  auto* page = qobject_cast<QQuickItem*>(made.get());
  if (page == nullptr) return;
  m_window = std::make_unique<QQuickWindow>();
  made.release()->setParent(m_window.get());
  page->setParentItem(m_window->contentItem());
  const auto follow = [this, page] { m_window->resize(page->size().toSize()); };
  QObject::connect(page, &QQuickItem::heightChanged, m_window.get(), follow);
  follow();
  m_window->show();
}

SpecimenSheet::~SpecimenSheet() = default;

bool paintSpecimen(const QDir& folder) {
  bool kept = true;
  for (const bool lamp : {false, true}) {
    SpecimenSheet sheet(lamp);
    for (const QString& warning : sheet.warnings()) std::fprintf(stderr, "%s\n", qPrintable(warning));
    const QString name =
        QStringLiteral("00-specimen-%1.png").arg(lamp ? QStringLiteral("lamp") : QStringLiteral("day"));
    kept = sheet.window() != nullptr && sheet.warnings().isEmpty() &&
           settledPicture(*sheet.window()).save(folder.filePath(name)) && kept;
  }
  return kept;
}

}  // namespace tests
