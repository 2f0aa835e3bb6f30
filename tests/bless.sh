#!/bin/sh
# Takes what the program says now for golden: the dumps of the demo jobs, the table of keys in
# README.md and the sample sheets in out/.  Read the diff before it is committed.
set -eu

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

BLESS=1 tests/golden_test.sh

{
	sed '/^<!-- keys/q' README.md
	"$PITCHBOARD" keys --markdown
	sed -n '/^<!-- end of keys/,$p' README.md
} >"$work/README.md"
cat "$work/README.md" >README.md

"$PITCHBOARD" draw -q -o "$work/out" jobs/*.yaml
for sheet in plan:alder-lane-S-101 elevation:alder-lane-S-201 stringer:alder-lane-S-401; do
	cp "$work/out/${sheet#*:}.svg" "out/sample-${sheet%:*}.svg"
done
pdftoppm -r 110 -png -f 3 -l 3 -singlefile "$work/out/alder-lane.pdf" out/sample-elevation
