#!/bin/sh
# What the program makes of the demo jobs, as text about a staircase: a change of any number or
# any mark is a line in a diff.  `make bless` (BLESS=1) takes what it says now as golden.
. tests/tap.sh

golden=tests/golden

dump() { # JOB NOUN; of the drawings the sheets, for the tiles of a template say little by themselves
	"$PITCHBOARD" draw -q --dump="$2" "$1" |
		awk '/^drawing/ { is_tile = $2 !~ /^S-/ } !is_tile'
}

says_the_same() { # JOB NOUN WANTED
	dump "$1" "$2" >"$TMPDIR/now"
	[ -z "${BLESS:-}" ] || cp "$TMPDIR/now" "$3"
	[ -s "$TMPDIR/now" ] && diff -u "$3" "$TMPDIR/now"
}

# Drawings are long: one job in inches and one in millimetres speak for all.
nouns_of() { # NAME
	case $1 in
	alder-lane | kiln-yard) echo job stair parts findings drawing ;;
	*) echo job stair parts findings ;;
	esac
}

for job in jobs/*.yaml; do
	name=$(basename "$job" .yaml)
	for noun in $(nouns_of "$name"); do
		check "$name: the $noun is as blessed" \
			says_the_same "$job" $noun "$golden/$name.$noun"
	done
done
plan
