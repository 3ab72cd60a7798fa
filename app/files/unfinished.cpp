#include "app/files/unfinished.h"

namespace app::files {

Unfinished::~Unfinished() {
  if (!m_path.isEmpty()) m_disk.remove(m_path);
}

Fault Unfinished::becomes(const QString& path) {
  const Fault fault = m_disk.rename(m_path, path);
  if (fault == Fault::None) m_path.clear();
  return fault;
}

}  // namespace app::files
