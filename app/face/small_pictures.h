#pragma once
// Photographs of the record as the screens show them: "image://photographs/<hash>", read beside the interface.
#include <QQuickAsyncImageProvider>

#include "app/workbench/workbench.h"

namespace app::face {

class SmallPictures : public QQuickAsyncImageProvider {
 public:
  explicit SmallPictures(const workbench::Workbench& workbench) : m_workbench(workbench) {}

  // A picture that cannot be shown gives an empty image; the record gives the reason where the picture is chosen.
  QQuickImageResponse* requestImageResponse(const QString& hash, const QSize& atMost) override;

 private:
  const workbench::Workbench& m_workbench;
};

}  // namespace app::face
