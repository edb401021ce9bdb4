#!/usr/bin/env python3
"""bill.py BUILD --version V --commit C --time SECONDS --into FOLDER: what is linked into the programs of a release build.

Writes FOLDER/sheerpole.spdx.json (SPDX 2.3), FOLDER/copyright and FOLDER/licences/, one file for each library. Nothing is listed by
hand: the packages are those of Debian whose headers the compiler read and whose archives the linker took, as ninja and dpkg
know them. One whose licence is not in the table below stops the run.

bill.py --check FILE looks whether such a file is what SPDX 2.3 asks for (ISO/IEC 5962:2021 with the changes of 2.3).
"""

import argparse
import datetime
import hashlib
import json
import pathlib
import re
import subprocess
import sys

# The licence of what the package puts into a program, by its copyright file in Debian 12; SPDX's short names.
GCC = "GPL-3.0-or-later WITH GCC-exception-3.1"
LICENCES = {
    "coinor-libcbc-dev": "EPL-1.0",
    "coinor-libcgl-dev": "EPL-1.0",
    "coinor-libclp-dev": "EPL-1.0",
    "coinor-libcoinutils-dev": "EPL-1.0",
    "coinor-libosi-dev": "EPL-1.0",
    "libantlr4-runtime-dev": "BSD-3-Clause",
    "libblas-dev": "BSD-3-Clause",
    "libbz2-dev": "bzip2-1.0.6",
    "libc6-dev": "LGPL-2.1-or-later",
    "libc6": "LGPL-2.1-or-later",
    "libcairo2": "LGPL-2.1-only OR MPL-1.1",
    "libcli11-dev": "BSD-3-Clause",
    "libfast-float-dev": "MIT OR Apache-2.0",
    "libeigen3-dev": "MPL-2.0 AND BSD-3-Clause",
    "libevent-dev": "BSD-3-Clause AND ISC",
    "libfmt-dev": "MIT",
    "libfreetype-dev": "FTL OR GPL-2.0-or-later",
    "libharfbuzz-dev": "MIT-Modern-Variant",
    "libglib2.0-dev": "LGPL-2.1-or-later",
    "libfontconfig1": "HPND-sell-variant",
    "libfreetype6": "FTL OR GPL-2.0-or-later",
    "libgcc-12-dev": GCC,
    "libgfortran-12-dev": GCC,
    "libglib2.0-0": "LGPL-2.1-or-later",
    "libharfbuzz0b": "MIT-Modern-Variant",
    "liblapack-dev": "BSD-3-Clause",
    "libmd-dev": "BSD-3-Clause AND ISC",
    "libpango-1.0-0": "LGPL-2.0-or-later",
    "libpangocairo-1.0-0": "LGPL-2.0-or-later",
    "libpangoft2-1.0-0": "LGPL-2.0-or-later",
    "libpugixml-dev": "MIT",
    "libqrcodegencpp-dev": "MIT",
    "libgcc-s1": GCC,
    "libstdc++-12-dev": GCC,
    "libstdc++6": GCC,
    "libutf8proc-dev": "MIT AND Unicode-DFS-2015",
    "libvalijson-dev": "BSD-2-Clause",
    "linux-libc-dev": "GPL-2.0-only WITH Linux-syscall-note",
    "nlohmann-json3-dev": "MIT",
    "uuid-dev": "BSD-3-Clause",
    "zlib1g-dev": "Zlib",
}
# What the linker looks for by itself, by the name that the compiler knows it under.
ALWAYS = ["libstdc++.a", "libgcc.a", "libgcc_eh.a", "libc.a", "libm.a", "crtbeginS.o", "rcrt1.o"]
OF_THE_PROGRAM = "SPDXRef-Package-sheerpole"
RELATIONS = {"STATIC_LINK", "DYNAMIC_LINK", "DESCRIBES", "BUILD_DEPENDENCY_OF", "CONTAINS"}


def said_by(*command):
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True).stdout


def headers(build):
    """System headers that the compiler read for what is in the programs."""
    found = set()
    for line in said_by("ninja", "-C", str(build), "-t", "deps").splitlines():
        if line.strip().startswith("/usr/"):
            found.add(line.strip())
    return found


def archives(build, program):
    """Files that the linker put into the program."""
    command = [line for line in said_by("ninja", "-C", str(build), "-t", "commands", program).splitlines() if f" -o bin/{program} " in line][-1]
    linked = {word for word in command.split() if word.startswith("/usr/") and word.endswith((".a", ".o"))}
    if "-static-pie" in command:
        names = [f"lib{word[2:]}.a" for word in command.split() if word.startswith("-l")] + ALWAYS
        linked.update(file_of(name) for name in names)
    return linked


def loaded(build, program):
    """Shared libraries that are loaded when the program starts."""
    told = said_by("readelf", "-d", str(build / "bin" / program))
    return {file_of(name) for name in re.findall(r"\(NEEDED\).*\[(.+)\]", told)}


def file_of(name):
    """Where the compiler finds a library."""
    path = said_by("g++", f"-print-file-name={name}").strip()
    if not path.startswith("/"):
        sys.exit(f"bill.py: the compiler does not find {name}")
    return path


def packages_of(paths):
    """Debian's package of each file."""
    real = {str(pathlib.Path(path).resolve()) for path in paths}
    both = real | {path.removeprefix("/usr") for path in real}
    done = subprocess.run(["dpkg", "-S", *sorted(both)], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, check=False)
    packages = set()
    for line in done.stdout.splitlines():
        names, _, _ = line.partition(": /")
        packages.update(name.split(":")[0].strip() for name in names.split(","))
    return {package for package in packages if not package.startswith("diversion")}


def version_of(package):
    version, source = said_by("dpkg-query", "-W", "-f=${Version}\t${source:Package}\n", package).splitlines()[0].split("\t")
    return version, source


def bill_of(build):
    """Package to how it comes into the programs: STATIC_LINK or DYNAMIC_LINK."""
    dynamic = packages_of(loaded(build, "sheerpole-pdf") | loaded(build, "sheerpole"))
    static = packages_of(headers(build) | archives(build, "sheerpole") | archives(build, "sheerpole-pdf"))
    # Headers of what is loaded belong to what is loaded: Debian makes both from one source.
    sources = {version_of(package)[1] for package in dynamic}
    linked = packages_of(archives(build, "sheerpole") | archives(build, "sheerpole-pdf"))
    static = {package for package in static if package in linked or version_of(package)[1] not in sources}
    return {package: "STATIC_LINK" for package in static} | {package: "DYNAMIC_LINK" for package in dynamic - static}


def document(bill, version, commit, seconds):
    created = datetime.datetime.fromtimestamp(seconds, datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
    packages = [{
        "SPDXID": OF_THE_PROGRAM,
        "name": "sheerpole",
        "versionInfo": version,
        "sourceInfo": f"built from commit {commit}",
        "supplier": "Organization: Sheerpole contributors",
        "downloadLocation": "NOASSERTION",
        "filesAnalyzed": False,
        "licenseConcluded": "Apache-2.0",
        "licenseDeclared": "Apache-2.0",
        "copyrightText": "NOASSERTION",
        "primaryPackagePurpose": "APPLICATION",
    }]
    relations = [{"spdxElementId": "SPDXRef-DOCUMENT", "relationshipType": "DESCRIBES", "relatedSpdxElement": OF_THE_PROGRAM}]
    for package in sorted(bill):
        number, source = version_of(package)
        identity = "SPDXRef-Package-" + re.sub(r"[^a-zA-Z0-9.-]", "-", package)
        packages.append({
            "SPDXID": identity,
            "name": package,
            "versionInfo": number,
            "sourceInfo": f"Debian source package {source}",
            "supplier": "Organization: Debian",
            "downloadLocation": "NOASSERTION",
            "filesAnalyzed": False,
            "licenseConcluded": "NOASSERTION",
            "licenseDeclared": LICENCES.get(package, "NOASSERTION"),
            "copyrightText": "NOASSERTION",
            "externalRefs": [{
                "referenceCategory": "PACKAGE-MANAGER",
                "referenceType": "purl",
                "referenceLocator": f"pkg:deb/debian/{package.replace('+', '%2B')}@{number.replace(':', '%3A').replace('+', '%2B')}",
            }],
            "primaryPackagePurpose": "LIBRARY",
        })
        relations.append({"spdxElementId": OF_THE_PROGRAM, "relationshipType": bill[package], "relatedSpdxElement": identity})
    told = hashlib.sha256(json.dumps([packages, relations], sort_keys=True).encode()).hexdigest()
    return {
        "spdxVersion": "SPDX-2.3",
        "dataLicense": "CC0-1.0",
        "SPDXID": "SPDXRef-DOCUMENT",
        "name": f"sheerpole-{version}",
        "documentNamespace": f"https://sheerpole.invalid/spdx/sheerpole-{version}-{told[:32]}",
        "creationInfo": {"created": created, "creators": ["Tool: bill.py", "Organization: Sheerpole contributors"]},
        "packages": packages,
        "relationships": relations,
    }


def faults(text):
    """Where the text is not an SPDX 2.3 document in JSON; clauses 6, 7 and 11."""
    try:
        whole = json.loads(text)
    except ValueError as error:
        return [f"no JSON: {error}"]
    found = []

    def wants(here, condition, what):
        if not condition:
            found.append(f"{here}: {what}")

    def is_text(value):
        return isinstance(value, str) and value != ""

    wants("document", isinstance(whole, dict), "no object")
    if found:
        return found
    wants("document", whole.get("spdxVersion") == "SPDX-2.3", "spdxVersion is not SPDX-2.3 (6.1)")
    wants("document", whole.get("dataLicense") == "CC0-1.0", "dataLicense is not CC0-1.0 (6.2)")
    wants("document", whole.get("SPDXID") == "SPDXRef-DOCUMENT", "SPDXID is not SPDXRef-DOCUMENT (6.3)")
    wants("document", is_text(whole.get("name")), "it has no name (6.4)")
    wants("document", re.fullmatch(r"[a-z][a-z0-9+.-]*://[^\s#]+", str(whole.get("documentNamespace"))), "documentNamespace is no URI without a fragment (6.5)")
    info = whole.get("creationInfo", {})
    wants("document", re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", str(info.get("created"))), "created is no time in UTC (6.9)")
    wants("document", info.get("creators") and all(re.match(r"(Tool|Person|Organization): \S", one) for one in info.get("creators", [])), "creators (6.8)")
    identities = {"SPDXRef-DOCUMENT"}
    for package in whole.get("packages", []):
        here = str(package.get("SPDXID"))
        wants(here, re.fullmatch(r"SPDXRef-[a-zA-Z0-9.-]+", here), "SPDXID is malformed (7.2)")
        wants(here, here not in identities, "SPDXID stands twice")
        identities.add(here)
        for member in ("name", "downloadLocation", "versionInfo", "licenseDeclared", "licenseConcluded", "copyrightText"):
            wants(here, is_text(package.get(member)), f"{member} is missing")
        wants(here, package.get("filesAnalyzed") is False, "files are not listed, so filesAnalyzed is false (7.8)")
        wants(here, re.match(r"(Person|Organization): \S|NOASSERTION$", str(package.get("supplier"))), "supplier (7.5)")
        wants(here, package.get("licenseDeclared") != "NOASSERTION", "nobody has looked up its licence")
        wants(here, "packageVerificationCode" not in package, "a verification code without files (7.9)")
        for reference in package.get("externalRefs", []):
            wants(here, reference.get("referenceCategory") in ("SECURITY", "PACKAGE-MANAGER", "PERSISTENT-ID", "OTHER"), "referenceCategory (7.21)")
            wants(here, re.fullmatch(r"pkg:[a-z]+/[^\s@]+@\S+", str(reference.get("referenceLocator"))), "no purl")
    described = 0
    for relation in whole.get("relationships", []):
        ends = (relation.get("spdxElementId"), relation.get("relatedSpdxElement"))
        for end in ends:
            wants(str(ends), end in identities, f"there is no {end} (11.1)")
        wants(str(ends), relation.get("relationshipType") in RELATIONS, "relationshipType")
        described += relation.get("relationshipType") == "DESCRIBES"
    wants("document", described == 1, "it does not describe one thing")
    related = {relation.get("relatedSpdxElement") for relation in whole.get("relationships", [])}
    for identity in sorted(identities - related - {"SPDXRef-DOCUMENT"}):
        found.append(f"{identity}: nothing says how it belongs to the program")
    return found


def write_licences(bill, into, year):
    folder = into / "licences"
    folder.mkdir(parents=True, exist_ok=True)
    listed = []
    for package in sorted(bill):
        text = pathlib.Path("/usr/share/doc", package, "copyright").read_text(encoding="utf-8", errors="replace")
        (folder / f"{package}.txt").write_text(text, encoding="utf-8")
        listed.append(f"  {package}: {LICENCES[package]}")
    text = (
        "Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/\n"
        "Upstream-Name: sheerpole\n"
        "Comment: What is linked into the programs or loaded by them has licences of its own. Their texts are in\n"
        "  the folder licences beside this file, versions in sheerpole.spdx.json:\n" + "\n".join(listed) + "\n\n"
        f"Files: *\nCopyright: {year} Sheerpole contributors\nLicense: Apache-2.0\n"
        " On Debian systems the text of this licence is in /usr/share/common-licenses/Apache-2.0,\n"
        " in the archive in the file LICENSE beside this one.\n"
    )
    (into / "copyright").write_text(text, encoding="utf-8")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("build", nargs="?", type=pathlib.Path)
    parser.add_argument("--version")
    parser.add_argument("--commit")
    parser.add_argument("--time", type=int)
    parser.add_argument("--into", type=pathlib.Path)
    parser.add_argument("--check", type=pathlib.Path)
    options = parser.parse_args()
    if options.check:
        text = options.check.read_text(encoding="utf-8")
    else:
        bill = bill_of(options.build)
        strangers = sorted(set(bill) - set(LICENCES))
        if strangers:
            print(f"bill.py: no licence is known of {', '.join(strangers)}: read their copyright files and add them", file=sys.stderr)
            return 1
        text = json.dumps(document(bill, options.version, options.commit, options.time), indent=2) + "\n"
    found = faults(text)
    for fault in found:
        print(f"bill.py: {fault}", file=sys.stderr)
    if found:
        return 1
    if not options.check:
        options.into.mkdir(parents=True, exist_ok=True)
        (options.into / "sheerpole.spdx.json").write_text(text, encoding="utf-8")
        write_licences(bill, options.into, datetime.datetime.fromtimestamp(options.time, datetime.timezone.utc).year)
    return 0


if __name__ == "__main__":
    sys.exit(main())
