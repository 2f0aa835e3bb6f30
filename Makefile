# pitchboard: the one build file, for GNU make.
#
#   make             the program and the library, into build/
#   make deps        install what building and testing need (Debian 12: as root, or through sudo)
#   make demo        draw the demo jobs into out/
#   make check       every test, under the sanitizers
#   make check-long  fuzzing for FUZZ_SECONDS a harness, and 20,000 random stairs
#   make bench       speed and memory, printed beside their targets
#   make lint        layout, static analysis and the house rules
#   make format      lay the sources out as .clang-format says
#   make bless       take what the program says now as golden; then read the diff
#   make install     PREFIX=/usr/local, DESTDIR for packagers; make uninstall takes it away
#   make clean
#
# B=FOLDER keeps the objects of another variant apart: the tests are built in build/san.
# Q= shows every command.

PREFIX       = /usr/local
B            = build
CFLAGS       = -O2 -g
FUZZ_SECONDS = 300
Q            = @
VERSION     := $(shell sed -n 's/.*VERSION "\(.*\)"/\1/p' include/pitchboard/version.h)

# By the shell, not by make: in `make deps demo` pkg-config is not there yet when this page is read.
PKGS   = cairo cairo-ft cairo-pdf freetype2 zlib yaml-0.1
CPP    = -D_POSIX_C_SOURCE=200809L -Iinclude -Isrc -Itests $$(pkg-config --cflags $(PKGS))
WARN   = -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion \
	-Wstrict-prototypes -Wmissing-prototypes -Wvla -Werror
HOUSE  = -std=c17 $(WARN) -ffp-contract=off -fPIC -MMD -MP $(CPP)
LIBS   = $$(pkg-config --libs $(PKGS)) -lm

# Each object of a job is an allocation of its own, or the arena hides overruns from the sanitizer.
SAN    = -O1 -g -fsanitize=address,undefined -fno-sanitize-recover=all -DARENA_BLOCK=0

SRC    = $(wildcard src/*/*.c)
LIBOBJ = $(patsubst src/%.c,$(B)/%.o,$(filter-out src/cli/%,$(SRC)))
CLIOBJ = $(patsubst src/%.c,$(B)/%.o,$(filter src/cli/%,$(SRC)))
UNIT   = $(patsubst %.c,$(B)/%,$(wildcard tests/*_test.c tests/sources/*_test.c))
RANDOM = $(B)/tests/random/random
SEEDS  = $(shell seq 2 1000 19002)
FUZZ   = reader run
SHELLTESTS = $(wildcard tests/*_test.sh tests/cli_*.sh tests/emitted/*.sh)
JOBS   = $(wildcard jobs/*.yaml)

# All cores, unless told otherwise.
ifeq ($(MAKELEVEL)$(filter -j% --jobs%,$(MAKEFLAGS)),0)
MAKEFLAGS += -j$(shell nproc)
endif

# In `make deps check` everything waits for the packages, however many jobs make runs at once.
AFTER_DEPS = $(filter deps,$(MAKECMDGOALS))

# $(call link,FLAGS): the prerequisites into the target.
define link
@echo '  link  $@'
$(Q)$(CC) $(CFLAGS) $(LDFLAGS) -o $@ $^ $(LIBS) $1
endef

# $(compile): the first prerequisite into the target.
define compile
@echo '  cc    $<'
@mkdir -p $(@D)
$(Q)$(CC) $(HOUSE) $(CFLAGS) -c -o $@ $<
endef

all: $(B)/pitchboard $(B)/libpitchboard.so

$(B)/pitchboard: $(CLIOBJ) $(B)/libpitchboard.a
	$(link)

# Made anew, so that no object of a file that is gone stays inside.
$(B)/libpitchboard.a: $(LIBOBJ)
	@rm -f $@
	$(Q)$(AR) rcs $@ $^

SHARED = -shared -Wl,-soname,libpitchboard.so.$(VERSION)
$(B)/libpitchboard.so: $(LIBOBJ)
	$(call link,$(SHARED))

$(B)/%.o: src/%.c | $(AFTER_DEPS)
	$(compile)

$(B)/tests/%.o: tests/%.c | $(AFTER_DEPS)
	$(compile)

$(UNIT): %: %.o $(B)/libpitchboard.a
	$(call link,-lcmocka)

$(RANDOM): $(patsubst %.c,$(B)/%.o,$(wildcard tests/random/*.c)) $(B)/libpitchboard.a
	$(link)

# A fuzz harness fed from files: the corpus as a test, without a fuzzer.
$(B)/tests/fuzz/replay_%: $(B)/tests/fuzz/replay.o $(B)/tests/fuzz/%.o $(B)/libpitchboard.a
	$(link)

$(B)/tests/fuzz/fuzz_%: $(B)/tests/fuzz/%.o $(B)/libpitchboard.a
	$(call link,-fsanitize=fuzzer)

$(B)/bench/%: $(B)/tests/bench/%.o $(B)/libpitchboard.a
	@mkdir -p $(@D)
	$(link)

.SECONDARY: # keep every object between two runs

demo: all
	$(B)/pitchboard draw -o out $(JOBS) || [ $$? = 1 ]

# Among the sanitizer's checks gcc 12 loses count of the lengths of texts, and warns without cause.
check: all
	@$(MAKE) --no-print-directory B=build/san CFLAGS='$(SAN) -Wno-format-truncation' run-tests

run-tests: $(B)/pitchboard $(UNIT) $(RANDOM) $(FUZZ:%=$(B)/tests/fuzz/replay_%)
	@PITCHBOARD=$(B)/pitchboard MAKEFLAGS= tests/run.sh $(UNIT) \
		$(foreach f,$(FUZZ),"$(B)/tests/fuzz/replay_$f tests/fuzz/corpus/*") \
		"$(RANDOM) 100 1" "$(RANDOM) 100 101" $(SHELLTESTS)

check-long: | $(AFTER_DEPS)
	@$(MAKE) --no-print-directory B=build/fuzz CC=clang WARN= run-fuzz \
		CFLAGS='$(SAN) -fsanitize=fuzzer-no-link'
	@$(MAKE) --no-print-directory B=build run-random

run-fuzz: $(FUZZ:%=$(B)/tests/fuzz/fuzz_%)
	@TEST_SECONDS=$$(($(FUZZ_SECONDS) + 60)) tests/run.sh \
		$(FUZZ:%="tests/fuzz/fuzz.sh $(FUZZ_SECONDS) $(B)/tests/fuzz/fuzz_%")

# In runs of a thousand, side by side: one after the other they take two hours and more.
run-random: $(RANDOM)
	@TEST_SECONDS=3600 tests/run.sh $(SEEDS:%="$(RANDOM) 1000 %")

bench: all $(B)/bench/plain $(B)/bench/best
	@tests/bench/bench.sh $(B)

lint: | $(AFTER_DEPS)
	tests/lint.sh "-std=c17 $(CPP)"

format:
	clang-format -i $$(find src include tests -name '*.[ch]')

bless: all
	@PITCHBOARD=$(B)/pitchboard tests/bless.sh

BIN  = $(DESTDIR)$(PREFIX)/bin
LIB  = $(DESTDIR)$(PREFIX)/lib
INC  = $(DESTDIR)$(PREFIX)/include/pitchboard
DATA = $(DESTDIR)$(PREFIX)/share/pitchboard
MAN  = $(DESTDIR)$(PREFIX)/share/man/man1

install: all
	install -d $(BIN) $(LIB)/pkgconfig $(INC) $(DATA) $(MAN)
	install -m 755 $(B)/pitchboard $(BIN)
	install -m 644 $(B)/libpitchboard.a $(LIB)
	install -m 755 $(B)/libpitchboard.so $(LIB)/libpitchboard.so.$(VERSION)
	ln -sf libpitchboard.so.$(VERSION) $(LIB)/libpitchboard.so
	install -m 644 include/pitchboard/*.h $(INC)
	sed 's|@PREFIX@|$(PREFIX)|; s|@VERSION@|$(VERSION)|' src/pitchboard.pc.in \
		>$(LIB)/pkgconfig/pitchboard.pc
	cp -R templates $(DATA)
	install -m 644 src/cli/pitchboard.1 $(MAN)

uninstall:
	rm -f $(BIN)/pitchboard $(LIB)/libpitchboard.* $(LIB)/pkgconfig/pitchboard.pc
	rm -f $(MAN)/pitchboard.1
	rm -rf $(INC) $(DATA)

clean:
	rm -rf build

DEBIAN = build-essential pkg-config libcairo2-dev libfreetype-dev zlib1g-dev libyaml-dev libcmocka-dev locales \
	qpdf poppler-utils mupdf-tools librsvg2-bin libxml2-utils jq \
	clang clang-format clang-tidy libclang-rt-14-dev cppcheck valgrind

deps:
	@tests/deps.sh $(DEBIAN)

.PHONY: all deps demo check run-tests check-long run-fuzz run-random bench lint format bless \
	install uninstall clean

-include $(shell find $(B) -name '*.d' 2>/dev/null)
