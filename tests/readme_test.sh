#!/bin/sh
# What README.md shows is what the program does.
. tests/tap.sh

fenced() { # LANGUAGE: the block of README.md in that language
	sed -n "/^\`\`\`$1\$/,/^\`\`\`\$/{/^\`\`\`/d;p}" README.md
}

the_first_stair_is_the_starter() {
	"$PITCHBOARD" new | diff - templates/starters/first.yaml && fenced yaml | diff - templates/starters/first.yaml
}

the_first_stair_draws() {
	fenced yaml >"$TMPDIR/my-stair.yaml"
	"$PITCHBOARD" draw -o "$TMPDIR/out" "$TMPDIR/my-stair.yaml" >"$TMPDIR/paths"
}

the_first_stair_is_ten_lines() {
	[ "$(fenced yaml | wc -l)" -le 10 ]
}

the_mistake_is_told_as_shown() {
	fenced yaml | sed 's/right:/rigth:/; s/ *#.*//' >"$TMPDIR/my-stair.yaml"
	(cd "$TMPDIR" && "$program" draw my-stair.yaml 2>problems)
	for line in 1 2 3; do
		grep -qxF "$(sed -n ${line}p "$TMPDIR/problems")" README.md || {
			cat "$TMPDIR/problems"
			return 1
		}
	done
}

every_file_it_lists_comes_out() {
	for file in $(sed -n 's/^| `\(my-stair[^`]*\)`.*/\1/p' README.md); do
		grep -q "/$file\$" "$TMPDIR/paths" || { echo "no $file"; return 1; }
	done
}

every_file_it_links_is_there() {
	for file in $(grep -o '](\([^):]*\))' README.md | tr -d ']()'); do
		[ -e "$file" ] || { echo "no $file"; return 1; }
	done
}

the_key_table_is_the_program_s() {
	sed -n '/^<!-- keys/,/^<!-- end of keys/{/^<!--/d;p}' README.md >"$TMPDIR/keys"
	"$PITCHBOARD" keys --markdown | diff "$TMPDIR/keys" -
}

program=$(realpath "$PITCHBOARD")
check 'the first stair is the starter that new prints' the_first_stair_is_the_starter
check 'the first stair is ten lines' the_first_stair_is_ten_lines
check 'the first stair draws, with nothing to warn of' the_first_stair_draws
check 'every file it lists comes out' every_file_it_lists_comes_out
check 'a mistake is told as shown' the_mistake_is_told_as_shown
check 'the key table is what the program prints' the_key_table_is_the_program_s
check 'every file it links is there' every_file_it_links_is_there
plan
