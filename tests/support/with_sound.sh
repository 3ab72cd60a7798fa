#!/bin/sh
# Runs a command beside a real sound server of its own, whose only output is a null sink named "bench".
#   with_sound.sh [--empty | --patient | --tries N] COMMAND [ARGUMENT...]
# With --empty no server is started, only its place prepared: the command starts and ends servers itself.
# With --patient the server works in longer portions: sound comes later and has fewer holes on a busy machine.
# With --tries the command is run again where it fails, N times in all: a server short of time drops samples, and a
# recording with holes proves nothing either way. What fails every time has failed.
# The command finds the server through XDG_RUNTIME_DIR. Exits with the command's status; 3 where no server starts.
set -u

if [ "${1:-}" != "--inside" ]; then
  folder=$(mktemp -d) || exit 3
  status=0
  env -u PULSE_SERVER -u PULSE_RUNTIME_PATH -u DISPLAY XDG_RUNTIME_DIR="$folder" XDG_STATE_HOME="$folder/state" \
    XDG_CONFIG_HOME="$folder/config" dbus-run-session -- "$0" --inside "$@" || status=$?
  rm -rf "$folder"
  exit "$status"
fi
shift

# No Bluetooth: its monitor wants a login manager and takes the session manager down where there is none. The first
# form is read by its releases before 0.5, the second from then on.
mkdir -p "$XDG_CONFIG_HOME/wireplumber/bluetooth.lua.d" "$XDG_CONFIG_HOME/wireplumber/wireplumber.conf.d"
echo 'bluez_monitor.enabled = false' >"$XDG_CONFIG_HOME/wireplumber/bluetooth.lua.d/80-none.lua"
echo 'wireplumber.profiles = { main = { monitor.bluez = disabled, support.logind = disabled } }' \
  >"$XDG_CONFIG_HOME/wireplumber/wireplumber.conf.d/80-none.conf"

# Server and asking client make it alike, and the server gives up where the client was first. A command that starts
# servers itself wants it no less.
mkdir -m 700 "$XDG_RUNTIME_DIR/pulse"

if [ "$1" = "--empty" ]; then
  shift
  exec "$@"
fi

if [ "$1" = "--patient" ]; then
  shift
  mkdir -p "$XDG_CONFIG_HOME/pipewire/pipewire.conf.d"
  echo 'context.properties = { default.clock.quantum = 2048, default.clock.min-quantum = 2048 }' \
    >"$XDG_CONFIG_HOME/pipewire/pipewire.conf.d/80-patient.conf"
fi

tries_left=1
if [ "$1" = "--tries" ]; then
  tries_left=$2
  shift 2
fi

pids=""
finish() {
  for pid in $pids; do
    kill "$pid" 2>/dev/null
  done
  wait
}
trap finish EXIT

log="$XDG_RUNTIME_DIR/server.log"
for server in pipewire wireplumber pipewire-pulse; do
  "$server" >>"$log" 2>&1 &
  pids="$! $pids"
  # The others give up where the first does not answer yet.
  waited=0
  until [ -S "$XDG_RUNTIME_DIR/pipewire-0" ] || [ "$waited" -ge 100 ]; do
    waited=$((waited + 1))
    sleep 0.05
  done
done

tries=0
until pactl load-module module-null-sink sink_name=bench rate=48000 channels=2 >>"$log" 2>&1; do
  tries=$((tries + 1))
  if [ "$tries" -ge 100 ]; then
    echo "no sound server came up:" >&2
    cat "$log" >&2
    exit 3
  fi
  sleep 0.1
done
tries=0
until [ "$(pactl get-default-sink 2>>"$log")" = "bench" ]; do
  pactl set-default-sink bench >>"$log" 2>&1
  tries=$((tries + 1))
  # A sink that came while the session manager was still starting may never be taken up.
  if [ $((tries % 10)) -eq 0 ]; then
    pactl unload-module module-null-sink >>"$log" 2>&1
    pactl load-module module-null-sink sink_name=bench rate=48000 channels=2 >>"$log" 2>&1
  fi
  if [ "$tries" -ge 50 ]; then
    echo "the null sink did not become the default output:" >&2
    cat "$log" >&2
    exit 3
  fi
  sleep 0.1
done

status=1
while [ "$tries_left" -gt 0 ]; do
  status=0
  "$@" || status=$?
  [ "$status" -eq 0 ] && break
  tries_left=$((tries_left - 1))
  [ "$tries_left" -gt 0 ] && echo "failed with $status; recorded once more" >&2
done
exit "$status"
