#pragma once
// The tablet's camera at the desk: its live view, and the picture taken with it.
#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QString>
#include <QTemporaryDir>

#include "app/camera/camera_process.h"

namespace app::viewmodels {

class CameraViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool up READ up NOTIFY changed FINAL)            // the camera is in use, or failed while it was
  Q_PROPERTY(bool live READ live NOTIFY changed FINAL)        // there is a picture to show
  Q_PROPERTY(bool several READ several NOTIFY changed FINAL)  // there is more than one camera
  Q_PROPERTY(QString said READ said NOTIFY changed FINAL)

 public:
  explicit CameraViewModel(const QString& program, QObject* parent = nullptr);

  bool up() const { return m_up; }
  bool live() const { return !m_picture.isNull(); }
  bool several() const { return m_several; }
  QString said() const { return m_said; }
  // Returns the newest live picture; null where there is none.
  QImage picture() const { return m_picture; }

  Q_INVOKABLE void open();
  Q_INVOKABLE void close();
  Q_INVOKABLE void take();
  Q_INVOKABLE void turn();  // to the next camera

 signals:
  void changed();
  void seen();
  // The file exists until the program ends; the receiver has to copy it.
  void taken(const QString& path);

 private:
  void lost(camera::CameraProcess::Lost why, const QString& detail);

  camera::CameraProcess m_process;
  QTemporaryDir m_folder;
  int m_number = 0;  // number of the picture taken last
  bool m_up = false;
  bool m_several = false;
  QImage m_picture;
  QString m_said;
};

}  // namespace app::viewmodels
