#pragma once
// The face of a key, cut like a board: its four sides mitred, those towards the light and those away from it; or, of a
// key that cannot be used, a dotted outline. Painted, since the software renderer does not clip shapes in a list.
#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>

namespace app::viewmodels {

class MitredFaceItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(bool dotted MEMBER m_dotted NOTIFY changed FINAL)
  Q_PROPERTY(QColor face MEMBER m_face NOTIFY changed FINAL)
  Q_PROPERTY(QColor upper MEMBER m_upper NOTIFY changed FINAL)  // top and left side
  Q_PROPERTY(QColor lower MEMBER m_lower NOTIFY changed FINAL)  // bottom and right side
  Q_PROPERTY(QColor line MEMBER m_line NOTIFY changed FINAL)
  Q_PROPERTY(double edge MEMBER m_edge NOTIFY changed FINAL)  // width of the sides, pixels
  Q_PROPERTY(double hairline MEMBER m_hairline NOTIFY changed FINAL)

 public:
  explicit MitredFaceItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  bool m_dotted = false;
  QColor m_face, m_upper, m_lower, m_line;
  double m_edge = 0;
  double m_hairline = 1;
};

}  // namespace app::viewmodels
