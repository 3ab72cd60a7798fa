#pragma once
// The settings of this bench, and the first questions to a maker: units, distance, sound, where to begin.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

class SettingsViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool inches READ inches NOTIFY changed FINAL)
  Q_PROPERTY(double distance READ distance NOTIFY changed FINAL)           // of the tablet from the eyes, mm
  Q_PROPERTY(QString distanceText READ distanceText NOTIFY changed FINAL)  // in the units chosen
  Q_PROPERTY(bool lamp READ lamp NOTIFY changed FINAL)
  Q_PROPERTY(bool brief READ brief NOTIFY changed FINAL)          // led the short way
  Q_PROPERTY(bool byBorders READ byBorders NOTIFY changed FINAL)  // windows are marked by their four borders
  Q_PROPERTY(bool introduced READ introduced NOTIFY changed FINAL)
  Q_PROPERTY(QString sound READ sound NOTIFY changed FINAL)  // what keeps an alert from being heard; "" for nothing
  Q_PROPERTY(bool hasDemo READ hasDemo NOTIFY changed FINAL)
  Q_PROPERTY(int presses READ presses NOTIFY changed FINAL)      // of a pedal, since the screen was opened
  Q_PROPERTY(QString maker READ maker NOTIFY changed FINAL)      // printed on the sheets of a piece; "" for none
  Q_PROPERTY(QString contact READ contact NOTIFY changed FINAL)  // as for maker
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)  // why the last choice was not stored

 public:
  explicit SettingsViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  // Sets the text of the job file that a newcomer may begin with.
  void setDemo(const std::string& text);
  void setSound(const QString& trouble);
  void pedalPressed();
  void refresh() { emit changed(); }

  bool inches() const;
  double distance() const;
  QString distanceText() const;
  bool lamp() const;
  bool brief() const;
  bool byBorders() const;
  bool introduced() const;
  QString sound() const { return m_sound; }
  bool hasDemo() const { return !m_demo.empty(); }
  int presses() const { return m_presses; }
  QString maker() const;
  QString contact() const;
  QString refusal() const { return m_refusal; }

  Q_INVOKABLE void open();
  Q_INVOKABLE void setInches(bool inches);
  // These change the distance by a hand's breadth, within the range at which the text can be read.
  Q_INVOKABLE void farther();
  Q_INVOKABLE void nearer();
  Q_INVOKABLE void turnLamp();
  Q_INVOKABLE void turnWay();
  Q_INVOKABLE void turnMarking();
  // Does not write anything where both are unchanged.
  Q_INVOKABLE void nameMaker(const QString& maker, const QString& contact);
  Q_INVOKABLE void endIntroduction();
  // Begins the demo job; returns whether it is on the bench.
  Q_INVOKABLE bool takeDemo();

 signals:
  void changed();
  void soundAsked();
  void onBench(const std::string& jobId);

 private:
  void ask(const core::intents::ShopIntent& intent);
  void choose(const char* what, const std::string& value);
  void moveBy(std::int64_t millimetres);

  workbench::Workbench& m_workbench;
  std::string m_demo;
  QString m_sound, m_refusal;
  int m_presses = 0;
};

}  // namespace app::viewmodels
