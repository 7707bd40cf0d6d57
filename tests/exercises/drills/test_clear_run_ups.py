"""Run-ups in questions are clearly long enough or clearly too short.

Nobody counts a run-up to the frame at a bench, and locking takes a little more or less each time
(common practice): a question that turned on less than a second would ask for luck. Sums may.
"""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.kind import Kind
from exercises.drills.register import KINDS
from exercises.drills.setting.settings import USUAL, Settings
from exercises.tape import Bench, Rate, read_edit_session, record
from tests.exercises.drills.benches import LIMITS
from tests.exercises.drills.each import EACH_JUDGED
from tests.exercises.drills.made import made

LEFT_OUT = {"sums-on-the-clock"}


def documents(key: Json) -> Iterator[Json]:
    """The sessions that a question is made from."""
    if "session" in key:
        yield key["session"]
    for medium in key.get("media", ()):
        if "session" in medium:
            yield medium["session"]


def run_ups(key: Json) -> Iterator[tuple[int, Bench]]:
    """Of each edit, made or asked for, on the source tape and on the edit master."""
    for document in documents(key):
        session = read_edit_session(document)
        tape = session.master
        for edit in session.edits:
            yield edit.source.run_up(edit.in_), session.bench
            yield tape.run_up(edit.at), session.bench
            tape = record(tape, edit, session.bench)
        if "change" in key:
            change = key["change"]
            yield session.sources[change["source"]].run_up(change["in"]), session.bench
            yield tape.run_up(change["at"]), session.bench


def near(kind: Kind, settings: Settings, seeds: range) -> list[tuple[int, str, int]]:
    """Seeds, situations, and frames over what locks a machine, where those are too few.

    A second at least, or a quarter of what locks a machine, where that is less.
    """
    return [
        (seed, question.situation, frames - bench.lock)
        for seed in seeds
        for question in [made(kind, seed, settings)]
        for frames, bench in run_ups(question.key)
        if abs(frames - bench.lock) < min(bench.rate.nominal, bench.lock // 4)
    ]


def test_second_is_less_than_a_quarter_of_what_locks_a_machine() -> None:
    assert {rate.nominal <= Bench.default(rate).lock // 4 for rate in Rate} == {True}


def test_most_kinds_have_run_ups() -> None:
    with_tapes = [slug for slug, each in KINDS.items() if any(documents(made(each, 0).key))]

    assert len(with_tapes) > 10


@EACH_JUDGED
def test_no_run_up_lies_within_a_second_of_what_locks_a_machine(drill: Kind) -> None:
    if drill.slug not in LEFT_OUT:
        assert near(drill, USUAL, range(60)) == []


@EACH_JUDGED
def test_no_run_up_lies_near_what_locks_a_machine_at_any_bench(drill: Kind) -> None:
    if drill.slug not in LEFT_OUT:
        found = {bench: near(drill, settings, range(10)) for bench, settings in LIMITS.items()}

        assert {bench: runs for bench, runs in found.items() if runs} == {}
