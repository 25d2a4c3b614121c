#!/usr/bin/env python3
"""A day pressed through the real window gives the same events as the same script through
bathside-cli, but for ids: of taps, places, the station, the loudspeaker, and what hangs on them (hashes).

window.py STATION CLI SCRIPT DAY
"""
import json
import os
import pathlib
import subprocess
import sys
import tempfile

IDS = ("tap", "place", "station", "hash", "previous")


def lines(folder):
    text = (folder / "events.jsonl").read_text(encoding="utf-8")
    return [json.loads(line) for line in text.splitlines()]


def without_ids(event):
    event = {key: value for key, value in event.items() if key not in IDS}
    payload = dict(event["payload"])
    if event["kind"] == "sound.proven":
        payload.pop("device", None)
    if event["kind"] == "check.recorded" and payload["check"] == "alarm-heard":
        payload.pop("value", None)
    return {**event, "payload": payload}


def main():
    station, cli, script, day = sys.argv[1:5]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
        call = [station, "--play", script, "--exports", str(folder / "window"), "--pictures", str(folder / "pictures")]
        print(subprocess.run(call, env=environment, check=True, capture_output=True, text=True).stdout, end="")
        trail = str(folder / "trail.db")
        subprocess.run([cli, "replay", script, "--trail", trail], check=True, capture_output=True)
        subprocess.run([cli, "export", "--trail", trail, "--day", day, "--to", str(folder / "replay")], check=True, capture_output=True)
        subprocess.run([cli, "verify", str(folder / "window" / "events.jsonl")], check=True, capture_output=True)
        pictures = list((folder / "pictures").glob("*.png"))
        pressed, played = lines(folder / "window"), lines(folder / "replay")
    for one, other in zip(pressed, played):
        if without_ids(one) != without_ids(other):
            print(f"seq {one['seq']} differs:\n  window {without_ids(one)}\n  replay {without_ids(other)}")
            return 1
    if len(pressed) != len(played) or not pictures:
        print(f"{len(pressed)} events through the window, {len(played)} by replay, {len(pictures)} pictures")
        return 1
    print(f"{len(pressed)} events, the same both ways\n1 passed, 0 failed")
    return 0


if __name__ == "__main__":
    sys.exit(main())
