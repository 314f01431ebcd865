#!/usr/bin/env bash
# Passes all tests. Installs what they need when it is absent: Chromium, Firefox and the FAT tools from Debian's packages.
set -uo pipefail
cd "$(dirname "$0")/.." || exit 2
export DOTNET_CLI_UI_LANGUAGE=en DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

need() { # need COMMAND PACKAGE: makes sure that a command is there
  command -v "$1" >/dev/null && return
  echo "Installing $2 ..."
  local as=""
  [ "$(id -u)" = 0 ] || as=sudo
  [ -n "${updated:-}" ] || { $as apt-get update -qq && updated=yes; }
  $as env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$2" >/dev/null
  command -v "$1" >/dev/null || { echo "$2 could not be installed; install it by hand and run this again."; exit 2; }
}
need chromium chromium
need firefox-esr firefox-esr
PATH=$PATH:/usr/sbin
# Without these one test skips itself, and says so.
(need mcopy mtools)
(need mkfs.fat dosfstools)

results=$(mktemp -d)
trap 'rm -rf "$results"' EXIT
# Without the packages of other systems the tests of the tools for a stick skip themselves, and say so.
if timeout 300 bash generator/publish.sh "$results/tools" >/dev/null; then export CROSSREF_TOOLS=$results/tools; fi
dotnet build Crossref.sln -v quiet || { echo "0 passed, 1 failed"; exit 1; }
# One project after the other: browsers beside other tests would wait too long on a small machine.
dotnet test Crossref.sln --no-build -m:1 --logger "trx" --results-directory "$results"
status=$?

# Each project leaves one result file with its counters.
count() { grep -ho "<Counters [^>]*>" "$results"/*.trx 2>/dev/null | grep -o " $1=\"[0-9]*\"" | tr -dc '0-9\n' | awk '{ sum += $1 } END { print sum + 0 }'; }
passed=$(count passed)
failed=$(count failed)
if [ "$status" -ne 0 ] && [ "${failed:-0}" = 0 ]; then failed=1; fi
if [ "${failed:-0}" = 0 ]; then
  echo "All tests pass. To see the demo library: dotnet run --project generator/Crossref.Cli -- build"
else
  echo "Some tests fail; their names and messages are above."
fi
echo "${passed:-0} passed, ${failed:-0} failed"
exit "$status"
