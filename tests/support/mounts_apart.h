#pragma once
// Mounts that nobody else sees, for tests of full and read-only disks. Linux; takes the right to mount (CAP_SYS_ADMIN).
#include <sched.h>
#include <sys/mount.h>

#include <cerrno>
#include <string>

namespace tests {

// Use it in a process of its own (a fork), which it moves into a name space of its own; the content of `folder` is
// visible again when the object is destroyed.
class MountsApart {
 public:
  explicit MountsApart(std::string folder) : m_folder(std::move(folder)) {
    if (::unshare(CLONE_NEWNS) != 0) return;
    if (::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0) {
      m_apart = true;
      return;
    }
    // In a changed root "/" is not a mount that could be made private: the folder is made a mount, which is then made
    // private.
    if (errno != EINVAL || ::mount(m_folder.c_str(), m_folder.c_str(), nullptr, MS_BIND, nullptr) != 0) return;
    m_bound = true;
    m_apart = ::mount(nullptr, m_folder.c_str(), nullptr, MS_PRIVATE, nullptr) == 0;
  }
  ~MountsApart() {
    if (m_disk) ::umount2(m_folder.c_str(), MNT_DETACH);
    if (m_bound) ::umount2(m_folder.c_str(), MNT_DETACH);
  }
  MountsApart(const MountsApart&) = delete;
  MountsApart& operator=(const MountsApart&) = delete;

  // Mounts a disk in memory at the folder, with options of tmpfs such as "size=2m". Returns whether that succeeded.
  bool disk(const char* options) {
    m_disk = m_apart && ::mount("tmpfs", m_folder.c_str(), "tmpfs", 0, options) == 0;
    return m_disk;
  }
  bool readOnly() {
    return m_disk && ::mount(nullptr, m_folder.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0;
  }

 private:
  std::string m_folder;
  bool m_apart = false, m_bound = false, m_disk = false;
};

}  // namespace tests
