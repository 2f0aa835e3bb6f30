#!/bin/sh
# Drawing from the command line: what is printed, what is written, and what is left alone.
. tests/tap.sh

job=$TMPDIR/alder.yaml
wrong=$TMPDIR/wrong.yaml
"$PITCHBOARD" new first >"$job"
sed 's/^ *total_rise:.*/&\n  total_rize: 1/' "$job" >"$wrong"
mkdir "$TMPDIR/bad"
cp "$wrong" "$TMPDIR/bad/alder.yaml"

# draw ARGUMENTS...: the paths go to $TMPDIR/paths, the problems to $TMPDIR/problems.
draw() {
	"$PITCHBOARD" draw "$@" >"$TMPDIR/paths" 2>"$TMPDIR/problems"
}

same_files() { # FOLDER FOLDER
	diff -rq "$1" "$2"
}

draws_a_first_stair() {
	exits 0 draw -o "$TMPDIR/one" "$job"
}

every_path_printed_is_a_file_and_every_file_is_printed() {
	find "$TMPDIR/one" -type f | sort >"$TMPDIR/found"
	[ -s "$TMPDIR/paths" ] && sort "$TMPDIR/paths" | diff - "$TMPDIR/found"
}

drawings_are_named_after_the_job() {
	! grep -v "/alder" "$TMPDIR/paths"
}

out_is_the_default_folder() {
	program=$(realpath "$PITCHBOARD")
	mkdir "$TMPDIR/elsewhere"
	(cd "$TMPDIR/elsewhere" && "$program" draw -q ../alder.yaml 2>../problems) &&
		same_files "$TMPDIR/elsewhere/out" "$TMPDIR/one"
}

quiet_prints_nothing() {
	exits 0 draw -q -o "$TMPDIR/quiet" "$job" &&
		[ ! -s "$TMPDIR/paths" ] && [ ! -s "$TMPDIR/problems" ]
}

two_runs_give_the_same_bytes() {
	same_files "$TMPDIR/one" "$TMPDIR/quiet"
}

a_wrong_job_is_told_with_its_place() {
	exits 2 draw -o "$TMPDIR/wrong" "$wrong" &&
		grep -q "^$wrong:[0-9]*:[0-9]*: error: .*total_rize" "$TMPDIR/problems" &&
		grep -q 'total_rise' "$TMPDIR/problems"
}

a_wrong_job_draws_nothing() {
	[ ! -s "$TMPDIR/paths" ] && [ ! -e "$TMPDIR/wrong" ]
}

a_wrong_job_leaves_earlier_drawings() {
	cp -r "$TMPDIR/one" "$TMPDIR/before"
	exits 2 draw -o "$TMPDIR/one" "$TMPDIR/bad/alder.yaml" &&
		same_files "$TMPDIR/one" "$TMPDIR/before"
}

a_wrong_job_does_not_stop_the_next() {
	exits 2 draw -o "$TMPDIR/both" "$wrong" "$job" && same_files "$TMPDIR/both" "$TMPDIR/one"
}

one_name_in_two_folders_is_refused() {
	cp "$job" "$TMPDIR/bad/alder.yml"
	exits 2 draw -o "$TMPDIR/twice" "$job" "$TMPDIR/bad/alder.yml" &&
		grep -q 'draw over each other' "$TMPDIR/problems" && [ ! -e "$TMPDIR/twice" ]
}

a_warning_is_drawn_and_told() {
	{ cat "$job"; echo 'opening: {length: 60", floor_thickness: 12"}'; } >"$TMPDIR/low.yaml"
	exits 1 draw -o "$TMPDIR/warned" "$TMPDIR/low.yaml" &&
		grep -q ': warning: ' "$TMPDIR/problems" && [ -s "$TMPDIR/paths" ]
}

a_letter_that_cannot_be_set_is_told() {
	for letter in 漢 א ب क; do
		sed "s/^\( *client:\).*/\1 Smith $letter Co/" "$job" >"$TMPDIR/letter.yaml"
		exits 1 draw -o "$TMPDIR/letter" "$TMPDIR/letter.yaml" &&
			grep -q "letter.yaml: warning: .*U+[0-9A-F]* in .*Smith $letter Co" \
				"$TMPDIR/problems" && [ -s "$TMPDIR/paths" ] || return 1
	done
}

a_dump_writes_no_file() {
	for noun in job stair parts drawing; do
		exits 0 draw --dump=$noun -o "$TMPDIR/dumped" "$job" || return 1
		[ -s "$TMPDIR/paths" ] || return 1
	done
	[ ! -e "$TMPDIR/dumped" ]
}

a_job_with_a_zero_byte_is_refused() {
	{ cat "$job"; printf '\0'; } >"$TMPDIR/zero.yaml"
	exits 2 draw -o "$TMPDIR/zero" "$TMPDIR/zero.yaml" && grep -q 'zero byte' "$TMPDIR/problems"
}

a_file_too_long_is_refused() {
	yes '# a line that goes on and on' | head -c 1100000 >"$TMPDIR/long.yaml"
	exits 2 draw -o "$TMPDIR/long" "$TMPDIR/long.yaml" && grep -q '1 MiB' "$TMPDIR/problems"
}

an_empty_job_is_wrong() {
	: >"$TMPDIR/empty.yaml"
	exits 2 draw -o "$TMPDIR/empty" "$TMPDIR/empty.yaml" && grep -q error "$TMPDIR/problems"
}

a_folder_is_no_job() {
	exits 2 draw -o "$TMPDIR/none" "$TMPDIR"
}

a_pipe_is_refused_without_waiting() {
	mkfifo "$TMPDIR/pipe.yaml"
	exits 2 timeout 5 "$PITCHBOARD" draw -o "$TMPDIR/none" "$TMPDIR/pipe.yaml" \
		2>"$TMPDIR/problems" && grep -q 'pipe.yaml: is not a plain file' "$TMPDIR/problems"
}

check 'a first stair is drawn' draws_a_first_stair
check 'every path printed is a file, every file is printed' \
	every_path_printed_is_a_file_and_every_file_is_printed
check 'drawings are named after the job file' drawings_are_named_after_the_job
check 'out is the default folder' out_is_the_default_folder
check 'quiet prints nothing' quiet_prints_nothing
check 'two runs give the same bytes' two_runs_give_the_same_bytes
check 'a wrong job is told with its place and its mend' a_wrong_job_is_told_with_its_place
check 'a wrong job draws nothing' a_wrong_job_draws_nothing
check 'a wrong job leaves earlier drawings as they were' a_wrong_job_leaves_earlier_drawings
check 'a wrong job does not stop the next' a_wrong_job_does_not_stop_the_next
check 'one file name in two folders is refused' one_name_in_two_folders_is_refused
check 'a warning is drawn, told and counted in the status' a_warning_is_drawn_and_told
check 'a letter that cannot be set is told and counted in the status' \
	a_letter_that_cannot_be_set_is_told
check 'a dump writes no file' a_dump_writes_no_file
check 'a job with a zero byte is refused' a_job_with_a_zero_byte_is_refused
check 'a file too long to be a job is refused' a_file_too_long_is_refused
check 'an empty job is wrong' an_empty_job_is_wrong
check 'a folder is no job' a_folder_is_no_job
check 'a pipe is refused without waiting' a_pipe_is_refused_without_waiting
plan
