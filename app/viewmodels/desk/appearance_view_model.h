#pragma once
// How one material of the shop looks, at the desk: its colour, the picture of its sheet, and a strip of it as it will
// be.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>
#include <optional>
#include <string>

#include "app/viewmodels/piece_drawing.h"
#include "app/viewmodels/rows_model.h"
#include "app/viewmodels/shop_appearances.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class AppearanceViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* colours READ colours CONSTANT FINAL)  // to choose from; value: "#rrggbb"
  Q_PROPERTY(QString colour READ colour NOTIFY changed FINAL)                  // "#rrggbb"; "" where its name tells it
  Q_PROPERTY(bool paper READ paper NOTIFY changed FINAL)                       // it may have a picture
  Q_PROPERTY(app::viewmodels::RowsModel* pictures READ pictures CONSTANT FINAL)  // picture files to choose from
  Q_PROPERTY(QString picture READ picture NOTIFY changed FINAL)                  // its file's hash; "" for none
  Q_PROPERTY(QString across READ across NOTIFY changed FINAL)  // what it shows of the sheet; "" where not entered
  Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
  // A picture was chosen that counts only once it is entered how much of the sheet it shows.
  Q_PROPERTY(bool lacksAcross READ lacksAcross NOTIFY changed FINAL)
  Q_PROPERTY(QString sheetAcross READ sheetAcross NOTIFY changed FINAL)  // the whole sheet's width; "" where not known
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)          // why its picture is not shown
  Q_PROPERTY(app::viewmodels::PieceDrawing sample READ sample NOTIFY changed FINAL)
  Q_PROPERTY(bool plain READ plain NOTIFY changed FINAL)
  Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed FINAL)
  Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)  // a picture is being copied
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)

 public:
  AppearanceViewModel(workbench::Workbench& workbench, ShopAppearances& appearances, QObject* parent = nullptr);

  // The function lists picture files that a maker may mean, the newest first; it is called each time they are shown.
  void setPictures(std::function<QStringList()> found) { m_find = std::move(found); }
  // Shows an item of the shop's stock.
  void open(const std::string& item);
  // True while its page takes the pictures of the camera.
  bool takesPictures() const { return m_takesPictures; }

  QString title() const;
  RowsModel* colours() { return &m_colours; }
  QString colour() const;
  bool paper() const;
  RowsModel* pictures() { return &m_pictures; }
  QString picture() const;
  QString across() const;
  QString unit() const;
  bool lacksAcross() const { return m_chosen.has_value(); }
  QString sheetAcross() const;
  QString trouble() const;
  PieceDrawing sample() const { return m_sample; }
  bool plain() const { return told().plain() && !m_chosen; }
  bool canTakeBack() const { return !m_lastAct.empty(); }
  bool busy() const { return m_copying > 0; }
  QString refusal() const { return m_refusal; }

  // Return whether it was recorded; otherwise `refusal` holds the reason.
  Q_INVOKABLE bool chooseColour(int row);
  Q_INVOKABLE bool enterColour(const QString& text);  // "" for the name's own
  // In the bench's unit, or with one.
  Q_INVOKABLE bool enterAcross(const QString& text);
  Q_INVOKABLE bool enterWholeSheet();

  Q_INVOKABLE void findPictures();
  // Copies the file in on another thread; where that fails `refusal` holds the reason.
  Q_INVOKABLE void keepPicture(int row);
  Q_INVOKABLE void keepPhotograph(const QString& path);
  Q_INVOKABLE void setTakesPictures(bool takes) { m_takesPictures = takes; }
  Q_INVOKABLE void removePicture();
  // The material looks as its name says.
  Q_INVOKABLE void makePlain();
  // Takes back the last act done here since the page was opened.
  Q_INVOKABLE void takeBack();

 signals:
  void changed();

 private:
  void refresh();
  void showColours();
  void drawSample();
  const core::shop::StockItem* item() const;
  // As the record has it.
  core::intents::Appearance told() const;
  bool give(core::intents::Appearance appearance);
  bool refuse(const core::base::Message& refused);

  workbench::Workbench& m_workbench;
  ShopAppearances& m_appearances;
  std::function<QStringList()> m_find;
  std::string m_item;
  std::optional<core::intents::SheetPicture> m_chosen;  // it is not entered yet how much it shows
  QStringList m_files;
  RowsModel m_colours, m_pictures;
  PieceDrawing m_sample;
  std::string m_lastAct;
  QString m_refusal;
  int m_copying = 0;
  bool m_takesPictures = false;
};

}  // namespace app::viewmodels
