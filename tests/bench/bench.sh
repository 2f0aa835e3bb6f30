#!/bin/sh
# Speed, growth and memory beside their targets:  tests/bench/bench.sh BUILD
#
# Times are processor time of the quickest of several runs, on whatever machine this is; only their
# ratios are compared.  The figures do not fail the build: they are read.  A job that is refused
# does, for it would be drawn in no time at all.
set -eu

build=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# line WHAT MEASURED TARGET UNIT
line() {
	printf '%-58s %8s  target %5s %-2s  %s\n' "$1" "$2" "$3" "$4" \
		"$(awk "BEGIN { print $2 <= $3 ? \"met\" : \"NOT MET\" }")"
}

ratio() {
	awk "BEGIN { printf \"%.2f\", $1 / $2 }"
}

# drawn COMMAND...: its problems are shown only when it fails; 1 is drawn, with warnings to read
drawn() {
	"$@" 2>"$work/problems" || [ $? = 1 ] || {
		cat "$work/problems" >&2
		exit 1
	}
}

# instructions JOB
instructions() {
	drawn valgrind --tool=callgrind --callgrind-out-file=/dev/null "$build/pitchboard" draw -q \
		-o "$work/counted" "$1"
	sed -n 's/^==[0-9]*== Collected : //p' "$work/problems"
}

# A plain stair of so many risers, the rest in proportion.
steps() { # RISERS
	cat <<END
pitchboard: 1
job: { name: Steps to count, units: millimetres }
floors: { total_rise: $((110 * $1)) }
stair:
  width: 900
  right: open
  segments: [{ kind: flight, risers: $1, run: 160 }]
stringers: { stock_lengths: [30 m] }
END
}

drawn "$build/pitchboard" draw -q -o "$work/out" jobs/*.yaml
ours=$(drawn "$build/bench/best" 15 "$build/pitchboard" draw -q -o "$work/out" jobs/*.yaml)
draw=${ours% *} memory=${ours#* }
plain=$(drawn "$build/bench/plain" 9 "$work/plain" jobs/*.yaml)
rsvg=$(drawn "$build/bench/best" 3 rsvg-convert -f pdf -o "$work/rsvg.pdf" "$work"/out/*.svg)
rsvg=${rsvg% *}

steps 15 >"$work/once.yaml"
steps 150 >"$work/tenfold.yaml"
once=$(instructions "$work/once.yaml")
tenfold=$(instructions "$work/tenfold.yaml")

echo "drawing the demo jobs: $draw ms of processor time; $(find "$work/out" -type f | wc -l) files"
line "(a) against a plain replay by Cairo ($plain ms)" "$(ratio "$draw" "$plain")" 0.5 ''
line "(b) against rsvg-convert of the SVGs alone ($rsvg ms)" "$(ratio "$draw" "$rsvg")" 0.2 ''
line "(c) instructions for 150 risers against 15" "$(ratio "$tenfold" "$once")" 11 ''
line "(d) peak memory" "$(ratio "$memory" 1024)" 30 MB
