#include "app/viewmodels/registration.h"

void qml_register_types_Mountwright_ViewModels();

namespace app::viewmodels {

void registerTypes() {
  static const bool kOnce = [] {
    qml_register_types_Mountwright_ViewModels();
    return true;
  }();
  static_cast<void>(kOnce);
}

}  // namespace app::viewmodels
