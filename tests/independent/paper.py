"""Reads a printed plan back: the words that pdftotext finds on its pages, put together to blocks and lines."""

import dataclasses
import re
import statistics
import subprocess
import xml.etree.ElementTree as xml

LIGATURES = {"\ufb00": "ff", "\ufb01": "fi", "\ufb02": "fl", "\ufb03": "ffi", "\ufb04": "ffl", "\u00a0": " ", "\u2007": " "}
POINT = 25.4 / 72  # mm
DEEPEST_MARK = 2.5  # mm; numbers of steps are flush on the right


@dataclasses.dataclass
class Word:
    left: float  # mm from the page's upper left corner
    top: float
    right: float
    bottom: float
    text: str

    @property
    def height(self):
        return self.bottom - self.top


@dataclasses.dataclass
class Line:
    left: float
    top: float
    height: float
    text: str


@dataclasses.dataclass
class Block:
    """A heading and its lines: (mark, sentence); the mark is empty where there is none."""

    heading: str
    items: list


@dataclasses.dataclass
class Page:
    width: float  # mm
    height: float
    words: list

    def without_foot(self):
        """The words above `page 1 of 2`; None on pages without it."""
        foot = [w for w in self.words if w.text == "page" and w.top > 0.9 * self.height]
        return [w for w in self.words if w.bottom < foot[-1].top] if foot else None


def read_pages(pdf):
    done = subprocess.run(["pdftotext", "-bbox", str(pdf), "-"], capture_output=True, check=True, timeout=60)
    # Characters that XML does not know would come from a name; the page shows none of them.
    text = re.sub(r"[\x00-\x08\x0b\x0c\x0e-\x1f]", "", done.stdout.decode("utf-8"))
    body = text[text.index("<doc>") : text.index("</doc>") + 6]
    pages = []
    for page in xml.fromstring(body).iter("page"):
        words = []
        for word in page.iter("word"):
            corner = [float(word.get(key)) * POINT for key in ("xMin", "yMin", "xMax", "yMax")]
            words.append(Word(*corner, plain(word.text or "")))
        pages.append(Page(float(page.get("width")) * POINT, float(page.get("height")) * POINT, words))
    return pages


def plain(text):
    for odd, letters in LIGATURES.items():
        text = text.replace(odd, letters)
    return text


def lines_of(words):
    """Words side by side, from the top."""
    lines = []
    for word in sorted(words, key=lambda w: (w.top, w.left)):
        middle = (word.top + word.bottom) / 2
        for line in lines:
            if line[0].top < middle < line[0].bottom:
                line.append(word)
                break
        else:
            lines.append([word])
    result = []
    for line in lines:
        line.sort(key=lambda w: w.left)
        result.append(Line(line[0].left, line[0].top, line[0].height, " ".join(w.text for w in line)))
    return result


def blocks_of(words, marks=r"[•!]", begins=False):
    """Headings are set larger than their lines; a line further in than a mark goes on with the one above.

    `begins`: the first line is a heading for certain, however few lines there are.
    """
    blocks = []
    if not words:
        return blocks
    lines = lines_of(words)
    body = lines[0].height / 1.3 if begins else statistics.mode(round(line.height, 1) for line in lines)
    left = min(line.left for line in lines)
    was_heading = False
    for line in lines:
        is_heading = line.height > 1.15 * body
        if is_heading and was_heading and abs(line.height - size) < 0.1:
            blocks[-1].heading += " " + line.text
        elif is_heading:
            blocks.append(Block(line.text, []))
        elif blocks and blocks[-1].items and line.left > left + DEEPEST_MARK:
            blocks[-1].items[-1][1] += " " + line.text
        elif blocks:
            mark, _, rest = line.text.partition(" ")
            blocks[-1].items.append([mark, rest] if re.fullmatch(marks, mark) else ["", line.text])
        was_heading, size = is_heading, line.height
    return blocks


def split_page(words):
    """(words over the whole width, [words of each layout's text]); pictures are left out."""
    titles = []
    for i, word in enumerate(words[:-1]):
        after = words[i + 1]
        if word.text == "Layout" and re.fullmatch(r"\d+:", after.text) and abs(after.top - word.top) < 0.5:
            titles.append(word)
    if not titles:
        return words, []
    titles.sort(key=lambda w: w.top)
    head = [w for w in words if w.bottom < titles[0].top - 2]  # the picture begins level with its text
    layouts = []
    for i, title in enumerate(titles):
        end = titles[i + 1].top - 0.5 if i + 1 < len(titles) else float("inf")
        layouts.append([w for w in words if w.left > title.left - 1 and title.top - 0.5 <= w.top < end])
    return head, layouts


@dataclasses.dataclass
class Paper:
    lists: dict  # heading -> its items, of the pages' upper part
    head: list  # the sentences below the title
    layouts: list  # Block of each layout
    labels: list  # lines of each bag's label


def read_paper(pdf, label):
    """`label` = width and height of a bag's label in mm."""
    paper = Paper({}, [], [], [])
    for number, page in enumerate(read_pages(pdf)):
        words = page.without_foot()
        if words is None:
            paper.labels += labels_of(page, label)
            continue
        head, layouts = split_page(words)
        for block in blocks_of(head):
            if number == 0 and not paper.head and not paper.lists:
                paper.head = [block.heading, *(text for _, text in block.items)]
            paper.lists.setdefault(block.heading, []).extend(text for _, text in block.items)
        paper.layouts += [blocks_of(words, r"[•!]|\d+", begins=True)[0] for words in layouts]
    return paper


def labels_of(page, label):
    """The lines of every label, row by row; labels lie side by side in the middle of the page."""
    width, height = label
    columns, rows = int((page.width - 16 + 1e-6) / width), int((page.height - 16 + 1e-6) / height)
    left, top = (page.width - columns * width) / 2, (page.height - rows * height) / 2
    cells = {}
    for word in page.words:
        cell = int((word.top - top) / height), int((word.left - left) / width)
        cells.setdefault(cell, []).append(word)
    return [[line.text for line in lines_of(cells[cell])] for cell in sorted(cells)]
