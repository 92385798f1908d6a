#!/usr/bin/env bash
# units_cost.sh VALGRIND PROGRAM: instructions of the charge step on quantities over those of the
# same step on doubles. Fails above 1.01, or when the two differ in a bit.
set -euo pipefail
valgrind=$1
program=$2
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT

"$program"
count() {
    "$valgrind" --tool=callgrind --toggle-collect="$1" --callgrind-out-file="$out/$1" \
        "$program" >/dev/null 2>&1
    awk '/^(summary|totals):/ { total = $2 } END { print total }' "$out/$1"
}
quantities=$(count charge_steps_on_quantities)
doubles=$(count charge_steps_on_doubles)
awk -v q="$quantities" -v d="$doubles" 'BEGIN {
    if (d + 0 == 0 || q + 0 == 0) { print "callgrind counted nothing"; exit 1 }
    printf "instructions on quantities %d, on doubles %d, ratio %.4f (at most 1.01)\n", q, d, q / d
    exit q / d > 1.01
}'
