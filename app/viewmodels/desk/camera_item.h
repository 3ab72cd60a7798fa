#pragma once
// The camera's view, as large as fits, in its own proportions.
#include <QtQml/qqmlregistration.h>
#include <QQuickPaintedItem>

#include "app/viewmodels/desk/camera_view_model.h"

namespace app::viewmodels {

class CameraItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(app::viewmodels::CameraViewModel* camera READ camera WRITE setCamera NOTIFY cameraChanged FINAL)

 public:
  explicit CameraItem(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

  CameraViewModel* camera() const { return m_camera; }
  // The camera must outlive the item, or the caller sets another one or null.
  void setCamera(CameraViewModel* camera);
  void paint(QPainter* painter) override;

 signals:
  void cameraChanged();

 private:
  CameraViewModel* m_camera = nullptr;
};

}  // namespace app::viewmodels
