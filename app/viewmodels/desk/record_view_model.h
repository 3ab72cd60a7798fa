#pragma once
// The record of one piece at the desk: its events, notes and photographs, the batches a step was worked with, and the
// sheets that go with the piece.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "app/clocks/clock.h"
#include "app/viewmodels/rows_model.h"
#include "app/workbench/workbench.h"
#include "core/sheets/care_sheet.h"

namespace app::viewmodels {

class RecordViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(Page page READ page NOTIFY changed FINAL)
  Q_PROPERTY(app::viewmodels::RowsModel* rows READ rows CONSTANT FINAL)          // of the page shown
  Q_PROPERTY(app::viewmodels::RowsModel* pictures READ pictures CONSTANT FINAL)  // picture files to choose from
  Q_PROPERTY(app::viewmodels::RowsModel* batches READ batches CONSTANT FINAL)    // for the entry chosen
  Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed FINAL)          // of the chosen entry; "" for none
  Q_PROPERTY(QString chosenPicture READ chosenPicture NOTIFY changed FINAL)      // its file's hash; "" for none
  // The reason why the picture cannot be shown, once explainPicture has found it.
  Q_PROPERTY(QString pictureTrouble READ pictureTrouble NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenStep READ chosenStep NOTIFY changed FINAL)        // a finished step
  Q_PROPERTY(bool chosenWritten READ chosenWritten NOTIFY changed FINAL)  // a note, or a photograph with its caption
  Q_PROPERTY(QString chosenText READ chosenText NOTIFY changed FINAL)     // its text
  Q_PROPERTY(bool chosenRemovable READ chosenRemovable NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenElsewhere READ chosenElsewhere NOTIFY changed FINAL)  // prepared at another bench
  Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)                        // a picture is being copied
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)

 public:
  enum class Page { Happened, ForClient, ForConservator };
  Q_ENUM(Page)

  RecordViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  // The function lists picture files that a maker may mean, the newest first; it is called each time they are shown.
  void setPictures(std::function<QStringList()> found) { m_find = std::move(found); }
  void open(const std::string& jobId);
  void refresh();

  QString title() const;
  Page page() const { return m_page; }
  RowsModel* rows() { return &m_rows; }
  RowsModel* pictures() { return &m_pictures; }
  RowsModel* batches() { return &m_batches; }
  QString chosenTitle() const;
  QString chosenPicture() const;
  QString pictureTrouble() const { return m_pictureTrouble; }
  bool chosenStep() const;
  bool chosenWritten() const { return chosenRemovable(); }
  QString chosenText() const;
  bool chosenRemovable() const;
  bool chosenElsewhere() const;
  bool busy() const { return m_copying > 0; }
  QString refusal() const { return m_refusal; }

  Q_INVOKABLE void look(Page page);
  Q_INVOKABLE void choose(int row);
  // Returns whether the note was recorded.
  Q_INVOKABLE bool addNote(const QString& text);
  // Replaces the text of the chosen note or the caption of the chosen photograph. Returns whether it was recorded.
  Q_INVOKABLE bool changeText(const QString& text);
  Q_INVOKABLE void findPictures();
  // Copies the file in on another thread; where that fails `refusal` holds the reason.
  Q_INVOKABLE void keepPicture(int row);
  void keepPhotograph(const QString& path);
  // Finds out on another thread why the screen could not show the picture of the chosen entry.
  Q_INVOKABLE void explainPicture();
  // Marks a batch as used in the chosen step, or as not used.
  Q_INVOKABLE void turnBatch(int row);
  // Hides the chosen note or photograph from the record's pages; its events stay in the record.
  Q_INVOKABLE void remove();
  // Records that the preparation made at another bench is used for this piece.
  Q_INVOKABLE void useFromElsewhere();

 signals:
  void changed();

 private:
  const core::jobs::TimelineEntry* chosen() const;
  void joinBeginnings();
  QString titleOf(const core::jobs::TimelineEntry& entry) const;
  QString timeOf(const core::jobs::TimelineEntry& entry) const;
  void showHappened();
  void showCare(core::sheets::CareFor kind);
  void showBatches();
  void told(const core::base::Message& refused);

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  std::function<QStringList()> m_find;
  std::string m_job;
  Page m_page = Page::Happened;
  // Newest first. A step that was begun and done is one entry, that of its being done.
  std::vector<core::jobs::TimelineEntry> m_timeline;
  std::map<std::string, std::int64_t> m_begunUtc;  // when such a step was begun, by that entry's event
  std::string m_chosen;                            // event id
  QStringList m_files;
  std::vector<std::string> m_batchIds;
  RowsModel m_rows, m_pictures, m_batches;
  QString m_refusal, m_pictureTrouble;
  int m_copying = 0;
};

}  // namespace app::viewmodels
