"""Cuts the help page's pictures out of rendered trays, by their truth files.

Every picture names what it shows; a truth file that says otherwise stops the script. Beside the pictures it writes
src/ui/help/pictures.json: where the flaws lie in each, so that the page can mark them as the sorting picture does.

    /usr/bin/python3 sample-images/help/crop.py --flaws FOLDER --scratches FOLDER --gloss FOLDER

FOLDERs: OUT/test of tests/bench/flaw-trays, OUT/test of tests/bench/scratch-trays, and OUT of
tests/bench/gloss-scenes. All pictures are brightened alike, `GAIN` times in linear light (IEC 61966-2-1).
"""

import argparse
import json
from pathlib import Path

import numpy as np
from PIL import Image

HERE = Path(__file__).resolve().parent
SIDE_PX = 320
GAIN = 1.6
QUALITY = 80

# Name, folder, photo, stone (0: the ball), half side in mm (0: the whole stone), and what must be seen: a kind of flaw
# and the index of the one in the middle in the truth file (None: no particular one).
PICTURES = [
    ("pit", "samples", "close-up", 2, 4.2, ("pit", 2)),
    ("pits", "flaws", "pitted-2001", 8, 0, ("pit", None)),
    ("fracture", "samples", "close-up", 2, 5.2, ("fracture", 1)),
    ("fracture-long", "samples", "coarse-tray", 6, 11, ("fracture", 2)),
    ("chip", "flaws", "pitted-2008", 1, 9, ("chip", 0)),
    ("chip-red", "flaws", "pitted-2006", 4, 0, ("chip", None)),
    ("scratches", "scratches", "scratched-3104", 2, 9, ("scratch", 1)),
    ("scratches-agate", "scratches", "scratched-3105", 12, 0, ("scratch", None)),
    ("specks", "flaws", "pitted-2007", 2, 0, None),
    ("grains", "flaws", "pitted-2052", 9, 0, None),
    ("bands", "flaws", "pitted-2050", 1, 0, None),
    ("orbs", "flaws", "mid-2021", 7, 0, None),
    ("moss", "gloss", "development/development-17", 1, 0, None),
    ("lamp-here", "flaws", "pitted-2003", 6, 3.6, ("pit", 4)),
    ("lamp-there", "flaws", "moved/pitted-2003", 6, 3.6, ("pit", 4)),
    ("matte", "flaws", "pitted-2008", 8, 0, None),
    ("satin", "flaws", "mid-2022", 1, 0, None),
    ("semi-gloss", "gloss", "test/test-17", 2, 0, None),
    ("gloss", "gloss", "test/test-02", 2, 0, None),
    ("mirror", "flaws", "polished-2033", 9, 0, None),
    ("ball", "samples", "polished-tray", 0, 11, None),
]
CLEAN = {"specks", "grains", "bands", "orbs", "moss", "matte", "satin", "semi-gloss", "gloss", "mirror"}


def photo_of(folder: Path, name: str) -> Path:
    for ending in (".jpg", ".clean.jpg"):
        if (folder / f"{name}{ending}").exists():
            return folder / f"{name}{ending}"
    raise SystemExit(f"No photo {name} in {folder}")


def frame(truth: dict, stone: dict | None, half_mm: float, flaw: dict | None) -> tuple[float, float, float]:
    """Middle and half side of the crop, pixels."""
    if stone is None:
        return truth["ball"]["row"], truth["ball"]["column"], half_mm / truth["mmPerPx"]
    if flaw is not None:
        return flaw["row"], flaw["column"], half_mm / truth["mmPerPx"]
    rows, columns = zip(*stone["outline"])
    half = 0.56 * max(max(rows) - min(rows), max(columns) - min(columns))
    return (max(rows) + min(rows)) / 2, (max(columns) + min(columns)) / 2, half


def brightened(image: Image.Image) -> Image.Image:
    value = np.asarray(image, dtype=np.float64) / 255
    linear = np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4) * GAIN
    linear = np.clip(linear, 0, 1)
    encoded = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    return Image.fromarray(np.round(255 * encoded).astype(np.uint8))


def mark(flaw: dict, top: float, left: float, scale: float) -> dict:
    """A flaw in pixels of the crop."""
    place = {"kind": flaw["kind"], "row": round((flaw["row"] - top) * scale, 1)}
    place["column"] = round((flaw["column"] - left) * scale, 1)
    place |= {key: flaw[key] for key in ("diameterMm", "lengthMm", "widthMm") if key in flaw}
    if "path" in flaw:
        place["path"] = [[round((r - top) * scale, 1), round((c - left) * scale, 1)] for r, c in flaw["path"]]
    return place


def cut(folders: dict, name: str, folder: str, photo: str, number: int, half_mm: float, wanted) -> dict:
    path = photo_of(folders[folder], photo)
    truth = json.loads((folders[folder] / f"{photo}.json").read_text())
    stone = next((one for one in truth["stones"] if one["id"] == number), None)
    if (stone is None) != (number == 0):
        raise SystemExit(f"{name}: no stone {number} in {photo}")
    seen = [flaw for flaw in (stone or {"flaws": []})["flaws"] if flaw["visible"]]
    if name in CLEAN and seen:
        raise SystemExit(f"{name}: shows {[flaw['kind'] for flaw in seen]}")
    chosen = stone["flaws"][wanted[1]] if wanted and wanted[1] is not None else None
    if chosen and (chosen["kind"] != wanted[0] or not chosen["visible"]):
        raise SystemExit(f"{name}: flaw {wanted[1]} of {photo} {number} is no visible {wanted[0]}")
    row, column, half = frame(truth, stone, half_mm, chosen)
    top, left, scale = row - half, column - half, SIDE_PX / (2 * half)
    # Pixel centers lie on whole numbers, so the crop's corner is half a pixel further.
    box = (left + 0.5, top + 0.5, left + 0.5 + 2 * half, top + 0.5 + 2 * half)
    image = Image.open(path).convert("RGB")
    if min(box) < 0 or box[2] > image.width or box[3] > image.height:
        raise SystemExit(f"{name}: reaches over the edge of {photo}")
    crop = image.resize((SIDE_PX, SIDE_PX), Image.Resampling.LANCZOS, box)
    brightened(crop).save(HERE / f"{name}.webp", quality=QUALITY, method=6)
    kinds = [wanted[0]] if wanted else []
    marks = [mark(flaw, top, left, scale) for flaw in seen if flaw["kind"] in kinds]
    marks = [one for one in marks if 0 < one["row"] < SIDE_PX and 0 < one["column"] < SIDE_PX]
    if wanted and not marks:
        raise SystemExit(f"{name}: shows no {wanted[0]}")
    # A chip's place in the truth is the middle of the cut, which lies under the surface and beside what is seen.
    marks = [one for one in marks if one["kind"] != "chip"]
    about = {key: stone[key] for key in ("material", "alpha", "n")} if stone else {"material": "glass ball"}
    about |= {"photo": photo, "stone": number, "mmPerPx": round(truth["mmPerPx"] / scale, 5)}
    kinds_seen = sorted({flaw["kind"] for flaw in seen})
    return about | {"flaws": kinds_seen, "specks": len((stone or {}).get("decoys", [])), "marks": marks}


def main() -> None:
    parser = argparse.ArgumentParser()
    for folder in ("flaws", "scratches", "gloss"):
        parser.add_argument(f"--{folder}", type=Path, required=True)
    given = parser.parse_args()
    folders = {"samples": HERE.parent, "flaws": given.flaws, "scratches": given.scratches, "gloss": given.gloss}
    cuts = {name: cut(folders, name, *rest) for name, *rest in PICTURES}
    target = HERE.parent.parent / "src" / "ui" / "help" / "pictures.json"
    lines = [f"  {json.dumps(name)}: {json.dumps(about)}" for name, about in cuts.items()]
    target.write_text("{\n" + ",\n".join(lines) + "\n}\n")
    print(sum((HERE / f"{name}.webp").stat().st_size for name in cuts), "bytes in", len(cuts), "pictures")


main()
