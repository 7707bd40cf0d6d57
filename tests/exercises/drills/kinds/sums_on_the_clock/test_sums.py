from collections.abc import Iterator

import pytest

from exercises.drills.kind import slug_of
from exercises.drills.kinds.sums_on_the_clock import KIND as SUMS
from exercises.drills.kinds.sums_on_the_clock import question
from exercises.drills.kinds.sums_on_the_clock.situations import (
    SITUATIONS,
    Situation,
    beforehand,
    marks,
    recordings,
    run_ups,
)
from exercises.drills.kinds.sums_on_the_clock.verdict import EDITS_IN, ENDS, grade, slip
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import USUAL
from exercises.tape import Assemble, Bench, Rate, Source, Take, Tape, frame_of, record
from tests.believers import believed
from tests.exercises.drills.made import made, many

SEEDS = range(40)


def drawn(situation: Situation) -> Iterator[tuple[int, Question]]:
    """Seeds, and what each asks of a situation."""
    for seed in SEEDS:
        asked = question(situation, Scene(Draw(seed), USUAL))
        assert asked is not None, seed
        yield seed, asked


def facts(asked: Question) -> dict[str, str]:
    return dict(asked.shown["facts"])


def rate(asked: Question) -> Rate:
    return next(each for each in Rate if each.nominal == asked.key["labels"])


def test_every_situation_occurs() -> None:
    assert {question.situation for question in many(SUMS, 400)} == {
        slug_of(each.__name__) for each in SITUATIONS
    }


def test_old_recording_is_there_again_where_the_tape_model_leaves_it() -> None:
    for seed, asked in drawn(recordings.first_frame_untouched):
        shot = Source("Tape 1", (Take(0, 9000),))
        at = frame_of(facts(asked)["Edit in"], rate(asked))
        bench = Bench.default(rate(asked))
        end = asked.right["old"]
        tape = Tape.blank(40_000).with_pass(0, 40_000, "old")

        left = record(tape, Assemble(shot, 1000, 1000 + end - bench.erase_gap - at, at), bench)

        found = [run.start for run in left.picture.runs if run.value.source == "old"]
        assert found == [0, end], seed


def test_wiping_ends_where_the_tape_model_ends_it_in_front_of_the_other_recording() -> None:
    for seed, asked in drawn(recordings.where_the_wiping_ends):
        told = facts(asked)
        out, other = (
            frame_of(told[fact], rate(asked))
            for fact in ("Edit out of the assemble", "The other recording begins")
        )
        shot = Source("Tape 1", (Take(0, 9000),))
        tape = Tape.blank(60_000).with_pass(0, 60_000, "old")

        bench = Bench.default(rate(asked))
        left = record(tape, Assemble(shot, 1000, 1300, out - 300), bench)

        end = asked.right["end"]
        assert [run.start for run in left.picture.runs if run.value.source == "old"] == [0, end], (
            seed
        )
        assert end < other, seed
        assert "nobody would assemble in front of it" in asked.key["note"], seed


def test_earliest_places_have_run_up_enough_and_no_frame_more() -> None:
    for seed, asked in drawn(run_ups.earliest_places):
        starts = [frame_of(value, rate(asked)) for value in list(facts(asked).values())[:2]]
        lock = Bench.default(rate(asked)).lock

        take = Source("Tape 1", (Take(starts[0], 99_999),))
        master = Tape.blank(99_999).with_pass(starts[1], 99_999, "leader")

        assert take.run_up(asked.right["source"]) == lock, seed
        assert master.run_up(asked.right["master"]) == lock, seed


@pytest.mark.parametrize(
    ("off", "sentence"),
    [
        (1, "One frame off: the edit out is the first frame that no longer belongs."),
        (-1, "One frame off: the edit out is the first frame that no longer belongs."),
        (50, "The seconds are off: look again at what is carried from the frames."),
        (-3000, "The minutes are off: look again at what is carried from the seconds."),
        (75, "The seconds are off: look again at what is carried from the frames."),
        (5, "A second has 25 labels here: look again at what is carried from the frames."),
        (7, ""),
        (0, ""),
    ],
)
def test_slip_is_named(off: int, sentence: str) -> None:
    assert slip(off, 25, "out") == sentence


@pytest.mark.parametrize(
    ("name", "sentence"),
    [
        ("out", "One frame off: the edit out is the first frame that no longer belongs."),
        ("long", "One frame off: the edit out is the first frame that no longer belongs."),
        ("in", "One frame off: the edit in is the first frame that is copied."),
        ("master", "One frame off: the edit in is the first frame that is copied."),
        ("reading", "One frame off: count once more, frame by frame."),
    ],
)
def test_one_frame_is_explained_by_the_edge_that_was_asked_for(name: str, sentence: str) -> None:
    assert slip(1, 25, name) == slip(-1, 25, name) == sentence


def test_every_moment_that_is_asked_for_is_an_edit_in_an_end_or_a_place() -> None:
    names = {ask.name for question in many(SUMS, 400) for ask in question.asks}

    assert names == {*EDITS_IN, *ENDS, "again", "code", "fewer", "reading"}


def test_slip_is_named_where_no_belief_explains_it() -> None:
    asked = question(marks.out_after_a_last_frame, Scene(Draw(1), USUAL))
    assert asked is not None
    believed, slipped = (
        grade(asked, {"out": asked.right["out"] + off}).feedback["parts"][0] for off in (-1, 1)
    )

    assert believed["slip"] == ""
    assert slipped["slip"].startswith("One frame off: the edit out")


def test_half_of_two_results_is_half_the_credit_and_points_at_one_belief() -> None:
    asked = question(run_ups.earliest_places, Scene(Draw(1), USUAL))
    assert asked is not None
    lock = Bench.default(rate(asked)).lock
    verdict = grade(asked, {**asked.right, "master": asked.right["master"] - lock})

    assert (verdict.right, verdict.score) == (False, 50)
    assert verdict.misconceptions == ("no-master-run-up",)


def test_wrong_sum_without_a_belief_behind_it_points_at_none() -> None:
    asked = made(SUMS, 3)
    wrong = {ask.name: asked.right[ask.name] + 7 for ask in asked.asks}

    assert grade(asked, wrong).misconceptions == ()


def test_second_of_two_takes_that_touch_has_run_up_of_its_own() -> None:
    for seed, asked in drawn(beforehand.take_after_a_take):
        first, second = (frame_of(value, rate(asked)) for value in list(facts(asked).values())[:2])
        tape = Source("Tape 1", (Take(first, second), Take(second, 99_999)))

        assert tape.run_up(asked.right["source"]) == Bench.default(rate(asked)).lock, seed


@pytest.mark.parametrize("off", [-1, 0, 1])
def test_mark_that_is_set_early_leaves_no_hole_wherever_it_hits(off: int) -> None:
    """Late, it leaves one: worked out by the tape model."""
    for seed, asked in drawn(marks.mark_that_may_be_out):
        bench = Bench.default(rate(asked))
        end = frame_of(next(iter(facts(asked).values())), rate(asked))
        most = end - asked.right["in"]
        tape = Tape.blank(99_999).with_pass(0, end, "film")
        shot = Source("Tape 1", (Take(0, 9000),))

        at = [asked.right["in"] + off * most, end + most + off * most]
        early, late = (record(tape, Assemble(shot, 1000, 1200, each), bench) for each in at)

        assert len(early.control.runs) == 1, seed
        assert len(late.control.runs) == (1 if off == -1 else 2), seed


def test_going_further_answers_for_both() -> None:
    """Who needs no run-up at all needs none of what a take before might give."""
    _, asked = next(drawn(beforehand.take_after_a_take))
    alone, both = (
        believed(asked, {"no-source-run-up", *more})
        for more in ((), ("touching-takes-share-pulses",))
    )

    assert alone == both
    assert grade(asked, both).misconceptions == ("no-source-run-up",)
