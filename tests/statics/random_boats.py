"""Boats by chance, in the form of tests/reference/statics."""

import math


def boat(chance):
    """One boat; `chance` is a random.Random. Sizes, stiffness and turns as on boats from 7 to 16 m of mast."""
    between = chance.uniform
    height, rake = between(7.0, 16.0), between(0.0, 0.03)
    backstay = chance.random() < 0.6
    fractional = not backstay or chance.random() < 0.3
    hounds_at = height * between(0.8, 0.95) if fractional else height
    nodes, mast = {}, []

    def at(name, z):
        nodes[name] = [round(-rake * z, 6), 0.0, round(z, 6)]
        mast.append(name)

    at("heel", 0.0)
    partners = chance.random() < 0.3
    if partners:
        at("partners", between(1.2, 2.0))
    levels = 2 if chance.random() < 0.3 else 1
    for i in range(1, levels + 1):
        at(f"root-{i}", hounds_at * (i / (levels + 1) + between(-0.03, 0.05)))
    at("hounds", hounds_at)
    if fractional:
        at("masthead", height)
    top = mast[-1]
    stout = height * height * 1200.0  # N m2 for each m2: 170 kN m2 at 12 m
    fore = stout * between(1.0, 2.0)
    across = fore * between(0.5, 0.8)
    spars = [{"name": "mast", "kind": "mast", "nodes": mast, "EIx_Nm2": fore, "EIy_Nm2": across, "EA_N": between(6e7, 1.2e8), "heel": "heel",
              "heel_fixity": "pinned", "partners": "partners" if partners else None, "GJ_Nm2": 10 * (fore + across)}]
    # Some masts taper, from half of their height or from lower down, to as little as a third of their EI.
    if chance.random() < 0.3:
        mast_of = spars[0]
        thin, from_heel = between(0.35, 0.9), height * between(0.3, 0.6)
        rise = height * math.hypot(1.0, rake)

        def station(at, share):
            return {"at_m": at, "EA_N": mast_of["EA_N"] * math.sqrt(share), "EIx_Nm2": fore * share, "EIy_Nm2": across * share,
                    "GJ_Nm2": mast_of["GJ_Nm2"]}

        mast_of["stations"] = [station(0.0, 1.0), station(from_heel, 1.0), station(rise, thin)]
    stays, fixed = [], []

    def anchor(name, x, y):
        nodes[name] = [round(x, 6), round(y, 6), 0.0]
        fixed.append(name)
        return name

    def stay(name, path, ea, shortening, free=()):
        stays.append({"name": name, "path": path, "EA_N": ea, "shortening_mm": shortening, "free_at": list(free)})

    ea = between(2e6, 4.5e6)
    stay("forestay", ["hounds", anchor("stem", 0.3 * height, 0.0)], ea, between(6, 18))
    if backstay:
        stay("backstay", [top, anchor("taffrail", -0.4 * height, 0.0)], 0.8 * ea, between(10, 26))
    sweep = between(0.0, 0.3) if backstay else between(0.35, 0.6)
    fixity = chance.choice(["pinned", "horizontal", "rigid"])
    free = fixity == "rigid" and levels == 1 and chance.random() < 0.5
    beam = height * between(0.08, 0.11)
    reach = beam * between(0.7, 0.9)
    cap_ea, cap, fwd, aft, middle = between(2e6, 4e6), between(20, 36), between(-4, 9), between(3, 9), between(0, 4)
    # A boat is tuned a little otherwise to port: not with free lines, whose legs are balanced by runs that must not depend on each other.
    askew = 0.0 if free else chance.choice([0.0, between(-2.0, 2.0)])
    for side, y in (("s", 1), ("p", -1)):
        tips = []
        for i in range(levels, 0, -1):
            root = nodes[f"root-{i}"]
            out = reach * (1.0 if i == 1 else 0.85)
            tip = f"tip-{i}-{side}"
            nodes[tip] = [round(root[0] - sweep * out, 6), round(y * out, 6), round(root[2] + 0.05, 6)]
            tips.append(tip)
            spars.append({"name": f"spreader-{i}-{side}", "kind": "spreader", "root": f"root-{i}", "tip": tip, "EA_N": 3e7, "fixity": fixity,
                          "EIh_Nm2": 11000.0, "EIv_Nm2": 6000.0, "GJ_Nm2": 150000.0})
        turn = askew if side == "p" else 0.0
        stay(f"cap-{side}", ["hounds", *tips, anchor(f"chain-{side}", -sweep * reach * 1.2, y * beam)], cap_ea, cap + turn,
             tips if free else ())
        stay(f"lower-fwd-{side}", ["root-1", anchor(f"chain-fwd-{side}", 0.04 * height, y * beam)], 2.0e6, fwd + turn)
        stay(f"lower-aft-{side}", ["root-1", anchor(f"chain-aft-{side}", -0.05 * height, y * beam)], 2.3e6, aft)
        if levels == 2:
            stay(f"middle-{side}", ["root-2", f"tip-1-{side}"], 1.6e6, middle)
    return {"nodes": nodes, "stays": stays, "spars": spars, "supports": {"fixed": fixed}}
