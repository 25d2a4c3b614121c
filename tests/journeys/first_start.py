#!/usr/bin/env python3
"""A station's first real day, tapped and typed in its window on a real X server: the start page, then
the shift lead with a PIN; then the plug is pulled. The trail says what came of it.

first_start.py STATION CLI
"""
import contextlib
import os
import pathlib
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

WIDTH, HEIGHT, PITCH = 1280, 800, 5.9  # a ten-inch panel, pixels a millimetre
PATIENCE = 120  # s; sanitizers on a busy machine
PACE = 0.7  # s between taps, above what the station takes for a bounce; as the X server stamps them

# Where a finger goes: centres of the targets of that panel.
REAL_DAY, ADD, SET, ROLE = (950, 430), (800, 730), (1200, 725), (320, 430)
PIN_SET = (1172, 560)
DIGIT = {"0": (503, 721), "1": (503, 560), "5": (726, 399), "8": (726, 238)}


class Failed(Exception):
    pass


def until(what, found):
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        answer = found()
        if answer:
            return answer
        time.sleep(0.2)
    raise Failed(f"{what}: not within {PATIENCE} s")


def kinds(trail):
    """What a copy says, as the plug would leave it: the station lets nobody else in."""
    with tempfile.TemporaryDirectory() as name:
        for file in trail.parent.glob(trail.name + "*"):
            if file.suffix in (".db", ".db-wal"):
                shutil.copy(file, name)
        try:
            with contextlib.closing(sqlite3.connect(pathlib.Path(name) / trail.name)) as copy:
                return [row[0] for row in copy.execute("SELECT kind FROM event ORDER BY seq")]
        except sqlite3.DatabaseError:  # being made, or copied in the middle of a write
            return []


class Hand:
    def __init__(self, environment):
        self.environment = environment

    def do(self, *words):
        subprocess.run(["xdotool", *words], env=self.environment, check=True, stdout=subprocess.DEVNULL)
        time.sleep(PACE)

    def tap(self, place):
        self.do("mousemove", str(place[0]), str(place[1]), "click", "1")

    def spell(self, word):
        for letter in word:
            self.do("key", letter)


def first_day(hand, trail):
    hand.do("search", "--sync", "--onlyvisible", "--name", ".")

    def started():
        hand.tap(REAL_DAY)  # on the page that follows nothing is there
        return "station.started" in kinds(trail)

    until("the real day has begun", started)
    hand.tap(ADD)
    hand.spell("LS")
    hand.tap(SET)
    hand.spell("LENA")
    hand.tap(SET)
    hand.tap(ROLE)
    until("the shift lead is listed", lambda: "person.listed" in kinds(trail))
    for _ in range(2):
        for digit in "0815":
            hand.tap(DIGIT[digit])
        hand.tap(PIN_SET)
    until("the PIN is set", lambda: "pin.set" in kinds(trail))


def main():
    station, cli = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        read, write = os.pipe()
        server = subprocess.Popen(["Xvfb", "-displayfd", str(write), "-screen", "0", f"{WIDTH}x{HEIGHT}x24", "-nolisten", "tcp"],
                                  pass_fds=[write], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(write)
        window = None
        try:
            display = os.fdopen(read).readline().strip()
            if not display:
                raise Failed("Xvfb does not start")
            environment = {**os.environ, "DISPLAY": f":{display}", "QT_QPA_PLATFORM": "xcb", "HOME": name,
                           "XDG_CONFIG_HOME": name, "XDG_DATA_HOME": name, "XDG_STATE_HOME": name}
            trail = folder / "trail.db"
            window = subprocess.Popen([station, "--trail", str(trail), "--px-per-mm", str(PITCH), "--lang", "en"],
                                      env=environment, stdout=subprocess.DEVNULL)
            first_day(Hand(environment), trail)
            window.send_signal(signal.SIGKILL)  # as the plug is pulled
            window.wait()
            window = None
            checked = subprocess.run([cli, "verify", str(trail)], capture_output=True, text=True)
            print(checked.stdout + checked.stderr, end="")
            said = kinds(trail)
        finally:
            if window:
                window.kill()
                window.wait()
            server.terminate()
            server.wait()
    if checked.returncode != 0:
        raise Failed("the trail does not verify")
    wanted = ["station.started", "person.listed", "pin.set"]
    if [kind for kind in said if kind in wanted] != wanted:
        raise Failed(f"the trail says {said}")
    print(f"{len(said)} events\n1 passed, 0 failed")


if __name__ == "__main__":
    try:
        main()
    except Failed as failed:
        sys.exit(f"first start: {failed}")
