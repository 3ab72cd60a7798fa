#include "app/viewmodels/desk/camera_view_model.h"

namespace app::viewmodels {

using camera::CameraProcess;

CameraViewModel::CameraViewModel(const QString& program, QObject* parent) : QObject(parent), m_process(program) {
  connect(&m_process, &CameraProcess::found, this, [this](const QString&, int count) {
    m_several = count > 1;
    emit changed();
  });
  connect(&m_process, &CameraProcess::seen, this, [this](const QImage& picture) {
    const bool first = m_picture.isNull();
    m_picture = picture;
    if (first) m_said.clear();
    if (first) emit changed();
    emit seen();
  });
  connect(&m_process, &CameraProcess::taken, this, [this](const QString& path) {
    close();
    emit taken(path);
  });
  connect(&m_process, &CameraProcess::lost, this, &CameraViewModel::lost);
}

void CameraViewModel::open() {
  m_up = true;
  m_said = tr("Looking for the camera …");
  m_process.start();
  emit changed();
}

void CameraViewModel::close() {
  m_process.end();
  m_up = m_several = false;
  m_picture = QImage();
  m_said.clear();
  emit changed();
  emit seen();
}

void CameraViewModel::take() {
  if (!live()) return;
  m_process.take(m_folder.filePath(QStringLiteral("%1.jpg").arg(++m_number)));
}

void CameraViewModel::turn() { m_process.next(); }

void CameraViewModel::lost(CameraProcess::Lost why, const QString& detail) {
  using Lost = CameraProcess::Lost;
  const QString because = detail.isEmpty() ? QString() : tr(" (%1)").arg(detail);
  if (why == Lost::Unwritten) {
    m_said = tr("The picture could not be written%1. Is there room left on this tablet?").arg(because);
  } else {
    m_picture = QImage();
    if (why == Lost::NoCamera)
      m_said = tr("This tablet has no camera that answers. A picture can be taken from a file.");
    if (why == Lost::Refused) m_said = tr("The camera shows nothing%1. Another program may be using it.").arg(because);
    if (why == Lost::Missing)
      m_said = tr("The camera cannot be used%1. A picture can be taken from a file.").arg(because);
  }
  emit changed();
  emit seen();
}

}  // namespace app::viewmodels
