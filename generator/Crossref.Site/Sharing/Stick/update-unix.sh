#!/bin/sh
# Brings this stick and the library of this PC together. The tool is the one in the folder Crossref of this PC,
# called by its full path: nothing that lies on the stick is run.
stick=$(cd "$(dirname "$0")" && pwd) || exit 2
shop=${CROSSREF_HOME:-$HOME/Crossref}
tool=$shop/crossref
finish() { # finish CODE: waits, so that a window that opened by a click can be read
  [ -t 0 ] && { printf 'Press Enter to close. '; read -r _; }
  exit "$1"
}
stop() {
  printf '\nStopped. Read the lines above; when it is mended, start this again. Nothing is lost.\n'
  finish 1
}
if [ ! -x "$tool" ] || ! cd "$shop"; then
  printf 'There is no tool on this PC yet: %s is missing.\nSTART-HERE.html on the stick says how to set up a PC.\n' "$tool"
  finish 2
fi
if ! "$tool" verify "$stick"; then
  printf '\nStopped: the stick is not as it was packed; the files are named above. Nothing was changed.\n'
  printf 'If somebody changed them on purpose, open a terminal in %s and type:\n  ./crossref combine "%s" --dry-run\n' "$shop" "$stick"
  finish 1
fi
"$tool" combine "$stick" || stop
"$tool" build || stop
"$tool" pack "$stick" --replace || stop
printf '\nDone. This PC and the stick now hold the same. Eject the stick before you pull it.\n'
finish 0
