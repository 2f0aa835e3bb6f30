#!/bin/sh
# A thousand jobs under make -j: a run has no state but its inputs, so side by side they give the
# same bytes as one after another.
. tests/tap.sh

count=12
mkdir "$TMPDIR/jobs"
"$PITCHBOARD" new first >"$TMPDIR/first.yaml"
for i in $(seq $count); do
	sed "s/^\( *name:\).*/\1 Stair $i/; s/^\( *width:\).*/\1 $((800 + i)) mm/" \
		"$TMPDIR/first.yaml" >"$TMPDIR/jobs/stair-$i.yaml"
done

one_after_another() {
	for job in "$TMPDIR"/jobs/*.yaml; do
		"$PITCHBOARD" draw -o "$TMPDIR/single" "$job" || return 1
	done
	[ "$(ls "$TMPDIR/single"/stair-*.pdf | wc -l)" -ge $count ]
}

side_by_side_into_one_folder() {
	ls "$TMPDIR"/jobs/*.yaml |
		xargs -P 4 -n 1 "$PITCHBOARD" draw -q -o "$TMPDIR/side-by-side" &&
		diff -rq "$TMPDIR/single" "$TMPDIR/side-by-side"
}

under_make() {
	sed -n '/^```make$/,/^```$/{/^```/d;p}' README.md >"$TMPDIR/Makefile"
	ln -s "$(realpath "$PITCHBOARD")" "$TMPDIR/pitchboard"
	PATH=$TMPDIR:$PATH make -s -j4 -C "$TMPDIR" &&
		diff -rq "$TMPDIR/single" "$TMPDIR/out" &&
		[ "$(ls "$TMPDIR/drawn" | wc -l)" = $count ]
}

all_in_one_call() {
	"$PITCHBOARD" draw -q -o "$TMPDIR/one-call" "$TMPDIR"/jobs/*.yaml &&
		diff -rq "$TMPDIR/single" "$TMPDIR/one-call"
}

the_same_job_many_times_at_once() {
	seq 8 | xargs -P 8 -I{} "$PITCHBOARD" draw -q -o "$TMPDIR/race" "$TMPDIR/jobs/stair-1.yaml"
	for file in "$TMPDIR"/race/*; do
		cmp "$file" "$TMPDIR/single/${file##*/}" || return 1
	done
}

# Each in a container of its own, where every one of them is process number 1.
with_one_process_number() {
	seq 8 | xargs -P 8 -I{} unshare --pid --fork "$PITCHBOARD" draw -q -o "$TMPDIR/contained" \
		"$TMPDIR/jobs/stair-1.yaml" || return 1
	for file in "$TMPDIR"/contained/*; do
		cmp "$file" "$TMPDIR/single/${file##*/}" || return 1
	done
	[ -z "$(find "$TMPDIR/contained" -name '.*.part')" ]
}

check 'jobs are drawn one after another' one_after_another
check 'side by side into one folder they give the same bytes' side_by_side_into_one_folder
check 'under make -j, by the rule in README.md, they give the same bytes' under_make
check 'in one call they give the same bytes' all_in_one_call
check 'one job drawn many times at once comes out whole' the_same_job_many_times_at_once
words='many runs of one process number do not break each other'
if unshare --pid --fork true 2>/dev/null; then
	check "$words" with_one_process_number
else
	skip "$words" 'no containers may be made here'
fi
plan
