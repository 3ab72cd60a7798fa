#pragma once
// The sheet on which everything that the screens are made of stands at true size.
#include <QDir>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QStringList>
#include <memory>

#include "tests/app/gallery/states.h"

namespace tests {

class SpecimenSheet {
 public:
  explicit SpecimenSheet(bool lamp);
  ~SpecimenSheet();

  // Null where the sheet could not be made; `warnings` then says why.
  QQuickWindow* window() { return m_window.get(); }
  const QStringList& warnings() const { return m_warnings; }
  static constexpr double kDotsPerMm = 5.9;

 private:
  // On which two pieces are worked and something dries.
  Stage m_stage;
  QQmlEngine m_engine;
  QStringList m_warnings;
  std::unique_ptr<QQuickWindow> m_window;
};

// "00-specimen-day.png" and "00-specimen-lamp.png", which stand before all other pictures. Returns whether both were
// kept.
bool paintSpecimen(const QDir& folder);

}  // namespace tests
