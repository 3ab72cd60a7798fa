#pragma once
// Where the maker can go from the bench, a page at a time: back to the piece left last, to the test of each wait, to
// the other pieces. And what the piece on the bench still takes.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QString>
#include <vector>

#include "app/viewmodels/bench/look_view_model.h"
#include "app/viewmodels/bench/shelf_model.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class PlacesModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY changed FINAL)  // on this page
  Q_PROPERTY(int pages READ pages NOTIFY changed FINAL)
  Q_PROPERTY(QString place READ place NOTIFY changed FINAL)  // "2 of 3"; "" for a single page
  // Of the piece on the bench: its name, the work left and when it is ready, and what of that today holds.
  Q_PROPERTY(QString piece READ piece NOTIFY changed FINAL)
  Q_PROPERTY(QString ahead READ ahead NOTIFY changed FINAL)
  Q_PROPERTY(QString today READ today NOTIFY changed FINAL)
  // The test that was asked for last, of whichever piece.
  Q_PROPERTY(app::viewmodels::LookViewModel* look READ look CONSTANT FINAL)

 public:
  // A row is a wait with all roles of the shelf; or a piece, whose Brief says what is to be done there ("" for the one
  // to go back to) and which has no outline.
  enum Role { IsWait = ShelfModel::Wet + 1, IsReturn };
  static constexpr int kPageSize = 3;

  PlacesModel(workbench::Workbench& workbench, const clocks::Clock& clock, const ShelfModel& shelf,
              QObject* parent = nullptr);

  // For the piece on the bench.
  void refresh(const std::string& jobId);
  // That piece was on the bench until now.
  void setLeft(const std::string& jobId) { m_left = jobId; }

  int count() const { return rowCount(); }
  int pages() const { return std::max(1, (static_cast<int>(m_rows.size()) + kPageSize - 1) / kPageSize); }
  QString place() const;
  QString piece() const { return m_piece; }
  QString ahead() const { return m_ahead; }
  QString today() const { return m_today; }
  LookViewModel* look() { return &m_look; }

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  // These count on this page. `choose` goes to the piece, or returns true where the test of a wait is to be shown.
  Q_INVOKABLE bool choose(int row);
  Q_INVOKABLE void turnPage();
  // Back to the first page, as the screen is entered; the work ahead is reckoned while it is looked at.
  Q_INVOKABLE void enter();
  Q_INVOKABLE void leave();

 signals:
  void changed();
  void goTo(const std::string& jobId);
  void refused(const QString& why);

 private:
  struct Row {
    ShelfModel::Row shown;
    QString act;
    bool isWait = false;
    bool isReturn = false;
  };
  void showAhead();
  void ask(const core::intents::Intent& intent);
  void showTest();
  Row pieceRow(const workbench::JobEntry& entry);
  std::size_t first() const { return static_cast<std::size_t>(m_page * kPageSize); }

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  const ShelfModel& m_shelf;
  std::vector<Row> m_rows;
  std::map<std::string, DrawnOnce> m_drawn;  // by job
  int m_page = 0;
  bool m_lookedAt = false;
  std::string m_job;   // on the bench
  std::string m_left;  // the one that was on it before; "" for none
  QString m_piece, m_ahead, m_today;
  std::string m_testJob, m_testWait;  // of the test asked for; "" for none
  LookViewModel m_look;
};

}  // namespace app::viewmodels
