#!/bin/sh
# Runs a command beside an X server of its own, 1920x1200 unless SCREEN says otherwise.
#   with_display.sh COMMAND [ARGUMENT...]
# Exits with the command's status; 3 where no server starts.
set -u
folder=$(mktemp -d) || exit 3
server=""
finish() {
  [ -n "$server" ] && kill "$server" 2>/dev/null
  wait 2>/dev/null
  rm -rf "$folder"
}
trap finish EXIT

# The server picks a free display itself and writes its number when it is ready to be used.
mkfifo "$folder/number"
Xvfb -displayfd 3 -screen 0 "${SCREEN:-1920x1200}x24" -nolisten tcp 3>"$folder/number" 2>"$folder/log" &
server=$!
number=$(head -n 1 "$folder/number")
if [ -z "$number" ]; then
  echo "no X server came up:" >&2
  cat "$folder/log" >&2
  exit 3
fi
unset WAYLAND_DISPLAY
DISPLAY=":$number" "$@"
