#include <fontconfig/fontconfig.h>

#include <string>

#include "app/face/named_alike.h"

namespace app::face {

void leaveOutFamily(const char* family) {
  const std::string rule =
      "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig><selectfont><rejectfont><pattern>"
      "<patelt name=\"family\"><string>" +
      std::string(family) + "</string></patelt></pattern></rejectfont></selectfont></fontconfig>";
  FcConfig* config = FcInitLoadConfig();
  if (config == nullptr) return;
  const bool made =
      FcConfigParseAndLoadFromMemory(config, reinterpret_cast<const FcChar8*>(rule.c_str()), FcTrue) == FcTrue &&
      FcConfigBuildFonts(config) == FcTrue;
  if (made && FcConfigSetCurrent(config) == FcTrue) return;
  FcConfigDestroy(config);
}

}  // namespace app::face
