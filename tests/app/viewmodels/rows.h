#pragma once
// Rows of a list as they are read on the screen.
#include <QString>

#include "app/viewmodels/rows_model.h"

namespace tests {

using app::viewmodels::RowsModel;

inline QString cell(RowsModel& rows, int row, int role) { return rows.data(rows.index(row), role).toString(); }

// The first whose title holds that text; -1 where there is none.
inline int rowOf(RowsModel& rows, const QString& part) {
  for (int row = 0; row < rows.count(); ++row) {
    if (cell(rows, row, RowsModel::Title).contains(part)) return row;
  }
  return -1;
}

}  // namespace tests
