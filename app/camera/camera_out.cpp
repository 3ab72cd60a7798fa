#include "app/camera/camera_out.h"

#include <QBuffer>
#include <QImage>
#include <QVideoFrame>
#include <algorithm>

namespace app::camera {
namespace {

// Cameras come one by one; some servers tell of theirs only after a while.
constexpr int kFoundWithinMilliseconds = 2500;
constexpr int kFrameMilliseconds = 80;
constexpr int kShownWidth = 960;  // pixels; the picture taken has all the camera gives
constexpr int kShownQuality = 80;
constexpr int kTakenQuality = 95;
constexpr float kLeastRate = 4;  // frames a second; below, nobody can hold the tablet by it

// The largest that still moves.
QCameraFormat best(const QCameraDevice& device) {
  QCameraFormat found;
  for (const QCameraFormat& format : device.videoFormats()) {
    if (format.maxFrameRate() > 0 && format.maxFrameRate() < kLeastRate) continue;
    const auto area = [](const QCameraFormat& one) { return one.resolution().width() * one.resolution().height(); };
    if (found.isNull() || area(format) > area(found)) found = format;
  }
  return found;
}

}  // namespace

CameraOut::CameraOut(QObject* parent) : QObject(parent) {
  m_session.setVideoSink(&m_sink);
  m_first.setSingleShot(true);
  connect(&m_first, &QTimer::timeout, this, [this] {
    if (!m_camera) emit said({Answer::Kind::None});
  });
  connect(&m_devices, &QMediaDevices::videoInputsChanged, this, &CameraOut::look);
  // Frames come from a thread of the library; a picture is made of them in this one.
  connect(
      &m_sink, &QVideoSink::videoFrameChanged, this,
      [this](const QVideoFrame& frame) {
        m_latest = frame;
        m_fresh = frame.isValid();
        show();
      },
      Qt::QueuedConnection);
  m_first.start(kFoundWithinMilliseconds);
  // Not before whoever makes this has connected to it.
  QTimer::singleShot(0, this, &CameraOut::look);
}

void CameraOut::look() {
  m_found = QMediaDevices::videoInputs();
  if (!m_camera && !m_found.isEmpty())
    begin(std::max<qsizetype>(0, m_found.indexOf(QMediaDevices::defaultVideoInput())));
}

void CameraOut::begin(qsizetype index) {
  m_first.stop();
  m_index = index;
  m_fresh = false;
  const QCameraDevice& device = m_found[index];
  m_camera = std::make_unique<QCamera>(device);
  connect(m_camera.get(), &QCamera::errorOccurred, this, [this](QCamera::Error, const QString& text) {
    emit said({Answer::Kind::Trouble, 0, 0, text, {}});
  });
  if (const QCameraFormat format = best(device); !format.isNull()) m_camera->setCameraFormat(format);
  m_session.setCamera(m_camera.get());
  m_camera->start();
  emit said(
      {Answer::Kind::Camera, static_cast<int>(index) + 1, static_cast<int>(m_found.size()), device.description(), {}});
}

void CameraOut::show() {
  if (!m_wanted || !m_fresh) return;
  if (m_shown.isValid() && m_shown.elapsed() < kFrameMilliseconds) return;
  QImage image = m_latest.toImage();
  if (image.isNull()) return;
  if (image.width() > kShownWidth) image = image.scaledToWidth(kShownWidth, Qt::SmoothTransformation);
  Answer frame{Answer::Kind::Frame};
  QBuffer buffer(&frame.bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "jpg", kShownQuality)) return;
  m_wanted = m_fresh = false;
  m_shown.start();
  emit said(frame);
}

void CameraOut::take(const QString& path) {
  const QImage image = m_latest.isValid() ? m_latest.toImage() : QImage();
  if (image.isNull()) {
    emit said({Answer::Kind::Trouble, 0, 0, {}, {}});
  } else if (!image.save(path, "jpg", kTakenQuality)) {
    emit said({Answer::Kind::Trouble, 0, 0, path, {}});
  } else {
    emit said({Answer::Kind::Taken, 0, 0, path, {}});
  }
}

void CameraOut::obey(const Command& command) {
  switch (command.kind) {
    case Command::Kind::More:
      m_wanted = true;
      show();
      return;
    case Command::Kind::Take: take(command.path); return;
    case Command::Kind::Next:
      if (m_found.size() > 1) begin((m_index + 1) % m_found.size());
      return;
  }
}

}  // namespace app::camera
