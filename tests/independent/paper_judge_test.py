"""Every fault planted in sound pages or a sound table is found."""

import copy
import re

import paper_judge
import same_judge
from judged import KIT, Judged


class PaperFaults(Judged):
    def planted(self, change, kind):
        pages = copy.deepcopy(self.paper)
        change(pages)
        self.expect(kind, paper_judge.judge_paper(KIT, pages) + same_judge.judge_same(KIT, self.plan, pages))

    def steps(self, pages):
        """(items, index) of every step of the layout with the most."""
        layout = max(pages.layouts, key=lambda block: sum(mark.isdigit() for mark, _ in block.items))
        return layout.items, [i for i, (mark, _) in enumerate(layout.items) if mark.isdigit()]

    def in_step(self, pattern, words):
        """Puts other words into the first step that has the pattern."""

        def change(pages):
            for layout in pages.layouts:
                for item in layout.items:
                    if item[0].isdigit() and re.search(pattern, item[1]):
                        item[1] = re.sub(pattern, words, item[1], count=1)
                        return
            self.fail(f"no step has {pattern}")

        return change

    def test_the_sound_pages_pass(self):
        self.assertEqual(paper_judge.judge_paper(KIT, self.paper), [])
        self.assertEqual(same_judge.judge_same(KIT, self.plan, self.paper), [])
        self.assertEqual(same_judge.judge_table(KIT, self.plan, self.table), [])

    def test_a_lost_step(self):
        items, at = self.steps(self.paper)
        for lost in range(len(at)):

            def lose(pages):
                items, at = self.steps(pages)
                items.pop(at[lost])

            with self.subTest(step=items[at[lost]]):
                self.planted(lose, "steps")

    def test_a_lost_step_that_the_numbers_hide(self):
        count = len(self.steps(self.paper)[1])
        for lost in range(count):

            def lose(pages):
                items, at = self.steps(pages)
                items.pop(at[lost])
                for number, i in enumerate(self.steps(pages)[1], 1):
                    items[i][0] = str(number)

            with self.subTest(step=lost):
                self.planted(lose, "steps")

    def test_two_steps_exchanged(self):
        def exchange(pages):
            items, at = self.steps(pages)
            items[at[0]][1], items[at[-1]][1] = items[at[-1]][1], items[at[0]][1]

        self.planted(exchange, "steps")

    def test_another_setting(self):
        self.planted(self.in_step(r"Set (\d+) mm", "Set 19 mm"), "steps")

    def test_another_number_of_cuts(self):
        self.planted(self.in_step(r"cut (\d+) times", "cut 9 times"), "steps")
        self.planted(self.in_step(r"(\d+) strips? from", "7 strips from"), "steps")

    def test_another_letter(self):
        self.planted(self.in_step(r"× A", "× B"), "steps")

    def test_a_step_in_other_words(self):
        self.planted(self.in_step(r"Set", "Put"), "steps")

    def test_a_sheet_that_is_not_turned(self):
        self.planted(self.in_step(r"Lay the sheet as drawn, a quarter turned\. ", ""), "steps")

    def test_a_wrong_offcut(self):
        def other(pages):
            for layout in pages.layouts:
                for item in layout.items:
                    if "offcut" in item[1]:
                        item[1] = re.sub(r"of .*", "of 99 × 98 mm", item[1])

        self.planted(other, "offcuts")

    def test_a_card_that_is_not_told(self):
        def silent(pages):
            pages.layouts[0].items = [item for item in pages.layouts[0].items if not item[1].startswith("Card: ")]

        self.planted(silent, "card")

    def test_the_card_of_another_layout(self):
        def other(pages):
            for item in pages.layouts[-1].items:
                if item[1].startswith("Card: "):
                    item[1] = "Card: another one"

        self.assertGreater(len(self.paper.layouts), 1)
        self.planted(other, "card")

    def test_a_wrong_note(self):
        def upright(pages):
            for layout in pages.layouts:
                layout.items = [[mark, text.replace("on its long side", "upright")] for mark, text in layout.items]

        def silent(pages):
            for layout in pages.layouts:
                layout.items = [item for item in layout.items if item[0] != "!"]

        self.planted(upright, "notes")
        self.planted(silent, "notes")

    def test_a_name_that_vanishes(self):
        self.planted(lambda pages: pages.labels.pop(1), "labels")
        self.planted(lambda pages: pages.labels[2].__setitem__(0, "Name:"), "labels")
        self.planted(lambda pages: pages.labels[0].__setitem__(-1, "5 blanks, see the packing list"), "labels")

    def test_a_wrong_list(self):
        def other(heading, at, text):
            return lambda pages: pages.lists[heading].__setitem__(at, text)

        self.planted(other("In each bag", 0, "2 blanks A: Strip, 21 × 78 mm"), "parts-list")
        self.planted(other("In each bag", 0, "3 blanks A: Strip, 21 × 79 mm"), "parts-list")
        self.planted(other("In each bag", 0, "3 blanks A: Tag, 21 × 78 mm"), "parts-list")
        self.planted(lambda pages: pages.lists["Shopping list"].pop(0), "shopping")
        self.planted(lambda pages: pages.lists.__setitem__("Left over, cut beyond what is needed", ["99 of A: Strip"]), "left-over")
        self.planted(lambda pages: pages.head.__setitem__(1, "For 8 people"), "people")

    def test_a_wrong_price(self):
        def dearer(pages):
            lines = pages.lists["Shopping list"]
            at = next(i for i, line in enumerate(lines) if "costs" in line)
            lines[at] = re.sub(r"costs [\d.]+", "costs 0.01", lines[at])

        self.planted(dearer, "shopping")

    def test_another_plan_than_in_the_file(self):
        self.planted(lambda pages: pages.layouts.pop(), "same")
        self.planted(lambda pages: pages.head.__setitem__(2, "99 sheets, proven: fewer cannot do."), "sheets")
        moved = re.sub(r",0\.000,", ",0.600,", self.table, count=1)
        self.expect("table", same_judge.judge_table(KIT, self.plan, moved))
        self.expect("table", same_judge.judge_table(KIT, self.plan, "\r\n".join(self.table.split("\r\n")[:-2])))
