#!/usr/bin/env python3
"""Draws the two invented pictures of Larkwhin's inspection log: shapes on grey, no camera was there.

backstay-screw.png by itself; cap-terminal.jpg with ImageMagick (convert), from the same kind of drawing.
"""
import math
import os
import struct
import subprocess
import zlib

WIDTH, HEIGHT = 320, 220


def chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(pixel) -> bytes:
    """Eight bits of grey; `pixel(x, y)` is 0 to 255."""
    rows = b"".join(b"\0" + bytes(pixel(x, y) for x in range(WIDTH)) for y in range(HEIGHT))
    head = struct.pack(">IIBBBBB", WIDTH, HEIGHT, 8, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(rows, 9)) + chunk(b"IEND", b"")


def screw(x: int, y: int) -> int:
    """A screw standing upright: two studs in a body with windows, one stud bent."""
    middle = 160 + (max(0, 70 - y) // 7 if y < 70 else 0)
    if 60 <= y < 160 and abs(x - 160) < 34:
        window = 80 <= y < 140 and 12 < abs(x - 160) < 24
        return 40 if window else 205 - abs(x - 160) * 2
    if abs(x - middle) < 11 and 10 <= y < 210:
        return 120 + (y % 4) * 25
    return 150


def terminal(x: int, y: int) -> int:
    """A wire that comes out of a terminal; one strand stands off."""
    strand = abs((x - 200) * 0.45 + (y - 108)) < 2 and 200 < x < 255
    if strand:
        return 30
    if x < 130 and abs(y - 110) < 34:
        return 215 - abs(y - 110) * 3
    if x >= 130 and abs(y - 110) < 17:
        return 120 + int(60 * math.sin((x + 3 * (y - 110)) / 5.0))
    return 168


def main() -> None:
    folder = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(folder, "backstay-screw.png"), "wb") as out:
        out.write(png(screw))
    made = subprocess.run(["convert", "png:-", "-strip", "-quality", "60", "jpg:-"], input=png(terminal),
                          stdout=subprocess.PIPE, check=True).stdout
    with open(os.path.join(folder, "cap-terminal.jpg"), "wb") as out:
        out.write(made)


if __name__ == "__main__":
    main()
