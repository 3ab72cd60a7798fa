#pragma once
// The machine's camera itself: its picture, a frame at a time as requested. It is used in the camera's process alone.
#include <QCamera>
#include <QElapsedTimer>
#include <QList>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QObject>
#include <QTimer>
#include <QVideoSink>
#include <memory>

#include "app/camera/protocol.h"

namespace app::camera {

class CameraOut : public QObject {
  Q_OBJECT

 public:
  explicit CameraOut(QObject* parent = nullptr);

  void obey(const Command& command);

 signals:
  void said(const app::camera::Answer& answer);

 private:
  void begin(qsizetype index);
  void look();
  void show();
  void take(const QString& path);

  QMediaDevices m_devices;
  QMediaCaptureSession m_session;
  QVideoSink m_sink;
  std::unique_ptr<QCamera> m_camera;
  QList<QCameraDevice> m_found;
  qsizetype m_index = -1;  // of the camera in use
  QVideoFrame m_latest;
  bool m_fresh = false;   // the latest has not been shown yet
  bool m_wanted = false;  // a frame was asked for
  QTimer m_first;         // until a camera must have been found
  QElapsedTimer m_shown;
};

}  // namespace app::camera
