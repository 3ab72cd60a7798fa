#pragma once
// The jobs on this bench, a page at a time.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QString>
#include <vector>

#include "app/viewmodels/piece_pictures.h"
#include "app/viewmodels/standing.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class JobsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY changed FINAL)  // on this page
  Q_PROPERTY(int page READ page NOTIFY changed FINAL)
  Q_PROPERTY(int pages READ pages NOTIFY changed FINAL)
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)  // "page 2 of 3"; "" for a single page
  // These describe the job chosen last.
  Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenAct READ chosenAct NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenWait READ chosenWait NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenWindow READ chosenWindow NOTIFY changed FINAL)
  Q_PROPERTY(int chosenDone READ chosenDone NOTIFY changed FINAL)
  Q_PROPERTY(int chosenAll READ chosenAll NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing chosenPicture READ chosenPicture NOTIFY changed FINAL)

 public:
  enum Role {
    Title = Qt::UserRole + 1,
    Act,   // what comes next, or why nothing does
    Wait,  // the running waits; "" for none
    Window,
    Done,  // steps
    All,   // 0 of a job that cannot be opened
    Picture
  };
  static constexpr int kPageSize = 2;

  JobsModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();

  int count() const { return rowCount(); }
  int page() const { return m_page; }
  int pages() const;
  QString place() const;
  QString chosenTitle() const { return chosenRow().title; }
  QString chosenAct() const { return chosenRow().standing.act; }
  QString chosenWait() const { return chosenRow().standing.runs(); }
  bool chosenWindow() const { return chosenRow().standing.window; }
  int chosenDone() const { return static_cast<int>(chosenRow().standing.done); }
  int chosenAll() const { return static_cast<int>(chosenRow().standing.all); }
  PieceDrawing chosenPicture() const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  // `row` counts on this page.
  Q_INVOKABLE void choose(int row);
  // After the last page it begins again with the first.
  Q_INVOKABLE void turnPage();

 signals:
  void changed();
  void chosen(const std::string& jobId);

 private:
  struct Row {
    std::string id;
    QString title;
    Standing standing;
    friend bool operator==(const Row&, const Row&) = default;
  };
  Row chosenRow() const;
  Row rowOf(const workbench::JobEntry& entry) const;
  std::size_t first() const { return static_cast<std::size_t>(m_page) * kPageSize; }

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::vector<Row> m_rows;
  std::string m_chosen;
  mutable PiecePictures m_pictures;
  int m_page = 0;
};

}  // namespace app::viewmodels
