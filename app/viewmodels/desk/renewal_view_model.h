#pragma once
// The present techniques of a piece under way, compared with those it is worked by: the changes, and adopting them.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <string>

#include "app/viewmodels/rows_model.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class RenewalViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool offered READ offered NOTIFY changed FINAL)             // something would change
  Q_PROPERTY(bool takeable READ takeable NOTIFY changed FINAL)           // and nothing prevents it
  Q_PROPERTY(bool taken READ taken NOTIFY changed FINAL)                 // adopted just now, and can be taken back
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)              // of the piece
  Q_PROPERTY(QString said READ said NOTIFY changed FINAL)                // the reason against it, or its result
  Q_PROPERTY(QString extent READ extent NOTIFY changed FINAL)            // number of steps that change
  Q_PROPERTY(app::viewmodels::RowsModel* rows READ rows CONSTANT FINAL)  // one for each step

 public:
  explicit RenewalViewModel(workbench::Workbench& workbench, QObject* parent = nullptr);

  void open(const std::string& jobId);

  bool offered() const { return m_rows.count() > 0 || !m_refused.id.empty(); }
  bool takeable() const { return m_rows.count() > 0 && m_refused.id.empty(); }
  bool taken() const { return !m_intent.empty(); }
  QString title() const;
  QString said() const;
  QString extent() const;
  RowsModel* rows() { return &m_rows; }

  Q_INVOKABLE void take();
  Q_INVOKABLE void takeBack();

 signals:
  void changed();

 private:
  void read();

  workbench::Workbench& m_workbench;
  std::string m_job;
  std::string m_intent;  // of the renewal adopted here last
  core::base::Message m_refused;
  RowsModel m_rows;
};

}  // namespace app::viewmodels
