#!/usr/bin/env python3
"""Reads the project and says where it breaks its own rules of structure.

The last line is "N passed, N failed", one for each check and one for each case of the self-test, in which every
check is shown files that are wrong on purpose and must report them.
"""

import argparse
import pathlib
import sys

sys.dont_write_bytecode = True

import antlr_names
import check_goldens
import coin_names
import counts
import doc_links
import eigen_names
import english_words
import file_length
import finding_examples
import finding_slugs
import formatting
import generated_code
import include_arrows
import joined_helpers
import layout
import lone_files
import number_text
import output_words
import outside_world
import paper_words
import range_algorithms
import self_test
import test_namespaces
import type_names
import typed_words
import used_names

CHECKS = [
    layout,
    include_arrows,
    antlr_names,
    coin_names,
    eigen_names,
    outside_world,
    doc_links,
    number_text,
    range_algorithms,
    output_words,
    finding_slugs,
    finding_examples,
    check_goldens,
    file_length,
    counts,
    joined_helpers,
    typed_words,
    used_names,
    english_words,
    paper_words,
    type_names,
    generated_code,
    test_namespaces,
    formatting,
    lone_files,
]


def main():
    here = pathlib.Path(__file__).resolve()
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--root", type=pathlib.Path, default=here.parent.parent.parent, help="top folder of the project")
    parser.add_argument("--build", type=pathlib.Path, help="build folder (default: build/dev)")
    parser.add_argument("--quick", action="store_true", help="leave out the compiling of every file")
    parser.add_argument("--one-in", type=int, default=1, help="compile alone one file in so many; which, their content decides")
    arguments = parser.parse_args()
    lone_files.one_in = max(arguments.one_in, 1)
    checks = [check for check in CHECKS if not (arguments.quick and check is lone_files)]
    root = arguments.root.resolve()
    build = (arguments.build or root / "build" / "dev").resolve()

    passed = 0
    failed = 0
    for name, findings in [
        *((check.NAME, check.check(root, build)) for check in checks),
        *self_test.outcomes(checks),
    ]:
        print(f"{'FAIL' if findings else 'ok  '} {name}", flush=True)
        for finding in findings:
            print(f"       {finding}", flush=True)
        if findings:
            failed += 1
        else:
            passed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
