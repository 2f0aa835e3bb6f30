#!/bin/sh
# A job compared with its earlier self: what is told, what is clouded on the sheets.
. tests/tap.sh

earlier=jobs/kiln-yard.yaml
later=$TMPDIR/kiln-yard.yaml
sed 's/ height: 900$/ height: 920/; s/ nosing: 25$/ nosing: 28/' "$earlier" >"$later"

draw_since() {
	"$PITCHBOARD" draw -o "$TMPDIR/out" --since "$earlier" "$later" >/dev/null 2>"$TMPDIR/told"
}

both_changes_are_told() {
	grep -q '^  rail.height: was 900 mm, now 920 mm$' "$TMPDIR/told" &&
		grep -q '^  treads.nosing: was 25 mm, now 28 mm$' "$TMPDIR/told"
}

the_cover_says_it() {
	pdftotext -l 2 "$TMPDIR/out/kiln-yard.pdf" - | grep -q 'rail.height: was 900 mm, now 920 mm'
}

# Arcs are curves in the PDF: an elevation has few of its own.
curves() {
	mutool trace "$1" "$2" | grep -c '<curveto'
}

elevation_page() {
	for page in 1 2 3 4 5; do
		pdftotext -f $page -l $page "$1" - | grep -q 'opening 3650$' || continue
		pdftotext -f $page -l $page "$1" - | grep -q '^headroom ' && echo $page && return
	done
}

the_elevation_is_clouded() {
	"$PITCHBOARD" draw -q -o "$TMPDIR/plain" "$later" 2>/dev/null
	page=$(elevation_page "$TMPDIR/out/kiln-yard.pdf")
	with=$(curves "$TMPDIR/out/kiln-yard.pdf" "$page")
	page=$(elevation_page "$TMPDIR/plain/kiln-yard.pdf")
	without=$(curves "$TMPDIR/plain/kiln-yard.pdf" "$page")
	[ "$with" -gt $((without + 20)) ]
}

the_same_job_is_drawn_as_without() {
	"$PITCHBOARD" draw -q -o "$TMPDIR/a" "$later" 2>/dev/null
	"$PITCHBOARD" draw -q -o "$TMPDIR/b" --since "$later" "$later" 2>/dev/null
	cmp -s "$TMPDIR/a/kiln-yard.pdf" "$TMPDIR/b/kiln-yard.pdf"
}

check 'a later job is drawn' draw_since
check 'what was changed is told with both values' both_changes_are_told
check 'the cover lists the changes' the_cover_says_it
check 'the elevation is clouded' the_elevation_is_clouded
check 'nothing is clouded where nothing has changed' the_same_job_is_drawn_as_without
check 'an earlier job that is not there is wrong' \
	exits 2 "$PITCHBOARD" draw -o "$TMPDIR/none" --since "$TMPDIR/none.yaml" "$later"
check 'two jobs cannot be compared with one' \
	exits 2 "$PITCHBOARD" draw -o "$TMPDIR/none" --since "$earlier" "$earlier" jobs/alder-lane.yaml

plan
