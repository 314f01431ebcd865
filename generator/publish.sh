#!/usr/bin/env bash
# Publishes the tool as one self-contained compressed file for each system; crossref pack --tools takes them from there.
# bash generator/publish.sh [DIR [SYSTEM ...]]   DIR defaults to publish, the systems to all four.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_UI_LANGUAGE=en DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
target=${1:-publish}
[ $# -gt 1 ] && systems=("${@:2}") || systems=(win-x64 linux-x64 osx-arm64 osx-x64)
for system in "${systems[@]}"; do
  # Each system is built apart, so that this leaves the ordinary build output alone. Untrimmed: templates are found by reflection.
  dotnet publish generator/Crossref.Cli -c Release -r "$system" --self-contained -v quiet -o "$target/$system" \
    -p:PublishSingleFile=true -p:EnableCompressionInSingleFile=true -p:DebugType=none -p:PublishDocumentationFiles=false -p:PublishReferencesDocumentationFiles=false
done
du -chs --apparent-size "$target"/*/crossref*
