#pragma once
// A touch test of the job on the bench: the wait tested, the method, and the possible answers.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>
#include <optional>
#include <set>

#include "app/viewmodels/names.h"
#include "app/viewmodels/wet_piece.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace app::viewmodels {

class LookViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool present READ present NOTIFY changed FINAL)
  Q_PROPERTY(QString piece READ piece NOTIFY changed FINAL)  // the artwork's name
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(QString test READ test NOTIFY changed FINAL)
  Q_PROPERTY(QString told READ told NOTIFY changed FINAL)   // the wait in a sentence; "" while a result is doubted
  Q_PROPERTY(bool window READ window NOTIFY changed FINAL)  // it closes again
  // The piece in its materials, and where on it lies what is tested.
  Q_PROPERTY(app::viewmodels::PieceDrawing drawing READ drawing NOTIFY changed FINAL)
  Q_PROPERTY(QRectF wet READ wet NOTIFY changed FINAL)
  Q_PROPERTY(QString state READ state NOTIFY changed FINAL)
  // This is true while the maker is asked to confirm a result far from the expected one, which goes before any test.
  Q_PROPERTY(bool doubted READ doubted NOTIFY changed FINAL)
  // The answers are in the technique's words; one is "" where a touch test of the wait cannot have it.
  Q_PROPERTY(QString notYetWord READ notYetWord NOTIFY changed FINAL)
  Q_PROPERTY(QString foundWord READ foundWord NOTIFY changed FINAL)
  Q_PROPERTY(QString pastItWord READ pastItWord NOTIFY changed FINAL)

 public:
  using Ask = std::function<void(const core::intents::Intent&)>;
  explicit LookViewModel(Ask ask, QObject* parent = nullptr) : QObject(parent), m_ask(std::move(ask)) {}

  // Shows a test that was asked for, where that wait still has one; else the one that is due first, which the bench
  // names while no step can be started.
  void show(const core::jobs::JobAt* job, const std::string& zone, const std::string& wait = {});

  bool present() const { return !m_wait.empty(); }
  QString title() const { return m_title; }
  QString piece() const { return m_piece; }
  QString test() const { return m_test; }
  QString told() const { return m_told; }
  bool window() const { return m_window; }
  PieceDrawing drawing() const { return m_wet.drawing; }
  QRectF wet() const { return m_wet.wet; }
  QString state() const { return m_state; }
  bool doubted() const { return m_doubt.has_value(); }
  QString notYetWord() const { return m_answers.notYet; }
  QString foundWord() const { return m_answers.found; }
  QString pastItWord() const { return m_answers.pastIt; }

  Q_INVOKABLE void notYet();
  Q_INVOKABLE void ready();
  Q_INVOKABLE void pastIt();
  // The maker confirms the doubted result.
  Q_INVOKABLE void confirm();
  // The result was a slip: the touch test is taken back, and the wait runs on.
  Q_INVOKABLE void deny();
  // The maker leaves the screen: the doubt stays open, and is not asked about again before the program restarts.
  Q_INVOKABLE void leave();

 signals:
  void changed();

 private:
  bool showDoubt(const core::jobs::JobAt& job, const std::string& zone);
  void draw(const core::jobs::JobAt& job, const core::jobs::RunningWait& run);
  void answer(core::intents::Verdict verdict);

  Ask m_ask;
  std::string m_wait;
  QString m_title;
  QString m_piece;
  QString m_test;
  QString m_told;
  bool m_window = false;
  WetPiece m_wet;
  DrawnOnce m_drawn;
  QString m_state;
  TestAnswers m_answers;
  std::optional<core::intents::LookAt> m_doubt;
  std::string m_looked;  // id of the act that recorded that touch test
  // The doubted wait, by the act that started it, with its number of touch tests; and those that were left open.
  std::pair<std::string, std::size_t> m_lookedAt;
  std::set<std::pair<std::string, std::size_t>> m_left;
};

}  // namespace app::viewmodels
