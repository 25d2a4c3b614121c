"""Every string of the program is in every catalogue, translated, and no catalogue holds one that the
program has no more. The catalogues are not touched: lupdate works on copies.

Usage: translations.py ROOT LUPDATE. English needs its plural forms only, other languages everything.
"""

import pathlib
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml


def faults(catalogue, plurals_only):
    for context in xml.parse(catalogue).getroot().iter("context"):
        for message in context.iter("message"):
            plural = message.get("numerus") == "yes"
            translation = message.find("translation")
            state = translation.get("type")
            forms = [form.text for form in translation.iter("numerusform")] if plural else [translation.text]
            if state is None and not all(forms):
                state = "empty"
            if state and (plural or not plurals_only or state != "unfinished"):
                yield f"{context.findtext('name')}, {state}: {message.findtext('source')}"


def main(root, lupdate):
    found = []
    originals = sorted((root / "translations").glob("bathside_*.ts"))
    if not any(original.name == "bathside_es.ts" for original in originals):
        sys.exit("translations: translations/bathside_es.ts is missing")
    with tempfile.TemporaryDirectory() as scratch:
        for original in originals:
            copy = pathlib.Path(scratch) / original.name
            shutil.copyfile(original, copy)
            subprocess.run([lupdate, "-silent", "-locations", "none", "-I", ".", "ui", "app", "-ts", copy], cwd=root, check=True)
            english = original.stem == "bathside_en"
            found += [f"{original.name}: {fault}" for fault in faults(copy, plurals_only=english)]
    if found:
        sys.exit("\n".join(["translations: run the target update_translations and translate", *found[:20]]))


main(pathlib.Path(sys.argv[1]), sys.argv[2])
