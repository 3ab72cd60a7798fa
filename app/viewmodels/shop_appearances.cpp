#include "app/viewmodels/shop_appearances.h"

#include <QSize>
#include <utility>

#include "app/aside/aside.h"
#include "app/convert/text.h"
#include "core/shop/decide_stock.h"

namespace app::viewmodels {

using core::base::Message;
using painting::SheetPicture;

ShopAppearances::ShopAppearances(workbench::Workbench& workbench, QObject* parent)
    : QObject(parent), m_workbench(workbench) {
  connect(&workbench, &workbench::Workbench::shopChanged, this, &ShopAppearances::refresh);
}

void ShopAppearances::refresh() {
  const OfShop& now = m_workbench.shop().stock.appearances;
  // The room and the stock change often, looks seldom.
  if (now == m_ofShop) return;
  m_ofShop = now;
  std::set<std::string> named;
  for (const auto& [material, appearance] : m_ofShop) {
    // Two benches together may have told more of them than one may.
    if (!appearance.picture || named.size() >= std::size_t{core::shop::kMostPictured}) continue;
    named.insert(appearance.picture->hash);
  }
  std::erase_if(m_read, [&](const auto& one) { return !named.contains(one.first); });
  std::erase_if(m_sheets, [&](const auto& one) { return !named.contains(one.first.hash); });
  m_toRead.clear();
  for (const std::string& hash : named) {
    if (!m_read.contains(hash) && m_reading != hash) m_toRead.insert(hash);
  }
  readNext();
  publish();
}

void ShopAppearances::readNext() {
  if (!m_reading.empty() || m_toRead.empty()) return;
  const auto* photographs = m_workbench.photographs();
  if (photographs == nullptr) {
    for (const std::string& hash : std::exchange(m_toRead, {})) {
      m_read[hash] = {QImage(), Message("photograph.no-folder")};
    }
    return;
  }
  const std::string hash = *m_toRead.begin();
  m_toRead.erase(m_toRead.begin());
  m_reading = hash;
  aside::aside(this, [this, folder = *photographs, hash]() -> aside::Told {
    auto shown = folder.thumbnail(hash, QSize(SheetPicture::kLongestSide, SheetPicture::kLongestSide));
    return [this, shown = std::move(shown), hash] {
      m_reading.clear();
      m_read[hash] = shown ? Read{shown.value(), Message()} : Read{QImage(), shown.error()};
      readNext();
      publish();
    };
  });
}

void ShopAppearances::publish() {
  std::map<std::string, painting::Appearance> byName;
  for (const auto& [material, appearance] : m_ofShop) {
    painting::Appearance& look = byName[material];
    if (!appearance.colour.empty()) look.colour = QColor(convert::toQt(appearance.colour));
    if (!appearance.picture) continue;
    const auto found = m_read.find(appearance.picture->hash);
    if (found == m_read.end() || found->second.image.isNull()) continue;
    auto& sheet = m_sheets[{appearance.picture->hash, appearance.picture->across}];
    if (!sheet) {
      sheet = std::make_shared<const SheetPicture>(found->second.image, appearance.picture->across.inMillimetres());
    }
    look.picture = sheet;
  }
  m_all.all = std::make_shared<const painting::Appearances>(std::move(byName));
  emit changed();
}

Message ShopAppearances::trouble(const std::string& material) const {
  const auto appearance = m_ofShop.find(material);
  if (appearance == m_ofShop.end() || !appearance->second.picture) return {};
  const auto found = m_read.find(appearance->second.picture->hash);
  return found == m_read.end() ? Message() : found->second.trouble;
}

}  // namespace app::viewmodels
