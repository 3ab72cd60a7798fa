#pragma once
// Reports that the wall clock was set. There is one file for each system that announces it, and one for those that do
// not.
#include <QObject>

class QSocketNotifier;

namespace app::clocks {

class JumpWatch : public QObject {
  Q_OBJECT

 public:
  explicit JumpWatch(QObject* parent = nullptr);
  ~JumpWatch() override;

 signals:
  void jumped();

 private:
  int m_file = -1;                        // where the system reports jumps by one
  QSocketNotifier* m_notifier = nullptr;  // a child, so that it moves to another thread with its parent
};

}  // namespace app::clocks
