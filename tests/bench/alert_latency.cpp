// How long after its time an alert is heard, beside how long the server takes for any sound at all: 200 alerts and,
// between them, 200 clicks of another client in one recording. Run beside a real sound server.
#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <thread>

#include "app/alerts/alerts.h"
#include "tests/support/alerts.h"
#include "tests/support/sound_recording.h"

using app::alerts::Alerts;
using core::alerts::AlertSchedule;

namespace {

constexpr std::int64_t kMillisecond = 1'000'000;
constexpr int kCount = 200;
// The due times walk through the server's period of samples instead of beating with it.
constexpr std::int64_t kEvery = 400 * kMillisecond + 1'370'000;
constexpr std::int64_t kClickAfter = 300 * kMillisecond;  // the burst was hushed by then
constexpr std::int64_t kGoneAfter = 240 * kMillisecond;

std::shared_ptr<const AlertSchedule> one(int number, std::int64_t due) {
  return tests::scheduleOf({tests::dueAlert("wait-" + std::to_string(number), core::intents::AlertClass::Open, due)});
}

struct Figures {
  double p50 = 0;
  double p99 = 0;
  double worst = 0;
};

Figures figures(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const auto at = [&](double part) {
    const auto rank = static_cast<std::size_t>(std::ceil(part * static_cast<double>(values.size())));
    return values[std::max<std::size_t>(rank, 1) - 1];
  };
  return {at(0.50), at(0.99), values.back()};
}

void print(const char* what, const Figures& f, std::size_t count) {
  std::printf("%-34s p50 %6.1f ms  p99 %6.1f ms  worst %6.1f ms  (%zu)\n", what, f.p50, f.p99, f.worst, count);
}

}  // namespace

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  tests::SoundRecording recording;
  tests::ClickClient clicks;
  Alerts alerts(tests::boottimeNow);
  if (!recording.waitForSamples(5'000 * kMillisecond)) return 1;
  for (int i = 0; i < 100 && alerts.sound() != Alerts::Sound::Ready; ++i) {
    tests::sleepUntil(tests::boottimeNow() + 50 * kMillisecond);
  }
  if (alerts.sound() != Alerts::Sound::Ready) return 1;
  clicks.click();
  tests::sleepUntil(tests::boottimeNow() + 1'000 * kMillisecond);

  std::vector<std::int64_t> dues;
  std::vector<std::int64_t> clickTimes;
  const std::int64_t start = tests::boottimeNow() + 500 * kMillisecond;
  for (int i = 0; i < kCount; ++i) {
    const std::int64_t due = start + i * kEvery;
    tests::sleepUntil(due - 50 * kMillisecond);
    alerts.publish(one(i, due));
    dues.push_back(due);
    tests::sleepUntil(due + kGoneAfter);
    alerts.publish(std::make_shared<AlertSchedule>());
    tests::sleepUntil(due + kClickAfter);
    clickTimes.push_back(clicks.click());
  }
  tests::sleepUntil(tests::boottimeNow() + 1'000 * kMillisecond);

  std::vector<double> alertMs;
  std::vector<double> clickMs;
  for (int i = 0; i < kCount; ++i) {
    const auto index = static_cast<std::size_t>(i);
    const auto tone = recording.onset(dues[index], dues[index] + kGoneAfter);
    if (tone) alertMs.push_back(static_cast<double>(recording.instantOf(*tone) - dues[index]) / 1e6);
    const std::int64_t clicked = clickTimes[index];
    const auto click = recording.onset(clicked, clicked + 90 * kMillisecond);
    if (click) clickMs.push_back(static_cast<double>(recording.instantOf(*click) - clicked) / 1e6);
  }
  std::printf("%zu of %d alerts heard, %zu of %d clicks\n", alertMs.size(), kCount, clickMs.size(), kCount);
  if (alertMs.empty() || clickMs.empty()) return 1;
  const Figures sounded = figures(alertMs);
  const Figures floor = figures(clickMs);
  print("alert, due to first sample", sounded, alertMs.size());
  print("click of another client: the floor", floor, clickMs.size());
  std::printf("%-34s p50 %6.1f ms  p99 %6.1f ms\n", "alert above the floor's p50", sounded.p50 - floor.p50,
              sounded.p99 - floor.p50);
  constexpr double kMostAboveTheFloor = 100;
  return alertMs.size() == kCount && sounded.p99 - floor.p50 <= kMostAboveTheFloor ? 0 : 1;
}
