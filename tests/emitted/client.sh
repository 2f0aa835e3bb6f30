#!/bin/sh
# The client's set of the demo jobs, read back by programs we did not write.
. tests/tap.sh

out=$TMPDIR/out

draw() {
	for job in jobs/*.yaml; do
		"$PITCHBOARD" draw -q --set client -o "$out" "$job" || [ $? = 1 ] || return
		"$PITCHBOARD" draw --dump=parts "$job" 2>/dev/null |
			sed -n 's/^\([A-Z][A-Z]*[0-9][0-9]*\) .*/\1/p' >"$out/$(basename "$job" .yaml).marks"
	done
}

# every COMMAND...: for each PDF, given as last argument; says which fail.
every() {
	faults=0
	for pdf in "$out"/*-client.pdf; do
		"$@" "$pdf" || {
			echo "$(basename "$pdf"): $*"
			faults=1
		}
	done
	return $faults
}

pages() { # PDF
	pdfinfo "$1" | sed -n 's/^Pages: *//p'
}

# page NUMBER PDF
page() {
	pdftotext -raw -f "$1" -l "$1" "$2" -
}

is_for_the_client() {
	for i in $(seq "$(pages "$1")"); do
		page "$i" "$1" >"$TMPDIR/page"
		grep -q 'For the client, to be read and signed. Not for a permit' "$TMPDIR/page" &&
			grep -q 'C-[0-9]' "$TMPDIR/page" && ! grep -qw 'S-[0-9][0-9]*' "$TMPDIR/page" || {
			echo "page $i"
			return 1
		}
	done
}

# As words by themselves; a mark of one letter and one figure might be part of another word.
bears_no_mark() {
	marks=$out/$(basename "$1" -client.pdf).marks
	[ "$(wc -l <"$marks")" -gt 10 ] || return 1
	pdftotext -raw "$1" - | tr -s ' ,.;:()' '\n' | grep -Fxf "$marks" && return 1
	return 0
}

names_wood_and_finish() {
	job=jobs/$(basename "$1" -client.pdf).yaml
	pdftotext -raw "$1" - | tr '\n' ' ' >"$TMPDIR/words"
	for key in treads balustrade finish; do
		word=$(sed -n "/^material:/,/^[a-z]*: *\$/s/^ *$key: *//p" "$job" | head -1)
		[ -n "$word" ] && grep -qF "$word" "$TMPDIR/words" || {
			echo "not found: $key, $word"
			return 1
		}
	done
}

# Twelve hex digits after "Set" on the page that is signed, after "set" in every title block.
is_signed_by_one_name() {
	name=$(pdftotext -raw "$1" - | sed -n 's/^Set \([0-9a-f]\{12\}\)$/\1/p')
	[ "$(echo "$name" | wc -w)" = 1 ] || return 1
	for i in $(seq "$(pages "$1")"); do
		page "$i" "$1" | tr '\n' ' ' | grep -q "set $name" || {
			echo "page $i lacks $name"
			return 1
		}
	done
}

name_with() { # EXPRESSION
	sed "$1" jobs/alder-lane.yaml >"$TMPDIR/changed.yaml"
	"$PITCHBOARD" draw -q --set client -o "$TMPDIR/changed" "$TMPDIR/changed.yaml" 2>/dev/null
	pdftotext -raw "$TMPDIR/changed/changed-client.pdf" - | sed -n 's/^Set //p'
}

# The job file's own name is in the title block, but not among what is signed.
another_wood_is_another_set() {
	name=$(name_with '')
	[ -n "$name" ] && [ "$(name_with 's/^  treads: red oak/  treads: cherry/')" != "$name" ] &&
		[ "$(name_with 's/^# Alder/# Elder/')" = "$name" ]
}

is_grey() {
	pdftoppm -r 30 "$1" "$TMPDIR/grey" && for ppm in "$TMPDIR"/grey*.ppm; do
		tail -n +4 "$ppm" | od -An -v -tu1 -w3 |
			awk '$1 != $2 || $2 != $3 { bad = 1 } END { exit bad }' || return 1
	done
	rm -f "$TMPDIR"/grey*.ppm
}

check 'the client set of the demo jobs is drawn' draw
check 'every page says whom it is for, under a number of its own series' every is_for_the_client
check 'no mark of a piece is on any page' every bears_no_mark
check 'wood and finish are named' every names_wood_and_finish
check 'one name of the set is on every page and beside the signatures' every is_signed_by_one_name
check 'another wood is another set, another remark in the job file is not' another_wood_is_another_set
check 'nothing is in colour' every is_grey
plan
