#include "app/viewmodels/desk.h"

namespace app::viewmodels {

Desk::Desk(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent),
      m_workbench(workbench),
      m_bench(workbench, clock),
      m_shelf(workbench, clock),
      m_meanwhile(workbench, clock),
      m_places(workbench, clock, m_shelf),
      m_alert(workbench, clock),
      m_jobs(workbench, clock),
      m_watch(clock),
      m_room(workbench, clock),
      m_off(workbench, clock),
      m_made(workbench),
      m_cutting(workbench),
      m_design(workbench, clock),
      m_pieces(workbench, clock),
      m_settings(workbench),
      m_stock(workbench, clock),
      m_record(workbench, clock),
      m_renewal(workbench),
      m_appearances(workbench),
      m_appearance(workbench, m_appearances),
      m_camera(camera::CameraProcess::besideTheProgram()) {
  connect(&workbench, &workbench::Workbench::jobChanged, this, &Desk::refresh);
  connect(&workbench, &workbench::Workbench::jobsChanged, this, &Desk::refresh);
  connect(&workbench, &workbench::Workbench::scheduleChanged, &m_alert, &AlertViewModel::refresh);
  connect(&workbench, &workbench::Workbench::shopChanged, this, &Desk::refresh);
  connect(&m_timer, &QTimer::timeout, this, &Desk::refresh);
  connect(&m_jobs, &JobsModel::chosen, &m_bench, &BenchViewModel::selectJob);
  connect(&m_jobs, &JobsModel::chosen, &m_cutting, &CuttingViewModel::open);
  connect(&m_design, &DesignViewModel::onBench, &m_bench, &BenchViewModel::selectJob);
  connect(&m_pieces, &PiecesModel::chosen, &m_bench, &BenchViewModel::selectJob);
  connect(&m_pieces, &PiecesModel::chosen, &m_cutting, &CuttingViewModel::open);
  connect(&m_pieces, &PiecesModel::chosen, &m_record, &RecordViewModel::open);
  connect(&m_pieces, &PiecesModel::chosen, &m_renewal, &RenewalViewModel::open);
  // The camera's pictures go to the page that opened it.
  connect(&m_camera, &CameraViewModel::taken, this, [this](const QString& path) {
    if (m_appearance.takesPictures()) {
      m_appearance.keepPhotograph(path);
    } else {
      m_record.keepPhotograph(path);
    }
  });
  m_stock.setAppearances(m_appearances);
  connect(&m_stock, &StockViewModel::appearanceAsked, &m_appearance, &AppearanceViewModel::open);
  connect(&m_settings, &SettingsViewModel::onBench, &m_bench, &BenchViewModel::selectJob);
  connect(&m_alert, &AlertViewModel::goTo, &m_bench, &BenchViewModel::selectJob);
  connect(&m_meanwhile, &MeanwhileViewModel::goTo, &m_bench, &BenchViewModel::selectJob);
  connect(&m_places, &PlacesModel::goTo, &m_bench, &BenchViewModel::selectJob);
  connect(&m_places, &PlacesModel::refused, &m_bench, &BenchViewModel::tellRefusal);
  connect(&m_bench, &BenchViewModel::left, this, [this](const std::string& jobId) {
    m_places.setLeft(jobId);
    showElsewhere();
  });
  connect(&m_watch, &WatchViewModel::changed, &m_shelf, [this] {
    using Trouble = WatchViewModel::Trouble;
    m_shelf.setSilent(m_watch.has(Trouble::Sound) || m_watch.has(Trouble::Alerts));
  });
  connect(&m_bench, &BenchViewModel::handsFree, &m_alert, &AlertViewModel::refresh);
  if (!workbench.jobs().empty()) m_bench.selectJob(workbench.jobs().front().id);
  refresh();
}

void Desk::setTrouble(const QString& trouble) {
  m_shelf.setDoubted(!trouble.isEmpty());
  m_bench.setTrouble(trouble);
  refresh();
}

void Desk::showElsewhere() {
  m_meanwhile.refresh(m_bench.jobId());
  m_places.refresh(m_bench.jobId());
}

void Desk::refresh() {
  m_bench.refresh();
  m_shelf.refresh();
  showElsewhere();
  m_watch.set(WatchViewModel::Trouble::Unknown, m_shelf.unknown());
  m_alert.refresh();
  m_jobs.refresh();
  m_pieces.setOnBench(m_bench.jobId());
  m_pieces.refresh();
  m_appearances.refresh();
  m_stock.refresh();
  m_watch.refresh();
  m_room.refresh();
  m_off.refresh();
  m_cutting.refresh();
  m_made.show(m_bench.jobId(), m_bench.steps());
}

}  // namespace app::viewmodels
