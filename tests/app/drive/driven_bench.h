#pragma once
// The other side of the test bench's socket, and hands that reach it only through the X server.
#include <QLocalSocket>
#include <QProcess>
#include <QTemporaryDir>

#include <string>
#include <vector>

#include "core/base/json.h"

namespace tests {

inline const char* const kJob = PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json";

class DrivenBench {
 public:
  // Starts the bench on one job, or on none (""); fails the test where it does not come up.
  explicit DrivenBench(const QString& job, int width = 1280, int height = 800);
  // The same on several jobs.
  explicit DrivenBench(const QStringList& jobs, int width = 1280, int height = 800);
  ~DrivenBench();

  core::base::Value state();
  core::base::Value exported();
  // The document of the design at the desk; where on the screen its drawing is.
  core::base::Value design();
  core::base::Value drawing();
  void advance(double minutes);
  // Off for so long, then on again with a wall clock nobody can trust.
  void switchOff(double minutes);
  // Payloads of the record's events of that type.
  std::vector<core::base::Value> payloads(const char* type);
  // A click on a key that must be there, and the moment in which the same key is deaf.
  void press(const std::string& legend);
  // A real click on the key of that legend, if it is there; a real key of the keyboard.
  bool click(const std::string& legend);
  // Letters on the keyboard, into whatever takes them.
  void type(const char* text);
  // A finger put down, moved and lifted.
  void drag(double fromX, double fromY, double toX, double toY);
  void key(const char* name, int holdMilliseconds = 120);
  // Waits until the screen takes touches again after it changed.
  void letGuardPass();

 private:
  std::string ask(const std::string& line);
  core::base::Value answer(const char* question);
  void hand(const QStringList& arguments);

  QTemporaryDir m_folder;
  QProcess m_process;
  QLocalSocket m_socket;
};

std::string textOf(const core::base::Value& value, const char* key);

}  // namespace tests
