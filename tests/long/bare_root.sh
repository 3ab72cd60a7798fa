#!/bin/sh
# Proves the two commands of the README on a machine with nothing on it: a bare root of the named release is made in a
# folder, a clean clone is put in, and both commands are run there, as root or as a user with sudo.
#   tests/long/bare_root.sh [FOLDER [bookworm|trixie [root|user]]]   (FOLDER: build/bare unless given)
# Needs root and debootstrap. Asks the packages of the mirror this machine itself uses. Leaves the folder behind.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
folder=${1:-$root/build/bare}
release=${2:-bookworm}
who=${3:-root}
if [ "$(id -u)" != 0 ]; then
  echo "A bare root can only be made by root." >&2
  exit 3
fi
. "$root/app/set_up.sh"
set_up long

mirror=$(sed -n 's/^URIs: *\(.*\)$/\1/p; s/^deb \(\[[^]]*\] *\)\{0,1\}\([^ ]*\) .*/\2/p' /etc/apt/sources.list /etc/apt/sources.list.d/*debian* \
  2>/dev/null | grep -v security | head -n 1)
mkdir -p "$folder"
[ -e "$folder/etc/debian_version" ] || debootstrap --variant=minbase "$release" "$folder" "$mirror"
# The root asks where this machine asks: same proxies, same names.
cp /etc/resolv.conf /etc/hosts "$folder/etc/"
for conf in /etc/apt/apt.conf.d/*proxy*; do
  [ -e "$conf" ] && cp "$conf" "$folder/etc/apt/apt.conf.d/"
done

inside() {
  chroot "$folder" /usr/bin/env -i HOME=/root PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin \
    LANG=C.UTF-8 http_proxy="${http_proxy:-}" https_proxy="${https_proxy:-}" "$@"
}
# Nothing of this machine is bound in; compilers and sound servers want to see their own processes.
leave() { umount "$folder/proc" 2>/dev/null || true; }
trap leave EXIT
mount -t proc proc "$folder/proc"

rm -rf "$folder/home/maker"
mkdir -p "$folder/home/maker"
git clone -q "$root" "$folder/home/maker/mountwright"
if [ "$who" = user ]; then
  inside apt-get update -q
  inside env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends sudo
  inside id maker >/dev/null 2>&1 || inside useradd -d /home/maker -s /bin/sh maker
  echo 'maker ALL=(ALL) NOPASSWD: ALL' >"$folder/etc/sudoers.d/maker"
  inside chown -R maker /home/maker
  run() { inside su maker -c "cd /home/maker/mountwright && $1 </dev/null"; }
else
  run() { inside sh -c "cd /home/maker/mountwright && $1 </dev/null"; }
fi
run app/run
run tests/run
