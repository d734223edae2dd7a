"""Carries out the worded steps at the trimmer, one sentence after the other, on a rectangle.

A person lays a part with one side against the fence, sets the width that comes off and cuts; strips are turned by
a quarter and cut again. Nothing but the sentences is used. Lengths are nanometres; one that is printed as about
(`~2 7/16 in`) carries half its raster as slack, and so does what is cut with it.
"""

import dataclasses
import re
from fractions import Fraction

from class_kit import INCH, MM

RAISED = dict(zip("⁰¹²³⁴⁵⁶⁷⁸⁹", "0123456789"))
LOWERED = dict(zip("₀₁₂₃₄₅₆₇₈₉", "0123456789"))
FRACTION = rf"[{''.join(RAISED)}]+⁄[{''.join(LOWERED)}]+"
NUMBER = rf"~?(?:\d+(?:\.\d+)?{FRACTION}|\d+(?:\.\d+)?|{FRACTION})"
LENGTH = rf"{NUMBER} (?:mm|in)"
LEAST_STRIP = 20 * MM  # held down at a trimmer (common practice, no published source)
RASTER = {"mm": MM // 100, "in": INCH // 16}


@dataclasses.dataclass(frozen=True)
class Told:
    """A length as printed: its value, and how far the true one may be from it."""

    value: int
    slack: int = 0

    def minus(self, other):
        return Told(self.value - other.value, self.slack + other.slack)

    def may_be(self, length):
        return abs(self.value - length) <= self.slack

    def may_equal(self, other):
        return abs(self.value - other.value) <= self.slack + other.slack


def read_length(text, unit=None):
    """`2 7/16 in` with set fractions, `~39.69 mm`; without its unit where that is known.

    Where a mark would cut too small the millimetres stand behind it, `~3 13/16 in (97 mm)`: they are what is set.
    """
    number, _, named = text.partition(" ")
    unit = named or unit
    match = re.fullmatch(rf"(~?)(\d+(?:\.\d+)?)?({FRACTION})?", number)
    value = Fraction(match[2] or 0)
    if match[3]:
        top, bottom = match[3].split("⁄")
        value += Fraction(int("".join(RAISED[c] for c in top)), int("".join(LOWERED[c] for c in bottom)))
    nm = value * (MM if unit == "mm" else INCH)
    return Told(int(nm), RASTER[unit] // 2 + 1 if match[1] else 0)


def read_size(text):
    """`10 1/4 × 9 1/4 in`: both sides in the unit that stands once."""
    first, second = text.split(" × ")
    second_length = read_length(second)
    return read_length(first, second.split(" ")[1]), second_length


@dataclasses.dataclass
class Part:
    """A rectangle as it lay on the sheet; `fence` is the axis that is measured from the fence."""

    x: Told
    y: Told
    fence: str = "x"

    def along(self):
        return self.x if self.fence == "x" else self.y

    def turned(self):
        return Part(self.x, self.y, "y" if self.fence == "x" else "x")

    def sized(self, length):
        """The same with another size along the fence's axis."""
        return Part(length, self.y, "x") if self.fence == "x" else Part(self.x, length, "y")


SENTENCE = re.compile(
    rf"(?:(?P<sheet>Lay the sheet as drawn, a quarter turned)\. |Take what is left after cut (?P<rest>\d+), turn it\. "
    rf"|Take (?P<strips>\d+) strips? from cut (?P<cut>\d+), turned\. )?"
    rf"(?:Set |(?P<knife>With knife and ruler ))(?P<mark>{LENGTH} \()?(?P<set>{LENGTH})(?(mark)\))(?(knife) wide), cut(?P<each> each)?(?: (?P<times>\d+) times)?: "
    rf"(?:(?P<off>\d+) strips?|(?P<pieces>\d+) × (?P<letter>[A-Z]+))(?:; what is left is (?P<left>[A-Z]+))?\."
)


class Trimmer:
    """What lies on the table while the steps are carried out."""

    def __init__(self, width, height, faults, where):
        self.faults, self.where = faults, where
        self.parts = [Part(Told(width), Told(height))]
        self.strips = {}  # step -> strips that came off, not yet taken
        self.rests = {}  # step -> what it left
        self.pieces = []  # (letter, part)
        self.steps = 0

    def fault(self, text):
        self.faults.add("steps", f"{self.where}, step {self.steps}: {text}")

    def follow(self, number, sentence):
        self.steps += 1
        if int(number) != self.steps:
            self.fault(f"is called step {number}")
        words = SENTENCE.fullmatch(sentence)
        if not words:
            self.fault(f"not understood: {sentence}")
            return
        self.take_up(words)
        if self.parts:
            self.cut(words)

    def take_up(self, words):
        """The parts that the step works on."""
        if words["sheet"]:
            if self.steps != 1:
                self.fault("turns the sheet, which is cut already")
            self.parts = [part.turned() for part in self.parts]
        elif words["rest"]:
            self.put_down()
            self.parts = [part.turned() for part in self.rests.pop(int(words["rest"]), [])]
            if not self.parts:
                self.fault(f"nothing is left after cut {words['rest']}")
        elif words["cut"]:
            self.put_down()
            lying, wanted = self.strips.pop(int(words["cut"]), []), int(words["strips"])
            self.parts = [part.turned() for part in lying[:wanted]]
            if lying[wanted:]:  # strips that are equally wide and cut up otherwise
                self.strips[int(words["cut"])] = lying[wanted:]
            if len(self.parts) != wanted:
                self.fault(f"takes {wanted} strips from cut {words['cut']}, where {len(self.parts)} lie")
        elif self.steps > 1 and not self.parts:
            self.fault("nothing lies at the fence")

    def put_down(self):
        if self.parts:
            self.rests[self.steps - 1] = self.parts
        self.parts = []

    def cut(self, words):
        setting, times = read_length(words["set"]), int(words["times"] or 1)
        if bool(words["each"]) != (len(self.parts) > 1):
            self.fault(f"{'each of ' if words['each'] else ''}{len(self.parts)} parts are cut")
        told = int(words["off"] or words["pieces"])
        narrow = min(side.value for part in self.parts for side in (setting, part.x, part.y)) < LEAST_STRIP
        off, rests = [], []
        for part in self.parts:
            if setting.value * times > part.along().value + part.along().slack + times * setting.slack:
                self.fault(f"{words['set']} is set {times} times for {part.along().value / MM:g} mm")
            rest = part.along()
            for _ in range(times):
                off.append(part.sized(setting))
                rest = rest.minus(setting)
            rests.append(part.sized(rest))
        if told == len(off) + len(rests):  # the last one needs no cut
            if not all(rest.along().may_equal(setting) for rest in rests):
                self.fault("what is left is not as wide as the others")
            off, rests = off + rests, []
        elif told != len(off):
            self.fault(f"{told} are told to come off, {len(off)} do")
        if narrow != bool(words["knife"]):
            self.fault(f"{words['set']}: {'at the trimmer, too narrow for it' if narrow else 'with a knife, though it is wide'}")
        self.keep(words, off, rests)

    def keep(self, words, off, rests):
        if words["letter"]:
            self.pieces += [(words["letter"], part) for part in off]
        else:
            self.strips[self.steps] = off
        if words["left"]:
            self.pieces += [(words["left"], part) for part in rests]
            rests = []
        self.parts = [part for part in rests if part.along().value > part.along().slack]

    def finish(self):
        """What is left over; strips that nobody takes were cut for nothing."""
        self.steps += 1
        self.put_down()
        for step, strips in self.strips.items():
            self.faults.add("steps", f"{self.where}: {len(strips)} strips of cut {step} are never cut up")
        return [part for parts in self.rests.values() for part in parts]
