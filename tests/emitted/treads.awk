# Do the holes on a tread's full-size template lie under the feet of the balusters in the house?
#
#   awk -f model.awk -f treads.awk -v page=2 -v step=7 -v left=936.625 PARTS STAIR PATHS
#
# PARTS and STAIR are what `pitchboard draw --dump` says of both, PATHS the lines of the template on
# a roll (paths.awk).  left: where the tread's left-hand end is, across the stair, from the right.
# A point of the template is as far from its left-hand end and from its front edge as the foot is in
# the house from there.  The status is 0 when every foot has its hole within 0.02 mm.

FILENAME == ARGV[1] && /^[^ ]/ {
	is_baluster = $2 == "baluster:"
	across = $7; thick = $9
}

FILENAME == ARGV[1] && is_baluster && /^  at / {
	split($2, at, ",")
	balusters++
	# a post's own axes are up, along the stair and to the left: its foot's middle
	footx[balusters] = at[1] + across / 2; footy[balusters] = at[2] + thick / 2
	footz[balusters] = at[3]
}

FILENAME == ARGV[2] && $1 == "step" && $2 == step ":" {
	gsub(/,/, "")
	level = $4; nosing = $6
}

FILENAME == ARGV[3] && $1 == page && $2 == 0.25 {
	x0 = y0 = 1e9; x1 = y1 = -1e9
	for (i = 3; i <= NF; i++) {
		split($i, p, ",")
		if (p[1] < x0) x0 = p[1]
		if (p[1] > x1) x1 = p[1]
		if (p[2] < y0) y0 = p[2]
		if (p[2] > y1) y1 = p[2]
	}
	if (lowx == "" || x0 < lowx) lowx = x0
	if (lowy == "" || y0 < lowy) lowy = y0
	if (NF > 20 && $3 == $NF) {
		holes++
		holex[holes] = (x0 + x1) / 2; holey[holes] = (y0 + y1) / 2
	}
}

END {
	for (i = 1; i <= balusters; i++) {
		if (footz[i] - level > 1 || level - footz[i] > 1)
			continue
		feet++
		best = 1e9
		for (k = 1; k <= holes; k++) {
			d = hypot(holex[k] - lowx - (left - footy[i]),
				holey[k] - lowy - (footx[i] - nosing))
			if (d < best) best = d
		}
		if (best > 0.02)
			fail("step " step ": a foot is " best " mm off its hole")
	}
	if (!feet) fail("no baluster stands on step " step)
	print feet " feet, " holes " holes"
	exit faults > 0
}
