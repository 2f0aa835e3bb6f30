#!/bin/sh
# Installs the Debian packages named, those that are missing.  On another system it says what is
# missing and leaves the installing to you.
set -eu

elsewhere() {
	echo "make deps installs Debian packages, and there is no apt-get here.  Needed are:"
	echo "  a C17 compiler and make; pkg-config with cairo, freetype2, zlib and yaml-0.1"
	echo "  for the tests also cmocka, qpdf, poppler, mupdf, librsvg, libxml2's xmllint and jq"
	echo "Missing now:"
	for tool in cc pkg-config qpdf pdftotext mutool rsvg-convert xmllint jq; do
		command -v $tool >/dev/null || echo "  $tool"
	done
	for module in cairo-pdf cairo-ft freetype2 zlib yaml-0.1 cmocka; do
		pkg-config --exists $module 2>/dev/null || echo "  $module (pkg-config)"
	done
	exit 3
}

command -v apt-get >/dev/null || elsewhere

missing=
for package; do
	dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q '^install ok installed$' ||
		missing="$missing $package"
done
[ -n "$missing" ] || exit 0

root=
[ "$(id -u)" = 0 ] || root=sudo
command -v ${root:-true} >/dev/null || {
	echo "to install$missing: be root, or have sudo" >&2
	exit 3
}
echo "installing$missing"
$root apt-get -q update
$root env DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends $missing
