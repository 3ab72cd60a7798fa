#pragma once
// A touch test of the job on the bench: what is tested, how, and the answers it may have.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>

#include "core/intents/intent.h"
#include "core/record/job_state.h"

namespace app::viewmodels {

class LookViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(bool present READ present NOTIFY changed FINAL)
  Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
  Q_PROPERTY(QString test READ test NOTIFY changed FINAL)
  Q_PROPERTY(QString affirm READ affirm NOTIFY changed FINAL)  // "Tacky" or "Dry"
  Q_PROPERTY(bool hasPastIt READ hasPastIt NOTIFY changed FINAL)

 public:
  using Ask = std::function<void(const core::intents::Intent&)>;
  explicit LookViewModel(Ask ask, QObject* parent = nullptr) : QObject(parent), m_ask(std::move(ask)) {}

  // The wait that most wants a touch test: an open window first, then what should be ready, then the next.
  void show(const core::record::JobAt* job);

  bool present() const { return !m_wait.empty(); }
  QString title() const { return m_title; }
  QString test() const { return m_test; }
  QString affirm() const { return m_window ? tr("Tacky") : tr("Dry"); }
  bool hasPastIt() const { return m_window; }

  Q_INVOKABLE void notYet();
  Q_INVOKABLE void ready();
  Q_INVOKABLE void pastIt();

 signals:
  void changed();

 private:
  void answer(core::intents::Verdict verdict);

  Ask m_ask;
  std::string m_wait;
  QString m_title;
  QString m_test;
  bool m_window = false;
};

}  // namespace app::viewmodels
