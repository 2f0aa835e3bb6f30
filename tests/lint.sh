#!/bin/sh
# The house rules that a machine can check:  tests/lint.sh CPPFLAGS
set -u

sources=$(find src include tests -name '*.[ch]' | sort)
faults=0

# run WHAT COMMAND...: the command must succeed.
run() {
	echo "$1"
	shift
	"$@" || faults=1
}

run 'limits and borders' awk -f tests/lint.awk $sources
run 'clang-format' clang-format --dry-run --Werror $sources
run 'cppcheck' cppcheck --quiet --error-exitcode=1 --std=c11 --inline-suppr -j "$(nproc)" \
	--enable=warning,performance,portability --suppress=missingIncludeSystem \
	--suppress=invalidPointerCast -Iinclude -Isrc src

# One file a run: given several, version 14 takes va_start for missing in all but the first.
run 'clang-tidy' xargs -P "$(nproc)" -I{} clang-tidy --quiet {} -- $1 2>/dev/null <<END
$(find src tests -name '*.c' | sort)
END

[ $faults = 0 ] && echo 'lint: clean'
exit $faults
