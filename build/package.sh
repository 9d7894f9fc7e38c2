#!/usr/bin/env bash
# Makes what people install, in artifacts/: the .NET tool, the program with and without the runtime and as machine code alone, a Debian
# package, and the list of what is in it (CycloneDX). Packs no program whose pages of the sample logs are not those of the others. The
# version is that of the git tag: v1.2.3 gives 1.2.3, eleven commits later 1.2.3-11-gabcdef0.
# Usage: build/package.sh [RID]          (usual: linux-x64)
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
rid=${1:-linux-x64} out=$PWD/artifacts project=src/ClimateLens.Cli
version=$(git describe --tags --match 'v[0-9]*' 2>/dev/null | sed 's/^v//' || true)
version=${version:-0.1.0-0-g$(git rev-parse --short HEAD)}
number=${version%%-*}
common=(-c Release -v quiet --nologo "-p:Version=$version" "-p:AssemblyVersion=$number.0" "-p:FileVersion=$number.0" -p:ContinuousIntegrationBuild=true)
rm -rf "$out"
mkdir -p "$out"

dotnet pack "$project" "${common[@]}" -p:PackAsTool=true -p:PublishReadyToRun=false -o "$out"
dotnet publish "$project" "${common[@]}" --use-current-runtime --no-self-contained -o "$out/program"
read -ra told < <("$out/program/climatelens" build-properties) # the others keep the same account of what made a page
common+=("${told[@]}")
bare=(-r "$rid" --self-contained -p:DebugType=none -p:PublishDocumentationFile=false -p:PublishReferencesDocumentationFiles=false)
dotnet publish "$project" "${common[@]}" "${bare[@]}" -p:PublishSingleFile=true -p:PublishReadyToRunComposite=true -o "$out/alone"
programs=("$out/program/climatelens" "$out/alone/climatelens")
# Machine code alone compiles nothing as it runs; it can be made where a C compiler is there to link it.
if command -v gcc >/dev/null && [ "$rid" = linux-x64 ]; then
  dotnet publish "$project" "${common[@]}" "${bare[@]}" -p:Native=true -o "$out/native"
  rm -f "$out/native"/*.dbg
  programs+=("$out/native/climatelens")
else
  echo "No gcc, or not for linux-x64: no program of machine code alone." >&2
fi
bash build/same-pages.sh "${programs[@]}"

if dotnet tool install CycloneDX --version 6.3.1 --tool-path "$out/tools" >/dev/null 2>&1; then
  "$out/tools/dotnet-CycloneDX" "$project/ClimateLens.Cli.csproj" --output "$out" --filename climatelens.cdx.json --output-format Json --exclude-dev --set-name climatelens --set-version "$version" >/dev/null
  rm -rf "$out/tools"
else
  echo "CycloneDX could not be installed: no list of what is in it." >&2
  exit 1
fi

# What lies beside the program wherever it is installed: manual, completions, documents, licences, schedules, cluster files.
share() {
  local to=$1
  mkdir -p "$to/man/man1" "$to/bash-completion/completions" "$to/zsh/site-functions" "$to/fish/vendor_completions.d" "$to/powershell" "$to/doc/climatelens"
  "$out/alone/climatelens" help-files man >"$to/man/man1/climatelens.1"
  "$out/alone/climatelens" help-files bash >"$to/bash-completion/completions/climatelens"
  "$out/alone/climatelens" help-files zsh >"$to/zsh/site-functions/_climatelens"
  "$out/alone/climatelens" help-files fish >"$to/fish/vendor_completions.d/climatelens.fish"
  "$out/alone/climatelens" help-files powershell >"$to/powershell/climatelens.ps1"
  cp LICENSE docs/*.md "$out/climatelens.cdx.json" "$to/doc/climatelens/"
  cp -r docs/schedules docs/cluster "$to/doc/climatelens/"
}

archive() {
  tar -C "$out" --sort=name --owner=0 --group=0 --numeric-owner --mtime="@$(git log -1 --format=%ct)" -czf "$out/$1.tar.gz" "${@:2}"
}

for kind in alone native; do
  name=climatelens-$version-$rid
  [ "$kind" = alone ] || name=$name-native
  if [ -d "$out/$kind" ]; then
    mkdir -p "$out/$name/bin"
    cp -r "$out/$kind/." "$out/$name/bin/"
    share "$out/$name/share"
    archive "$name" "$name"
    rm -rf "${out:?}/$name"
  fi
done
archive "climatelens-$version-dotnet" --transform "s,^program,climatelens-$version-dotnet," program

if command -v dpkg-deb >/dev/null && [ "$rid" = linux-x64 ]; then
  deb=$out/deb
  mkdir -p "$deb/DEBIAN" "$deb/usr/bin" "$deb/usr/lib/climatelens"
  cp -r "$out/alone/." "$deb/usr/lib/climatelens/"
  ln -s ../lib/climatelens/climatelens "$deb/usr/bin/climatelens"
  share "$deb/usr/share"
  gzip -9n "$deb/usr/share/man/man1/climatelens.1"
  cp LICENSE "$deb/usr/share/doc/climatelens/copyright"
  cat >"$deb/DEBIAN/control" <<CONTROL
Package: climatelens
Version: ${version//-/+}
Architecture: amd64
Maintainer: The ClimateLens developers <climatelens@example.org>
Section: science
Priority: optional
Depends: libc6, libgcc-s1, libstdc++6
Description: weekly reports on humidity and disease weather in greenhouses
 Reads the exports of a greenhouse climate computer with watering and crop
 records, and writes a page for each house and week: risk hours, how sure they
 are, which of them the watering caused, and what to change.
CONTROL
  SOURCE_DATE_EPOCH=$(git log -1 --format=%ct) dpkg-deb -Zxz -z2 --root-owner-group --build "$deb" "$out/climatelens_${version//-/+}_amd64.deb" >/dev/null
  rm -rf "$deb"
fi

rm -rf "$out/program" "$out/alone" "$out/native"
ls -l "$out"
