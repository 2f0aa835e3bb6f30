#!/bin/sh
# The house rules that a machine can check:  tests/lint.sh CFLAGS
set -u

sources=$(find src include tests -name '*.[ch]' | sort)
units=$(find src tests -name '*.c' | sort)
faults=0

# no_match WHAT PATTERN FILES...: the pattern may stand in none of the files.
no_match() {
	what=$1 pattern=$2
	shift 2
	[ $# -eq 0 ] && return
	if grep -nE "$pattern" "$@" /dev/null; then
		echo "  ^ $what"
		faults=1
	fi
}

# run WHAT COMMAND...: the command must succeed.
run() {
	what=$1
	shift
	echo "$what"
	"$@" || faults=1
}

outside() { # ROOMS SUFFIXES: files of src that are in none of the rooms
	find src include -name "*.[ch]" | grep -vE "^src/($1)" | sort
}

run 'long functions, files and lines' awk '
	FNR == 1 { start = 0 }
	/^\{/ { start = FNR }
	/^\}/ {
		if (start && FNR - start - 1 > 60)
			fault(FILENAME ":" start ": function of " FNR - start - 1 " lines")
		start = 0
	}
	FNR == 451 { fault(FILENAME ": over 450 lines") }
	{
		line = $0
		gsub(/\t/, "        ", line)
		if (length(line) > 100)
			fault(FILENAME ":" FNR ": over 100 columns")
	}
	function fault(text) { print text; faults++ }
	END { exit faults > 0 }' $sources

echo 'what belongs to one room'
no_match 'Cairo and FreeType belong to src/write' '#include <(cairo|ft2build)' $(outside write/)
no_match 'YAML belongs to src/read' '#include <yaml' $(outside read/)
no_match 'memory comes from the arena' '\b(malloc|calloc|realloc|strdup|strndup|asprintf)\(' \
	$(outside base/arena.c)
no_match 'only the command line prints and exits' '\b(printf|puts|putchar|exit|_exit|abort)\(' \
	$(outside 'cli/|base/arena.c')
no_match 'no clock, no locale' '\b(time|clock|localtime|setlocale|rand|random)\(' $(outside none)
no_match 'comments are /* */' '^[^"]*//' $(echo "$sources" | grep '\.[ch]$')

run 'clang-format' clang-format --dry-run --Werror $sources
run 'cppcheck' cppcheck --quiet --error-exitcode=1 --std=c11 --inline-suppr -j "$(nproc)" \
	--enable=warning,performance,portability --suppress=missingIncludeSystem --suppress=invalidPointerCast -Iinclude -Isrc src

# One file a run: given several, version 14 takes va_start for missing in all but the first.
run 'clang-tidy' xargs -P "$(nproc)" -I{} clang-tidy --quiet {} -- $1 2>/dev/null <<END
$units
END

[ $faults = 0 ] && echo 'lint: clean'
exit $faults
