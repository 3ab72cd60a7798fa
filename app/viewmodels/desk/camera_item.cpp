#include "app/viewmodels/desk/camera_item.h"

#include <QPainter>

namespace app::viewmodels {

void CameraItem::setCamera(CameraViewModel* camera) {
  if (camera == m_camera) return;
  if (m_camera != nullptr) m_camera->disconnect(this);
  m_camera = camera;
  if (m_camera != nullptr) connect(m_camera, &CameraViewModel::seen, this, [this] { update(); });
  update();
  emit cameraChanged();
}

void CameraItem::paint(QPainter* painter) {
  const QImage picture = m_camera == nullptr ? QImage() : m_camera->picture();
  if (picture.isNull()) return;
  const QSizeF fits = QSizeF(picture.size()).scaled(size(), Qt::KeepAspectRatio);
  const QPointF corner((width() - fits.width()) / 2, (height() - fits.height()) / 2);
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  painter->drawImage(QRectF(corner, fits), picture);
}

}  // namespace app::viewmodels
