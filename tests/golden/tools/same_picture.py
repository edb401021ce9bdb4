#!/usr/bin/env python3
"""same_picture.py HTML PDF SCRATCH: whether the first page of the PDF is the first drawing of the HTML file.

The drawing is rendered by librsvg, an SVG renderer that has nothing to do with the program that made the PDF, and both
are compared as grey pictures of 75 dots per inch. Ends with 0 when at most one dot in a hundred differs by more than a
third of black.
"""
import re
import subprocess
import sys


def picture(pdf, stem):
    subprocess.run(["pdftoppm", "-gray", "-r", "75", "-f", "1", "-l", "1", "-singlefile", pdf, stem], check=True)
    data = open(stem + ".pgm", "rb").read()
    magic, size, most, dots = data.split(b"\n", 3)
    width, height = map(int, size.split())
    assert magic == b"P5" and most == b"255" and len(dots) == width * height
    return width, height, dots


def main():
    html, pdf, scratch = sys.argv[1:]
    drawing = re.search(r"<svg.*?</svg>", open(html, encoding="utf-8").read(), re.S).group(0)
    # The blank inside a long number is not in the face of the papers, and librsvg takes it from any other: here it is as wide as it was
    # measured.
    while "\u202f" in drawing:
        drawing = re.sub("\u202f([^<\u202f]*)", r'<tspan dx="0.2em">\1</tspan>', drawing)
    with open(scratch + ".svg", "w", encoding="utf-8") as out:
        out.write(drawing)
    subprocess.run(["rsvg-convert", "-f", "pdf", "-o", scratch + ".pdf", scratch + ".svg"], check=True)
    width, height, drawn = picture(scratch + ".pdf", scratch + "-drawn")
    made_width, made_height, made = picture(pdf, scratch + "-made")
    if abs(width - made_width) > 1 or abs(height - made_height) > 1:
        sys.exit(f"{width} x {height} dots drawn, {made_width} x {made_height} made")
    other = 0
    black = 0
    for y in range(min(height, made_height)):
        for a, b in zip(drawn[y * width:(y + 1) * width], made[y * made_width:(y + 1) * made_width]):
            other += abs(a - b) > 85
            black += a < 128
    print(f"{other} of {width * height} dots differ, {black} are black")
    if other * 100 > width * height or black < 500:
        sys.exit(1)


main()
