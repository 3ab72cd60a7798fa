#include "app/face/small_pictures.h"

#include <QImage>
#include <QQuickTextureFactory>

#include "app/aside/aside.h"
#include "app/convert/text.h"
#include "app/words/words.h"

namespace app::face {
namespace {

class Response : public QQuickImageResponse {
 public:
  Response(const photographs::Photographs* photographs, const QString& hash, QSize atMost) {
    constexpr int kUsual = 512;
    if (!atMost.isValid() || atMost.isEmpty()) atMost = QSize(kUsual, kUsual);
    if (photographs == nullptr) {
      QMetaObject::invokeMethod(
          this, [this] { emit finished(); }, Qt::QueuedConnection);
      return;
    }
    aside::aside(this, [this, folder = *photographs, hash = hash.toStdString(), atMost]() -> aside::Told {
      auto shown = folder.thumbnail(hash, atMost);
      return [this, shown = std::move(shown)] {
        if (shown) {
          m_image = shown.value();
        } else {
          m_trouble = words::text(shown.error(), core::units::UnitSystem::Millimetres);
        }
        emit finished();
      };
    });
  }

  QQuickTextureFactory* textureFactory() const override {
    return QQuickTextureFactory::textureFactoryForImage(m_image);
  }
  QString errorString() const override { return m_trouble; }

 private:
  QImage m_image;
  QString m_trouble;
};

}  // namespace

QQuickImageResponse* SmallPictures::requestImageResponse(const QString& hash, const QSize& atMost) {
  return new Response(m_workbench.photographs(), hash, atMost);
}

}  // namespace app::face
