#!/bin/sh
# Lets one harness invent jobs for a while:  tests/fuzz/fuzz.sh SECONDS HARNESS
# What breaks it is left in build/fuzz/found.
set -u

name=$(basename "$2")
found=build/fuzz/found/
mkdir -p "$found" "$TMPDIR/invented"
# the words of a job file, so that not every one has to be found by chance
grep -oh '"[a-z_]\{3,\}"' src/read/keys*.c | sort -u >"$TMPDIR/words"
"$2" -dict="$TMPDIR/words" -max_total_time="$1" -max_len=6000 -timeout=20 -rss_limit_mb=2000 \
	-print_final_stats=1 -artifact_prefix="$found$name-" "$TMPDIR/invented" tests/fuzz/corpus >"$TMPDIR/log" 2>&1
status=$?
runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$TMPDIR/log")
if [ $status = 0 ]; then
	echo "ok 1 - $name: $runs invented jobs in $1 seconds: no crash, hang, leak or undefined behaviour"
else
	echo "not ok 1 - $name: see $found"
	tail -40 "$TMPDIR/log"
fi
exit $status
