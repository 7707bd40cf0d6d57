"""Questions at a learner's own bench: still proved, and told in that bench's figures."""

import json
import re
from collections.abc import Iterator
from dataclasses import replace

import pytest

from exercises.drills.judging.rules import ENDS
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS, not_at
from exercises.drills.setting.settings import USUAL, Meter, Settings
from exercises.tape import Rate, read_edit_session
from tests.believers import believed, touched
from tests.exercises.drills.benches import LIMITS, least
from tests.exercises.drills.each import EACH_JUDGED
from tests.exercises.drills.made import made

SEEDS = range(10)
PLAIN_CODE = re.compile(r"\d\d:\d\d:\d\d:\d\d")


def asked(drill: Kind, settings: Settings) -> Iterator[Question]:
    return (made(drill, seed, settings) for seed in SEEDS)


def on_tape() -> Iterator[Kind]:
    """The kinds that are about a tape: all whose questions have one, but sums about its code."""
    for slug, kind in KINDS.items():
        if "session" in made(kind, 0).key and slug != "sums-on-the-clock":
            yield kind


def test_benches_at_the_limits_are_such_that_can_be() -> None:
    assert [(bench, each.refusals()) for bench, each in LIMITS.items() if each.refusals()] == []


@EACH_JUDGED
def test_right_answer_is_right_at_any_bench(drill: Kind) -> None:
    for bench, settings in LIMITS.items():
        for seed, question in enumerate(asked(drill, settings)):
            verdict = drill.grade(question, dict(question.right))

            told = (verdict.right, verdict.score, verdict.misconceptions)
            assert told == (True, 100, ()), (bench, seed)


@EACH_JUDGED
def test_believer_is_diagnosed_at_any_bench(drill: Kind) -> None:
    for bench, settings in LIMITS.items():
        for seed, question in enumerate(asked(drill, settings)):
            beliefs = touched(question)
            found = [drill.grade(question, believed(question, {belief})) for belief in beliefs]

            diagnosed = [verdict.misconceptions for verdict in found]
            assert diagnosed == [(each,) for each in beliefs], (bench, seed)


@pytest.mark.parametrize("settings", LIMITS.values(), ids=LIMITS)
def test_session_has_the_figures_of_the_bench(settings: Settings) -> None:
    kinds = list(on_tape())

    assert len(kinds) > 10
    for kind in kinds:
        for seed, question in enumerate(asked(kind, settings)):
            bench = read_edit_session(question.key["session"]).bench
            assert bench == settings.bench, (kind.slug, seed)


def test_all_time_code_of_a_drop_frame_bench_is_drop_frame() -> None:
    for kind in on_tape():
        for seed, question in enumerate(asked(kind, least(Rate.R29_97))):
            feedback = kind.grade(question, dict(question.right)).feedback
            codes = PLAIN_CODE.findall(json.dumps([question.shown, feedback]))

            assert codes == [], (kind.slug, seed)


@EACH_JUDGED
def test_own_bench_with_the_usual_figures_asks_what_is_asked_without_one(drill: Kind) -> None:
    """Where the seed drew its rate."""
    own = Settings.usual(Rate.R25)
    pairs = zip(asked(drill, USUAL), asked(drill, own), strict=True)
    at_25 = [
        (usual, mine) for usual, mine in pairs if usual.key.get("session", {}).get("rate") == "25"
    ]

    assert [mine.shown for _, mine in at_25] == [usual.shown for usual, _ in at_25]


def test_question_keeps_the_settings_that_somebody_set() -> None:
    settings = LIMITS["525, most"]
    kept = KINDS["choose-the-mode"].make(4, settings).bench

    assert kept
    assert Settings.from_json(kept["settings"]) == settings
    assert KINDS["choose-the-mode"].make(4, USUAL).bench is None


def test_settings_are_told_in_a_line() -> None:
    assert LIMITS["525, most"].in_words == (
        "29.97 frames a second, drop-frame time code, pre-roll 20 seconds, lock 20 seconds, "
        "relock 20 seconds, erase gap 10 seconds"
    )


def test_kinds_whose_meter_is_missing_are_not_at_a_bench() -> None:
    no_waveform = replace(USUAL, meters=frozenset({Meter.VU, Meter.TRACKING}))

    assert not_at(USUAL) == set()
    assert not_at(no_waveform) == {"set-picture-level"}
    assert not_at(LIMITS["625, least"]) == {"set-picture-level", "set-sound-level"}


@pytest.mark.parametrize("slug", ["set-tracking", "watch-it-drift"])
def test_no_meter_is_shown_where_the_bench_has_none(slug: str) -> None:
    faces = {each.shown["face"] for each in asked(KINDS[slug], LIMITS["625, least"])}

    assert faces == {""}


def test_rule_of_a_bench_that_wipes_nothing_speaks_of_no_wiping() -> None:
    wiping, gapless = LIMITS["625, most"].bench, LIMITS["625, least"].bench

    assert ENDS.at(wiping)["text"] == ENDS.text
    assert "wipes" not in ENDS.at(gapless)["text"]


@pytest.mark.parametrize("slug", ["choose-the-mode", "spot-by-ear", "spot-by-eye"])
def test_long_run_up_leaves_the_situations_that_there_are(slug: str) -> None:
    kind, settings = KINDS[slug], LIMITS["625, most"]
    situations = [made(kind, seed).situation for seed in range(30)]

    assert [made(kind, seed, settings).situation for seed in range(30)] == situations
