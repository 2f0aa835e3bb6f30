# What the comparisons of drawn lines with the model share:
#
#   awk -f model.awk -f COMPARISON.awk ...
#
# Outlines as `pitchboard draw --dump parts` prints them become sides ax,ay to bx,by; where a corner
# of the text stands is kept in cornerx, cornery, the lower left of them all in mx, my.  With
# mirrored=1 they are seen from behind.

function fail(what) { print what; faults++ }

function abs(x) { return x < 0 ? -x : x }

function hypot(x, y) { return sqrt(x * x + y * y) }

BEGIN { mx = my = 1e9 }

function side(x1, y1, x2, y2) {
	sides++
	ax[sides] = x1; ay[sides] = y1; bx[sides] = x2; by[sides] = y2
	if (x2 < mx) mx = x2
	if (y2 < my) my = y2
}

# Corners "x,y" or "x,y~bulge"; an arc is taken as straight pieces, far finer than what is compared.
function outline(text,    n, i, j, k, at, part, x, y, bulge, sweep, cx, cy, c, s, px, py, qx, qy) {
	n = split(text, at, " ")
	for (i = 1; i <= n; i++) {
		k = split(at[i], part, /[,~]/)
		x[i] = part[1] * (mirrored ? -1 : 1); y[i] = part[2] + 0
		bulge[i] = k > 2 ? part[3] * (mirrored ? -1 : 1) : 0
		corners++
		cornerx[corners] = x[i]; cornery[corners] = y[i]
	}
	for (i = 1; i <= n; i++) {
		j = i % n + 1
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

# A point off a straight line between two others.
function off_segment(px, py, x1, y1, x2, y2,    dx, dy, t) {
	dx = x2 - x1; dy = y2 - y1
	t = dx * dx + dy * dy > 0 ? ((px - x1) * dx + (py - y1) * dy) / (dx * dx + dy * dy) : 0
	t = t < 0 ? 0 : t > 1 ? 1 : t
	return hypot(px - x1 - t * dx, py - y1 - t * dy)
}
