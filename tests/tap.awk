# TAP of one test command in, the house's one style out:
#     ok    stair_test: risers add up to the total rise
#     FAIL  stair_test: the last rise comes out on the finished floor
#           # 191.5 is not 190.5
# -v name=NAME -v status=EXIT STATUS

function say(word, line) {
	sub(/^(not )?ok( [0-9]+)?( -)?( # SKIP)? */, "", line)
	gsub(/_/, " ", line)
	printf "%-5s %s: %s\n", word, name, line
	results++
}

/^(not )?ok [0-9]+ # SKIP/ { say("skip", $0); next }
/^ok/                      { say("ok", $0); why = 0; next }
/^not ok/                  { say("FAIL", $0); failed++; why = 1; next }
/^1\.\.[0-9]+/             { planned = substr($0, 4) + 0; next }
why || status != 0         { print "      " $0 }

END {
	if (status == 124 || status == 137)
		say("FAIL", "ran too long, or was killed")
	else if (status != 0 && !failed)
		say("FAIL", "ended with status " status)
	if (!results)
		say("FAIL", "printed no result")
	else if (planned && results < planned)
		say("FAIL", "planned " planned " results, printed " results)
}
