"""An ICC profile of Display P3, written from the numbers of the standards."""

import struct

# Colorants adapted to the D50 white of the profile connection space (Bradford), and that white (ICC.1:2010, 7.2.16).
RED, GREEN, BLUE = (0.51512, 0.24120, -0.00105), (0.29198, 0.69225, 0.04189), (0.15710, 0.06657, 0.78407)
WHITE = (0.9642, 1.0, 0.8249)
# Bradford matrix from D65 to D50.
ADAPTATION = (1.04788, 0.02292, -0.05022, 0.02959, 0.99048, -0.01707, -0.00923, 0.01508, 0.75168)
# Parametric curve type 3 of ICC.1:2010, 10.16: g, a, b, c, d of the sRGB transfer.
CURVE = (2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)


def fixed(numbers):
    """s15Fixed16Number, big-endian."""
    return b"".join(struct.pack(">i", round(v * 65536)) for v in numbers)


def text(words):
    """A multiLocalizedUnicodeType with one English record."""
    encoded = words.encode("utf-16-be")
    return b"mluc\0\0\0\0" + struct.pack(">II2s2sII", 1, 12, b"en", b"US", len(encoded), 28) + encoded


def display_p3_profile():
    """The bytes of the profile (ICC version 4, display class, matrix and curves)."""
    curve = b"para\0\0\0\0" + struct.pack(">HH", 3, 0) + fixed(CURVE)
    tags = {b"desc": text("Display P3"), b"cprt": text("No copyright, use freely"), b"wtpt": b"XYZ \0\0\0\0" + fixed(WHITE),
            b"chad": b"sf32\0\0\0\0" + fixed(ADAPTATION)}
    for name, colorant in ((b"rXYZ", RED), (b"gXYZ", GREEN), (b"bXYZ", BLUE)):
        tags[name] = b"XYZ \0\0\0\0" + fixed(colorant)
    for name in (b"rTRC", b"gTRC", b"bTRC"):
        tags[name] = curve
    table, body, start = struct.pack(">I", len(tags)), b"", 128 + 4 + 12 * len(tags)
    for name, data in tags.items():
        table += struct.pack(">4sII", name, start + len(body), len(data))
        body += data + b"\0" * (-len(data) % 4)
    size = start + len(body)
    header = struct.pack(">I4sI4s4s4s6H4sIIIIQI", size, b"\0\0\0\0", 0x04300000, b"mntr", b"RGB ", b"XYZ ",
                         2024, 1, 1, 0, 0, 0, b"acsp", 0, 0, 0, 0, 0, 0)
    header += fixed(WHITE) + b"\0" * 4
    return header.ljust(128, b"\0") + table + body
