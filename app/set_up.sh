# shellcheck shell=sh
# Sourced by app/run, tests/run and tests/long/run: installs what is missing of the named sections of
# app/packages.txt. Asks apt for nothing where nothing is missing.

packages_of() {
  awk -v wanted=" $* " '
    /^\[/ { section = substr($0, 2, length($0) - 2); next }
    /^#/ || /^$/ { next }
    index(wanted, " " section " ") { print }
  ' "$root/app/packages.txt"
}

is_installed() {
  [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

set_up() {
  missing=""
  for package in $(packages_of "$@"); do
    is_installed "$package" || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  if ! command -v apt-get >/dev/null 2>&1; then
    echo "This needs packages that are not here, and there is no apt-get to install them:$missing" >&2
    exit 3
  fi
  as_root=""
  if [ "$(id -u)" != 0 ]; then
    if ! command -v sudo >/dev/null 2>&1; then
      echo "This needs packages that are not here. Install them as root, then run this again:$missing" >&2
      exit 3
    fi
    # With a password on file it is quiet; at a terminal it may ask; elsewhere it must not hang.
    if sudo -n true 2>/dev/null || [ -t 0 ]; then
      as_root=sudo
    else
      echo "sudo wants a password and there is nobody to ask. Install these as root, then run this again:$missing" >&2
      exit 3
    fi
  fi
  echo "Installing:$missing"
  $as_root apt-get update -q </dev/null || { echo "apt-get update failed." >&2; exit 3; }
  # shellcheck disable=SC2086
  $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing </dev/null ||
    { echo "apt-get could not install:$missing" >&2; exit 3; }
}
