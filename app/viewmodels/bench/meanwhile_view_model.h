#pragma once
// What the hands can do at another piece while the one on the bench waits.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <map>

#include "app/viewmodels/wet_piece.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class MeanwhileViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool present READ present NOTIFY changed FINAL)
  Q_PROPERTY(QString piece READ piece NOTIFY changed FINAL)  // the artwork's name
  Q_PROPERTY(QString act READ act NOTIFY changed FINAL)
  Q_PROPERTY(QString terms READ terms NOTIFY changed FINAL)  // "clean hands, 12 min: done by 10:18"
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)

 public:
  MeanwhileViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  // Looks for an act while that job waits.
  void refresh(const std::string& jobId);

  bool present() const { return !m_job.empty(); }
  QString piece() const { return m_piece; }
  QString act() const { return m_act; }
  QString terms() const { return m_terms; }
  PieceDrawing drawing() const { return m_drawing; }

  // Puts that piece on the bench.
  Q_INVOKABLE void take();

 signals:
  void changed();
  void goTo(const std::string& jobId);

 private:
  void show(const core::jobs::JobAt& job, const core::jobs::BenchPlace& place, core::units::Duration work);
  std::vector<std::string> toConsider(const std::string& waiting) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::string m_job;  // "" where nothing ends in time
  QString m_piece;
  QString m_act;
  QString m_terms;
  PieceDrawing m_drawing;
  std::map<std::string, DrawnOnce> m_drawn;  // by job
};

}  // namespace app::viewmodels
