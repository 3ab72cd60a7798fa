#include "tests/app/drive/driven_bench.h"

#include <QThread>

#include "tests/support/catch.h"

namespace tests {

using core::base::Value;

DrivenBench::DrivenBench(const QString& job, int width, int height)
    : DrivenBench(job.isEmpty() ? QStringList() : QStringList{job}, width, height) {}

DrivenBench::DrivenBench(const QStringList& jobs, int width, int height) {
  const QString socket = m_folder.filePath(QStringLiteral("bench"));
  m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  QStringList arguments = {m_folder.filePath(QStringLiteral("record.sqlite")), socket, QString::number(width),
                           QString::number(height)};
  arguments << jobs;
  m_process.start(QStringLiteral(TEST_BENCH), arguments);
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

Value DrivenBench::answer(const char* question) {
  auto parsed = core::base::parseJson(ask(question));
  REQUIRE(parsed.readable);
  return std::move(parsed.root);
}

Value DrivenBench::state() { return answer("state"); }

Value DrivenBench::exported() { return answer("export"); }

Value DrivenBench::design() { return answer("design"); }

Value DrivenBench::drawing() { return answer("piece"); }

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

void DrivenBench::type(const char* text) {
  hand({QStringLiteral("type"), QStringLiteral("--delay"), QStringLiteral("15"), QString::fromUtf8(text)});
  QThread::msleep(100);
}

void DrivenBench::drag(double fromX, double fromY, double toX, double toY) {
  constexpr int kParts = 8;
  const auto to = [&](double x, double y) {
    hand({QStringLiteral("mousemove"), QString::number(qRound(x)), QString::number(qRound(y))});
    QThread::msleep(20);
  };
  to(fromX, fromY);
  hand({QStringLiteral("mousedown"), QStringLiteral("1")});
  for (int i = 1; i <= kParts; ++i) to(fromX + (toX - fromX) * i / kParts, fromY + (toY - fromY) * i / kParts);
  hand({QStringLiteral("mouseup"), QStringLiteral("1")});
  QThread::msleep(60);
}

void DrivenBench::letGuardPass() { QThread::msleep(760); }

std::string textOf(const Value& value, const char* key) {
  const Value* member = value.find(key);
  REQUIRE(member != nullptr);
  return member->asText();
}

}  // namespace tests
