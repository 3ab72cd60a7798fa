#pragma once
// Rows of a list at the desk. Their delegates stay while only their content changes.
#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QString>
#include <QStringList>
#include <vector>

#include "app/viewmodels/piece_drawing.h"

namespace app::viewmodels {

class RowsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

 public:
  struct Row {
    QString title;
    QString of;     // what it belongs to
    QString value;  // shown on the right
    QString note;
    QString problem;  // "" for none
    bool chosen = false;
    bool act = false;          // starts an act; it has no value to edit
    QString picture = {};      // hash of a photograph; "" for none
    bool missing = false;      // has to be entered and is not
    bool notice = false;       // the problem is only something to look at
    PieceDrawing sample = {};  // what the value looks like; without a drawing where there is nothing to see
    friend bool operator==(const Row&, const Row&) = default;
  };
  enum Role { Title = Qt::UserRole + 1, Of, Value, Note, Problem, Chosen, Act, Picture, Missing, Notice, Sample };

  using QAbstractListModel::QAbstractListModel;

  void show(std::vector<Row> rows);

  int count() const { return static_cast<int>(m_rows.size()); }
  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();

 private:
  std::vector<Row> m_rows;
};

// Returns a row for each file: its name, where it lies and when it was written.
std::vector<RowsModel::Row> rowsOfFiles(const QStringList& paths);

}  // namespace app::viewmodels
