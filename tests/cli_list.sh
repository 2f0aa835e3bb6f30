#!/bin/sh
# pitchboard list: text, CSV and JSON say the same; CSV as RFC 4180 has it, JSON as jq reads it.
. tests/tap.sh

job=jobs/alder-lane.yaml
lists='cut lumber mouldings hardware buying cutting setups'

list() { # whatever is to be read beside the job's warnings
	"$PITCHBOARD" list "$@" 2>/dev/null || [ $? = 1 ]
}

# Every record of the CSV on standard input, its fields by tabs: RFC 4180, lines ended by CR LF,
# quotes doubled inside quotes.
fields() {
	LC_ALL=C awk 'BEGIN { RS = "\001" } {
		n = length($0); quoted = 0; field = ""
		for (i = 1; i <= n; i++) {
			c = substr($0, i, 1)
			if (quoted && c == "\"" && substr($0, i + 1, 1) == "\"") { field = field c; i++ }
			else if (c == "\"") quoted = !quoted
			else if (!quoted && c == ",") { printf "%s\t", field; field = "" }
			else if (!quoted && c == "\r" && substr($0, i + 1, 1) == "\n") {
				print field; field = ""; i++
			}
			else if (!quoted && (c == "\n" || c == "\r")) { print "bare line end"; exit 1 }
			else field = field c
		}
		if (quoted || field != "") { print "unfinished"; exit 1 }
	}'
}

every_record_has_as_many_fields_as_the_head() {
	for name in $lists; do
		list --csv --only $name $job | fields |
			awk -F '\t' 'NR == 1 { n = NF } NF != n { print; bad = 1 } END { exit bad || n < 2 }' ||
			return 1
	done
}

jq_reads_every_list() {
	list --json $job >"$TMPDIR/lists.json"
	for name in $lists; do
		jq -e ".$name | type == \"array\"" "$TMPDIR/lists.json" || return 1
	done
}

# The cut list by both doors, as mark, how many and millimetres long.
csv_and_json_say_the_same() {
	list --csv $job | fields | awk -F '\t' '
		NR == 1 { for (i = 1; i <= NF; i++) at[$i] = i; next }
		{ print $at["mark"] "\t" $at["make"] "\t" $at["length"] "\t" $at["length_mm"] }' \
		>"$TMPDIR/csv"
	list --json $job |
		jq -r '.cut[] | [.mark, .make, .length, .length_mm] | @tsv' >"$TMPDIR/json"
	[ -s "$TMPDIR/csv" ] && diff "$TMPDIR/csv" "$TMPDIR/json"
}

the_text_has_a_line_for_every_row() {
	list --only cut $job | grep -c '^[A-Z][0-9]' >"$TMPDIR/rows"
	list --json $job | jq '.cut | length' | diff - "$TMPDIR/rows"
}

# What is bought in boards is what the boards are cut from.
boards_bought_are_boards_cut() {
	list --json $job >"$TMPDIR/lists.json"
	jq -e '([.buying[].count] | add) == ([.cutting[].count] | add)' "$TMPDIR/lists.json"
}

two_runs_print_the_same() {
	list --json $job >"$TMPDIR/one"
	list --json $job >"$TMPDIR/other"
	cmp "$TMPDIR/one" "$TMPDIR/other"
}

names_with_quotes_and_commas_come_through() {
	sed 's/treads: red oak/treads: "oak, \\"red\\" \/ \\\\"/' $job >"$TMPDIR/odd.yaml"
	list --json "$TMPDIR/odd.yaml" | jq -r '.cut[] | select(.part == "tread body").species' |
		sort -u >"$TMPDIR/json"
	list --csv "$TMPDIR/odd.yaml" | fields | awk -F '\t' '
		NR == 1 { for (i = 1; i <= NF; i++) at[$i] = i; next }
		$at["part"] == "tread body" { print $at["species"] }' | sort -u >"$TMPDIR/csv"
	echo 'oak, "red" / \' | diff - "$TMPDIR/json" && diff "$TMPDIR/json" "$TMPDIR/csv"
}

a_piece_too_long_is_a_warning() {
	{ cat $job && printf 'stock: {widths: [10"], lengths: [2 ft]}\n'; } >"$TMPDIR/short.yaml"
	exits 1 "$PITCHBOARD" list "$TMPDIR/short.yaml" 2>"$TMPDIR/said"
	grep -q 'short.yaml:.*warning: .*the largest board on offer is' "$TMPDIR/said"
}

check 'every record of every CSV has the fields of its head' \
	every_record_has_as_many_fields_as_the_head
check 'jq reads every list' jq_reads_every_list
check 'CSV and JSON say the same' csv_and_json_say_the_same
check 'the text has a line for every row' the_text_has_a_line_for_every_row
check 'the boards bought are the boards cut' boards_bought_are_boards_cut
check 'two runs print the same' two_runs_print_the_same
check 'names with quotes and commas come through' names_with_quotes_and_commas_come_through
check 'a piece longer than any board is a warning at its place' a_piece_too_long_is_a_warning
check 'no job is wrong' exits 2 "$PITCHBOARD" list
check 'two jobs are wrong' exits 2 "$PITCHBOARD" list $job $job
check 'CSV and JSON at once are wrong' exits 2 "$PITCHBOARD" list --csv --json $job
check 'an unknown list is wrong' exits 2 "$PITCHBOARD" list --only everything $job
check 'a job that is not there is wrong' exits 2 "$PITCHBOARD" list "$TMPDIR/none.yaml"
plan
