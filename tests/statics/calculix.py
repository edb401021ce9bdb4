"""A boat in the form of tests/reference/statics as CalculiX reads it, and what CalculiX makes of it."""

import math
import re
import subprocess
import time

PIECES_MAST, PIECES_SPREADER = 4, 2
FAR = 400.0  # mm: no stay is longer or shorter by more


def minus(a, b):
    return [x - y for x, y in zip(a, b)]


def cross(a, b):
    return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]


def unit(a):
    size = math.hypot(*a)
    return [x / size for x in a]


def at_station(spar, metres):
    """EA, EIx and EIy of a mast so far from its heel: between two stations they change evenly."""
    keys = ("EA_N", "EIx_Nm2", "EIy_Nm2")
    stations = spar.get("stations")
    if not stations:
        return [spar[key] for key in keys]
    for low, high in zip(stations, stations[1:]):
        if metres <= high["at_m"]:
            share = max(0.0, (metres - low["at_m"]) / (high["at_m"] - low["at_m"]))
            return [low[key] + share * (high[key] - low[key]) for key in keys]
    return [stations[-1][key] for key in keys]


def row(numbers):
    return ", ".join(f"{number:.9f}" for number in numbers)


class Deck:
    """The input file of one run. `moved` is how much unstressed length is moved into the leg above each free tip, in mm."""

    def __init__(self, boat, moved, pieces=PIECES_MAST):
        self.boat = boat
        self.pieces = pieces  # of each panel of a tapered mast
        self.names = list(boat["nodes"])
        self.places = [[1000.0 * x for x in boat["nodes"][name]] for name in self.names]
        self.numbers = {name: i + 1 for i, name in enumerate(self.names)}
        self.elements = []
        self.sections = []
        self.springs = []
        self.legs = []  # of each stay: nodes, EA, unstressed length
        self.count = 0
        for spar in boat["spars"]:
            self.add_spar(spar)
        for stay in boat["stays"]:
            self.add_stay(stay, moved)

    def point(self, place):
        self.places.append(place)
        return len(self.places)

    def add_beam(self, name, first, last, pieces, across, thick_across, thick_other, modulus):
        """Three-noded beams between two nodes; `thick_across` is the size of the rectangle along `across`."""
        begin, end = self.places[first - 1], self.places[last - 1]
        chain = [first]
        for i in range(1, 2 * pieces):
            chain.append(self.point([b + (e - b) * i / (2 * pieces) for b, e in zip(begin, end)]))
        chain.append(last)
        for i in range(pieces):
            self.count += 1
            self.elements.append((name, self.count, chain[2 * i : 2 * i + 3]))
        if any(name == section[0] for section in self.sections):
            return
        axis = unit(minus(end, begin))
        square = minus(across, [sum(x * y for x, y in zip(across, axis)) * t for t in axis])
        self.sections.append((name, modulus, axis, unit(square), thick_across, thick_other))

    def add_spar(self, spar):
        if spar["kind"] != "spreader":
            # EIx bends a mast fore and aft, a bowsprit up and down.
            across = [0, 0, 1] if spar["kind"] == "bowsprit" else [1, 0, 0]
            from_heel = 0.0
            for first, last in zip(spar["nodes"], spar["nodes"][1:]):
                begin, end = self.places[self.numbers[first] - 1], self.places[self.numbers[last] - 1]
                panel = math.dist(begin, end) / 1000.0
                if "stations" not in spar:
                    self.add_mast_piece(spar["name"], self.numbers[first], self.numbers[last], PIECES_MAST, across, at_station(spar, 0.0))
                else:
                    below = self.numbers[first]
                    for i in range(self.pieces):
                        share = (i + 1) / self.pieces
                        above = self.numbers[last] if i + 1 == self.pieces else self.point([b + (e - b) * share for b, e in zip(begin, end)])
                        middle = from_heel + panel * (i + 0.5) / self.pieces
                        self.add_mast_piece(f"{spar['name']}-{last}-{i}", below, above, 1, across, at_station(spar, middle))
                        below = above
                from_heel += panel
            return
        ea = spar["EA_N"]
        root, tip = self.numbers[spar["root"]], self.numbers[spar["tip"]]
        begin, end = self.places[root - 1], self.places[tip - 1]
        if spar["fixity"] == "pinned":
            k = ea / math.dist(begin, end)
            self.add_spring(root, tip, [(-k * FAR, -FAR), (k * FAR, FAR)])
            return
        sideways = cross(unit(minus(end, begin)), [0, 0, 1])
        wide = math.sqrt(12 * spar["EIh_Nm2"] * 1e6 / ea)
        high = math.sqrt(12 * spar["EIv_Nm2"] * 1e6 / ea)
        modulus = ea / wide / high
        if spar["fixity"] == "horizontal":
            thin, length = 0.2, math.dist(begin, end)
            hinge = self.point([b + (e - b) * 5.0 / length for b, e in zip(begin, end)])
            self.add_beam(spar["name"] + "-hinge", root, hinge, 1, sideways, wide, thin, modulus * high / thin)
            root = hinge
        self.add_beam(spar["name"], root, tip, PIECES_SPREADER, sideways, wide, high, modulus)

    def add_mast_piece(self, name, first, last, pieces, across, stiffness):
        ea, in_x, in_y = stiffness
        thick_x, thick_y = (math.sqrt(12 * bending * 1e6 / ea) for bending in (in_x, in_y))
        self.add_beam(name, first, last, pieces, across, thick_x, thick_y, ea / thick_x / thick_y)

    def add_spring(self, first, last, table):
        self.count += 1
        self.springs.append((self.count, first, last, table))

    def add_stay(self, stay, moved):
        path = stay["path"]
        for i, (first, last) in enumerate(zip(path, path[1:])):
            a, b = self.numbers[first], self.numbers[last]
            drawn = math.dist(self.places[a - 1], self.places[b - 1])
            unstressed = drawn - (stay["shortening_mm"] if i + 2 == len(path) else 0.0)
            if first in stay["free_at"]:
                unstressed -= moved[stay["name"], first]
            if last in stay["free_at"]:
                unstressed += moved[stay["name"], last]
            self.legs.append((stay["name"], i, a, b, stay["EA_N"], unstressed))
            shorter = drawn - unstressed
            k = stay["EA_N"] / unstressed
            self.add_spring(a, b, [(0.0, -FAR), (0.0, -shorter), (k * FAR, FAR - shorter)])

    def text(self, first_share):
        """The whole file; the first increment is that share of the shortening."""
        out = ["*NODE, NSET=NALL"]
        out += [f"{i + 1}, {row(place)}" for i, place in enumerate(self.places)]
        begun = None
        for name, number, nodes in self.elements:
            # One block for each set.
            if name != begun:
                out.append(f"*ELEMENT, TYPE=B32R, ELSET=E_{name}")
            begun = name
            out.append(", ".join(map(str, [number, *nodes])))
        for number, first, last, _ in self.springs:
            out += [f"*ELEMENT, TYPE=SPRINGA, ELSET=S{number}", f"{number}, {first}, {last}"]
        for name, modulus, axis, across, thick_across, thick_other in self.sections:
            e, g = f"{modulus:.9g}", f"{20 * modulus:.9g}"
            out += [f"*MATERIAL, NAME=M_{name}", "*ELASTIC, TYPE=ENGINEERING CONSTANTS", f"{e}, {e}, {e}, 0., 0., 0., {g}, {g}", g,
                    f"*ORIENTATION, NAME=O_{name}, SYSTEM=RECTANGULAR", row([*axis, *across]),
                    f"*BEAM SECTION, ELSET=E_{name}, MATERIAL=M_{name}, ORIENTATION=O_{name}, SECTION=RECT",
                    row([thick_across, thick_other]), row(across)]
        for number, _, _, table in self.springs:
            out.append(f"*SPRING, ELSET=S{number}, NONLINEAR")
            out += [row(pair) for pair in table]
        out.append("*BOUNDARY")
        out += [f"{self.numbers[name]}, 1, 3" for name in self.boat["supports"]["fixed"]]
        for spar in self.boat["spars"]:
            if spar["kind"] != "spreader":
                heel, about = self.numbers[spar["heel"]], 4 if spar["kind"] == "bowsprit" else 6
                out += [f"{heel}, 1, 3", f"{heel}, {about}, {about}"]
                if spar["partners"]:
                    out.append(f"{self.numbers[spar['partners']]}, 1, 2")
        out.append("*NSET, NSET=NOUT")
        out += [f"{i + 1}," for i in range(len(self.names))]
        out += ["*STEP, NLGEOM, INC=500", "*STATIC", f"{first_share:.6f}, 1., 1e-6, 1.", "*CONTROLS, PARAMETERS=TIME INCREMENTATION",
                "12, 20, 9, 60, 10, 4, , 5", "1., 0.5, 0.75, 0.85", "*CONTROLS, PARAMETERS=FIELD", "1e-06, 1e-07, , , , , , ",
                "*NODE PRINT, NSET=NOUT", "U", "*END STEP", ""]
        return "\n".join(out)


class Failed(Exception):
    """CalculiX did not come to an end."""


def run_once(boat, folder, moved):
    """Displacements by node, tensions by stay and leg, and the seconds of wall time of the run that came to an end."""
    try:
        return run_with(boat, folder, moved, 1.0)
    except Failed:
        return run_with(boat, folder, moved, 0.05)


def run_with(boat, folder, moved, first_share):
    """The same, of a run with a first increment of so much."""
    deck = Deck(boat, moved)
    for old in folder.glob("deck.*"):
        old.unlink()
    (folder / "deck.inp").write_text(deck.text(first_share), encoding="utf-8")
    began = time.perf_counter()
    try:
        ended = subprocess.run(["ccx", "deck"], cwd=folder, capture_output=True, text=True, check=False, timeout=60,
                               env={"PATH": "/usr/bin:/bin", "OMP_NUM_THREADS": "1"})
    except subprocess.TimeoutExpired as slow:
        raise Failed("took over a minute") from slow
    seconds = time.perf_counter() - began
    data = folder / "deck.dat"
    blocks = re.findall(r"displacements.*?time\s+(\S+)\n\n((?:\s+\d+(?:\s+\S+){3}\n)+)", data.read_text() if data.exists() else "")
    if ended.returncode != 0 or "ERROR" in ended.stdout or not blocks or abs(float(blocks[-1][0]) - 1.0) > 1e-9:
        raise Failed(ended.stdout[-300:])
    moves = {}
    for line in blocks[-1][1].splitlines():
        number, *move = line.split()
        moves[deck.names[int(number) - 1]] = [float(x) for x in move]
    tensions = {}
    for name, leg, a, b, ea, unstressed in deck.legs:
        now = math.dist(*([p + m for p, m in zip(deck.places[i - 1], moves[deck.names[i - 1]])] for i in (a, b)))
        tensions[name, leg] = max(0.0, ea * (now - unstressed) / unstressed)
    return moves, tensions, seconds


def settle(boat, folder):
    """As run_once, lines that run free having one tension; the seconds are those of one run."""
    free = [(stay["name"], tip) for stay in boat["stays"] for tip in stay["free_at"]]
    moved = dict.fromkeys(free, 0.0)
    before = {}
    for _ in range(12 if free else 1):
        moves, tensions, seconds = run_once(boat, folder, moved)
        off = {}
        for name, tip in free:
            path = next(stay for stay in boat["stays"] if stay["name"] == name)["path"]
            i = path.index(tip)
            off[name, tip] = tensions[name, i - 1] - tensions[name, i]
        if all(abs(x) < 0.02 for x in off.values()):
            return moves, tensions, seconds
        for key in free:
            # N for each mm: by the last step, else from what a metre or two of boat's wire has.
            slope = -600.0
            if key in before and abs(moved[key] - before[key][0]) > 1e-6:
                slope = (off[key] - before[key][1]) / (moved[key] - before[key][0])
            before[key] = (moved[key], off[key])
            moved[key] -= max(-15.0, min(15.0, off[key] / slope))
    raise Failed("the legs of a free line did not come to one tension")
