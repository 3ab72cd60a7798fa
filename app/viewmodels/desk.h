#pragma once
// Everything that the screens show, made once over a workbench and updated together.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>

#include "app/viewmodels/bench/alert_view_model.h"
#include "app/viewmodels/bench/bench_view_model.h"
#include "app/viewmodels/bench/cutting_view_model.h"
#include "app/viewmodels/bench/jobs_model.h"
#include "app/viewmodels/bench/made_view_model.h"
#include "app/viewmodels/bench/meanwhile_view_model.h"
#include "app/viewmodels/bench/off_time_view_model.h"
#include "app/viewmodels/bench/places_model.h"
#include "app/viewmodels/bench/room_view_model.h"
#include "app/viewmodels/bench/shelf_model.h"
#include "app/viewmodels/bench/watch_view_model.h"
#include "app/viewmodels/desk/appearance_view_model.h"
#include "app/viewmodels/desk/camera_view_model.h"
#include "app/viewmodels/desk/design_view_model.h"
#include "app/viewmodels/desk/pieces_model.h"
#include "app/viewmodels/desk/record_view_model.h"
#include "app/viewmodels/desk/renewal_view_model.h"
#include "app/viewmodels/desk/settings_view_model.h"
#include "app/viewmodels/desk/stock_view_model.h"
#include "app/viewmodels/shop_appearances.h"

namespace app::viewmodels {

class Desk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(app::viewmodels::BenchViewModel* bench READ benchPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::ShelfModel* shelf READ shelfPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::MeanwhileViewModel* meanwhile READ meanwhilePointer CONSTANT)
  Q_PROPERTY(app::viewmodels::PlacesModel* places READ placesPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::AlertViewModel* alert READ alertPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::JobsModel* jobs READ jobsPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::WatchViewModel* watch READ watchPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::RoomViewModel* room READ roomPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::OffTimeViewModel* off READ offPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::MadeViewModel* made READ madePointer CONSTANT)
  Q_PROPERTY(app::viewmodels::CuttingViewModel* cutting READ cuttingPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::DesignViewModel* design READ designPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::PiecesModel* pieces READ piecesPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::SettingsViewModel* settings READ settingsPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::StockViewModel* stock READ stockPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::RecordViewModel* record READ recordPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::RenewalViewModel* renewal READ renewalPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::ShopAppearances* appearances READ appearancesPointer CONSTANT)
  Q_PROPERTY(app::viewmodels::AppearanceViewModel* appearance READ appearancePointer CONSTANT)
  Q_PROPERTY(app::viewmodels::CameraViewModel* camera READ cameraPointer CONSTANT)

 public:
  Desk(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  BenchViewModel& bench() { return m_bench; }
  ShelfModel& shelf() { return m_shelf; }
  MeanwhileViewModel& meanwhile() { return m_meanwhile; }
  PlacesModel& places() { return m_places; }
  AlertViewModel& alert() { return m_alert; }
  JobsModel& jobs() { return m_jobs; }
  WatchViewModel& watch() { return m_watch; }
  RoomViewModel& room() { return m_room; }
  OffTimeViewModel& off() { return m_off; }
  MadeViewModel& made() { return m_made; }
  CuttingViewModel& cutting() { return m_cutting; }
  DesignViewModel& design() { return m_design; }
  PiecesModel& pieces() { return m_pieces; }
  SettingsViewModel& settings() { return m_settings; }
  StockViewModel& stock() { return m_stock; }
  RecordViewModel& record() { return m_record; }
  RenewalViewModel& renewal() { return m_renewal; }
  ShopAppearances& appearances() { return m_appearances; }
  AppearanceViewModel& appearance() { return m_appearance; }
  CameraViewModel& camera() { return m_camera; }
  workbench::Workbench& workbench() { return m_workbench; }

  void refresh();
  // The record cannot be used, or part of it is not valid: bench and shelf show this.
  void setTrouble(const QString& trouble);
  // Reads everything again every `milliseconds`, since some of it changes by the clock alone.
  void keepFresh(int milliseconds) { m_timer.start(milliseconds); }
  BenchViewModel* benchPointer() { return &m_bench; }
  ShelfModel* shelfPointer() { return &m_shelf; }
  MeanwhileViewModel* meanwhilePointer() { return &m_meanwhile; }
  PlacesModel* placesPointer() { return &m_places; }
  AlertViewModel* alertPointer() { return &m_alert; }
  JobsModel* jobsPointer() { return &m_jobs; }
  WatchViewModel* watchPointer() { return &m_watch; }
  RoomViewModel* roomPointer() { return &m_room; }
  OffTimeViewModel* offPointer() { return &m_off; }
  MadeViewModel* madePointer() { return &m_made; }
  CuttingViewModel* cuttingPointer() { return &m_cutting; }
  DesignViewModel* designPointer() { return &m_design; }
  PiecesModel* piecesPointer() { return &m_pieces; }
  SettingsViewModel* settingsPointer() { return &m_settings; }
  StockViewModel* stockPointer() { return &m_stock; }
  RecordViewModel* recordPointer() { return &m_record; }
  RenewalViewModel* renewalPointer() { return &m_renewal; }
  ShopAppearances* appearancesPointer() { return &m_appearances; }
  AppearanceViewModel* appearancePointer() { return &m_appearance; }
  CameraViewModel* cameraPointer() { return &m_camera; }

 private:
  // What can be gone to from the piece on the bench.
  void showElsewhere();

  workbench::Workbench& m_workbench;
  QTimer m_timer;
  BenchViewModel m_bench;
  ShelfModel m_shelf;
  MeanwhileViewModel m_meanwhile;
  PlacesModel m_places;
  AlertViewModel m_alert;
  JobsModel m_jobs;
  WatchViewModel m_watch;
  RoomViewModel m_room;
  OffTimeViewModel m_off;
  MadeViewModel m_made;
  CuttingViewModel m_cutting;
  DesignViewModel m_design;
  PiecesModel m_pieces;
  SettingsViewModel m_settings;
  StockViewModel m_stock;
  RecordViewModel m_record;
  RenewalViewModel m_renewal;
  ShopAppearances m_appearances;
  AppearanceViewModel m_appearance;
  CameraViewModel m_camera;
};

}  // namespace app::viewmodels
