# Is the profile of a piece among the small patterns?
#
#   awk -f model.awk -f profile.awk -v mark=H1 PARTS PATHS
#
# PARTS is what `pitchboard draw --dump parts` says, PATHS the lines of the small patterns.  The
# status is 0 when one closed line of them, laid with its lower left corner on that of the piece's
# section, has all its points within 0.02 mm of the section's outline, and passes all its corners.

FILENAME == ARGV[1] && /^[^ ]/ { mine = $1 == mark }

FILENAME == ARGV[1] && mine && $1 == "section" {
	sub(/^ *section /, "")
	outline($0)
}

# How far the farthest point of this line lies off the outline, or the other way round.
function off(    i, k, n, p, d, best, worst, lx, ly) {
	lx = ly = 1e9
	for (i = 3; i <= NF; i++) {
		split($i, p, ",")
		px[i] = p[1]; py[i] = p[2]
		if (p[1] < lx) lx = p[1]
		if (p[2] < ly) ly = p[2]
	}
	for (i = 3; i <= NF; i++) {
		best = 1e9
		for (k = 1; k <= sides; k++) {
			d = off_segment(px[i] - lx + mx, py[i] - ly + my, ax[k], ay[k], bx[k], by[k])
			if (d < best) best = d
		}
		if (best > worst) worst = best
	}
	for (k = 1; k <= corners; k++) {
		best = 1e9
		for (i = 3; i < NF; i++) {
			d = off_segment(cornerx[k] - mx + lx, cornery[k] - my + ly, px[i], py[i],
				px[i + 1], py[i + 1])
			if (d < best) best = d
		}
		if (best > worst) worst = best
	}
	return worst
}

FILENAME == ARGV[2] && $2 == 0.25 && $3 == $NF {
	drawn++
	d = off()
	if (least == "" || d < least) least = d
}

END {
	print mark ": " sides + 0 " sides; the nearest of " drawn + 0 " lines is " least " mm off"
	exit !(sides > 0 && drawn > 0 && least <= 0.02)
}
