#pragma once
// All pieces at the desk: designs that are on no bench yet, then the jobs, each with its picture; and the chosen one.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QSizeF>
#include <QString>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "app/viewmodels/piece_drawing.h"
#include "app/viewmodels/piece_pictures.h"
#include "app/viewmodels/rows_model.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class PiecesModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY changed FINAL)           // that match the search
  Q_PROPERTY(int all READ all NOTIFY changed FINAL)               // including those put away
  Q_PROPERTY(bool awayShown READ awayShown NOTIFY changed FINAL)  // shows the pieces put away, not those on the bench
  Q_PROPERTY(int away READ away NOTIFY changed FINAL)             // how many are put away
  // The result of the last act asked for here, and whether it was refused.
  Q_PROPERTY(QString said READ said NOTIFY changed FINAL)
  Q_PROPERTY(bool refused READ refused NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* files READ files CONSTANT FINAL)  // that could be imported
  Q_PROPERTY(QString sought READ sought NOTIFY changed FINAL)
  Q_PROPERTY(bool inches READ inches NOTIFY changed FINAL)  // what this bench measures in
  // The greatest width and height among those that match, in mm, by which all are drawn to one scale.
  Q_PROPERTY(QSizeF largest READ largest NOTIFY changed FINAL)
  // These describe the piece chosen last.
  Q_PROPERTY(QString chosenId READ chosenId NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenAway READ chosenAway NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenDesign READ chosenDesign NOTIFY changed FINAL)  // a design that is no job yet
  Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenOf READ chosenOf NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenAct READ chosenAct NOTIFY changed FINAL)  // what comes next, or why nothing does
  Q_PROPERTY(int chosenDone READ chosenDone NOTIFY changed FINAL)    // steps
  Q_PROPERTY(int chosenAll READ chosenAll NOTIFY changed FINAL)  // 0 of a design, and of a job that cannot be opened
  Q_PROPERTY(QString chosenDue READ chosenDue NOTIFY changed FINAL)
  // What lies ahead of it, see piece_outlook.h; of a design what is to be bought alone.
  Q_PROPERTY(QString chosenReady READ chosenReady NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenHands READ chosenHands NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* today READ today CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* waits READ waits CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* wants READ wants CONSTANT FINAL)
  Q_PROPERTY(app::viewmodels::PieceDrawing chosenPicture READ chosenPicture NOTIFY changed FINAL)

 public:
  enum Role {
    Title = Qt::UserRole + 1,
    Of,
    Act,   // what comes next
    Wait,  // "paste sets: test 11:40"; "" where nothing runs
    Window,
    Done,
    All,
    Due,
    Late,
    AtDesk,
    OnBench,
    Picture,
    Across,  // mm
    Down
  };

  PiecesModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();

  // Sets the folder in which files are handed over, and the function that lists those to import, the newest first.
  void setHandOver(const QString& folder, std::function<QStringList()> found);

  int count() const { return static_cast<int>(m_rows.size()); }
  int all() const { return m_all; }
  bool awayShown() const { return m_awayShown; }
  int away() const { return m_away; }
  QString said() const { return m_said; }
  bool refused() const { return m_refused; }
  RowsModel* files() { return &m_files; }
  bool chosenAway() const { return chosenRow().away; }
  QString sought() const { return m_sought; }
  QString chosenId() const { return QString::fromStdString(m_chosen); }
  bool chosenDesign() const { return chosenRow().atDesk; }
  QString chosenTitle() const { return chosenRow().title; }
  QString chosenOf() const { return chosenRow().of(); }
  QString chosenAct() const { return chosenRow().act; }
  int chosenDone() const { return chosenRow().done; }
  int chosenAll() const { return chosenRow().all; }
  QString chosenDue() const { return chosenRow().due; }
  QString chosenReady() const { return m_ready; }
  QString chosenHands() const { return m_hands; }
  RowsModel* today() { return &m_today; }
  RowsModel* waits() { return &m_waits; }
  RowsModel* wants() { return &m_wants; }
  bool inches() const { return m_workbench.settings().units == core::units::UnitSystem::Inches; }
  QSizeF largest() const { return m_largest; }
  PieceDrawing chosenPicture() const;

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  // The job that the bench shows, which stands out on the board.
  void setOnBench(const std::string& jobId);

  // Searches for words in any order; "" finds all.
  Q_INVOKABLE void seek(const QString& words);
  Q_INVOKABLE void showAway(bool away);
  Q_INVOKABLE void choose(int row);
  // These put the chosen job away or back on the bench, begin it once more as another job, or export it with its record
  // as one file.
  Q_INVOKABLE void putAway();
  Q_INVOKABLE void bringBack();
  Q_INVOKABLE bool onceMore();
  Q_INVOKABLE void handOver();
  // Lists job files, and jobs exported with their record.
  Q_INVOKABLE void findFiles();
  Q_INVOKABLE void takeIn(int file);

 signals:
  void changed();
  void chosen(const std::string& jobId);  // a job, not a design

 private:
  struct Row {
    std::string id;
    bool atDesk = false;
    QString title, reference, client, act, wait, due;
    bool window = false;
    int done = 0;
    int all = 0;
    QSizeF size;  // mm
    bool late = false;
    bool away = false;
    QString of() const;  // "E-12 · the harbour office"
    friend bool operator==(const Row&, const Row&) = default;
  };
  QString writeRecord(QString name, const std::string& jobId, const std::string& record);
  Row chosenRow() const;
  Row rowOf(const workbench::JobEntry& entry) const;
  Row rowOf(const core::drafts::Drafted& design) const;
  void setDue(Row& row, const std::string& written) const;
  bool matches(const Row& row) const;
  void tell(const QString& said, bool refused);
  void tell(const core::base::Message& refused, const QString& done);
  const PieceDrawing& pictureOf(const Row& row) const;
  void lookAhead();
  void lookForWants();
  std::string stockStamp() const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::vector<Row> m_rows;
  QString m_sought, m_said;
  bool m_refused = false;
  bool m_awayShown = false;
  int m_all = 0;
  int m_away = 0;
  QString m_folder;
  std::function<QStringList()> m_find;
  QStringList m_paths;
  RowsModel m_files;
  std::string m_chosen;
  std::string m_onBench;
  QSizeF m_largest;
  mutable PiecePictures m_pictures;
  QString m_ready, m_hands;
  RowsModel m_today, m_waits, m_wants;
  // What the lists above were made of: they are made again with the minute, those of the stock with that.
  bool m_aheadChanged = false;
  std::int64_t m_aheadMinute = 0;
  std::string m_wantsOf;
  std::shared_ptr<const core::design::Design> m_wantsDesign;
};

}  // namespace app::viewmodels
