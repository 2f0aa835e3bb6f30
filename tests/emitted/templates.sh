#!/bin/sh
# Full-size templates of the demo jobs, read back with a program we did not write: the line to cut
# on the roll, and joined again from the sheets by their crosses, is the model's outline.
. tests/tap.sh

for job in jobs/*.yaml; do
	"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$job" || [ $? = 1 ] || exit 3
	"$PITCHBOARD" draw -q --dump parts "$job" >"$TMPDIR/$(basename "$job" .yaml).parts" || exit 3
done

labels() { # PDF
	qpdf --json=2 --json-key=pages "$1" | jq -r '.pages[].label |
		(.["/P"] // "" | ltrimstr("u:")) + (if .["/S"] then .["/St"] | tostring else "" end)'
}

# A template is mirrored when it says that the plank's lower end is on the right.
is_mirrored() { # PDF
	pdftotext "$1" - | grep -q '→ lower end'
}

agrees() { # STEM MARK KIND [AWK-VARIABLES...]
	pdf=$TMPDIR/out/$1-$2-$3.pdf
	parts=$TMPDIR/$1.parts
	mark=$2
	shift 3
	labels "$pdf" >"$TMPDIR/labels" &&
		mutool trace "$pdf" | awk -f tests/emitted/paths.awk >"$TMPDIR/paths" &&
		awk -f tests/emitted/model.awk -f tests/emitted/templates.awk -v mark="$mark" "$@" \
			-v mirrored="$(is_mirrored "$pdf" && echo 1 || echo 0)" \
			"$parts" "$TMPDIR/labels" "$TMPDIR/paths"
}

# One corner of the model moved by 0.05 mm: the comparison above must see it.
would_be_noticed() { # STEM MARK KIND
	cp "$TMPDIR/$1.parts" "$TMPDIR/$1.kept"
	awk -v mark="$2" '
		/^[^ ]/ { mine = $1 == mark }
		mine && /^ *(outline|core) / { split($4, at, /[,~]/); sub($4, at[1] + 0.05 "," at[2] + 0.05) }
		{ print }' "$TMPDIR/$1.kept" >"$TMPDIR/$1.parts"
	agrees "$@"
	status=$?
	mv "$TMPDIR/$1.kept" "$TMPDIR/$1.parts"
	[ $status = 1 ]
}

for roll in "$TMPDIR"/out/*-S[0-9]*-roll.pdf; do
	name=$(basename "$roll" -roll.pdf)
	stem=${name%-*}
	mark=${name##*-}
	check "$name: the line to cut on the roll is the model's" agrees "$stem" "$mark" roll
	check "$name: the sheets, joined by their crosses, are the model's" \
		agrees "$stem" "$mark" tiles
	check "$name: a corner 0.05 mm out would be noticed" would_be_noticed "$stem" "$mark" tiles
done

# The block that the riser of a starting step is bent round; no newel bolt goes through this one,
# whose circle would count as a line to cut.
cat >"$TMPDIR/block.yaml" <<END
pitchboard: 1
job: { name: Made up, units: millimetres }
floors: { total_rise: 1800 }
stair: { width: 900, left: open, right: wall, segments: [{ risers: 10, run: 250 }] }
treads: { starting_step: { ends: left, projection: 150, radius: 150 } }
newels: { bottom: no }
END
"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$TMPDIR/block.yaml" || [ $? = 1 ] || exit 3
"$PITCHBOARD" draw -q --dump parts "$TMPDIR/block.yaml" >"$TMPDIR/block.parts" || exit 3
mark=$(sed -n 's/^\(R[0-9]*\) riser block:.*/\1/p' "$TMPDIR/block.parts")
for kind in roll tiles; do
	check "the $kind of a riser block: the line is the model's" agrees block "$mark" $kind
	check "the $kind of a riser block: a corner 0.05 mm out would be noticed" \
		would_be_noticed block "$mark" $kind
done

# A skirt cut round the steps: on the left it is seen as its outline is struck, on the right from
# behind.
for wall in left right; do
	open=$([ $wall = left ] && echo right || echo left)
	cat >"$TMPDIR/skirt-$wall.yaml" <<END
pitchboard: 1
job: { name: Made up, units: millimetres }
floors: { total_rise: 1800 }
stair: { width: 900, $wall: wall, $open: open, segments: [{ risers: 10, run: 250 }] }
skirts: { wall: cut_round }
END
	"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$TMPDIR/skirt-$wall.yaml" || [ $? = 1 ] || exit 3
	"$PITCHBOARD" draw -q --dump parts "$TMPDIR/skirt-$wall.yaml" \
		>"$TMPDIR/skirt-$wall.parts" || exit 3
	check "the line to cut a skirt on the $wall is the model's" agrees "skirt-$wall" F1 roll
	check "its sheets, joined by their crosses, are the model's" agrees "skirt-$wall" F1 tiles
	check "a corner of it 0.05 mm out would be noticed" would_be_noticed "skirt-$wall" F1 tiles
done

# One before the carriage of an open side is seen from outside: on the right as its outline is
# struck, on the left from behind.
for open in left right; do
	wall=$([ $open = left ] && echo right || echo left)
	cat >"$TMPDIR/board-$open.yaml" <<END
pitchboard: 1
job: { name: Made up, units: millimetres }
floors: { total_rise: 1800 }
stair: { width: 900, $wall: wall, $open: open, segments: [{ risers: 10, run: 250 }] }
stringers: { open: sawtooth }
skirts: { open: mitred }
END
	"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$TMPDIR/board-$open.yaml" || [ $? = 1 ] || exit 3
	"$PITCHBOARD" draw -q --dump parts "$TMPDIR/board-$open.yaml" \
		>"$TMPDIR/board-$open.parts" || exit 3
	check "the line to cut an open skirt on the $open is the model's" \
		agrees "board-$open" F1 roll
	check "its sheets, joined by their crosses, are the model's" agrees "board-$open" F1 tiles
	check "a corner of it 0.05 mm out would be noticed" \
		would_be_noticed "board-$open" F1 tiles
done

# The same stair for a printer that draws 1.01 times too long along x and 0.99 times along y.
sed 's/^sheets:.*/&\n  printer_x: 1.01\n  printer_y: 0.99/' jobs/kiln-yard.yaml \
	>"$TMPDIR/corrected.yaml"
"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$TMPDIR/corrected.yaml" || [ $? = 1 ] || exit 3
cp "$TMPDIR/kiln-yard.parts" "$TMPDIR/corrected.parts"
check "corrected sheets come out right on the printer they are corrected for" \
	agrees corrected S1 tiles -v long_x=1.01 -v long_y=0.99
check "the roll is not corrected" agrees corrected S1 roll

plan
