"""A class kit as Python values: what is asked of the program, and the words that ask for it.

Lengths are whole nanometres, so that inches in 1/64 and millimetres are both exact.
"""

import dataclasses

MM = 1_000_000
INCH = 25_400_000


def length_text(length):
    """Inches where it is a whole 1/64 in and no tenth of a millimetre, else millimetres."""
    if length % 100_000 and length % (INCH // 64) == 0:
        return f"{length / INCH:.6f}".rstrip("0").rstrip(".") + " in"
    return f"{length // MM}.{length % MM:06}".rstrip("0").rstrip(".") + " mm"


@dataclasses.dataclass(frozen=True)
class Sheet:
    name: str
    w: int
    h: int
    price: int = 0  # smallest coin; 0 = not told
    grain: str = ""  # along its "long" or "short" side
    pattern: bool = False
    owned: int = 0
    limit: bool = False  # no more than `owned` can be had
    card: str = ""  # only this card's; empty = any


@dataclasses.dataclass(frozen=True)
class Blank:
    """Of `per_set` in every bag; `design` and `piece` tell where it comes from, None = plain."""

    name: str
    w: int
    h: int
    per_set: int = 1
    card: str = ""  # empty = the card of the first design, or the standard one
    design: int | None = None
    piece: str = ""


@dataclasses.dataclass
class Kit:
    sheets: list
    blanks: list  # the plain ones
    designs: list = dataclasses.field(default_factory=list)  # (file, per set)
    pieces: list = dataclasses.field(default_factory=list)  # what the designs are cut from, as Blank
    takers: int = 1
    spares: int = 0
    keep_grain: bool = False
    names: list = dataclasses.field(default_factory=list)
    units: str = "mm"
    plan: str = "fewest"  # or "easy"

    @property
    def sets(self):
        return self.takers + self.spares

    def demands(self):
        """{card: its blanks}, in the order in which the program letters them."""
        cards = {}
        for blank in [*self.pieces, *self.blanks]:
            cards.setdefault(blank.card, []).append(blank)
        return cards

    def sheets_for(self, card):
        """Those of the card where some are listed for it, else those of any card."""
        own = [sheet for sheet in self.sheets if card and sheet.card == card]
        return own or [sheet for sheet in self.sheets if not sheet.card]

    def priced(self, card):
        return all(sheet.price > 0 for sheet in self.sheets_for(card))

    def may_turn(self, sheet):
        return not self.keep_grain and not sheet.pattern

    def laid(self, sheet):
        """Width and height as it lies: where the grain counts, it runs upwards."""
        if self.keep_grain and sheet.grain and (sheet.grain == "long") != (sheet.h >= sheet.w):
            return sheet.h, sheet.w
        return sheet.w, sheet.h


def sheet_table(kit):
    rows = ["name,card,width,height,price,grain,pattern,at_hand,limit"]
    for s in kit.sheets:
        price = f"{s.price // 100}.{s.price % 100:02}" if s.price else ""
        rows.append(
            f"{s.name},{s.card},{length_text(s.w)},{length_text(s.h)},{price},{s.grain},"
            f"{int(s.pattern)},{s.owned},{int(s.limit)}"
        )
    return "\n".join(rows) + "\n"


def write_kit(kit, folder):
    """The words for the program after `kit`; tables go into `folder`."""
    (folder / "sheets.csv").write_text(sheet_table(kit), encoding="utf-8")
    words = [str(file) for file, _ in kit.designs]
    for file, per_set in kit.designs:
        words += ["--count", f"{file}={per_set}"]
    for blank in kit.blanks:
        card = f"card={blank.card}," if blank.card else ""
        words += ["--blank", f"{length_text(blank.w)}x{length_text(blank.h)}:count={blank.per_set},{card}name={blank.name}"]
    words += ["--stock", str(folder / "sheets.csv"), "--takers", str(kit.takers), "--spares", str(kit.spares)]
    words += ["--units", kit.units, "--plan", kit.plan]
    if kit.names:
        (folder / "names.txt").write_text("\n".join(kit.names) + "\n", encoding="utf-8")
        words += ["--names", str(folder / "names.txt")]
    return words + (["--keep-grain"] if kit.keep_grain else [])
