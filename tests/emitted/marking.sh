#!/bin/sh
# Templates that are marked from, read back with a program we did not write: holes in treads lie
# under the balusters' feet as these stand in the house, ticks of the storey rod at the levels of
# the treads, profiles are the pieces' sections.
. tests/tap.sh

# Balusters on every tread; a wall on one side or the other; walls that treads wrap.
stair() { # WALL OPEN
	cat <<END
pitchboard: 1
job: { name: Made up, units: millimetres }
floors: { total_rise: 2700, lower_finish: 20 }
stair:
  width: 950
  $1: wall
  $2: open
  segments: [{ kind: flight, risers: 15, run: 260 }]
stringers: { open: { kind: mitred } }
treads:
  side_overhang: 30
  scribe: 3
  notches:
    - { step: 3, at: $1, along: 60, across: 120, from: 40 }
    - { step: 4, at: back, along: 100, across: 60, from: 300 }
infill: { kind: braced }
balusters: { per_tread: 3 }
END
}

stair left right >"$TMPDIR/right.yaml"
stair right left >"$TMPDIR/left.yaml"
for name in left right; do
	job=$TMPDIR/$name.yaml
	"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$job" || [ $? = 1 ] || exit 3
	for noun in parts stair; do
		"$PITCHBOARD" draw -q --dump=$noun "$job" >"$TMPDIR/$name.$noun" ||
			[ $? = 1 ] || exit 3
	done
	for file in treads-roll rods-roll small; do
		mutool trace "$TMPDIR/out/$name-$file.pdf" | awk -f tests/emitted/paths.awk \
			>"$TMPDIR/$name-$file.paths" || exit 3
	done
done

compare() { # COMPARISON ARGUMENTS...
	comparison=$1
	shift
	awk -f tests/emitted/model.awk -f "tests/emitted/$comparison.awk" "$@"
}

# The first step that each page of the treads is for: "TU3  tread, steps 5 to 13, make 9 alike".
steps() { # NAME
	pages=$(pdfinfo "$TMPDIR/out/$1-treads-roll.pdf" | sed -n 's/^Pages: *//p')
	for page in $(seq "$pages"); do
		pdftotext -f "$page" -l "$page" "$TMPDIR/out/$1-treads-roll.pdf" - |
			sed -n "s/.*tread, steps* \([0-9]*\).*make.*/$page \1/p" | head -n 1
	done
}

feet_have_holes() { # NAME PARTS LEFT-HAND-END
	[ -n "$(steps "$1")" ] || return 1
	steps "$1" | while read -r page step; do
		compare treads -v page="$page" -v step="$step" -v left="$3" \
			"$2" "$TMPDIR/$1.stair" "$TMPDIR/$1-treads-roll.paths" || exit 1
	done
}

# Every baluster of the model moved by 0.05 mm.
moved() { # NAME
	awk '/^[^ ]/ { mine = $2 == "baluster:" }
		mine && /^  at / { split($2, at, ","); $0 = "  at " at[1] + 0.05 "," at[2] "," at[3] }
		{ print }' "$TMPDIR/$1.parts" >"$TMPDIR/moved.parts"
}

would_be_noticed() { # NAME LEFT-HAND-END
	moved "$1"
	feet_have_holes "$1" "$TMPDIR/moved.parts" "$2"
	[ $? = 1 ]
}

# At a wall a tread ends the scribing allowance short, at an open side it goes over the string.
check "open at the right: every foot stands over its hole" \
	feet_have_holes right "$TMPDIR/right.parts" 947
check "open at the left: every foot stands over its hole" \
	feet_have_holes left "$TMPDIR/left.parts" 980
check "open at the right: feet 0.05 mm off would be noticed" would_be_noticed right 947
check "open at the left: feet 0.05 mm off would be noticed" would_be_noticed left 980

levels_are_ticked() { # STAIR
	compare storey "$1" "$TMPDIR/right-rods-roll.paths"
}

level_would_be_noticed() {
	sed 's/level 900.000/level 900.050/' "$TMPDIR/right.stair" >"$TMPDIR/moved.stair"
	! cmp -s "$TMPDIR/right.stair" "$TMPDIR/moved.stair" || return 1
	levels_are_ticked "$TMPDIR/moved.stair"
	[ $? = 1 ]
}

check "the storey rod is ticked at the level of every tread" levels_are_ticked "$TMPDIR/right.stair"
check "a level 0.05 mm off would be noticed" level_would_be_noticed

# The first piece of this name, and whether its section is among the small patterns.
profile_is_there() { # PARTS PIECE
	mark=$(sed -n "s/^\([A-Z]*[0-9]*\) $2: .*/\1/p" "$1" | head -n 1)
	compare profile -v mark="$mark" "$1" "$TMPDIR/right-small.paths"
}

# One corner of each section moved.
profile_would_be_noticed() { # PIECE
	awk '$1 == "section" {
			n = split($2, at, /[,~]/)
			$2 = at[1] + 0.05 "," at[2] + 0.05 (n > 2 ? "~" at[3] : "")
			$0 = "  " $0
		}
		{ print }' "$TMPDIR/right.parts" >"$TMPDIR/moved.parts"
	profile_is_there "$TMPDIR/moved.parts" "$1"
	[ $? = 1 ]
}

for piece in rail "tread front strip"; do
	check "the profile of the $piece is its section" profile_is_there "$TMPDIR/right.parts" "$piece"
done
check "a profile 0.05 mm off would be noticed" profile_would_be_noticed rail

plan
