#!/usr/bin/env bash
# wide_objects.sh NM OBJECT...: what is compiled for wider registers must not lend its copy of a
# common inline function to a processor without them. Of the objects for such registers, each weak
# symbol must name its width.
set -euo pipefail
nm=$1
shift
looked_at=0
for object in "$@"; do
    case $object in
        *_four.cpp.o | *_eight.cpp.o) ;;
        *) continue ;;
    esac
    looked_at=$((looked_at + 1))
    if "$nm" -C --defined-only "$object" | grep -E ' [WVu] ' | grep -vE 'stride_(of|for)<|_as<'; then
        echo "$object: weak symbols that another file may share"
        exit 1
    fi
done
echo "objects for wide registers: $looked_at"
[ "$looked_at" -eq 5 ]
