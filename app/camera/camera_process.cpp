#include "app/camera/camera_process.h"

#include <QCoreApplication>
#include <QDir>
#include <utility>

namespace app::camera {
namespace {

// A camera warms up and its process loads its libraries, from a cold disk.
constexpr int kDarkMilliseconds = 10'000;
constexpr int kEndMilliseconds = 1000;

}  // namespace

CameraProcess::CameraProcess(const QString& program, QObject* parent) : QObject(parent), m_process(this), m_dark(this) {
  m_dark.setSingleShot(true);
  m_process.setProgram(program);
  // The library talks of every format it tries.
  m_process.setStandardErrorFile(QProcess::nullDevice());
  connect(&m_dark, &QTimer::timeout, this, [this] { lose(Lost::Refused, {}); });
  connect(&m_process, &QProcess::readyReadStandardOutput, this, &CameraProcess::read);
  connect(&m_process, &QProcess::finished, this, [this] {
    read();
    lose(Lost::Missing, {});
  });
  connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
    if (error == QProcess::FailedToStart) lose(Lost::Missing, m_process.errorString());
  });
}

CameraProcess::~CameraProcess() { end(); }

QString CameraProcess::besideTheProgram() {
#ifdef Q_OS_WIN
  const QString name = QStringLiteral("mountwright-camera.exe");
#else
  const QString name = QStringLiteral("mountwright-camera");
#endif
  return QDir(QCoreApplication::applicationDirPath()).filePath(name);
}

void CameraProcess::start() {
  if (running()) return;
  m_reader = AnswerReader();
  m_underWay.clear();
  m_dark.start(kDarkMilliseconds);
  m_process.start(QIODevice::ReadWrite);
  send({Command::Kind::More});
}

void CameraProcess::end() {
  m_dark.stop();
  if (!running()) return;
  const bool blocked = m_process.blockSignals(true);
  // Killed, it lets go of the camera within milliseconds, whatever it is held up by.
  m_process.kill();
  m_process.waitForFinished(kEndMilliseconds);
  m_process.blockSignals(blocked);
}

void CameraProcess::take(const QString& path) {
  m_underWay = path;
  send({Command::Kind::Take, path});
}

void CameraProcess::next() { send({Command::Kind::Next}); }

void CameraProcess::send(const Command& command) {
  if (running()) m_process.write(line(command));
}

void CameraProcess::read() {
  for (const Answer& answer : m_reader.feed(m_process.readAllStandardOutput())) obey(answer);
  if (m_reader.broken()) lose(Lost::Missing, {});
}

void CameraProcess::obey(const Answer& answer) {
  switch (answer.kind) {
    case Answer::Kind::Camera: emit found(answer.text, answer.count); return;
    case Answer::Kind::None: lose(Lost::NoCamera, {}); return;
    case Answer::Kind::Taken:
      if (m_underWay.isEmpty()) return;
      emit taken(std::exchange(m_underWay, {}));
      return;
    case Answer::Kind::Trouble:
      // While a picture is being written it is that which failed.
      if (m_underWay.isEmpty()) {
        lose(Lost::Refused, answer.text);
      } else {
        m_underWay.clear();
        emit lost(Lost::Unwritten, answer.text);
      }
      return;
    case Answer::Kind::Frame:
      m_dark.start(kDarkMilliseconds);
      send({Command::Kind::More});
      if (const QImage picture = QImage::fromData(answer.bytes, "jpg"); !picture.isNull()) emit seen(picture);
      return;
  }
}

void CameraProcess::lose(Lost why, const QString& detail) {
  end();
  emit lost(why, detail);
}

}  // namespace app::camera
