"""Every fault planted in a sound plan is found."""

import copy

import plan_judge
from judged import KIT, Judged


class PlanFaults(Judged):
    def planted(self, change, kind):
        plan = copy.deepcopy(self.plan)
        change(plan["cards"][0])
        self.expect(kind, plan_judge.judge_plan(KIT, plan))

    def test_the_sound_plan_passes(self):
        self.assertEqual(plan_judge.judge_plan(KIT, self.plan), [])
        self.assertGreater(len(self.plan["cards"][0]["layouts"]), 1)

    def test_a_moved_part(self):
        def nearer(card):
            first, second = card["layouts"][0]["pieces"][:2]
            second["x"], second["y"] = first["x"] + 1, first["y"] + 1

        self.planted(nearer, "overlap")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(x=400.0), "outside")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(x=0.5), "tree")

    def test_a_missing_piece(self):
        self.planted(lambda card: card["layouts"][0]["pieces"].pop(), "tree")
        self.planted(lambda card: card["layouts"].pop(), "missing")

    def test_a_wrong_count(self):
        self.planted(lambda card: card["layouts"][0].update(count=card["layouts"][0]["count"] - 1), "sheets")
        self.planted(lambda card: card["layouts"][0].update(count=0), "sheets")
        self.planted(lambda card: card["demands"][0].update(quantity=23), "quantity")
        self.planted(lambda card: card["demands"][0].update(left_over=card["demands"][0]["left_over"] + 1), "left-over")

    def test_a_false_proof(self):
        self.planted(lambda card: card.update(bound=card["cost"] - 1, proven=True), "proof")
        self.planted(lambda card: card.update(bound=card["cost"] + 1), "bound")
        self.planted(lambda card: card.update(proven=not card["proven"]), "proof")

    def test_a_wrong_cost(self):
        self.planted(lambda card: card.update(cost=card["cost"] - 10, bound=card["cost"] - 10), "cost")

    def test_more_sheets_than_are_at_hand(self):
        def of_the_scarce(card):
            card["layouts"] = [layout for layout in card["layouts"] if layout["stock"] == "Big"] * 2

        self.assertTrue(any(layout["stock"] == "Big" for layout in self.plan["cards"][0]["layouts"]))
        self.planted(of_the_scarce, "at-hand")

    def test_a_turned_blank(self):
        def turn(card):
            piece = card["layouts"][0]["pieces"][0]
            piece.update(w=piece["h"], h=piece["w"], turned=True)

        self.planted(turn, "turned")

    def test_a_wrong_size_a_wrong_name_a_wrong_sheet(self):
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(w=20.5), "size")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(name="Lid"), "name")
        self.planted(lambda card: card["demands"][1].update(name="Lid"), "demands")
        self.planted(lambda card: card["layouts"][0].update(stock="Huge"), "stock")
        self.planted(lambda card: card["layouts"][0]["sheet"].update(w=321.0), "sheet")
        self.planted(lambda card: card["layouts"][0]["pieces"][0].update(design=0), "source")

    def test_an_offcut_that_is_not_there(self):
        self.planted(lambda card: card["layouts"][0]["offcuts"].append({"w": 50.0, "h": 50.0, "count": 1}), "offcuts")

    def test_a_cut_beside_its_part(self):
        self.planted(lambda card: card["layouts"][0]["cuts"].update(at=500.0), "tree")

    def test_a_pinwheel_is_no_guillotine_layout(self):
        pinwheel = [(0, 0, 2, 1), (2, 0, 3, 2), (1, 2, 3, 3), (0, 1, 1, 3)]
        self.assertFalse(plan_judge.is_guillotine(pinwheel))
        self.assertTrue(plan_judge.is_guillotine(pinwheel[:3]))

    def test_sums_of_the_whole(self):
        for key, value, kind in (("sheets", 99, "sheets"), ("takers", 6, "people"), ("format", "x", "format"),
                                 ("one_more", {"sheets": -1, "price": 0, "proven": True}, "one-more")):  # fmt: skip
            self.expect(kind, plan_judge.judge_plan(KIT, {**self.plan, key: value}))
