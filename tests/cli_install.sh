#!/bin/sh
# Installed: everything where Linux users look for it, and working from wherever it was moved to.
. tests/tap.sh

stage=$TMPDIR/stage
moved=$TMPDIR/moved

installs_into_a_stage() {
	make -s install PREFIX=/usr DESTDIR="$stage"
}

everything_is_in_its_place() {
	for file in bin/pitchboard lib/libpitchboard.a lib/libpitchboard.so \
		lib/pkgconfig/pitchboard.pc include/pitchboard/job.h \
		share/pitchboard/templates/papers.yaml share/man/man1/pitchboard.1; do
		[ -e "$stage/usr/$file" ] || { echo "no $file"; return 1; }
	done
}

# With an empty environment, from another folder, and away from the source tree.
moved_it_finds_its_templates() {
	mv "$stage/usr" "$moved"
	(cd / && env -i "$moved/bin/pitchboard" new >"$TMPDIR/job.yaml" &&
		env -i "$moved/bin/pitchboard" draw -q -o "$TMPDIR/out" "$TMPDIR/job.yaml")
	ls "$TMPDIR"/out/*.pdf
}

a_program_builds_on_the_library() {
	cat >"$TMPDIR/use.c" <<-'END'
	#include <pitchboard/job.h>

	int main(void)
	{
		struct arena *a = arena_new();
		struct diags d;

		diags_init(&d, a, "job.yaml", "");
		const struct job *job = job_read(a, "", &d);
		int refused = !job && d.errors > 0;
		arena_free(a);
		return refused ? 0 : 1;
	}
	END
	flags=$(PKG_CONFIG_PATH=$moved/lib/pkgconfig pkg-config --static --cflags --libs \
		--define-variable=prefix="$moved" pitchboard) &&
		cc -o "$TMPDIR/use" "$TMPDIR/use.c" $flags &&
		LD_LIBRARY_PATH=$moved/lib "$TMPDIR/use"
}

uninstall_takes_all_of_it_away() {
	mv "$moved" "$stage/usr"
	make -s uninstall PREFIX=/usr DESTDIR="$stage"
	[ -z "$(find "$stage" -type f -o -type l)" ]
}

check 'make install fills a stage' installs_into_a_stage
check 'everything is in its place' everything_is_in_its_place
check 'moved elsewhere it finds its templates' moved_it_finds_its_templates
check 'a program builds on the installed library' a_program_builds_on_the_library
check 'make uninstall takes all of it away' uninstall_takes_all_of_it_away
plan
