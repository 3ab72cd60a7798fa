#pragma once
// "How long was this bench off?": asked where no clock can tell, answered in steps a maker can remember.
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
  Q_PROPERTY(bool asked READ asked NOTIFY changed FINAL)      // a wait runs whose time is not known
  Q_PROPERTY(bool offered READ offered NOTIFY changed FINAL)  // asked, or told in this run of the machine
  Q_PROPERTY(bool putOff READ putOff NOTIFY changed FINAL)    // the maker went on without an answer
  Q_PROPERTY(QString lastSeen READ lastSeen NOTIFY changed FINAL)
  Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
  Q_PROPERTY(QString byClock READ byClock NOTIFY changed FINAL)  // what the wall clock gives; "" where nothing possible
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
  // Just now, about an hour, what the clock says, and round again.
  Q_INVOKABLE void nextAnswer();
  // Tells the answer shown. Returns whether it was kept.
  Q_INVOKABLE bool tell();
  Q_INVOKABLE void later();

 signals:
  void changed();

 private:
  void answerWith(core::units::Duration off);
  std::string bootAskedAbout() const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::string m_boot;  // the off-time before it
  bool m_asked = false;
  bool m_putOff = false;
  core::units::Duration m_answer;
  std::optional<core::units::Duration> m_byClock;
  QString m_lastSeen;
  QString m_refusal;
};

}  // namespace app::viewmodels
