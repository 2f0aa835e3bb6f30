# Every text of a dump has to be found on its page:
#     awk -f words.awk DUMP BOOKMARKS TEXT
# DUMP       what `pitchboard draw --dump=drawing` prints
# BOOKMARKS  of one PDF: page, tab, title
# TEXT       of that PDF as pdftotext gives it, a form feed after every page
# Prints what is missing; the status is 0 when nothing is, and something was looked for.

FNR == 1 { file++ }

# drawing S-101 "Plan" 420 x 297    is bookmarked    S-101 Plan
file == 1 && /^drawing / {
	heading = $0
	sub(/^drawing /, "", heading)
	sub(/" [0-9.]+ x [0-9.]+$/, "", heading)
	sub(/ "/, " ", heading)
	count[heading] = 0
}

file == 1 && /^text / {
	slants[heading, count[heading] + 1] = $0 !~ /turned (0|-?1\.571|-?3\.142) "/
	sub(/^[^"]*"/, "")
	sub(/"$/, "")
	gsub(/^ +| +$/, "")
	text[heading, ++count[heading]] = squeezed($0)
}

file == 2 { title[$1 + 0] = substr($0, index($0, "\t") + 1) }

file == 3 {
	for (line = $0; i = index(line, "\f"); line = substr(line, i + 1)) {
		look(++page, found)
		found = ""
	}
	found = found " " line
}

END { exit missing || !looked }

function squeezed(s) {
	gsub(/[ \t\r]+/, " ", s)
	return s
}

# pdftotext takes lettering on a slant apart, but keeps its letters in their order: between two of
# them there may be one blank more, and before the first and after the last there is one.
function is_apart(found, text,    start, at, i, n) {
	gsub(/ /, "", text)
	n = length(text)
	for (start = 1; start < length(found); start++) {
		if (substr(found, start, 1) != " ")
			continue
		at = start + 1
		for (i = 1; i <= n && substr(found, at, 1) == substr(text, i, 1); i++)
			at += i < n && substr(found, at + 1, 1) == " " ? 2 : 1
		if (i > n && substr(found, at, 1) == " ")
			return 1
	}
	return 0
}

function is_found(found, text, slants) {
	return index(found, " " text " ") || (slants && is_apart(found, text))
}

function look(page, found,    i, heading) {
	heading = title[page]
	found = squeezed(found " ")
	if (!(heading in count)) {
		print "page " page ": no drawing is called \"" heading "\""
		missing++
	}
	for (i = 1; i <= count[heading]; i++) {
		looked++
		if (is_found(found, text[heading, i], slants[heading, i]))
			continue
		print "page " page ", " heading ": not found: " text[heading, i]
		missing++
	}
}
