"""Questions at a learner's own bench: still proved, and told in that bench's figures."""

import json
import re
from collections.abc import Iterator
from dataclasses import replace

import pytest

from exercises.drills.judging.rules import ENDS
from exercises.drills.kind import Kind, Question
from exercises.drills.register import KINDS, not_at
from exercises.drills.setting.settings import USUAL, Meter, Settings
from exercises.tape import Rate, read_edit_session
from tests.believers import believed, touched
from tests.exercises.drills.benches import LIMITS, least

# What an instructor reads has no right answer to compute.
JUDGED = {slug: kind for slug, kind in KINDS.items() if not kind.by_hand}
EACH_KIND = pytest.mark.parametrize("drill", JUDGED.values(), ids=JUDGED)
EACH_BENCH = pytest.mark.parametrize("settings", LIMITS.values(), ids=LIMITS)
SEEDS = range(20)
PLAIN_CODE = re.compile(r"\d\d:\d\d:\d\d:\d\d")
ON_TAPE = {
    slug: kind
    for slug, kind in KINDS.items()
    if "session" in kind.make(0).key and slug != "sums-on-the-clock"
}


def asked(drill: Kind, settings: Settings) -> Iterator[Question]:
    return (drill.make(seed, settings) for seed in SEEDS)


@EACH_BENCH
def test_bench_at_the_limits_is_one_that_can_be(settings: Settings) -> None:
    assert settings.refusals() == {}


@EACH_KIND
@EACH_BENCH
def test_right_answer_is_right_at_any_bench(drill: Kind, settings: Settings) -> None:
    verdicts = [drill.grade(each, dict(each.right)) for each in asked(drill, settings)]

    assert {(each.right, each.score, each.misconceptions) for each in verdicts} == {(True, 100, ())}


@EACH_KIND
@EACH_BENCH
def test_believer_is_diagnosed_at_any_bench(drill: Kind, settings: Settings) -> None:
    for question in asked(drill, settings):
        beliefs = touched(question)
        found = [drill.grade(question, believed(question, {belief})) for belief in beliefs]

        assert [verdict.misconceptions for verdict in found] == [(each,) for each in beliefs]


@pytest.mark.parametrize("drill", ON_TAPE.values(), ids=ON_TAPE)
@EACH_BENCH
def test_session_has_the_figures_of_the_bench(drill: Kind, settings: Settings) -> None:
    benches = {read_edit_session(each.key["session"]).bench for each in asked(drill, settings)}

    assert benches == {settings.bench}


@pytest.mark.parametrize("drill", ON_TAPE.values(), ids=ON_TAPE)
def test_all_time_code_of_a_drop_frame_bench_is_drop_frame(drill: Kind) -> None:
    for question in asked(drill, least(Rate.R29_97)):
        feedback = drill.grade(question, dict(question.right)).feedback

        assert PLAIN_CODE.findall(json.dumps([question.shown, feedback])) == []


@EACH_KIND
def test_own_bench_with_the_usual_figures_asks_what_is_asked_without_one(drill: Kind) -> None:
    """Where the seed drew its rate."""
    own = Settings.usual(Rate.R25)
    pairs = ((drill.make(seed), drill.make(seed, own)) for seed in SEEDS)
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
    assert LIMITS["525, most"].told == (
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
    situations = [kind.make(seed).situation for seed in range(60)]

    assert [kind.make(seed, settings).situation for seed in range(60)] == situations
