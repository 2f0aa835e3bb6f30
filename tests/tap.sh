# For shell tests: `. tests/tap.sh`, then one `check` a result, then `plan`.
# The test may write below $TMPDIR, which is empty when it starts and is taken away after it.

results=0

# Run by hand, without tests/run.sh: a folder of its own, and the program as built last.
if [ -z "${RESULTS:-}" ]; then
	TMPDIR=$(mktemp -d) || exit 3
	PITCHBOARD=${PITCHBOARD:-build/pitchboard}
	export TMPDIR PITCHBOARD
	trap 'rm -rf "$TMPDIR"' EXIT
	trap 'exit 3' HUP INT TERM
fi

# check WORDS COMMAND...: the command must succeed.
check() {
	words=$1
	shift
	results=$((results + 1))
	if "$@" >"$TMPDIR/check.log" 2>&1; then
		echo "ok $results - $words"
	else
		echo "not ok $results - $words"
		sed 's/^/# /' "$TMPDIR/check.log"
	fi
}

# skip WORDS WHY: what cannot be tried on this machine.
skip() {
	results=$((results + 1))
	echo "ok $results # SKIP $1: $2"
}

# exits STATUS COMMAND...: the command must end with that status.
exits() {
	wanted=$1
	shift
	status=0
	"$@" || status=$?
	[ "$status" = "$wanted" ] || {
		echo "status $status, not $wanted: $*"
		return 1
	}
}

plan() {
	echo "1..$results"
}
