#include "app/awake/sleep_control.h"

namespace app::awake {

struct SleepControl::Private {};

Buses machineBuses() { return {}; }

SleepControl::SleepControl(const Buses&, QObject* parent) : QObject(parent) {}

SleepControl::~SleepControl() = default;

void SleepControl::hold(bool) {}

void SleepControl::tryAgain() {}

Keepers SleepControl::kept() const { return {}; }

bool SleepControl::asking() const { return false; }

}  // namespace app::awake
