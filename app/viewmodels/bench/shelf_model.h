#pragma once
// Every running wait of every job, the next event first: a verb with its time, and an outline on the clock's hours.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QPointF>
#include <QStringList>
#include <map>
#include <vector>

#include "app/viewmodels/told_wait.h"
#include "app/viewmodels/wet_piece.h"
#include "app/workbench/workbench.h"
#include "core/jobs/touch_tests.h"

namespace app::viewmodels {

// An hour is as long as any other. The shelf shows the next few and folds the axis there; what begins beyond the fold
// is named by its day and hour.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY changed FINAL)
  // The full hours of the clock that lie ahead, in hours from now, and their names ("11:00").
  Q_PROPERTY(QList<double> hourPlaces READ hourPlaces NOTIFY changed FINAL)
  Q_PROPERTY(QStringList hourNames READ hourNames NOTIFY changed FINAL)
  // The first time beyond the fold ("Fri 9:00"); "" where nothing lies there.
  Q_PROPERTY(QString beyond READ beyond NOTIFY changed FINAL)
  Q_PROPERTY(int foldHours READ foldHours CONSTANT FINAL)
  Q_PROPERTY(bool silent READ silent NOTIFY changed FINAL)  // an alert would not be heard
  // States where it is unknown whether a wait runs, so that an empty shelf is not mistaken for one with nothing drying;
  // "" where all is known.
  Q_PROPERTY(QString unknown READ unknown NOTIFY changed FINAL)
  // The next event in one line, to be read from two metres; "" where nothing runs.
  Q_PROPERTY(QString nextBrief READ nextBrief NOTIFY changed FINAL)  // "tack 10:50 Heron", as short as it can be read
  Q_PROPERTY(QString nextLine READ nextLine NOTIFY changed FINAL)

 public:
  static constexpr int kFoldHours = 3;

  // Piece is written as titles are, apart from what follows it: Rests, from the longest to the shortest that still
  // tells the waits apart; Title is the whole name. Points and Lead, where the outline begins, are in hours from now,
  // as is GoneAt, where a window closes; nought where none does. Drawing and Wet are the piece and what is wet of it.
  enum Role {
    Name = Qt::UserRole + 1,
    Brief,
    Sentence,
    Piece,
    Rests,
    Window,
    Solid,
    Closed,
    Guessed,
    Look,
    Points,
    Lead,
    Beyond,
    Title,
    GoneAt,
    Drawing,
    Wet
  };
  struct Row {
    // These tell a wait from the others; the name holds as many of them as that takes.
    QString piece;      // "" where the wait is the shop's, not one piece's
    QString thing;      // "" where the wait is for the whole job
    QString wait;       // "paste sets"
    QString technique;  // its title
    std::string job;
    std::string id;  // of the wait
    std::int64_t startedUtc = 0;
    QString name;       // "Heron: paste sets"
    QString title;      // of the artwork, up to its first comma
    QStringList rests;  // "paste sets", "paste": after the piece, where there is one
    ToldWait told;
    QList<QPointF> points;
    double lead = 0;    // hours until the outline begins; 0 where it has
    double goneAt = 0;  // hours until the window likely has closed; 0 for none
    bool canTest = false;
    WetPiece wet;

    bool isBeyond() const { return lead >= kFoldHours; }
    bool isSame(const Row& other) const { return job == other.job && id == other.id && startedUtc == other.startedUtc; }
    // Everything told of it follows from the time and the wait, which these hold.
    friend bool operator==(const Row& a, const Row& b) {
      return a.isSame(b) && a.name == b.name && a.title == b.title && a.rests == b.rests &&
             a.told.brief == b.told.brief && a.told.sentence == b.told.sentence &&
             a.told.told.telling == b.told.told.telling && a.points == b.points && a.lead == b.lead &&
             a.canTest == b.canTest && a.wet == b.wet;
    }
  };

  ShelfModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();
  // True where the record was read but part of it is not valid.
  void setDoubted(bool doubted) { m_doubted = doubted; }

  QString unknown() const { return m_unknown; }
  int count() const { return static_cast<int>(m_rows.size()); }
  QList<double> hourPlaces() const { return m_hourPlaces; }
  QStringList hourNames() const { return m_hourNames; }
  QString beyond() const { return m_beyond; }
  static int foldHours() { return kFoldHours; }
  bool silent() const { return m_silent; }
  void setSilent(bool silent);
  QString nextBrief() const;
  QString nextLine() const;
  const std::vector<Row>& rows() const { return m_rows; }
  static QVariant cell(const Row& row, int role);
  static QHash<int, QByteArray> roles();

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 signals:
  void changed();

 private:
  QString whatIsUnknown() const;
  Row rowOf(const core::jobs::JobAt& job, const core::jobs::RunningWait& run, const QString& piece,
            const QString& title);
  void move(std::vector<Row> rows);
  static void nameRows(std::vector<Row>& rows);
  void makeAxis();

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::vector<Row> m_rows;
  std::map<std::string, DrawnOnce> m_drawn;  // by job
  QString m_unknown;
  bool m_doubted = false;
  bool m_silent = false;
  QList<double> m_hourPlaces;
  QStringList m_hourNames;
  QString m_beyond;
};

}  // namespace app::viewmodels
