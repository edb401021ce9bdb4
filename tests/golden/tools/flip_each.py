#!/usr/bin/env python3
"""flip_each.py SHEERPOLE SEALED SCRATCH: flips one byte in each file of a sealed folder, one after another.

Ends with 0 when every time `verify` names that file and no other, and when a flip in the list of sums itself does not
pass for the seal that was printed.
"""
import hashlib
import os
import shutil
import subprocess
import sys


def verify(sheerpole, folder, *more):
    done = subprocess.run([sheerpole, "verify", folder, *more], capture_output=True, text=True)
    return done.returncode, done.stdout


def main():
    sheerpole, sealed, scratch = sys.argv[1:]
    seal = hashlib.sha256(open(os.path.join(sealed, "SHA256SUMS"), "rb").read()).hexdigest()
    names = sorted(os.path.relpath(os.path.join(folder, file), sealed)
                   for folder, _, files in os.walk(sealed) for file in files)
    for name in names:
        shutil.rmtree(scratch, ignore_errors=True)
        shutil.copytree(sealed, scratch)
        path = os.path.join(scratch, name)
        data = bytearray(open(path, "rb").read())
        data[len(data) // 2] ^= 1
        open(path, "wb").write(data)
        code, said = verify(sheerpole, scratch, "--seal", seal)
        if code != 1:
            sys.exit(f"{name}: ended with {code}: {said}")
        if name == "SHA256SUMS":
            if "the seal is another" not in said:
                sys.exit(f"{name}: {said}")
        elif said != f"altered {name}\n":
            sys.exit(f"{name}: {said}")
    print(len(names), "files flipped")


main()
