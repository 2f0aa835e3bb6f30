#!/bin/sh
# The PDFs of the demo jobs, read back by programs we did not write.
. tests/tap.sh

out=$TMPDIR/out
again=$TMPDIR/again

draw() { # FOLDER
	for job in jobs/*.yaml; do
		"$PITCHBOARD" draw -q -o "$1" "$job" || [ $? = 1 ] || return
	done
}

# every COMMAND...: for each PDF, given as last argument; says which fail.
every() {
	faults=0
	for pdf in "$out"/*.pdf; do
		"$@" "$pdf" || {
			echo "$(basename "$pdf"): $*"
			faults=1
		}
	done
	return $faults
}

pages() { # PDF
	pdfinfo "$1" | sed -n 's/^Pages: *//p'
}

labels() { # PDF
	qpdf --json=2 --json-key=pages "$1" | jq -r '.pages[].label |
		(.["/P"] // "" | ltrimstr("u:")) + (if .["/S"] then .["/St"] | tostring else "" end)'
}

bookmarks() { # PDF: page, tab, title
	qpdf --json=2 --json-key=outlines "$1" |
		jq -r '.outlines[] | "\(.destpageposfrom1)\t\(.title)"'
}

is_sound() {
	qpdf --check "$1" >"$TMPDIR/qpdf" 2>&1 && ! grep -i 'warning' "$TMPDIR/qpdf"
}

# What is wrong inside a page only shows when it is drawn.
draws_without_complaint() {
	pdftoppm -r 20 "$1" "$TMPDIR/page" 2>"$TMPDIR/said"
	mutool draw -q -r 20 -o "$TMPDIR/page.png" "$1" 2>>"$TMPDIR/said"
	! grep -v "ICC support is not available" "$TMPDIR/said"
}

embeds_every_font() { # in columns emb, sub and uni, before the two of the object's number
	pdffonts "$1" | awk '
		NR > 2 { fonts++; if ($(NF-4) $(NF-3) $(NF-2) != "yesyesyes") { print; bad++ } }
		END { exit bad || !fonts }'
}

holds_no_picture() {
	[ "$(pdfimages -list "$1" | wc -l)" -eq 2 ]
}

labels_every_page() {
	[ "$(labels "$1" | grep -c .)" = "$(pages "$1")" ]
}

bookmarks_every_page_by_its_label() {
	labels "$1" | awk '{ print NR "\t" $0 " " }' >"$TMPDIR/labels"
	bookmarks "$1" >"$TMPDIR/bookmarks"
	[ "$(wc -l <"$TMPDIR/bookmarks")" = "$(pages "$1")" ] && awk -F'\t' '
		NR == FNR { label[$1] = $2; next }
		index($2, label[$1]) != 1 { print; bad++ }
		END { exit bad }' "$TMPDIR/labels" "$TMPDIR/bookmarks"
}

says_what_it_is() {
	pdfinfo -rawdates "$1" >"$TMPDIR/info" && grep -q '^Title:  *[^ ]' "$TMPDIR/info" &&
		grep -q '^Author:  *[^ ]' "$TMPDIR/info" && grep -q '^Tagged:  *yes' "$TMPDIR/info" &&
		grep -Eq '^CreationDate:  *D:[0-9]{14}Z$' "$TMPDIR/info" &&
		[ "$(mutool show "$1" trailer/Root/Lang)" = '(en-US)' ] &&
		[ "$(mutool show "$1" trailer/Root/ViewerPreferences/DisplayDocTitle)" = true ]
}

# Full size: what has a page called a template, or the page that tries the printer.
asks_for_actual_size_if_full_size() {
	scaling=$(mutool show "$1" trailer/Root/ViewerPreferences/PrintScaling)
	case $(basename "$1") in
	*-roll.pdf | *-tiles.pdf | *-step.pdf | *-rods.pdf | *-small.pdf) [ "$scaling" = /None ] ;;
	*) [ "$scaling" = null ] ;;
	esac
}

# 14,400 points or 200 inches: no reader has to take more (ISO 32000-1, annex C; from memory).
has_no_page_over_200_inches() {
	pdfinfo -l -1 "$1" | awk '/^Page.* size:/ { n++; if ($4 > 14400 || $6 > 14400) bad++ }
		END { exit bad || !n }'
}

# A roll is cut where a template ends, so its pages are as long as what is on them.
is_of_one_page_size() {
	case $1 in *-roll.pdf) return 0 ;; esac
	[ "$(pdfinfo -l -1 "$1" | awk '/^Page.* size:/ { print $4, $6 }' | sort -u | wc -l)" = 1 ]
}

says_every_word_of_its_drawings() {
	bookmarks "$1" >"$TMPDIR/bookmarks"
	pdftotext -raw "$1" "$TMPDIR/text"
	awk -f tests/emitted/words.awk "$TMPDIR/dump" "$TMPDIR/bookmarks" "$TMPDIR/text"
}

every_word_is_found() {
	faults=0
	for job in jobs/*.yaml; do
		"$PITCHBOARD" draw --dump=drawing "$job" >"$TMPDIR/dump" 2>/dev/null
		for pdf in "$out/$(basename "$job" .yaml)"*.pdf; do
			says_every_word_of_its_drawings "$pdf" || faults=1
		done
	done
	return $faults
}

# What a reader types to find a client: one name in letters of two fonts.
a_name_in_two_fonts_is_found_whole() {
	for name in Łukasz Ősz Đorđević; do
		sed "s/^\( *client:\).*/\1 $name/" jobs/alder-lane.yaml >"$TMPDIR/named.yaml"
		"$PITCHBOARD" draw -q -o "$TMPDIR/named" "$TMPDIR/named.yaml" 2>/dev/null
		pdftotext "$TMPDIR/named/named.pdf" - | grep -qw "$name" || {
			echo "not found: $name"
			return 1
		}
	done
}

# 1: round, in ISO 32000-1, 8.4.3.3 and 8.4.3.4.
strokes_end_and_turn_round() {
	mutool trace "$1" >"$TMPDIR/trace" && grep -q '<stroke_path' "$TMPDIR/trace" &&
		! grep '<stroke_path' "$TMPDIR/trace" |
		grep -v 'linecap="1,1,1" linejoin="1"' | head -1 | grep .
}

hidden_edges_are_broken() {
	mutool trace "$out/alder-lane.pdf" | grep '<stroke_path' | grep -q 'dash="'
}

two_runs_give_the_same_bytes() {
	draw "$again" && diff -rq "$out" "$again"
}

check 'the demo jobs are drawn' draw "$out"
check 'every PDF is sound to qpdf' every is_sound
check 'poppler and mupdf draw every page without a complaint' every draws_without_complaint
check 'every font is embedded, cut down and can be searched' every embeds_every_font
check 'nothing is a picture of points' every holds_no_picture
check 'every page is labelled' every labels_every_page
check 'every page is bookmarked by its label' every bookmarks_every_page_by_its_label
check 'every PDF says title, author, date and language' every says_what_it_is
check 'full-size drawings and no others ask for actual size' every asks_for_actual_size_if_full_size
check 'no page is over 200 inches' every has_no_page_over_200_inches
check 'all pages of a PDF are one size' every is_of_one_page_size
check 'lines end and turn round: no spike at a sharp corner' every strokes_end_and_turn_round
check 'hidden edges are broken lines' hidden_edges_are_broken
check 'every word and figure is found by pdftotext' every_word_is_found
check 'a name in letters of two fonts is found whole' a_name_in_two_fonts_is_found_whole
check 'two runs give the same bytes' two_runs_give_the_same_bytes
plan
