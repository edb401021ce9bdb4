"""Boats that grow in one direction: DIMENSIONS names each of them, a function that writes the files for a number, and the
command that is to bear it."""

HEAD = 'language 1\nboat "Growth" { }\n'
PARTS = """wire wire-6 {
  construction: "1x19"
  grade: "316"
  size: "6 mm"
}
rope hmpe-9 {
  construction: "12-strand"
  size: "9 mm"
}
splice eye-splice {
  bury: 72 d
  eye-allowance: 100 mm
  contraction: 8 %
}
terminal eye {
  length: 62 mm measured
  lower: wire-socket (inserted: 20 mm measured)
}
turnbuckle screw {
  shortest: 240 mm measured
  longest: 360 mm measured
  upper: wire-socket (inserted: 20 mm measured)
}
link short-link { length: 20 mm measured }
"""


def stay(name, length="9 m", items="", more="", title=""):
    """A stay of wire between an eye and a screw."""
    return (f"stay {name}{title} {{\n  pin-to-pin: {length} measured\n  line: wire-6\n{more}  stack {{\n    eye\n    line\n"
            f"    screw (open: 50 %)\n{items}  }}\n}}\n")


def many(count, form):
    return "".join(form(number) for number in range(count))


def boat(text):
    return {"boat.rig": HEAD + PARTS + text}


def points(count):
    return "points {\n" + many(count, lambda i: f"  p{i}: ({i * 0.001:.3f} m, 0 m, 1 m) measured\n") + "}\n"


def path(count):
    places = points(count) + "points {\n  top: (0 m, 0 m, 9 m) measured\n}\n"
    return boat(places + "stay fore {\n  path: top > " + " > ".join(f"p{i} free" if i + 1 < count else f"p{i}" for i in range(count)) +
                "\n  line: wire-6\n  stack {\n    eye\n    line\n    screw (open: 50 %)\n  }\n}\n")


def reading(stay_name, number):
    return f'reading of {stay_name} {{\n  method: tape\n  runs: {9000 + number % 7} mm\n  by: "me"\n}}\n'


def own_fittings(i, mast=""):
    """A stay between a tang and a plate that no other one has: places that lie beside each other, in numbered rows."""
    at = i * 0.0005
    return (f'tang t-{i} {{ lower: eye (hole: 12 mm, width: 18 mm) }}\nchainplate c-{i} {{ upper: eye (hole: 10.3 mm, thickness: 8 mm) }}\n'
            f'points{mast} {{\n  aloft-{i} "Tang band, {i}": (-0.05 m, 0.07 m, {9 + at:.4f} m) drawn\n}}\n'
            f'points {{\n  plate-{i} "Plate {i}": ({-0.6 - at:.4f} m, 1.4 m, 1.1 m) drawn\n}}\n'
            f'stay s{i} {{\n  path: aloft-{i} > plate-{i}\n  line: wire-6\n  stack {{\n    t-{i}\n    eye\n    line\n'
            f'    screw (open: 50 %)\n    c-{i}\n  }}\n}}\n')


MAST = "spar mast { sort: mast\n  heel: (0 m, 0 m, 1 m) drawn\n  length: 14 m drawn\n  step: deck\n}\n"


def layer(inside):
    return f"layer made {{\n  date: 2026-05-02\n{inside}}}\n"


def tuned(count):
    """A mast that stands by so many pairs of shrouds of known stiffness."""
    mast = MAST.replace("step: deck", 'step: deck\n  hold: pinned\n  axial-stiffness: 150_000 kN\n  bending-stiffness: 620 kNm2\n'
                        "  bending-stiffness-across: 380 kNm2")
    def pair(i):
        z, x = 4 + i * 9 / count, -3 + i * 6 / count
        return (f"points on mast {{\n  m-{i}: (0 m, 0.07 m, {z:.4f} m) mirrored drawn\n}}\n"
                f"points {{\n  d-{i}: ({x:.4f} m, 1.4 m, 1.1 m) mirrored drawn\n}}\n"
                f"stay s{i} {{\n  sides: port, starboard\n  path: m-{i} > d-{i}\n  line: wire-6\n  taken-up: {3 + i % 3} mm\n"
                f"  stack {{\n    eye\n    line\n    screw (open: 50 %)\n  }}\n}}\n")
    wire = PARTS.replace('size: "6 mm"', 'size: "6 mm"\n  stiffness: 2_330 kN', 1)
    return {"boat.rig": HEAD + wire + mast + many(count, pair)}


def rule(number, more=""):
    return f'rule r{number} {{\n  quantity: body\n{more}  at-most: 20 m\n  severity: warning\n  message: "long"\n}}\n'


def stock(number):
    return f"stock off{number} of wire-6 {{\n  sort: offcut\n  length: {19500 + number * 1453 % 19000} mm\n}}\n"


def pieces(count):
    return many(count, lambda i: stay(f"s{i}", f"{2000 + i * 1237 % 8000} mm"))


def text_of(length):
    return '"' + ("word " * (length // 5)) + '"'


CHECK = "check boat.rig"
PLAN = "plan boat.rig --into out"
CUTS = "build boat.rig --only cut-list --into out"

DIMENSIONS = {
    "stays": (lambda n: boat(many(n, lambda i: stay(f"s{i}"))), CHECK),
    "stays on both sides": (lambda n: boat(many(n, lambda i: stay(f"s{i}", more="  sides: port, starboard\n"))), CHECK),
    "cut list of stays": (lambda n: boat(many(n, lambda i: stay(f"s{i}"))), CUTS),
    "points": (lambda n: boat(points(n) + stay("fore")), CHECK),
    "stops of a path": (path, CHECK),
    "parts": (lambda n: boat(many(n, lambda i: f"link l{i} {{ length: {i % 90 + 1} mm }}\n") + stay("fore")), CHECK),
    "items of a stack": (lambda n: boat(stay("fore", f"{9 + n // 50} m", "    short-link\n" * n)), CHECK),
    "counted items": (lambda n: boat(many(n // 100, lambda i: stay(f"s{i}", items="    100 x short-link\n"))), CHECK),
    "counted items, many each": (lambda n: boat(many(8, lambda i: stay(f"s{i}", f"{9 + n // 50} m", f"    {n} x short-link\n"))), CHECK),
    "tangs, plates and points": (lambda n: boat(MAST + many(n, lambda i: own_fittings(i, " on mast"))), CHECK),
    "parts that a layer states anew": (lambda n: boat(stay("fore") + many(n, lambda i: f"link l{i} {{ length: {i % 90 + 1} mm }}\n") + layer(many(n, lambda i: f"  link l{i} {{ length: {i % 90 + 2} mm measured }}\n"))), CHECK),
    "stays of a mast that is tuned": (lambda n: tuned(n // 50), "show tune boat.rig"),
    "lines": (lambda n: boat(many(n, lambda i: f'wire w{i} {{\n  construction: "1x19"\n  size: "6 mm"\n}}\n') + stay("fore")), CHECK),
    "splices": (lambda n: boat(many(n, lambda i: f"splice e{i} {{\n  bury: 72 d\n}}\n") + stay("fore")), CHECK),
    "lets": (lambda n: boat(many(n, lambda i: f"let a{i} = {i % 90 + 1} mm\n") + stay("fore")), CHECK),
    "lets, each of the one before": (lambda n: boat("let a0 = 1 mm\n" + many(n - 1, lambda i: f"let a{i + 1} = a{i} + 0 mm\n") + stay("fore")), CHECK),
    "terms of one value": (lambda n: boat("let a = (" + "\n  + ".join(["1 mm"] * n) + ")\n" + stay("fore")), CHECK),
    "copies": (lambda n: boat(stay("first") + many(n, lambda i: f"stay s{i} from first {{ }}\n")), CHECK),
    "copies of copies": (lambda n: boat(stay("s0") + many(n, lambda i: f"stay s{i + 1} from s{i} {{ }}\n")), CHECK),
    "rules": (lambda n: boat(stay("fore") + many(n, rule)), CHECK),
    "rules and stays": (lambda n: boat(many(n, lambda i: stay(f"s{i}")) + many(n, rule)), CHECK),
    "readings of one stay": (lambda n: boat(stay("fore") + many(n, lambda i: reading("fore", i))), CHECK),
    "readings, one of each stay": (lambda n: boat(many(n, lambda i: stay(f"s{i}") + reading(f"s{i}", i))), CHECK),
    "runs of a reading": (lambda n: boat(stay("fore") + "reading of fore {\n  method: tape\n  runs: " + ", ".join(f"{9000 + i % 7} mm" for i in range(n)) + "\n}\n"), CHECK),
    "stock": (lambda n: boat(stay("fore") + many(n, stock)), CHECK),
    "entries of the inspection log": (lambda n: boat(stay("fore") + many(n, lambda i: f'finding of fore {{\n  date: 2026-05-02\n  by: "n {i}"\n  condition: watch\n}}\n')), CHECK),
    "waivers": (lambda n: boat(many(n, lambda i: stay(f"s{i}") + f'waive cut-is-draft of s{i} {{\n  reason: "known"\n  by: "me"\n  until: 2027-01-01\n}}\n')), CHECK),
    "records of pieces": (lambda n: boat(many(n, lambda i: stay(f"s{i}") + f'piece of s{i} {{\n  stage: made\n  batch: "lot {i % 7}"\n}}\n')), CHECK),
    "expectations": (lambda n: boat(stay("fore") + many(n, lambda i: "expect fore.pin-to-pin = 9 m ± 1 mm\n")), CHECK),
    "tapes": (lambda n: boat(stay("fore") + many(n, lambda i: f"tape t{i} {{\n  error: 1 mm\n}}\n")), CHECK),
    "cords": (lambda n: boat(stay("fore") + many(n, lambda i: f"cord c{i} {{\n  stretch: 1 %\n}}\n")), CHECK),
    "shops": (lambda n: boat(stay("fore") + many(n, lambda i: f"shop h{i} {{ }}\n")), CHECK),
    "states": (lambda n: boat(stay("fore") + many(n, lambda i: f"state t{i} {{ }}\n")), CHECK),
    "plan, pieces from one spool": (lambda n: boat(many(n, lambda i: stay(f"s{i}", f"{500 + i * 1237 % 900} mm")) + "stock drum of wire-6 {\n  sort: spool\n  length: 10_000 m\n}\n"), PLAN),
    "plan, pieces and offcuts": (lambda n: boat(pieces(n // 2) + many(n // 2, stock)), PLAN),
    "boats of a fleet": (lambda n: {f"b{i}.rig": HEAD + PARTS + stay("fore") for i in range(n // 8)}, "fleet FILES --into out"),
    "length of a title": (lambda n: boat(stay("fore", title=' ' + text_of(min(n, 3000)))), CHECK),
    "comments": (lambda n: boat("# a remark that says nothing\n" * n + stay("fore")), CHECK),
    "errors": (lambda n: boat(many(n, lambda i: stay(f"s{i}", length="9"))), CHECK),
    "slips of text": (lambda n: boat("stay {\n" * n), CHECK),
    "rows of a table of lengths": (lambda n: {"t.csv": "stay,length\n" + many(n, lambda i: f"s{i},9 m\n")}, "begin new.rig --lengths t.csv"),
}

# They end with 1, and are to be quick all the same.
OF_ERRORS = ("errors", "slips of text")
