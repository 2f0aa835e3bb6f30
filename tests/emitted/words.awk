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

# pdftotext takes lettering on a slant apart into letters: that is found without its blanks.
function is_found(found, unspaced, text, slants) {
	if (index(found, " " text " "))
		return 1
	gsub(/ /, "", text)
	return slants && index(unspaced, text)
}

function look(page, found,    i, heading, unspaced) {
	heading = title[page]
	found = unspaced = squeezed(found " ")
	gsub(/ /, "", unspaced)
	if (!(heading in count)) {
		print "page " page ": no drawing is called \"" heading "\""
		missing++
	}
	for (i = 1; i <= count[heading]; i++) {
		looked++
		if (is_found(found, unspaced, text[heading, i], slants[heading, i]))
			continue
		print "page " page ", " heading ": not found: " text[heading, i]
		missing++
	}
}
