"""An export as files: the workbook read back by Python's own zipfile and xml, the signature and the
digests by the very commands that README.md prints, and `verify` against every change.

Usage: export_files.py CLI README DAY.jsonl YYYY-MM-DD
"""

import csv
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
import zipfile

CLI, README, SCRIPT, DAY = sys.argv[1:5]
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"

# RFC 8032, section 7.1, test 1: secret key and public key.
SEED = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60"
PUBLIC = "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"

# The only cells of the program's own that are numbers (core/record/event_table.cpp, sheets.cpp).
NUMBERS = {"seq", "boot_us", "spool_seq", "pull", "ampoule", "out_to_bath_s", "bath_to_diluent_s", "volume_mL",
           "diluent_temperature_C", "ampoules", "age_at_down_s", "left_mL", "over"}
RFC3339 = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z")


def run(*command, **how):
    return subprocess.run(command, capture_output=True, text=True, **how)


def check(holds, what):
    if not holds:
        sys.exit(f"export_files: {what}")


def decoded(text):
    """ECMA-376 part 1, ST_Xstring: _xHHHH_ is a character."""
    return re.sub(r"_x([0-9A-Fa-f]{4})_", lambda found: chr(int(found[1], 16)), text)


def column_of(reference):
    number = 0
    for letter in re.match("[A-Z]+", reference)[0]:
        number = number * 26 + ord(letter) - 64
    return number - 1


def sheets_of(file):
    """Name -> rows of cells, each None, a str or a float; stops at the first formula."""
    with zipfile.ZipFile(file) as book:
        check(book.testzip() is None, "the workbook's ZIP is damaged")
        names = [sheet.get("name") for sheet in xml.fromstring(book.read("xl/workbook.xml")).iter(MAIN + "sheet")]
        sheets = {}
        for number, name in enumerate(names, 1):
            tree = xml.fromstring(book.read(f"xl/worksheets/sheet{number}.xml"))
            check(not list(tree.iter(MAIN + "f")), f"{name} has a formula")
            rows = []
            for row in tree.iter(MAIN + "row"):
                cells = {}
                for cell in row.iter(MAIN + "c"):
                    if cell.get("t") == "inlineStr":
                        value = decoded("".join(text.text or "" for text in cell.iter(MAIN + "t")))
                    else:
                        value = float(cell.find(MAIN + "v").text)
                    cells[column_of(cell.get("r"))] = value
                rows.append(cells)
            sheets[name] = rows
    return sheets


def unguarded(text):
    """A CSV cell without the apostrophe that keeps a spreadsheet from running it."""
    return text[1:] if re.match(r"'[ \u00a0\u3000\ufeff]*[=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20]", text) else text


def compare_sheet(name, rows, folder):
    with open(os.path.join(folder, name + ".csv"), encoding="utf-8", newline="") as file:
        expected = list(csv.reader(file))
    check(len(expected) > 1, f"{name}.csv has no rows: nothing is compared")
    check(len(rows) == len(expected), f"{name}: {len(rows)} rows, the CSV has {len(expected)}")
    heads = expected[0]
    check([rows[0].get(i) for i in range(len(heads))] == heads, f"{name}: other heads")
    instants = 0
    for cells, wanted in zip(rows[1:], expected[1:]):
        for i, (head, text) in enumerate(zip(heads, wanted)):
            found = cells.get(i)
            where = f"{name}, {head}: {found!r}, the CSV has {text!r}"
            if text == "":
                check(found is None, where)
            elif head in NUMBERS:
                check(isinstance(found, float) and found == float(text), where)
            else:
                check(found == unguarded(text), where)
            if head.endswith("_utc") and text:
                check(RFC3339.fullmatch(found), where)
                instants += 1
    check(instants > 0, f"{name} has no instant")


def readme_commands():
    text = open(README, encoding="utf-8").read()
    blocks = [block for block in re.findall(r"```\n(.*?)```", text, re.S) if "manifest.sig" in block]
    check(len(blocks) == 1, "README.md has no single block about manifest.sig")
    return blocks[0].strip().split("\n")


def readme_says(folder):
    """Whether each of README's commands ends well in that folder, and what the last one prints."""
    done = [run("bash", "-o", "pipefail", "-c", command, cwd=folder) for command in readme_commands()]
    return all(each.returncode == 0 for each in done), done[-1].stdout


def verified(path, *more):
    return run(CLI, "verify", path, *more)


def change(file, how):
    with open(file, "rb") as old:
        content = old.read()
    with open(file, "wb") as new:
        new.write(how(content))


def flip(content):
    middle = len(content) // 2
    return content[:middle] + bytes([content[middle] ^ 1]) + content[middle + 1:]


def make_export(work):
    script, trail = os.path.join(work, "day.jsonl"), os.path.join(work, "trail.db")
    lines = open(SCRIPT, encoding="utf-8").read().rstrip("\n").split("\n")
    last = lines.pop()  # closing comes after the notes that a spreadsheet would run
    at = re.search(r'"t": ?"([^"]+)"', last)[1]
    for text in ("=1+1", "  =cmd|' /C calc'!A0", "_x0041_ as it is", "@SUM(A1)"):
        lines.append('{"t": "%s", "do": "note", "text": "%s"}' % (at, text))
    with open(script, "w", encoding="utf-8") as file:
        file.write("\n".join(lines + [last]) + "\n")
    played = run(CLI, "replay", script, "--trail", trail)
    check(played.returncode == 0, f"replay: {played.stderr}")
    key = os.path.join(work, "seal.key")
    with open(key, "w", encoding="ascii") as file:
        file.write(SEED + "\n")
    os.chmod(key, 0o600)
    folder = os.path.join(work, "out")
    done = run(CLI, "export", "--trail", trail, "--day", DAY, "--to", folder, "--as", "csv,jsonl,xlsx")
    check(done.returncode == 0 and PUBLIC in done.stdout, f"export: {done.stdout}{done.stderr}")
    return folder, trail, key


def check_workbook(folder):
    sheets = sheets_of(os.path.join(folder, "record.xlsx"))
    check(list(sheets) == ["events", "ampoules", "bags", "deviations"], f"sheets {list(sheets)}")
    for name, rows in sheets.items():
        compare_sheet(name, rows, folder)


def check_readme(folder, work):
    good, key = readme_says(folder)
    check(good, "README's commands refuse a good export")
    check(key == PUBLIC, f"README's last command prints {key}")
    for name in ("events.jsonl", "bags.csv", "record.xlsx", "manifest.json", "manifest.sig"):
        other = os.path.join(work, "readme-" + name)
        shutil.copytree(folder, other)
        change(os.path.join(other, name), flip)
        check(not readme_says(other)[0], f"README's commands pass a changed {name}")


def check_verify(folder, work):
    good = verified(folder, "--key", PUBLIC)
    check(good.returncode == 0 and "Signed by " + PUBLIC in good.stdout, f"verify: {good.stdout}{good.stderr}")
    check(verified(os.path.join(folder, "events.jsonl"), "--key", PUBLIC).returncode == 0, "verify of the lines")
    check(verified(folder, "--key", "0" * 64).returncode == 1, "verify passes another key")
    for name in sorted(os.listdir(folder)):
        other = os.path.join(work, "changed-" + name)
        shutil.copytree(folder, other)
        change(os.path.join(other, name), flip)
        check(verified(other).returncode in (1, 2), f"verify passes a changed {name}")
        shutil.rmtree(other)
        if name == "manifest.json" or name == "seal-key.pem":
            continue
        shutil.copytree(folder, other)
        os.remove(os.path.join(other, name))
        gone = verified(other)
        check(gone.returncode == 1, f"verify without {name}: {gone.returncode} {gone.stderr}")


def check_unsigned(trail, key, work):
    """The auditor's desk has the copy and no key; a key that others may read is no secret."""
    os.chmod(key, 0o644)
    folder = os.path.join(work, "open-key")
    command = (CLI, "export", "--trail", trail, "--day", DAY, "--to", folder)
    done = run(*command)
    check(done.returncode == 0 and "others may read" in done.stderr, f"open key: {done.stderr}")
    check(run(*command, "--seal-key", key).returncode == 2, "a key that others may read was used")
    os.remove(key)
    check("not signed" in run(*command).stdout, "does not say that it is not signed")
    check(not os.path.exists(os.path.join(folder, "manifest.sig")), "a signature without a key")
    check(verified(folder).returncode == 0, "verify refuses an unsigned export")
    check(verified(folder, "--key", PUBLIC).returncode == 1, "verify misses no signature")
    check(not os.path.exists(key), "exporting made a key")


def check_refusal(trail, work):
    wrong = run(CLI, "export", "--trail", trail, "--day", DAY, "--to", work, "--as", "csv,xls")
    check(wrong.returncode == 2 and "xls" in wrong.stderr and "xlsx" in wrong.stderr, f"--as xls: {wrong.stderr}")


with tempfile.TemporaryDirectory() as workplace:
    exported, trail_file, key_file = make_export(workplace)
    check_workbook(exported)
    check_readme(exported, workplace)
    check_verify(exported, workplace)
    check_unsigned(trail_file, key_file, workplace)
    check_refusal(trail_file, workplace)
print("ok")
