#pragma once
// Services of the message bus that keep a machine awake, played by python3-dbusmock on the test's own bus.
#include <QDBusConnection>
#include <QString>
#include <QVariantList>
#include <memory>
#include <string>
#include <vector>

#include "tests/support/child_process.h"

namespace tests {

// One name on the bus; it is gone with its object.
class MockService {
 public:
  MockService(QString name, QString path, QString interface, std::vector<std::string> options);

  // A method whose body is Python: `args` are its arguments, `ret` what it returns.
  void give(const QString& method, const QString& in, const QString& out, const QString& body) const;
  QVariantList call(const QString& interface, const QString& method, const QVariantList& arguments = {}) const;
  void emitSignal(const QString& path, const QString& interface, const QString& signal, const QString& form,
                  const QVariantList& arguments) const;
  // The methods called since it began, with their arguments: "Inhibit(sleep, ...)".
  std::vector<std::string> calls() const;

 private:
  QString m_name;
  QString m_path;
  QString m_interface;
  std::unique_ptr<ChildProcess> m_process;
};

// A login manager that grants everything and knows what it has granted for as long as that is held.
class MockLogin : public MockService {
 public:
  MockLogin();
  // "what mode", of all locks held, in the order they were taken.
  std::vector<std::string> locks() const;
  void prepareForSleep(bool about) const;
};

// One that answers Inhibit with what `body` does.
std::unique_ptr<MockService> loginThat(const QString& body);
std::unique_ptr<MockService> screenSaverThat(const QString& body);
std::unique_ptr<MockService> portalThat(const QString& body);

// Python for Inhibit.
extern const QString kRefuse;
extern const QString kNeverAnswer;

}  // namespace tests
