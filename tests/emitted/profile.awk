# Is the profile of a piece among the small patterns?
#
#   awk -f profile.awk -v mark=H1 PARTS PATHS
#
# PARTS is what `pitchboard draw --dump parts` says, PATHS the lines of the small patterns.  The
# status is 0 when one closed line of them, laid with its lower left corner on that of the piece's
# section, has all its points within 0.02 mm of the section's outline, and passes all its corners.

function hypot(x, y) { return sqrt(x * x + y * y) }

function abs(x) { return x < 0 ? -x : x }

function side(x1, y1, x2, y2) {
	sides++
	ax[sides] = x1; ay[sides] = y1; bx[sides] = x2; by[sides] = y2
	if (x2 < mx) mx = x2
	if (y2 < my) my = y2
}

# Corners "x,y" or "x,y~bulge"; an arc is taken as straight pieces, far finer than what is compared.
function outline(text,    n, i, j, k, at, part, x, y, bulge, sweep, cx, cy, c, s, px, py, qx, qy) {
	n = split(text, at, " ")
	mx = my = 1e9
	for (i = 1; i <= n; i++) {
		k = split(at[i], part, /[,~]/)
		x[i] = part[1] + 0; y[i] = part[2] + 0
		bulge[i] = k > 2 ? part[3] + 0 : 0
	}
	for (i = 1; i <= n; i++) {
		j = i % n + 1
		cornerx[++corners] = x[i]; cornery[corners] = y[i]
		if (bulge[i] == 0) {
			side(x[i], y[i], x[j], y[j])
			continue
		}
		# the centre is (1 / bulge - bulge) / 4 chords to the left of the chord's middle
		c = (1 / bulge[i] - bulge[i]) / 4
		cx = (x[i] + x[j]) / 2 - (y[j] - y[i]) * c
		cy = (y[i] + y[j]) / 2 + (x[j] - x[i]) * c
		sweep = 4 * atan2(bulge[i], 1)
		px = x[i]; py = y[i]
		for (k = 1; k <= 64; k++) {
			c = cos(sweep * k / 64); s = sin(sweep * k / 64)
			qx = cx + (x[i] - cx) * c - (y[i] - cy) * s
			qy = cy + (x[i] - cx) * s + (y[i] - cy) * c
			side(px, py, qx, qy)
			px = qx; py = qy
		}
	}
}

function off_segment(px, py, x1, y1, x2, y2,    dx, dy, t) {
	dx = x2 - x1; dy = y2 - y1
	t = dx * dx + dy * dy > 0 ? ((px - x1) * dx + (py - y1) * dy) / (dx * dx + dy * dy) : 0
	t = t < 0 ? 0 : t > 1 ? 1 : t
	return hypot(px - x1 - t * dx, py - y1 - t * dy)
}

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
