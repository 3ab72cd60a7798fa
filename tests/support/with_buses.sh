#!/bin/sh
# Runs a command beside a message bus of its own, which is its session's and the system's at once.
#   with_buses.sh COMMAND [ARGUMENT...]
# Exits with the command's status.
exec env -u DISPLAY dbus-run-session -- sh -c 'DBUS_SYSTEM_BUS_ADDRESS=$DBUS_SESSION_BUS_ADDRESS exec "$@"' sh "$@"
