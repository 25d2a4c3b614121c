#!/usr/bin/env python3
"""Verify a trail without Bathside: an exported events.jsonl or a copy of the database.

usage: verify_trail.py FILE [SEQ:HASH ...]

SEQ:HASH are heads kept elsewhere (a day sheet, an older manifest). A manifest.json beside an
events.jsonl is used when it is there. Says "sound" (exit 0) or the first bad seq (exit 1); exit 2
when the file is neither. Needs nothing but Python's standard library.

The rule: hash = SHA-256(32 raw bytes of the previous hash + RFC 8785 text of the event without
"hash" and "previous"); the previous hash of seq 1 is 32 zero bytes.
"""
import hashlib
import json
import os
import sqlite3
import sys


class Flaw(Exception):
    pass




def no_key_twice(pairs):
    if len({key for key, _ in pairs}) != len(pairs):
        raise ValueError("a key stands there twice")
    return dict(pairs)


def read_json(text):
    return json.loads(text, object_pairs_hook=no_key_twice)


def canonical(value):
    # RFC 8785 for what a trail holds: whole numbers, and keys within the basic plane.
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def lines_of(path):
    with open(path, "rb") as file:
        for number, line in enumerate(file, 1):
            try:
                text = line.decode("utf-8")
                if not text.endswith("\n"):
                    raise ValueError("the last line has no end")
                event = read_json(text)
                if canonical(event) + "\n" != text:
                    raise ValueError("not in canonical form")
                digest = bytes.fromhex(event.pop("hash"))
                previous = event.pop("previous", None)
                seq = event["seq"]
            except (ValueError, KeyError, TypeError, AttributeError) as why:
                yield None, f"line {number} cannot be read: {why}", None, None
                return
            yield seq, canonical(event), digest, previous and bytes.fromhex(previous)


def rows_of(path):
    database = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    database.row_factory = sqlite3.Row
    for row in database.execute("SELECT * FROM event ORDER BY seq"):
        event = {"at": row["at"], "boot_id": row["boot_id"], "boot_us": row["boot_us"], "kind": row["kind"],
                 "seq": row["seq"], "station": row["station"], "tap": row["tap"]}
        if row["by_receipt"]:
            event["by_receipt"] = True
        for optional in ("card", "place"):
            if row[optional] is not None:
                event[optional] = row[optional]
        if row["person"] is not None:
            event["person"] = {"id": row["person"], "proof": row["proof"]}
        if row["spool_seq"] is not None:
            event["spool"] = {"seq": row["spool_seq"], "hash": (row["spool_hash"] or b"").hex()}
        try:
            event["payload"] = read_json(row["payload"])
            if canonical(event["payload"]) != row["payload"]:
                raise ValueError("not in canonical form")
        except ValueError as why:
            yield row["seq"], f"payload cannot be read: {why}", None, None
            return
        yield row["seq"], canonical(event), row["hash"], None


def origin_of(path):
    database = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    return database.execute("SELECT seq, hash FROM origin").fetchone()


def follow(entries, last, starts, witnesses):
    """Walks the chain; `last` is (seq, hash) before it, or None where the first line says so itself."""
    station, count = None, 0
    for seq, text, digest, previous in entries:
        if last is None or seq in starts and seq != last[0] + 1:
            if seq != 1 and previous is None:
                raise Flaw(f"seq {(seq or 1) - 1}: missing" if seq else text)
            last = (seq - 1, previous if seq != 1 else bytes(32))
        if digest is None:
            raise Flaw(f"seq {last[0] + 1}: {text}")
        if seq != last[0] + 1:
            raise Flaw(f"seq {min(seq, last[0] + 1)}: " + ("missing" if seq > last[0] else "twice or out of order"))
        station = station or json.loads(text)["station"]
        if json.loads(text)["station"] != station:
            raise Flaw(f"seq {seq}: of another station")
        if hashlib.sha256(last[1] + text.encode("utf-8")).digest() != digest:
            raise Flaw(f"seq {seq}: its hash does not follow")
        if seq in witnesses and witnesses[seq] != digest:
            raise Flaw(f"seq {seq}: not the witnessed head")
        last, count = (seq, digest), count + 1
    if witnesses and max(witnesses) > (last[0] if last else 0):
        raise Flaw(f"seq {(last[0] if last else 0) + 1}: missing, up to the witnessed head")
    return count, last


def check_files(folder, manifest):
    for file in manifest["files"]:
        with open(os.path.join(folder, os.path.basename(file["name"])), "rb") as data:
            if hashlib.sha256(data.read()).hexdigest() != file["sha256"]:
                raise Flaw(f"{file['name']}: not the file that the manifest lists")


def verify(path, witnesses):
    with open(path, "rb") as file:
        is_database = file.read(16) == b"SQLite format 3\0"
    if is_database:
        return follow(rows_of(path), origin_of(path), (), witnesses)
    beside = os.path.join(os.path.dirname(path) or ".", "manifest.json")
    if not os.path.exists(beside):
        return follow(lines_of(path), None, (), witnesses)
    with open(beside, encoding="utf-8") as file:
        manifest = read_json(file.read())
    if manifest["last"]["seq"]:
        witnesses.setdefault(manifest["last"]["seq"], bytes.fromhex(manifest["last"]["hash"]))
    result = follow(lines_of(path), None, {run["first"] for run in manifest["runs"]}, witnesses)
    if result[0] != manifest["count"]:
        raise Flaw(f"{result[0]} events, but the manifest lists {manifest['count']}")
    check_files(os.path.dirname(path) or ".", manifest)
    return result


def main(arguments):
    if not arguments:
        print(__doc__.strip(), file=sys.stderr)
        return 2
    try:
        heads = [argument.split(":") for argument in arguments[1:]]
        count, last = verify(arguments[0], {int(seq): bytes.fromhex(digest) for seq, digest in heads})
    except Flaw as flaw:
        print(flaw)
        return 1
    except (OSError, ValueError, KeyError, TypeError, sqlite3.Error) as why:
        print(f"{arguments[0]}: not a trail: {why}", file=sys.stderr)
        return 2
    print(f"sound: {count} events" + (f", head {last[0]}:{last[1].hex()}" if last else ""))
    return 0


sys.exit(main(sys.argv[1:]))
