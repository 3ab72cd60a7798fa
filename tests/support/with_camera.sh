#!/bin/sh
# Runs a command beside a camera that is none: colour bars, handed round by a real server as a camera is. Inside
# with_sound.sh, whose server it uses:
#   with_sound.sh [--tries N] with_camera.sh COMMAND [ARGUMENT...]
# Exits with the command's status; 3 where no camera comes.
set -u

gst-launch-1.0 -q videotestsrc is-live=true pattern=smpte ! \
  video/x-raw,format=YUY2,width=640,height=480,framerate=15/1 ! \
  pipewiresink mode=provide \
  stream-properties="props,media.class=Video/Source,node.name=bench-camera,node.description=bench-camera" \
  >"$XDG_RUNTIME_DIR/camera.log" 2>&1 &
bars=$!
trap 'kill "$bars" 2>/dev/null; wait' EXIT

tries=0
until pw-cli ls Node 2>/dev/null | grep -q '"bench-camera"'; do
  tries=$((tries + 1))
  if [ "$tries" -ge 100 ]; then
    echo "no camera came up:" >&2
    cat "$XDG_RUNTIME_DIR/camera.log" >&2
    exit 3
  fi
  sleep 0.1
done

status=0
"$@" || status=$?
exit "$status"
