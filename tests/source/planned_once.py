"""A class is one value: built once, planned once, and no function takes a kit and a plan side by side.

Reads the sources of core and app. What plans is named only where planning is the job, so that whatever shows,
prints or saves a class can do so only from the plan it is given.
"""

import pathlib
import re
import sys

PLANS = re.compile(r"\b(planKit|planCutting|oneMoreFor|offcutUses|withFindings)\s*\(")
MAY_PLAN = {
    "app/classroom/plan_worker.cpp",  # beside the window
    "app/cli/kit_command.cpp",  # for the command line
}
BUILDS = re.compile(r"(?<![\w.>:])build\s*\(")
MAY_BUILD = {
    "core/kits/build_kit.cpp",
    "core/kits/offcut_uses.cpp",  # designs that no kit has: with one extra more
}
PARAMETERS = re.compile(r"\(([^(){};]*)\)")
KIT = re.compile(r"\b(ClassKit|BuiltKit)\b")
PLAN = re.compile(r"\b(KitPlan|CardPlan|MachinePlan|MachineCard)\b")
COMMENT = re.compile(r"//[^\n]*")


def wrong_in(name: str, source: str) -> list[str]:
    source = COMMENT.sub("", source)
    wrong = []
    for parameters in PARAMETERS.findall(source):
        if KIT.search(parameters) and PLAN.search(parameters):
            wrong.append(f"{name}: takes a kit and a plan ({' '.join(parameters.split())})")
    if name.startswith("app/") and name not in MAY_PLAN and (found := PLANS.search(source)):
        # PapersMenu::planKit opens the window.
        if name not in ("app/shell/papers_menu.cpp", "app/shell/papers_menu.h"):
            wrong.append(f"{name}: plans ({found.group(1)})")
    if name.startswith(("app/papers/kit/", "app/classroom/", "core/kits/", "core/stock/")) and name not in MAY_BUILD and BUILDS.search(source):
        wrong.append(f"{name}: builds a design")
    return wrong


def self_check() -> list[str]:
    """Each rule must be able to fail."""
    samples = {
        "core/kits/a.h": "int f(const ClassKit& kit,\n      const KitPlan& plan);",
        "app/classroom/b.cpp": "auto p = planKit(kit);",
        "app/papers/kit/c.cpp": "auto b = build(item.design);",
    }
    return [f"the check does not notice {name}" for name, source in samples.items() if not wrong_in(name, source)]


def main() -> int:
    root = pathlib.Path(sys.argv[1])
    files = sorted(f for half in ("core", "app") for end in ("h", "cpp") for f in (root / half).rglob(f"*.{end}"))
    wrong = self_check()
    for name in MAY_PLAN | MAY_BUILD:
        if not (root / name).is_file():
            wrong.append(f"{name} is not there any more")
    for file in files:
        wrong += wrong_in(file.relative_to(root).as_posix(), file.read_text(encoding="utf-8"))
    for line in wrong:
        print(line)
    print(f"{len(files)} files, {len(wrong)} wrong")
    return 1 if wrong or len(files) < 20 else 0


if __name__ == "__main__":
    sys.exit(main())
