# Joins the full-size template of one stringer again from a PDF, as a user would, and compares it
# with the model.
#
#   awk -f model.awk -f templates.awk -v mark=S1 -v mirrored=0 [-v long_x=1.01 -v long_y=0.99] \
#       PARTS LABELS PATHS
#
# PARTS is what `pitchboard draw --dump parts` says, LABELS the PDF's page labels, a line a page,
# and PATHS the lines on its pages (paths.awk).  A page is placed by nothing but what is printed
# on it: its name says which sheets lie beside it, and the crosses it shares with them say where.
# long_x, long_y: the printer draws that many times too long, and the pages are corrected for it.
# Prints what is wrong; the status is 0 when the line to cut agrees within 0.02 mm.

BEGIN {
	if (!long_x) long_x = 1
	if (!long_y) long_y = 1
}

# --- the model ---

FILENAME == ARGV[1] {
	if ($0 ~ /^[^ ]/)
		mine = $1 == mark
	# a block that a riser is bent round is sawn to its core
	if (mine && $1 == "core")
		corners = sides = 0
	if (mine && ($1 == "outline" || $1 == "core")) {
		sub(/^ *(outline|core) /, "")
		outline($0)
		own = corners; own_sides = sides
	}
	in_groove = mine && $1 == "at" && was_groove
	was_groove = mine && $1 == "groove:"
	if (in_groove) {
		sub(/^ *at /, "")
		outline($0)
	}
	next
}

FILENAME == ARGV[2] {
	name[FNR] = $0
	pages = FNR
	next
}

# --- the pages ---

function cut(x1, y1, x2, y2) {
	cuts++
	onpage[cuts] = page
	ux[cuts] = x1 * long_x; uy[cuts] = y1 * long_y
	vx[cuts] = x2 * long_x; vy[cuts] = y2 * long_y
}

function guide(x1, y1, x2, y2) {
	if (abs(y1 - y2) < 0.002 && abs(abs(x1 - x2) - 10) < 0.004)
		level[page, ++levels[page]] = (x1 + x2) / 2 " " (y1 + y2) / 2
	if (abs(x1 - x2) < 0.002 && abs(abs(y1 - y2) - 10) < 0.004)
		upright[page, ++uprights[page]] = (x1 + x2) / 2 " " (y1 + y2) / 2
}

FILENAME == ARGV[3] {
	page = $1
	for (i = 4; i <= NF; i++) {
		split($(i - 1), p, ","); split($i, q, ",")
		if ($2 == 0.25)
			cut(p[1], p[2], q[1], q[2])
		else
			guide(p[1], p[2], q[1], q[2])
	}
}

# --- joining ---

# Where a level and an upright arm of 10 mm have one middle, there is a cross.
function find_crosses(p,    i, j, a, b) {
	for (i = 1; i <= levels[p]; i++)
		for (j = 1; j <= uprights[p]; j++) {
			split(level[p, i], a, " "); split(upright[p, j], b, " ")
			if (hypot(a[1] - b[1], a[2] - b[2]) > 0.01)
				continue
			crosses[p]++
			crossx[p, crosses[p]] = a[1] * long_x
			crossy[p, crosses[p]] = a[2] * long_y
		}
}

# The two crosses furthest to one side (dx, dy), the lower or left one first.
function pair(p, dx, dy,    i, far, n, t) {
	far = -1e9
	for (i = 1; i <= crosses[p]; i++)
		if (crossx[p, i] * dx + crossy[p, i] * dy > far)
			far = crossx[p, i] * dx + crossy[p, i] * dy
	n = 0
	for (i = 1; i <= crosses[p]; i++)
		if (abs(crossx[p, i] * dx + crossy[p, i] * dy - far) < 0.01) {
			n++
			pairx[n] = crossx[p, i]; pairy[n] = crossy[p, i]
		}
	if (n == 2 && pairx[1] + pairy[1] > pairx[2] + pairy[2]) {
		t = pairx[1]; pairx[1] = pairx[2]; pairx[2] = t
		t = pairy[1]; pairy[1] = pairy[2]; pairy[2] = t
	}
	return n
}

# Lays page q at side (dx, dy) of page p, which is placed: both its crosses must fall on p's.
function join_page(p, q, dx, dy,    x1, y1, x2, y2) {
	if (pair(p, dx, dy) != 2) {
		fail(name[p] ": no two crosses toward " name[q])
		return
	}
	x1 = pairx[1]; y1 = pairy[1]; x2 = pairx[2]; y2 = pairy[2]
	if (pair(q, -dx, -dy) != 2) {
		fail(name[q] ": no two crosses toward " name[p])
		return
	}
	if (hypot(x2 - x1 - pairx[2] + pairx[1], y2 - y1 - pairy[2] + pairy[1]) > 0.005)
		fail(name[p] " and " name[q] ": crosses differently far apart")
	if (q in placed) {
		if (hypot(offx[p] + x1 - pairx[1] - offx[q], offy[p] + y1 - pairy[1] - offy[q]) > 0.02)
			fail(name[q] ": does not meet " name[p])
		return
	}
	placed[q] = 1
	offx[q] = offx[p] + x1 - pairx[1]
	offy[q] = offy[p] + y1 - pairy[1]
	joined++
}

function column_of(p,    letters) {
	letters = name[p]
	gsub(/^.*\/|[0-9]*$/, "", letters)
	if (length(letters) == 1)
		return index(alphabet, letters)
	return 26 * index(alphabet, substr(letters, 1, 1)) + index(alphabet, substr(letters, 2))
}

function row_of(p,    digits) {
	digits = name[p]
	gsub(/^.*[A-Z]/, "", digits)
	return digits + 0
}

function place_pages(    p, q, more) {
	alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
	for (p = 1; p <= pages; p++)
		if (name[p] ~ /\/[A-Z]+[0-9]+$/) {
			at[column_of(p), row_of(p)] = p
			find_crosses(p)
			sheets++
			if (sheets == 1)
				placed[p] = 1
		}
	if (!sheets) { # a roll: one page
		placed[1] = 1
		return
	}
	for (more = 1; more;) {
		more = joined
		for (p = 1; p <= pages; p++) {
			if (!(p in placed))
				continue
			if (q = at[column_of(p) + 1, row_of(p)]) join_page(p, q, 1, 0)
			if (q = at[column_of(p), row_of(p) + 1]) join_page(p, q, 0, -1)
			if ((q = at[column_of(p) - 1, row_of(p)]) && !(q in placed)) join_page(p, q, -1, 0)
			if ((q = at[column_of(p), row_of(p) - 1]) && !(q in placed)) join_page(p, q, 0, 1)
		}
		more = joined > more
	}
	if (joined != sheets - 1)
		fail(joined + 1 " of " sheets " sheets hang together")
}

# --- comparing ---

function bucket(x) { return int((x + 100000) / 50) }

# Lines are looked for in strips of 50 mm, or all would be compared with all.
function file_sides(    i, k) {
	for (i = 1; i <= sides; i++)
		for (k = bucket(least(ax[i], bx[i]) - 1); k <= bucket(-least(-ax[i], -bx[i]) + 1); k++)
			model_in[k, ++models[k]] = i
	for (i = 1; i <= cuts; i++)
		for (k = bucket(least(ux[i], vx[i]) - 1); k <= bucket(-least(-ux[i], -vx[i]) + 1); k++)
			drawn_in[k, ++drawns[k]] = i
}

function off_model(x, y,    k, n, i, d, best) {
	best = 1e9
	k = bucket(x)
	for (n = 1; n <= models[k]; n++) {
		i = model_in[k, n]
		d = off_segment(x, y, ax[i], ay[i], bx[i], by[i])
		if (d < best) best = d
	}
	return best
}

function off_drawn(x, y,    k, n, i, d, best) {
	best = 1e9
	k = bucket(x)
	for (n = 1; n <= drawns[k]; n++) {
		i = drawn_in[k, n]
		d = off_segment(x, y, ux[i], uy[i], vx[i], vy[i])
		if (d < best) best = d
	}
	return best
}

# Every page to its place, and the whole so that its lower left corner is the model's.
function move_cuts(    i, x0, y0, mx, my) {
	x0 = y0 = mx = my = 1e9
	for (i = 1; i <= cuts; i++) {
		ux[i] += offx[onpage[i]]; vx[i] += offx[onpage[i]]
		uy[i] += offy[onpage[i]]; vy[i] += offy[onpage[i]]
		x0 = least(x0, least(ux[i], vx[i])); y0 = least(y0, least(uy[i], vy[i]))
	}
	for (i = 1; i <= own; i++) {
		mx = least(mx, cornerx[i]); my = least(my, cornery[i])
	}
	for (i = 1; i <= cuts; i++) {
		ux[i] += mx - x0; vx[i] += mx - x0
		uy[i] += my - y0; vy[i] += my - y0
	}
}

function least(a, b) { return a < b ? a : b }

function compare(    i, k, d, n) {
	for (i = 1; i <= cuts; i++)
		if ((d = off_model(ux[i], uy[i])) > 0.02 || (d = off_model(vx[i], vy[i])) > 0.02)
			fail(name[onpage[i]] ": drawn " d " mm off the model")
	for (i = 1; i <= corners; i++)
		if ((d = off_drawn(cornerx[i], cornery[i])) > 0.02)
			fail("corner " cornerx[i] ", " cornery[i] ": " d " mm off what is drawn")
	# along the outline, every 40 mm or less
	for (i = 1; i <= own_sides; i++) {
		n = 1 + int(hypot(bx[i] - ax[i], by[i] - ay[i]) / 40)
		for (k = 0; k < n; k++)
			if (off_drawn(ax[i] + (bx[i] - ax[i]) * k / n, ay[i] + (by[i] - ay[i]) * k / n) > 0.02)
				fail("the outline is not drawn at side " i)
	}
}

END {
	place_pages()
	if (!own) fail("no stringer " mark " in the model")
	if (!cuts) fail("no line to cut")
	move_cuts()
	file_sides()
	compare()
	print own " corners, " sheets + 0 " sheets, " cuts " lines to cut"
	exit faults > 0
}
