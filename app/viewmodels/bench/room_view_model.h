#pragma once
// The room as the maker reads it off a hygrometer, or as a sensor reports it, and its effect on the waits.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

class RoomViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString temperature READ temperature NOTIFY changed FINAL)
  Q_PROPERTY(QString humidity READ humidity NOTIFY changed FINAL)
  Q_PROPERTY(bool onHumidity READ onHumidity NOTIFY changed FINAL)  // which of the two the keys change
  Q_PROPERTY(QString basis READ basis NOTIFY changed FINAL)         // entered or read, and when
  Q_PROPERTY(QString water READ water NOTIFY changed FINAL)         // effect on drying by giving off water
  Q_PROPERTY(QString oil READ oil NOTIFY changed FINAL)             // effect on drying by taking up oxygen
  Q_PROPERTY(bool hasSensors READ hasSensors NOTIFY changed FINAL)
  Q_PROPERTY(QString sensor READ sensor NOTIFY changed FINAL)  // the chosen one; "" where the maker enters the room
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
  Q_PROPERTY(bool keyed READ keyed NOTIFY changed FINAL)  // digits were entered for the chosen one

 public:
  RoomViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  // Lists the folders a sensor can be read from; asked each time the screen is opened.
  void setSensors(std::function<QStringList()> found) { m_find = std::move(found); }
  // Reads the shop's state; the two values are left as they are while the maker is changing them.
  void refresh();

  QString temperature() const;
  QString humidity() const;
  bool onHumidity() const { return m_onHumidity; }
  QString basis() const;
  QString water() const;
  QString oil() const;
  bool hasSensors() const { return !m_found.isEmpty() || !m_sensor.isEmpty(); }
  QString sensor() const;
  QString refusal() const { return m_refusal; }
  bool keyed() const { return !m_typed.isEmpty(); }

  // The screen opens and begins with the values the shop has stored.
  Q_INVOKABLE void open();
  // These change the value by half a kelvin or one per cent, within the range that a workshop can have.
  Q_INVOKABLE void more();
  Q_INVOKABLE void less();
  Q_INVOKABLE void other();
  Q_INVOKABLE void choose(bool humidity);
  // The chosen value is keyed in: the first digit begins it anew. Humidity is whole; warmth has one place.
  Q_INVOKABLE void digit(int digit);
  Q_INVOKABLE void part();
  Q_INVOKABLE void erase();
  // Chooses the next sensor found; after the last one the room is entered by hand again.
  Q_INVOKABLE void nextSensor();
  // Records the room as shown. Returns whether it was recorded.
  Q_INVOKABLE bool keep();

 signals:
  void changed();

 private:
  void step(int by);
  // Takes what was keyed in as the value. Returns whether it can be one; the refusal says why not.
  bool takeTyped();
  QString effect(core::waits::DryingModel model) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::function<QStringList()> m_find;
  QStringList m_found;
  QString m_sensor;
  core::units::Room m_room;
  bool m_touched = false;
  bool m_onHumidity = false;
  QString m_typed;
  QString m_refusal;
};

}  // namespace app::viewmodels
