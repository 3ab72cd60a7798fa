#include "app/painting/light.h"

#include <QPainter>
#include <algorithm>

namespace app::painting {
namespace {

// A material by lamp keeps its hue and loses this share of its light.
constexpr double kLostByLamp = 0.22;
// How far what is to come sinks into the cloth.
constexpr double kFineByDay = 0.4;
constexpr double kBroadByDay = 0.6;
constexpr double kFineByLamp = 0.64;
constexpr double kBroadByLamp = 0.86;
// Towards the light and away from it a slope is that much lighter and darker at most.
constexpr double kDarkest = 0.44;
constexpr double kLightest = 0.6;
constexpr core::sheets::Point kAwayFromLight = {0.6, 0.8};

double sunk(Breadth breadth, bool byLamp) {
  const double fine = byLamp ? kFineByLamp : kFineByDay;
  const double broad = byLamp ? kBroadByLamp : kBroadByDay;
  return breadth == Breadth::Fine ? fine : broad;
}

}  // namespace

QColor mixed(const QColor& one, const QColor& other, double share) {
  const auto channel = [share](double a, double b) { return static_cast<float>(a + (b - a) * share); };
  QColor colour = QColor::fromRgbF(channel(one.redF(), other.redF()), channel(one.greenF(), other.greenF()),
                                   channel(one.blueF(), other.blueF()));
  colour.setAlphaF(one.alphaF());
  return colour;
}

QColor Light::on(const QColor& material, Breadth breadth) const {
  QColor colour = m_lamp ? mixed(material, Qt::black, kLostByLamp) : material;
  if (!m_toCome) return colour;
  return mixed(colour, m_cloth, sunk(breadth, m_lamp));
}

void Light::fallOn(QImage& picture, Breadth breadth) const {
  QPainter painter(&picture);
  const auto veil = [&](QColor colour, double share) {
    colour.setAlphaF(static_cast<float>(share));
    painter.fillRect(picture.rect(), colour);
  };
  if (m_lamp) veil(Qt::black, kLostByLamp);
  if (m_toCome) veil(m_cloth, sunk(breadth, m_lamp));
}

QColor inkOn(const QColor& material) {
  return QColor(material.lightnessF() < 0.5F ? QStringLiteral("#F6F2EA") : QStringLiteral("#181C20"));
}

QColor workedOn(const QColor& material) {
  return QColor(material.lightnessF() < 0.5F ? QStringLiteral("#FFC798") : QStringLiteral("#712808"));
}

QColor sloped(const QColor& material, const core::sheets::Point& outwards) {
  const double towards = core::geometry::dot(outwards, kAwayFromLight);
  return towards < 0 ? mixed(material, Qt::black, -towards * kDarkest)
                     : mixed(material, Qt::white, towards * kLightest);
}

}  // namespace app::painting
