#pragma once
// A touch test of the job on the bench: what is tested, how, and the answers it may have.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>

#include "app/viewmodels/names.h"
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
  // The answers in the technique's words; "" where the wait cannot be found so.
  Q_PROPERTY(QString notYetWord READ notYetWord NOTIFY changed FINAL)
  Q_PROPERTY(QString foundWord READ foundWord NOTIFY changed FINAL)
  Q_PROPERTY(QString pastItWord READ pastItWord NOTIFY changed FINAL)

 public:
  using Ask = std::function<void(const core::intents::Intent&)>;
  explicit LookViewModel(Ask ask, QObject* parent = nullptr) : QObject(parent), m_ask(std::move(ask)) {}

  // The wait whose touch test comes first: the one the bench names while nothing can be started.
  void show(const core::record::JobAt* job);

  bool present() const { return !m_wait.empty(); }
  QString title() const { return m_title; }
  QString test() const { return m_test; }
  QString notYetWord() const { return m_answers.notYet; }
  QString foundWord() const { return m_answers.found; }
  QString pastItWord() const { return m_answers.pastIt; }

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
  TestAnswers m_answers;
};

}  // namespace app::viewmodels
