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
	grep -q '^  rail, height: was 900 mm, now 920 mm$' "$TMPDIR/told" &&
		grep -q '^  treads, nosing: was 25 mm, now 28 mm$' "$TMPDIR/told"
}

the_cover_says_it() {
	pdftotext -l 2 "$TMPDIR/out/kiln-yard.pdf" - | grep -q 'rail, height: was 900 mm, now 920 mm'
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

# The rows of the cut list whose last column, `changed`, is $3.  Treads are wider by 3 mm of nosing
# and balusters longer by 20 mm of rail height; risers are made as they were.
changed_parts() {
	"$PITCHBOARD" list --csv --since "$1" "$2" 2>/dev/null | tr -d '\r' | grep ",$3\$"
}

the_cut_list_says_yes_and_no() {
	changed_parts "$earlier" "$later" yes | grep -q ',tread body,' &&
		changed_parts "$earlier" "$later" yes | grep -q ',baluster,' &&
		changed_parts "$earlier" "$later" no | grep -q ',riser,' &&
		! changed_parts "$earlier" "$later" yes | grep -q ',riser,'
}

nothing_is_changed_in_the_same_job() {
	[ "$(changed_parts "$later" "$later" yes | wc -l)" = 0 ] &&
		[ "$(changed_parts "$later" "$later" no | wc -l)" -gt 5 ]
}

json_says_it_too() {
	"$PITCHBOARD" list --json --only cut --since "$earlier" "$later" 2>/dev/null |
		jq -e '[.. | objects | select(has("changed")) | .changed] |
			index("yes") and index("no")' >/dev/null
}

no_column_without_an_earlier_job() {
	! "$PITCHBOARD" list --csv "$later" 2>/dev/null | head -1 | grep -q changed
}

# Its revision is beside the mark of what has changed, and of nothing else.
the_sheet_bears_the_revision() {
	revision=$(sed -n 's/^  - mark: //p' "$later" | tail -1)
	pdftotext -layout "$TMPDIR/out/kiln-yard.pdf" - >"$TMPDIR/lettered"
	changed_parts "$earlier" "$later" yes | cut -d, -f1 >"$TMPDIR/marks"
	[ -s "$TMPDIR/marks" ] || return 1
	while read -r mark; do
		grep -q "\\<$mark rev $revision\\>" "$TMPDIR/lettered" || return 1
	done <"$TMPDIR/marks"
	! grep -q '\<R1 rev' "$TMPDIR/lettered"
}

check 'a later job is drawn' draw_since
check 'what was changed is told with both values' both_changes_are_told
check 'the cover lists the changes' the_cover_says_it
check 'the elevation is clouded' the_elevation_is_clouded
check 'nothing is clouded where nothing has changed' the_same_job_is_drawn_as_without
check 'the cut list says of every part whether it has changed' the_cut_list_says_yes_and_no
check 'nothing has changed in the same job' nothing_is_changed_in_the_same_job
check 'JSON says it too' json_says_it_too
check 'without an earlier job there is no such column' no_column_without_an_earlier_job
check 'on the sheet the revision stands beside its mark' the_sheet_bears_the_revision
check 'a list since a job that is not there is wrong' \
	exits 2 "$PITCHBOARD" list --since "$TMPDIR/none.yaml" "$later"
check 'an earlier job that is not there is wrong' \
	exits 2 "$PITCHBOARD" draw -o "$TMPDIR/none" --since "$TMPDIR/none.yaml" "$later"
check 'two jobs cannot be compared with one' \
	exits 2 "$PITCHBOARD" draw -o "$TMPDIR/none" --since "$earlier" "$earlier" jobs/alder-lane.yaml

plan
