#!/usr/bin/env python3
"""A paper that Sheerpole does not make itself: what the stays weigh, how high that sits, and its moment.

    sheerpole build boat.rig --into out --outside examples/outside/mass_aloft.py

Mass aloft heels a boat: each kilogram counts with its height above the waterline. The masses are those that the rig
file states: linear-mass of a line, mass of a part. What is not stated is not guessed, but listed.

How a program outside speaks with Sheerpole is written in docs/backends/outside.md. This one needs nothing but Python.
"""

import csv
import io
import json
import sys

NAME = "mass-aloft"


def main():
    request = json.load(sys.stdin)
    if request["format"] != "sheerpole-request" or request["version"] != 1:
        sys.exit("mass-aloft speaks version 1 and no other")
    if request["verb"] == "describe":
        reply = {
            "name": NAME,
            "summary": "what the stays weigh, how high it sits, and its moment about the waterline",
            "outputs": ["mass-aloft.txt", "mass-aloft.csv", "mass-aloft.svg"],
        }
    else:
        rows, left_out = weigh(request)
        title = request["rig"]["boat"]["title"]
        reply = {
            "files": [
                {"name": "mass-aloft.txt", "text": as_text(title, rows, left_out, request["draft_reasons"])},
                {"name": "mass-aloft.csv", "text": as_csv(rows)},
                {"name": "mass-aloft.svg", "text": as_svg(title, rows)},
            ]
        }
    json.dump({"format": "sheerpole-reply", "version": 1, **reply}, sys.stdout)


def weigh(request):
    """Rows of (stay, what, kilograms, height in metres or None), and the reasons why not, each with its stays."""
    rig = request["rig"]
    lines = {line["name"]: line for line in rig["materials"]}
    parts = {part["name"]: part for part in rig["parts"]}
    heights = {point["name"]: point for point in rig["points"]}
    rows = []
    left_out = {}
    for stay, derived in zip(rig["stays"], request["derived"]["stays"]):
        path = [heights[stop["point"]] for stop in stay["path"]]
        middle = mean_height(path)
        for piece in derived["pieces"]:
            kilograms_per_metre = stated(lines[piece["material"]], "linear-mass")
            if kilograms_per_metre is None:
                left_out.setdefault(f"linear-mass of {piece['material']} is not stated", []).append(stay["name"])
            elif piece["cut"]["unknown"]:
                left_out.setdefault("the length is not known yet", []).append(stay["name"])
            else:
                mass = kilograms_per_metre * piece["cut"]["known_mm"] / 1000
                rows.append((stay["name"], piece["material"], mass, middle))
        places = [number for number, item in enumerate(stay["stack"]) if item["item"] == "line"]
        for number, item in enumerate(stay["stack"]):
            if item["item"] != "part" or parts[item["part"]]["role"] == "boat fitting":
                continue
            mass = stated(parts[item["part"]], "mass")
            if mass is None:
                left_out.setdefault(f"mass of {item['part']} is not stated", []).append(stay["name"])
                continue
            height = middle
            if path and number < places[0]:
                height = path[0]["z_mm"] / 1000
            elif path and number > places[-1]:
                height = path[-1]["z_mm"] / 1000
            rows.append((stay["name"], item["part"], mass * item["count"], height))
    for stay, _, _, height in rows:
        if height is None:
            left_out.setdefault("no path through points, so no height", []).append(stay)
    return rows, left_out


def stated(thing, name):
    """The number that the file states, in SI units, or None."""
    for particular in thing["particulars"]:
        if particular["name"] == name:
            return particular["si"]
    return None


def mean_height(path):
    """Height in metres of the middle of a line that runs through these points, or None without any."""
    length = moment = 0.0
    for one, other in zip(path, path[1:]):
        run = sum((one[axis] - other[axis]) ** 2 for axis in ("x_mm", "y_mm", "z_mm")) ** 0.5
        length += run
        moment += run * (one["z_mm"] + other["z_mm"]) / 2
    return moment / length / 1000 if length else None


def moment(row):
    _, _, mass, height = row
    return None if height is None else mass * height


def totals(rows):
    """Kilograms of all, kilograms and moment of those with a height."""
    known = [row for row in rows if moment(row) is not None]
    return sum(row[2] for row in rows), sum(row[2] for row in known), sum(map(moment, known))


def number(value, digits):
    return "" if value is None else f"{value:.{digits}f}"


def as_text(title, rows, left_out, draft_reasons):
    table = [("stay", "what", "kg", "height m", "moment kg m")]
    table += [(row[0], row[1], number(row[2], 2), number(row[3], 2), number(moment(row), 1)) for row in rows]
    widths = [max(len(row[column]) for row in table) for column in range(5)]
    lines = [f"{title}: mass of the stays and its moment about the waterline", ""]
    for place, row in enumerate(table):
        cells = [row[0].ljust(widths[0]), row[1].ljust(widths[1])]
        cells += [cell.rjust(width) for cell, width in zip(row[2:], widths[2:])]
        lines.append("  ".join(cells).rstrip())
        if place == 0:
            lines.append("  ".join("-" * width for width in widths))
    mass, placed, sum_of_moments = totals(rows)
    lines += ["", f"all that is weighed: {mass:.2f} kg, moment {sum_of_moments:.1f} kg m"]
    if placed:
        lines.append(f"its middle is {sum_of_moments / placed:.2f} m above the waterline")
    lines.append("A line counts with all that is cut, at the middle of its path; a part at the end at which it sits.")
    if draft_reasons:
        lines.append("DRAFT: some lengths are not known well enough to cut; the cut list says which.")
    if left_out:
        lines += ["", "not weighed:"]
        lines += [f"  {why}: {', '.join(dict.fromkeys(stays))}" for why, stays in left_out.items()]
    return "\n".join(lines) + "\n"


def as_csv(rows):
    text = io.StringIO()
    table = csv.writer(text)
    table.writerow(["stay", "what", "kg", "height m", "moment kg m"])
    for row in rows:
        table.writerow([row[0], row[1], number(row[2], 4), number(row[3], 4), number(moment(row), 4)])
    return text.getvalue()


def as_svg(title, rows):
    """Each stay as a bar of its moment, with a stroke where its mass sits."""
    stays = {}
    for row in rows:
        if moment(row) is not None:
            mass, sum_of_moments = stays.get(row[0], (0.0, 0.0))
            stays[row[0]] = (mass + row[2], sum_of_moments + moment(row))
    most = max((sum_of_moments for _, sum_of_moments in stays.values()), default=0.0) or 1.0
    line, left, wide = 9.0, 50.0, 68.0
    height = 24.0 + line * max(len(stays), 1) + 8.0
    shapes = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="180mm" height="{height:g}mm" viewBox="0 0 180 {height:g}"'
        ' font-family="Liberation Sans, sans-serif" font-size="3.6">',
        f"<title>{escaped(title)}: moment of the stays about the waterline</title>",
        f'<rect width="180" height="{height:g}" fill="white"/>',
        f'<text x="8" y="10" font-size="4.6">{escaped(title)}: moment of the stays about the waterline</text>',
    ]
    y = 20.0
    for stay, (mass, sum_of_moments) in stays.items():
        long = wide * sum_of_moments / most
        shapes += [
            f'<text x="{left - 3:g}" y="{y + 4:g}" text-anchor="end">{escaped(stay)}</text>',
            f'<rect x="{left:g}" y="{y:g}" width="{long:.2f}" height="5.5" fill="white" stroke="black"'
            ' stroke-width="0.35"/>',
            f'<path d="M{left:g} {y + 2.75:g}h{long:.2f}" stroke="black" stroke-width="1.2"/>',
            f'<text x="{left + long + 3:.2f}" y="{y + 4:g}">{sum_of_moments:.1f} kg m: {mass:.2f} kg,'
            f" {sum_of_moments / mass if mass else 0:.1f} m up</text>",
        ]
        y += line
    if not stays:
        shapes.append(f'<text x="8" y="{y + 4:g}">No mass with a height is stated.</text>')
    return "\n".join([*shapes, "</svg>"]) + "\n"


def escaped(text):
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


if __name__ == "__main__":
    main()
