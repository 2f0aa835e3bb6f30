#!/bin/sh
# Runs tests and counts them:  tests/run.sh COMMAND...
#
# Each COMMAND is a test program or a shell test, with its arguments.  It runs in the top folder,
# may write only below $TMPDIR, finds the program to test in $PITCHBOARD, and prints its results in
# TAP, as cmocka does too when asked:
#
#     ok 1 - a closed stringer keeps its throat
#     not ok 2 - the last rise comes out on the finished floor
#     # 191.5 is not 190.5
#
# A command that fails, hangs, prints no result, or fewer than it planned (`1..2`) is a failure of
# its own.  The last line is `N passed, N failed`; the status is 0 only when nothing failed.
set -u

seconds=${TEST_SECONDS:-400}

run_one() {
	name=$(basename "${1%% *}" .sh)
	work=$(mktemp -d "$RESULTS/XXXXXX")
	TMPDIR=$work/tmp
	export TMPDIR
	mkdir "$TMPDIR"
	timeout -k 5 "$seconds" sh -c "$1" >"$work/tap" 2>&1 </dev/null
	status=$?
	awk -v name="$name" -v status="$status" -f tests/tap.awk "$work/tap" >"$work/lines"
	flock "$RESULTS/lock" cat "$work/lines"
	rm -rf "$TMPDIR"
}

if [ "$1" = --one ]; then
	run_one "$2"
	exit 0
fi

RESULTS=$(mktemp -d "${TMPDIR:-/tmp}/pitchboard-tests.XXXXXX") || exit 3
trap 'rm -rf "$RESULTS"' EXIT
trap 'exit 3' HUP INT TERM
CMOCKA_MESSAGE_OUTPUT=TAP
export RESULTS CMOCKA_MESSAGE_OUTPUT

printf '%s\n' "$@" | xargs -d '\n' -n 1 -P "$(nproc)" "$0" --one

cat "$RESULTS"/*/lines | awk '
	/^ok/   { passed++ }
	/^FAIL/ { failed++ }
	/^skip/ { skipped++ }
	END {
		printf "%d passed, %d failed", passed, failed
		print skipped ? ", " skipped " skipped" : ""
		exit failed > 0 || passed == 0
	}'
