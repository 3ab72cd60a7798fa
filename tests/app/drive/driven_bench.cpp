#include "tests/app/drive/driven_bench.h"

#include <QThread>

#include "tests/support/catch.h"

namespace tests {

using core::base::Value;

DrivenBench::DrivenBench(const QString& job, int width, int height) {
  const QString socket = m_folder.filePath(QStringLiteral("bench"));
  m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  m_process.start(QStringLiteral(TEST_BENCH), {m_folder.filePath(QStringLiteral("record.sqlite")), socket,
                                               QString::number(width), QString::number(height), job});
  REQUIRE(m_process.waitForStarted());
  REQUIRE(m_process.waitForReadyRead(30'000));
  m_socket.connectToServer(socket);
  REQUIRE(m_socket.waitForConnected(5'000));
  QThread::msleep(800);
}

DrivenBench::~DrivenBench() {
  m_socket.write("quit\n");
  m_socket.waitForBytesWritten(1'000);
  if (!m_process.waitForFinished(5'000)) m_process.kill();
  m_process.waitForFinished(5'000);
}

std::string DrivenBench::ask(const std::string& line) {
  m_socket.write((line + '\n').c_str());
  m_socket.flush();
  while (!m_socket.canReadLine()) {
    INFO(line);
    REQUIRE(m_socket.waitForReadyRead(30'000));
  }
  return m_socket.readLine().toStdString();
}

Value DrivenBench::state() {
  const auto parsed = core::base::parseJson(ask("state"));
  REQUIRE(parsed.readable);
  return parsed.root;
}

Value DrivenBench::exported() {
  const auto parsed = core::base::parseJson(ask("export"));
  REQUIRE(parsed.readable);
  return parsed.root;
}

void DrivenBench::advance(double minutes) { ask("advance " + std::to_string(minutes)); }

void DrivenBench::switchOff(double minutes) { ask("off " + std::to_string(minutes)); }

void DrivenBench::hand(const QStringList& arguments) {
  REQUIRE(QProcess::execute(QStringLiteral("xdotool"), arguments) == 0);
}

bool DrivenBench::click(const std::string& legend) {
  const Value now = state();
  for (const Value& key : now.find("keys")->items()) {
    if (textOf(key, "legend") != legend) continue;
    const auto at = [&](const char* axis) { return QString::number(static_cast<int>(key.find(axis)->asNumber())); };
    hand({QStringLiteral("mousemove"), at("x"), at("y")});
    hand({QStringLiteral("mousedown"), QStringLiteral("1")});
    QThread::msleep(90);
    hand({QStringLiteral("mouseup"), QStringLiteral("1")});
    QThread::msleep(60);
    return true;
  }
  return false;
}

std::vector<Value> DrivenBench::payloads(const char* type) {
  std::vector<Value> found;
  const Value record = exported();
  for (const Value& event : record.find("events")->items()) {
    if (textOf(event, "type") == type) found.push_back(*event.find("payload"));
  }
  return found;
}

void DrivenBench::press(const std::string& legend) {
  INFO(legend);
  INFO(core::base::writeJson(state(), 0));
  REQUIRE(click(legend));
  QThread::msleep(300);
}

void DrivenBench::key(const char* name, int holdMilliseconds) {
  hand({QStringLiteral("keydown"), QString::fromLatin1(name)});
  QThread::msleep(static_cast<unsigned long>(holdMilliseconds));
  hand({QStringLiteral("keyup"), QString::fromLatin1(name)});
  QThread::msleep(60);
}

void DrivenBench::letGuardPass() { QThread::msleep(760); }

std::string textOf(const Value& value, const char* key) {
  const Value* member = value.find(key);
  REQUIRE(member != nullptr);
  return member->asText();
}

}  // namespace tests
