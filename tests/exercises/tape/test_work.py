"""How much work an answer may make: a document that asks for more is refused, with the path."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from django.core.management import execute_from_command_line

from exercises.tape import DocumentError, TooMuchWork, answer_text, read_edit_session, simulate
from exercises.tape.work import BYTES, USUAL, limited, spend, working_on
from tests.exercises.tape.heavy import HEAVY, Document, day_long_drifts, insert, plan_of, session

ROOT = Path(__file__).parents[3]
TOO_MUCH = f"takes more than {USUAL:,} steps of work; ask for less, or allow more (--steps)"
SMALL = session([insert(300, 600, 100)])
# 5 s of a processor and 500 MB are all that the process may take: it is killed or fails beyond.
WITHIN = ["sh", "-c", 'ulimit -t 5; ulimit -v 500000; exec "$@"', "sh"]
REFUSING = """
import sys
from exercises.tape import DocumentError, answer_text
try:
    answer_text(sys.stdin.buffer.read())
except DocumentError as refusal:
    sys.exit(str(refusal))
"""
COMMAND = [sys.executable, "manage.py", "simulate"]


@pytest.mark.parametrize("kind", HEAVY)
def test_too_much_work_is_refused_soon_and_in_little_memory(kind: str) -> None:
    path, document = HEAVY[kind]
    done = subprocess.run(
        [*WITHIN, sys.executable, "-c", REFUSING],
        input=json.dumps(document()),
        capture_output=True,
        text=True,
        cwd=ROOT,
    )

    assert (done.returncode, done.stdout) == (1, "")
    assert done.stderr.startswith(path)
    assert done.stderr.endswith(f": {TOO_MUCH}\n")
    assert done.stderr.count("\n") == 1


def test_refusal_names_the_drift_that_is_too_much() -> None:
    """At 25 frames a second or more, six of them make 630,000 seconds at the most."""
    with pytest.raises(DocumentError) as refused:
        simulate(day_long_drifts())

    assert refused.value.path == "edits[6].player.drift"


def test_drift_of_a_day_is_answered() -> None:
    assert "faults" in simulate(day_long_drifts(1))


def test_plan_of_twelve_shots_is_made() -> None:
    assert "plan" in simulate(plan_of(12))


@pytest.mark.parametrize("steps", ["0", "-1", "many", "1.5", "²", ""])
def test_limit_that_is_none_is_refused(steps: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        execute_from_command_line(["manage.py", "simulate", f"--steps={steps}"])
    said = capsys.readouterr()

    assert (ended.value.code, said.out) == (2, "")
    assert "must be a whole number, at least 1" in said.err


def least(document: Document) -> int:
    """How few steps are enough."""
    low, high = 0, USUAL
    while high - low > 1:
        middle = (low + high) // 2
        try:
            simulate(document, steps=middle)
        except DocumentError:
            low = middle
        else:
            high = middle
    return high


def test_same_document_always_takes_the_same_steps() -> None:
    document = plan_of(4)

    assert least(document) == least(json.loads(json.dumps(document)))


def test_document_of_many_bytes_is_not_read() -> None:
    raw = json.dumps(SMALL).encode()
    with pytest.raises(DocumentError) as refused:
        answer_text(raw.ljust(5000 * BYTES + 1), steps=5000)

    assert refused.value.path == "document"
    assert answer_text(raw.ljust(5000 * BYTES), steps=5000) == answer_text(raw)


@pytest.mark.parametrize("way", ["option", "variable"])
def test_limit_can_be_set_and_lines_go_on_after_one_that_is_too_long(way: str) -> None:
    options, variable = [], {}
    if way == "option":
        options = ["--steps", "5000"]
    else:
        variable = {"SIMULATE_STEPS": "5000"}
    lines = [json.dumps(SMALL), " " * 3 * 5000 * BYTES, json.dumps(SMALL)]
    done = subprocess.run(
        [*COMMAND, "--lines", *options],
        input="\n".join(lines),
        capture_output=True,
        text=True,
        cwd=ROOT,
        env=os.environ | variable,
    )
    first, error, last = map(json.loads, done.stdout.splitlines())

    assert first == last == simulate(SMALL)
    assert error["error"].startswith("document: takes more than 5,000 steps of work")
    assert done.returncode == 2


def test_planner_has_a_limit_of_its_own() -> None:
    asked = read_edit_session(plan_of(120))
    assert asked.brief
    with pytest.raises(TooMuchWork):
        asked.planned(asked.brief)


def test_outer_limit_holds_within_another() -> None:
    with pytest.raises(TooMuchWork, match="more than 5 steps"), limited(5), limited(1000):
        spend(6)


def test_inmost_name_is_told() -> None:
    with pytest.raises(TooMuchWork) as refused, limited(5), working_on("plan"):  # noqa: SIM117
        with working_on("edits[3]"):
            spend(6)

    assert refused.value.path == "edits[3]"


def test_nothing_is_counted_where_no_limit_is() -> None:
    spend(10**12)
