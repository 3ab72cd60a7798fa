#pragma once
// "How long was this bench off?": asked where no clock can measure it, answered in steps a maker can remember.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <string>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

class OffTimeViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool asked READ asked NOTIFY changed FINAL)      // a wait runs whose elapsed time is unknown
  Q_PROPERTY(bool offered READ offered NOTIFY changed FINAL)  // asked, or answered since the machine booted
  Q_PROPERTY(bool putOff READ putOff NOTIFY changed FINAL)    // the maker went on without an answer
  Q_PROPERTY(QString lastSeen READ lastSeen NOTIFY changed FINAL)
  Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
  Q_PROPERTY(QString byClock READ byClock NOTIFY changed FINAL)  // the wall clock's answer; "" where impossible
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)

 public:
  OffTimeViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();

  bool asked() const { return m_asked; }
  bool offered() const { return !m_boot.empty(); }
  bool putOff() const { return m_putOff; }
  QString lastSeen() const { return m_lastSeen; }
  QString answer() const;
  QString byClock() const;
  QString refusal() const { return m_refusal; }

  Q_INVOKABLE void more();
  Q_INVOKABLE void less();
  Q_INVOKABLE void anHour();
  Q_INVOKABLE void takeClock();
  // Goes from just now to about an hour, to the wall clock's answer, and back to just now.
  Q_INVOKABLE void nextAnswer();
  // Records the answer shown. Returns whether it was recorded.
  Q_INVOKABLE bool tell();
  Q_INVOKABLE void later();

 signals:
  void changed();

 private:
  void answerWith(core::units::Duration off);
  std::string bootAskedAbout() const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::string m_boot;  // the boot before which the bench was off
  bool m_asked = false;
  bool m_putOff = false;
  core::units::Duration m_answer;
  std::optional<core::units::Duration> m_byClock;
  QString m_lastSeen;
  QString m_refusal;
};

}  // namespace app::viewmodels
