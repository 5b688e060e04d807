"""check.py GUIDE PRINT VAN: holds the PDFs of a van against its guide as HTML, with readers that others wrote.

Fonts, tags, language and form by qpdf and poppler; words and their order against the pages; codes by zxing-cpp and zbar;
positions of labels in rendered pixels against the geometry.
"""

import html.parser
import pathlib
import re
import subprocess
import sys
import tempfile
import tomllib

import zxingcpp
from PIL import Image

guide, printed, van = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]), sys.argv[3]
book = tomllib.loads(pathlib.Path("book.toml").read_text())
key = tomllib.loads(pathlib.Path(f"models/{van}.toml").read_text())["key"]
pages = guide / key
failures = []


def run(*command):
    done = subprocess.run(command, capture_output=True)
    return done.returncode, done.stdout.decode(errors="replace")


def hold(is_so, words):
    if not is_so:
        failures.append(words)


# The form of each PDF.
def form(pdf, title):
    name = pdf.name
    code, said = run("qpdf", "--check", str(pdf))
    hold(code == 0, f"{name}: qpdf: {said[-300:]}")
    _, info = run("pdfinfo", str(pdf))
    hold(re.search(r"Tagged:\s+yes", info), f"{name}: not tagged")
    hold(re.search(rf"Title:\s+{re.escape(title)}", info), f"{name}: title is not {title}")
    _, fonts = run("pdffonts", str(pdf))
    rows = [line for line in fonts.splitlines()[2:] if line.strip()]
    hold(rows and all(re.search(r"\s(yes|no)\s+yes\s", row[36:]) or " yes yes " in row for row in rows), f"{name}: a font is not embedded:\n{fonts}")
    raw = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", str(pdf), "-"], capture_output=True).stdout
    hold(b"/Lang (en" in raw, f"{name}: no language")
    hold(b"pdfuaid:part" in raw or b"pdfuaid" in raw, f"{name}: does not say PDF/UA")
    return raw


# What a page says in notes and steps, section by section.
class Items(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.sections, self.depth, self.skip, self.stack = [[]], 0, 0, []

    def handle_starttag(self, tag, given):
        given = dict(given)
        if tag in ("br", "img", "hr", "input", "meta", "link", "wbr", "path"):
            return
        classes = (given.get("class") or "").split()
        self.stack.append((tag, classes))
        if "codes" in classes:
            self.skip += 1
        if tag in ("h2", "h3"):
            self.sections.append([])
        if tag == "li" or (tag == "p" and self.inside("note")):
            self.sections[-1].append("")

    def handle_endtag(self, tag):
        while self.stack:
            open_tag, classes = self.stack.pop()
            if "codes" in classes:
                self.skip -= 1
            if open_tag == tag:
                break

    def inside(self, name):
        return any(name in classes for _, classes in self.stack)

    def handle_data(self, words):
        counts = (self.inside("note") and any(tag in ("p", "li") for tag, _ in self.stack)) or (
            any(tag == "li" for tag, _ in self.stack) and any(tag == "ol" for tag, _ in self.stack)
        )
        if counts and not self.skip and self.sections[-1]:
            self.sections[-1][-1] += words


def bare(words):
    return re.sub(r"[^\w]+", "", words.replace("\u2019", "").replace("†", "")).lower()


def words_of(pdf):
    """All words without headers, footers and references to pages."""
    _, size = run("pdfinfo", str(pdf))
    width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", size).groups())
    top, bottom = 38, 36
    _, text = run("pdftotext", "-nopgbrk", "-x", "0", "-y", str(top), "-W", str(int(width)), "-H", str(int(height) - top - bottom), str(pdf), "-")
    one = r"(?:[A-Z]{1,2}\d{1,2},\s+)?page\s+\d+"
    return bare(re.sub(rf"\(\s*{one}(?:;\s+{one})*\s*\)", " ", text))


def notes_and_steps(pdf):
    said, checked = words_of(pdf), 0
    for path in sorted(pages.glob("part/*/index.html")):
        reader = Items()
        reader.feed(path.read_text())
        for section in reader.sections:
            items = [bare(item) for item in section if bare(item)]
            if not items:
                continue
            checked += len(items)
            starts = [match.start() for match in re.finditer(re.escape(items[0]), said)]
            hold(any(in_order(said, start, items) for start in starts), f"{pdf.name}: {path.parent.name}: not in order: {section[0][:60]!r} ({len(starts)} found)")
    hold(checked > 300, f"only {checked} notes and steps were looked for")
    return checked


def in_order(said, start, items):
    at = start
    for item in items:
        found = said.find(item, at)
        if found < 0 or found - at > 1500:
            return False
        at = found + len(item)
    return True


# Codes.
def pictures(pdf, resolution, folder, first=1, last=9999):
    run("pdftoppm", "-r", str(resolution), "-f", str(first), "-l", str(last), "-gray", "-png", str(pdf), f"{folder}/{pdf.stem}-{resolution}")
    return sorted(pathlib.Path(folder).glob(f"{pdf.stem}-{resolution}-*.png"))


def decoded(pdf, folder, first=1, last=9999):
    by_zxing, by_zbar = set(), set()
    for picture in pictures(pdf, 150, folder, first, last):
        read = {code.text for code in zxingcpp.read_barcodes(Image.open(picture))}
        by_zxing |= read
        if read:
            by_zbar |= set(run("zbarimg", "--raw", "-q", "--nodbus", str(picture))[1].split())
    return by_zxing, by_zbar


def pages_of(pdf, chapter):
    """The first and last pages whose header names a chapter."""
    _, text = run("pdftotext", "-layout", str(pdf), "-")
    numbers = [number for number, page in enumerate(text.split("\f"), 1) if chapter in page.strip().split("\n")[0]]
    return numbers[0], numbers[-1]


def address(code):
    scheme, host = book["guides"]["address"].split("://")
    return f"{scheme}://{host}".upper() + f"/{key}/{code}/"


# Positions, in mm: the sheets that a book has when it says nothing of them.
SHEETS = {
    "labels": {"first": (12, 12.5), "label": (90, 42), "gap": (6, 4), "columns": 2, "rows": 6},
    "strips": {"first": (12, 15), "label": (90, 24), "gap": (6, 3), "columns": 2, "rows": 10},
}
MARGIN, QUIET, RESOLUTION = 1.5, 4, 300


def positions(pdf, sheet, count, folder):
    worst = 0.0
    side = min(sheet["label"][1] - 2 * MARGIN, sheet["label"][0] / 2 - MARGIN)
    page = pictures(pdf, RESOLUTION, folder)[0]
    image = Image.open(page).convert("L")
    scale = RESOLUTION / 25.4
    for number in range(min(count, sheet["columns"] * sheet["rows"])):
        row, column = divmod(number, sheet["columns"])
        x, y = (sheet["first"][axis] + step * (sheet["label"][axis] + sheet["gap"][axis]) + MARGIN for axis, step in ((0, column), (1, row)))
        box = [round(edge * scale) for edge in (x - 1, y - 1, x + side, y + side)]
        dark = image.crop(box).point(lambda value: 255 if value < 128 else 0).getbbox()
        if dark is None:
            hold(False, f"{pdf.name}: nothing is printed at position {number + 1}")
            continue
        # The code and its quiet zone fill the square, so its width tells how many modules it has: 4 a version more than 17.
        width = (dark[2] - dark[0]) / scale
        modules = 17 + 4 * round((2 * QUIET * width / (side - width) - 17) / 4)
        exact = side * modules / (modules + 2 * QUIET)
        hold(modules >= 21 and abs(width - exact) <= 0.2, f"{pdf.name}: the code at position {number + 1} is {width:.2f} mm wide")
        quiet = QUIET * side / (modules + 2 * QUIET)
        left, top = (box[0] + dark[0]) / scale, (box[1] + dark[1]) / scale
        worst = max(worst, abs(left - (x + quiet)), abs(top - (y + quiet)))
    hold(worst <= 0.2, f"{pdf.name}: {worst:.3f} mm off")
    return worst


def ruler(pdf, folder):
    """The line on the test sheet is 100 mm long, within 0.2 mm; outlines stand where the labels do."""
    image = Image.open(pictures(pdf, RESOLUTION, folder)[0]).convert("L")
    scale = RESOLUTION / 25.4
    near = [image.getpixel((round(12 * scale) + step, round(33 * scale))) for step in (-2, -1, 0, 1, 2)]
    hold(min(near) < 200, f"{pdf.name}: no outline at the left of the first label")
    longest = 0
    for y in range(image.height):
        runs = re.findall(rb"\x01+", image.crop((0, y, image.width, y + 1)).point(lambda value: value < 160).tobytes())
        longest = max([longest] + [len(one) for one in runs if len(one) < 110 * scale])
    hold(abs(longest / scale - 100) <= 0.2, f"{pdf.name}: the ruler is {longest / scale:.2f} mm long")
    return longest / scale


folder = printed / van
title = tomllib.loads(pathlib.Path(f"models/{van}.toml").read_text())["name"]
booklet = folder / "booklet-a5.en.pdf"
raw = form(booklet, f"Owner guide: {title}")
hold(b"/Outlines" in raw, "the booklet has no bookmarks")
form(folder / "record.en.pdf", f"Handover record: {title}")
form(folder / "labels.pdf", f"Labels: {title}")
form(folder / "strips.pdf", f"Narrow labels: {title}")
form(printed / "test-sheet.pdf", "Test sheet")
checked = notes_and_steps(booklet)

labelled = {address(path.parent.name) for path in pages.glob("*/code.svg")}
hold(len(labelled) > 5, "the guide has no codes")
with tempfile.TemporaryDirectory() as work:
    read = [decoded(folder / f"{name}.pdf", work) for name in ("labels", "strips")]
    counts = [len(codes) for codes, _ in read]
    for number, name in enumerate(("zxing-cpp", "zbar")):
        codes = read[0][number] | read[1][number]
        hold(codes == labelled, f"labels: {name} misses {sorted(labelled - codes)}, adds {sorted(codes - labelled)}")
    for codes, name in zip(decoded(booklet, work, *pages_of(booklet, "Where are you standing?")), ("zxing-cpp", "zbar")):
        hold(codes >= labelled, f"booklet: {name} misses {sorted(labelled - codes)}")
    fingerprint = re.search(r"[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}", (pages / "about/index.html").read_text()).group()
    for codes in decoded(folder / "record.en.pdf", work, 1, 1):
        hold(fingerprint.upper() in codes, f"record: its fingerprint is not {fingerprint}: {codes}")
    worst = max(positions(folder / f"{name}.pdf", SHEETS[name], count, work) for name, count in zip(SHEETS, counts))
    length = ruler(printed / "test-sheet.pdf", work)

for failure in failures[:20]:
    print(failure)
print(f"paper: {checked} notes and steps in order, {len(labelled)} labels read twice, positions within {worst:.3f} mm, ruler {length:.2f} mm, {len(failures)} failures")
sys.exit(1 if failures else 0)
