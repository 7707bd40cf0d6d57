"""Levels on paper: what the situations ask, what the tape model answers, what believers do."""

from collections import Counter

import pytest

from exercises.drills.kinds.levels_on_paper import KIND as PAPER_LEVELS
from exercises.drills.kinds.levels_on_paper import question
from exercises.drills.kinds.levels_on_paper.afterwards import Later, WhiteShot, next_step
from exercises.drills.kinds.levels_on_paper.holding import (
    TEXTS,
    Heard,
    Held,
    Holding,
    outcome,
)
from exercises.drills.kinds.levels_on_paper.situations import pictures, sounds
from exercises.drills.kinds.levels_on_paper.situations.held import SOFTLY, SUDDENLY
from exercises.drills.kinds.levels_on_paper.situations.laid import SHOTS
from exercises.drills.kinds.levels_on_paper.verdict import grade, turned
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import USUAL
from exercises.tape import Bench
from exercises.tape.gain_control import AUTOMATIC_GAIN, LIMITER
from tests.believers import touched
from tests.exercises.drills.made import many

SEEDS = range(1000)
BENCH = Bench.default()
OTHERS = {"second-take", "ambience", "tone", "white", "bars", "black"}


def questions() -> list[Question]:
    return many(PAPER_LEVELS, len(SEEDS))


def of(name: str) -> list[Question]:
    return [each for each in questions() if each.situation == name]


def right(made: Question, name: str) -> str:
    """The text of the right option."""
    ask = next(ask for ask in made.asks if ask.name == name)
    return ask.in_words(made.right[name])


def tone() -> Question:
    made = question(sounds.tone(scene := Scene(Draw(5), USUAL)), scene)
    assert made is not None
    return made


def test_every_situation_occurs() -> None:
    told = {story.__name__.replace("_", "-") for story in (*SOFTLY, *SUDDENLY)}
    shots = {made.__name__.replace("_", "-") for group in SHOTS for made in group}

    assert {each.situation for each in questions()} == told | shots | OTHERS


@pytest.mark.parametrize(
    ("sudden", "way", "came"),
    [
        (0, Holding.ALONE, Held.STAYS),
        (0, Holding.LIMITER, Held.STAYS),
        (0, Holding.FOLLOWED, Held.FOLLOWED),
        (0, Holding.AUTOMATIC, Held.LIFTED),
        (60, Holding.ALONE, Held.ROUGH),
        (60, Holding.LIMITER, Held.HELD),
        (20, Holding.ALONE, Held.STAYS),
    ],
)
def test_outcome_follows_from_what_holds_the_level(sudden: int, way: Holding, came: Held) -> None:
    assert outcome(BENCH, Heard(sudden), way) is came


@pytest.mark.parametrize(
    ("way", "belief", "expected"),
    [
        (Holding.AUTOMATIC, "agc-evens-out", Held.FOLLOWED),
        (Holding.LIMITER, "limiter-is-agc", Held.LIFTED),
        (Holding.LIMITER, "agc-evens-out", Held.STAYS),
    ],
)
def test_believer_expects_another_outcome(way: Holding, belief: str, expected: Held) -> None:
    assert outcome(BENCH, Heard(), way, (belief,)) is expected


@pytest.mark.parametrize(
    ("shot", "step"),
    [
        (WhiteShot(100, 64, "grey"), Later.AGAIN),
        (WhiteShot(100, 125, "glaring"), Later.AGAIN),
        (WhiteShot(120, 100), Later.OTHER),
        (WhiteShot(100, 100, "grey"), Later.WATCHED),
        (WhiteShot(92, 100), Later.GO_ON),
    ],
)
def test_what_to_do_follows_from_what_is_on_the_tapes(shot: WhiteShot, step: Later) -> None:
    assert next_step(shot, BENCH) is step


@pytest.mark.parametrize(
    ("shot", "belief", "expected"),
    [
        (WhiteShot(100, 64, "grey"), "level-is-seen-later", Later.WATCHED),
        (WhiteShot(100, 125, "glaring"), "level-is-seen-later", Later.WATCHED),
        (WhiteShot(120, 100), "level-is-seen-later", Later.WATCHED),
        (WhiteShot(100, 100, "grey"), "level-is-seen-later", Later.WATCHED),
        (WhiteShot(100, 100, "grey"), "monitor-is-a-meter", Later.AGAIN),
        (WhiteShot(92, 100), "monitor-is-a-meter", Later.GO_ON),
    ],
)
def test_believer_does_something_else(shot: WhiteShot, belief: str, expected: Later) -> None:
    assert next_step(shot, BENCH, (belief,)) is expected


@pytest.mark.parametrize(("name", "options"), [("held", len(Held)), ("next", len(Later))])
def test_no_answer_is_right_much_more_often_than_another(name: str, options: int) -> None:
    asked = [each for each in questions() if name in each.right]
    for told in (lambda each: right(each, name), lambda each: each.right[name]):
        counts = Counter(map(told, asked))

        assert max(counts.values()) / len(asked) <= 1 / options + 0.05


@pytest.mark.parametrize("name", ["held", "next"])
def test_options_have_texts_of_much_the_same_length(name: str) -> None:
    made = next(each for each in questions() if name in each.right)
    ask = next(ask for ask in made.asks if ask.name == name)
    lengths = [len(ask.in_words(answer)) for answer in ask.every()]

    assert max(lengths) - min(lengths) < 12


def test_automatic_gain_always_brings_up_the_room() -> None:
    asked = [each for each in questions() if "automatic gain" in each.asks[-1].legend]

    assert {right(each, "held") for each in asked} == {TEXTS[Held.LIFTED]}


def test_ambience_belongs_below_speech() -> None:
    for made in of("ambience"):
        verdict = grade(made, {"turn": made.right["turn"] + 10})
        (part,) = verdict.feedback["parts"]

        assert part["why"].endswith("belongs at −10 VU.")
        assert (verdict.score, part["slip"]) == (
            0,
            "That would put it at 0 VU, where speech belongs.",
        )


def test_second_take_that_is_left_as_it_is_points_at_the_belief() -> None:
    for made in of("second-take"):
        assert grade(made, {"turn": 0}).misconceptions == ("one-level-for-all",)


def test_white_bar_set_to_a_whole_white_points_at_the_belief() -> None:
    three_quarters = [
        each for each in of("bars") if dict(each.shown["facts"])["On the card"][5] == "7"
    ]
    for made in three_quarters:
        (_, right), (held, lured) = made.believed

        assert held == ["bars-are-alike"]
        assert lured["turn"] - right["turn"] in (23, 175)
    assert three_quarters


def test_limiter_lifts_nothing_and_holds_peaks_down() -> None:
    assert [LIMITER.out(level) for level in (-300, -100, 0)] == [-300, -100, 0]
    assert LIMITER.out(100) < 30


def test_automatic_gain_lifts_a_pause() -> None:
    assert AUTOMATIC_GAIN.after(500, gain=0, level=-300) > 100


@pytest.mark.parametrize(("off", "score"), [(0, 100), (1, 100), (2, 50), (3, 0), (10, 0)])
def test_turn_is_right_in_its_band_and_counts_less_beyond(off: int, score: int) -> None:
    made = tone()
    verdict = grade(made, {"turn": made.right["turn"] + off})

    assert turned(off, 1) == verdict.score == score
    assert verdict.right is (score == 100)


def test_level_a_little_beside_what_a_believer_sets_points_at_the_belief() -> None:
    made = next(
        each for each in questions() if "hotter-is-better" in touched(each) and "held" in each.right
    )
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
    made = next(each for each in of("white") if 20 < each.right["turn"] < 40)
    assert callable(change)
    parts = grade(made, {"turn": change(made.right["turn"])}).feedback["parts"]

    assert parts[0]["slip"] == sentence


def test_black_at_525_lines_is_not_blanking() -> None:
    made = next(each for each in of("black") if each.asks[0].as_json()["unit"] == "IRE")
    assert pictures.black.__name__ == made.situation
    (part,) = grade(made, {"turn": made.right["turn"] - 7.5}).feedback["parts"]

    assert part["slip"] == "That would be blanking: at 525 lines, black stands over it."
