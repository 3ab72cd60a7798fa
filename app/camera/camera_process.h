#pragma once
// Starts the process that looks through the camera and ends it. It never blocks: whatever camera and process do, every
// call returns at once.
#include <QImage>
#include <QObject>
#include <QProcess>
#include <QString>
#include <QTimer>

#include "app/camera/protocol.h"

namespace app::camera {

class CameraProcess : public QObject {
  Q_OBJECT

 public:
  // NoCamera: there is none. Refused: there is one and it gives no picture, or not any more. Unwritten: the picture
  // taken could not be written. Missing: the program's own part that looks through it is not there or fails.
  enum class Lost { NoCamera, Refused, Unwritten, Missing };

  explicit CameraProcess(const QString& program, QObject* parent = nullptr);
  ~CameraProcess() override;

  // Returns the camera's program beside the running program.
  static QString besideTheProgram();

  // Again where it was lost.
  void start();
  void end();
  bool running() const { return m_process.state() != QProcess::NotRunning; }
  // Writes the present picture to that file, as large as the camera gives it.
  void take(const QString& path);
  void next();

 signals:
  void found(const QString& name, int count);
  void seen(const QImage& picture);
  void taken(const QString& path);
  // Except after Unwritten, no more frames arrive until it is started again. `detail` is the text of the library or the
  // system.
  void lost(app::camera::CameraProcess::Lost why, const QString& detail);

 private:
  void send(const Command& command);
  void read();
  void obey(const Answer& answer);
  void lose(Lost why, const QString& detail);

  QProcess m_process;
  AnswerReader m_reader;
  QTimer m_dark;       // from the start, or a frame, until it counts as lost
  QString m_underWay;  // the file being written
};

}  // namespace app::camera
