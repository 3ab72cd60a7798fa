#include "app/viewmodels/desk/settings_view_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/words/words.h"

namespace app::viewmodels {

using core::units::Length;
using core::units::UnitSystem;

SettingsViewModel::SettingsViewModel(workbench::Workbench& workbench, QObject* parent)
    : QObject(parent), m_workbench(workbench) {
  connect(&workbench, &workbench::Workbench::shopChanged, this, &SettingsViewModel::changed);
}

void SettingsViewModel::setDemo(const std::string& text) {
  m_demo = text;
  emit changed();
}

void SettingsViewModel::setSound(const QString& trouble) {
  m_sound = trouble;
  emit changed();
}

void SettingsViewModel::pedalPressed() {
  ++m_presses;
  emit changed();
}

bool SettingsViewModel::inches() const { return m_workbench.settings().units == UnitSystem::Inches; }

double SettingsViewModel::distance() const { return m_workbench.settings().distance.inMillimetres(); }

QString SettingsViewModel::distanceText() const {
  // To the whole inch or centimetre: a distance from the eyes is paced, not measured.
  constexpr double kInch = 25.4;
  constexpr double kCentimetre = 10;
  return inches() ? tr("%1 in").arg(qRound(distance() / kInch)) : tr("%1 cm").arg(qRound(distance() / kCentimetre));
}

bool SettingsViewModel::lamp() const { return m_workbench.settings().lamp; }
bool SettingsViewModel::brief() const { return m_workbench.settings().way == core::units::Way::Short; }
bool SettingsViewModel::byBorders() const { return m_workbench.settings().marking == core::units::Marking::Borders; }

bool SettingsViewModel::introduced() const { return m_workbench.settings().introduced; }

void SettingsViewModel::open() {
  m_presses = 0;
  m_refusal.clear();
  emit changed();
}

QString SettingsViewModel::maker() const { return convert::toQt(m_workbench.shop().stock.maker); }

QString SettingsViewModel::contact() const { return convert::toQt(m_workbench.shop().stock.contact); }

void SettingsViewModel::nameMaker(const QString& maker, const QString& contact) {
  const QString name = maker.trimmed();
  const QString reach = contact.trimmed();
  if (name == this->maker() && reach == this->contact()) return;
  ask(core::intents::NameMaker{convert::fromQt(name), convert::fromQt(reach)});
}

void SettingsViewModel::choose(const char* what, const std::string& value) {
  ask(core::intents::ChooseSetting{what, value});
}

void SettingsViewModel::ask(const core::intents::ShopIntent& intent) {
  const auto refused = m_workbench.submit(core::intents::OfShop{intent});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, m_workbench.settings().units);
  emit changed();
}

void SettingsViewModel::setInches(bool inches) { choose("units", inches ? "in" : "mm"); }

void SettingsViewModel::farther() { moveBy(100); }

void SettingsViewModel::nearer() { moveBy(-100); }

void SettingsViewModel::moveBy(std::int64_t millimetres) {
  const Length now = m_workbench.settings().distance;
  const Length then =
      std::clamp(now + Length::wholeMillimetres(millimetres), core::shop::kNearest, core::shop::kFarthest);
  if (then != now) choose("distance", std::to_string(static_cast<std::int64_t>(then.inMillimetres())) + " mm");
}

void SettingsViewModel::turnWay() {
  choose("way", std::string(core::units::name(brief() ? core::units::Way::Every : core::units::Way::Short)));
}

void SettingsViewModel::turnMarking() {
  using core::units::Marking;
  choose("marking", std::string(core::units::name(byBorders() ? Marking::Marks : Marking::Borders)));
}

void SettingsViewModel::turnLamp() { choose("lamp", lamp() ? "false" : "true"); }

void SettingsViewModel::endIntroduction() {
  if (!introduced()) choose("introduced", "true");
}

bool SettingsViewModel::takeDemo() {
  const auto taken = m_workbench.takeIn(m_demo);
  if (taken.jobId.empty()) {
    m_refusal = taken.refusals.empty() ? tr("The demo job cannot be read.")
                                       : words::text(taken.refusals.front(), m_workbench.settings().units);
    emit changed();
    return false;
  }
  emit onBench(taken.jobId);
  return true;
}

}  // namespace app::viewmodels
