import pytest

from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.paper_levels import PAPER_LEVELS, situations
from exercises.drills.paper_levels.question import TEXTS, question
from exercises.drills.paper_levels.situations import WEIGHTS, Situation, name
from exercises.drills.paper_levels.verdict import grade, turned
from exercises.drills.scene import Scene
from exercises.drills.settings import USUAL
from exercises.tape.gain_control import AUTOMATIC_GAIN, LIMITER


def asked(situation: Situation, seed: int = 5) -> Question:
    made = question(situation, Scene(Draw(seed), USUAL))
    assert made is not None
    return made


def mode(made: Question) -> str:
    return made.asks[1].in_words(made.right["mode"])


def test_every_situation_occurs() -> None:
    assert {PAPER_LEVELS.make(seed).situation for seed in range(400)} == set(map(name, WEIGHTS))


@pytest.mark.parametrize(
    ("situation", "words"),
    [
        (situations.talk_with_pauses, "Level by hand, limiter off"),
        (situations.narration, "Level by hand, limiter off"),
        (situations.horn_in_the_fog, "Level by hand, limiter on"),
        (situations.laughter, "Level by hand, limiter on"),
    ],
)
def test_mode_follows_from_what_is_recorded(situation: Situation, words: str) -> None:
    assert mode(asked(situation)) == words


def test_limiter_lifts_nothing_and_holds_peaks_down() -> None:
    assert [LIMITER.out(level) for level in (-300, -100, 0)] == [-300, -100, 0]
    assert LIMITER.out(100) < 30


def test_automatic_gain_lifts_a_pause() -> None:
    assert AUTOMATIC_GAIN.after(500, gain=0, level=-300) > 100


@pytest.mark.parametrize(("off", "score"), [(0, 100), (1, 100), (2, 50), (3, 0), (10, 0)])
def test_turn_is_right_in_its_band_and_counts_less_beyond(off: int, score: int) -> None:
    made = asked(situations.tone_for_the_leader)
    verdict = grade(made, {"turn": made.right["turn"] + off})

    assert turned(off, 1) == verdict.score == score
    assert verdict.right is (score == 100)


def test_level_a_little_beside_what_a_believer_sets_points_at_the_belief() -> None:
    made = asked(situations.talk_with_pauses)
    verdict = grade(made, {**made.right, "turn": made.right["turn"] + 4})

    assert verdict.misconceptions == ("hotter-is-better",)
    assert verdict.score == 50


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (lambda right: -right, "The amount is right, the direction is not."),
        (lambda right: 2 * right, "That is twice as far as it needs."),
        (lambda right: right // 2, "That is half as far as it needs."),
        (lambda right: right, ""),
        (lambda right: right + 50, ""),
    ],
)
def test_slip_is_named(change: object, sentence: str) -> None:
    made = next(
        each
        for each in (asked(situations.bright_outside, seed) for seed in range(99))
        if each.right["turn"] > 20
    )
    assert callable(change)
    parts = grade(made, {"turn": change(made.right["turn"])}).feedback["parts"]

    assert parts[0]["slip"] == sentence


def test_modes_have_texts_of_much_the_same_length() -> None:
    lengths = [len(text) for text in TEXTS.values()]

    assert max(lengths) - min(lengths) < 10
