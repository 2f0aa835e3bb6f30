#!/bin/sh
# The command line: its words, its help and its exit status.
. tests/tap.sh

says() { # PATTERN COMMAND...: the pattern stands in what the command prints
	pattern=$1
	shift
	"$@" 2>&1 | grep -q -- "$pattern"
}

every_command_has_help() {
	for command in draw check keys list new; do
		says "^usage: pitchboard $command" "$PITCHBOARD" $command --help || return 1
	done
}

every_command_has_its_place_in_the_manual() {
	for command in draw check keys list new; do
		grep -q "^.BR* \"*$command" src/cli/pitchboard.1 || return 1
	done
}

the_manual_is_well_formed() {
	if command -v man >/dev/null; then
		LC_ALL=C.UTF-8 MANROFFSEQ='' man --warnings -E UTF-8 -l -Tutf8 -Z \
			src/cli/pitchboard.1 2>&1 >/dev/null | grep . && return 1
	fi
	head -1 src/cli/pitchboard.1 | grep -q '^.TH PITCHBOARD 1'
}

the_version_is_the_header_s() {
	version=$("$PITCHBOARD" --version)
	grep -q "VERSION \"${version#pitchboard }\"" include/pitchboard/version.h
}

check 'help is done' exits 0 "$PITCHBOARD" --help
check 'every command has help' every_command_has_help
check 'every command has its place in the manual' every_command_has_its_place_in_the_manual
check 'the manual is well formed' the_manual_is_well_formed
check 'the version printed is that of the header' the_version_is_the_header_s
check 'no command at all is wrong' exits 2 "$PITCHBOARD"
check 'an unknown command is wrong' exits 2 "$PITCHBOARD" build
check 'an unknown command is named' says 'no command build' "$PITCHBOARD" build
check 'an unknown option is wrong' exits 2 "$PITCHBOARD" draw --colour jobs/none.yaml
check 'an option without its value is wrong' exits 2 "$PITCHBOARD" draw -o
check 'a switch with a value is wrong' exits 2 "$PITCHBOARD" draw --quiet=yes jobs/none.yaml
check 'draw without a job is wrong' exits 2 "$PITCHBOARD" draw
check 'an unknown dump is wrong' exits 2 "$PITCHBOARD" draw --dump=everything jobs/none.yaml
check 'a job that is not there is wrong' exits 2 "$PITCHBOARD" draw "$TMPDIR/none.yaml"
check 'an unknown starter is wrong' exits 2 "$PITCHBOARD" new ../first
check 'an unknown starter brings the names there are' says '^  first$' "$PITCHBOARD" new unknown
check 'a full pipe is the machine failing' exits 3 sh -c '"$PITCHBOARD" keys >/dev/full'
check 'templates that are not there are the machine failing' \
	exits 3 "$PITCHBOARD" draw --templates "$TMPDIR/none" "$TMPDIR/none.yaml"
check 'check without a job is wrong' exits 2 "$PITCHBOARD" check
check 'check against no edition is wrong' exits 2 "$PITCHBOARD" check templates/starters/first.yaml
check 'check against no edition brings the editions there are' \
	says '^  irc-2021$' "$PITCHBOARD" check templates/starters/first.yaml
check 'an unknown edition is wrong' exits 2 "$PITCHBOARD" check -e irc-1066 jobs/alder-lane.yaml
plan
