"""Reads every label of assembled guides with two independent decoders, whole and damaged.

usage: decode.py FOLDER CHROMIUM

FOLDER holds guides as `lockerleaf assemble` writes them, CHROMIUM is the browser that draws the SVG files. The decoders
are zxing-cpp (ISO/IEC 18004 reader of its own) and zbarimg. A label is damaged as its error-correction level should bear:
a patch over a share of its area, specks over a share of its modules. Exit 1 when a label is not read as the address in its
title, or too few of those with the graver damage; exit 77 when a tool is missing.
"""

import html
import math
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile

try:
    import zxingcpp
    from PIL import Image, ImageDraw
except ImportError as missing:
    print(f"labels: {missing.name} is not here")
    sys.exit(77)

MODULE = 8  # pixels
QUIET = 4  # modules
ROW = 8  # labels beside each other on the page that Chromium draws


def zxing(picture):
    found = zxingcpp.read_barcodes(picture)
    return {(code.text, code.ec_level) for code in found}


def zbar(path):
    done = subprocess.run(["zbarimg", "--raw", "-q", "--nodbus", str(path)], capture_output=True, text=True)
    return set(done.stdout.splitlines())


def drawn(labels, chromium, folder):
    """All labels, drawn by Chromium on one page and cut out again."""
    cell = max(side for _, _, side in labels) * MODULE
    rows = math.ceil(len(labels) / ROW)
    boxes = "".join(
        f'<img src="{path.as_uri()}" style="position:absolute;left:{at % ROW * cell}px;top:{at // ROW * cell}px;width:{side * MODULE}px">'
        for at, (path, _, side) in enumerate(labels)
    )
    page, shot = folder / "labels.html", folder / "labels.png"
    page.write_text(f"<!doctype html><body style='margin:0;background:#777'>{boxes}")
    subprocess.run(
        [chromium, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--no-first-run",
         "--disable-background-networking", "--disable-component-update", "--disable-sync", "--force-device-scale-factor=1",
         f"--user-data-dir={folder / 'profile'}", f"--window-size={ROW * cell},{rows * cell}", f"--screenshot={shot}", page.as_uri()],
        check=True, capture_output=True, timeout=120,
    )
    whole = Image.open(shot).convert("L")
    for at, (path, address, side) in enumerate(labels):
        left, top = at % ROW * cell, at // ROW * cell
        yield path, address, whole.crop((left, top, left + side * MODULE, top + side * MODULE))


def patched(picture, share, dice):
    """A white patch somewhere between the finder patterns, over a share of the code without its quiet zone."""
    out = picture.copy()
    symbol = out.width - 2 * QUIET * MODULE
    side = round(symbol * math.sqrt(share))
    # Right of and below the middle of the finder patterns' rows and columns: they and their format words stay.
    low, high = (QUIET + 9) * MODULE, out.width - QUIET * MODULE - side
    x, y = dice.randint(min(low, high), high), dice.randint(min(low, high), high)
    ImageDraw.Draw(out).rectangle((x, y, x + side, y + side), fill=255)
    return out


def specked(picture, share, dice):
    """Specks of one module over a share of all modules, dark ones and light ones, none on the finder patterns."""
    out = picture.copy()
    side = out.width // MODULE - 2 * QUIET
    pen = ImageDraw.Draw(out)
    corners = [(0, 0), (0, side - 8), (side - 8, 0)]
    finder = {(left + x, top + y) for left, top in corners for x in range(9) for y in range(9)}
    modules = [(x, y) for y in range(side) for x in range(side) if (x, y) not in finder]
    for x, y in dice.sample(modules, round(side * side * share)):
        x, y = (x + QUIET) * MODULE, (y + QUIET) * MODULE
        pen.rectangle((x, y, x + MODULE - 1, y + MODULE - 1), fill=dice.choice((0, 255)))
    return out


def main(guides, chromium):
    if not shutil.which("zbarimg"):
        print("labels: zbarimg is not here")
        return 77
    labels = []
    for path in sorted(guides.glob("*/*/code.svg")):
        text = path.read_text()
        address = html.unescape(re.search("<title>(.*?)</title>", text)[1])
        labels.append((path.resolve(), address, int(re.search('viewBox="0 0 ([0-9]+)', text)[1])))
    if not labels:
        print(f"labels: there is no label in {guides}")
        return 1
    counts, wrong = {}, []

    def read(kind, path, address, picture, level=None):
        with_level = zxing(picture)
        picture.save(scratch)
        for decoder, texts in (("zxing-cpp", {text for text, _ in with_level}), ("zbarimg", zbar(scratch))):
            good, all_ = counts.get((kind, decoder), (0, 0))
            counts[kind, decoder] = (good + (texts == {address}), all_ + 1)
            if texts != {address} and kind in MUST:
                wrong.append(f"{path}: {decoder} reads {texts or 'nothing'} from the {kind}, not {address}")
        return next((level for _, level in with_level), None)

    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        scratch = folder / "one.png"
        for path, address, picture in drawn(labels, chromium, folder):
            level = read("SVG", path, address, picture)
            if path.with_suffix(".png").exists():
                read("PNG", path, address, Image.open(path.with_suffix(".png")).convert("L"))
            dice = random.Random(address)
            for kind, damage, share in DAMAGE.get(level, ()):
                read(kind, path, address, damage(picture, share, dice))
    for (kind, decoder), (good, all_) in sorted(counts.items()):
        print(f"{kind:<18} {decoder:<10} {good} of {all_}")
        if good < MOST * all_:
            wrong.append(f"{decoder} reads too few of the labels with {kind}")
    print("\n".join(wrong))
    return 1 if wrong else 0


DAMAGE = {
    "Q": [("Q, patch of 10 %", patched, 0.10), ("Q, specks on 2 %", specked, 0.02)],
    "H": [("H, patch of 15 %", patched, 0.15), ("H, specks on 2 %", specked, 0.02)],
}
# Where a patch falls decides: four labels of five must bear the graver damage, and all of them what is named here.
MUST = {"SVG", "PNG", "Q, specks on 2 %", "H, specks on 2 %"}
MOST = 0.8

if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    sys.exit(main(pathlib.Path(sys.argv[1]), sys.argv[2]))
