#pragma once
// The looks of the shop's materials as the record has them, with the pictures of their sheets read beside the
// interface.
#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <map>
#include <memory>
#include <set>
#include <string>

#include "app/viewmodels/piece_appearances.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class ShopAppearances : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(app::viewmodels::PieceAppearances all READ all NOTIFY changed FINAL)

 public:
  explicit ShopAppearances(workbench::Workbench& workbench, QObject* parent = nullptr);

  void refresh();

  const PieceAppearances& all() const { return m_all; }
  // Returns why a material does not look like the picture that the record names; until its picture is read, and where
  // it can be shown, the message is empty. Meanwhile it looks as its colour or its name says.
  core::base::Message trouble(const std::string& material) const;
  bool busy() const { return !m_reading.empty() || !m_toRead.empty(); }

 signals:
  void changed();

 private:
  using OfShop = std::map<std::string, core::intents::Appearance, std::less<>>;
  struct Read {
    QImage image;
    core::base::Message trouble;
  };
  void readNext();
  void publish();

  workbench::Workbench& m_workbench;
  OfShop m_ofShop;
  std::map<std::string, Read> m_read;  // by hash
  // One at a time: a large picture takes much of a tablet's memory while it is decoded.
  std::set<std::string> m_toRead;
  std::string m_reading;  // "" for none
  // What was laid out of a picture is kept with it, so that it is made anew only where it changed.
  struct Sheet {
    std::string hash;
    core::units::Length across;
    friend auto operator<=>(const Sheet&, const Sheet&) = default;
  };
  std::map<Sheet, std::shared_ptr<const painting::SheetPicture>> m_sheets;
  PieceAppearances m_all;
};

}  // namespace app::viewmodels
