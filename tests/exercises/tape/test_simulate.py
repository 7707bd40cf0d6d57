"""The command that scripts reach the tape model by, run as they run it."""

import json
import subprocess
import sys
from pathlib import Path
from random import Random

import pytest

from exercises.tape import simulate
from tests.exercises.tape.test_slow_machines import long_document

ROOT = Path(__file__).parents[3]
COMMAND = [sys.executable, "manage.py", "simulate"]
GOOD = b'{"master": {"length": 100}, "sources": {}, "edits": []}'
BAD = b'{"master": {"length": -1}, "sources": {}, "edits": []}'
REFUSAL = "master.length: must be at least 0, not -1"


def run(text: bytes, *options: str) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run(
        [*COMMAND, *options], input=text, capture_output=True, cwd=ROOT, check=False
    )


def test_simulate_prints_one_answer() -> None:
    done = run(GOOD)

    assert (done.returncode, done.stderr) == (0, b"")
    assert done.stdout.count(b"\n") == 1
    assert json.loads(done.stdout) == simulate(json.loads(GOOD))


def test_simulate_refuses_with_one_line_and_prints_nothing() -> None:
    done = run(BAD)

    assert (done.returncode, done.stdout) == (2, b"")
    assert done.stderr.decode() == f"{REFUSAL}\n"


@pytest.mark.parametrize("options", [[], ["--lines"]])
def test_simulate_without_standard_input_says_so(options: list[str]) -> None:
    closed = ["sh", "-c", 'exec "$@" <&-', "sh", *COMMAND, *options]
    done = subprocess.run(closed, capture_output=True, text=True, cwd=ROOT)

    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr == "document: there is nothing to read; standard input is closed\n"


def test_simulate_lines_answers_each_and_goes_on_after_a_bad_one() -> None:
    """Forty random ones after it, too."""
    documents = [long_document(Random(seed)) for seed in range(40)]
    texts = [json.dumps(document).encode() for document in documents]

    done = run(b"\n".join((GOOD, BAD, b"", b"\xff", *texts)), "--lines")

    answers = [json.loads(line) for line in done.stdout.splitlines()]
    assert answers == [
        simulate(json.loads(GOOD)),
        {"error": REFUSAL},
        {"error": "document: is empty"},
        {"error": "document: is not UTF-8 text: byte 0 does not fit"},
        *map(simulate, documents),
    ]
    assert (done.returncode, done.stderr) == (2, b"")


def test_simulate_lines_answers_before_it_reads_on() -> None:
    with subprocess.Popen(
        [*COMMAND, "--lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, cwd=ROOT
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        for text in (GOOD, BAD):
            process.stdin.write(text + b"\n")
            process.stdin.flush()
            assert process.stdout.readline().endswith(b"}\n")
        process.stdin.close()

        assert process.stdout.read() == b""
        assert process.wait() == 2


def test_simulate_lines_is_quiet_when_the_reader_has_gone() -> None:
    with subprocess.Popen(
        [*COMMAND, "--lines"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        cwd=ROOT,
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdin.write(GOOD + b"\n")
        process.stdin.flush()
        process.stdout.readline()
        process.stdout.close()
        process.stdin.write(GOOD + b"\n")
        process.stdin.close()

        assert process.wait() == 0
        assert process.stderr.read() == b""
