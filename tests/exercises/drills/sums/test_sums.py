import pytest

from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.scene import Scene
from exercises.drills.settings import USUAL
from exercises.drills.sums import SUMS
from exercises.drills.sums.question import question
from exercises.drills.sums.situations import SITUATIONS, name, recordings, run_ups
from exercises.drills.sums.verdict import grade, slip
from exercises.tape import Assemble, Bench, Rate, Source, Take, Tape, frame_of, record

SEEDS = range(40)


def facts(asked: Question) -> dict[str, str]:
    return dict(asked.shown["facts"])


def rate(asked: Question) -> Rate:
    return next(each for each in Rate if each.nominal == asked.key["labels"])


def test_every_situation_occurs() -> None:
    assert {SUMS.make(seed).situation for seed in range(400)} == set(map(name, SITUATIONS))


@pytest.mark.parametrize("seed", SEEDS)
def test_old_recording_is_there_again_where_the_tape_model_leaves_it(seed: int) -> None:
    asked = question(recordings.first_frame_untouched, Scene(Draw(seed), USUAL))
    assert asked is not None
    shot = Source("Tape 1", (Take(0, 9000),))
    at = frame_of(facts(asked)["Edit in"], rate(asked))
    bench = Bench.default(rate(asked))
    end = asked.right["old"]
    tape = Tape.blank(40_000).with_pass(0, 40_000, "old")

    left = record(tape, Assemble(shot, 1000, 1000 + end - bench.erase_gap - at, at), bench)

    found = [run.start for run in left.picture.runs if run.value.source == "old"]
    assert found == [0, end]


@pytest.mark.parametrize("seed", SEEDS)
def test_earliest_places_have_run_up_enough_and_no_frame_more(seed: int) -> None:
    asked = question(run_ups.earliest_places, Scene(Draw(seed), USUAL))
    assert asked is not None
    starts = [frame_of(value, rate(asked)) for value in list(facts(asked).values())[:2]]
    lock = Bench.default(rate(asked)).lock

    take = Source("Tape 1", (Take(starts[0], 99_999),))
    master = Tape.blank(99_999).with_pass(starts[1], 99_999, "leader")

    assert take.run_up(asked.right["source"]) == lock
    assert master.run_up(asked.right["master"]) == lock


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
    assert slip(off, 25) == sentence


def test_half_of_two_results_is_half_the_credit_and_points_at_one_belief() -> None:
    asked = question(run_ups.earliest_places, Scene(Draw(1), USUAL))
    assert asked is not None
    lock = Bench.default(rate(asked)).lock
    verdict = grade(asked, {**asked.right, "master": asked.right["master"] - lock})

    assert (verdict.right, verdict.score) == (False, 50)
    assert verdict.misconceptions == ("no-master-run-up",)


def test_wrong_sum_without_a_belief_behind_it_points_at_none() -> None:
    asked = SUMS.make(3)
    wrong = {ask.name: asked.right[ask.name] + 7 for ask in asked.asks}

    assert grade(asked, wrong).misconceptions == ()
