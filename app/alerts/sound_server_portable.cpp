#include "app/alerts/sound_server.h"

namespace app::alerts {

bool soundServerAnswers() { return true; }

}  // namespace app::alerts
