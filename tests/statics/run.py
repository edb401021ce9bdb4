#!/usr/bin/env python3
"""run.py PROGRAM [--rigs N] [--seed S]: how stayed masts stand, against CalculiX (ccx).

Boats by chance are worked by PROGRAM (standing-states of the build) and by ccx with as many elements in each panel. Each tension
has to agree to 0.1 %, 0.5 N or 2e-4 of the boat's greatest tension (a stay that is nearly slack has what the others leave it), each
displacement to 0.1 % or 0.05 mm. Where they do not, PROGRAM is run again with 3 P/EA off the mast's EI, P its compression at the
heel, by which a solid with a linear law in Green strain bends softer than a beam; such boats are counted beside the others. Prints
how long each took for one state. A boat that ccx does not bring to an end is named and not counted. The last line is
"N passed, N failed".
"""

import argparse
import json
import pathlib
import random
import statistics
import subprocess
import sys
import tempfile

sys.dont_write_bytecode = True

import calculix
import random_boats


def standing(program, boats, folder):
    """What PROGRAM says of each boat."""
    files = []
    for i, boat in enumerate(boats):
        files.append(folder / f"boat-{i}.json")
        files[-1].write_text(json.dumps(boat), encoding="utf-8")
    ended = subprocess.run([program, *files], capture_output=True, text=True, check=True)
    return [json.loads(line) for line in ended.stdout.splitlines()]


def softened(boat, own):
    """The boat with masts that bend as a solid does under their compression."""
    other = json.loads(json.dumps(boat))
    for spar in other["spars"]:
        if spar["kind"] == "mast":
            share = 3.0 * own["compression_N"] / spar["EA_N"]
            for station in spar.get("stations", [spar]):
                station["EIx_Nm2"] *= 1.0 - share
                station["EIy_Nm2"] *= 1.0 - share
    return other


def differences(own, moves, tensions):
    """Where the two differ by more than is allowed, in words; and the greatest share of a tension of 500 N and more."""
    wrong, greatest = [], 0.0
    least = max(0.5, 2e-4 * max(tensions.values()))
    for name, leg, tension in own["tensions_N"]:
        other = tensions[name, leg]
        if abs(tension - other) > max(least, 1e-3 * other):
            wrong.append(f"{name} leg {leg}: {tension:.2f} N, ccx {other:.2f} N")
        if other >= 500:
            greatest = max(greatest, abs(tension - other) / other)
    for name, moved in own["moved_mm"].items():
        far = max(map(abs, moves[name]))
        off = max(abs(a - b) for a, b in zip(moved, moves[name]))
        if off > max(0.05, 1e-3 * far):
            wrong.append(f"{name}: off by {off:.3f} mm of {far:.1f} mm")
    return wrong, greatest


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("program")
    parser.add_argument("--rigs", type=int, default=40)
    parser.add_argument("--seed", type=int, default=1)
    arguments = parser.parse_args()
    chance = random.Random(arguments.seed)
    boats = [random_boats.boat(chance) for _ in range(arguments.rigs)]
    passed = failed = left_out = softer = 0
    shares, own_seconds, other_seconds = [], [], []
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for i, (boat, own) in enumerate(zip(boats, standing(arguments.program, boats, folder))):
            try:
                moves, tensions, seconds = calculix.settle(boat, folder)
            except calculix.Failed as reason:
                left_out += 1
                print(f"not compared: boat {i}, {own['outcome']}: ccx: {' '.join(str(reason).split())[-120:]}")
                continue
            if own["outcome"] != "equilibrium":
                failed += 1
                print(f"FAIL boat {i}: {own['outcome']}, and ccx has a state")
                continue
            wrong, share = differences(own, moves, tensions)
            if wrong:
                softer += 1
                own = standing(arguments.program, [softened(boat, own)], folder)[0]
                wrong, share = differences(own, moves, tensions)
            shares.append(share)
            own_seconds.append(own["seconds"])
            other_seconds.append(seconds)
            slack = sum(1 for tension in own["tensions_N"] if tension[2] == 0)
            if wrong:
                failed += 1
                print(f"FAIL boat {i} ({slack} slack): {'; '.join(wrong)}")
            else:
                passed += 1
    if shares:
        print(f"tensions of 500 N and more: median of the greatest differences {statistics.median(shares):.1e}, greatest {max(shares):.1e}")
        own, other = statistics.median(own_seconds), statistics.median(other_seconds)
        print(f"one state: {1e3 * own:.3f} ms, ccx {1e3 * other:.0f} ms with start and files: {other / own:.0f} times")
    if softer:
        print(f"compared with EI less 3 P/EA: {softer}")
    if left_out:
        print(f"not compared: {left_out}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
