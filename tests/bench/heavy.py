"""Refusing documents that ask for too much work; a part of the tape bench."""

import json
import subprocess
import sys

from exercises.tape.work import USUAL
from tests.exercises.tape.heavy import HEAVY

# Answers a document from standard input, and tells of its time and its memory.
MEASURED = """
import resource, sys
from exercises.tape import DocumentError, answer_text
raw = sys.stdin.buffer.read()
before = resource.getrusage(resource.RUSAGE_SELF).ru_utime
try:
    answer_text(raw)
except DocumentError as refused:
    used = resource.getrusage(resource.RUSAGE_SELF)
    print(used.ru_utime - before, used.ru_maxrss / 1000, refused.path)
"""


def compared() -> dict[str, float]:
    """Prints a table; the figures are the worst of all."""
    print(f"Documents that take more than {USUAL:,} steps of work, until they are refused.\n")
    print(f"{'':36}{'s':>7}{'µs a step':>11}{'MB':>7}   path")
    rows = [measured(kind) for kind in HEAVY]
    print("\nGoal: under 5 s and 500 MB, and about 3 µs a step at most.\n")
    return {"refused_s": max(row[0] for row in rows), "refused_mb": max(row[1] for row in rows)}


def measured(kind: str) -> tuple[float, float]:
    _, document = HEAVY[kind]
    done = subprocess.run(
        [sys.executable, "-c", MEASURED],
        input=json.dumps(document()).encode(),
        capture_output=True,
        check=True,
    )
    told = done.stdout.decode().split()
    seconds, size, path = float(told[0]), float(told[1]), told[2]
    print(f"{kind:36}{seconds:7.2f}{1e6 * seconds / USUAL:11.1f}{size:7.0f}   {path}")
    return seconds, size
