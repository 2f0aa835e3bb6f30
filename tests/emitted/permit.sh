#!/bin/sh
# The permit sets of two demo jobs against each demand of building departments, read back by
# programs we did not write.  Demands: what towns publish for plans and for electronic submittals
# (landscape, one size, vector, searchable, flattened, no password, 6 in clear for a stamp in the
# same place on every sheet, bookmarks and labels by unique sheet ids, index, scale and bar,
# address and names on every sheet; common practice where two of them differ).
. tests/tap.sh

out=$TMPDIR/out

"$PITCHBOARD" draw -q --set permit -o "$out" jobs/alder-lane.yaml jobs/kiln-yard.yaml ||
	[ $? = 1 ] || exit 3

alder=$out/alder-lane-permit.pdf
kiln=$out/kiln-yard-permit.pdf

both() { # COMMAND...: for each PDF, given as last argument
	for pdf in "$alder" "$kiln"; do
		"$@" "$pdf" || {
			echo "$(basename "$pdf"): $*"
			return 1
		}
	done
}

pages() { # PDF
	pdfinfo "$1" | sed -n 's/^Pages: *//p'
}

bookmarks() { # PDF: page, tab, title
	qpdf --json=2 --json-key=outlines "$1" |
		jq -r '.outlines[] | "\(.destpageposfrom1)\t\(.title)"'
}

labels() { # PDF
	qpdf --json=2 --json-key=pages "$1" | jq -r '.pages[].label |
		(.["/P"] // "" | ltrimstr("u:")) + (if .["/S"] then .["/St"] | tostring else "" end)'
}

page_text() { # PDF PAGE
	pdftotext -raw -f "$2" -l "$2" "$1" - | tr '\n' ' '
}

pages_of() { # PDF TITLE: the pages whose bookmarks have it
	bookmarks "$1" | sed -n "s/^\([0-9]*\)	[^ ]* $2\$/\1/p"
}

page_of() { # PDF TITLE: the first of them
	pages_of "$1" "$2" | head -1
}

# ---- the file ----

is_one_size_lying() {
	pdfinfo -l -1 "$1" | awk '/^Page.* size:/ { n++; sizes[$4 " " $6]; if ($4 <= $6) bad++ }
		END { for (s in sizes) k++; exit bad || !n || k != 1 }'
}

is_no_smaller_than_11_by_17() { # in points
	pdfinfo "$1" | awk '/^Page size:/ { exit !($3 > 1190 && $5 > 791) }'
}

has_no_pictures() {
	[ "$(pdfimages -list "$1" | wc -l)" -eq 2 ]
}

can_be_searched() {
	pdffonts "$1" | awk 'NR > 2 { n++; if ($(NF-4) $(NF-2) != "yesyes") bad++ }
		END { exit bad || !n }'
}

is_flattened() { # no layers, no forms, no scripts
	[ "$(mutool show "$1" trailer/Root/OCProperties)" = null ] &&
		[ "$(mutool show "$1" trailer/Root/AcroForm)" = null ] &&
		[ "$(mutool show "$1" trailer/Root/OpenAction)" = null ]
}

has_no_annotations() { # and so no links, for portals that refuse them
	! qpdf --json=2 --json-key=qpdf "$1" | grep -q '"/Annots"'
}

is_open_to_all() {
	qpdf --is-encrypted "$1"
	[ $? = 2 ]
}

is_grey() {
	mutool trace "$1" | sed -n 's/.*color="\([^"]*\)".*/\1/p' | sort -u | awk '
		{ n++; for (i = 2; i <= NF; i++) if ($i != $1) bad++ }
		END { exit bad || !n }'
}

has_a_short_name() {
	name=$(basename "$1" .pdf)
	[ "${#name}" -le 60 ] && ! echo "$name" | grep -q '[^A-Za-z0-9-]'
}

# ---- sheets ----

ids_are_unique() {
	labels "$1" >"$TMPDIR/labels"
	[ "$(grep -c . "$TMPDIR/labels")" = "$(pages "$1")" ] &&
		[ -z "$(sort "$TMPDIR/labels" | uniq -d)" ] && ! grep -v '^S-[0-9]*$' "$TMPDIR/labels"
}

bookmarks_are_ids_and_titles() {
	bookmarks "$1" | sed 's/^[0-9]*	\([^ ]*\) ..*/\1/' >"$TMPDIR/marked"
	labels "$1" | cmp - "$TMPDIR/marked"
}

index_names_every_sheet() {
	page_text "$1" 1 >"$TMPDIR/index"
	bookmarks "$1" | sed 1d | cut -f 2 | while read -r sheet; do
		grep -qF "$sheet" "$TMPDIR/index" || {
			echo "not in the index: $sheet"
			exit 1
		}
	done
}

counts_its_sheets() {
	n=$(pages "$1")
	for i in $(seq "$n"); do
		page_text "$1" "$i" | grep -qF "$i of $n" || return 1
	done
}

says_on_every_sheet() { # WORDS PDF
	for i in $(seq "$(pages "$2")"); do
		page_text "$2" "$i" | grep -qF "$1" || {
			echo "sheet $i lacks: $1"
			return 1
		}
	done
}

has_scale_and_bar() { # PDF
	for view in Plan 'Section A-A'; do
		page=$(page_of "$1" "$view")
		page_text "$1" "$page" >"$TMPDIR/text"
		grep -Eq "= 1'-0\"|1:[0-9]+" "$TMPDIR/text" && grep -q ' ft' "$TMPDIR/text" &&
			grep -q ' mm' "$TMPDIR/text" || return 1
	done
}

resubmits_the_same_sheets() { # another run: every sheet again, under its old id
	sed 's/^  total_rise: 2800/  total_rise: 2790/' jobs/kiln-yard.yaml >"$TMPDIR/kiln-yard.yaml"
	"$PITCHBOARD" draw -q --set permit -o "$TMPDIR/again" "$TMPDIR/kiln-yard.yaml" || [ $? = 1 ]
	bookmarks "$TMPDIR/again/kiln-yard-permit.pdf" >"$TMPDIR/later"
	! cmp -s "$TMPDIR/again/kiln-yard-permit.pdf" "$kiln" || return 1
	bookmarks "$kiln" | cmp - "$TMPDIR/later"
}

# ---- the stamp ----

# The pixels of a piece of every page, at 10 to the millimetre; millimetres from the upper left
# corner.  Prints the shades that there are, 0 to 255.
shades() { # PDF X Y WIDTH HEIGHT
	w=$(($4 * 10)) h=$(($5 * 10))
	pdftoppm -gray -r 254 -x $(($2 * 10)) -y $(($3 * 10)) -W $w -H $h "$1" "$TMPDIR/stamp"
	for page in "$TMPDIR"/stamp*.pgm; do
		tail -c $((w * h)) "$page"
		rm "$page"
	done | od -An -v -tu1 -w1 | sort -n -u
}

# Alder Lane is on 17 x 11 in, 431.8 x 279.4 mm: frame 12.7 mm in, title block of 180 x 38 mm in its
# corner, beside it 152.4 mm, from x = 86.7 to 239.1; down from y = 228.7, with 5 mm for words.
stamp_is_clear() {
	[ "$(shades "$alder" 87 234 151 32 | tr -d ' \n')" = 255 ]
}

letters_in_it_would_be_noticed() { # the strip for the words over it
	[ "$(shades "$alder" 87 229 60 4 | head -1)" -lt 128 ]
}

stamp_has_its_edge() { # SIDE: a line there, on the first page as on the last
	for page in 1 "$(pages "$alder")"; do
		qpdf "$alder" --pages . "$page" -- "$TMPDIR/page.pdf"
		[ "$(shades "$TMPDIR/page.pdf" "$1" 240 2 10 | head -1)" -lt 128 ] || return 1
	done
}

# ---- what it shows ----

shows() { # TITLE PATTERN PDF: on the sheets of that title
	for page in $(pages_of "$3" "$1"); do
		page_text "$3" "$page"
	done | tr '\n' ' ' | grep -Eq "$2" || {
		echo "$1 lacks $2"
		return 1
	}
}

never_says() { # PATTERN PDF
	! pdftotext -raw "$2" - | grep -Ei "$1"
}

check 'one page size, lying' both is_one_size_lying
check 'no smaller than 11 x 17 in' is_no_smaller_than_11_by_17 "$alder"
check 'vector: no picture of points' both has_no_pictures
check 'fonts embedded, text can be searched' both can_be_searched
check 'flattened: no layers, forms or scripts' both is_flattened
check 'no annotations and no links' both has_no_annotations
check 'no password' both is_open_to_all
check 'greys only' both is_grey
check 'a short file name of plain letters' both has_a_short_name
check 'every sheet has an id of its own' both ids_are_unique
check 'bookmarks are sheet ids with titles, in order' both bookmarks_are_ids_and_titles
check 'the index names every sheet' both index_names_every_sheet
check 'every sheet says which of how many it is' both counts_its_sheets
check 'site on every sheet' says_on_every_sheet '14 Alder Lane' "$alder"
check 'owner on every sheet' says_on_every_sheet 'M. Example' "$alder"
check 'who drew it, on every sheet' says_on_every_sheet 'P. Board' "$alder"
check 'date on every sheet' says_on_every_sheet '2026-11-02' "$alder"
check 'what it is for, on every sheet' both says_on_every_sheet 'For the building department.'
check 'plan and section with scale and bar' both has_scale_and_bar
check 'a later issue has the same sheets under the same ids' resubmits_the_same_sheets
check 'six inches for a stamp: nothing in it on any sheet' stamp_is_clear
check 'letters in it would be noticed' letters_in_it_would_be_noticed
check 'its left edge is in the same place on the first sheet and the last' stamp_has_its_edge 86
check 'its right edge too' stamp_has_its_edge 238
check 'plan: direction and risers' both shows Plan 'UP 1[46]R'
check 'plan: clear width at the rail and over it' both shows Plan \
	'clear .*at the rail.*clear .*over the rail'
check 'plan: landings, known' shows Plan "landing 4'-2\"" "$alder"
check 'plan: landings, marked as not known' shows Plan 'Landing at the foot: depth NOT KNOWN' "$kiln"
check 'plan: where north is' shows Plan ' N ' "$alder"
check 'plan: or that it is not given' shows Plan 'Orientation not given' "$kiln"
check 'section: risers' shows 'Section A-A' "14 @ 7 5/8\"" "$alder"
check 'section: treads' shows 'Section A-A' "13 @ 10\"" "$alder"
check 'section: nosing' shows 'Section A-A' "nosings 1 1/8\"" "$alder"
check 'section: total rise' shows 'Section A-A' "8'-11\" total rise" "$alder"
check 'section: headroom line and where it is least' both shows 'Section A-A' \
	'headroom line, .* over the nosing line'
check 'section: floor build-up' shows 'Section A-A' "finish 3/4\" on structure" "$alder"
check 'section: rail height' both shows 'Section A-A' 'rail (36"|900)'
check 'guard: balls with measure, limit and section' shows 'Guards and balls' \
	"3 3/4\" less than 4 3/8\" R312.1.3" "$alder"
check 'handrail: perimeter and what is asked' shows 'Guards and handrails, details' \
	"Perimeter 8 13/16\"; asked at least 4\"" "$alder"
check 'handrail: clearance to the wall' shows 'Guards and handrails, details' \
	"Wall to rail 1 7/8\"" "$alder"
check 'handrail: returns' shows 'Guards and handrails, details' 'returns to the wall' "$alder"
check 'fixings: stringers, newel, rail, baluster' both shows 'Typical fixings' \
	'Foot of the stringers.*Head of the stringers.*Foot of newel.*Rail to newel.*baluster'
check 'code table with edition, limit, provided and section' shows 'Code table' \
	'International Residential Code, 2021.*R311.7.5.1' "$alder"
check 'notes: loads asked, not checked here' shows 'General notes' \
	'200 lb.*Not checked here' "$alder"
check 'notes: by others, existing and new, cautions' both shows 'General notes' \
	'By others.*Existing and new.*Cautions'
check 'it never says that anything is approved or complies' both never_says \
	'approved[^ ]|is approved|compli|is safe'
plan
