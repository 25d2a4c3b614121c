#!/usr/bin/env bash
# Verify a trail without Bathside: with sqlite3, openssl and sed.
#
# usage: verify_trail.sh FILE [SEQ:HASH ...]
#
# FILE is an exported events.jsonl or a copy of the database; SEQ:HASH are heads kept elsewhere (a day
# sheet, the `last` of a manifest). Says "sound" (exit 0) or the first bad seq (exit 1).
#
# The rule: hash = SHA-256(32 raw bytes of the previous hash + RFC 8785 text of the event without
# "hash" and "previous"); the previous hash of seq 1 is 32 zero bytes.
set -euo pipefail

file=${1:?usage: verify_trail.sh FILE [SEQ:HASH ...]}
shift
[ -r "$file" ] || { echo "$file: cannot be read" >&2; exit 2; }
zeros=$(printf '0%.0s' {1..64})

# One event a line: its seq, its hash, the previous hash where it names one (else -), its text.
from_lines() {
    sed -E -e '/^\{"at":.*,"hash":"[0-9a-f]{64}","kind":.*,"seq":[0-9]+,.*\}$/!{s/.*/unreadable - - -/;b}' \
        -e 's/^(.*),"previous":"([0-9a-f]{64})"(,"seq":[0-9]+,.*)$/\2 \1\3/;t named' -e 's/^/- /;:named' \
        -e 's/^([^ ]+) (\{"at":"[^"]*","boot_id":"[^"]*".*),"hash":"([0-9a-f]{64})"(,"kind":.*)$/\3 \1 \2\4/' \
        -e 's/^(.*"seq":)([0-9]+)(,"(spool|station)":.*)$/\2 \1\2\3/' "$1"
}

from_database() {
    sqlite3 -readonly -separator ' ' "$1" "SELECT seq, lower(hex(hash)), '-',
      '{\"at\":' || json_quote(at) || ',\"boot_id\":' || json_quote(boot_id) || ',\"boot_us\":' || boot_us
      || iif(by_receipt, ',\"by_receipt\":true', '') || iif(card IS NULL, '', ',\"card\":' || json_quote(card))
      || ',\"kind\":' || json_quote(kind) || ',\"payload\":' || payload
      || iif(person IS NULL, '', ',\"person\":{\"id\":' || json_quote(person) || ',\"proof\":' || json_quote(proof) || '}')
      || iif(place IS NULL, '', ',\"place\":' || json_quote(place)) || ',\"seq\":' || seq
      || iif(spool_seq IS NULL, '', ',\"spool\":{\"hash\":\"' || lower(hex(spool_hash)) || '\",\"seq\":' || spool_seq || '}')
      || ',\"station\":' || json_quote(station) || ',\"tap\":' || json_quote(tap) || '}'
      FROM event ORDER BY seq"
}

bad() { echo "seq $1: $2"; exit 1; }

if [ "$(head -c 15 "$file" | tr -d '\0')" = "SQLite format 3" ]; then
    events() { from_database "$file"; }
    read -r last previous < <(sqlite3 -readonly -separator ' ' "$file" 'SELECT seq, lower(hex(hash)) FROM origin')
else
    events() { from_lines "$file"; [ ! -s "$file" ] || [ -z "$(tail -c 1 "$file")" ] || printf '\nunreadable - - -\n'; }
    last='' previous=''
fi

count=0
while read -r seq hash named text; do
    [ -n "$seq" ] || continue
    [ "$seq" != unreadable ] || bad $((${last:-0} + 1)) "cannot be read"
    if [ -z "$last" ]; then
        last=$((seq - 1)) previous=$named
        [ "$seq" != 1 ] || previous=$zeros
        [ "$previous" != - ] || bad "$last" "missing"
    fi
    [ "$seq" -ge $((last + 1)) ] || bad "$seq" "twice or out of order"
    [ "$seq" -eq $((last + 1)) ] || bad $((last + 1)) "missing"
    bytes=''
    for ((i = 0; i < 64; i += 2)); do bytes+="\\x${previous:i:2}"; done
    computed=$(printf '%b%s' "$bytes" "$text" | openssl dgst -sha256 -r)
    [ "${computed%% *}" = "$hash" ] || bad "$seq" "its hash does not follow"
    for witness in "$@"; do
        [ "${witness%%:*}" != "$seq" ] || [ "${witness##*:}" = "$hash" ] || bad "$seq" "not the witnessed head"
    done
    last=$seq previous=$hash count=$((count + 1))
done < <(events)

for witness in "$@"; do
    [ "${witness%%:*}" -le "${last:-0}" ] || bad $((${last:-0} + 1)) "missing, up to the witnessed head"
done
echo "sound: $count events${last:+, head $last:$previous}"
