#!/bin/sh
# The machine fails: a clear line, status 3, and every earlier drawing as it was.
. tests/tap.sh

job=$TMPDIR/alder.yaml
"$PITCHBOARD" new first >"$job"
drawn=$TMPDIR/drawn
"$PITCHBOARD" draw -q -o "$drawn" "$job" 2>/dev/null
cp -r "$drawn" "$TMPDIR/before"

# The same job under another client's name: every file of it differs.
mkdir "$TMPDIR/later"
later=$TMPDIR/later/alder.yaml
sed 's/^\( *name:\).*/\1 Another Stair Altogether/' "$job" >"$later"
"$PITCHBOARD" draw -q -o "$TMPDIR/after" "$later" 2>/dev/null

untouched() {
	diff -rq "$drawn" "$TMPDIR/before"
}

told() { # PATTERN
	grep -q "^pitchboard: .*$1" "$TMPDIR/problems"
}

draw_later() { # FOLDER
	"$PITCHBOARD" draw -o "$1" "$later" >"$TMPDIR/paths" 2>"$TMPDIR/problems"
}

the_two_differ_in_every_file() {
	for file in "$TMPDIR/after"/*; do
		! cmp -s "$file" "$TMPDIR/before/${file##*/}" || return 1
	done
}

a_file_size_limit_leaves_earlier_drawings() {
	(ulimit -f 4 && exits 3 draw_later "$drawn") && told 'too large' && untouched
}

a_full_disk_leaves_earlier_drawings() {
	cp -r "$drawn" "$TMPDIR/small/alder"
	exits 3 draw_later "$TMPDIR/small/alder" && told 'No space left' &&
		diff -rq "$TMPDIR/small/alder" "$TMPDIR/before"
}

a_file_in_place_of_the_folder_is_told() {
	: >"$TMPDIR/file"
	exits 3 draw_later "$TMPDIR/file" && told "$TMPDIR/file"
}

a_folder_in_place_of_a_file_is_told() {
	cp -r "$drawn" "$TMPDIR/blocked"
	blocked=$(ls "$TMPDIR/blocked" | head -1)
	rm "$TMPDIR/blocked/$blocked"
	mkdir "$TMPDIR/blocked/$blocked"
	cp -r "$TMPDIR/blocked" "$TMPDIR/blocked-before"
	exits 3 draw_later "$TMPDIR/blocked" && told "$blocked" &&
		diff -rq "$TMPDIR/blocked" "$TMPDIR/blocked-before"
}

a_full_pipe_is_told() {
	exits 3 sh -c '"$PITCHBOARD" draw -o "$1" "$2" >/dev/full 2>"$3"' sh \
		"$TMPDIR/pipe" "$job" "$TMPDIR/problems" && told 'could not be written'
}

# Each file is either the old one or the new one, whole; what a killed run leaves is hidden.
whole() {
	for file in "$drawn"/*; do
		cmp -s "$file" "$TMPDIR/before/${file##*/}" ||
			cmp -s "$file" "$TMPDIR/after/${file##*/}" || {
			echo "$file is neither"
			return 1
		}
	done
	[ "$(ls "$drawn")" = "$(ls "$TMPDIR/before")" ]
}

killed_at_any_moment_every_file_is_whole() {
	killed=0
	for delay in 0 .01 .02 .04 .06 .08 .1 .13 .16 .2 .25 .3 .4 .5; do
		timeout -s KILL "$delay" "$PITCHBOARD" draw -q -o "$drawn" "$later" 2>/dev/null
		[ $? = 137 ] && killed=$((killed + 1))
		whole || return 1
	done
	[ $killed -gt 0 ]
}

the_next_run_draws_after_a_kill() {
	exits 0 draw_later "$drawn" && whole
}

check 'the later drawings differ in every file' the_two_differ_in_every_file
check 'a file size limit leaves earlier drawings as they were' \
	a_file_size_limit_leaves_earlier_drawings
room=$(du -sk "$drawn" | cut -f1)
mkdir "$TMPDIR/small"
words='a full disk leaves earlier drawings as they were'
if mount -t tmpfs -o size=$((room + 100))k tmpfs "$TMPDIR/small" 2>/dev/null; then
	check "$words" a_full_disk_leaves_earlier_drawings
	umount "$TMPDIR/small"
else
	skip "$words" 'no disk may be mounted here'
fi
check 'a file in place of the folder is told' a_file_in_place_of_the_folder_is_told
check 'a folder in place of a file is told before anything is renamed' \
	a_folder_in_place_of_a_file_is_told
check 'a full pipe is told' a_full_pipe_is_told
check 'killed at any moment, every file is the old one or the new one' \
	killed_at_any_moment_every_file_is_whole
check 'the next run draws after a kill' the_next_run_draws_after_a_kill
plan
