# The lines of a PDF as text, one a line:  PAGE WIDTH x,y x,y ...   in millimetres, y up.
#
#   mutool trace PDF | awk -f paths.awk
#
# A closed line ends in the point it began with.

function number(text, name) { # of an attribute
	if (!match(text, name "=\"[-0-9.e]*\""))
		return 0
	return substr(text, RSTART + length(name) + 2, RLENGTH - length(name) - 3) + 0
}

function flush() {
	if (points > 1)
		print page, width, line
	points = 0
	line = ""
}

function add(x, y) {
	line = line (points++ ? " " : "") sprintf("%.4f,%.4f", x, y)
}

/<page / {
	page = number($0, " number")
	match($0, /mediabox="[^"]*"/)
	split(substr($0, RSTART + 10, RLENGTH - 11), box, " ")
}

/<stroke_path / {
	width = number($0, "linewidth")
	match($0, /transform="[^"]*"/)
	split(substr($0, RSTART + 11, RLENGTH - 12), m, " ")
	width = int(width * m[1] * 25.4 / 72 * 100 + 0.5) / 100
	stroking = 1
}

stroking && /<(moveto|lineto) / {
	x = (m[1] * number($0, " x") + m[5]) * 25.4 / 72
	y = (box[4] - m[4] * number($0, " y") - m[6]) * 25.4 / 72 # y goes down in a trace
	if (/<moveto /) {
		flush()
		firstx = x; firsty = y
	}
	add(x, y)
}

stroking && /<closepath/ { add(firstx, firsty) }

/<\/stroke_path>/ {
	flush()
	stroking = 0
}
