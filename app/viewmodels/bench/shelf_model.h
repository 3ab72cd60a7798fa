#pragma once
// Every running wait of every job on one time axis from now, the next event first.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QStringList>
#include <vector>

#include "app/workbench/workbench.h"
#include "core/jobs/touch_tests.h"

namespace app::viewmodels {

// The axis runs from 0 (now) to 1 and is compressed towards its far end, so that a tack window of minutes and a rest of
// days fit on the same one.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY changed FINAL)
  Q_PROPERTY(QStringList tickNames READ tickNames NOTIFY changed FINAL)
  Q_PROPERTY(QList<double> tickPlaces READ tickPlaces NOTIFY changed FINAL)
  // States where it is unknown whether a wait runs, so that an empty shelf is not mistaken for one with nothing drying;
  // "" where all is known.
  Q_PROPERTY(QString unknown READ unknown NOTIFY changed FINAL)
  // The next event in one line, to be read from two metres; "" where nothing runs.
  Q_PROPERTY(QString nextLine READ nextLine NOTIFY changed FINAL)

 public:
  enum Role { Name = Qt::UserRole + 1, Said, From, To, Dots, Open, Late, Look };

  ShelfModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();
  // True where the record was read but part of it is not valid.
  void setDoubted(bool doubted) { m_doubted = doubted; }

  QString unknown() const { return m_unknown; }
  int count() const { return static_cast<int>(m_rows.size()); }
  QStringList tickNames() const { return m_tickNames; }
  QList<double> tickPlaces() const { return m_tickPlaces; }
  QString nextLine() const;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 signals:
  void changed();

 private:
  struct Row {
    // These tell a wait from the others; the name holds as many of them as that takes.
    QString piece;      // "" where the wait is the shop's, not one piece's
    QString thing;      // "" where the wait is for the whole job
    QString wait;       // "paste sets"
    QString technique;  // its title
    std::string id;     // of the wait
    std::int64_t startedUtc = 0;
    QString name;   // "Heron: paste sets"
    QString brief;  // the same without the technique, to be read from afar
    QString said;   // its state in words: "10 to 25 min", "open now"
    double fromMinutes = 0;
    double toMinutes = 0;
    std::vector<double> dotMinutes;
    bool open = false;  // likely true now
    bool late = false;  // past the likely end
    bool look = false;  // not likely yet, but true in one case of five: worth a look
    friend bool operator==(const Row&, const Row&) = default;
  };
  QString whatIsUnknown() const;
  Row rowOf(const core::jobs::JobAt& job, const core::jobs::RunningWait& run, const QString& piece) const;
  static void nameRows(std::vector<Row>& rows);
  void makeAxis();
  double place(double minutes) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::vector<Row> m_rows;
  QString m_unknown;
  bool m_doubted = false;
  double m_horizon = 60;
  QStringList m_tickNames;
  QList<double> m_tickPlaces;
};

}  // namespace app::viewmodels
