#!/bin/sh
# What `sh .package/release` has made, as a stranger gets it:
#   sh tests/package/run.sh [PACKAGES]
# PACKAGES (default: build/packages) has the .deb, the .tar.gz, the list of what is in them and SHA256SUMS. A bare Debian 12 is made
# below /var/tmp, with root; there the .deb is installed, used and removed, and the archive unpacked and used. Lintian looks at the
# .deb. The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
. "$project/examples/prepare.sh"
packages=$(CDPATH='' cd -- "${1:-$project/build/packages}" && pwd)
[ "$(id -u)" -eq 0 ] || { echo "This needs root: a bare Debian is made and entered." >&2; exit 2; }
install_missing debootstrap lintian python3 mandoc

work=$(mktemp -d /var/tmp/sheerpole-package-XXXXXX)
bare=$work/bare
cleanup() {
  umount "$bare/proc" 2>/dev/null || true
  rm -rf --one-file-system "$work"
}
trap cleanup EXIT
trap 'exit 1' INT TERM
passed=0
failed=0

# try WORDS COMMAND...: counts whether the command does well, and shows what it said when it does not.
try() {
  words=$1
  shift
  if "$@" >"$work/said" 2>&1; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1))
    echo "not so: $words"
    tail -n 30 "$work/said"
  fi
}

# there COMMAND: runs it in the bare Debian, as a stranger has it: no locale of ours and no variable.
there() { chroot "$bare" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root TERM=dumb LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive sh -c "$1"; }

only() { [ $# -eq 1 ] && [ -f "$1" ] && echo "$1" || { echo "there is to be one, and there is: $*" >&2; exit 2; }; }
deb=$(only "$packages"/*.deb)
archive=$(only "$packages"/*.tar.gz)
bill=$(only "$packages"/*.spdx.json)

sums_hold() { (cd "$packages" && sha256sum --quiet -c SHA256SUMS); }
bill_is_well_formed() { python3 -B "$project/.package/bill.py" --check "$bill"; }
# Nothing but overrides that stand with their reason, and no error.
lintian_is_content() { lintian --fail-on error --tag-display-limit 0 "$deb"; }

echo "Making a bare Debian 12 in $bare"
debootstrap --variant=minbase bookworm "$bare" >"$work/debootstrap.log" 2>&1 || { tail "$work/debootstrap.log"; echo "0 passed, 1 failed"; exit 1; }
mount -t proc proc "$bare/proc"
cp "$deb" "$bare/root/sheerpole.deb"
cp "$archive" "$bare/root/sheerpole.tar.gz"

# What a user's machine has beside: the completions' loader, man, and the shells.
there 'apt-get update -qq && apt-get install -y -qq --no-install-recommends man-db bash-completion zsh fish' >"$work/apt.log" 2>&1 || tail "$work/apt.log"
# Slim machines throw pages of the manual away; this one is asked for them.
rm -f "$bare/etc/dpkg/dpkg.cfg.d/docker" "$bare/etc/dpkg/dpkg.cfg.d/excludes"
there 'find / -xdev -path /proc -prune -o -path /root -prune -o -print | sort' >"$work/before"

try "the sums hold" sums_hold
try "the list of what is in it is SPDX 2.3" bill_is_well_formed
try "lintian finds no error" lintian_is_content

installs() { there 'apt-get install -y --no-install-recommends /root/sheerpole.deb'; }
try "it installs with what it depends on" installs
says_its_version() { there 'sheerpole version' | grep -x "sheerpole $(dpkg-deb -f "$deb" Version)"; }
try "it says the version of the package" says_its_version
names_its_commit() { there 'sheerpole version' | grep -Ex 'commit [0-9a-f]{40}'; }
try "it names a commit from which nothing differed" names_its_commit
nothing_missing() { there '! ldd /usr/bin/sheerpole-pdf | grep "not found"'; }
try "every library is there that it loads" nothing_missing
makes_papers() { there 'cd /root && cp -r /usr/share/sheerpole/examples . && cd examples && sheerpole build pellimoor.rig --into /root/papers --pdf && test -s /root/papers/cut-list.txt && head -c 5 /root/papers/bench-cards.pdf | grep -q %PDF-'; }
try "it makes all papers of an example, PDFs too" makes_papers
every_example() { there 'cd /root/examples && for boat in *.rig; do sheerpole check --form lines "$boat" || exit 1; done'; }
try "every example that it brings is without an error" every_example
begins() { there 'cd /root && sheerpole begin new.rig --boat Tern --mast-height "12.5 m" --beam "3.2 m" --base "4 m" && sheerpole check new.rig'; }
try "a first file begins" begins

# The manual: a page for the program, for sheerpole-pdf, for each command; man finds and sets it, mandoc finds no error in it.
manual() { there 'for page in sheerpole sheerpole-pdf $(sheerpole help | sed -n "/^Commands:/,/^$/s/^  \([a-z][a-z]*\) .*/sheerpole-\1/p"); do test -n "$(MANPAGER=cat man -P cat "$page")" || { echo "$page"; exit 1; }; done'; }
try "every command has a page of the manual" manual
manual_well_formed() { for page in "$bare"/usr/share/man/man1/sheerpole*.gz; do zcat "$page" | mandoc -T lint -W error || return 1; done; }
try "mandoc finds no error in them" manual_well_formed

bash_completes() { there 'bash -c ". /usr/share/bash-completion/bash_completion; _completion_loader sheerpole; COMP_WORDS=(sheerpole che); COMP_CWORD=1; COMP_LINE=\"sheerpole che\"; COMP_POINT=13; \$(complete -p sheerpole | sed \"s/.*-F \([^ ]*\).*/\1/\") sheerpole che sheerpole; printf \"%s\n\" \"\${COMPREPLY[@]}\" | grep -x \"check *\""'; }
try "bash completes a command" bash_completes
zsh_knows() { there 'zsh -fc "autoload -Uz compinit && compinit -D && (( \$+_comps[sheerpole] ))"'; }
try "zsh knows of the completion" zsh_knows
fish_completes() { there 'fish -c "complete -C \"sheerpole che\"" | grep "^check"'; }
try "fish completes a command" fish_completes

# The page: the same in both packages and beside them, and found without being named.
page() { there 'cd /root/examples && sheerpole page smidgeon.rig --into /root/smidgeon.html && test -s /root/smidgeon.html' && cmp "$packages/sheerpole.html" "$bare/usr/share/sheerpole/sheerpole.html"; }
try "the offline page is there, and a boat is put into it" page

# Licences: of everything that the list names there is a text, and the copyright file names it.
licences() {
  python3 - "$bill" "$bare/usr/share/doc/sheerpole" <<'PYTHON'
import json, pathlib, sys
bill, doc = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8")), pathlib.Path(sys.argv[2])
names = [package["name"] for package in bill["packages"] if package["name"] != "sheerpole"]
copyright = (doc / "copyright").read_text(encoding="utf-8")
lacking = [name for name in names if not (doc / "licences" / f"{name}.txt").exists() or f"  {name}: " not in copyright]
assert names and not lacking, lacking
assert json.loads((doc / "sheerpole.spdx.json").read_text(encoding="utf-8")) == bill, "the installed list is another"
PYTHON
}
try "every licence is there" licences
links_lead_somewhere() {
  python3 - "$bare/usr/share/doc/sheerpole/docs" <<'PYTHON'
import pathlib, re, sys
docs, faults = pathlib.Path(sys.argv[1]), []
for page in docs.rglob("*.md"):
    for link in re.findall(r"\]\(([^)#:\s]+)(?:#[^)]*)?\)", page.read_text(encoding="utf-8")):
        target = (page.parent / link).resolve()
        if target.is_relative_to(docs.resolve()) and not target.exists():
            faults.append(f"{page}: {link}")
assert not faults, faults
PYTHON
}
try "links among the installed documents lead somewhere" links_lead_somewhere

unpacks() { there 'mkdir /root/unpacked && cd /root/unpacked && tar -xzf ../sheerpole.tar.gz && cd * && apt-get remove -y -qq sheerpole >/dev/null && bin/sheerpole version && bin/sheerpole build share/sheerpole/examples/smallest.rig --into /root/from-archive && test -s /root/from-archive/cut-list.txt'; }
try "the archive works without the package" unpacks
same_papers() { there 'cd /root/examples && /root/unpacked/*/bin/sheerpole build pellimoor.rig --into /root/again && for paper in /root/again/*; do cmp "$paper" "/root/papers/${paper##*/}" || exit 1; done'; }
try "it makes the same papers" same_papers

# Gone is gone: of the package itself nothing stays, whatever it depends on.
leaves_nothing() {
  there 'apt-get purge -y -qq sheerpole' && there 'find / -xdev -path /proc -prune -o -path /root -prune -o -print | sort' >"$work/after"
  ! comm -13 "$work/before" "$work/after" | grep -i sheerpole
}
try "it is removed without a trace" leaves_nothing

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
