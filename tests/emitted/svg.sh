#!/bin/sh
# The SVGs of the demo jobs, read back by programs we did not write.
. tests/tap.sh

out=$TMPDIR/out

draw() {
	for job in jobs/*.yaml; do
		"$PITCHBOARD" draw -q -o "$out" "$job" || [ $? = 1 ] || return
	done
}

# every COMMAND...: for each SVG, given as last argument; says which fail.
every() {
	faults=0
	for svg in "$out"/*.svg; do
		"$@" "$svg" || {
			echo "$(basename "$svg"): $*"
			faults=1
		}
	done
	return $faults
}

# xpath EXPRESSION SVG
xpath() {
	xmllint --xpath "$1" "$2"
}

is_well_formed() {
	xmllint --noout "$1"
}

ids_are_unique() {
	[ -z "$(grep -o ' id="[^"]*"' "$1" | sort | uniq -d)" ]
}

every_letter_has_its_outline() {
	grep -o 'href="#[^"]*"' "$1" | sed 's/.*#/ id="/' | sort -u >"$TMPDIR/used"
	grep -o ' id="[^"]*"' "$1" | sort >"$TMPDIR/there"
	[ -s "$TMPDIR/used" ] && diff "$TMPDIR/used" "$TMPDIR/there"
}

needs_nothing_else() { # no script, no picture, no font, no address but the namespaces
	! grep -Eq '<(script|image|style|foreignObject|text)|url\(|href="[^#]' "$1"
}

is_named() {
	xpath 'string(/*/*[local-name()="title"])' "$1" | grep -q '^S-[0-9]'
}

is_one_unit_to_the_millimetre() {
	width=$(xpath 'string(/*/@width)' "$1")
	height=$(xpath 'string(/*/@height)' "$1")
	[ "$(xpath 'string(/*/@viewBox)' "$1")" = "0 0 ${width%mm} ${height%mm}" ]
}

# Lettering is outlines; what it says has to be there to be searched all the same.
every_word_is_in_its_description() {
	faults=0
	for job in jobs/*.yaml; do
		"$PITCHBOARD" draw --dump=drawing "$job" 2>/dev/null >"$TMPDIR/dump"
		for svg in "$out/$(basename "$job" .yaml)"-S-*.svg; do
			title=$(xpath 'string(/*/*[local-name()="title"])' "$svg")
			sed -n "/^drawing ${title%% *} /,/^drawing /s/^text [^\"]*\"\(.*\)\"\$/\1/p" \
				"$TMPDIR/dump" | sort >"$TMPDIR/drawn"
			xpath 'string(/*/*[local-name()="desc"])' "$svg" | sort >"$TMPDIR/said"
			[ -s "$TMPDIR/drawn" ] || faults=1
			comm -23 "$TMPDIR/drawn" "$TMPDIR/said" | grep . && faults=1
		done
	done
	return $faults
}

lines_end_and_turn_round() {
	[ "$(xpath 'count(//*[@stroke-linecap="round" and @stroke-linejoin="round"])' "$1")" = 1 ] &&
		[ "$(xpath 'count(//*[@stroke-linecap or @stroke-linejoin])' "$1")" = 1 ]
}

check 'the demo jobs are drawn' draw
check 'every SVG is well formed' every is_well_formed
check 'no id is there twice' every ids_are_unique
check 'every letter has its outline, and no outline is idle' every every_letter_has_its_outline
check 'an SVG needs nothing from outside' every needs_nothing_else
check 'every SVG is named by its sheet' every is_named
check 'a unit is a millimetre' every is_one_unit_to_the_millimetre
check 'lines end and turn round: no spike at a sharp corner' every lines_end_and_turn_round
check 'every word and figure is in the description' every_word_is_in_its_description
plan
