#!/usr/bin/env python3
"""Whole days through bathside-cli: play each script, verify its trail twice (by the program and by
an independent reader), and hold it against expected.json, which was written by hand. The demo day's
exports are also compared with golden files, byte by byte.

replay.py CLI SCRIPTS... ; with --write-golden FOLDER the demo day's exports are written there instead.
"""
import hashlib
import json
import pathlib
import sqlite3
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).parent
GOLDEN = HERE / "golden"
VERIFY = HERE.parent / "reference" / "verify_trail.py"


class Failed(Exception):
    pass


def expect(what, found, wanted):
    if found != wanted:
        raise Failed(f"{what}: found {found}, expected {wanted}")


def run(*call, code=0):
    done = subprocess.run([str(part) for part in call], capture_output=True, text=True)
    if done.returncode != code:
        raise Failed(f"{' '.join(map(str, call))}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def events_of(trail):
    with sqlite3.connect(f"file:{trail}?mode=ro", uri=True) as db:
        rows = db.execute("SELECT kind, payload FROM event ORDER BY seq").fetchall()
    return [(kind, json.loads(payload)) for kind, payload in rows]


def check_trail(events, wanted):
    for kind, count in wanted["kinds"].items():
        expect(kind, sum(1 for k, _ in events if k == kind), count)
    deviations = [[p["limit"], p["subject"], p.get("bag"), p["over"]] for k, p in events if k == "deviation"]
    expect("deviations", deviations, wanted["deviations"])
    expect("counts at the close", [p for k, p in events if k == "shift.closed"][0], wanted["closed"])
    for alarm, story in wanted.get("alarms", {}).items():
        found = [p.get("level", "ended") for k, p in events if k in ("alarm.raised", "alarm.ended") and p["alarm"] == alarm]
        expect(f"alarm {alarm}", found, story)
    if "starts" in wanted:
        expect("starts of the next pull", [p["start"] for k, p in events if k == "pull.planned"], wanted["starts"])
    components = {}
    for kind, payload in events:
        if kind == "ampoule.out":
            components[payload["component"]] = components.get(payload["component"], 0) + 1
    expect("components", components, wanted.get("components", components))


def check_bags(folder, wanted):
    import csv
    with open(folder / "bags.csv", newline="", encoding="utf-8") as file:
        left = {row["bag"]: float(row["left_mL"]) for row in csv.DictReader(file)}
    expect("left in the bags, mL", left, {bag: float(ml) for bag, ml in wanted["left_ml"].items()})


def check_days(cli, trail, folder, wanted, total):
    outside = sum(share for share in wanted["days"].values() if isinstance(share, int))
    for day, share in wanted["days"].items():
        target = folder / day
        if share == 0:
            run(cli, "export", "--trail", trail, "--day", day, "--to", target, code=1)
            continue
        manifest = json.loads(run(cli, "export", "--trail", trail, "--day", day, "--to", target, "--json"))
        expect(f"events of {day}", manifest["count"], share if isinstance(share, int) else total - outside)
        for file in manifest["files"]:
            expect(file["name"], hashlib.sha256((target / file["name"]).read_bytes()).hexdigest(), file["sha256"])
        lines = (target / "events.jsonl").read_text(encoding="utf-8").splitlines()
        kinds = [json.loads(line)["kind"] for line in lines]
        expect(f"outside any shift on {day}", kinds, wanted.get("outside", {}).get(day, kinds))
        run(cli, "verify", target / "events.jsonl")
        run(sys.executable, VERIFY, target / "events.jsonl")
        if "left_ml" in wanted:
            check_bags(target, wanted)
            check_golden(target)


def check_golden(folder):
    for golden in sorted(GOLDEN.glob("*.csv")):
        expect(f"golden {golden.name}", (folder / golden.name).read_bytes().decode(), golden.read_bytes().decode())


def name_of(row):
    return (row.get("item", "") + " " + row["lot"]) if "lot" in row else row.get("item", "")


def check_stores(cli, trail, wanted):
    adds_up = all(row[4] != "does not add up" for row in wanted["reconciliation"])
    found = json.loads(run(cli, "stores", "--trail", trail, "--json", code=0 if adds_up else 1))
    expect("day of the stores", found["day"], wanted["day"])
    expect("balances", {name_of(lot): lot["balance"] for lot in found["lots"]}, wanted["balances"])
    expect("standing", {name_of(lot): lot["standing"] for lot in found["lots"]}, wanted["standing"])
    expect("mean dose, nL", found["mean_dose_nl"], wanted["mean_dose_nl"])
    rows = [[row["what"], name_of(row), row["expected"], row["counted"], row["outcome"]] for row in found["reconciliation"]]
    expect("reconciliation", rows, wanted["reconciliation"])
    expect("warnings", [[w["warning"], name_of(w), w["amount"]] for w in found["warnings"]], wanted["warnings"])
    by_day = run(cli, "stores", "--trail", trail, "--day", wanted["day"], "--json", code=0 if adds_up else 1)
    expect("the same by its day", json.loads(by_day), found)
    run(cli, "stores", "--trail", trail, "--day", "2020-01-01", code=1)
    run(cli, "stores", "--trail", trail, "--day", "yesterday", code=2)


def check_twice_the_same(cli, script, folder, trail):
    again = folder / "again.db"
    run(cli, "replay", script, "--trail", again)
    expect("the same script again", events_of(again), events_of(trail))


def play(cli, script, wanted):
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        trail = folder / "trail.db"
        run(cli, "replay", script, "--trail", trail)
        run(cli, "verify", trail)
        run(sys.executable, VERIFY, trail)
        events = events_of(trail)
        check_trail(events, wanted)
        check_days(cli, trail, folder, wanted, len(events))
        if "stores" in wanted:
            check_stores(cli, trail, wanted["stores"])
        check_twice_the_same(cli, script, folder, trail)
        run(cli, "replay", script, "--trail", trail, code=2)  # never adds to a trail


def main():
    cli, scripts = sys.argv[1], [pathlib.Path(script) for script in sys.argv[2:]]
    expected = json.loads((HERE / "expected.json").read_text())
    failed = 0
    for script in scripts:
        try:
            play(cli, script, expected[script.stem])
            print(f"{script.stem}: as expected")
        except Failed as why:
            failed += 1
            print(f"{script.stem}: {why}")
    print(f"{len(scripts) - failed} passed, {failed} failed")
    return 1 if failed or not scripts else 0


if __name__ == "__main__":
    sys.exit(main())
