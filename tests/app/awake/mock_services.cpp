#include "tests/app/awake/mock_services.h"

#include <QDBusArgument>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusVariant>
#include <QThread>
#include <algorithm>

#include "tests/support/catch.h"

namespace tests {
namespace {

const QString kLogin = QStringLiteral("org.freedesktop.login1");
const QString kLoginPath = QStringLiteral("/org/freedesktop/login1");
const QString kManager = QStringLiteral("org.freedesktop.login1.Manager");
const QString kMock = QStringLiteral("org.freedesktop.DBus.Mock");

bool isThere(const QString& name) {
  return QDBusConnection::sessionBus().interface()->isServiceRegistered(name).value();
}

bool becomes(const QString& name, bool there) {
  for (int i = 0; i < 300 && isThere(name) != there; ++i) QThread::msleep(20);
  return isThere(name) == there;
}

std::unique_ptr<MockService> serviceThat(const QString& name, const QString& path, const QString& interface,
                                         const QString& in, const QString& out, const QString& body) {
  auto service = std::make_unique<MockService>(name, path, interface, std::vector<std::string>{});
  service->give(QStringLiteral("Inhibit"), in, out, body);
  return service;
}

}  // namespace

const QString kRefuse =
    QStringLiteral("raise dbus.exceptions.DBusException('no', name='org.freedesktop.DBus.Error.AccessDenied')");
const QString kNeverAnswer = QStringLiteral("import time\ntime.sleep(1000)");

MockService::MockService(QString name, QString path, QString interface, std::vector<std::string> options)
    : m_name(std::move(name)), m_path(std::move(path)), m_interface(std::move(interface)) {
  REQUIRE(becomes(m_name, false));
  // The distribution's own interpreter: its packages are seen by no other.
  std::vector<std::string> command = {"/usr/bin/python3", "-m", "dbusmock"};
  command.insert(command.end(), options.begin(), options.end());
  if (options.empty()) {
    for (const QString& each : {m_name, m_path, m_interface}) command.push_back(each.toStdString());
  }
  m_process = std::make_unique<ChildProcess>(command, ChildProcess::Pipe::None);
  REQUIRE(becomes(m_name, true));
}

QVariantList MockService::call(const QString& interface, const QString& method, const QVariantList& arguments) const {
  QDBusMessage question = QDBusMessage::createMethodCall(m_name, m_path, interface, method);
  question.setArguments(arguments);
  const QDBusMessage answer = QDBusConnection::sessionBus().call(question);
  INFO(answer.errorMessage().toStdString());
  REQUIRE(answer.type() == QDBusMessage::ReplyMessage);
  return answer.arguments();
}

void MockService::give(const QString& method, const QString& in, const QString& out, const QString& body) const {
  call(kMock, QStringLiteral("AddMethod"), {m_interface, method, in, out, body});
}

void MockService::emitSignal(const QString& path, const QString& interface, const QString& signal, const QString& form,
                             const QVariantList& arguments) const {
  QDBusMessage question = QDBusMessage::createMethodCall(m_name, path, kMock, QStringLiteral("EmitSignal"));
  question.setArguments({interface, signal, form, QVariant(arguments)});
  const QDBusMessage answer = QDBusConnection::sessionBus().call(question);
  INFO(answer.errorMessage().toStdString());
  REQUIRE(answer.type() == QDBusMessage::ReplyMessage);
}

std::vector<std::string> MockService::calls() const {
  std::vector<std::string> all;
  const auto list = call(kMock, QStringLiteral("GetCalls")).value(0).value<QDBusArgument>();
  list.beginArray();
  while (!list.atEnd()) {
    quint64 when = 0;
    QString method;
    QVariantList arguments;
    list.beginStructure();
    list >> when >> method >> arguments;
    list.endStructure();
    QStringList texts;
    for (const QVariant& each : arguments) {
      texts << (each.canConvert<QDBusArgument>() ? QStringLiteral("...") : each.toString());
    }
    all.push_back((method + u'(' + texts.join(QStringLiteral(", ")) + u')').toStdString());
  }
  list.endArray();
  return all;
}

MockLogin::MockLogin() : MockService(kLogin, kLoginPath, kManager, {"--template", "logind"}) {}

std::vector<std::string> MockLogin::locks() const {
  std::vector<std::string> all;
  const auto list = call(kManager, QStringLiteral("ListInhibitors")).value(0).value<QDBusArgument>();
  list.beginArray();
  while (!list.atEnd()) {
    QString what;
    QString who;
    QString why;
    QString mode;
    uint user = 0;
    uint process = 0;
    list.beginStructure();
    list >> what >> who >> why >> mode >> user >> process;
    list.endStructure();
    all.push_back((what + u' ' + mode).toStdString());
  }
  list.endArray();
  std::sort(all.begin(), all.end());
  return all;
}

void MockLogin::prepareForSleep(bool about) const {
  emitSignal(kLoginPath, kManager, QStringLiteral("PrepareForSleep"), QStringLiteral("b"), {about});
}

std::unique_ptr<MockService> loginThat(const QString& body) {
  return serviceThat(kLogin, kLoginPath, kManager, QStringLiteral("ssss"), QStringLiteral("h"), body);
}

std::unique_ptr<MockService> screenSaverThat(const QString& body) {
  const QString name = QStringLiteral("org.freedesktop.ScreenSaver");
  auto service = serviceThat(name, QStringLiteral("/org/freedesktop/ScreenSaver"), name, QStringLiteral("ss"),
                             QStringLiteral("u"), body);
  service->give(QStringLiteral("UnInhibit"), QStringLiteral("u"), {}, {});
  return service;
}

std::unique_ptr<MockService> portalThat(const QString& body) {
  return serviceThat(
      QStringLiteral("org.freedesktop.portal.Desktop"), QStringLiteral("/org/freedesktop/portal/desktop"),
      QStringLiteral("org.freedesktop.portal.Inhibit"), QStringLiteral("sua{sv}"), QStringLiteral("o"), body);
}

}  // namespace tests
