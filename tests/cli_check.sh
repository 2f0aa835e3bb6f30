#!/bin/sh
# pitchboard check: its exit status, its table and its JSON.
. tests/tap.sh

job() { # RUN: a stair between two walls with a wide opening
	cat >"$TMPDIR/job.yaml" <<END
pitchboard: 1
job: {name: Test}
floors: {total_rise: 112"}
opening: {length: 14', floor_thickness: 10"}
stair: {width: 37", right: wall, segments: [{risers: 16, run: $1}]}
code: {edition: din-18065-2020}
END
}

check_job() {
	"$PITCHBOARD" check "$@" "$TMPDIR/job.yaml" >"$TMPDIR/said" 2>"$TMPDIR/problems"
}

says() { # PATTERN: of the last run
	grep -q -- "$1" "$TMPDIR/said"
}

counts() { # JQ FILTER: true of the JSON
	check_job --json || [ $? = 1 ] || return
	jq -e "$1" "$TMPDIR/said" >/dev/null
}

several_jobs_end_with_the_worst_status() {
	cp "$TMPDIR/job.yaml" "$TMPDIR/good.yaml"
	job '8"'
	exits 1 "$PITCHBOARD" check "$TMPDIR/good.yaml" "$TMPDIR/job.yaml"
}

job '11"'
check 'a stair that meets every limit is done' exits 0 check_job
check 'the table says so of the limits as entered' says '^0 not met, .* met as entered'
check 'the authority having jurisdiction has the last word' says 'authority having jurisdiction decides'
check 'several jobs end with the worst status' several_jobs_end_with_the_worst_status
check 'a limit that is not met is a finding' exits 1 check_job
check 'and is told with its mend' says 'mend: a unit run of '
check 'the JSON counts as many as it lists' counts '.["not met"] > 0 and
	.["not met"] == ([.findings[] | select(.state == "not met")] | length)'
check 'the JSON has values and limits in millimetres' counts '.findings[] |
	select(.row == "tread_depth") | .limit == 230 and (.value - 203.2 | fabs) < 0.01'
check 'the JSON names the edition' counts '.edition == "din-18065-2020"'
check 'another edition may be named' exits 1 check_job -e irc-2021
check 'a job that is wrong is wrong' sh -c 'echo "stair: 1" >"$TMPDIR/bad.yaml"
	"$PITCHBOARD" check "$TMPDIR/bad.yaml"; [ $? = 2 ]'
check 'a drawing is made of a stair that fails' sh -c '
	"$PITCHBOARD" draw -q -o "$TMPDIR/out" "$TMPDIR/job.yaml" 2>/dev/null; [ $? = 1 ] &&
	pdftotext "$TMPDIR/out/job.pdf" - | grep -q "NOT MET"'
plan
