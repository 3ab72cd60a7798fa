#pragma once
// The alert that is shown, for any job: its piece, until when it may be caught, the touch test.
#include <QtQml/qqmlregistration.h>
#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QStringList>

#include "app/viewmodels/names.h"
#include "app/viewmodels/wet_piece.h"
#include "app/workbench/workbench.h"
#include "core/waits/telling.h"

namespace app::viewmodels {

class AlertViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool up READ up NOTIFY changed FINAL)
  Q_PROPERTY(QString identity READ identity NOTIFY changed FINAL)  // changes when another alert takes the screen
  Q_PROPERTY(bool high READ high NOTIFY changed FINAL)
  // The artwork's name, and the word that stands for it on the shelf.
  Q_PROPERTY(QString piece READ piece NOTIFY changed FINAL)
  Q_PROPERTY(QString shortPiece READ shortPiece NOTIFY changed FINAL)
  // Which of its waits: with the board or strip, and without.
  Q_PROPERTY(QStringList whats READ whats NOTIFY changed FINAL)
  // The word to be read first: "Test now", the act to be done, "Likely closed". And what goes with it: the touch test
  // as a question, or the remedy.
  Q_PROPERTY(QString act READ act NOTIFY changed FINAL)
  Q_PROPERTY(QString test READ test NOTIFY changed FINAL)
  // The piece in its materials, and where what is wet lies on it.
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  Q_PROPERTY(bool pictured READ pictured NOTIFY changed FINAL)
  Q_PROPERTY(QRectF wet READ wet NOTIFY changed FINAL)
  Q_PROPERTY(QString state READ state NOTIFY changed FINAL)  // "wet": what it is until it is found otherwise
  Q_PROPERTY(QString now READ now NOTIFY changed FINAL)      // "11:18"
  Q_PROPERTY(QString times READ times NOTIFY changed FINAL)  // "" where the times are known; the bar says them
  // A window that may close: "may close 11:25", "likely gone 11:37"; the first is "" from then on, both without a
  // window.
  Q_PROPERTY(QString mayClose READ mayClose NOTIFY changed FINAL)
  Q_PROPERTY(QString gone READ gone NOTIFY changed FINAL)
  // Its outline (x in minutes from now, y from nought to one) until it is likely gone, the minutes until then, and
  // those until it may close.
  Q_PROPERTY(QList<QPointF> bar READ bar NOTIFY changed FINAL)
  Q_PROPERTY(double barMinutes READ barMinutes NOTIFY changed FINAL)
  Q_PROPERTY(double closeMinutes READ closeMinutes NOTIFY changed FINAL)
  Q_PROPERTY(bool canLook READ canLook NOTIFY changed FINAL)
  // The answers are in the technique's words; one is "" where a touch test of the wait cannot have it.
  Q_PROPERTY(QString notYetWord READ notYetWord NOTIFY changed FINAL)
  Q_PROPERTY(QString foundWord READ foundWord NOTIFY changed FINAL)
  Q_PROPERTY(QString pastItWord READ pastItWord NOTIFY changed FINAL)
  Q_PROPERTY(QStringList others READ others NOTIFY changed FINAL)  // further alerts behind this one, by name
  // These are true where the alert may be put off for that long: "In 2 min", "In 5 min".
  Q_PROPERTY(bool shortly READ shortly NOTIFY changed FINAL)
  Q_PROPERTY(bool later READ later NOTIFY changed FINAL)

 public:
  AlertViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh();
  // Shows an alert that was held back: while a blade is in the hand nothing may cover the step.
  void releaseHeld();

  bool up() const { return m_up; }
  QString identity() const { return m_identity; }
  bool high() const { return m_alert.high(); }
  QString piece() const { return m_piece; }
  QString shortPiece() const { return m_shortPiece; }
  QStringList whats() const { return m_whats; }
  QString act() const { return m_act; }
  QString test() const { return m_test; }
  PieceDrawing drawing() const { return m_wet.drawing; }
  bool pictured() const { return m_wet.drawing.piece != nullptr; }
  QRectF wet() const { return m_wet.wet; }
  QString state() const { return m_state; }
  QString now() const { return m_now; }
  QString times() const { return m_times; }
  QString mayClose() const { return m_mayClose; }
  QString gone() const { return m_gone; }
  QList<QPointF> bar() const { return m_bar; }
  double barMinutes() const { return m_barMinutes; }
  double closeMinutes() const { return m_closeMinutes; }
  bool canLook() const { return m_canLook; }
  QString notYetWord() const { return m_answers.notYet; }
  QString foundWord() const { return m_answers.found; }
  QString pastItWord() const { return m_answers.pastIt; }
  QStringList others() const { return m_others; }
  bool shortly() const { return m_shortly; }
  bool later() const { return m_later; }

  Q_INVOKABLE void hear();
  Q_INVOKABLE void notYet();
  // The touch test found what it should; the bench goes to that job.
  Q_INVOKABLE void ready();
  Q_INVOKABLE void pastIt();
  Q_INVOKABLE void tellShortly() { putOff(core::alerts::kSnoozeMinutes[0]); }
  Q_INVOKABLE void tellLater() { putOff(core::alerts::kSnoozeMinutes[1]); }

 signals:
  void changed();
  void goTo(const std::string& jobId);
  void answered();  // by a touch test; the alert's job is on the bench now

 private:
  void show(const core::jobs::JobAt& job);
  void answer(core::intents::Verdict verdict);
  void showBar(const core::waits::Told& told);
  void putOff(int minutes);
  QString nameOf(const core::alerts::ScheduledAlert& alert) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  core::alerts::ScheduledAlert m_alert;
  bool m_up = false;
  bool m_released = false;
  QString m_identity;
  QString m_piece;
  QString m_shortPiece;
  QStringList m_whats;
  WetPiece m_wet;
  QString m_state;
  std::string m_drawnJob;
  DrawnOnce m_drawn;
  QString m_act;
  QString m_test;
  QString m_now;
  QString m_times;
  QString m_mayClose;
  QString m_gone;
  QList<QPointF> m_bar;
  double m_barMinutes = 0;
  double m_closeMinutes = 0;
  bool m_canLook = false;
  TestAnswers m_answers;
  bool m_shortly = false;
  bool m_later = false;
  QStringList m_others;
};

}  // namespace app::viewmodels
