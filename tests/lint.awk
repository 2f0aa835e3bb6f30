# The limits and the borders of the house, over the files named on the command line.

function fault(text)
{
	print FILENAME ":" FNR ": " text
	faults++
}

# The line without what stands in comments and in quotes.
function code_of(line,    bare, at)
{
	gsub(/"([^"\\]|\\.)*"/, "\"\"", line)
	bare = ""
	while (line != "") {
		at = index(line, in_comment ? "*/" : "/*")
		if (!in_comment)
			bare = bare (at ? substr(line, 1, at - 1) : line)
		if (!at)
			return bare
		line = substr(line, at + 2)
		in_comment = !in_comment
	}
	return bare
}

function belongs(pattern, room, words)
{
	if (code ~ pattern && FILENAME ~ /^(src|include)\// && FILENAME !~ "^src/" room)
		fault(words)
}

FNR == 1 { start = 0; in_comment = 0 }

{
	wide = $0
	gsub(/\t/, "        ", wide)
	if (length(wide) > 100)
		fault("over 100 columns")
	code = code_of($0)
}

FNR == 451 { fault("over 450 lines") }

/^\{/ { start = FNR }
/^\}/ {
	if (start && FNR - start - 1 > 60)
		fault("a function of " FNR - start - 1 " lines ends here")
	start = 0
}

code ~ /\/\// { fault("comments are /* */") }

{
	belongs("#include <(cairo|ft2build)", "write/", "Cairo and FreeType belong to src/write")
	belongs("#include <yaml", "read/", "YAML belongs to src/read")
	belongs("(^|[^a-z_])(malloc|calloc|realloc|strdup|strndup|asprintf)\\(", "base/arena.c",
		"memory comes from the arena")
	belongs("(^|[^a-z_])(printf|puts|putchar|exit|_exit|abort)\\(", "(cli/|base/arena.c)",
		"only the command line prints and exits")
	belongs("(^|[^a-z_])(time|clock|localtime|setlocale|rand|random)\\(", "nowhere/",
		"no clock, no locale, no chance")
}

END { exit faults > 0 }
