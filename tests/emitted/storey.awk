# Are the ticks of the storey rod at the levels of the treads?
#
#   awk -f model.awk -f storey.awk STAIR PATHS
#
# STAIR is what `pitchboard draw --dump stair` says, PATHS the lines of the rods on a roll.  The
# storey rod is the uppermost strip; it begins with the tallest of its lines, at least 22 mm long, and
# all its ticks stand on the same edge, 6 mm tall and 4.4 mm more for every lane that their lettering
# stands higher.  The status is 0 when every level has its tick within 0.02 mm.

FILENAME == ARGV[1] && $1 == "stair:" { sub(/,/, "", $7); level[++levels] = $7 + 0 }
FILENAME == ARGV[1] && $1 == "step" { sub(/,/, "", $4); level[++levels] = $4 + 0 }

FILENAME == ARGV[2] && $1 == 1 && NF == 4 {
	split($3, p, ","); split($4, q, ",")
	if (abs(p[1] - q[1]) > 0.002)
		next
	n++
	x[n] = p[1]
	low[n] = p[2] < q[2] ? p[2] : q[2]
	tall[n] = abs(p[2] - q[2])
	if (tall[n] > 22 - 0.002 && low[n] > base)
		base = low[n]
}

function is_tick(tall,    lanes) {
	lanes = (tall - 6) / 4.4
	return lanes > -0.001 && abs(lanes - int(lanes + 0.5)) < 0.001
}

END {
	start = 1e9
	for (i = 1; i <= n; i++)
		if (abs(low[i] - base) < 0.002 && tall[i] > 22 - 0.002 && x[i] < start)
			start = x[i]
	for (k = 1; k <= levels; k++) {
		best = 1e9
		for (i = 1; i <= n; i++)
			if (abs(low[i] - base) < 0.002 && is_tick(tall[i]))
				if (abs(x[i] - start - level[k]) < best)
					best = abs(x[i] - start - level[k])
		if (best > 0.02)
			fail("level " level[k] ": " best " mm off its tick")
	}
	if (levels < 2) fail("no levels")
	print levels " levels"
	exit faults > 0
}
