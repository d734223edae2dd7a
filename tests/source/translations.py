"""All texts of the program are translated: extracts them with lupdate and compares.

translations.py LUPDATE ROOT            checks, in a temporary folder
translations.py LUPDATE ROOT --update   writes what is new and what is gone into ROOT/translations

The check fails on any text that is new (marked in the source, in no .ts file), unfinished (in the file,
without a translation) or gone (in the file, no longer in the source), in any language. English, the language
of the sources, holds the plural forms only.
"""

import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

ROOMS = ["core", "app"]
SOURCE_LANGUAGE = "en"
OPTIONS = [
    "-tr-function-alias", "QT_TRANSLATE_NOOP+=worded",  # core/base/worded.h
    "-locations", "none",
    "-no-obsolete",
]


def extract(lupdate, root, files, plurals):
    command = [lupdate, *OPTIONS, *(["-pluralonly"] if plurals else []), *ROOMS, "-ts", *map(str, files)]
    run = subprocess.run(command, cwd=root, capture_output=True, text=True, timeout=120)
    if run.returncode != 0 or "warning" in run.stderr.lower():
        sys.exit(f"lupdate: {run.stderr}")


def update(lupdate, root, folder):
    files = sorted(folder.glob("*.ts"))
    source = [file for file in files if file.stem.endswith("_" + SOURCE_LANGUAGE)]
    extract(lupdate, root, [file for file in files if file not in source], plurals=False)
    extract(lupdate, root, source, plurals=True)
    return files


class Message:
    def __init__(self, context, element):
        translation = element.find("translation")
        forms = translation.findall("numerusform")
        self.key = (context, element.findtext("source"), element.findtext("comment") or "")
        self.kind = translation.get("type", "finished")
        self.counts = element.get("numerus") == "yes"
        self.forms = [form.text or "" for form in forms] if self.counts else [translation.text or ""]

    def problem(self):
        if self.kind != "finished":
            return self.kind
        if not all(self.forms):
            return "empty"
        # A form for one may write the number as a word.
        wanted = set(re.findall(r"%L?\d", self.key[1]))
        return next((f"has other places than its source: {form}" for form in self.forms
                     if set(re.findall(r"%L?\d", form)) != wanted), None)


def messages(file):
    tree = ElementTree.parse(file)
    found = [Message(context.findtext("name"), element)
             for context in tree.iter("context") for element in context.iter("message")]
    return {message.key: message for message in found}


def faults(before, after, plurals_only):
    for key in after.keys() - before.keys():
        yield "new", key
    for key in before.keys() - after.keys():
        yield "gone", key
    for key, message in before.items():
        if key in after and message.problem():
            yield message.problem(), key
        if plurals_only and not message.counts:
            yield "no plural", key


def check(lupdate, root):
    count = 0
    failed = False
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        kept = sorted((root / "translations").glob("*.ts"))
        for file in kept:
            shutil.copy(file, folder)
        for file in update(lupdate, root, folder):
            plurals_only = file.stem.endswith("_" + SOURCE_LANGUAGE)
            after = messages(file)
            count = max(count, len(after))
            for fault, (context, source, _) in sorted(faults(messages(root / "translations" / file.name), after,
                                                             plurals_only)):
                failed = True
                print(f"{file.name}: {fault}: {context}: {source}")
    if len(kept) < 2 or count < 1000:
        sys.exit(f"{len(kept)} languages and {count} texts: something is not extracted")
    if failed:
        sys.exit("Update the files (DEVELOPERS.md, \"A text\") and translate what is unfinished.")
    print(f"{count} texts in {len(kept)} languages")


def main():
    lupdate, root = sys.argv[1], pathlib.Path(sys.argv[2])
    if sys.argv[3:] == ["--update"]:
        update(lupdate, root, root / "translations")
    else:
        check(lupdate, root)


main()
